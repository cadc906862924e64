#pragma once

#include "core/anatomy/plan/build_specimen.h"

namespace zyga::anatomy {

/// Frames of all bones in the root's frame with every joint at its rest rotation, m.
std::vector<Eigen::Isometry3d> restFrames(const Specimen& specimen);

/// Reflection in the mid-plane, for the right side; nothing for the other two.
Eigen::Vector3d sided(Side side, const Eigen::Vector3d& left);
Eigen::Matrix3d sided(Side side, const Eigen::Matrix3d& left);

/// Right-handed frame whose z runs along `up` and whose x leans as far as it can towards `cranial`.
Eigen::Matrix3d frameAlong(const Eigen::Vector3d& up, const Eigen::Vector3d& cranial);

/// Turn that swings what hangs along -z forward (towards +x) by `angle` rad.
Eigen::Matrix3d swungForward(double angle);

/// Degrees to rad.
double radians(double degrees);
/// typedLimits of three ranges in degrees.
TypedLimits limitsInDegrees(AngleLimits first, AngleLimits second, AngleLimits third);

/// Puts the bones of one side together. All points and turns are given as on the left side.
class LimbRig {
 public:
  LimbRig(Specimen& specimen, const MeasurementTable& filled, Side side)
      : specimen_(specimen), filled_(filled), side_(side) {}

  Side side() const { return side_; }
  const Specimen& specimen() const { return specimen_; }
  /// "shoulder" -> "shoulder.R"
  std::string sidedId(const std::string& stem) const;
  BoneIndex add(BoneKind kind, int number = 0, int phalanx = 0);
  /// A measure of a bone of this side, m.
  double measure(BoneIndex bone, Measure measure) const;
  void mark(BoneIndex bone, const std::string& landmark, const Eigen::Vector3d& p_B);
  Eigen::Vector3d landmark(BoneIndex bone, std::string_view name) const;
  /// How the bone is turned against the root with every joint at rest.
  Eigen::Matrix3d attitude(BoneIndex bone) const;
  void grow(BoneIndex bone, BoneIndex into) { specimen_.bones[bone.value].fusedInto = into; }

  /// The distal bone's origin rests at `p_P` of the proximal bone, turned by `R_PD`, and does not move. The joint has
  /// the distal bone's id.
  void fix(BoneIndex proximal, BoneIndex distal, const Eigen::Vector3d& p_P,
           const Eigen::Matrix3d& R_PD = Eigen::Matrix3d::Identity());
  /// The same with a joint of three typed angles about the distal bone's origin.
  void hang(const std::string& stem, BoneIndex proximal, BoneIndex distal, const Eigen::Vector3d& p_P,
            const TypedLimits& limits, const Eigen::Matrix3d& R_PD = Eigen::Matrix3d::Identity());
  /// The same, turning about the point `p_PCentre` of the proximal bone instead: the distal bone glides over something
  /// round.
  void glide(const std::string& stem, BoneIndex proximal, BoneIndex distal, const Eigen::Vector3d& p_P,
             const Eigen::Vector3d& p_PCentre, const TypedLimits& limits, const Eigen::Matrix3d& R_PD);

 private:
  Joint jointBetween(BoneIndex proximal, BoneIndex distal, const Eigen::Vector3d& p_P,
                     const Eigen::Matrix3d& R_PD) const;

  Specimen& specimen_;
  const MeasurementTable& filled_;
  Side side_;
};

/// Shoulder blade, coracoid and sternal plate; returns the shoulder blade, whose landmark `distal` is the socket.
BoneIndex addShoulderGirdle(LimbRig& rig);
void addForeLimb(LimbRig& rig, BoneIndex scapula);
/// Ilium, pubis and ischium; returns the ilium, whose origin is the centre of the socket.
BoneIndex addPelvis(LimbRig& rig);
void addHindLimb(LimbRig& rig, BoneIndex ilium);

/// Landmarks of a finger or toe bone whose base rides on a knuckle of radius `knuckle` (m). Returns the radius of its
/// own far knuckle.
double markPhalanx(LimbRig& rig, BoneIndex bone, double knuckle);

/// Attitude of the standing foot: slope of the third metatarsal from the vertical, rad.
double standingMetatarsalSlope();
/// Thigh, knee, upper arm and elbow of a standing animal, rad, signs as limbAxes.
struct StandingLimbs {
  double hip, knee, shoulder, elbow;
};
StandingLimbs standingLimbs();

}  // namespace zyga::anatomy
