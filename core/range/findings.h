#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "core/kinematics/placement.h"
#include "core/range/assumptions.h"
#include "core/range/overlap.h"

namespace zyga::range {

/// Worst last, so that the larger one wins. Near is, for facets, the last nearMargin of the way from full cover to the
/// least overlap, or of a tolerated depth or gap; for typed limits, of the way from zero to the end of the range.
enum class Level { Supported, NotJudged, Near, Beyond };

std::string_view toText(Level level);

enum class FindingKind { Overlap, FacetContact, FacetGap, TypedLimit, BoneContact };

/// One criterion at one joint.
struct Finding {
  FindingKind kind = FindingKind::Overlap;
  anatomy::Side side = anatomy::Side::Midline;
  int motion = 0;       ///< for typed limits: index into the joint's angles
  double measured = 0;  ///< share, m or rad according to kind
  double limit = 0;     ///< same unit
  Level level = Level::Supported;
  std::string text;  ///< "right facets share 38 % (least 50 %)"
};

/// Verdict on one joint at its present angles.
struct JointVerdict {
  kinematics::JointIndex joint;
  Level level = Level::Supported;
  std::optional<FacetMeeting> left, right;
  double centrumGap = 0;          ///< m, between the faces along the joint's long axis
  std::vector<Finding> findings;  ///< near and beyond only, worst first
  /// "C6-C7 beyond: right facets share 38 % (least 50 %), dorsiflexion 9.4° of 7.1°". What follows "of" is where the
  /// range of that motion ends with the joint's other angles as they are.
  std::string sentence;
  /// What a person has to know about how the joint came to its neutral articulation (articulationNote); mostly empty.
  std::string articulation;
};

/// Two bones that enter each other away from their joint.
struct ContactFinding {
  anatomy::BoneIndex bone;                        ///< whose surface reaches deepest into the other
  anatomy::BoneIndex other;                       ///< the bone it enters
  double depth = 0;                               ///< m
  Eigen::Vector3d p_W = Eigen::Vector3d::Zero();  ///< the deepest place, m
  Level level = Level::Beyond;                    ///< near: in the last nearMargin of what is tolerated
  std::string text;                               ///< "spines of D3 and D4 enter each other by 12 mm (tolerated 5 mm)"
};

struct Assessment {
  Level level = Level::Supported;        ///< the worst of joints and contacts
  std::vector<JointVerdict> joints;      ///< every joint that can move, in joint order
  bool contactJudged = false;            ///< false: the bones' shapes were not at hand, and contacts is empty
  std::vector<ContactFinding> contacts;  ///< near and beyond only, deepest first
  const JointVerdict* find(kinematics::JointIndex joint) const;
};

/// What the criteria say about one joint at these angles, without words: cheap, for searches and drags.
Level levelAt(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
              const Assumptions& assumptions, kinematics::JointIndex joint, const Eigen::Vector3d& angles);

JointVerdict assessJoint(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                         const Assumptions& assumptions, kinematics::JointIndex joint, const Eigen::Vector3d& angles);

/// All joints of a pose.
Assessment assess(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                  const Assumptions& assumptions, const kinematics::Pose& pose);

/// "dorsiflexion", "ventriflexion", "left bend", "right bend", "left-up torsion"... in the column, "flexion",
/// "abduction", "opening"... elsewhere, for the sign of an angle of this joint.
std::string motionName(const anatomy::Joint& joint, int motion, double sign);

}  // namespace zyga::range
