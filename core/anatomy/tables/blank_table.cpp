#include "core/anatomy/tables/blank_table.h"

#include <algorithm>

#include "core/anatomy/plan/body_plan.h"

namespace zyga::anatomy {

const std::vector<Measure>& measuresInOrder() {
  static const std::vector<Measure> order = [] {
    std::vector<Measure> all;
    const auto add = [&all](Measure first, Measure last) {
      for (int m = static_cast<int>(first); m <= static_cast<int>(last); ++m) all.push_back(static_cast<Measure>(m));
    };
    add(Measure::Length, Measure::DiapophysisWidth);
    add(Measure::Height, Measure::Circumference);
    add(Measure::Wedge, Measure::Wedge);
    add(Measure::FacetLength, Measure::FacetTilt);
    add(Measure::FacetTurn, Measure::FacetTurn);
    add(Measure::FacetOffset, Measure::FacetRadius);
    add(Measure::PostzygLength, Measure::PostzygLength);
    add(Measure::PostzygWidth, Measure::PostzygRadius);
    return all;
  }();
  return order;
}

bool takesMeasure(BoneKind kind, Measure measure) {
  const auto has = [measure](const std::vector<Measure>& list) {
    return std::find(list.begin(), list.end(), measure) != list.end();
  };
  return has(measuresOf(kind)) || has(furtherMeasuresOf(kind));
}

std::string blankMeasurementTable(BodyPlan plan, const RegionCounts& counts, const std::vector<std::string>& remarks) {
  MeasurementTable empty;
  empty.plan = plan;
  empty.counts = counts;
  // The settings as they are always written, without the header of an empty table.
  const std::string settings = writeMeasurementTable(empty);
  std::string out;
  for (const std::string& remark : remarks) out += "# " + remark + "\n";
  out += settings.substr(0, settings.find("\nbone,") + 1) + "bone";
  const std::vector<BoneName> bones = allBones(plan, counts);
  std::size_t columns = 2;  // evidence and source
  for (const Measure measure : measuresInOrder()) {
    const auto takes = [measure](const BoneName& bone) { return takesMeasure(bone.kind, measure); };
    if (std::none_of(bones.begin(), bones.end(), takes)) continue;
    out += "," + std::string(toText(measure)) + (isAngle(measure) ? " (deg)" : " (mm)");
    ++columns;
  }
  out += ",evidence,source\n";
  for (const BoneName& bone : bones) out += toId(bone) + std::string(columns, ',') + "\n";
  return out;
}

}  // namespace zyga::anatomy
