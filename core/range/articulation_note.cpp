#include <algorithm>

#include "core/range/column_joint.h"
#include "core/range/neutral.h"
#include "core/range/wording.h"

namespace zyga::range {
namespace {

using anatomy::Bone;
using anatomy::FacetRole;

/// A residual above this share of the facets' length deserves a word. Author's choice.
constexpr double kRough = 0.10;

std::string zygapophysis(FacetRole role) {
  const std::string side = anatomy::isLeft(role) ? "left " : "right ";
  return side + (anatomy::isPrezyg(role) ? "prezygapophysis" : "postzygapophysis");
}

bool lacks(const Bone& bone, FacetRole role) {
  const anatomy::Facet* facet = bone.facet(role);
  return !facet || facet->outline.size() < 3;
}

/// "the left prezygapophysis of C7 and the right one of C8 have no facet": every facet that a joint would need.
std::string missingFacets(const Bone& caudal, const Bone& cranial) {
  std::string missing;
  int count = 0;
  const auto ask = [&](const Bone& bone, FacetRole role) {
    if (!lacks(bone, role)) return;
    missing += (count++ > 0 ? " and the " : "the ") + zygapophysis(role) + " of " + bone.id;
  };
  for (const FacetRole role : {FacetRole::PrezygLeft, FacetRole::PrezygRight}) ask(caudal, role);
  for (const FacetRole role : {FacetRole::PostzygLeft, FacetRole::PostzygRight}) ask(cranial, role);
  return count == 0 ? "" : missing + (count == 1 ? " has no facet" : " have no facets");
}

bool faceTheSameWay(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                    const kinematics::Articulation::Rest& rest) {
  const Eigen::Matrix3d R =
      PrezygView(specimen, joint)(kinematics::placeDistal(specimen[joint], rest, Eigen::Vector3d::Zero())).linear();
  const auto sides = facetsOf(specimen, joint);
  return std::any_of(sides.begin(), sides.end(),
                     [&](const SideFacets& s) { return s.prezyg->normal.dot(R * s.postzyg->normal) >= 0; });
}

std::string whyNot(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                   const kinematics::Articulation::Rest& rest) {
  const Bone& caudal = specimen[specimen.caudalBone(joint)];
  const Bone& cranial = specimen[specimen.cranialBone(joint)];
  std::string missing = missingFacets(caudal, cranial);
  if (!missing.empty()) return missing;
  if (faceTheSameWay(specimen, joint, rest)) {
    return "the facets of " + cranial.id + " and " + caudal.id + " face the same way";
  }
  return "no position within a right angle brings the facets of " + cranial.id + " and " + caudal.id + " together";
}

double meanLength(const anatomy::Specimen& specimen, kinematics::JointIndex joint) {
  double sum = 0;
  for (const SideFacets& side : facetsOf(specimen, joint)) {
    if (side) sum += 0.25 * (side.prezyg->length() + side.postzyg->length());
  }
  return sum;
}

}  // namespace

std::string articulationNote(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                             const kinematics::Articulation::Rest& rest) {
  const anatomy::Joint& j = specimen[joint];
  if (!rest.solved) return j.id + " can't be articulated: " + whyNot(specimen, joint, rest);
  if (!j.hasFacets() || rest.residual <= kRough * meanLength(specimen, joint)) return "";
  return j.id + " articulates roughly: its facets stay " + millimetresText(rest.residual) + " off centre";
}

}  // namespace zyga::range
