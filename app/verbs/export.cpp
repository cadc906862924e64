#include <QCoreApplication>
#include <iostream>

#include "app/verbs/project_file.h"
#include "app/verbs/sculpting.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/export/sculpting_base.h"
#include "core/solid/watertight/watertight.h"
#include "ui/words/numbers.h"
#include "ui/words/scan_words.h"

namespace zyga::app {
namespace {

using files::LengthUnit;
using files::UpAxis;

files::ExportOptions optionsOf(const Arguments& arguments) {
  files::ExportOptions options;
  options.joined = arguments.has("--joined");
  options.unit = choiceOf<LengthUnit>(
      arguments, "--unit", {{"m", LengthUnit::Metre}, {"cm", LengthUnit::Centimetre}, {"mm", LengthUnit::Millimetre}});
  options.up = choiceOf<UpAxis>(arguments, "--up", {{"z", UpAxis::Z}, {"y", UpAxis::Y}});
  return options;
}

constexpr double kMostPerBone = 200000, kMostInAll = 20000000;

std::size_t trianglesOf(const Arguments& arguments, std::size_t unlessGiven, double most) {
  const auto given = arguments.find("--triangles");
  return given ? static_cast<std::size_t>(
                     numberOf({"--triangles", *given}, 200, most, QT_TRANSLATE_NOOP("words", "a number")))
               : unlessGiven;
}

files::SculptingBase baseOf(const Arguments& arguments) {
  files::SculptingBase base;
  base.watertight = arguments.has("--watertight");
  base.bodyGuide = arguments.has("--body-guide");
  base.fillJoints = arguments.has("--fill-joints");
  if (const auto voxel = arguments.find("--voxel-mm"))
    base.voxel = numberOf({"--voxel-mm", *voxel}, 0.1, 500, QT_TRANSLATE_NOOP("words", "millimetres")) / 1000;
  if (!base.watertight) {
    for (const char* name : {"--voxel-mm", "--fill-joints"})
      if (arguments.has(name)) refuse(QT_TRANSLATE_NOOP("words", "%1 needs --watertight"), {name});
  } else {
    base.triangles = trianglesOf(arguments, base.triangles, kMostInAll);
  }
  return base;
}

void tellSize(const Eigen::AlignedBox3d& box) {
  const Eigen::Vector3d size = box.sizes();
  std::cout << said(QT_TRANSLATE_NOOP("words", "%1 long, %2 wide, %3 high"),
                    {ui::metres(size.x(), 3), ui::metres(size.y(), 3), ui::metres(size.z(), 3)})
            << "\n";
}

int exportVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  const auto options = optionsOf(arguments);
  files::checkExport(out);
  const auto base = baseOf(arguments);
  constexpr std::size_t kPerBone = 12000;
  const auto triangles = base.watertight ? kPerBone : trianglesOf(arguments, kPerBone, kMostPerBone);
  const auto project = openProject(arguments.file);
  const auto chosen = choosePose(project, arguments);
  const auto X_WB = kinematics::forwardKinematics(project.specimen(), articulationOf(project), chosen.pose);
  const auto meshes = sculpt(project, triangles);
  tellSize(solid::boundsOf({project.specimen(), meshes, X_WB}));
  auto made = base.any() ? files::sculptingBase(project.specimen(), X_WB, meshes, base, project.guide,
                                                taskAtTerminal(QT_TRANSLATE_NOOP("words", "making surfaces")))
                         : files::SculptedSurfaces();
  ui::noteSurfaces(made, project.specimen(), project.guide);
  for (const QString& sentence : ui::surfacesSaid(made, project.specimen()))
    std::cout << sentence.toStdString() << "\n";
  files::exportMeshes(project.specimen(), X_WB, base.watertight ? files::BoneMeshes() : meshes, out, options,
                      made.surfaces);
  std::cout << wroteLine(out);
  if (files::holdsSingleMesh(out))
    for (std::size_t i = base.watertight ? 1 : 0; i < made.surfaces.size(); ++i)
      std::cout << wroteLine(files::companionPath(out, made.surfaces[i].name).string());
  std::cout << ui::fabricationCaution().toStdString() << "\n";
  return kDone;
}

}  // namespace

Verb exportVerb() {
  return {
      {"export",
       "FILE.zyga",
       QT_TRANSLATE_NOOP("words", "writes the posed bones as meshes"),
       {{"--out", "FILE", QT_TRANSLATE_NOOP("words", "its ending sets the format: glb, gltf, obj, ply, stl or dae")},
        {"--pose", "NAME", QT_TRANSLATE_NOOP("words", "a named pose instead of the present one")},
        {"--joined", "", QT_TRANSLATE_NOOP("words", "all bones as one mesh")},
        {"--watertight", "", QT_TRANSLATE_NOOP("words", "all bones as one closed surface, to sculpt on")},
        {"--voxel-mm", "N",
         QT_TRANSLATE_NOOP("words",
                           "detail of the closed surface; a two-thousandth of the animal unless said otherwise")},
        {"--fill-joints", "",
         QT_TRANSLATE_NOOP("words", "joints of the closed surface are filled where cartilage was")},
        {"--body-guide", "",
         QT_TRANSLATE_NOOP("words", "also an envelope of the thickness saved in the project: a guide, not anatomy")},
        {"--triangles", "N",
         QT_TRANSLATE_NOOP("words",
                           "about so many a bone, 12000 unless said otherwise; with --watertight in all, 300000")},
        {"--unit", "m|cm|mm", QT_TRANSLATE_NOOP("words", "metres unless said otherwise; glTF is always in metres")},
        {"--up", "y|z", QT_TRANSLATE_NOOP("words", "z unless said otherwise; glTF is always y up")}},
       QT_TRANSLATE_NOOP("words",
                         "In glTF and COLLADA nodes are named by bone and nested as the joints are; OBJ has an object "
                         "a bone; PLY and STL\n"
                         "hold a single mesh; a body guide then goes into a file beside it. Z up: x forward, y left. Y "
                         "up: z forward, x left.\n")},
      exportVerbRun};
}

}  // namespace zyga::app
