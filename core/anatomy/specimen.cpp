#include "core/anatomy/specimen.h"

#include <algorithm>
#include <stdexcept>

namespace zyga::anatomy {
namespace {

constexpr std::array<std::pair<Evidence, std::string_view>, 5> kEvidence{{{Evidence::Found, "found"},
                                                                          {Evidence::FoundDeformed, "found, deformed"},
                                                                          {Evidence::Mirrored, "mirrored"},
                                                                          {Evidence::Scaled, "scaled from another"},
                                                                          {Evidence::Inferred, "inferred"}}};

/// The tail runs away from the root towards its tip, every other part of the column away from it towards the snout.
bool runsCaudally(const Joint& joint) { return joint.region == Region::Caudal || joint.region == Region::Sacral; }

}  // namespace

std::string_view toText(Evidence evidence) {
  for (const auto& [value, text] : kEvidence) {
    if (value == evidence) return text;
  }
  return "";
}

std::optional<Evidence> evidenceFromText(std::string_view text) {
  for (const auto& [value, known] : kEvidence) {
    if (known == text) return value;
  }
  return std::nullopt;
}

reason::Term termOf(Evidence evidence) {
  switch (evidence) {
    case Evidence::Found:
      return {"evidence.found"};
    case Evidence::FoundDeformed:
      return {"evidence.found-deformed"};
    case Evidence::Mirrored:
      return {"evidence.mirrored"};
    case Evidence::Scaled:
      return {"evidence.scaled"};
    case Evidence::Inferred:
      break;
  }
  return {"evidence.inferred"};
}

int countOf(const RegionCounts& counts, BoneKind kind) {
  switch (kind) {
    case BoneKind::Cervical:
      return counts.cervical;
    case BoneKind::Dorsal:
      return counts.dorsal;
    case BoneKind::Lumbar:
      return counts.lumbar;
    case BoneKind::Sacral:
      return counts.sacral;
    case BoneKind::Caudal:
      return counts.caudal;
    default:
      return 0;
  }
}

BoneName lastOfTrunk(const RegionCounts& counts) {
  return counts.lumbar > 0 ? BoneName{BoneKind::Lumbar, counts.lumbar} : BoneName{BoneKind::Dorsal, counts.dorsal};
}

std::optional<BoneName> vertebraBefore(const RegionCounts& counts, const BoneName& name) {
  auto kind = std::find(kColumnKinds.begin(), kColumnKinds.end(), name.kind);
  if (kind == kColumnKinds.end()) return std::nullopt;
  if (name.number > 1) return BoneName{name.kind, name.number - 1};
  while (kind != kColumnKinds.begin())
    if (const int last = countOf(counts, *--kind); last > 0) return BoneName{*kind, last};
  return std::nullopt;
}

const Facet* Bone::facet(FacetRole role) const {
  const auto found = std::find_if(facets.begin(), facets.end(), [role](const Facet& f) { return f.role == role; });
  return found == facets.end() ? nullptr : &*found;
}

const Eigen::Vector3d& Bone::landmark(std::string_view landmarkName) const {
  const auto found = landmarks.find(landmarkName);
  if (found == landmarks.end()) {
    throw std::out_of_range(id + " has no landmark '" + std::string(landmarkName) + "'");
  }
  return found->second;
}

std::optional<BoneIndex> Specimen::findBone(std::string_view id) const {
  for (std::size_t i = 0; i < bones.size(); ++i) {
    if (bones[i].id == id) return BoneIndex{i};
  }
  return std::nullopt;
}

std::optional<JointIndex> Specimen::findJoint(std::string_view id) const {
  for (std::size_t i = 0; i < joints.size(); ++i) {
    if (joints[i].id == id) return JointIndex{i};
  }
  return std::nullopt;
}

std::optional<JointIndex> Specimen::jointAbove(BoneIndex bone) const {
  // The builders append every bone but the root together with its joint, so that joint i carries bone i + 1; a specimen
  // made otherwise is searched.
  if (bone.value == 0) return std::nullopt;
  if (bone.value <= joints.size() && joints[bone.value - 1].distal == bone) return JointIndex{bone.value - 1};
  for (std::size_t j = 0; j < joints.size(); ++j) {
    if (joints[j].distal == bone) return JointIndex{j};
  }
  return std::nullopt;
}

BoneIndex Specimen::cranialBone(JointIndex joint) const {
  const Joint& j = (*this)[joint];
  return runsCaudally(j) ? j.proximal : j.distal;
}

BoneIndex Specimen::caudalBone(JointIndex joint) const {
  const Joint& j = (*this)[joint];
  return runsCaudally(j) ? j.distal : j.proximal;
}

std::vector<JointIndex> Specimen::chainTo(BoneIndex bone) const {
  std::vector<JointIndex> chain;
  for (auto above = jointAbove(bone); above; above = jointAbove((*this)[*above].proximal)) chain.push_back(*above);
  std::reverse(chain.begin(), chain.end());
  return chain;
}

}  // namespace zyga::anatomy
