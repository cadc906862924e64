#pragma once

#include <Eigen/Geometry>
#include <array>
#include <compare>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/anatomy/bone_name.h"
#include "core/anatomy/facet.h"
#include "core/anatomy/measure.h"
#include "core/anatomy/plan_name.h"

namespace zyga::anatomy {

/// Position in Specimen::bones. Distinct from JointIndex so that the two cannot be swapped.
struct BoneIndex {
  std::size_t value = 0;
  auto operator<=>(const BoneIndex&) const = default;
};
/// Position in Specimen::joints.
struct JointIndex {
  std::size_t value = 0;
  auto operator<=>(const JointIndex&) const = default;
};

/// How a bone is known.
enum class Evidence { Found, FoundDeformed, Mirrored, Scaled, Inferred };

/// What tables and files call it: "found, deformed".
std::string_view toText(Evidence evidence);
std::optional<Evidence> evidenceFromText(std::string_view text);
/// "evidence.found"; ui/words says it.
reason::Term termOf(Evidence evidence);

struct Bone {
  BoneName name;
  std::string id;
  Evidence evidence = Evidence::Inferred;
  std::string source;
  Measures measures;
  std::vector<Facet> facets;
  /// Points in the bone's frame, m, by name; which names a kind of bone has is listed in landmarks.h.
  std::map<std::string, Eigen::Vector3d, std::less<>> landmarks;
  /// Set when the bone has no mesh of its own because it has grown into another one (a cervical rib, a coracoid).
  std::optional<BoneIndex> fusedInto;
  bool scanned = false;  ///< its shape and its facets are those of a scan

  const Facet* facet(FacetRole role) const;
  /// Throws std::out_of_range naming bone and landmark.
  const Eigen::Vector3d& landmark(std::string_view landmarkName) const;
};

enum class JointKind {
  BallAndSocket,  ///< condyle in cotyle: turns about the condyle's centre of curvature
  FlatFaces,      ///< turns about the mid-point between the two rims
  Typed,          ///< no facets: limits are typed (limbs, jaw, skull, hind tail)
  Fixed           ///< bones that do not move against each other (sacrum, ribs, pelvis)
};

struct AngleLimits {
  double min = 0;  ///< rad
  double max = 0;  ///< rad
  bool operator==(const AngleLimits&) const = default;
};

/// TypedLimits::source of limits that the program sets itself for want of published ones. A key; ui/words says it.
inline constexpr char kProgramDefault[] = "program default";

/// Limits that somebody typed because no facets give them.
struct TypedLimits {
  std::array<AngleLimits, 3> angles;
  std::string source;  ///< kProgramDefault, or a citation
  bool operator==(const TypedLimits&) const = default;
};

/// One joint of the tree. Angles are (dorsiflexion, lateral flexion, torsion) in the column and
/// (flexion, abduction, long-axis rotation) in the limbs, in that order, rad:
///   R(angles) = Rot(axes[0], a0) * Rot(axes[1], a1) * Rot(axes[2], a2)
/// axes[0] is fixed to the proximal bone, axes[2] to the distal bone, axes[1] floats (Grood & Suntay 1983,
/// J. Biomech. Eng. 105:136; Wu et al. 2002, J. Biomech. 35:543). The axes carry the sign, so that dorsiflexion,
/// left and "left side rises" are positive in neck and tail alike.
struct Joint {
  std::string id;  ///< "C6-C7" (cranial bone first), "hip.L", "jaw"
  JointKind kind = JointKind::Typed;
  Region region = Region::Cervical;
  BoneIndex proximal;
  BoneIndex distal;                                          ///< the bone farther from the sacrum
  Eigen::Vector3d centreProximal = Eigen::Vector3d::Zero();  ///< centre of rotation in the proximal frame, m
  Eigen::Vector3d centreDistal = Eigen::Vector3d::Zero();    ///< the same in the distal frame, m
  std::array<Eigen::Vector3d, 3> axes{Eigen::Vector3d::UnitY(), Eigen::Vector3d::UnitZ(), Eigen::Vector3d::UnitX()};
  /// Orientation of the distal in the proximal frame with all angles zero, where no facets decide it; for joints
  /// with facets the first guess of the articulation, faces of the centra parallel.
  Eigen::Matrix3d restRotation = Eigen::Matrix3d::Identity();
  Eigen::Vector3d longAxisProximal = Eigen::Vector3d::Zero();  ///< unit, proximal frame, towards the distal bone
  Eigen::Vector3d longAxisDistal = Eigen::Vector3d::Zero();    ///< unit, distal frame, away from the proximal bone
  /// Share of the cartilage laid on the proximal side of the centre of rotation: 0 for ball and socket, 1/2 for
  /// flat faces.
  double cartilageShareProximal = 0;
  double centrumLength = 0;  ///< functional length of the caudal bone's centrum, m: base of a cartilage in percent
  std::optional<TypedLimits> typed;

  bool hasFacets() const { return kind == JointKind::BallAndSocket || kind == JointKind::FlatFaces; }
};

/// Numbers of vertebrae in each region of the column.
struct RegionCounts {
  int cervical = 13;
  int dorsal = 11;
  int sacral = 5;
  int caudal = 52;
  int lumbar = 0;  ///< of mammals: those of the trunk that carry no ribs; the others are the dorsals
  bool operator==(const RegionCounts&) const = default;
};

/// How many vertebrae of a kind there are; 0 for what is no vertebra.
int countOf(const RegionCounts& counts, BoneKind kind);
/// The vertebra in front of the first sacral.
BoneName lastOfTrunk(const RegionCounts& counts);
/// The vertebra of the column before this one, towards the head; none before the first one and for what is no vertebra.
std::optional<BoneName> vertebraBefore(const RegionCounts& counts, const BoneName& name);

/// Bones and joints; no angles in it. Bone 0 is the root (the first sacral), and the joint that carries a bone comes
/// before every joint that starts from it: joints[i].distal is placed from joints[i].proximal in one pass.
struct Specimen {
  std::string name;
  RegionCounts counts;
  BodyPlan plan = BodyPlan::HighBrowser;
  std::vector<Bone> bones;
  std::vector<Joint> joints;

  const Bone& operator[](BoneIndex i) const { return bones[i.value]; }
  const Joint& operator[](JointIndex i) const { return joints[i.value]; }
  std::optional<BoneIndex> findBone(std::string_view id) const;
  std::optional<JointIndex> findJoint(std::string_view id) const;
  /// The joint that carries this bone; none for the root.
  std::optional<JointIndex> jointAbove(BoneIndex bone) const;
  /// For a joint of the column: which of its two bones lies cranially (it carries the postzygapophyses of the joint).
  BoneIndex cranialBone(JointIndex joint) const;
  BoneIndex caudalBone(JointIndex joint) const;
  /// The joints from the root to this bone, root first.
  std::vector<JointIndex> chainTo(BoneIndex bone) const;
};

}  // namespace zyga::anatomy
