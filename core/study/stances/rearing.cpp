#include "core/study/stances/rearing.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/kinematics/bend.h"
#include "core/kinematics/stand_readings.h"
#include "core/study/mass/balance.h"

namespace zyga::study {
namespace {

using anatomy::BoneIndex;
using anatomy::Region;
using anatomy::Specimen;
using Eigen::Isometry3d;
using Eigen::Vector3d;
using kinematics::Articulation;
using kinematics::Foot;
using kinematics::FootRig;
using kinematics::Placement;
using kinematics::Pose;

constexpr double kDegree = std::numbers::pi / 180;

struct TailPoint {
  BoneIndex bone;
  Vector3d p_B;
};

std::vector<TailPoint> tailPoints(const Specimen& specimen) {
  std::vector<TailPoint> points;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const Region region = anatomy::regionOf(specimen.bones[i].name);
    if (region != Region::Caudal && region != Region::Chevrons) continue;
    for (const Vector3d& p_B : bonePoints(specimen.bones[i])) points.push_back({BoneIndex{i}, p_B});
  }
  return points;
}

double lowestPoint(const std::vector<TailPoint>& points, const Placement& X_WB) {
  double z = std::numeric_limits<double>::infinity();
  for (const TailPoint& point : points) z = std::min(z, (X_WB[point.bone.value] * point.p_B).z());
  return z;
}

/// How far a tail vertebra and what hangs on it reach below its axis, by bone, m.
std::vector<double> tailDepths(const Specimen& specimen, const std::vector<TailPoint>& points, const Placement& X_WB) {
  std::vector<double> depth(specimen.bones.size(), 0);
  for (const TailPoint& point : points) {
    BoneIndex vertebra = point.bone;
    if (anatomy::regionOf(specimen[vertebra].name) == Region::Chevrons) {
      const auto joint = specimen.jointAbove(vertebra);
      if (joint) vertebra = specimen[*joint].proximal;
    }
    const Vector3d p = X_WB[vertebra.value].inverse() * (X_WB[point.bone.value] * point.p_B);
    depth[vertebra.value] = std::max(depth[vertebra.value], -p.z());
  }
  return depth;
}

/// One way of rearing, and how good it is.
struct Attempt {
  kinematics::FeetAnswer feet;
  double tail = 0;    ///< height of its lowest point, m
  double margin = 0;  ///< of the centre of mass inside the support, m

  double shortfall() const { return feet.worstMiss() + std::abs(tail) + std::max(0.0, kAsideOfEdge - margin); }
  bool good() const { return feet.hold() && std::abs(tail) < kinematics::kOnGround && margin >= kAsideOfEdge; }

  static constexpr double kAsideOfEdge = 0.05;  // m; program default, no source
};

class Rearing {
 public:
  Rearing(const range::Scenario& scenario, const SagittalBend& bend, const Densities& densities, const Pose& standing)
      : scenario_(scenario.withContact(nullptr)),  // attempts need no verdicts
        specimen_(scenario_.specimen()),
        articulation_(scenario_.articulation()),
        bend_(bend),
        standing_(standing),
        X_WB_(kinematics::forwardKinematics(specimen_, articulation_, standing)),
        segments_(bodySegments(scenario)),
        densities_(densities) {
    slope_ = kinematics::readStand(specimen_, X_WB_).trunkSlope;
    for (const FootRig& rig : kinematics::footRigs(specimen_)) {
      if (isFore(rig.foot)) continue;
      hind_.push_back(rig);
      hips_ += X_WB_[specimen_[rig.joints.front()].distal.value].translation() / 2;
    }
    left_ = standing.X_WRoot.linear().col(1);
    ahead_ = left_.cross(Vector3d::UnitZ()).normalized();
  }

  bool possible() const { return hind_.size() == 2; }

  /// The trunk at this slope (rad) over hips a little lower than standing, with all but the hind legs in place.
  Pose raised(double slope, double& tail) const {
    constexpr double kLower = 0.06;  // of the hips' height: knees bend; program default, no source
    Pose pose = standing_;
    const Vector3d drop(0, 0, -kLower * hips_.z());
    const Isometry3d turn = Eigen::Translation3d(hips_ + drop) * Isometry3d(Eigen::AngleAxisd(slope_ - slope, left_)) *
                            Eigen::Translation3d(-hips_);
    pose.X_WRoot = turn * standing_.X_WRoot;
    hangForelimbs(pose, slope - slope_);
    const auto neck = [slope](double along) {
      return std::min(80 * kDegree, slope + 12 * kDegree) - (along > 0.85 ? (along - 0.85) / 0.15 * 75 * kDegree : 0);
    };
    bend_.followSlopes(pose, kinematics::neckChain(specimen_), neck, 0.7);
    tail = restTailOnGround(scenario_, bend_, pose);
    return pose;
  }

  /// Hind feet flat, `ahead` m before where they stood.
  Attempt stepTo(const Pose& pose, double tail, double ahead) const {
    std::vector<kinematics::LegTask> tasks;
    for (const FootRig& rig : hind_) {
      Isometry3d X_WFoot = kinematics::flatOnGround(rig, X_WB_[rig.bone.value]);
      X_WFoot.translation() += ahead * ahead_;
      tasks.push_back({rig.foot, X_WFoot});
    }
    Attempt attempt{kinematics::setFeet(specimen_, articulation_, pose, tasks), tail, 0};
    attempt.margin = balance(attempt.feet.pose).margin.value_or(-1);
    return attempt;
  }

  Balance balance(const Pose& pose) const { return balanceOf(scenario_.withPose(pose), segments_, densities_); }

 private:
  /// The arms stay upright as far as shoulders go, a little forward, with bent elbows and hanging hands.
  void hangForelimbs(Pose& pose, double rise) const {
    for (const std::string side : {".L", ".R"}) {
      bendTo(pose, "shoulder" + side, 12 * kDegree - rise);
      bendTo(pose, "elbow" + side, 38 * kDegree);
      bendTo(pose, "wrist" + side, -30 * kDegree);
    }
  }

  void bendTo(Pose& pose, const std::string& id, double flexion) const {
    const auto joint = specimen_.findJoint(id);
    if (!joint || !specimen_[*joint].typed) return;
    const anatomy::AngleLimits& limits = specimen_[*joint].typed->angles[0];
    pose[*joint] = Vector3d(std::clamp(flexion, 0.9 * limits.min, 0.9 * limits.max), 0, 0);
  }

  const range::Scenario scenario_;
  const Specimen& specimen_;
  const Articulation& articulation_;
  const SagittalBend& bend_;
  const Pose& standing_;
  Placement X_WB_;
  std::vector<BodySegment> segments_;
  const Densities& densities_;
  std::vector<FootRig> hind_;
  Vector3d hips_ = Vector3d::Zero(), left_, ahead_;
  double slope_ = 0;
};

void noteShort(const Attempt& best, StanceAnswer& answer) {
  const auto length = [](double metres) { return reason::Quantity{metres, reason::Unit::Length}; };
  if (std::abs(best.tail) >= kinematics::kOnGround) {
    answer.notes.push_back({best.tail > 0 ? kTailOverGround : kTailInGround, {length(std::abs(best.tail))}});
    answer.shortBy = std::abs(best.tail);
  }
  if (best.margin < 0) {
    answer.notes.push_back({kWouldFall, {length(-best.margin)}});
    answer.shortBy = std::max(answer.shortBy, -best.margin);
  }
}

}  // namespace

double lowestOfTail(const Specimen& specimen, const Placement& X_WB) { return lowestPoint(tailPoints(specimen), X_WB); }

double restTailOnGround(const range::Scenario& scenario, const SagittalBend& bend, Pose& pose) {
  const Specimen& specimen = scenario.specimen();
  const Articulation& articulation = scenario.articulation();
  const std::vector<kinematics::JointIndex> chain = kinematics::tailChain(specimen);
  if (chain.empty()) return 0;
  const std::vector<TailPoint> points = tailPoints(specimen);
  for (const kinematics::JointIndex joint : chain) pose[joint].setZero();
  Placement X_WB = kinematics::forwardKinematics(specimen, articulation, pose);
  const std::vector<double> depth = tailDepths(specimen, points, X_WB);
  std::vector<anatomy::AngleLimits> ranges;
  // Well inside the ranges: spines and arches of a tail that bends as far as its facets go touch before they end.
  // Program default, no source.
  constexpr double kShare = 0.75;
  for (const kinematics::JointIndex joint : chain) {
    const anatomy::AngleLimits whole = bend.range(joint);
    ranges.push_back({kShare * whole.min, kShare * whole.max});
  }

  const auto height = [&](kinematics::JointIndex joint) {
    const anatomy::Joint& j = specimen[joint];
    return (X_WB[j.proximal.value] * j.centreProximal).z() - depth[j.distal.value];
  };
  // The tail comes down along an even bend: a slope in proportion to the root of the height lands level, and the
  // steeper it starts against the slope with which the tail leaves the hip the sooner it lies on the ground.
  const double fall = std::max(0.1, -std::sin(bend.slopeOf(X_WB, specimen[chain.front()].distal)));
  const double start = std::max(0.1, height(chain.front()));
  const auto lay = [&](double steepness) {
    for (std::size_t i = 0; i < chain.size(); ++i) {
      pose[chain[i]].setZero();
      kinematics::placeInto(specimen, articulation, pose, X_WB);
      const double h = height(chain[i]);
      const double down = h > 0 ? steepness * fall * std::sqrt(h / start) : h;
      const double missing = -std::asin(std::clamp(down, -0.3, 0.95)) - bend.slopeOf(X_WB, specimen[chain[i]].distal);
      pose[chain[i]][0] = std::clamp(missing, ranges[i].min, ranges[i].max);
    }
    kinematics::placeInto(specimen, articulation, pose, X_WB);
    return lowestPoint(points, X_WB);
  };
  constexpr double kSunk = 0.008;  // m, less than what counts as touching
  double nearest = 1, least = std::numeric_limits<double>::infinity();
  for (double steepness = 2; steepness > 0.35; steepness -= 0.1) {
    const double z = lay(steepness);
    if (std::abs(z) < kSunk) return z;
    if (std::abs(z) < least) nearest = steepness;
    least = std::min(least, std::abs(z));
  }
  return lay(nearest);
}

void rear(const range::Scenario& scenario, const SagittalBend& bend, const Densities& densities, StanceAnswer& answer) {
  const Rearing rearing(scenario, bend, densities, answer.pose);
  if (!rearing.possible()) {
    answer.notes.push_back({kNoHindFeet, {}});
    answer.shortBy = 1;
    return;
  }
  std::optional<Attempt> best;
  for (double slope = 55; slope >= 30 && !(best && best->good()); slope -= 5) {
    double tail = 0;
    const Pose raised = rearing.raised(slope * kDegree, tail);
    for (double ahead = 0; ahead <= 1.01; ahead += 0.1) {
      Attempt attempt = rearing.stepTo(raised, tail, ahead);
      if (best && best->shortfall() <= attempt.shortfall()) continue;
      best = std::move(attempt);
      if (best->good()) break;
    }
  }
  answer.pose = best->feet.pose;
  answer.fits = best->feet.fits;
  answer.balance = rearing.balance(answer.pose);
  noteShort(*best, answer);
}

}  // namespace zyga::study
