#include "core/kinematics/range_edge.h"

#include <cmath>
#include <limits>

namespace zyga::kinematics {
namespace {

using Eigen::Vector3d;

constexpr double kDifference = 1e-5;  // rad
/// Slopes serve as long as the joint stays this near, units.
constexpr double kSameSlopes = 0.03;

Vector3d nowhere() { return Vector3d::Constant(std::numeric_limits<double>::quiet_NaN()); }

}  // namespace

RangeEdge::RangeEdge(const JointRanges& ranges, JointIndex joint, std::vector<int> motions, const Vector3d& units,
                     const Vector3d& anchor)
    : ranges_(ranges),
      joint_(joint),
      motions_(std::move(motions)),
      units_(units),
      anchor_(anchor),
      box_(ranges.box(joint)),
      worstAtAnchor_(ranges.excesses(joint, anchor).worst()),
      asked_(nowhere()),
      slopesAt_(nowhere()) {}

const JointRanges::Excesses& RangeEdge::excesses(const Vector3d& angles) {
  if (angles != asked_) {
    answer_ = ranges_.excesses(joint_, angles);
    asked_ = angles;
  }
  return answer_;
}

Vector3d RangeEdge::broughtIn(Vector3d angles) {
  angles = angles.cwiseMax(box_.least).cwiseMin(box_.most);
  double out = excesses(angles).worst();
  if (out <= 0) return angles;
  // Regula falsi on the way to the anchor, aimed a little inside; any answer just inside the edge will do.
  const double enough = -0.3 * out;
  double outside = 0, inside = 1, in = worstAtAnchor_;
  for (int i = 0; i < 30; ++i) {
    const double aim = outside + (inside - outside) * std::clamp(1.1 * out / (out - in), 0.01, 0.99);
    const double back = i % 4 == 3 ? 0.5 * (outside + inside) : aim;
    const Vector3d there = angles + back * (anchor_ - angles);
    const double worst = excesses(there).worst();
    if (worst > 0) {
      outside = back;
      out = worst;
      continue;
    }
    if (worst >= enough) return there;
    inside = back;
    in = worst;
  }
  return angles + inside * (anchor_ - angles);
}

void RangeEdge::linearise(const Vector3d& angles, const JointRanges::Excesses& here) {
  slopes_.fill(Vector3d::Zero());
  for (const int motion : motions_) {
    Vector3d nudged = angles;
    nudged[motion] += kDifference;
    const JointRanges::Excesses there = ranges_.excesses(joint_, nudged);
    for (std::size_t k = 0; k < here.count; ++k) {
      slopes_[k][motion] = (there.values[k] - here.values[k]) * units_[motion] / kDifference;
    }
  }
  slopesAt_ = angles;
}

void RangeEdge::addHalfSpaces(const Vector3d& angles, int first, std::vector<HalfSpace>& halfSpaces) {
  const JointRanges::Excesses here = excesses(angles);
  if (here.count == 0) return;
  const double strayed = (angles - slopesAt_).cwiseQuotient(units_).norm();
  if (!(strayed < kSameSlopes)) linearise(angles, here);
  for (std::size_t k = 0; k < here.count; ++k) {
    const double length = slopes_[k].norm();
    if (length < 1e-6) continue;  // says nothing about the way on
    HalfSpace edge;
    for (std::size_t m = 0; m < motions_.size(); ++m) {
      edge.add(first + static_cast<int>(m), slopes_[k][motions_[m]] / length);
    }
    edge.most = std::max(0.0, -here.values[k]) / length;
    halfSpaces.push_back(edge);
  }
}

}  // namespace zyga::kinematics
