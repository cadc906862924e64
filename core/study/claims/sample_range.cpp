#include "core/study/claims/sample_range.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

#include "core/range/limit_search.h"

namespace zyga::study {

SampleRange::SampleRange(const range::Scenario& sample, kinematics::JointIndex joint, const range::MotionRange& asIs)
    : sample_(sample),
      joint_(joint),
      asIs_(asIs),
      judge_(sample.specimen(), sample.articulation(), sample.assumptions(), joint),
      leans_(judge_.withMotion(Eigen::Vector3d::Zero(), 0, 0.1)[2] != 0) {}

range::MotionRange SampleRange::find() const {
  if (!judge_.hasFacets() || !(violation(0) < 0))
    return range::motionRange(sample_.specimen(), sample_.articulation(), sample_.assumptions(), joint_,
                              Eigen::Vector3d::Zero(), 0);
  range::MotionRange found;
  found.min = end(-1, asIs_.min);
  found.max = end(1, asIs_.max);
  return found;
}

double SampleRange::violation(double angle) const {
  constexpr double kLeast = 1e-12;
  const Eigen::Vector3d angles =
      leans_ ? judge_.withMotion(Eigen::Vector3d::Zero(), 0, angle) : Eigen::Vector3d(angle, 0, 0);
  double worst = -1;
  for (const range::Finding& c : judge_.criteria(angles))
    worst = std::max(worst, c.level == range::Level::Beyond ? std::max(c.excess, kLeast) : std::min(c.excess, -kLeast));
  return worst;
}

double SampleRange::end(double sign, double asIs) const {
  constexpr double kWide = 4 * std::numbers::pi / 180, kNear = 1e-4;  // rad
  double inside = 0, outside = 0, atInside = violation(0), atOutside = 0;
  double step = std::max(kWide, 1.3 * sign * asIs);
  do {
    outside = inside + sign * std::exchange(step, kWide);
    if (std::abs(outside) > range::kSearchedFar) return sign * range::kSearchedFar;
    atOutside = violation(outside);
    if (atOutside < 0) {
      inside = outside;
      atInside = atOutside;
    }
  } while (atOutside < 0);
  constexpr int kMostSteps = 40;
  double root = inside;
  int stayed = 0;  // how often the same end was replaced: + the outer one, - the inner one
  for (int i = 0; i < kMostSteps && std::abs(outside - inside) > kNear; ++i) {
    const double next = inside + (outside - inside) * atInside / (atInside - atOutside);
    const double at = violation(next);
    root = next;
    const double moved = at < 0 ? next - inside : outside - next;
    if (at < 0) {
      inside = next;
      atInside = at;
      stayed = std::min(stayed, 0) - 1;
      if (stayed < -1) atOutside /= 2;
    } else {
      outside = next;
      atOutside = at;
      stayed = std::max(stayed, 0) + 1;
      if (stayed > 1) atInside /= 2;
    }
    if (std::abs(moved) < kNear && i > 1) break;
  }
  return root;
}

}  // namespace zyga::study
