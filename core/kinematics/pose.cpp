#include "core/kinematics/pose.h"

#include <algorithm>

#include "core/kinematics/bend.h"
#include "core/kinematics/following.h"
#include "core/kinematics/keep_in_space.h"
#include "core/kinematics/placement.h"

namespace zyga::kinematics {

Pose Pose::neutral(const anatomy::Specimen& specimen) {
  Pose pose;
  pose.angles.assign(specimen.joints.size(), Eigen::Vector3d::Zero());
  return pose;
}

bool Pose::isAxialTyped(JointIndex j) const { return std::binary_search(axialTyped.begin(), axialTyped.end(), j); }

void Pose::setAxialTyped(JointIndex j, bool typed) {
  const auto at = std::lower_bound(axialTyped.begin(), axialTyped.end(), j);
  const bool is = at != axialTyped.end() && *at == j;
  if (typed && !is) axialTyped.insert(at, j);
  if (!typed && is) axialTyped.erase(at);
}

Articulation restArticulation(const anatomy::Specimen& specimen) {
  Articulation articulation;
  articulation.rests.reserve(specimen.joints.size());
  for (const anatomy::Joint& joint : specimen.joints) {
    articulation.rests.push_back({.rotation = joint.restRotation});
  }
  return articulation;
}

Pose keepInSpace(const anatomy::Specimen& specimen, const Articulation& oldArticulation,
                 const Articulation& newArticulation, const Pose& pose) {
  Pose kept = pose;
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const Eigen::Matrix3d& before = oldArticulation.rests[j].rotation;
    const Eigen::Matrix3d& after = newArticulation.rests[j].rotation;
    if (before == after) continue;
    const anatomy::Joint& joint = specimen.joints[j];
    kept.angles[j] = jointAngles(joint, after.transpose() * before * jointRotation(joint, pose.angles[j]));
  }
  return kept;
}

namespace {

using anatomy::BoneKind;
using anatomy::Region;

bool isNeckPart(const anatomy::Bone& bone) {
  const BoneKind kind = bone.name.kind;
  return kind == BoneKind::Cervical || kind == BoneKind::CervicalRib || kind == BoneKind::Skull ||
         kind == BoneKind::Jaw;
}

bool canMove(const anatomy::Joint& joint) { return joint.kind != anatomy::JointKind::Fixed; }

}  // namespace

Pose spreadTurn(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                const std::vector<JointIndex>& joints, const std::vector<double>& weights,
                const Eigen::Vector3d& turn) {
  Pose turned = pose;
  for (std::size_t i = 0; i < joints.size(); ++i) {
    const anatomy::Joint& joint = specimen[joints[i]];
    const Articulation::Rest& rest = articulation[joints[i]];
    turned[joints[i]] = fromOwn(joint, rest, toOwn(joint, rest, pose[joints[i]]) + weights[i] * turn);
  }
  return turned;
}

std::vector<JointIndex> neckChain(const anatomy::Specimen& specimen) {
  const auto skull = specimen.findBone("skull"), first = skull ? skull : specimen.findBone("C1");
  return first ? dragChain(specimen, *first) : std::vector<JointIndex>{};
}

std::vector<JointIndex> tailChain(const anatomy::Specimen& specimen) {
  const auto tip = specimen.findBone("Ca" + std::to_string(specimen.counts.caudal));
  return tip ? dragChain(specimen, *tip) : std::vector<JointIndex>{};
}

std::vector<JointIndex> dragChain(const anatomy::Specimen& specimen, BoneIndex bone, std::optional<JointIndex> base) {
  std::vector<JointIndex> chain = specimen.chainTo(bone);
  const auto found = base ? std::find(chain.begin(), chain.end(), *base) : chain.end();
  if (found != chain.end()) {
    chain.erase(chain.begin(), found);
  } else if (isNeckPart(specimen[bone])) {
    // The neck's own root: everything from the joint between trunk and neck on.
    std::erase_if(chain, [&](JointIndex j) { return specimen[j].region == Region::Dorsal; });
  } else if (!chain.empty() && regionOf(specimen[bone].name) != Region::Dorsal) {
    // A limb hangs on the column: the column itself stays.
    const auto inColumn = [&](JointIndex j) {
      const Region region = specimen[j].region;
      return region == Region::Dorsal || region == Region::Cervical || region == Region::Sacral;
    };
    const bool tail =
        specimen[chain.back()].region == Region::Caudal || specimen[chain.back()].region == Region::Chevrons;
    if (!tail) std::erase_if(chain, inColumn);
  }
  std::erase_if(chain, [&](JointIndex j) { return !canMove(specimen[j]); });
  return chain;
}

}  // namespace zyga::kinematics
