#include "core/study/stances/stances.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/bend.h"
#include "core/kinematics/stand_readings.h"
#include "core/kinematics/standing.h"
#include "core/range/contact/contact.h"
#include "core/range/findings.h"
#include "core/study/ground/standing_feet.h"
#include "core/study/reach/sagittal_bend.h"
#include "core/study/stances/rearing.h"

namespace zyga::study {
namespace {

using anatomy::Specimen;
using Eigen::Isometry3d;
using Eigen::Vector3d;
using kinematics::Articulation;
using kinematics::Foot;
using kinematics::LegTask;
using kinematics::levelled;
using kinematics::Placement;
using kinematics::Pose;

constexpr double kDegree = std::numbers::pi / 180;
constexpr double kMisses = 1e-3;  ///< m: what a reader of millimetres would see

/// Column at neutral, legs as a standing animal's, blades as they are.
Pose squareStand(const range::Scenario& scenario) {
  const Specimen& specimen = scenario.specimen();
  const Articulation& articulation = scenario.articulation();
  const Pose& present = scenario.pose();
  const std::vector<Foot> all(kinematics::kFeet.begin(), kinematics::kFeet.end());
  Pose pose = Pose::neutral(specimen);
  pose.X_WRoot = levelled(present.X_WRoot);
  for (const auto& [id, angles] : anatomy::standingAngles(specimen)) pose[*specimen.findJoint(id)] = angles;
  for (const char* id : {"scapula.L", "scapula.R"}) {
    if (const auto joint = specimen.findJoint(id)) pose[*joint] = present[*joint];
  }
  pose = kinematics::stand(specimen, articulation, pose, all);
  // The shoulders hang a little askew where the back is not straight at rest: hands and feet are laid flat.
  return kinematics::plantFeet(specimen, articulation, pose, all).pose;
}

double smooth(double from, double to, double x) {
  const double t = std::clamp((x - from) / (to - from), 0.0, 1.0);
  return t * t * (3 - 2 * t);
}

/// Every foot where it should be, and flat.
bool firm(const kinematics::FeetAnswer& answer) {
  constexpr double kFlat = 0.5 * kDegree;
  return std::all_of(answer.fits.begin(), answer.fits.end(),
                     [](const kinematics::LegFit& fit) { return fit.holds() && fit.tilt < kFlat; });
}

reason::Value lengthValue(double length) { return reason::Quantity{length, reason::Unit::Length}; }

/// What the parts of a stance work on.
struct Stage {
  const range::Scenario& scenario;
  const Specimen& specimen;
  const Articulation& articulation;
  const SagittalBend& bend;
  const Densities& densities;
  StanceAnswer& answer;

  Placement placed() const { return kinematics::forwardKinematics(specimen, articulation, answer.pose); }
  double snoutHeight() const { return kinematics::snoutHeight(specimen, placed()).value_or(0); }
  void stay() {  // tells how the feet stand that no solver has moved
    answer.fits.clear();
    for (const kinematics::FootPlace& at : kinematics::footPlaces(specimen, placed()))
      answer.fits.push_back({at.foot, std::abs(at.height), at.tilt, 0, {}});
  }
};

/// The neck rises at its base and keeps its shape between; the head tips down against it.
void alert(Stage& stage) {
  stage.stay();
  const auto slope = [](double along) {
    return kDegree * (58 - 8 * smooth(0.3, 0.8, along) - 85 * smooth(0.9, 1, along));
  };
  stage.bend.followSlopes(stage.answer.pose, kinematics::neckChain(stage.specimen), slope, 0.8);
}

/// Every joint from the base on turns up until the neck stands upright: each brings all beyond it higher. The head
/// follows a part of the way.
void browse(Stage& stage) {
  stage.stay();
  const auto slope = [](double along) { return kDegree * (along < 0.99 ? 89 : 25); };
  stage.bend.followSlopes(stage.answer.pose, kinematics::neckChain(stage.specimen), slope, 1);
}

/// Every joint of the neck down by `share` of its range until the neck hangs, and the head tipped towards the water.
void lowerHead(Stage& stage, double share) {
  std::vector<kinematics::JointIndex> chain = kinematics::neckChain(stage.specimen);
  if (chain.empty()) return;
  const kinematics::JointIndex head = chain.back();
  chain.pop_back();
  const auto hanging = [](double) { return -80 * kDegree; };
  const auto tipped = [](double) { return -60 * kDegree; };
  stage.bend.followSlopes(stage.answer.pose, chain, hanging, share);
  stage.bend.followSlopes(stage.answer.pose, {head}, tipped, 1);
}

/// The least share of the ranges that brings the snout to the ground, or 1.
void lowerHeadToGround(Stage& stage) {
  const auto over = [&](double share) {
    lowerHead(stage, share);
    return stage.snoutHeight();
  };
  double low = 0, high = 1;
  if (over(1) > 0) return;
  for (int step = 0; step < 30; ++step) {
    const double middle = (low + high) / 2;
    (over(middle) > 0 ? low : high) = middle;
  }
  lowerHead(stage, low);
}

/// The front of the trunk comes down over forefeet that stand apart, by `angle` rad about the hips.
kinematics::FeetAnswer bow(const Stage& stage, const Pose& from, double angle) {
  const Placement X_WB = kinematics::forwardKinematics(stage.specimen, stage.articulation, from);
  const Vector3d left_W = levelled(from.X_WRoot).linear().col(1);
  Vector3d hips = Vector3d::Zero();
  std::vector<LegTask> tasks;
  for (const kinematics::FootRig& rig : kinematics::footRigs(stage.specimen)) {
    Isometry3d X_WFoot = X_WB[rig.bone.value];
    const double step = isFore(rig.foot) ? std::min(0.35, 2.2 * angle) : 0;  // to the side and forward
    X_WFoot.translation() += step * ((isLeft(rig.foot) ? left_W : Vector3d(-left_W)) + left_W.cross(Vector3d::UnitZ()));
    tasks.push_back({rig.foot, X_WFoot});
    if (!isFore(rig.foot)) hips += X_WB[stage.specimen[rig.joints.front()].distal.value].translation() / 2;
  }
  Pose bowed = from;
  const Isometry3d turn =
      Eigen::Translation3d(hips) * Isometry3d(Eigen::AngleAxisd(angle, left_W)) * Eigen::Translation3d(-hips);
  bowed.X_WRoot = turn * from.X_WRoot;
  return kinematics::setFeet(stage.specimen, stage.articulation, bowed, tasks);
}

void drink(Stage& stage) {
  constexpr double kAtWater = 0.005;  // m; program default, no source
  stage.stay();
  lowerHeadToGround(stage);
  const Pose upright = stage.answer.pose;
  double over = stage.snoutHeight();
  for (int step = 1; step <= 24 && over > kAtWater; ++step) {
    kinematics::FeetAnswer lower = bow(stage, upright, step * kDegree);
    if (!firm(lower)) break;
    stage.answer.pose = std::move(lower.pose);
    stage.answer.fits = std::move(lower.fits);
    lowerHeadToGround(stage);
    over = stage.snoutHeight();
    if (step == 1) stage.answer.notes.push_back({kForelimbsApart, {}});
  }
  // A trunk that bows lifts the root of the tail, and the tail hangs from it.
  const auto tail = [](double along) { return -kDegree * (3 + 5 * smooth(0.1, 0.6, along)); };
  stage.bend.followSlopes(stage.answer.pose, kinematics::tailChain(stage.specimen), tail, 0.6);
  if (over <= kAtWater) return;
  stage.answer.shortBy = over;
  stage.answer.notes.push_back({kSnoutOverGround, {lengthValue(over)}});
}

/// Where a foot is at one moment of a walk: `later` quarters of a stride after the swinging one sets it down. `stride`
/// and `reach`, the height of the joint the leg hangs on, in m.
Isometry3d footInWalk(const kinematics::FootRig& rig, const Isometry3d& X_WStanding, const Isometry3d& X_WLevel,
                      int later, double stride, double reach) {
  // Program defaults, no source.
  constexpr double kSwing = 0.25;          // share of the stride that a foot is in the air
  constexpr double kLift = 0.10;           // share of the leg's reach
  constexpr double kDroop = 35 * kDegree;  // of the hanging foot
  const Vector3d ahead = X_WLevel.linear().col(0);
  Isometry3d X_WFoot = kinematics::flatOnGround(rig, X_WStanding);
  if (later > 0) {
    // The next to swing was set down longest ago. A foot stands still while the body goes over it.
    const double since = 1 - kSwing / 2 - 0.25 * later;  // of the stride, from its setting down
    X_WFoot.translation() += stride * ((1 - kSwing) / 2 - since) * ahead;
    return X_WFoot;
  }
  const Vector3d p_WSole = X_WFoot * rig.p_BSole + reach * (kLift * Vector3d::UnitZ() + 0.02 * ahead);
  X_WFoot.linear() = Eigen::AngleAxisd(kDroop, X_WLevel.linear().col(1)) * X_WFoot.linear();
  X_WFoot.translation() = p_WSole - X_WFoot.linear() * rig.p_BSole;
  return X_WFoot;
}

/// The feet in their places over the least lowered trunk that lets them be there: legs that reach forward and back
/// stand lower than upright ones.
kinematics::FeetAnswer setWalking(const Stage& stage, const std::vector<LegTask>& standing,
                                  const std::vector<LegTask>& swinging, double step) {
  constexpr int kSteps = 12;
  kinematics::FeetAnswer found;
  Pose lower = stage.answer.pose;
  for (int i = 1; i <= kSteps; ++i) {
    lower.X_WRoot.translation().z() = stage.answer.pose.X_WRoot.translation().z() - step * i;
    found = kinematics::setFeet(stage.specimen, stage.articulation, lower, standing);
    if (firm(found)) break;
  }
  kinematics::FeetAnswer swung = kinematics::setFeet(stage.specimen, stage.articulation, found.pose, swinging);
  found.fits.insert(found.fits.end(), swung.fits.begin(), swung.fits.end());
  found.pose = std::move(swung.pose);
  return found;
}

/// One moment of the walk: the foot `swinging` is in the middle of its swing, the others were set down a quarter, a
/// half and three quarters of a stride after one another.
void walk(Stage& stage, Foot swinging) {
  constexpr double kStride = 0.80;  // of the hip's height: an unhurried walk; program default, no source
  Pose& pose = stage.answer.pose;
  const Placement X_WB = stage.placed();
  const auto reachOf = [&](const kinematics::FootRig& rig) {
    return X_WB[stage.specimen[rig.joints.front()].distal.value].translation().z();
  };
  const std::vector<kinematics::FootRig> rigs = kinematics::footRigs(stage.specimen);
  const double hip = reachOf(rigs.front());
  std::vector<LegTask> standing;
  std::vector<LegTask> swing;
  for (const kinematics::FootRig& rig : rigs) {
    const int later = (static_cast<int>(rig.foot) - static_cast<int>(swinging) + 4) % 4;
    const LegTask task{
        rig.foot, footInWalk(rig, X_WB[rig.bone.value], levelled(pose.X_WRoot), later, kStride * hip, reachOf(rig))};
    (later == 0 ? swing : standing).push_back(task);
  }
  kinematics::FeetAnswer found = setWalking(stage, standing, swing, 0.01 * hip);
  pose = std::move(found.pose);
  stage.answer.fits = std::move(found.fits);
  const auto slope = [](double along) { return kDegree * (30 - 40 * smooth(0.85, 1, along)); };
  stage.bend.followSlopes(pose, kinematics::neckChain(stage.specimen), slope, 0.7);
}

void carry(Stage& stage, Stance stance) {
  switch (stance) {
    case Stance::Alert:
      return alert(stage);
    case Stance::Browse:
      return browse(stage);
    case Stance::Drink:
      return drink(stage);
    case Stance::WalkLeftHind:
      return walk(stage, Foot::LeftHind);
    case Stance::WalkLeftFore:
      return walk(stage, Foot::LeftFore);
    case Stance::WalkRightHind:
      return walk(stage, Foot::RightHind);
    case Stance::WalkRightFore:
      return walk(stage, Foot::RightFore);
    case Stance::Rear:
      return rear(stage.scenario, stage.bend, stage.densities, stage.answer);
  }
}

/// Where the head as it is tipped would enter the foremost vertebrae, it is brought back towards the neck's own line
/// until it does not. No single joint does that, so that no range tells of it.
void easeHead(Stage& stage) {
  const range::ContactModel* model = stage.scenario.contact();
  const std::vector<kinematics::JointIndex> chain = kinematics::neckChain(stage.specimen);
  if (!model || chain.empty()) return;
  const auto enters = [&] {
    const auto contacts = model->contacts(stage.placed(), stage.scenario.assumptions());
    return std::any_of(contacts.begin(), contacts.end(), [&](const range::ContactFinding& contact) {
      const auto isHead = [&](anatomy::BoneIndex bone) {
        return anatomy::regionOf(stage.specimen[bone].name) == anatomy::Region::Skull;
      };
      return contact.level == range::Level::Beyond && (isHead(contact.bone) || isHead(contact.other));
    });
  };
  const Vector3d tipped = stage.answer.pose[chain.back()];
  for (const double share : {0.8, 0.6, 0.4, 0.2, 0.0}) {
    if (!enters()) return;
    stage.answer.pose[chain.back()] = share * tipped;
  }
}

void noteMisses(StanceAnswer& answer) {
  for (const kinematics::LegFit& fit : answer.fits) {
    if (fit.miss < kMisses) continue;
    answer.shortBy = std::max(answer.shortBy, fit.miss);
    answer.notes.push_back({kFootMisses, {termOf(fit.foot), lengthValue(fit.miss)}});
  }
}

void noteBeyond(const range::Scenario& scenario, StanceAnswer& answer) {
  const range::Scenario posed = scenario.withPose(answer.pose);
  const range::Assessment& assessment = posed.assessment();
  answer.contactJudged = assessment.contactJudged;
  for (const range::JointVerdict& verdict : assessment.joints)
    if (verdict.level == range::Level::Beyond) answer.beyond.push_back(verdict.joint);
  for (const range::ContactFinding& contact : assessment.contacts)
    if (contact.level == range::Level::Beyond && !contact.joint) answer.contacts.push_back(contact);
}

}  // namespace

StanceAnswer takeStance(const range::Scenario& present, Stance stance, const Densities& densities) {
  const SagittalBend bend(present.specimen(), present.articulation(), present.assumptions(), present.contact());
  StanceAnswer answer;
  answer.pose = squareStand(present);
  Stage stage{present, present.specimen(), present.articulation(), bend, densities, answer};
  carry(stage, stance);
  if (stance != Stance::Drink) easeHead(stage);  // the snout has its place there
  noteMisses(answer);
  noteBeyond(present, answer);
  return answer;
}

StanceAnswer standAsPosed(const range::Scenario& present) {
  StanceAnswer answer;
  const std::vector<Foot> carrying =
      kinematics::carryingFeet(present.specimen(), present.articulation(), present.pose());
  answer.pose = kinematics::stand(present.specimen(), present.articulation(), present.pose(), carrying);
  const Placement X_WB = kinematics::forwardKinematics(present.specimen(), present.articulation(), answer.pose);
  for (const kinematics::FootPlace& at : kinematics::footPlaces(present.specimen(), X_WB)) {
    const bool carries = std::find(carrying.begin(), carrying.end(), at.foot) != carrying.end();
    answer.fits.push_back({at.foot, carries ? at.height : 0, at.tilt, 0, {}});
    if (carries) answer.shortBy = std::max(answer.shortBy, at.height < kMisses ? 0 : at.height);
    if (!carries) answer.notes.push_back({kFootHeldUp, {termOf(at.foot)}});
  }
  noteBeyond(present, answer);
  return answer;
}

}  // namespace zyga::study
