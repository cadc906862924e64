#pragma once

#include <cmath>
#include <numbers>

#include "core/anatomy/specimen.h"
#include "core/kinematics/pose.h"

/// Two vertebrae whose joint is known by construction: the facets lie straight over the centre of rotation, all four
/// seated on each other when every angle is zero and there is no cartilage.
namespace zyga::test {

inline constexpr double kDegree = std::numbers::pi / 180;

enum class Outline { Rectangle, Ellipse };

struct TwoVertebrae {
  double height = 0.200;  ///< facet centres over the centre of rotation, m
  double spread = 0.050;  ///< facet centres from the mid-plane, m
  double tilt = 0;        ///< of the facets from horizontal in end view, rad
  double prezygLength = 0.060;
  double postzygLength = 0.060;
  double width = 0.040;
  Outline outline = Outline::Rectangle;
  double centrumLength = 0.400;
  bool tail = false;       ///< the distal bone is the caudal one
  bool flatFaces = false;  ///< cartilage shared by both sides of the centre of rotation
};

inline std::vector<Eigen::Vector2d> outlineOf(Outline outline, double length, double width) {
  if (outline == Outline::Ellipse) return anatomy::ellipseOutline(length, width, 96);
  const double a = 0.5 * length;
  const double b = 0.5 * width;
  return {{-a, -b}, {a, -b}, {a, b}, {-a, b}};
}

inline anatomy::Facet facetOf(const TwoVertebrae& spec, anatomy::FacetRole role,
                              const Eigen::Vector3d& centreOfRotation) {
  const double side = anatomy::isLeft(role) ? 1 : -1;
  const bool prezyg = anatomy::isPrezyg(role);
  anatomy::Facet facet;
  facet.role = role;
  facet.centre = centreOfRotation + Eigen::Vector3d(0, side * spec.spread, spec.height);
  facet.normal = Eigen::Vector3d(0, -side * std::sin(spec.tilt), std::cos(spec.tilt)) * (prezyg ? 1 : -1);
  facet.outline = outlineOf(spec.outline, prezyg ? spec.prezygLength : spec.postzygLength, spec.width);
  return facet;
}

inline anatomy::Joint jointOf(const TwoVertebrae& spec) {
  const double s = spec.tail ? -1 : 1;
  anatomy::Joint joint;
  joint.id = spec.tail ? "Ca1-Ca2" : "C6-C7";
  joint.kind = spec.flatFaces ? anatomy::JointKind::FlatFaces : anatomy::JointKind::BallAndSocket;
  joint.region = spec.tail ? anatomy::Region::Caudal : anatomy::Region::Cervical;
  joint.proximal = {0};
  joint.distal = {1};
  joint.centreProximal = Eigen::Vector3d(0.5 * s * spec.centrumLength, 0, 0);
  joint.centreDistal = -joint.centreProximal;
  joint.axes = {Eigen::Vector3d(0, -s, 0), Eigen::Vector3d(0, 0, s), Eigen::Vector3d(1, 0, 0)};
  joint.longAxisProximal = joint.longAxisDistal = Eigen::Vector3d(s, 0, 0);
  joint.cartilageShareProximal = spec.flatFaces ? 0.5 : 0;
  joint.centrumLength = spec.centrumLength;
  return joint;
}

inline anatomy::Specimen twoVertebrae(const TwoVertebrae& spec = {}) {
  using anatomy::FacetRole;
  anatomy::Specimen specimen;
  specimen.name = "two vertebrae";
  const anatomy::BoneKind kind = spec.tail ? anatomy::BoneKind::Caudal : anatomy::BoneKind::Cervical;
  for (const int number : spec.tail ? std::array{1, 2} : std::array{7, 6}) {
    anatomy::Bone bone;
    bone.name = {kind, number};
    bone.id = (spec.tail ? "Ca" : "C") + std::to_string(number);
    specimen.bones.push_back(bone);
  }
  const anatomy::Joint joint = jointOf(spec);
  specimen.joints.push_back(joint);
  const Eigen::Vector3d& onCaudal = spec.tail ? joint.centreDistal : joint.centreProximal;
  const Eigen::Vector3d& onCranial = spec.tail ? joint.centreProximal : joint.centreDistal;
  anatomy::Bone& caudal = specimen.bones[spec.tail ? 1 : 0];
  anatomy::Bone& cranial = specimen.bones[spec.tail ? 0 : 1];
  caudal.facets = {facetOf(spec, FacetRole::PrezygLeft, onCaudal), facetOf(spec, FacetRole::PrezygRight, onCaudal)};
  cranial.facets = {facetOf(spec, FacetRole::PostzygLeft, onCranial),
                    facetOf(spec, FacetRole::PostzygRight, onCranial)};
  return specimen;
}

/// Reflects a facet in the mid-plane and gives it to the other side.
inline anatomy::Facet mirroredFacet(const anatomy::Facet& facet) {
  using anatomy::FacetRole;
  const Eigen::Vector3d flip(1, -1, 1);
  anatomy::Facet out = facet;
  switch (facet.role) {
    case FacetRole::PrezygLeft:
      out.role = FacetRole::PrezygRight;
      break;
    case FacetRole::PrezygRight:
      out.role = FacetRole::PrezygLeft;
      break;
    case FacetRole::PostzygLeft:
      out.role = FacetRole::PostzygRight;
      break;
    case FacetRole::PostzygRight:
      out.role = FacetRole::PostzygLeft;
      break;
  }
  out.centre = facet.centre.cwiseProduct(flip);
  out.normal = facet.normal.cwiseProduct(flip);
  out.slide = facet.slide.cwiseProduct(flip);
  // A reflection turns normal x slide round, and with it the outline's sense.
  std::reverse(out.outline.begin(), out.outline.end());
  for (Eigen::Vector2d& p : out.outline) p.y() = -p.y();
  return out;
}

inline anatomy::Specimen mirroredFacets(anatomy::Specimen specimen) {
  for (anatomy::Bone& bone : specimen.bones) {
    for (anatomy::Facet& facet : bone.facets) facet = mirroredFacet(facet);
  }
  return specimen;
}

/// Turns the postzyg facets of a neck joint about its centre, so that they meet the prezygs only when the joint turns
/// back by `rotation`.
inline void askForRotation(anatomy::Specimen& specimen, const Eigen::Matrix3d& rotation) {
  const Eigen::Vector3d centre = specimen.joints[0].centreDistal;
  for (anatomy::Facet& facet : specimen.bones[1].facets) {
    facet.centre = centre + rotation.transpose() * (facet.centre - centre);
    facet.normal = rotation.transpose() * facet.normal;
    facet.slide = rotation.transpose() * facet.slide;
  }
}

inline constexpr kinematics::JointIndex kOnlyJoint{0};

/// With three angles that go each by itself: no axial rotation follows the facets.
inline kinematics::Articulation eachByItself(kinematics::Articulation articulation) {
  for (auto& rest : articulation.rests) rest.axialTyped = true;
  return articulation;
}

}  // namespace zyga::test
