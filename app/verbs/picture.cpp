#include "core/picture/picture.h"

#include <algorithm>
#include <iostream>
#include <numbers>
#include <utility>

#include "app/verbs/picture_passes.h"
#include "app/verbs/project_file.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/verbs.h"
#include "core/files/atomic_file.h"
#include "core/picture/lens_view.h"

namespace zyga::app {
namespace {

using picture::StandardView;

constexpr double kUsualWidth = 1600;

/// Width over height that the animal asks for from this side, within what still makes a picture.
double aspectOf(StandardView view, const Eigen::Vector3d& size) {
  const auto ratio = [&] {
    switch (view) {
      case StandardView::Left:
      case StandardView::Right:
        return size.x() / size.z();
      case StandardView::Dorsal:
        return size.x() / size.y();
      case StandardView::Cranial:
      case StandardView::Caudal:
        return size.y() / size.z();
      case StandardView::ThreeQuarter:
        break;
    }
    return 1.6;
  };
  return std::clamp(ratio(), 0.6, 3.0);
}

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
constexpr double kPaintAspect = 1.5;  // of full-frame film, 36 by 24 mm

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

/// From where a person looks who chooses a standard view, rad: 0 from in front, 90 degrees from the left.
double turnOf(StandardView view) {
  switch (view) {
    case StandardView::Left:
      return 90 * kRadians;
    case StandardView::Right:
      return -90 * kRadians;
    case StandardView::Cranial:
      return 0;
    case StandardView::Caudal:
      return 180 * kRadians;
    case StandardView::Dorsal:
      throw BadInput(
          "--view: a person at eye height cannot look from above; choose another view or leave out the lens");
    case StandardView::ThreeQuarter:
      break;
  }
  return 49 * kRadians;
}

picture::LensView lensFrom(const Arguments& arguments, StandardView view,
                           const std::vector<picture::Instance>& instances, double aspect) {
  picture::LensShot shot;
  shot.lens = numberOr(arguments, "--lens-mm", shot.lens, 8, 800, "mm");
  shot.eyeHeight = numberOr(arguments, "--eye-m", shot.eyeHeight, 0.05, 100, "m");
  shot.turn = turnOf(view);
  if (arguments.has("--turn-deg")) shot.turn = numberOr(arguments, "--turn-deg", 0, -360, 360, "degrees") * kRadians;
  if (arguments.has("--distance-m")) shot.distance = numberOr(arguments, "--distance-m", 0, 0.5, 10000, "m");
  return picture::lensView(shot, cornersOf(instances), aspect);
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

picture::Image paint(const std::vector<picture::Instance>& instances, const picture::Camera& camera,
                     picture::PictureOptions options, std::optional<double> horizon) {
  if (!horizon) return picture::trace(instances, camera, options);
  const bool transparent = std::exchange(options.transparentGround, true);
  auto image = picture::trace(instances, camera, options);
  picture::drawHorizon(image, *horizon, picture::kHorizonInk);
  if (!transparent) picture::layOver(image, options.top, options.bottom);
  return image;
}

int pictureVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  if (!out.ends_with(".png")) throw BadInput("--out: " + out + " must end in .png");
  files::checkPlace(out);
  const auto view = viewOf(spec, arguments);
  const auto passes = arguments.find("--passes");
  const auto wanted = passes ? passesFrom(*passes) : std::vector<picture::Pass>();
  picture::PictureOptions options;
  options.width = widthOf(arguments);
  options.transparentGround = arguments.has("--transparent");
  const auto project = files::readProject(arguments.file);
  const PosedBones posed = posedBones(project, choosePose(project, arguments).pose);
  const auto box = boundsOf(posed.instances);
  const bool lensed = throughLens(arguments);
  const double aspect = lensed ? kPaintAspect : aspectOf(view, box.sizes());
  options.height = std::max(1, static_cast<int>(options.width / aspect));
  picture::Camera camera;
  std::optional<double> horizon;
  if (lensed) {
    const auto lens = lensFrom(arguments, view, posed.instances, static_cast<double>(options.width) / options.height);
    camera = lens.camera;
    if (arguments.has("--horizon")) horizon = lens.horizon;
    tellLens(arguments, lens, options.height);
  } else {
    camera = picture::frame(view, box, aspect);
  }
  if (!wanted.empty()) {
    writePasses(out, project, posed, camera, options, wanted, horizon.value_or(-1));
    return kDone;
  }
  const auto image = paint(posed.instances, camera, options, horizon);
  files::writeWhole(out, pngBytes(image));
  std::cout << "wrote " << out << ", " << image.width << " x " << image.height << " pixels\n";
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
