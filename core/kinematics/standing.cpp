#include "core/kinematics/standing.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "core/kinematics/shoulder_blade.h"
#include "core/linear/linear.h"

namespace zyga::kinematics {
namespace {

using anatomy::Specimen;
using Eigen::Matrix3d;
using Eigen::Vector3d;

constexpr double kHeldUp = 0.15;  // m; program default, no source

struct Contact {
  Foot foot;
  Vector3d p_W;  ///< lowest point of the sole
};

std::vector<Contact> contactsOf(const std::vector<FootRig>& rigs, const Placement& X_WB,
                                const std::vector<Foot>& feet) {
  std::vector<Contact> contacts;
  for (const FootRig& rig : rigs) {
    if (std::find(feet.begin(), feet.end(), rig.foot) == feet.end()) continue;
    Contact contact{rig.foot, X_WB[rig.bone.value] * rig.p_BSoles.front()};
    for (const Vector3d& p_B : rig.p_BSoles) {
      const Vector3d p_W = X_WB[rig.bone.value] * p_B;
      if (p_W.z() < contact.p_W.z()) contact.p_W = p_W;
    }
    contacts.push_back(contact);
  }
  return contacts;
}

/// Unit normal of the plane through three contacts, upwards.
Vector3d normalOf(const Contact& a, const Contact& b, const Contact& c) {
  const Vector3d n = (b.p_W - a.p_W).cross(c.p_W - a.p_W).normalized();
  return n.z() < 0 ? Vector3d(-n) : n;
}

/// How far inside the triangle the point lies, seen from above: the least of its three barycentric shares.
double insideness(const Contact& a, const Contact& b, const Contact& c, const Vector3d& p_W) {
  const auto area = [](const Vector3d& p, const Vector3d& q, const Vector3d& r) {
    return (q.x() - p.x()) * (r.y() - p.y()) - (q.y() - p.y()) * (r.x() - p.x());
  };
  const double whole = area(a.p_W, b.p_W, c.p_W);
  return std::min({area(p_W, b.p_W, c.p_W), area(a.p_W, p_W, c.p_W), area(a.p_W, b.p_W, p_W)},
                  [&](double s, double t) { return s / whole < t / whole; }) /
         whole;
}

/// Normal of the plane that four contacts rest on.
Vector3d normalOfFour(const std::vector<Contact>& contacts, const Vector3d& p_WMiddle) {
  constexpr double kInPlane = 1e-9;  // m
  Vector3d best = Vector3d::UnitZ();
  double most = -1e9;
  for (std::size_t left = 0; left < 4; ++left) {
    const Contact &a = contacts[(left + 1) % 4], &b = contacts[(left + 2) % 4], &c = contacts[(left + 3) % 4];
    const Vector3d n = normalOf(a, b, c);
    if (n.dot(contacts[left].p_W - a.p_W) < -kInPlane) continue;  // the fourth would be under ground
    const double inside = insideness(a, b, c, p_WMiddle);
    if (inside <= most) continue;
    most = inside;
    best = n;
  }
  return best;
}

/// The middle between hips and shoulders.
Vector3d middleOfTrunk(const Specimen& specimen, const Placement& X_WB) {
  Vector3d sum = Vector3d::Zero();
  int count = 0;
  for (const char* id : {"hip.L", "hip.R", "shoulder.L", "shoulder.R"}) {
    const auto joint = specimen.findJoint(id);
    if (!joint) continue;
    sum += X_WB[specimen[*joint].distal.value].translation();
    ++count;
  }
  return count > 0 ? Vector3d(sum / count) : sum;
}

/// Upward normal of what the contacts rest on.
Vector3d supportNormal(const Specimen& specimen, const Placement& X_WB, const std::vector<Contact>& contacts) {
  if (contacts.size() >= 4) return normalOfFour(contacts, middleOfTrunk(specimen, X_WB));
  if (contacts.size() == 3) return normalOf(contacts[0], contacts[1], contacts[2]);
  const Vector3d along = contacts.front().p_W - contacts.back().p_W;
  return (Vector3d::UnitZ() - along * along.z() / along.squaredNorm()).normalized();
}

/// The joints on which the limbs hang, with the attitude of what hangs on them.
class HangingLimbs {
 public:
  HangingLimbs(const Specimen& specimen, const Placement& X_WB) : specimen_(specimen) {
    for (const char* id : {"hip.L", "hip.R", "shoulder.L", "shoulder.R"}) {
      if (const auto joint = specimen.findJoint(id))
        limbs_.push_back({*joint, X_WB[specimen[*joint].distal.value].linear()});
    }
  }

  /// The angles at which each limb has its attitude again with the trunk turned by `R_W` (in the world) from where
  /// `X_WB` has it.
  void keep(const Articulation& articulation, const Placement& X_WB, const Matrix3d& R_W, Pose& pose) const {
    for (const Limb& limb : limbs_) {
      const anatomy::Joint& joint = specimen_[limb.joint];
      const Matrix3d R_WP = R_W * X_WB[joint.proximal.value].linear();
      pose[limb.joint] = jointAngles(joint, (R_WP * articulation[limb.joint].rotation).transpose() * limb.R_WLimb);
    }
  }

 private:
  struct Limb {
    JointIndex joint;
    Matrix3d R_WLimb;
  };
  const Specimen& specimen_;
  std::vector<Limb> limbs_;
};

bool canTilt(const std::vector<Contact>& contacts) {
  const bool fore = std::any_of(contacts.begin(), contacts.end(), [](const Contact& c) { return isFore(c.foot); });
  const bool hind = std::any_of(contacts.begin(), contacts.end(), [](const Contact& c) { return !isFore(c.foot); });
  return fore && hind;
}

}  // namespace

std::vector<SolePoint> solePoints(const Specimen& specimen) {
  std::vector<SolePoint> soles;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const auto sole = specimen.bones[i].landmarks.find("sole");
    if (sole != specimen.bones[i].landmarks.end()) soles.push_back({BoneIndex{i}, sole->second});
  }
  return soles;
}

Eigen::Isometry3d levelled(const Eigen::Isometry3d& X_WRoot) {
  const Vector3d ahead = X_WRoot.linear().col(0);
  Eigen::Isometry3d X(Eigen::AngleAxisd(std::atan2(ahead.y(), ahead.x()), Vector3d::UnitZ()));
  X.translation() = Vector3d(X_WRoot.translation().x(), X_WRoot.translation().y(), 0);
  return X;
}

std::vector<Foot> carryingFeet(const Specimen& specimen, const Articulation& articulation, const Pose& pose) {
  const std::vector<FootPlace> places = footPlaces(specimen, forwardKinematics(specimen, articulation, pose));
  const auto fellow = [&](const FootPlace& foot) {
    return std::find_if(places.begin(), places.end(), [&](const FootPlace& other) {
      return other.foot != foot.foot && isFore(other.foot) == isFore(foot.foot);
    });
  };
  std::vector<Foot> carrying;
  for (const FootPlace& foot : places) {
    const auto other = fellow(foot);
    if (other == places.end() || foot.height - other->height < kHeldUp) carrying.push_back(foot.foot);
  }
  return carrying;
}

Pose stand(const Specimen& specimen, const Articulation& articulation, const Pose& start,
           const std::vector<Foot>& carrying) {
  constexpr int kSteps = 60;
  constexpr double kLevel = 1e-12;  // of the normal's tilt
  const std::vector<FootRig> rigs = footRigs(specimen);
  Pose pose = start;
  Placement X_WB = forwardKinematics(specimen, articulation, pose);
  const HangingLimbs limbs(specimen, X_WB);
  std::vector<Contact> contacts = contactsOf(rigs, X_WB, carrying);
  if (contacts.empty()) return start;
  for (int step = 0; step < kSteps && canTilt(contacts); ++step) {
    const Vector3d normal = supportNormal(specimen, X_WB, contacts);
    if (normal.head<2>().norm() < kLevel) break;
    // Turned so that what the feet rest on becomes level. Hips and shoulders give their turn back to the limbs, which
    // moves the soles against the trunk a little: hence the repetition.
    const Matrix3d R_W = linear::turnBetween(normal, Vector3d::UnitZ()).toRotationMatrix();
    limbs.keep(articulation, X_WB, R_W, pose);
    pose.X_WRoot.linear() = (R_W * pose.X_WRoot.linear()).eval();
    placeInto(specimen, articulation, pose, X_WB);
    contacts = contactsOf(rigs, X_WB, carrying);
  }
  double lowest = contacts.front().p_W.z();
  for (const Contact& contact : contacts) lowest = std::min(lowest, contact.p_W.z());
  pose.X_WRoot.translation().z() -= lowest;
  return pose;
}

Pose stand(const Specimen& specimen, const Articulation& articulation, const Pose& pose) {
  return stand(specimen, articulation, pose, carryingFeet(specimen, articulation, pose));
}

namespace {

using anatomy::AngleLimits;
using anatomy::Side;
using anatomy::Specimen;
using Eigen::Vector3d;

constexpr double kUnknown = std::numeric_limits<double>::quiet_NaN();

std::optional<JointIndex> bladeJoint(const Specimen& specimen, Side side) {
  return specimen.findJoint(side == Side::Right ? "scapula.R" : "scapula.L");
}

/// Of the ribs' bow: the blade's origin goes round the joint's centre.
double radius(const anatomy::Joint& joint) { return joint.centreDistal.norm(); }

AngleLimits limitsOf(const anatomy::Joint& joint, std::size_t motion) {
  return joint.typed ? joint.typed->angles[motion] : AngleLimits{};
}

/// Slope of one blade as a function of the joint's angles, the trunk standing.
class Slope {
 public:
  Slope(const Specimen& specimen, const Articulation& articulation, const Pose& pose, JointIndex joint)
      : joint_(specimen[joint]), rest_(articulation[joint]), R_WRoot_(pose.X_WRoot.linear()) {
    R_WCarrier_ = forwardKinematics(specimen, articulation, pose)[joint_.proximal.value].linear();
  }
  double operator()(const Vector3d& angles) const {
    return bladeSlope(R_WCarrier_ * jointTransform(joint_, rest_, angles).linear(), R_WRoot_);
  }

 private:
  const anatomy::Joint& joint_;
  const Articulation::Rest& rest_;
  Eigen::Matrix3d R_WRoot_, R_WCarrier_;
};

}  // namespace

double bladeSlope(const Eigen::Matrix3d& R_WBlade, const Eigen::Matrix3d& R_WRoot) {
  Vector3d heading_W = R_WRoot.col(0);
  heading_W.z() = 0;
  const Vector3d up_W = R_WBlade.col(2);
  return std::atan2(up_W.z(), -up_W.dot(heading_W.normalized()));
}

BladePlace bladePlace(const Specimen& specimen, const Pose& pose, const Placement& X_WB, Side side) {
  const auto joint = bladeJoint(specimen, side);
  if (!joint) return {kUnknown, kUnknown};
  return {bladeSlope(X_WB[specimen[*joint].distal.value].linear(), pose.X_WRoot.linear()),
          pose[*joint][1] * radius(specimen[*joint])};
}

Pose placeBlade(const Specimen& specimen, const Articulation& articulation, const Pose& pose, Side side,
                const BladePlace& wanted) {
  const auto index = bladeJoint(specimen, side);
  if (!index) return pose;
  const anatomy::Joint& joint = specimen[*index];
  const AngleLimits tilts = limitsOf(joint, 0), slides = limitsOf(joint, 1);
  const Slope slope(specimen, articulation, pose, *index);
  Pose placed = pose;
  Vector3d& angles = placed[*index];
  if (radius(joint) > 0) angles[1] = std::clamp(wanted.slide / radius(joint), slides.min, slides.max);
  // The slope falls as the lower end swings forward, nearly one for one: a few steps settle it.
  for (int step = 0; step < 20; ++step) {
    const double off = slope(angles) - wanted.slope;
    if (std::abs(off) < 1e-12) break;
    angles[0] = std::clamp(angles[0] + off, tilts.min, tilts.max);
  }
  return placed;
}

BladeRange bladeRange(const Specimen& specimen, const Articulation& articulation, const Pose& pose, Side side) {
  const auto index = bladeJoint(specimen, side);
  if (!index) return {{kUnknown, kUnknown}, {kUnknown, kUnknown}};
  const anatomy::Joint& joint = specimen[*index];
  const AngleLimits tilts = limitsOf(joint, 0), slides = limitsOf(joint, 1);
  const Slope slope(specimen, articulation, pose, *index);
  Vector3d forward = pose[*index], back = pose[*index];
  forward[0] = tilts.max;
  back[0] = tilts.min;
  return {{slope(forward), slope(back)}, {slides.min * radius(joint), slides.max * radius(joint)}};
}

}  // namespace zyga::kinematics
