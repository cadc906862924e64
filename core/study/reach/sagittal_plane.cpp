#include "core/study/reach/sagittal_plane.h"

#include <algorithm>

#include "core/kinematics/bend.h"
#include "core/study/ground/standing_feet.h"
#include "core/study/reach/extremes.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using kinematics::JointIndex;
using kinematics::Placement;

/// Where a joint turns, m, world.
Vector3d centreOf(const anatomy::Specimen& specimen, const Placement& X_WB, JointIndex joint) {
  return X_WB[specimen[joint].proximal.value] * specimen[joint].centreProximal;
}

/// First dorsal to the sacrum and on to the last caudal.
Line columnLine(const anatomy::Specimen& specimen, const Placement& X_WB, const SagittalPlane& plane) {
  Line line;
  const auto neck = jointsOf(specimen, Chain::Neck);
  std::vector<JointIndex> trunk = specimen.chainTo(specimen[neck.front()].proximal);
  line.push_back(plane.flat(centreOf(specimen, X_WB, neck.front())));
  for (auto joint = trunk.rbegin(); joint != trunk.rend(); ++joint) {
    line.push_back(plane.flat(centreOf(specimen, X_WB, *joint)));
  }
  const auto tail = jointsOf(specimen, Chain::Tail);
  for (const JointIndex joint : tail) line.push_back(plane.flat(centreOf(specimen, X_WB, joint)));
  if (!tail.empty()) {
    const auto tip = specimen[tail.back()].distal;
    line.push_back(plane.flat(X_WB[tip.value] * specimen[tip].landmark("caudal")));
  }
  return line;
}

/// The point of a line nearest to another point: where a girdle hangs on the column.
Vector2d nearestTo(const Line& line, const Vector2d& p) {
  Vector2d nearest = line.front();
  for (std::size_t i = 0; i + 1 < line.size(); ++i) {
    const Vector2d way = line[i + 1] - line[i];
    const double length = way.squaredNorm();
    const double share = length > 0 ? std::clamp((p - line[i]).dot(way) / length, 0.0, 1.0) : 0;
    const Vector2d q = line[i] + share * way;
    if ((q - p).squaredNorm() < (nearest - p).squaredNorm()) nearest = q;
  }
  return nearest;
}

}  // namespace

Vector2d SagittalPlane::flat(const Vector3d& p_W) const {
  const Vector3d from = p_W - p_WOrigin;
  return {from.dot(ahead_W), from.dot(up_W)};
}

Vector3d SagittalPlane::inWorld(const Vector2d& p) const { return p_WOrigin + p.x() * ahead_W + p.y() * up_W; }

SagittalPlane neckPlane(const anatomy::Specimen& specimen, const Placement& X_WB) {
  const auto neck = jointsOf(specimen, Chain::Neck);
  if (neck.empty()) throw reason::Failure(reason::Reason(kNoNeck));
  const Vector3d base = centreOf(specimen, X_WB, neck.front());
  const Vector3d left = X_WB[specimen[neck.front()].proximal.value].linear().col(1);
  SagittalPlane plane;
  const Vector3d level = left.cross(Vector3d::UnitZ());
  // Lying on its side an animal has no upright plane; its own long axis then leads.
  constexpr double kOnItsSide = 1e-3;
  plane.ahead_W = level.norm() > kOnItsSide ? Vector3d(level.normalized())
                                            : Vector3d(X_WB[specimen[neck.front()].proximal.value].linear().col(0));
  plane.up_W = plane.ahead_W.cross(left).normalized();
  plane.p_WOrigin = plane.up_W.z() > kOnItsSide ? Vector3d(base - base.z() / plane.up_W.z() * plane.up_W) : base;
  return plane;
}

std::vector<JointIndex> neckJoints(const anatomy::Specimen& specimen) {
  const auto skull = specimen.findBone("skull");
  return skull ? kinematics::dragChain(specimen, *skull) : jointsOf(specimen, Chain::Neck);
}

Line neckLine(const anatomy::Specimen& specimen, const Placement& X_WB, const SagittalPlane& plane) {
  Line line;
  const auto skull = specimen.findBone("skull");
  const auto joints = neckJoints(specimen);
  for (const JointIndex joint : joints) line.push_back(plane.flat(centreOf(specimen, X_WB, joint)));
  const auto last = specimen[joints.back()].distal;
  line.push_back(plane.flat(X_WB[last.value] * specimen[last].landmark(skull ? "snout" : "cranial")));
  return line;
}

std::vector<Line> bodyLines(const anatomy::Specimen& specimen, const Placement& X_WB, const SagittalPlane& plane) {
  std::vector<Line> lines{columnLine(specimen, X_WB, plane)};
  for (const kinematics::FootRig& rig : kinematics::footRigs(specimen)) {
    Line leg{nearestTo(lines.front(), plane.flat(centreOf(specimen, X_WB, rig.joints.front())))};
    for (const JointIndex joint : rig.joints) {
      const Vector2d at = plane.flat(centreOf(specimen, X_WB, joint));
      if ((leg.back() - at).norm() > 1e-6) leg.push_back(at);
    }
    leg.push_back(plane.flat(X_WB[rig.bone.value] * rig.p_BSole));
    lines.push_back(leg);
  }
  return lines;
}

std::optional<double> foreFeetAhead(const anatomy::Specimen& specimen, const Placement& X_WB,
                                    const SagittalPlane& plane) {
  std::optional<double> foremost;
  for (const StandingFoot& foot : feetOf(specimen, X_WB)) {
    if (!isFore(foot.foot) || !foot.planted()) continue;
    const double ahead = plane.flat({foot.centre.x(), foot.centre.y(), 0}).x();
    foremost = std::max(foremost.value_or(ahead), ahead);
  }
  return foremost;
}

}  // namespace zyga::study
