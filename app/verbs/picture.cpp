#include <algorithm>
#include <iostream>
#include <numbers>

#include "app/verbs/posed_bones.h"
#include "app/verbs/project_file.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/verbs.h"
#include "core/files/disk/atomic_file.h"
#include "core/picture/framing.h"
#include "ui/pictures/picture_set.h"

namespace zyga::app {
namespace {

using picture::Pass;
using picture::StandardView;

constexpr double kUsualWidth = 1600;

StandardView viewOf(const VerbSpec& spec, const Arguments& arguments) {
  required(spec, arguments, "--view");
  return choiceOf<StandardView>(arguments, "--view",
                                {{"left", StandardView::Left},
                                 {"right", StandardView::Right},
                                 {"dorsal", StandardView::Dorsal},
                                 {"cranial", StandardView::Cranial},
                                 {"caudal", StandardView::Caudal},
                                 {"three-quarter", StandardView::ThreeQuarter}});
}

int widthOf(const Arguments& arguments) {
  const auto width = arguments.find("--width");
  return static_cast<int>(width ? numberOf({"--width", *width}, 64, 16384, "pixels") : kUsualWidth);
}

constexpr double kRadians = std::numbers::pi / 180;

double numberOr(const Arguments& arguments, std::string_view name, double usual, double least, double most,
                std::string_view unit) {
  const auto given = arguments.find(name);
  return given ? numberOf({std::string(name), *given}, least, most, unit) : usual;
}

bool throughLens(const Arguments& arguments) {
  for (const char* option : {"--lens-mm", "--eye-m", "--turn-deg", "--distance-m", "--horizon"})
    if (arguments.has(option)) return true;
  return false;
}

double turnFrom(const Arguments& arguments, StandardView view) {
  const auto usual = picture::turnOf(view);
  if (!usual)
    throw BadInput("--view: a person at eye height cannot look from above; choose another view or leave out the lens");
  return numberOr(arguments, "--turn-deg", *usual / kRadians, -360, 360, "degrees") * kRadians;
}

picture::LensView lensFrom(const Arguments& arguments, StandardView view, const std::vector<Eigen::Vector3d>& corners,
                           double aspect) {
  picture::LensShot shot;
  shot.lens = numberOr(arguments, "--lens-mm", shot.lens, 8, 800, "mm");
  shot.eyeHeight = numberOr(arguments, "--eye-m", shot.eyeHeight, 0.05, 100, "m");
  shot.turn = turnFrom(arguments, view);
  if (arguments.has("--distance-m")) shot.distance = numberOr(arguments, "--distance-m", 0, 0.5, 10000, "m");
  return picture::lensView(shot, corners, aspect);
}

void tellLens(const Arguments& arguments, const picture::LensView& lens, int height) {
  std::cout << "lens " << fixed(numberOr(arguments, "--lens-mm", 50, 8, 800, "mm"), 0)
            << " mm (picture 36 mm wide), eye at " << fixed(lens.camera.X_WCamera.translation().z(), 2) << " m, "
            << fixed(lens.distance, 2) << " m from the middle of the animal, ";
  if (lens.horizon >= 0 && lens.horizon <= 1)
    std::cout << "horizon at row " << fixed(lens.horizon * height, 0) << " of " << height << "\n";
  else
    std::cout << "horizon outside the picture\n";
  if (lens.cropped) std::cerr << "warning: some of the animal is outside the picture; a greater distance shows more\n";
}

/// The passes that `--passes a,b,...` names; throws BadInput listing them.
std::vector<Pass> passesFrom(const std::string& words) {
  std::vector<Pass> passes;
  std::string allowed;
  for (const Pass pass : picture::kAllPasses) allowed += (allowed.empty() ? "" : ", ") + std::string(wordOf(pass));
  for (std::size_t from = 0; from <= words.size();) {
    const std::size_t to = std::min(words.find(',', from), words.size());
    const std::string given = words.substr(from, to - from);
    const auto pass = picture::passOf(given);
    if (!pass) throw BadInput("--passes: '" + given + "' is not among " + allowed + "; put commas between them");
    if (std::find(passes.begin(), passes.end(), *pass) == passes.end()) passes.push_back(*pass);
    from = to + 1;
  }
  return passes;
}

/// Sets camera, size and horizon, and tells of the lens.
void frame(const Arguments& arguments, StandardView view, ui::PictureSet& set) {
  auto& options = set.options;
  if (!throughLens(arguments)) {
    const auto box = picture::boundsOf(set.instances);
    const double aspect = picture::aspectOf(view, box.sizes());
    options.height = picture::heightOf(options.width, aspect);
    set.camera = picture::frame(view, box, aspect);
    return;
  }
  options.height = picture::heightOf(options.width, picture::kLensAspect);
  const auto lens =
      lensFrom(arguments, view, picture::cornersOf(set.instances), static_cast<double>(options.width) / options.height);
  set.camera = lens.camera;
  if (arguments.has("--horizon")) options.horizon = lens.horizon;
  tellLens(arguments, lens, options.height);
}

void tell(const ui::WrittenPictures& written, const ui::PictureSet& set) {
  for (const auto& file : written.files) {
    std::cout << "wrote " << file;
    if (set.finished) std::cout << ", " << set.options.width << " x " << set.options.height << " pixels";
    if (written.depth && file.ends_with("-depth.png"))
      std::cout << ", white at " << fixed(written.depth->first, 2) << " m from the eye, black at "
                << fixed(written.depth->second, 2) << " m";
    std::cout << "\n";
  }
}

int pictureVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  if (!out.ends_with(".png")) throw BadInput("--out: " + out + " must end in .png");
  files::checkPlace(out);
  const auto view = viewOf(spec, arguments);
  ui::PictureSet set;
  if (const auto passes = arguments.find("--passes")) set.passes = passesFrom(*passes);
  set.finished = set.passes.empty();
  set.options.width = widthOf(arguments);
  set.options.transparentGround = arguments.has("--transparent");
  const auto project = files::readProject(arguments.file);
  const PosedBones posed = posedBones(project, choosePose(project, arguments).pose);
  set.instances = posed.instances;
  for (const auto bone : posed.bones) set.bones.push_back(project.specimen()[bone].id);
  frame(arguments, view, set);
  if (const auto written = ui::writePictures(out, set)) tell(*written, set);
  return kDone;
}

}  // namespace

Verb pictureVerb() {
  return {
      {"picture",
       "FILE.zyga",
       "draws the posed skeleton, the same bytes every time",
       {{"--view", "VIEW", "left, right, dorsal, cranial, caudal or three-quarter"},
        {"--out", "FILE.png", "the picture to write"},
        {"--pose", "NAME", "a named pose instead of the present one"},
        {"--width", "PX", "1600 unless said otherwise; the height follows from the animal"},
        {"--transparent", "", "no background: bones and their shadow alone"},
        {"--lens-mm", "F", "in perspective, focal length for a picture 36 mm wide; 50 unless said otherwise"},
        {"--eye-m", "HEIGHT", "of the eye over the ground, 1.6 unless said otherwise; the camera is level"},
        {"--turn-deg", "A", "looks from this side: 0 from in front, 90 from the left"},
        {"--distance-m", "D", "from the eye to the middle of the animal; else as near as shows all"},
        {"--horizon", "", "draws the horizon behind the animal"},
        {"--passes", "LIST", "shaded,shadow,outline,depth,direction,bones,evidence: each a picture of its own"}},
       "Bones that were found are warm, mirrored ones darker, inferred ones grey. Any option of the lens makes a\n"
       "perspective picture of 3:2 in which upright things stay upright. Passes lie exactly over each other and are\n"
       "written as FILE-shaded.png and so on; FILE-bones.csv tells which colour is which bone. Their alpha is the\n"
       "bones' cover. Direction: red right, green up, blue towards the eye.\n"},
      pictureVerbRun};
}

}  // namespace zyga::app
