#include "core/anatomy/bone_parts.h"

#include <algorithm>
#include <array>

namespace zyga::anatomy {
namespace {

constexpr std::array kRegions{Region::Skull,    Region::Cervical, Region::Dorsal,    Region::Sacral,
                              Region::Caudal,   Region::Ribs,     Region::Chevrons,  Region::ShoulderGirdle,
                              Region::Forelimb, Region::Manus,    Region::HipGirdle, Region::Hindlimb,
                              Region::Pes};

/// "region.neck" without what stands before the point.
std::string_view nameOf(Region region) {
  const std::string_view key = termOf(region).id;
  return key.substr(key.find('.') + 1);
}

}  // namespace

std::vector<std::string_view> partNames() {
  std::vector<std::string_view> names;
  for (const Region region : kRegions) names.push_back(nameOf(region));
  return names;
}

std::vector<BoneIndex> bonesCalled(const Specimen& specimen, std::string_view name) {
  if (const auto bone = specimen.findBone(name)) return {*bone};
  std::optional<Side> side;
  if (name.ends_with(".L")) side = Side::Left;
  if (name.ends_with(".R")) side = Side::Right;
  if (side) name.remove_suffix(2);
  std::vector<BoneIndex> bones;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const BoneName& bone = specimen.bones[i].name;
    if (nameOf(regionOf(bone)) == name && (!side || bone.side == *side)) bones.push_back({i});
  }
  return bones;
}

BoneList bonesInList(const Specimen& specimen, std::string_view list) {
  BoneList result{std::vector<bool>(specimen.bones.size()), {}};
  for (std::size_t from = 0; from <= list.size();) {
    const std::size_t to = std::min(list.find(',', from), list.size());
    std::string_view name = list.substr(from, to - from);
    while (name.starts_with(' ')) name.remove_prefix(1);
    while (name.ends_with(' ')) name.remove_suffix(1);
    const auto bones = bonesCalled(specimen, name);
    if (bones.empty()) result.unknown.emplace_back(name);
    for (const BoneIndex bone : bones) result.listed[bone.value] = true;
    from = to + 1;
  }
  return result;
}

}  // namespace zyga::anatomy
