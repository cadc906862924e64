#include "core/study/stances/rearing.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <numbers>

#include "core/kinematics/bend.h"
#include "core/kinematics/stand_readings.h"
#include "core/study/mass/balance.h"
#include "core/study/stances/tail_rest.h"

namespace zyga::study {
namespace {

using anatomy::Specimen;
using Eigen::Isometry3d;
using Eigen::Vector3d;
using kinematics::Articulation;
using kinematics::Foot;
using kinematics::FootRig;
using kinematics::Placement;
using kinematics::Pose;

constexpr double kDegree = std::numbers::pi / 180;

/// One way of rearing, and how good it is.
struct Attempt {
  kinematics::FeetAnswer feet;
  double tail = 0;    ///< height of its lowest point, m
  double margin = 0;  ///< of the centre of mass inside the support, m

  double fault() const { return feet.worstMiss() + std::abs(tail) + std::max(0.0, kAsideOfEdge - margin); }
  bool good() const { return feet.hold() && std::abs(tail) < kinematics::kOnGround && margin >= kAsideOfEdge; }

  static constexpr double kAsideOfEdge = 0.05;  // m
};

class Rearing {
 public:
  Rearing(const Specimen& specimen, const Articulation& articulation, const SagittalBend& bend, const Pose& standing)
      : specimen_(specimen),
        articulation_(articulation),
        bend_(bend),
        standing_(standing),
        X_WB_(kinematics::place(specimen, articulation, standing)),
        segments_(bodySegments(specimen, articulation)) {
    const kinematics::StandReadings readings = kinematics::readStand(specimen, X_WB_);
    slope_ = readings.trunkSlope;
    for (const FootRig& rig : kinematics::footRigs(specimen)) {
      if (isFore(rig.foot)) continue;
      hind_.push_back(rig);
      hips_ += X_WB_[specimen[rig.joints.front()].distal.value].translation() / 2;
    }
    left_ = standing.X_WRoot.linear().col(1);
    ahead_ = left_.cross(Vector3d::UnitZ()).normalized();
  }

  bool possible() const { return hind_.size() == 2; }

  /// The trunk at this slope (rad) over hips a little lower than standing, with all but the hind legs in place.
  Pose raised(double slope, double& tail) const {
    constexpr double kLower = 0.06;  // of the hips' height: knees bend
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
    tail = restTailOnGround(specimen_, articulation_, bend_, pose);
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
    const Placement X_WB = kinematics::place(specimen_, articulation_, attempt.feet.pose);
    attempt.margin = balanceOf(specimen_, segments_, {}, X_WB).margin.value_or(-1);
    return attempt;
  }

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
    pose[*joint] = Vector3d(std::clamp(flexion, 0.9 * limits.least, 0.9 * limits.most), 0, 0);
  }

  const Specimen& specimen_;
  const Articulation& articulation_;
  const SagittalBend& bend_;
  const Pose& standing_;
  Placement X_WB_;
  std::vector<BodySegment> segments_;
  std::vector<FootRig> hind_;
  Vector3d hips_ = Vector3d::Zero(), left_, ahead_;
  double slope_ = 0;
};

void tell(const Attempt& best, StanceAnswer& answer) {
  if (std::abs(best.tail) >= kinematics::kOnGround) {
    char text[96];
    std::snprintf(text, sizeof text, "The tail's range leaves it %.0f mm %s the ground.", 1000 * std::abs(best.tail),
                  best.tail > 0 ? "over" : "under");
    answer.notes.push_back(text);
    answer.shortBy = std::abs(best.tail);
  }
  if (best.margin < 0) {
    char text[128];
    std::snprintf(text, sizeof text,
                  "The estimated centre of mass lies %.0f mm outside what hind feet and tail stand on: it would fall.",
                  -1000 * best.margin);
    answer.notes.push_back(text);
    answer.shortBy = std::max(answer.shortBy, -best.margin);
  }
}

}  // namespace

void rear(const Specimen& specimen, const Articulation& articulation, const SagittalBend& bend, StanceAnswer& answer) {
  const Rearing rearing(specimen, articulation, bend, answer.pose);
  if (!rearing.possible()) {
    answer.notes.push_back("There are no two hind feet to rear on.");
    answer.shortBy = 1;
    return;
  }
  std::optional<Attempt> best;
  for (double slope = 55; slope >= 30 && !(best && best->good()); slope -= 5) {
    double tail = 0;
    const Pose raised = rearing.raised(slope * kDegree, tail);
    for (double ahead = 0; ahead <= 1.01; ahead += 0.1) {
      Attempt attempt = rearing.stepTo(raised, tail, ahead);
      if (best && best->fault() <= attempt.fault()) continue;
      best = std::move(attempt);
      if (best->good()) break;
    }
  }
  answer.pose = best->feet.pose;
  answer.fits = best->feet.fits;
  tell(*best, answer);
}

}  // namespace zyga::study
