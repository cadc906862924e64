#include <gtest/gtest.h>

#include <functional>
#include <random>

#include "core/kinematics/placement.h"
#include "core/range/column_joint.h"
#include "core/range/neutral.h"
#include "core/range/overlap.h"
#include "tests/support/two_vertebrae.h"

/// The neutral articulation of asymmetric and slightly crushed bones against searches that share nothing with it: a
/// simplex (Nelder & Mead 1965, Comput. J. 7:308) over rotation vectors.
namespace zyga::range {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;
using test::kOnlyJoint;

Matrix3d turn(const Vector3d& v) {
  return v.norm() < 1e-15 ? Matrix3d::Identity() : Eigen::AngleAxisd(v.norm(), v.normalized()).toRotationMatrix();
}

double apart(const Matrix3d& a, const Matrix3d& b) { return Eigen::AngleAxisd(a.transpose() * b).angle(); }

using Cost = std::function<double(const Vector3d&)>;

struct Corner {
  Vector3d at;
  double cost;
};

/// Nelder & Mead's rules: reflect, expand, contract, shrink.
Corner simplexFrom(const Cost& cost, const Vector3d& start) {
  std::array<Corner, 4> s;
  for (int i = 0; i < 4; ++i) {
    const Vector3d at = i == 0 ? start : Vector3d(start + 0.1 * Vector3d::Unit(i - 1));
    s[static_cast<std::size_t>(i)] = {at, cost(at)};
  }
  const auto byCost = [](const Corner& a, const Corner& b) { return a.cost < b.cost; };
  for (int step = 0; step < 600; ++step) {
    std::sort(s.begin(), s.end(), byCost);
    const Vector3d middle = (s[0].at + s[1].at + s[2].at) / 3;
    const auto towards = [&](double t) -> Corner {
      const Vector3d at = middle + t * (middle - s[3].at);
      return {at, cost(at)};
    };
    const Corner reflected = towards(1);
    if (reflected.cost < s[0].cost) {
      const Corner expanded = towards(2);
      s[3] = expanded.cost < reflected.cost ? expanded : reflected;
    } else if (reflected.cost < s[2].cost) {
      s[3] = reflected;
    } else {
      const Corner contracted = towards(reflected.cost < s[3].cost ? 0.5 : -0.5);
      if (contracted.cost < std::min(reflected.cost, s[3].cost)) {
        s[3] = contracted;
      } else {
        for (std::size_t i = 1; i < 4; ++i) {
          s[i].at = 0.5 * (s[0].at + s[i].at);
          s[i].cost = cost(s[i].at);
        }
      }
    }
  }
  return *std::min_element(s.begin(), s.end(), byCost);
}

/// The best of several starts within 20 degrees.
Corner leastOf(const Cost& cost, std::mt19937& random) {
  std::uniform_real_distribution<double> u(-0.35, 0.35);
  Corner best = simplexFrom(cost, Vector3d::Zero());
  for (int i = 0; i < 4; ++i) {
    const Corner other = simplexFrom(cost, Vector3d{u(random), u(random), u(random)});
    if (other.cost < best.cost) best = other;
  }
  return simplexFrom(cost, best.at);
}

/// Two vertebrae of a neck, one facet shifted, one tilted, all of them a little off.
anatomy::Specimen crushed(std::mt19937& random) {
  std::normal_distribution<double> n;
  anatomy::Specimen specimen = test::twoVertebrae({.tilt = 0.6});
  specimen.bones[1].facets[0].centre += Vector3d{0.012 * n(random), 0.004 * n(random), 0.006 * n(random)};
  anatomy::Facet& tilted = specimen.bones[0].facets[1];
  const Matrix3d R = turn(0.15 * Vector3d{n(random), n(random), n(random)});
  tilted.normal = R * tilted.normal;
  tilted.slide = R * tilted.slide;
  for (anatomy::Bone& bone : specimen.bones) {
    for (anatomy::Facet& facet : bone.facets) facet.centre += 0.003 * Vector3d{n(random), n(random), n(random)};
  }
  return specimen;
}

/// What the definition asks for, written out anew: squares of the facets' offsets along and across the slide (those
/// that lift both postzygs by a tenth), of a quarter of the rims' lift by a roll and a hundredth of it by a pitch; of
/// the turn out of parallel faces times the path on which it carries the facets.
double misfit(const anatomy::Specimen& specimen, const Vector3d& rotation, bool faces) {
  const Matrix3d R = turn(rotation);
  const anatomy::Joint& joint = specimen.joints[0];
  double sum = 0, shift = 0, lift = 0, pitchArm = 0, yawArm = 0;
  for (const int side : {0, 1}) {
    const anatomy::Facet& pre = specimen.bones[0].facets[static_cast<std::size_t>(side)];
    const anatomy::Facet& post = specimen.bones[1].facets[static_cast<std::size_t>(side)];
    const Vector3d d = joint.centreProximal + R * (post.centre - joint.centreDistal) - pre.centre;
    const Vector3d down = R * post.normal;
    Matrix3d frame;  // along, across, normal
    frame.col(2) = (pre.normal - down) / (pre.normal - down).norm();
    frame.col(1) = frame.col(2).cross(pre.slide + R * post.slide).normalized();
    frame.col(0) = frame.col(1).cross(frame.col(2));
    const Vector3d offset = frame.transpose() * d;
    const Vector3d tip = 0.06 * frame.transpose() * (pre.normal + down);
    sum += std::pow(offset[0], 2) + std::pow(0.25 * tip[1], 2) + std::pow(0.01 * tip[0], 2);
    shift += offset[1];
    lift += side == 0 ? offset[1] : -offset[1];
    const Vector3d arm = pre.centre - joint.centreProximal;
    pitchArm += std::pow(arm.x(), 2) + std::pow(arm.z(), 2);
    yawArm += std::pow(arm.x(), 2) + std::pow(arm.y(), 2);
  }
  sum += 0.5 * shift * shift + 0.5 * 0.01 * lift * lift;
  if (faces) {
    sum += pitchArm * std::pow(std::atan2(R(2, 0), R(0, 0)), 2) + yawArm * std::pow(std::asin(R(1, 0)), 2);
  }
  return sum;
}

TEST(NeutralSearch, findsTheLeastMisfitOfCrushedBones) {
  std::mt19937 random(19);
  for (int i = 0; i < 25; ++i) {
    const anatomy::Specimen specimen = crushed(random);
    for (const bool faces : {false, true}) {
      const auto rest = articulate(specimen, kOnlyJoint, 0, faces ? NeutralBy::FacetsAndCentra : NeutralBy::Facets);
      ASSERT_TRUE(rest.solved) << i;
      const Corner best = leastOf([&](const Vector3d& v) { return misfit(specimen, v, faces); }, random);
      EXPECT_LT(apart(rest.rotation, turn(best.at)), 1e-5) << i << faces;
      EXPECT_GT(best.cost, 1e-8) << "the case is crushed";
    }
  }
}

/// Share of the smaller facets' areas that both sides cover together.
double covered(const anatomy::Specimen& specimen, const Matrix3d& R) {
  kinematics::Articulation::Rest rest;
  rest.rotation = R;
  const auto X = kinematics::jointTransform(specimen.joints[0], rest, Vector3d::Zero());
  double sum = 0;
  for (const SideFacets& side : facetsOf(specimen, kOnlyJoint)) {
    sum += 0.5 * facetOverlap(*side.prezyg, *side.postzyg, X).overlapArea;
  }
  return sum;
}

// The first definition in its own words, facets in greatest contact (Taylor, Wedel & Naish 2009, Acta Palaeontol. Pol.
// 54:213): the least squares come near the greatest area that any rotation can cover.
TEST(NeutralSearch, comesNearTheGreatestContact) {
  std::mt19937 random(23);
  for (int i = 0; i < 15; ++i) {
    const anatomy::Specimen specimen = crushed(random);
    const double found = covered(specimen, articulate(specimen, kOnlyJoint, 0).rotation);
    const Corner best = leastOf([&](const Vector3d& v) { return -covered(specimen, turn(v)); }, random);
    EXPECT_GT(found, -best.cost - 0.05) << i;
  }
}

TEST(NeutralSearch, mirroredBonesRestMirroredByBothDefinitions) {
  std::mt19937 random(29);
  const Matrix3d flip = Vector3d(1, -1, 1).asDiagonal();
  for (int i = 0; i < 25; ++i) {
    const anatomy::Specimen specimen = crushed(random);
    const anatomy::Specimen mirrored = test::mirroredFacets(specimen);
    for (const NeutralBy by : {NeutralBy::Facets, NeutralBy::FacetsAndCentra}) {
      const auto rest = articulate(specimen, kOnlyJoint, 0.02, by);
      const auto image = articulate(mirrored, kOnlyJoint, 0.02, by);
      EXPECT_LT(apart(image.rotation, flip * rest.rotation * flip), 1e-7) << i;
      EXPECT_NEAR(image.residual, rest.residual, 1e-9);
      EXPECT_NEAR(image.pressGranted[0], rest.pressGranted[1], 1e-8);
      EXPECT_NEAR(image.gapeGranted[0], rest.gapeGranted[1], 1e-8);
    }
  }
}

}  // namespace
}  // namespace zyga::range
