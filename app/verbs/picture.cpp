#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <iostream>
#include <numbers>

#include "app/verbs/bone_list.h"
#include "app/verbs/posed_bones.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/disk/atomic_file.h"
#include "core/picture/framing.h"
#include "core/solid/flesh/body_guide.h"
#include "ui/pictures/picture_set.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::app {
namespace {

using picture::Pass;
using picture::StandardView;

constexpr double kUsualWidth = 1600;  // pixels

StandardView viewOf(const VerbSpec& spec, const Arguments& arguments) {
  required(spec, arguments, "--view");
  return choiceOf<StandardView>(arguments, "--view",
                                {{"left", StandardView::Left},
                                 {"right", StandardView::Right},
                                 {"dorsal", StandardView::Dorsal},
                                 {"ventral", StandardView::Ventral},
                                 {"cranial", StandardView::Cranial},
                                 {"caudal", StandardView::Caudal},
                                 {"three-quarter", StandardView::ThreeQuarter}});
}

int widthOf(const Arguments& arguments) {
  const auto width = arguments.find("--width");
  return static_cast<int>(width ? numberOf({"--width", *width}, 64, 16384, QT_TRANSLATE_NOOP("words", "pixels"))
                                : kUsualWidth);
}

constexpr double kRadians = std::numbers::pi / 180;

double numberOr(const Arguments& arguments, std::string_view name, double usual, double least, double most,
                const char* unit) {
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
    refuse(QT_TRANSLATE_NOOP(
        "words",
        "--view: a person at eye height cannot look from above or below; choose another view or leave out the lens"));
  return numberOr(arguments, "--turn-deg", *usual / kRadians, -360, 360, QT_TRANSLATE_NOOP("words", "degrees")) *
         kRadians;
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
  const double focal = numberOr(arguments, "--lens-mm", picture::LensShot().lens, 8, 800, "mm");
  const QString horizon = lens.horizon >= 0 && lens.horizon <= 1
                              ? ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "horizon at row %1 of %2")),
                                           {ui::plain(lens.horizon * height, 0), QString::number(height)})
                              : ui::translated(QT_TRANSLATE_NOOP("words", "horizon outside the picture"));
  std::cout << said(QT_TRANSLATE_NOOP("words",
                                      "lens %1 (picture %2 wide), eye at %3, %4 from the middle of the animal, %5"),
                    {ui::millimetres(focal / 1000, 0), ui::millimetres(picture::kFullFrame / 1000, 0),
                     ui::metres(lens.camera.X_WCamera.translation().z()), ui::metres(lens.distance), horizon})
            << "\n";
  if (lens.cropped)
    warn(ui::translated(
        QT_TRANSLATE_NOOP("words", "some of the animal is outside the picture; a greater distance shows more")));
}

/// The passes that `--passes a,b,...` names; throws BadInput listing them.
std::vector<Pass> passesFrom(const std::string& words) {
  std::vector<Pass> passes;
  QStringList allowed;
  for (const Pass pass : picture::kAllPasses) allowed << QString::fromUtf8(wordOf(pass));
  for (std::size_t from = 0; from <= words.size();) {
    const std::size_t to = std::min(words.find(',', from), words.size());
    const std::string given = words.substr(from, to - from);
    const auto pass = picture::passOf(given);
    if (!pass)
      refuse(QT_TRANSLATE_NOOP("words", "--passes: '%1' is not among %2; put commas between them"),
             {given, ui::inOneLine(allowed)});
    if (std::find(passes.begin(), passes.end(), *pass) == passes.end()) passes.push_back(*pass);
    from = to + 1;
  }
  return passes;
}

/// The bones that `--look-at` names.
std::vector<picture::Instance> lookedAt(const Arguments& arguments, const anatomy::Specimen& specimen,
                                        const PosedBones& posed) {
  const std::vector<bool> at = bonesListed(arguments, "--look-at", specimen);
  std::vector<picture::Instance> chosen;
  for (std::size_t i = 0; i < posed.bones.size(); ++i)
    if (at[posed.bones[i].value]) chosen.push_back(posed.instances[i]);
  if (chosen.empty())
    refuse(QT_TRANSLATE_NOOP("words", "--look-at: %1 is not drawn; add it to --bones"), {*arguments.find("--look-at")});
  return chosen;
}

/// Sets camera, size and horizon so that these bones fill the picture, and tells of the lens.
void frame(const Arguments& arguments, StandardView view, const std::vector<picture::Instance>& shown,
           ui::PictureSet& set) {
  auto& options = set.options;
  if (!throughLens(arguments)) {
    const auto box = picture::boundsOf(shown);
    const double aspect = picture::aspectOf(view, box.sizes());
    options.height = picture::heightOf(options.width, aspect);
    set.camera = picture::frame(view, box, aspect);
    return;
  }
  options.height = picture::heightOf(options.width, picture::kLensAspect);
  const double aspect = static_cast<double>(options.width) / options.height;
  const auto lens = lensFrom(arguments, view, picture::cornersOf(shown), aspect);
  set.camera = lens.camera;
  if (arguments.has("--horizon")) options.horizon = lens.horizon;
  if (!picture::anyInside(lens.camera, aspect, set.instances))
    refuse(QT_TRANSLATE_NOOP("words",
                             "nothing of the animal is in this picture: the eye is too near or looks past it; "
                             "leave out --distance-m, or name what it shall look at with --look-at"));
  tellLens(arguments, lens, options.height);
}

void tell(const ui::WrittenPictures& written, const ui::PictureSet& set) {
  for (const auto& file : written.files) {
    if (set.finished)
      std::cout << said(QT_TRANSLATE_NOOP("words", "wrote %1, %2 x %3 pixels"),
                        {file, QString::number(set.options.width), QString::number(set.options.height)})
                << "\n";
    else if (written.depth && file.ends_with("-depth.png"))
      std::cout << said(QT_TRANSLATE_NOOP("words", "wrote %1, white at %2 from the eye, black at %3"),
                        {file, ui::metres(written.depth->first), ui::metres(written.depth->second)})
                << "\n";
    else
      std::cout << wroteLine(file);
  }
}

int pictureVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  if (!out.ends_with(".png")) refuse(QT_TRANSLATE_NOOP("words", "--out: %1 must end in .png"), {out});
  files::checkPlace(out);
  const auto view = viewOf(spec, arguments);
  ui::PictureSet set;
  if (const auto passes = arguments.find("--passes")) set.passes = passesFrom(*passes);
  set.finished = set.passes.empty();
  set.options.width = widthOf(arguments);
  set.options.transparentGround = arguments.has("--transparent");
  const auto project = openProject(arguments.file);
  const std::vector<bool> only = bonesListed(arguments, "--bones", project.specimen());
  const bool guide = arguments.has("--body-guide");
  if (guide && !set.passes.empty())
    refuse(QT_TRANSLATE_NOOP("words", "--body-guide: passes are of bones alone; leave out --passes"));
  const PosedBones posed = posedBones(project, choosePose(project, arguments).pose, only, guide);
  set.options.ground = only.empty();
  set.instances = posed.instances;
  for (const auto bone : posed.bones) set.bones.push_back(project.specimen()[bone].id);
  if (posed.guide) {
    set.instances.push_back(*posed.guide);
    set.bones.push_back(std::string(solid::kGuideName));
  }
  const bool all = !arguments.has("--look-at");
  frame(arguments, view, all ? set.instances : lookedAt(arguments, project.specimen(), posed), set);
  if (const auto written = ui::writePictures(out, set)) tell(*written, set);
  return kDone;
}

}  // namespace

Verb pictureVerb() {
  return {
      {"picture",
       "FILE.zyga",
       QT_TRANSLATE_NOOP("words", "draws the posed skeleton, the same bytes every time"),
       {{"--view", "VIEW",
         QT_TRANSLATE_NOOP("words", "left, right, dorsal, ventral, cranial, caudal or three-quarter")},
        {"--out", "FILE.png", QT_TRANSLATE_NOOP("words", "the picture to write")},
        {"--pose", "NAME", QT_TRANSLATE_NOOP("words", "a named pose instead of the present one")},
        {"--bones", "LIST",
         QT_TRANSLATE_NOOP("words", "only these bones, and no ground: C5,C6,humerus.L,manus.R,pelvis and the like")},
        {"--look-at", "LIST", QT_TRANSLATE_NOOP("words", "bones that fill the picture; the others stay in sight")},
        {"--body-guide", "",
         QT_TRANSLATE_NOOP("words", "the body guide around the bones, which is not anatomy; it hides them")},
        {"--width", "PX", QT_TRANSLATE_NOOP("words", "1600 unless said otherwise; the height follows from the animal")},
        {"--transparent", "", QT_TRANSLATE_NOOP("words", "no background: bones and their shadow alone")},
        {"--lens-mm", "F",
         QT_TRANSLATE_NOOP("words", "in perspective, focal length for a picture 36 mm wide; 50 unless said otherwise")},
        {"--eye-m", "HEIGHT",
         QT_TRANSLATE_NOOP("words", "of the eye over the ground, 1.6 unless said otherwise; the camera is level")},
        {"--turn-deg", "A", QT_TRANSLATE_NOOP("words", "looks from this side: 0 from in front, 90 from the left")},
        {"--distance-m", "D",
         QT_TRANSLATE_NOOP("words", "from the eye to the middle of the animal; else as near as shows all")},
        {"--horizon", "", QT_TRANSLATE_NOOP("words", "draws the horizon behind the animal")},
        {"--passes", "LIST",
         QT_TRANSLATE_NOOP("words",
                           "shaded,shadow,outline,depth,direction,bones,evidence: each a picture of its own")}},
       QT_TRANSLATE_NOOP(
           "words",
           "Preserved bones are warm, mirrored ones darker, inferred ones grey. Any option of the lens makes a\n"
           "perspective picture of 3:2 in which upright things stay upright. Passes lie exactly over each other and "
           "are\n"
           "written as FILE-shaded.png and so on; FILE-bones.csv tells which colour is which bone. Their alpha is the\n"
           "bones' cover. The direction pass is a normals pass: red right, green up, blue towards the eye.\n")},
      pictureVerbRun};
}

}  // namespace zyga::app
