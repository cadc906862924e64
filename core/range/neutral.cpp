#include "core/range/neutral.h"

#include <algorithm>
#include <cmath>

#include "core/kinematics/placement.h"
#include "core/range/facet_pair.h"
#include "core/range/mixed_ground.h"
#include "core/range/neutral_solver.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;
using Rest = kinematics::Articulation::Rest;

/// How the facets of both sides meet at rest.
std::array<FacetMeasures, 2> meetAt(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const Rest& rest) {
  const auto sides = facetsOf(specimen, joint);
  const Eigen::Isometry3d X_PrePost =
      PrezygView(specimen, joint)(kinematics::jointTransform(specimen[joint], rest, Vector3d::Zero()));
  std::array<FacetMeasures, 2> measures;
  for (std::size_t s = 0; s < 2; ++s) {
    if (sides[s]) measures[s] = FacetPair(*sides[s].prezyg, *sides[s].postzyg).measure(X_PrePost);
  }
  return measures;
}

/// Scans whose facets do not lie flat on each other at rest are granted that, up to this share of the shorter facet's
/// length: it is an error of marks, of flat facets for curved ones and of one centre of rotation, and real bones had
/// cartilage on them. More is a fault of the marks and is left to be found. Program default, no source.
constexpr double kMostMisfitGranted = 0.25;

bool bothScanned(const anatomy::Specimen& specimen, kinematics::JointIndex joint) {
  return specimen[specimen.cranialBone(joint)].scanned && specimen[specimen.caudalBone(joint)].scanned;
}

/// What cartilage does to the facets, and how those of scans fit without it.
void setWhatIsGranted(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const Rest& bare, Rest& rest) {
  const auto sides = facetsOf(specimen, joint);
  const auto without = meetAt(specimen, joint, bare);
  const auto with = meetAt(specimen, joint, rest);
  const bool scans = bothScanned(specimen, joint);
  const auto more = [](double now, double before) { return std::max(0.0, now) - std::max(0.0, before); };
  for (std::size_t s = 0; s < 2; ++s) {
    rest.pressGranted[s] = std::max(0.0, more(-with[s].minGap, -without[s].minGap));
    rest.gapeGranted[s] = std::max(0.0, more(with[s].maxGap, without[s].maxGap));
    if (!scans || !sides[s]) continue;
    const double most = kMostMisfitGranted * std::min(sides[s].prezyg->length(), sides[s].postzyg->length());
    const double press = std::clamp(-without[s].minGap, 0.0, most), gape = std::clamp(without[s].maxGap, 0.0, most);
    rest.pressGranted[s] += press;
    rest.gapeGranted[s] += gape;
    rest.misfitGranted = std::max({rest.misfitGranted, press, gape});
  }
}

/// A residual above this share of the facets' length is worth telling. Program default, no source.
constexpr double kPoor = 0.10;

bool lacks(const anatomy::Bone& bone, anatomy::FacetRole role) {
  const anatomy::Facet* facet = bone.facet(role);
  return !facet || facet->outline.size() < 3;
}

std::vector<ArticulationNote::MissingFacet> missingFacets(const anatomy::Specimen& specimen,
                                                          kinematics::JointIndex joint) {
  using anatomy::FacetRole;
  std::vector<ArticulationNote::MissingFacet> missing;
  const auto ask = [&](anatomy::BoneIndex bone, FacetRole role) {
    if (lacks(specimen[bone], role)) missing.push_back({bone, role});
  };
  for (const FacetRole role : {FacetRole::PrezygLeft, FacetRole::PrezygRight}) ask(specimen.caudalBone(joint), role);
  for (const FacetRole role : {FacetRole::PostzygLeft, FacetRole::PostzygRight}) ask(specimen.cranialBone(joint), role);
  return missing;
}

bool faceTheSameWay(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const Rest& rest) {
  const Eigen::Matrix3d R =
      PrezygView(specimen, joint)(kinematics::jointTransform(specimen[joint], rest, Vector3d::Zero())).linear();
  const auto sides = facetsOf(specimen, joint);
  return std::any_of(sides.begin(), sides.end(),
                     [&](const SideFacets& s) { return s.prezyg->normal.dot(R * s.postzyg->normal) >= 0; });
}

double meanLength(const anatomy::Specimen& specimen, kinematics::JointIndex joint) {
  double sum = 0;
  for (const SideFacets& side : facetsOf(specimen, joint)) {
    if (side) sum += 0.25 * (side.prezyg->length() + side.postzyg->length());
  }
  return sum;
}

}  // namespace

ArticulationNote articulationNote(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const Rest& rest) {
  using Outcome = ArticulationNote::Outcome;
  ArticulationNote note{Outcome::Good, rest.residual, {}, inferredNeighbour(specimen, joint)};
  if (rest.misfitGranted > kPoor * meanLength(specimen, joint)) note.misfitGranted = rest.misfitGranted;
  if (rest.solved) {
    const bool poor = specimen[joint].hasFacets() && rest.residual > kPoor * meanLength(specimen, joint);
    note.outcome = poor ? Outcome::Poor : Outcome::Good;
    return note;
  }
  note.missing = missingFacets(specimen, joint);
  note.outcome = !note.missing.empty()                   ? Outcome::NoFacets
                 : faceTheSameWay(specimen, joint, rest) ? Outcome::SameWay
                                                         : Outcome::NoPosition;
  return note;
}

Rest articulate(const anatomy::Specimen& specimen, kinematics::JointIndex joint, double cartilage, NeutralBy by) {
  const NeutralSolver centring(specimen, joint, by);
  Rest bare{.rotation = specimen[joint].restRotation, .solved = !specimen[joint].hasFacets()};
  if (centring.possible()) bare = centring.solve(0);
  if (cartilage == 0) {
    if (bare.solved && centring.possible()) setWhatIsGranted(specimen, joint, Rest(bare), bare);
    return bare;
  }
  Rest rest = bare;
  rest.cartilage = cartilage;
  if (centring.possible()) {
    rest = centring.solve(cartilage);
    rest.solved = rest.solved && bare.solved;
    if (!rest.solved) return rest;
  }
  setWhatIsGranted(specimen, joint, bare, rest);
  return rest;
}

kinematics::Settling settlingOf(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const Rest& rest,
                                double share) {
  kinematics::Settling settling;
  const auto sides = facetsOf(specimen, joint);
  if (!sides[0] || !sides[1] || !rest.solved) return settling;
  settling.hasFacets = true;
  settling.distalHasPostzygs = specimen.cranialBone(joint) == specimen[joint].distal;
  const PrezygView view(specimen, joint);
  for (std::size_t s = 0; s < 2; ++s)
    settling.sides[s] = {sides[s].prezyg->centre, sides[s].prezyg->normal, sides[s].postzyg->centre,
                         -sides[s].postzyg->normal, 0};
  const Eigen::Vector2d gaps =
      facetMisfit(settling, view(kinematics::jointTransform(specimen[joint], rest, Vector3d::Zero())));
  for (std::size_t s = 0; s < 2; ++s) settling.sides[s].gapAtRest = gaps[static_cast<Eigen::Index>(s)];
  settling.bound = share * rest.cartilage;
  return settling;
}

Rest articulate(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const Assumptions& assumptions) {
  const double cartilage = assumptions.cartilageOf(specimen[joint].region).thickness(specimen[joint]);
  Rest rest = articulate(specimen, joint, cartilage, assumptions.neutralBy);
  rest.settling = settlingOf(specimen, joint, rest, assumptions.settling);
  return rest;
}

kinematics::Articulation articulate(const anatomy::Specimen& specimen, const Assumptions& assumptions) {
  kinematics::Articulation articulation;
  articulation.rests.reserve(specimen.joints.size());
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    articulation.rests.push_back(articulate(specimen, kinematics::JointIndex{j}, assumptions));
  }
  return articulation;
}

double facetHeight(const anatomy::Specimen& specimen, kinematics::JointIndex joint) {
  const anatomy::Joint& j = specimen[joint];
  const bool prezygsAreProximal = specimen.caudalBone(joint) == j.proximal;
  const Vector3d& ofPrezygs = prezygsAreProximal ? j.centreProximal : j.centreDistal;
  const Vector3d& ofPostzygs = prezygsAreProximal ? j.centreDistal : j.centreProximal;
  double sum = 0;
  int count = 0;
  for (const SideFacets& side : facetsOf(specimen, joint)) {
    if (!side) continue;
    sum += (side.prezyg->centre - ofPrezygs).z() + (side.postzyg->centre - ofPostzygs).z();
    count += 2;
  }
  return count > 0 ? sum / count : 0;
}

}  // namespace zyga::range
