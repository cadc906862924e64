#include <iostream>

#include "app/verbs/project_file.h"
#include "app/verbs/sculpting.h"
#include "app/verbs/verbs.h"
#include "core/files/mesh_export.h"

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

std::size_t trianglesOf(const Arguments& arguments) {
  const auto given = arguments.find("--triangles");
  return static_cast<std::size_t>(given ? numberOf({"--triangles", *given}, 200, 200000, "a number") : 12000.0);
}

int exportVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  const auto options = optionsOf(arguments);
  files::checkExport(out);
  const auto triangles = trianglesOf(arguments);
  const auto project = files::readProject(arguments.file);
  const auto chosen = choosePose(project, arguments);
  const auto X_WB = kinematics::place(project.specimen, articulationOf(project), chosen.pose);
  files::exportMeshes(project.specimen, X_WB, sculpt(project, triangles), out, options);
  std::cout << "wrote " << out << "\n";
  return kDone;
}

}  // namespace

Verb exportVerb() {
  return {{"export",
           "FILE.zyga",
           "writes the posed bones as meshes",
           {{"--out", "FILE", "its ending sets the format: glb, gltf, obj, ply, stl or dae"},
            {"--pose", "NAME", "a named pose instead of the present one"},
            {"--joined", "", "all bones as one mesh"},
            {"--triangles", "N", "about so many a bone; 12000 unless said otherwise"},
            {"--unit", "m|cm|mm", "metres unless said otherwise; glTF is always in metres"},
            {"--up", "y|z", "z unless said otherwise; glTF is always y up"}},
           "In glTF and COLLADA nodes are named by bone and nested as the joints are; OBJ has an object a bone; PLY "
           "and STL\n"
           "hold a single mesh. Z up: x forward, y left. Y up: z forward, x left.\n"},
          exportVerbRun};
}

}  // namespace zyga::app
