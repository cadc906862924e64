#include <Eigen/LU>
#include <algorithm>
#include <set>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/disk/container.h"
#include "core/files/project/project.h"
#include "core/files/project/project_body_guide.h"
#include "core/files/project/project_claims.h"
#include "core/files/project/project_faults.h"
#include "core/files/project/project_ground.h"
#include "core/files/project/project_locks.h"
#include "core/files/project/project_notes.h"
#include "core/files/project/project_scan_json.h"
#include "core/files/project/project_schema.h"
#include "core/files/project/project_sheet.h"

namespace zyga::files {
namespace {

constexpr double kRotationTolerance = 1e-6;
constexpr std::uint64_t kLargestText = 256 << 20;  ///< bytes of a project's text in a container

void checkHeader(const JsonPlace& root, const std::string& name) {
  const auto schemaName = root.find("schema");
  if (!schemaName || schemaName->string() != schema::kName) {
    throw FileError({fault::kNotAProject, {reason::text(name), reason::text(schema::kName)}});
  }
  const auto place = root["version"];
  const int version = place.integer();
  if (version > kProjectVersion) {
    place.fail({fault::kNewerVersion, {reason::Count{version}, reason::Count{kProjectVersion}}});
  }
  if (version < 1) place.fail({fault::kNoSuchVersion, {reason::Count{version}}});
}

double readLength(const JsonPlace& place) { return fromNumeral(place.numeral(), schema::kMillimetres); }

double readNotNegative(const JsonPlace& place, int places = 0) {
  const double value = fromNumeral(place.numeral(), places);
  if (value < 0) place.fail(fault::kNegative);
  return value;
}

anatomy::RegionCounts readCounts(const JsonPlace& place, const anatomy::PlanTable& plan) {
  anatomy::RegionCounts counts;
  for (std::size_t i = 0; i < schema::kCountKeys.size(); ++i) {
    const std::string_view key = schema::kCountKeys[i];
    const auto& [kind, count, bounds] = anatomy::kCountedRegions[i];
    const auto [least, most] = plan.*bounds;
    if (most == 0) continue;
    counts.*count = place[key].integer();
    if (counts.*count < least || counts.*count > most) {
      place[key].fail({fault::kOutOfBounds, {reason::Count{least}, reason::Count{most}}});
    }
  }
  return counts;
}

range::Cartilage readCartilage(const JsonPlace& place) {
  place.allowOnly({"amount", "unit"});
  return {schema::readWord(place["unit"], schema::kCartilageUnits), readNotNegative(place["amount"])};
}

range::Assumptions readAssumptions(const JsonPlace& place) {
  range::Assumptions assumptions;
  std::vector<std::string_view> keys{
      "overlap_by",       "neutral_by",         "horizontal_by", schema::kContactMillimetres, schema::kContactPercent,
      "settling_percent", "inferred_neighbours"};
  assumptions.overlapBy = schema::readWord(place["overlap_by"], schema::kOverlapBy);
  for (const auto& [key, field] : schema::kShares) {
    assumptions.*field = readNotNegative(place[key], schema::kPercent);
    keys.push_back(key);
  }
  // Older files know neither the second definition of neutral nor contact: they keep the defaults.
  if (const auto neutral = place.find("neutral_by")) {
    assumptions.neutralBy = schema::readWord(*neutral, schema::kNeutralBy);
  }
  if (const auto horizontal = place.find("horizontal_by")) {
    assumptions.horizontalBy = schema::readWord(*horizontal, schema::kHorizontalBy);
  }
  using range::ContactTolerance;
  const auto millimetres = place.find(schema::kContactMillimetres);
  if (millimetres) assumptions.contactTolerated = {ContactTolerance::In::Millimetres, readNotNegative(*millimetres)};
  if (const auto percent = place.find(schema::kContactPercent)) {
    if (millimetres) percent->fail({fault::kOneOf, {shown(schema::kContactMillimetres)}});
    assumptions.contactTolerated = {ContactTolerance::In::PercentOfBone, readNotNegative(*percent)};
  }
  if (const auto neighbours = place.find("inferred_neighbours")) assumptions.inferredNeighbours = neighbours->boolean();
  if (const auto settling = place.find("settling_percent")) {
    assumptions.settling = readNotNegative(*settling, schema::kPercent);
    if (assumptions.settling > 1) settling->fail({fault::kOutOfBounds, {reason::Count{0}, reason::Count{100}}});
  }
  for (const auto& [key, field] : schema::kCartilages) {
    assumptions.*field = readCartilage(place[key]);
    keys.push_back(key);
  }
  place.allowOnly(keys);
  if (assumptions.minOverlap > 1)
    place["least_overlap_percent"].fail({fault::kOutOfBounds, {reason::Count{0}, reason::Count{100}}});
  return assumptions;
}

anatomy::Cell readCell(const JsonPlace& place, anatomy::Measure measure) {
  const auto items = place.items();
  if (items.size() < 2 || items.size() > 4) place.fail(fault::kCellForm);
  anatomy::Cell cell;
  cell.value = isAngle(measure)    ? radians(items[0].numeral())
               : isSigned(measure) ? readLength(items[0])
                                   : readNotNegative(items[0], schema::kMillimetres);
  cell.origin = schema::readWord(items[1], schema::kOrigins);
  if (items.size() >= 3) cell.rule = anatomy::fillRuleFromText(items[2].string());
  // Older files state no standard errors.
  if (items.size() == 4) {
    cell.standardError = isAngle(measure) ? radians(items[3].numeral()) : readLength(items[3]);
    if (cell.standardError < 0) items[3].fail(fault::kNegative);
  }
  return cell;
}

/// Measure whose key in the file this is.
std::optional<anatomy::Measure> measureOf(std::string_view key) {
  for (int i = 0; i < anatomy::kMeasureCount; ++i) {
    const auto measure = static_cast<anatomy::Measure>(i);
    if (schema::cellKey(measure) == key) return measure;
  }
  return std::nullopt;
}

anatomy::TableRow readBone(const JsonPlace& place) {
  place.allowOnly({"bone", "evidence", "source", "cells"});
  anatomy::TableRow row;
  const auto id = place["bone"];
  const auto name = anatomy::parseBoneId(id.string());
  if (!name) id.fail({fault::kNoBone, {shown(id.string())}});
  row.name = *name;
  const auto evidence = place["evidence"];
  const auto known = anatomy::evidenceFromText(evidence.string());
  if (!known) evidence.fail({fault::kNoEvidence, {shown(evidence.string())}});
  row.evidence = *known;
  row.source = place["source"].string();
  for (const auto& [key, cell] : place["cells"].members()) {
    const auto measure = measureOf(key);
    if (!measure) cell.fail(fault::kNoMeasure);
    row.measures[*measure] = readCell(cell, *measure);
  }
  return row;
}

/// Every bone once, and only bones that an animal with these counts has.
std::vector<anatomy::TableRow> readBones(const JsonPlace& place, anatomy::BodyPlan plan,
                                         const anatomy::RegionCounts& counts) {
  const auto all = anatomy::allBones(plan, counts);
  const std::set<anatomy::BoneName> allowed(all.begin(), all.end());
  std::set<anatomy::BoneName> seen;
  std::vector<anatomy::TableRow> rows;
  for (const auto& item : place.items()) {
    rows.push_back(readBone(item));
    const auto& name = rows.back().name;
    if (!allowed.contains(name)) item["bone"].fail({fault::kNoBoneInPlan, {reason::text(toId(name))}});
    if (!seen.insert(name).second) item["bone"].fail({fault::kBoneTwice, {reason::text(toId(name))}});
  }
  return rows;
}

anatomy::MeasurementTable readTable(const JsonPlace& root) {
  anatomy::MeasurementTable table;
  table.name = root["specimen"].string();
  const auto plan = root["plan"];
  const auto known = anatomy::bodyPlanFromText(plan.string());
  if (!known) plan.fail({fault::kNoPlan, {shown(plan.string())}});
  table.plan = *known;
  table.counts = readCounts(root["counts"], anatomy::planTable(table.plan));
  root["region_totals_mm"].allowOnly({"neck", "trunk", "sacrum", "tail"});
  for (const auto& [key, total] : root["region_totals_mm"].members()) {
    table.regionTotals[key] = readNotNegative(total, schema::kMillimetres);
  }
  table.rows = readBones(root["bones"], table.plan, table.counts);
  return table;
}

Eigen::Matrix3d readRotation(const JsonPlace& place) {
  Eigen::Matrix3d R;
  const auto rows = place.items(3, kRows);
  for (int i = 0; i < 3; ++i) {
    const auto items = rows[static_cast<std::size_t>(i)].items(3, kNumbers);
    for (int j = 0; j < 3; ++j) R(i, j) = items[static_cast<std::size_t>(j)].number();
  }
  const bool orthogonal = (R * R.transpose()).isApprox(Eigen::Matrix3d::Identity(), kRotationTolerance);
  if (!orthogonal || R.determinant() < 0) place.fail(fault::kNotRotation);
  return R;
}

kinematics::Pose readPose(const JsonPlace& place, const anatomy::Specimen& specimen) {
  auto pose = kinematics::Pose::neutral(specimen);
  const auto position = place["root_position_mm"].items(3, kNumbers);
  for (int i = 0; i < 3; ++i) pose.X_WRoot.translation()(i) = readLength(position[static_cast<std::size_t>(i)]);
  pose.X_WRoot.linear() = readRotation(place["root_rotation"]);
  for (const auto& [id, angles] : place["angles_deg"].members()) {
    const auto joint = specimen.findJoint(id);
    if (!joint) angles.fail({fault::kNoJoint, {shown(id)}});
    const auto items = angles.items(3, kAnglesInDegrees);
    for (int i = 0; i < 3; ++i) pose[*joint](i) = radians(items[static_cast<std::size_t>(i)].numeral());
  }
  if (const auto typed = place.find(schema::kAxialTyped)) {
    for (const auto& id : typed->items()) {
      const auto joint = specimen.findJoint(id.string());
      if (!joint) id.fail({fault::kNoJoint, {shown(id.string())}});
      pose.setAxialTyped(*joint, true);
    }
  }
  return pose;
}

anatomy::Specimen build(const anatomy::MeasurementTable& table, const JsonPlace& bones) {
  try {
    return anatomy::buildSpecimen(table);
  } catch (const std::exception& error) {
    bones.fail({fault::kTableIncomplete, {reason::inner(reasonOf(error))}});
  }
}

void putScansIn(Project& project, const JsonPlace& place) {
  project.scans = readScans(place);
  try {
    project.setSpecimen(anatomy::withScans(project.specimen(), recordsOf(project.scans)));
  } catch (const reason::Failure& failure) {
    place.fail(failure.reason());
  }
}

Project readDocument(const JsonPlace& root) {
  root.allowOnly({"schema", "version", "specimen", "plan", "counts", "region_totals_mm", "assumptions", "pose", "poses",
                  "bones", "scans", kTrackwayKey, kDensitiesKey, kHullFactorsKey, kClaimsKey, kNotesKey, kSheetKey,
                  kBodyGuideKey, kLockedKey});
  Project project;
  project.table = readTable(root);
  project.setSpecimen(build(project.table, root["bones"]));
  if (const auto scans = root.find("scans")) putScansIn(project, *scans);
  project.assumptions = readAssumptions(root["assumptions"]);
  const auto pose = root["pose"];
  pose.allowOnly({"root_position_mm", "root_rotation", "angles_deg", schema::kAxialTyped});
  project.pose = readPose(pose, project.specimen());
  for (const auto& item : root["poses"].items()) {
    item.allowOnly({"name", "root_position_mm", "root_rotation", "angles_deg", schema::kAxialTyped});
    project.poses.push_back({item["name"].string(), readPose(item, project.specimen())});
  }
  readGround(root, project);
  readClaims(root, project);
  readNotes(root, project);
  readSheet(root, project);
  readBodyGuide(root, project);
  readLocks(root, project);
  return project;
}

/// What was built from the records alone takes every bone that has one for scanned.
void labelStandIns(Project& project) {
  const auto& scans = project.scans;
  if (std::any_of(scans.begin(), scans.end(), [](const ProjectScan& s) { return !s.trouble.empty(); }))
    project.setSpecimen(specimenOf(project.table, scans));
}

}  // namespace

Project parseProject(std::string_view text, std::string_view name) {
  const auto document = parseJson(text, name);
  const JsonPlace root(document);
  checkHeader(root, document.name);
  return readDocument(root);
}

Project readProject(const Container& container, const std::filesystem::path& name) {
  const auto fail = [&name](reason::Reason cause) {
    throw FileError({fault::kCannotOpen, {pathText(name), reason::inner(std::move(cause))}});
  };
  const std::string entry(kProjectEntry);
  if (!container.has(entry)) fail({fault::kNoProjectInside, {reason::text(entry)}});
  std::string text;
  try {
    text = container.read(entry, kLargestText);
  } catch (const FileError& error) {
    fail({fault::kEntryFault, {reason::text(entry), reason::inner(error.reason())}});
  }
  auto project = parseProject(text, (name / entry).string());
  loadScanMeshes(project.scans, container, name);
  labelStandIns(project);
  return project;
}

Project readProject(const std::filesystem::path& path) {
  if (isContainer(path)) return readProject(Container(path), path);
  auto project = parseProject(readWhole(path), path.string());
  loadScanMeshes(project.scans, path);
  labelStandIns(project);
  return project;
}

bool takeScansOf(Project& project, const std::filesystem::path& other) {
  const auto missing = [&project] {
    return std::count_if(project.scans.begin(), project.scans.end(), [](const ProjectScan& s) { return !s.mesh; });
  };
  const auto before = missing();
  if (before == 0) return false;
  try {
    if (isContainer(other))
      loadScanMeshes(project.scans, Container(other), other);
    else
      loadScanMeshes(project.scans, other);
  } catch (const FileError&) {
    return false;  // a container that cannot be read has nothing to give
  }
  project.setSpecimen(specimenOf(project.table, project.scans));
  return missing() < before;
}

}  // namespace zyga::files
