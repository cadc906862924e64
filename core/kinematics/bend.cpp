#include "core/kinematics/bend.h"

#include <algorithm>

#include "core/kinematics/jacobian.h"

namespace zyga::kinematics {
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

Pose pullTowards(const anatomy::Specimen& specimen, const Articulation& articulation, const Pose& start,
                 const Pull& pull, const Eigen::Vector3d& p_WTarget) {
  // Gauss-Newton with Levenberg-Marquardt damping (Levenberg 1944, Quart. Appl. Math. 2:164; Marquardt 1963, J. SIAM
  // 11:431) on |p(q) - target|^2 + kEven |q - q_start|^2. The second term is what shares the bend among the joints: of
  // all the ways to the target it picks the one with the least sum of squared turns, at a cost of some tenths of a
  // millimetre.
  constexpr int kTries = 80;
  constexpr double kEven = 1e-3;         // m^2
  constexpr double kLongestStep = 0.25;  // m: keeps the linearisation honest
  constexpr double kLongestTurn = 0.1;   // rad
  constexpr double kSettled = 1e-12;     // m^2
  Pose pose = start;
  Placement X_WB;
  placeInto(specimen, articulation, pose, X_WB);
  const auto errorNow = [&]() -> Eigen::Vector3d { return p_WTarget - X_WB[pull.bone.value] * pull.p_BPoint; };
  Eigen::Vector3d error = errorNow();
  const std::vector<FreeMotion> free = freeMotions(pull.joints, pull.motions);
  const auto jacobianNow = [&]() -> Eigen::Matrix3Xd {
    return jacobian(specimen, articulation, pose, X_WB, free, X_WB[pull.bone.value] * pull.p_BPoint).point;
  };
  Eigen::Matrix3Xd J = jacobianNow();
  Eigen::VectorXd turned = Eigen::VectorXd::Zero(J.cols());  // q - q_start
  double merit = error.squaredNorm();
  double damping = 1e-2;
  for (int i = 0; i < kTries && J.cols() > 0; ++i) {
    // The minimiser of |e - J dq|^2 + kEven |dq + turned|^2 + damping |dq|^2, in its 3x3 form.
    const double c = kEven + damping;
    const Eigen::VectorXd back = -(kEven / c) * turned;
    const Eigen::Vector3d goal = error * std::min(1.0, kLongestStep / std::max(error.norm(), 1e-12));
    const Eigen::Matrix3d A = J * J.transpose() + c * Eigen::Matrix3d::Identity();
    Eigen::VectorXd dq = back + J.transpose() * A.ldlt().solve(goal - J * back);
    const double longest = dq.cwiseAbs().maxCoeff();
    if (longest > kLongestTurn) dq *= kLongestTurn / longest;
    Pose next = pose;
    for (std::size_t k = 0; k < free.size(); ++k) {
      next[free[k].joint][free[k].motion] += dq[static_cast<Eigen::Index>(k)];
    }
    placeInto(specimen, articulation, next, X_WB);
    const double better = errorNow().squaredNorm() + kEven * (turned + dq).squaredNorm();
    // Only steps that come nearer are taken: a chain stretched towards a target out of reach rests there.
    if (better >= merit) {
      damping *= 6;
      if (damping > 1e6) break;
      continue;
    }
    const bool settled = merit - better < kSettled;
    damping = std::max(1e-7, damping / 5);
    pose = std::move(next);
    turned += dq;
    error = errorNow();
    merit = better;
    if (settled) break;
    J = jacobianNow();
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
