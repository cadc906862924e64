#include "ui/strip/strip_columns.h"

#include <algorithm>

namespace zyga::ui {
namespace {

using anatomy::BoneIndex;
using anatomy::BoneKind;
using anatomy::BoneName;
using anatomy::JointIndex;
using anatomy::Region;
using anatomy::Specimen;

constexpr double kSkullWidth = 1.5;
constexpr double kSacrumWidth = 2.5;

void addBones(StripColumns& strip, const Specimen& specimen, BoneKind kind, int count) {
  for (int number = 1; number <= count; ++number) {
    const auto bone = specimen.findBone(toId(BoneName{kind, number}));
    if (bone) strip.stations.push_back({{*bone}, 0, 1});
  }
}

void addSkull(StripColumns& strip, const Specimen& specimen) {
  if (const auto skull = specimen.findBone(toId(BoneName{BoneKind::Skull})))
    strip.stations.push_back({{*skull}, 0, kSkullWidth});
}

void addSacrum(StripColumns& strip, const Specimen& specimen) {
  StripStation sacrum{{}, 0, kSacrumWidth};
  for (int number = 1; number <= specimen.counts.sacral; ++number)
    if (const auto bone = specimen.findBone(toId(BoneName{BoneKind::Sacral, number}))) sacrum.bones.push_back(*bone);
  if (!sacrum.bones.empty()) strip.stations.push_back(sacrum);
}

std::optional<JointIndex> jointBetween(const Specimen& specimen, BoneIndex a, BoneIndex b) {
  for (const auto& [bone, other] : {std::pair(a, b), std::pair(b, a)}) {
    const auto joint = specimen.jointAbove(bone);
    if (joint && specimen[*joint].proximal == other) return joint;
  }
  return std::nullopt;
}

Region regionOfSlot(const Specimen& specimen, const StripStation& slot) {
  const Region region = regionOf(specimen[slot.bones.front()].name);
  return region == Region::Skull ? Region::Cervical : region;
}

/// A joint belongs to the region of its bone farther from the sacrum.
void addColumns(StripColumns& strip, const Specimen& specimen) {
  for (std::size_t i = 0; i + 1 < strip.stations.size(); ++i) {
    const auto joint = jointBetween(specimen, strip.stations[i].bones.back(), strip.stations[i + 1].bones.front());
    if (!joint || specimen[*joint].kind == anatomy::JointKind::Fixed) continue;
    const bool cranialIsDistal = specimen[*joint].distal == strip.stations[i].bones.back();
    const Region region = regionOfSlot(specimen, strip.stations[cranialIsDistal ? i : i + 1]);
    strip.columns.push_back({*joint, region, strip.stations[i].end()});
  }
}

void addRegions(StripColumns& strip, const Specimen& specimen) {
  for (const StripStation& slot : strip.stations) {
    const Region region = regionOfSlot(specimen, slot);
    if (strip.regions.empty() || strip.regions.back().region != region)
      strip.regions.push_back({region, slot.start, slot.start, 0, 0});
    strip.regions.back().end = slot.end();
  }
  for (StripRegion& r : strip.regions) {
    const auto isIn = [&r](const StripColumn& column) { return column.region == r.region; };
    const auto first = std::find_if(strip.columns.begin(), strip.columns.end(), isIn);
    r.firstColumn = static_cast<std::size_t>(first - strip.columns.begin());
    r.columns = static_cast<std::size_t>(std::count_if(first, strip.columns.end(), isIn));
  }
}

}  // namespace

std::optional<std::size_t> StripColumns::columnOf(JointIndex joint) const {
  for (std::size_t i = 0; i < columns.size(); ++i)
    if (columns[i].joint == joint) return i;
  return std::nullopt;
}

StripColumns stripColumns(const Specimen& specimen) {
  StripColumns strip;
  addSkull(strip, specimen);
  addBones(strip, specimen, BoneKind::Cervical, specimen.counts.cervical);
  addBones(strip, specimen, BoneKind::Dorsal, specimen.counts.dorsal);
  addBones(strip, specimen, BoneKind::Lumbar, specimen.counts.lumbar);
  addSacrum(strip, specimen);
  addBones(strip, specimen, BoneKind::Caudal, specimen.counts.caudal);
  for (StripStation& slot : strip.stations) {
    slot.start = strip.length;
    strip.length = slot.end();
  }
  addColumns(strip, specimen);
  addRegions(strip, specimen);
  return strip;
}

}  // namespace zyga::ui
