#include "core/study/reach/extremes.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/kinematics/following.h"

namespace zyga::study {
namespace {

using anatomy::BoneIndex;
using anatomy::BoneKind;
using anatomy::Region;
using Eigen::Vector3d;
using kinematics::JointIndex;
using kinematics::Placement;
using kinematics::Pose;
using range::Direction;

constexpr std::array<Direction, 4> kBends{Direction::Dorsal, Direction::Ventral, Direction::Left, Direction::Right};

/// The last vertebra of a chain: the atlas, or the hindmost caudal.
std::optional<BoneIndex> lastVertebra(const anatomy::Specimen& specimen, Chain chain) {
  const int number = chain == Chain::Neck ? 1 : specimen.counts.caudal;
  return specimen.findBone(anatomy::toId({chain == Chain::Neck ? BoneKind::Cervical : BoneKind::Caudal, number}));
}

/// Where the hips face, level.
Vector3d facing(const Pose& pose) {
  Vector3d ahead = pose.X_WRoot.linear().col(0);
  ahead.z() = 0;
  constexpr double kUpright = 1e-6;
  return ahead.norm() > kUpright ? Vector3d(ahead.normalized()) : Vector3d::UnitX();
}

Vector3d inWorld(const anatomy::Specimen& specimen, const Placement& X_WB, BoneIndex bone, std::string_view landmark) {
  return X_WB[bone.value] * specimen[bone].landmark(landmark);
}

/// Lowest landmark of the chain's bones and of the head, m.
double lowestOf(const anatomy::Specimen& specimen, const Placement& X_WB, Chain chain) {
  double lowest = std::numeric_limits<double>::infinity();
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const Region region = regionOf(specimen.bones[i].name);
    const bool mine = chain == Chain::Neck ? region == Region::Cervical || region == Region::Skull
                                           : region == Region::Caudal || region == Region::Chevrons;
    if (!mine) continue;
    for (const auto& [name, p_B] : specimen.bones[i].landmarks) lowest = std::min(lowest, (X_WB[i] * p_B).z());
  }
  return std::isfinite(lowest) ? lowest : 0;
}

void addHead(Carriage& carriage, const anatomy::Specimen& specimen, const Placement& X_WB, Vector3d& tip) {
  const auto skull = specimen.findBone("skull");
  if (!skull) return;
  tip = inWorld(specimen, X_WB, *skull, "snout");
  carriage.snoutHeight = tip.z();
  carriage.eyeHeight =
      0.5 * (inWorld(specimen, X_WB, *skull, "eye.L").z() + inWorld(specimen, X_WB, *skull, "eye.R").z());
}

/// The limits of a chain's joints from neutral, found once for all directions.
class ChainLimits {
 public:
  ChainLimits(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
              const range::Assumptions& assumptions, Chain chain, const range::NeighbourContact* contact)
      : specimen_(specimen), articulation_(articulation), chain_(chain) {
    for (const JointIndex joint : jointsOf(specimen, chain)) {
      limits_.push_back(range::limits(specimen, articulation, assumptions, joint, Vector3d::Zero(), contact));
    }
  }

  Extreme extreme(const Pose& pose, Direction direction) const {
    Extreme extreme{chain_, direction, pose, {}, {}, 0};
    for (const range::JointLimits& limits : limits_) {
      const range::Limit& limit = limits[direction];
      extreme.joints.push_back({limits.joint, limits.judged, limit});
      extreme.pose[limits.joint] = Vector3d::Zero();
      if (!limit.supported) continue;
      extreme.pose[limits.joint] = kinematics::withMotion(specimen_[limits.joint], articulation_[limits.joint],
                                                          Vector3d::Zero(), range::motionOf(direction), limit.angle);
      extreme.total += limit.angle;
    }
    extreme.carriage = carriage(specimen_, articulation_, extreme.pose, chain_);
    return extreme;
  }

 private:
  const anatomy::Specimen& specimen_;
  const kinematics::Articulation& articulation_;
  Chain chain_;
  std::vector<range::JointLimits> limits_;
};

}  // namespace

std::string_view toText(Chain chain) { return chain == Chain::Neck ? "neck" : "tail"; }

std::vector<JointIndex> jointsOf(const anatomy::Specimen& specimen, Chain chain) {
  const auto last = lastVertebra(specimen, chain);
  if (!last) return {};
  const Region region = chain == Chain::Neck ? Region::Cervical : Region::Caudal;
  std::vector<JointIndex> joints = specimen.chainTo(*last);
  std::erase_if(joints, [&](JointIndex joint) {
    return specimen[joint].region != region || specimen[joint].kind == anatomy::JointKind::Fixed;
  });
  return joints;
}

Carriage carriage(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation, const Pose& pose,
                  Chain chain) {
  Carriage carriage;
  const auto last = lastVertebra(specimen, chain);
  const std::vector<JointIndex> joints = jointsOf(specimen, chain);
  if (!last || joints.empty()) return carriage;
  const Placement X_WB = kinematics::forwardKinematics(specimen, articulation, pose);
  const anatomy::Joint& first = specimen[joints.front()];
  const Vector3d base = X_WB[first.proximal.value] * first.centreProximal;
  const Vector3d end = inWorld(specimen, X_WB, *last, chain == Chain::Neck ? "cranial" : "caudal");
  Vector3d tip = end;
  if (chain == Chain::Neck) addHead(carriage, specimen, X_WB, tip);

  const Vector3d ahead = facing(pose);
  const Vector3d left = Vector3d::UnitZ().cross(ahead);
  carriage.tipHeight = tip.z();
  carriage.baseHeight = base.z();
  carriage.ahead = (tip - base).dot(ahead);
  carriage.left = (tip - base).dot(left);
  const Vector3d line = end - base;
  carriage.slope = std::atan2(line.z(), line.head<2>().norm());
  carriage.swing = std::atan2(line.dot(left), line.dot(ahead) * (chain == Chain::Neck ? 1 : -1));
  carriage.lowest = lowestOf(specimen, X_WB, chain);
  return carriage;
}

Extreme extreme(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                const range::Assumptions& assumptions, const Pose& pose, Chain chain, Direction direction,
                const range::NeighbourContact* contact) {
  return ChainLimits(specimen, articulation, assumptions, chain, contact).extreme(pose, direction);
}

std::vector<Extreme> extremes(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                              const range::Assumptions& assumptions, const Pose& pose,
                              const range::NeighbourContact* contact) {
  std::vector<Extreme> all;
  for (const Chain chain : {Chain::Neck, Chain::Tail}) {
    const ChainLimits limits(specimen, articulation, assumptions, chain, contact);
    for (const Direction direction : kBends) all.push_back(limits.extreme(pose, direction));
  }
  return all;
}

}  // namespace zyga::study
