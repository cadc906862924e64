#include "core/files/disk/atomic_file.h"
#include "core/files/disk/container.h"
#include "core/files/project/project.h"
#include "core/files/project/project_body_guide.h"
#include "core/files/project/project_claims.h"
#include "core/files/project/project_ground.h"
#include "core/files/project/project_locks.h"
#include "core/files/project/project_notes.h"
#include "core/files/project/project_scan_json.h"
#include "core/files/project/project_schema.h"
#include "core/files/project/project_sheet.h"

namespace zyga::files {
namespace {

json::Value countsJson(const anatomy::MeasurementTable& table) {
  json::Value members = json::object({});
  for (std::size_t i = 0; i < schema::kCountKeys.size(); ++i) {
    const auto& [kind, count, bounds] = anatomy::kCountedRegions[i];
    if ((anatomy::planTable(table.plan).*bounds).most > 0) members.add(schema::kCountKeys[i], table.counts.*count);
  }
  return members;
}

json::Value totalsJson(const std::map<std::string, double>& totals) {
  json::Value members = json::object({});
  for (const auto& [key, value] : totals)
    members.add(key, schema::numeral(value, schema::kMillimetres, [&key = key] { return reason::text(key); }));
  return members;
}

json::Value cartilageJson(const range::Cartilage& cartilage) {
  return json::object({{"amount", schema::numeral(cartilage.amount, 0, reason::Term{"project.cartilage"})},
                       {"unit", schema::wordOf(schema::kCartilageUnits, cartilage.in)}});
}

json::Value assumptionsJson(const range::Assumptions& assumptions) {
  constexpr reason::Term kTolerated{"project.contact-tolerated"};
  const bool ofBone = assumptions.contactTolerated.in == range::ContactTolerance::In::PercentOfBone;
  json::Value members =
      json::object({{"overlap_by", schema::wordOf(schema::kOverlapBy, assumptions.overlapBy)},
                    {"neutral_by", schema::wordOf(schema::kNeutralBy, assumptions.neutralBy)},
                    {"horizontal_by", schema::wordOf(schema::kHorizontalBy, assumptions.horizontalBy)}},
                   json::Layout::OnLines);
  for (const auto& [key, field] : schema::kShares)
    members.add(key, schema::numeral(assumptions.*field, schema::kPercent, [key = key] { return reason::text(key); }));
  members.add(ofBone ? schema::kContactPercent : schema::kContactMillimetres,
              schema::numeral(assumptions.contactTolerated.amount, 0, kTolerated));
  members.add("inferred_neighbours", assumptions.inferredNeighbours);
  members.add("settling_percent",
              schema::numeral(assumptions.settling, schema::kPercent, [] { return reason::text("settling_percent"); }));
  for (const auto& [key, field] : schema::kCartilages) members.add(key, cartilageJson(assumptions.*field));
  return members;
}

json::Value vectorJson(const Eigen::Vector3d& v, int places) {
  json::Value items = json::array({});
  for (const double x : v) items.push(schema::numeral(x, places, reason::Term{"project.animal-place"}));
  return items;
}

json::Value anglesJson(const kinematics::Pose& pose, const anatomy::Specimen& specimen) {
  json::Value members = json::Value::object(json::Layout::OnLines);
  for (std::size_t i = 0; i < specimen.joints.size() && i < pose.angles.size(); ++i) {
    if (pose.angles[i].isZero(0)) continue;
    const std::string& id = specimen.joints[i].id;
    const auto name = [&] { return reason::inner({fault::kAngleOf, {reason::text(id)}}); };
    json::Value items = json::array({});
    for (const double angle : pose.angles[i]) items.push(schema::degrees(angle, name));
    members.add(id, std::move(items));
  }
  return members;
}

/// To an object that may have a name already.
json::Value withPose(json::Value members, const kinematics::Pose& pose, const anatomy::Specimen& specimen) {
  // All nine numbers of the rotation: angles or a quaternion would not bring the same matrix back to the bit.
  const Eigen::Matrix3d R = pose.X_WRoot.linear();
  members.add("root_position_mm", vectorJson(pose.X_WRoot.translation(), schema::kMillimetres));
  members.add("root_rotation",
              json::array({vectorJson(R.row(0), 0), vectorJson(R.row(1), 0), vectorJson(R.row(2), 0)}));
  members.add("angles_deg", anglesJson(pose, specimen));
  std::vector<std::string> typed;
  for (const kinematics::JointIndex joint : pose.axialTyped) typed.push_back(specimen[joint].id);
  if (!typed.empty()) members.add(schema::kAxialTyped, json::arrayOf(typed));
  return members;
}

json::Value posesJson(const std::vector<NamedPose>& poses, const anatomy::Specimen& specimen) {
  json::Value all = json::Value::array(json::Layout::OnLines);
  for (const auto& named : poses)
    all.push(withPose(json::object({{"name", named.name}}, json::Layout::OnLines), named.pose, specimen));
  return all;
}

json::Value cellJson(const anatomy::Cell& cell, anatomy::Measure measure, const std::string& id) {
  const auto name = [&] {
    return reason::inner({fault::kMeasureOf, {reason::text(schema::cellKey(measure)), reason::text(id)}});
  };
  json::Value items = json::array(
      {isAngle(measure) ? schema::degrees(cell.value, name) : schema::numeral(cell.value, schema::kMillimetres, name),
       schema::wordOf(schema::kOrigins, cell.origin)});
  if (!cell.rule.empty() || cell.standardError > 0) items.push(toText(cell.rule));
  if (cell.standardError > 0)
    items.push(isAngle(measure) ? schema::degrees(cell.standardError, name)
                                : schema::numeral(cell.standardError, schema::kMillimetres, name));
  return items;
}

json::Value boneJson(const anatomy::TableRow& row) {
  const std::string id = toId(row.name);
  json::Value cells = json::object({});
  for (int i = 0; i < anatomy::kMeasureCount; ++i) {
    const auto measure = static_cast<anatomy::Measure>(i);
    const auto& cell = row.measures[measure];
    if (cell.known()) cells.add(schema::cellKey(measure), cellJson(cell, measure, id));
  }
  json::Value bone = json::object({{"bone", id}, {"evidence", toText(row.evidence)}, {"source", row.source}});
  return std::move(bone.add("cells", std::move(cells)));
}

json::Value bonesJson(const std::vector<anatomy::TableRow>& rows) {
  json::Value bones = json::Value::array(json::Layout::OnLines);
  for (const auto& row : rows) bones.push(boneJson(row));
  return bones;
}

}  // namespace

std::string writeProjectText(const Project& project) {
  constexpr json::Layout kOnLines = json::Layout::OnLines;
  const auto& table = project.table;
  json::Value root = json::object({{"schema", schema::kName},
                                   {"version", kProjectVersion},
                                   {"specimen", table.name},
                                   {"plan", toText(table.plan)},
                                   {"counts", countsJson(table)},
                                   {"region_totals_mm", totalsJson(table.regionTotals)},
                                   {"assumptions", assumptionsJson(project.assumptions)}},
                                  kOnLines);
  root.add("pose", withPose(json::Value::object(kOnLines), project.pose, project.specimen()));
  root.add("poses", posesJson(project.poses, project.specimen()));
  addLocks(project, root);
  addGround(project, root);
  addClaims(project, root);
  addNotes(project, root);
  addSheet(project, root);
  addBodyGuide(project, root);
  if (!project.scans.empty()) root.add("scans", scansJson(project.scans));
  root.add("bones", bonesJson(table.rows));  // the long list comes last
  return json::document(root);
}

ProjectForm formFor(const std::filesystem::path& path) {
  return isContainer(path) || path.extension() == kOneFileEnding ? ProjectForm::OneFile : ProjectForm::Beside;
}

ScansSaved saveProject(const Project& project, const std::filesystem::path& path, ProjectForm form) {
  checkPlace(path);
  if (form == ProjectForm::Beside) {
    const ScansSaved saved = saveScanMeshes(project.scans, path);
    writeWhole(path, writeProjectText(project));
    return saved;
  }
  ScansSaved saved;
  std::vector<std::string> unread;  // what cannot be read may be mended elsewhere
  for (const ProjectScan& scan : project.scans) {
    if (scan.mesh) {
      ++saved.kept;
    } else {
      saved.lost.push_back(toId(scan.scan.bone));
      unread.push_back(scan.scan.file);
    }
  }
  const auto text = std::make_shared<const std::string>(writeProjectText(project));
  std::vector<ContainerEntry> entries{{std::string(kProjectEntry), text->size(), [text] { return *text; }}};
  for (ContainerEntry& entry : scanEntries(project.scans)) entries.push_back(std::move(entry));
  writeContainer(path, std::move(entries), unread);
  return saved;
}

ScansSaved saveProject(const Project& project, const std::filesystem::path& path) {
  return saveProject(project, path, formFor(path));
}

}  // namespace zyga::files
