#include <Eigen/Geometry>
#include <QCoreApplication>
#include <QStringList>
#include <cmath>
#include <iostream>

#include "app/verbs/scan_options.h"
#include "app/verbs/verbs.h"
#include "core/anatomy/marks/scan_guess.h"
#include "core/files/json/json_write.h"
#include "core/solid/mesh/open_borders.h"
#include "core/solid/mesh/triangle_mesh.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/scan_words.h"

namespace zyga::app {
namespace {

namespace json = files::json;

/// Everything the verb tells; lengths in m, by the unit given or guessed.
struct Inspection {
  std::string file;
  files::CleanScan scan;
  double unit = 1;
  Eigen::AlignedBox3d bounds;
  solid::MassProperties mass;
  std::optional<anatomy::BoneGuess> bone;
  solid::OpenBorders borders;
};

Inspection inspect(const Arguments& arguments) {
  Inspection out;
  out.file = arguments.file;
  out.scan = readCleanScan(arguments.file);
  out.unit = unitOf(arguments, out.scan);
  for (const auto& p : out.scan.mesh.positions) out.bounds.extend(p.cast<double>() * out.unit);
  out.mass = solid::massProperties(out.scan.mesh);
  out.bone = anatomy::guessBone(arguments.file);
  out.borders = solid::openBorders(out.scan.mesh);
  return out;
}

json::Value texts(const QStringList& words) {
  json::Value items = json::array({});
  for (const QString& word : words) items.push(word.toStdString());
  return items;
}

json::Value axesJson(const Inspection& it) {
  std::vector<json::Value> axes;
  for (int i = 0; i < 3; ++i) {
    const double spread = std::sqrt(std::max(0.0, it.mass.variances(i))) * it.unit;
    axes.push_back(
        json::object({{"direction", json::point(it.mass.axes.col(i))}, {"spread_m", json::millionths(spread)}}));
  }
  return json::arrayOf(axes);
}

QString doubtsOf(const anatomy::BoneGuess& guess) {
  QStringList doubts;
  for (const auto& doubt : guess.doubts) doubts << ui::say(doubt);
  return doubts.join("; ");
}

json::Value boneJson(const std::optional<anatomy::BoneGuess>& bone) {
  if (!bone) return {};
  return json::object({{"bone", toId(bone->name)},
                       {"confidence", json::number(bone->confidence)},
                       {"doubt", doubtsOf(*bone).toStdString()}});
}

std::string answerJson(const Inspection& it) {
  const auto& scan = it.scan;
  const double cubed = it.unit * it.unit * it.unit;
  return json::document(
      json::object({{"file", it.file},
                    {"triangles", scan.mesh.triangles.size()},
                    {"vertices", scan.mesh.positions.size()},
                    {"closed", scan.flaws.closed()},
                    {"surfaces", scan.flaws.surfaces},
                    {"holes", scan.flaws.holes},
                    {"non_manifold_edges", scan.flaws.nonManifoldEdges},
                    {"bounds_m", json::array({json::point(it.bounds.min()), json::point(it.bounds.max())})},
                    {"volume_m3", json::number(it.mass.volume * cubed)},
                    {"area_m2", json::number(it.mass.area * it.unit * it.unit)},
                    {"centroid_m", json::point(it.mass.centroid * it.unit)},
                    {"principal_axes", axesJson(it)},
                    {"unit_guess", toText(scan.unitGuess.unit)},
                    {"unit_sure", scan.unitGuess.sure},
                    {"unit_used_m", json::number(it.unit)},
                    {"up_guess", scan.up == anatomy::ScanUp::Y ? "y" : "z"},
                    {"bone_guess", boneJson(it.bone)},
                    {"repairs", texts(ui::repairsSaid(scan, it.unit))},
                    {"thinned", thinnedJson(scan, it.unit)},
                    {"flaws", texts(ui::flawsSaid(scan.flaws, it.unit))},
                    {"missing", json::object({{"borders", it.borders.borders},
                                              {"border_length_mm", json::number(it.borders.length * it.unit * 1000)},
                                              {"share", json::millionths(it.borders.missing())},
                                              {"said", texts(ui::missingSaid(it.borders, {}))}})}},
                   json::Layout::OnLines));
}

void line(const QString& words) { std::cout << "  " << words.toStdString() << "\n"; }

void printAll(const QString& heading, const QStringList& words) {
  line(heading);
  for (const QString& word : words) std::cout << "    " << word.toStdString() << "\n";
}

QString count(std::size_t number) { return QString::number(number); }

void print(const Inspection& it) {
  using ui::filled;
  using ui::translated;
  const auto& scan = it.scan;
  const Eigen::Vector3d size = it.bounds.sizes();
  const double litres = it.mass.volume * it.unit * it.unit * it.unit * 1000;
  std::cout << it.file << "\n";
  line(filled(translated(scan.flaws.closed() ? QT_TRANSLATE_NOOP("words", "%1 triangles, %2 vertices, closed")
                                             : QT_TRANSLATE_NOOP("words", "%1 triangles, %2 vertices, not closed")),
              {count(scan.mesh.triangles.size()), count(scan.mesh.positions.size())}));
  line(filled(translated(QT_TRANSLATE_NOOP("words", "size %1 × %2 × %3, volume %4\u00A0l")),
              {ui::millimetres(size.x()), ui::millimetres(size.y()), ui::millimetres(size.z()), ui::plain(litres, 3)}));
  line(filled(translated(scan.unitGuess.sure ? QT_TRANSLATE_NOOP("words", "unit guessed %1")
                                             : QT_TRANSLATE_NOOP("words", "unit guessed %1, not sure")),
              {QString::fromUtf8(toText(scan.unitGuess.unit).data())}));
  if (it.bone) {
    const QString named =
        filled(translated(QT_TRANSLATE_NOOP("words", "by its name %1")), {ui::boneNameAndId(it.bone->name)});
    const QString doubts = doubtsOf(*it.bone);
    line(doubts.isEmpty() ? named : filled(translated(QT_TRANSLATE_NOOP("words", "%1; %2")), {named, doubts}));
  }
  const QStringList repairs = ui::repairsSaid(scan, it.unit), flaws = ui::flawsSaid(scan.flaws, it.unit);
  printAll(translated(repairs.isEmpty() ? QT_TRANSLATE_NOOP("words", "repairs: none")
                                        : QT_TRANSLATE_NOOP("words", "repairs:")),
           repairs);
  printAll(translated(flaws.isEmpty() ? QT_TRANSLATE_NOOP("words", "left as found: nothing")
                                      : QT_TRANSLATE_NOOP("words", "left as found:")),
           flaws);
  const QStringList missing = ui::missingSaid(it.borders, {});
  if (!missing.isEmpty())
    line(filled(translated(QT_TRANSLATE_NOOP("words", "incomplete scan: %1")), {missing.join("; ")}));
}

int inspectVerbRun(const VerbSpec&, const Arguments& arguments) {
  const auto inspection = inspect(arguments);
  if (arguments.has("--json")) {
    std::cout << answerJson(inspection);
  } else {
    print(inspection);
  }
  return kDone;
}

}  // namespace

Verb inspectVerb() {
  return {{"inspect",
           "MESH",
           QT_TRANSLATE_NOOP("words", "tells what a mesh file holds and what cleaning it takes"),
           {{"--unit", "mm|cm|m", QT_TRANSLATE_NOOP("words", "the file's unit; guessed from its size unless said")},
            {"--json", "", QT_TRANSLATE_NOOP("words", "everything, for machines")}},
           QT_TRANSLATE_NOOP(
               "words",
               "The file is read by a process of its own with limits on time and memory, and is not changed.\n"
               "--json: also missing (borders, border_length_mm, share, said): of the surface closed flat over "
               "its open borders,\nwhat is not there, at least; thinned (from, to, error_mm): triangles where there "
               "were more than\na bone may have, else null.\n")},
          inspectVerbRun};
}

}  // namespace zyga::app
