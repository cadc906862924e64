#include "core/study/reach/range_chart.h"

#include <algorithm>

#include "core/range/contact/contact.h"
#include "core/range/findings.h"
#include "core/task/parallel.h"

namespace zyga::study {
namespace {

using anatomy::Region;
using kinematics::JointIndex;

/// Joints of the column that move, snout first: the neck is carried from its base outwards, so it comes backwards.
std::vector<JointIndex> columnJoints(const anatomy::Specimen& specimen) {
  std::vector<JointIndex> cranial, caudal;
  const auto collect = [&](std::optional<anatomy::BoneIndex> tip, std::vector<JointIndex>& into) {
    if (!tip) return;
    for (const JointIndex joint : specimen.chainTo(*tip)) {
      if (specimen[joint].kind != anatomy::JointKind::Fixed) into.push_back(joint);
    }
  };
  const auto skull = specimen.findBone("skull");
  collect(skull ? skull : specimen.findBone("C1"), cranial);
  collect(specimen.findBone("Ca" + std::to_string(specimen.counts.caudal)), caudal);
  std::reverse(cranial.begin(), cranial.end());
  for (const JointIndex joint : caudal) {
    if (std::find(cranial.begin(), cranial.end(), joint) == cranial.end()) cranial.push_back(joint);
  }
  return cranial;
}

RangeChart::Row rowOf(const range::Scenario& scenario, JointIndex joint) {
  const anatomy::Specimen& specimen = scenario.specimen();
  const kinematics::Articulation& articulation = scenario.articulation();
  const range::Assumptions& assumptions = scenario.assumptions();
  RangeChart::Row row;
  row.joint = joint;
  row.id = specimen[joint].id;
  row.region = specimen[joint].region;
  row.typed = !specimen[joint].hasFacets();
  row.limits = range::limits(specimen, articulation, assumptions, joint, Eigen::Vector3d::Zero(), scenario.contact());
  row.present = scenario.pose()[joint];
  row.level = scenario.assessment().find(joint)->level;
  row.rotations = supportedRotations(specimen, articulation, assumptions, joint, scenario.contact());
  return row;
}

void add(std::array<double, 6>& sum, const range::JointLimits& limits) {
  for (std::size_t k = 0; k < 6; ++k) {
    if (limits.ends[k].supported && limits.judged) sum[k] += limits.ends[k].angle;
  }
}

}  // namespace

std::optional<RangeChart> rangeChart(const range::Scenario& scenario, const task::Task& task) {
  const auto joints = columnJoints(scenario.specimen());
  RangeChart chart;
  chart.contactJudged = scenario.contact() != nullptr;
  scenario.assessment();  // once, before all cores ask for it
  chart.rows.resize(joints.size());
  const bool all =
      task::forEach(joints.size(), task, [&](std::size_t i) { chart.rows[i] = rowOf(scenario, joints[i]); });
  if (!all) return std::nullopt;
  for (const RangeChart::Row& row : chart.rows) {
    if (row.region == Region::Skull || row.region == Region::Cervical) add(chart.neck, row.limits);
    if (row.region == Region::Dorsal) add(chart.trunk, row.limits);
    if (row.region == Region::Caudal) add(chart.tail, row.limits);
  }
  return chart;
}

}  // namespace zyga::study
