#include "core/kinematics/bend.h"

#include <algorithm>

namespace zyga::kinematics {
namespace {

using anatomy::BoneKind;
using anatomy::Region;

/// Axis of one motion of a joint in the world, unit, and the centre it turns about.
struct WorldAxis {
  Eigen::Vector3d direction_W;
  Eigen::Vector3d p_WCentre;
};

WorldAxis worldAxis(const anatomy::Joint& joint, const Articulation::Rest& rest, const Eigen::Vector3d& angles,
                    int motion, const Placement& X_WB) {
  const Eigen::Isometry3d& X_WP = X_WB[joint.proximal.value];
  Eigen::Matrix3d R = X_WP.linear() * rest.rotation;
  for (int k = 0; k < motion; ++k) {
    R = R * Eigen::AngleAxisd(angles[k], joint.axes[static_cast<std::size_t>(k)]).toRotationMatrix();
  }
  const double before = rest.cartilage * joint.cartilageShareProximal;
  return {R * joint.axes[static_cast<std::size_t>(motion)],
          X_WP * (joint.centreProximal + before * joint.longAxisProximal)};
}

/// One column a free angle: how the grabbed point moves as it turns, m/rad.
Eigen::Matrix3Xd pointJacobian(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& pose,
                               const Pull& pull, const Placement& X_WB, std::vector<std::pair<JointIndex, int>>& free) {
  free.clear();
  std::vector<Eigen::Vector3d> columns;
  const Eigen::Vector3d p_WPoint = X_WB[pull.bone.value] * pull.p_BPoint;
  for (const JointIndex j : pull.joints) {
    for (int motion = 0; motion < 3; ++motion) {
      if (!pull.motions[static_cast<std::size_t>(motion)]) continue;
      const WorldAxis axis = worldAxis(specimen[j], articulation[j], pose[j], motion, X_WB);
      columns.push_back(axis.direction_W.cross(p_WPoint - axis.p_WCentre));
      free.emplace_back(j, motion);
    }
  }
  Eigen::Matrix3Xd J(3, static_cast<Eigen::Index>(columns.size()));
  for (std::size_t c = 0; c < columns.size(); ++c) J.col(static_cast<Eigen::Index>(c)) = columns[c];
  return J;
}

bool isNeckPart(const anatomy::Bone& bone) {
  const BoneKind kind = bone.name.kind;
  return kind == BoneKind::Cervical || kind == BoneKind::CervicalRib || kind == BoneKind::Skull ||
         kind == BoneKind::Jaw;
}

bool canMove(const anatomy::Joint& joint) { return joint.kind != anatomy::JointKind::Fixed; }

}  // namespace

Pose pullTowards(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& start,
                 const Pull& pull, const Eigen::Vector3d& p_WTarget) {
  constexpr int kTries = 60;
  constexpr double kClose = 1e-4;        // m
  constexpr double kLongestStep = 0.25;  // m: keeps the linearisation honest
  Pose pose = start;
  Placement X_WB;
  std::vector<std::pair<JointIndex, int>> free;
  placeInto(specimen, articulation, pose, X_WB);
  Eigen::Vector3d error = p_WTarget - X_WB[pull.bone.value] * pull.p_BPoint;
  Eigen::Matrix3Xd J = pointJacobian(specimen, articulation, pose, pull, X_WB, free);
  double damping = 1e-3;
  for (int i = 0; i < kTries && error.norm() > kClose && J.cols() > 0; ++i) {
    // Damped least squares, the 3x3 form: dq = J^T (J J^T + lambda^2 I)^-1 e.
    const Eigen::Matrix3d JJt = J * J.transpose();
    const double lambda2 = damping * JJt.trace() / 3 + 1e-12;
    const Eigen::Vector3d goal = error * std::min(1.0, kLongestStep / error.norm());
    const Eigen::VectorXd dq = J.transpose() * (JJt + lambda2 * Eigen::Matrix3d::Identity()).ldlt().solve(goal);
    Pose next = pose;
    for (std::size_t c = 0; c < free.size(); ++c)
      next[free[c].first][free[c].second] += std::clamp(dq[static_cast<Eigen::Index>(c)], -0.1, 0.1);
    placeInto(specimen, articulation, next, X_WB);
    const Eigen::Vector3d left = p_WTarget - X_WB[pull.bone.value] * pull.p_BPoint;
    // Only steps that come nearer are taken (Levenberg 1944, Quart. Appl. Math. 2:164; Marquardt 1963, J. SIAM 11:431):
    // a chain that is stretched towards a target out of reach comes to rest there and does not thrash.
    if (left.norm() >= error.norm()) {
      damping *= 6;
      if (damping > 1e8) break;
      continue;
    }
    const bool resting = error.norm() - left.norm() < 1e-7;
    damping = std::max(1e-4, damping / 4);
    pose = std::move(next);
    error = left;
    if (resting) break;
    J = pointJacobian(specimen, articulation, pose, pull, X_WB, free);
  }
  return pose;
}

Pose spreadTurn(const Pose& pose, const std::vector<JointIndex>& joints, const std::vector<double>& weights,
                const Eigen::Vector3d& turn) {
  Pose turned = pose;
  for (std::size_t i = 0; i < joints.size(); ++i) turned[joints[i]] += weights[i] * turn;
  return turned;
}

std::vector<JointIndex> neckChain(const anatomy::Specimen& specimen) {
  const auto skull = specimen.findBone("skull");
  return skull ? dragChain(specimen, *skull) : std::vector<JointIndex>{};
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
  } else if (!chain.empty() && specimen[bone].name.kind != BoneKind::Dorsal) {
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
