#include <Eigen/Geometry>
#include <cmath>
#include <iostream>

#include "app/verbs/scan_options.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/verbs.h"
#include "core/anatomy/marks/bone_guess.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"
#include "core/solid/mesh/mass_properties.h"

namespace zyga::app {
namespace {

using files::jsonString;
using files::list;
using files::member;
using files::onLines;
using files::onOneLine;

/// Everything the verb tells; lengths in m, by the unit given or guessed.
struct Inspection {
  std::string file;
  files::CleanScan scan;
  double unit = 1;
  Eigen::AlignedBox3d bounds;
  solid::MassProperties mass;
  std::optional<anatomy::BoneGuess> bone;
};

Inspection inspect(const Arguments& arguments) {
  Inspection out;
  out.file = arguments.file;
  out.scan = readCleanScan(arguments.file);
  out.unit = unitOf(arguments, out.scan);
  for (const auto& p : out.scan.mesh.positions) out.bounds.extend(p.cast<double>() * out.unit);
  out.mass = solid::massProperties(out.scan.mesh);
  out.bone = anatomy::guessBone(arguments.file);
  return out;
}

std::string texts(const std::vector<std::string>& words) {
  std::vector<std::string> items;
  for (const auto& word : words) items.push_back(jsonString(word));
  return list(items);
}

std::string axesJson(const Inspection& it) {
  std::vector<std::string> axes;
  for (int i = 0; i < 3; ++i) {
    const double spread = std::sqrt(std::max(0.0, it.mass.variances(i))) * it.unit;
    axes.push_back(
        onOneLine({member("direction", pointJson(it.mass.axes.col(i))), member("spread_m", millionths(spread))}));
  }
  return list(axes);
}

std::string boneJson(const std::optional<anatomy::BoneGuess>& bone) {
  if (!bone) return "null";
  return onOneLine({member("bone", jsonString(toId(bone->name))),
                    member("confidence", files::toNumeral(bone->confidence)),
                    member("doubt", jsonString(bone->doubt))});
}

std::string json(const Inspection& it) {
  const auto& scan = it.scan;
  const double cubed = it.unit * it.unit * it.unit;
  return onLines({member("file", jsonString(it.file)), member("triangles", std::to_string(scan.mesh.triangles.size())),
                  member("vertices", std::to_string(scan.mesh.positions.size())),
                  member("closed", scan.flaws.closed() ? "true" : "false"),
                  member("surfaces", std::to_string(scan.flaws.surfaces)),
                  member("holes", std::to_string(scan.flaws.holes)),
                  member("non_manifold_edges", std::to_string(scan.flaws.nonManifoldEdges)),
                  member("bounds_m", list({pointJson(it.bounds.min()), pointJson(it.bounds.max())})),
                  member("volume_m3", files::toNumeral(it.mass.volume * cubed)),
                  member("area_m2", files::toNumeral(it.mass.area * it.unit * it.unit)),
                  member("centroid_m", pointJson(it.mass.centroid * it.unit)), member("principal_axes", axesJson(it)),
                  member("unit_guess", jsonString(toText(scan.unitGuess.unit))),
                  member("unit_sure", scan.unitGuess.sure ? "true" : "false"),
                  member("unit_used_m", files::toNumeral(it.unit)),
                  member("up_guess", jsonString(scan.up == anatomy::ScanUp::Y ? "y" : "z")),
                  member("bone_guess", boneJson(it.bone)), member("repairs", texts(scan.repairs)),
                  member("flaws", texts(flawsInWords(scan.flaws, it.unit)))},
                 "", '{', '}') +
         "\n";
}

void printAll(const char* heading, const std::vector<std::string>& words) {
  std::cout << "  " << heading << ":" << (words.empty() ? " none\n" : "\n");
  for (const auto& word : words) std::cout << "    " << word << "\n";
}

void print(const Inspection& it) {
  const auto& scan = it.scan;
  const Eigen::Vector3d size = it.bounds.sizes();
  std::cout << it.file << "\n  " << scan.mesh.triangles.size() << " triangles, " << scan.mesh.positions.size()
            << " vertices, " << (scan.flaws.closed() ? "closed" : "not closed") << "\n"
            << "  size " << millionths(size.x()) << " x " << millionths(size.y()) << " x " << millionths(size.z())
            << " m, volume " << millionths(it.mass.volume * it.unit * it.unit * it.unit * 1e6) << " cm3\n"
            << "  unit guessed " << toText(scan.unitGuess.unit) << (scan.unitGuess.sure ? "" : ", not sure") << "\n";
  if (it.bone) {
    std::cout << "  by its name " << title(it.bone->name) << " (" << toId(it.bone->name) << ")"
              << (it.bone->doubt.empty() ? "" : "; " + it.bone->doubt) << "\n";
  }
  printAll("repairs", scan.repairs);
  printAll("left as found", flawsInWords(scan.flaws, it.unit));
}

int inspectVerbRun(const VerbSpec&, const Arguments& arguments) {
  const auto inspection = inspect(arguments);
  if (arguments.has("--json")) {
    std::cout << json(inspection);
  } else {
    print(inspection);
  }
  return kDone;
}

}  // namespace

Verb inspectVerb() {
  return {{"inspect",
           "MESH",
           "tells what a mesh file holds and what cleaning it takes",
           {{"--unit", "mm|cm|m", "the file's unit; guessed from its size unless said"},
            {"--json", "", "everything, for machines"}},
           "The file is read by a process of its own with limits on time and memory, and is not changed.\n"},
          inspectVerbRun};
}

}  // namespace zyga::app
