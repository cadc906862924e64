#include "app/verbs/scan_answer.h"

#include <QCoreApplication>
#include <QStringList>
#include <iostream>

#include "app/verbs/scan_options.h"
#include "app/verbs/verb_words.h"
#include "core/files/json/json_write.h"
#include "core/range/overlap.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/scan_size_words.h"
#include "ui/words/scan_words.h"

namespace zyga::app {
namespace {

namespace json = files::json;
using anatomy::SuggestedMarks;

std::string nameOf(const std::filesystem::path& file, const std::string& part) {
  return part.empty() ? file.string() : said(QT_TRANSLATE_NOOP("words", "%1, part %2"), {file.string(), part});
}

/// What is known of the unit of several.
void printUnit(const files::ScanSet& set) {
  if (set.bones.size() < 2) return;
  const files::UnitBy by = set.bones.front().unitBy;
  const QString known = ui::unitOfSetSaid(set.unit, by);
  if (by == files::UnitBy::Size && !set.unit.sure)
    std::cout << said(QT_TRANSLATE_NOOP("words", "%1: give --unit"), {known}) << "\n";
  else
    std::cout << known.toStdString() << "\n";
}

void printBone(const files::ScanOfSet& of, const files::ProjectScan& scan) {
  const char* unit = of.unitSure ? QT_TRANSLATE_NOOP("words", "taken to be in %1")
                                 : QT_TRANSLATE_NOOP("words", "taken to be in %1, which is not sure");
  const QStringList parts{
      ui::filled(
          ui::translated(QT_TRANSLATE_NOOP("words", "%1 is %2")),
          {QString::fromStdString(nameOf(of.file, of.clean.part)), QString::fromStdString(toId(scan.scan.bone))}),
      ui::translated(QT_TRANSLATE_N_NOOP("words", "%n triangles"), static_cast<int>(of.clean.mesh.triangles.size())),
      ui::filled(ui::translated(unit), {ui::unitText(scan.scan.unit)}),
      ui::translated(scan.scan.placed ? QT_TRANSLATE_NOOP("words", "placed by its landmarks")
                                      : QT_TRANSLATE_NOOP("words", "placed by a guess"))};
  std::cout << ui::inOneLine(parts).toStdString() << "\n";
  for (const QString& repair : ui::repairsSaid(of.clean, anatomy::metresOf(scan.scan.unit)))
    std::cout << "  " << repair.toStdString() << "\n";
  for (const QString& flaw : ui::flawsSaid(of.clean.flaws, anatomy::metresOf(scan.scan.unit)))
    std::cout << "  " << flaw.toStdString() << "\n";
}

/// "  Incomplete scan: open borders: 3, at least 33 % of the closed surface is missing"
void printRemarks(const files::ProjectScan& scan, const ScanRemarks& remarks) {
  const QStringList missing = ui::missingSaid(scan.borders, remarks.sides);
  if (!missing.isEmpty())
    std::cout << "  " << said(QT_TRANSLATE_NOOP("words", "incomplete scan: %1"), {missing.join("; ")}) << "\n";
  for (const QString& doubt : ui::doubtsSaid(remarks.doubts))
    std::cout << "  " << said(QT_TRANSLATE_NOOP("words", "in doubt: %1"), {doubt}) << "\n";
  if (remarks.advised && remarks.advised->by)
    std::cout << "  " << said(QT_TRANSLATE_NOOP("words", "advised: %1"), {ui::say(remarks.advised->why)}) << "\n";
}

/// What a landmark is called in the list of marks.
QString markWords(const std::string& name, const std::vector<anatomy::WantedMark>& wanted) {
  for (const anatomy::WantedMark& mark : wanted)
    if (mark.name == name && !mark.what.id.empty()) return ui::say(mark.what);
  return QString::fromStdString(name);
}

/// Marks that are suggested and yet not sure enough to be taken.
void printUnsure(const SuggestedMarks& marks, const std::vector<anatomy::WantedMark>& wanted) {
  QStringList unsure;
  const auto tell = [&](const QString& name, double confidence) {
    if (confidence < anatomy::kSureEnough)
      unsure << ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "%1 (%2)")), {name, ui::percent(confidence)});
  };
  for (const auto& mark : marks.landmarks) tell(markWords(mark.name, wanted), mark.confidence);
  for (const auto& facet : marks.facets) tell(ui::say(termOf(facet.marked.facet.role)), facet.confidence);
  if (!unsure.isEmpty())
    std::cout << "  "
              << said(QT_TRANSLATE_NOOP("words", "found but not sure enough, left to be marked by hand: %1"),
                      {ui::inOneLine(unsure)})
              << "\n";
}

void printSuggested(const solid::ColumnSuggestion& found) {
  for (const solid::FoundJoint& joint : found.joints) {
    if (!joint.found) {
      std::cout << ui::say(reason::Reason{solid::fault::kAtJoint, {reason::text(joint.id), reason::inner(joint.why)}})
                       .toStdString()
                << "\n";
      continue;
    }
    const char* form = joint.ballAndSocket
                           ? QT_TRANSLATE_NOOP("words", "%1: facets, ball and socket suggested, %2 sure")
                           : QT_TRANSLATE_NOOP("words", "%1: facets and flat ends of the centra suggested, %2 sure");
    std::cout << said(form, {joint.id, ui::percent(joint.confidence)}) << "\n";
  }
}

json::Value millimetresJson(double length) { return json::millionths(length * 1000); }

json::Value sentences(const QStringList& said) {
  std::vector<std::string> out;
  for (const QString& sentence : said) out.push_back(sentence.toStdString());
  return json::arrayOf(out);
}

json::Value reasonsJson(const std::vector<reason::Reason>& reasons) {
  QStringList out;
  for (const reason::Reason& each : reasons) out << ui::say(each);
  return sentences(out);
}

/// Who has set a mark that stands on a scan.
std::string_view setBy(bool inTable, bool suggested) { return inTable ? "table" : suggested ? "suggestion" : "rule"; }

json::Value landmarksJson(const anatomy::Scan& scan, const anatomy::Scan& given, const SuggestedMarks* suggested) {
  std::vector<json::Value> out;
  for (const auto& [name, p] : scan.landmarks) {
    const auto* known = suggested ? suggested->landmark(name) : nullptr;
    const bool inTable = given.landmarks.contains(name);
    out.push_back(json::object({{"landmark", name},
                                {"place_mm", json::point(Eigen::Vector3d(p * 1000))},
                                {"set_by", setBy(inTable, known)},
                                {"confidence", known && !inTable ? json::millionths(known->confidence) : json::Value()},
                                {"taken", true}}));
  }
  if (!suggested) return json::arrayOf(out);
  for (const auto& mark : suggested->landmarks)
    if (!scan.landmarks.contains(mark.name))
      out.push_back(json::object({{"landmark", mark.name},
                                  {"place_mm", json::point(Eigen::Vector3d(mark.place * 1000))},
                                  {"set_by", setBy(false, true)},
                                  {"confidence", json::millionths(mark.confidence)},
                                  {"taken", false}}));
  return json::arrayOf(out);
}

json::Value facetJson(const anatomy::ScanFacet& marked, std::string_view by, const SuggestedMarks::MarkedFacet* known,
                      bool taken) {
  const anatomy::Facet& f = marked.facet;
  return json::object({{"facet", toText(f.role)},
                       {"centre_mm", json::point(Eigen::Vector3d(f.centre * 1000))},
                       {"normal", json::point(f.normal)},
                       {"slide", json::point(f.slide)},
                       {"area_mm2", json::millionths((known ? known->area : range::signedArea(f.outline)) * 1e6)},
                       {"length_mm", millimetresJson(f.length())},
                       {"width_mm", millimetresJson(f.width())},
                       {"residual_mm", millimetresJson(marked.residual)},
                       {"set_by", by},
                       {"confidence", known ? json::millionths(known->confidence) : json::Value()},
                       {"taken", taken}});
}

json::Value facetsJson(const anatomy::Scan& scan, const anatomy::Scan& given, const SuggestedMarks* suggested) {
  std::vector<json::Value> out;
  for (const anatomy::ScanFacet& marked : scan.facets) {
    const auto role = marked.facet.role;
    const bool inTable = anatomy::facetOf(given, role) != nullptr;
    out.push_back(
        facetJson(marked, setBy(inTable, !inTable), suggested && !inTable ? suggested->facet(role) : nullptr, true));
  }
  if (suggested)
    for (const auto& facet : suggested->facets)
      if (!anatomy::facetOf(scan, facet.marked.facet.role))
        out.push_back(facetJson(facet.marked, setBy(false, true), &facet, false));
  return json::arrayOf(out);
}

json::Value midPlaneJson(const std::optional<solid::MidPlane>& plane) {
  if (!plane) return {};
  return json::object({{"point_mm", json::point(Eigen::Vector3d(plane->point * 1000))},
                       {"normal", json::point(plane->normal)},
                       {"residual_mm", millimetresJson(plane->residual)}});
}

json::Value canalJson(const std::optional<solid::NeuralCanal>& canal) {
  if (!canal) return {};
  return json::object({{"cranial_mm", json::point(Eigen::Vector3d(canal->cranial * 1000))},
                       {"caudal_mm", json::point(Eigen::Vector3d(canal->caudal * 1000))},
                       {"radius_mm", millimetresJson(canal->radius)},
                       {"confidence", json::millionths(canal->confidence)}});
}

json::Value doubtsJson(const std::vector<anatomy::MarkDoubt>& doubts) {
  std::vector<json::Value> out;
  for (const anatomy::MarkDoubt& doubt : doubts)
    out.push_back(
        json::object({{"mark", doubt.mark}, {"id", doubt.why.id.text}, {"why", ui::say(doubt.why).toStdString()}}));
  return json::arrayOf(out);
}

json::Value missingJson(const files::ProjectScan& scan, const ScanRemarks& remarks) {
  return json::object({{"borders", scan.borders.borders},
                       {"border_length_mm", millimetresJson(scan.borders.length)},
                       {"share", json::millionths(scan.borders.missing())},
                       {"one_sided_share", remarks.sides ? json::millionths(remarks.sides->share) : json::Value()},
                       {"said", sentences(ui::missingSaid(scan.borders, remarks.sides))}});
}

json::Value advisedJson(const std::optional<anatomy::AdvisedStraightening>& advised) {
  if (!advised) return {};
  const char* correction = !advised->by ? "none" : *advised->by == anatomy::DeformedBy::Shear ? "shear" : "compression";
  return json::object({{"correction", correction}, {"why", ui::say(advised->why).toStdString()}});
}

json::Value partJson(const std::string& part) { return part.empty() ? json::Value() : json::Value(part); }

json::Value boneJson(const ScansBroughtIn& scans, std::size_t i) {
  const files::ScanOfSet& of = scans.set.bones[i];
  const anatomy::Scan& scan = scans.scans[i].scan;
  const double unit = anatomy::metresOf(scan.unit);
  const SuggestedMarks* suggested = scans.found ? &scans.found->marks[i] : nullptr;
  return json::object({{"file", of.file.string()},
                       {"part", partJson(of.clean.part)},
                       {"bone", toId(scan.bone)},
                       {"bone_confidence", json::millionths(of.bone.confidence)},
                       {"bone_doubts", reasonsJson(of.bone.doubts)},
                       {"unit", toText(scan.unit)},
                       {"unit_by", toText(of.unitBy)},
                       {"unit_sure", of.unitSure},
                       {"extent_mm", millimetresJson(of.clean.extent * unit)},
                       {"triangles", of.clean.mesh.triangles.size()},
                       {"closed", of.clean.flaws.closed()},
                       {"repairs", sentences(ui::repairsSaid(of.clean, unit))},
                       {"thinned", thinnedJson(of.clean, unit)},
                       {"flaws", sentences(ui::flawsSaid(of.clean.flaws, unit))},
                       {"placed", scan.placed},
                       {"mid_plane", scans.found ? midPlaneJson(scans.found->midPlanes[i]) : json::Value()},
                       {"neural_canal", scans.found ? canalJson(scans.found->canals[i]) : json::Value()},
                       {"landmarks", landmarksJson(scan, scans.given[i], suggested)},
                       {"facets", facetsJson(scan, scans.given[i], suggested)},
                       {"doubts", doubtsJson(scans.remarks[i].doubts)},
                       {"missing", missingJson(scans.scans[i], scans.remarks[i])},
                       {"advised", advisedJson(scans.remarks[i].advised)},
                       {"left_open", suggested ? reasonsJson(suggested->leftOut) : json::array({})}});
}

json::Value jointJson(const solid::FoundJoint& joint) {
  return json::object({{"id", joint.id},
                       {"found", joint.found},
                       {"confidence", joint.found ? json::millionths(joint.confidence) : json::Value()},
                       {"ball_and_socket", joint.found ? json::Value(joint.ballAndSocket) : json::Value()},
                       {"disc_mm", joint.found ? millimetresJson(joint.disc) : json::Value()},
                       {"joint_space_mm", joint.found ? millimetresJson(joint.jointSpace) : json::Value()},
                       {"why_not", joint.found ? json::Value() : json::Value(ui::say(joint.why).toStdString())}});
}

}  // namespace

void printScans(const ScansBroughtIn& scans) {
  printUnit(scans.set);
  for (std::size_t i = 0; i < scans.scans.size(); ++i) {
    printBone(scans.set.bones[i], scans.scans[i]);
    printRemarks(scans.scans[i], scans.remarks[i]);
    if (!scans.found) continue;
    const SuggestedMarks& marks = scans.found->marks[i];
    printUnsure(marks, scans.wanted[i]);
    for (const reason::Reason& why : marks.leftOut)
      if (why.id != solid::fault::kAtJoint) std::cout << "  " << ui::say(why).toStdString() << "\n";
  }
  if (scans.found) printSuggested(*scans.found);
  for (const files::CarriedTo& carried : scans.carried) std::cout << ui::carriedSaid(carried).toStdString() << "\n";
  for (const auto& left : scans.set.leftOut)
    std::cout << said(QT_TRANSLATE_NOOP("words", "%1 is left out: %2"),
                      {nameOf(left.file, left.part), ui::say(left.why)})
              << "\n";
}

std::string scansJson(const ScansBroughtIn& scans, const std::string& out) {
  std::vector<json::Value> bones, left, joints, carried;
  for (const files::CarriedTo& of : scans.carried)
    carried.push_back(json::object({{"to", toId(of.to)},
                                    {"from", toId(of.from)},
                                    {"misfit", json::millionths(of.misfit)},
                                    {"marks", of.marks},
                                    {"left_out", reasonsJson(of.leftOut)}}));
  for (std::size_t i = 0; i < scans.scans.size(); ++i) bones.push_back(boneJson(scans, i));
  for (const auto& each : scans.set.leftOut)
    left.push_back(json::object(
        {{"file", each.file.string()}, {"part", partJson(each.part)}, {"why", ui::say(each.why).toStdString()}}));
  if (scans.found)
    for (const auto& joint : scans.found->joints) joints.push_back(jointJson(joint));
  return json::document(json::object({{"file", out},
                                      {"unit", toText(scans.set.unit.unit)},
                                      {"unit_sure", scans.set.unit.sure},
                                      {"size_factor", json::millionths(scans.set.unit.factor)},
                                      {"bones", json::arrayOf(bones, json::Layout::OnLines)},
                                      {"joints", json::arrayOf(joints, json::Layout::OnLines)},
                                      {"left_out", json::arrayOf(left, json::Layout::OnLines)},
                                      {"carried", json::arrayOf(carried, json::Layout::OnLines)},
                                      {"lacking", json::arrayOf(scans.lacking)},
                                      {"warnings", json::arrayOf(scans.warnings)}},
                                     json::Layout::OnLines));
}

}  // namespace zyga::app
