#include "ui/strip/span_bend.h"

#include <algorithm>
#include <numeric>

#include "core/kinematics/bend.h"

namespace zyga::ui {

kinematics::Pose bendSpan(const kinematics::Pose& pose, const std::vector<kinematics::JointIndex>& joints,
                          const std::vector<double>& widths, int motion, std::size_t grabbed, double delta) {
  if (joints.empty()) return pose;
  std::vector<double> weights = widths;
  double sum = std::accumulate(weights.begin(), weights.end(), 0.0);
  if (sum <= 0) {
    weights.assign(joints.size(), 1.0);
    sum = static_cast<double>(joints.size());
  }
  const double leader = weights[grabbed] > 0 ? weights[grabbed] : *std::max_element(weights.begin(), weights.end());
  for (double& weight : weights) weight /= sum;
  Eigen::Vector3d turn = Eigen::Vector3d::Zero();
  turn[motion] = delta * sum / leader;
  return kinematics::spreadTurn(pose, joints, weights, turn);
}

}  // namespace zyga::ui
