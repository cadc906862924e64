#include <cmath>

#include "core/files/disk/atomic_file.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"
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

std::string number(double value, int places, const std::string& what) {
  if (!std::isfinite(value)) throw FileError("cannot save: " + what + " is not a finite number");
  return toNumeral(value, places);
}

std::string degrees(double angle, const std::string& what) {
  if (!std::isfinite(angle)) throw FileError("cannot save: " + what + " is not a finite number");
  return toDegrees(angle);
}

std::string countsText(const anatomy::RegionCounts& counts) {
  std::vector<std::string> members;
  for (const auto& [key, field] : schema::kCounts) members.push_back(member(key, std::to_string(counts.*field)));
  return onOneLine(members);
}

std::string totalsText(const std::map<std::string, double>& totals) {
  std::vector<std::string> members;
  for (const auto& [key, value] : totals) members.push_back(member(key, number(value, schema::kMillimetres, key)));
  return onOneLine(members);
}

std::string cartilageText(const range::Cartilage& cartilage) {
  return onOneLine({member("amount", number(cartilage.amount, 0, "cartilage")),
                    member("unit", jsonString(schema::wordOf(schema::kCartilageUnits, cartilage.in)))});
}

std::string assumptionsText(const range::Assumptions& assumptions) {
  std::vector<std::string> members;
  members.push_back(member("overlap_by", jsonString(schema::wordOf(schema::kOverlapBy, assumptions.overlapBy))));
  members.push_back(member("neutral_by", jsonString(schema::wordOf(schema::kNeutralBy, assumptions.neutralBy))));
  for (const auto& [key, field] : schema::kShares) {
    members.push_back(member(key, number(assumptions.*field, schema::kPercent, std::string(key))));
  }
  members.push_back(member("contact_tolerated_mm",
                           number(assumptions.contactTolerated, schema::kMillimetres, "the tolerated contact")));
  for (const auto& [key, field] : schema::kCartilages)
    members.push_back(member(key, cartilageText(assumptions.*field)));
  return onLines(members, "  ", '{', '}');
}

std::string vectorText(const Eigen::Vector3d& v, int places) {
  std::vector<std::string> items;
  for (const double x : v) items.push_back(number(x, places, "the animal's place"));
  return list(items);
}

std::string anglesText(const kinematics::Pose& pose, const anatomy::Specimen& specimen, const std::string& indent) {
  std::vector<std::string> members;
  for (std::size_t i = 0; i < specimen.joints.size() && i < pose.angles.size(); ++i) {
    if (pose.angles[i].isZero(0)) continue;
    std::vector<std::string> items;
    for (const double angle : pose.angles[i]) items.push_back(degrees(angle, "the angle of " + specimen.joints[i].id));
    members.push_back(member(specimen.joints[i].id, list(items)));
  }
  return onLines(members, indent, '{', '}');
}

std::vector<std::string> poseMembers(const kinematics::Pose& pose, const anatomy::Specimen& specimen,
                                     const std::string& indent) {
  // All nine numbers of the rotation: angles or a quaternion would not bring the same matrix back to the bit.
  const Eigen::Matrix3d R = pose.X_WRoot.linear();
  return {member("root_position_mm", vectorText(pose.X_WRoot.translation(), schema::kMillimetres)),
          member("root_rotation", list({vectorText(R.row(0), 0), vectorText(R.row(1), 0), vectorText(R.row(2), 0)})),
          member("angles_deg", anglesText(pose, specimen, indent))};
}

std::string namedPoseText(const NamedPose& named, const anatomy::Specimen& specimen) {
  std::vector<std::string> members{member("name", jsonString(named.name))};
  for (auto& m : poseMembers(named.pose, specimen, "      ")) members.push_back(std::move(m));
  return onLines(members, "    ", '{', '}');
}

std::string cellText(const anatomy::Cell& cell, anatomy::Measure measure, const std::string& id) {
  const std::string what = "the " + std::string(title(measure)) + " of " + id;
  std::vector<std::string> items{
      isAngle(measure) ? degrees(cell.value, what) : number(cell.value, schema::kMillimetres, what),
      jsonString(schema::wordOf(schema::kOrigins, cell.origin))};
  if (!cell.rule.empty()) items.push_back(jsonString(cell.rule));
  return list(items);
}

std::string boneText(const anatomy::TableRow& row) {
  const std::string id = toId(row.name);
  std::vector<std::string> cells;
  for (int i = 0; i < anatomy::kMeasureCount; ++i) {
    const auto measure = static_cast<anatomy::Measure>(i);
    const auto& cell = row.measures[measure];
    if (cell.known()) cells.push_back(member(schema::cellKey(measure), cellText(cell, measure, id)));
  }
  return onOneLine({member("bone", jsonString(id)), member("evidence", jsonString(toText(row.evidence))),
                    member("source", jsonString(row.source)), member("cells", onOneLine(cells))});
}

}  // namespace

std::string writeProjectText(const Project& project) {
  const auto& table = project.table;
  std::vector<std::string> poses, bones;
  for (const auto& named : project.poses) poses.push_back(namedPoseText(named, project.specimen));
  for (const auto& row : table.rows) bones.push_back(boneText(row));
  std::vector<std::string> members{
      member("schema", jsonString(schema::kName)),
      member("version", std::to_string(kProjectVersion)),
      member("specimen", jsonString(table.name)),
      member("plan", jsonString(toText(table.plan))),
      member("counts", countsText(table.counts)),
      member("region_totals_mm", totalsText(table.regionTotals)),
      member("assumptions", assumptionsText(project.assumptions)),
      member("pose", onLines(poseMembers(project.pose, project.specimen, "    "), "  ", '{', '}')),
      member("poses", onLines(poses, "  ", '[', ']')),
      member("bones", onLines(bones, "  ", '[', ']'))};
  // Before the long list of bones.
  for (auto& locks : lockMembers(project)) members.insert(members.end() - 1, std::move(locks));
  for (auto& ground : groundMembers(project)) members.insert(members.end() - 1, std::move(ground));
  for (auto& claims : claimMembers(project)) members.insert(members.end() - 1, std::move(claims));
  for (auto& notes : noteMembers(project)) members.insert(members.end() - 1, std::move(notes));
  for (auto& sheet : sheetMembers(project)) members.insert(members.end() - 1, std::move(sheet));
  if (auto guide = bodyGuideMember(project)) members.insert(members.end() - 1, std::move(*guide));
  if (!project.scans.empty()) members.insert(members.end() - 1, member("scans", scansText(project.scans)));
  return onLines(members, "", '{', '}') + "\n";
}

void saveProject(const Project& project, const std::filesystem::path& path) {
  saveScanMeshes(project.scans, path);
  writeWhole(path, writeProjectText(project));
}

}  // namespace zyga::files
