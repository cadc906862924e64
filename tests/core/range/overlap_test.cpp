#include "core/range/overlap.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "tests/core/range/boost_reference.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using anatomy::Facet;
using Eigen::Isometry3d;
using Eigen::Vector2d;
using Eigen::Vector3d;
using test::kDegree;

Facet facing(double up, std::vector<Vector2d> outline) {
  Facet facet;
  facet.normal = up * Vector3d::UnitZ();
  facet.outline = std::move(outline);
  return facet;
}

Isometry3d shifted(double x, double y, double z = 0) { return Isometry3d(Eigen::Translation3d(x, y, z)); }

FacetMeeting slidRectangles(double share) {
  const auto outline = test::outlineOf(test::Outline::Rectangle, 0.06, 0.04);
  return facetOverlap(facing(1, outline), facing(-1, outline), shifted(share * 0.06, 0));
}

FacetMeeting slidEllipses(double share) {
  const auto outline = anatomy::ellipseOutline(0.06, 0.04, 720);
  return facetOverlap(facing(1, outline), facing(-1, outline), shifted(share * 0.06, 0));
}

/// Random convex outlines: ellipses of many sizes with some of their corners left out, from triangles up.
Polygon randomOutline(std::mt19937& random) {
  std::uniform_real_distribution<double> size(0.02, 0.12);
  const double width = size(random), height = size(random);
  const Polygon ellipse = anatomy::ellipseOutline(width, height, 48);
  const double kept = std::uniform_real_distribution<double>(0.1, 1.0)(random);
  std::bernoulli_distribution keep(kept);
  Polygon outline;
  for (std::size_t i = 0; i < ellipse.size(); ++i) {
    if (i % 16 == 0 || keep(random)) outline.push_back(ellipse[i]);
  }
  return outline;
}

struct RandomPair {
  Facet prezyg, postzyg;
  Isometry3d X_PrePost;
};

Vector3d randomVector(std::mt19937& random, double size) {
  std::uniform_real_distribution<double> u(-size, size);
  return {u(random), u(random), u(random)};
}

Facet randomFacet(std::mt19937& random) {
  Facet facet;
  facet.centre = randomVector(random, 0.3);
  facet.normal = randomVector(random, 1).normalized();
  facet.slide = facet.normal.cross(randomVector(random, 1)).normalized();
  facet.outline = randomOutline(random);
  return facet;
}

/// Bones placed so that the facets face each other, up to 60 degrees askew, 80 mm shifted and 30 mm apart.
RandomPair randomPair(std::mt19937& random) {
  RandomPair pair{randomFacet(random), randomFacet(random), Isometry3d::Identity()};
  std::uniform_real_distribution<double> u(0, 1);
  Eigen::Matrix3d pre, post;
  pre << pair.prezyg.slide, pair.prezyg.across(), pair.prezyg.normal;
  post << pair.postzyg.slide, -pair.postzyg.across(), -pair.postzyg.normal;
  const Eigen::AngleAxisd turned((u(random) - 0.5) * 2 * std::numbers::pi, Vector3d::UnitZ());
  const Vector3d tiltAxis = Vector3d(u(random) - 0.5, u(random) - 0.5, 0).normalized();
  const Eigen::AngleAxisd tilted(u(random) * 60 * kDegree, tiltAxis);
  pair.X_PrePost.linear() = pre * (turned * tilted).toRotationMatrix() * post.transpose();
  const Vector3d offset(0.16 * (u(random) - 0.5), 0.16 * (u(random) - 0.5), 0.06 * (u(random) - 0.5));
  pair.X_PrePost.translation() = pair.prezyg.centre + pre * offset - pair.X_PrePost.linear() * pair.postzyg.centre;
  return pair;
}

/// A corner of the postzyg projected along the mean normal into the prezyg's plane coordinates, straight from the
/// definition in space.
Vector2d projectedCorner(const RandomPair& pair, std::size_t i) {
  const Vector3d normal = pair.prezyg.normal;
  const Vector3d mean = (normal - pair.X_PrePost.linear() * pair.postzyg.normal).normalized();
  const Vector3d corner = pair.X_PrePost * pair.postzyg.corner(i) - pair.prezyg.centre;
  const Vector3d onPlane = corner - mean * (corner.dot(normal) / mean.dot(normal));
  return {onPlane.dot(pair.prezyg.slide), onPlane.dot(pair.prezyg.across())};
}

Polygon projectedPostzyg(const RandomPair& pair) {
  Polygon polygon;
  for (std::size_t i = pair.postzyg.outline.size(); i-- > 0;) polygon.push_back(projectedCorner(pair, i));
  return polygon;
}

double extentAlongX(const Polygon& polygon) {
  const auto [low, high] = std::minmax_element(polygon.begin(), polygon.end(),
                                               [](const Vector2d& a, const Vector2d& b) { return a.x() < b.x(); });
  return high->x() - low->x();
}

TEST(SignedArea, isPositiveCounterClockwise) {
  EXPECT_DOUBLE_EQ(signedArea({{0, 0}, {2, 0}, {2, 3}, {0, 3}}), 6);
  EXPECT_DOUBLE_EQ(signedArea({{0, 3}, {2, 3}, {2, 0}, {0, 0}}), -6);
}

TEST(SharedPolygon, ofCrossedSquaresIsTheirCommonPart) {
  const Polygon a{{0, 0}, {2, 0}, {2, 2}, {0, 2}};
  const Polygon b{{1, 1}, {3, 1}, {3, 3}, {1, 3}};
  const Polygon shared = sharedPolygon(a, b);
  ASSERT_EQ(shared.size(), 4u);
  EXPECT_DOUBLE_EQ(signedArea(shared), 1);
}

TEST(SharedPolygon, ofPolygonsThatTouchOrMissIsEmpty) {
  const Polygon a{{0, 0}, {1, 0}, {1, 1}, {0, 1}};
  EXPECT_TRUE(sharedPolygon(a, {{1, 0}, {2, 0}, {2, 1}, {1, 1}}).empty()) << "a side";
  EXPECT_TRUE(sharedPolygon(a, {{1, 1}, {2, 1}, {2, 2}, {1, 2}}).empty()) << "a corner";
  EXPECT_TRUE(sharedPolygon(a, {{3, 0}, {4, 0}, {4, 1}, {3, 1}}).empty()) << "apart";
  EXPECT_TRUE(sharedPolygon(a, {}).empty());
  EXPECT_TRUE(sharedPolygon({{0, 0}, {1, 0}}, a).empty()) << "a line";
}

TEST(SharedPolygon, ofAPolygonWithItselfOrALargerOneIsItself) {
  const Polygon a = anatomy::ellipseOutline(0.06, 0.04);
  EXPECT_NEAR(signedArea(sharedPolygon(a, a)), signedArea(a), 1e-15);
  const Polygon larger = anatomy::ellipseOutline(0.08, 0.05);
  EXPECT_NEAR(signedArea(sharedPolygon(a, larger)), signedArea(a), 1e-15);
  EXPECT_NEAR(signedArea(sharedPolygon(larger, a)), signedArea(a), 1e-15);
}

// Reference: Boost.Geometry, polygon intersection.
TEST(SharedPolygon, agreesWithBoostGeometryOnRandomConvexPolygons) {
  std::mt19937 random(1);
  std::uniform_real_distribution<double> shift(-0.06, 0.06);
  for (int i = 0; i < 4000; ++i) {
    const Polygon a = randomOutline(random);
    Polygon b = randomOutline(random);
    const Eigen::Rotation2Dd turned(shift(random) * 50);
    const Vector2d by{shift(random), shift(random)};
    for (Vector2d& p : b) p = turned * p + by;
    const double expected = test::sharedByBoost(a, b).area;
    ASSERT_NEAR(signedArea(sharedPolygon(a, b)), expected, 1e-12) << "pair " << i;
    ASSERT_NEAR(signedArea(sharedPolygon(b, a)), expected, 1e-12) << "pair " << i;
  }
}

// Near-coincident outlines are where clipping goes wrong: every corner lies almost on an edge.
TEST(SharedPolygon, agreesWithBoostGeometryOnNearlyEqualPolygons) {
  std::mt19937 random(2);
  for (int i = 0; i < 2000; ++i) {
    const Polygon a = anatomy::ellipseOutline(0.06, 0.04);
    Polygon b = a;
    const double size = std::pow(10.0, std::uniform_real_distribution<double>(-14, -3)(random));
    const Vector3d by = randomVector(random, size);
    for (Vector2d& p : b) p += by.head<2>();
    ASSERT_NEAR(signedArea(sharedPolygon(a, b)), test::sharedByBoost(a, b).area, 1e-10)
        << "pair " << i << " size " << size;
  }
}

// Closed form: equal rectangles of length L shifted by s share 1 - s/L, by length and by area.
TEST(Meet, rectanglesShareOneMinusShift) {
  for (const double shift : {0.0, 0.1, 0.25, 0.5, 0.75, 0.999}) {
    const FacetMeeting meeting = slidRectangles(shift);
    EXPECT_NEAR(meeting.overlapLength, 1 - shift, 1e-12);
    EXPECT_NEAR(meeting.overlapArea, 1 - shift, 1e-12);
  }
  EXPECT_EQ(slidRectangles(1.001).overlapLength, 0);
  EXPECT_EQ(slidRectangles(-1.001).overlapArea, 0);
}

// Closed form: the lens of two equal ellipses, (2/pi)(acos k - k sqrt(1 - k^2)) of the area for k = s/L.
TEST(Meet, ellipsesShareTheLensOfTheirShift) {
  for (const double k : {0.0, 0.1, 0.3, 0.5, 0.7, 0.9}) {
    const double lens = 2 / std::numbers::pi * (std::acos(k) - k * std::sqrt(1 - k * k));
    EXPECT_NEAR(slidEllipses(k).overlapArea, lens, 1e-4) << k;
    EXPECT_NEAR(slidEllipses(-k).overlapArea, lens, 1e-4) << k;
    EXPECT_NEAR(slidEllipses(k).overlapLength, 1 - k, 1e-4) << k;
  }
}

TEST(Meet, aLongerPrezygCostsNothingUntilHalfTheDifference) {
  const Facet prezyg = facing(1, test::outlineOf(test::Outline::Rectangle, 0.08, 0.04));
  const Facet postzyg = facing(-1, test::outlineOf(test::Outline::Rectangle, 0.06, 0.04));
  EXPECT_DOUBLE_EQ(facetOverlap(prezyg, postzyg, shifted(0.0099, 0)).overlapLength, 1);
  EXPECT_LT(facetOverlap(prezyg, postzyg, shifted(0.0101, 0)).overlapLength, 1);
  EXPECT_NEAR(facetOverlap(prezyg, postzyg, shifted(0.04, 0)).overlapLength, 0.5, 1e-12);
}

// Reference: Boost.Geometry on outlines projected corner by corner in space.
TEST(Meet, agreesWithBoostGeometryOnRandomFacets) {
  std::mt19937 random(3);
  int met = 0;
  for (int i = 0; i < 3000; ++i) {
    const RandomPair pair = randomPair(random);
    const FacetMeeting meeting = facetOverlap(pair.prezyg, pair.postzyg, pair.X_PrePost);
    const Polygon postzyg = projectedPostzyg(pair);
    const test::SharedByBoost shared = test::sharedByBoost(pair.prezyg.outline, postzyg);
    const double smaller = std::min(signedArea(pair.prezyg.outline), signedArea(pair.postzyg.outline));
    ASSERT_TRUE(meeting.overlapLength >= 0 && meeting.overlapLength <= 1) << "pair " << i;
    ASSERT_NEAR(meeting.overlapArea, std::min(1.0, shared.area / smaller), 1e-8) << "pair " << i;
    if (shared.area < 1e-9) continue;
    ++met;
    const double shorter = std::min(pair.prezyg.length(), extentAlongX(postzyg));
    ASSERT_NEAR(meeting.overlapLength, std::min(1.0, shared.extentX / shorter), 1e-7) << "pair " << i;
    ASSERT_NEAR(signedArea(meeting.shared), shared.area, 1e-12);
    ASSERT_NEAR(signedArea(meeting.postzyg), signedArea(postzyg), 1e-12);
  }
  EXPECT_GT(met, 1000);
}

TEST(Meet, sharesTheSameAreaWhicheverFacetItIsSeenFrom) {
  std::mt19937 random(4);
  for (int i = 0; i < 500; ++i) {
    const RandomPair pair = randomPair(random);
    const double seenFromPre = facetOverlap(pair.prezyg, pair.postzyg, pair.X_PrePost).overlapArea;
    ASSERT_NEAR(facetOverlap(pair.postzyg, pair.prezyg, pair.X_PrePost.inverse()).overlapArea, seenFromPre, 1e-9);
  }
}

TEST(Meet, isTheSameInAMirror) {
  std::mt19937 random(5);
  const Eigen::Matrix3d flip = Vector3d(1, -1, 1).asDiagonal();
  for (int i = 0; i < 500; ++i) {
    const RandomPair pair = randomPair(random);
    Isometry3d X = pair.X_PrePost;
    X.linear() = flip * X.linear() * flip;
    X.translation() = flip * X.translation();
    const FacetMeeting plain = facetOverlap(pair.prezyg, pair.postzyg, pair.X_PrePost);
    const FacetMeeting mirrored = facetOverlap(test::mirroredFacet(pair.prezyg), test::mirroredFacet(pair.postzyg), X);
    ASSERT_NEAR(mirrored.overlapArea, plain.overlapArea, 1e-9);
    ASSERT_NEAR(mirrored.overlapLength, plain.overlapLength, 1e-9);
    ASSERT_NEAR(mirrored.minGap, plain.minGap, 1e-9);
    ASSERT_NEAR(mirrored.maxGap, plain.maxGap, 1e-9);
  }
}

TEST(Meet, measuresTheGapBetweenParallelFacets) {
  const auto outline = anatomy::ellipseOutline(0.06, 0.04);
  const FacetMeeting apart = facetOverlap(facing(1, outline), facing(-1, outline), shifted(0.01, 0, 0.004));
  EXPECT_NEAR(apart.minGap, 0.004, 1e-12);
  EXPECT_NEAR(apart.maxGap, 0.004, 1e-12);
  const FacetMeeting entering = facetOverlap(facing(1, outline), facing(-1, outline), shifted(0.01, 0, -0.003));
  EXPECT_NEAR(entering.minGap, -0.003, 1e-12);
}

// Hinged about the middle of the facet by an angle, a plane rises by tan of it: least and most at the two ends.
TEST(Meet, measuresTheGapOfAWedge) {
  const auto outline = test::outlineOf(test::Outline::Rectangle, 0.06, 0.04);
  const double angle = 10 * kDegree;
  const Isometry3d X(Eigen::AngleAxisd(-angle, Vector3d::UnitY()));
  const FacetMeeting meeting = facetOverlap(facing(1, outline), facing(-1, outline), X);
  EXPECT_NEAR(meeting.overlapLength, 1, 1e-12);
  EXPECT_NEAR(meeting.maxGap, 0.03 * std::tan(angle), 1e-12);
  EXPECT_NEAR(meeting.minGap, -0.03 * std::tan(angle), 1e-12);
}

// Sampled in space: from points of the shared area along the prezyg's normal to the postzyg's plane.
TEST(Meet, gapsBoundWhatIsSampledOverTheSharedArea) {
  std::mt19937 random(6);
  std::uniform_real_distribution<double> u(0, 1);
  for (int i = 0; i < 500; ++i) {
    const RandomPair pair = randomPair(random);
    const FacetMeeting meeting = facetOverlap(pair.prezyg, pair.postzyg, pair.X_PrePost);
    if (meeting.shared.empty()) continue;
    const Vector3d postNormal = pair.X_PrePost.linear() * pair.postzyg.normal;
    const Vector3d postCentre = pair.X_PrePost * pair.postzyg.centre;
    const auto gapOver = [&](const Vector2d& p) {
      const Vector3d from = pair.prezyg.centre + p.x() * pair.prezyg.slide + p.y() * pair.prezyg.across();
      return (postCentre - from).dot(postNormal) / pair.prezyg.normal.dot(postNormal);
    };
    double least = 1e9, most = -1e9;
    for (std::size_t k = 0; k < meeting.shared.size(); ++k) {
      const Vector2d& corner = meeting.shared[k];
      const Vector2d inside = corner + u(random) * (meeting.shared[(k + 2) % meeting.shared.size()] - corner);
      for (const Vector2d& p : {corner, inside}) {
        least = std::min(least, gapOver(p));
        most = std::max(most, gapOver(p));
      }
    }
    ASSERT_NEAR(meeting.minGap, least, 1e-12);
    ASSERT_NEAR(meeting.maxGap, most, 1e-12);
  }
}

TEST(Meet, facetsThatFaceTheSameWayDoNotOverlap) {
  const auto outline = anatomy::ellipseOutline(0.06, 0.04);
  const FacetMeeting meeting = facetOverlap(facing(1, outline), facing(1, outline), Isometry3d::Identity());
  EXPECT_EQ(meeting.overlapLength, 0);
  EXPECT_EQ(meeting.overlapArea, 0);
  EXPECT_TRUE(meeting.shared.empty());
}

TEST(Meet, isEmptyForFacetsWithoutAnOutline) {
  const FacetMeeting meeting = facetOverlap(facing(1, {}), facing(-1, {}), Isometry3d::Identity());
  EXPECT_EQ(meeting.overlapLength, 0);
  EXPECT_TRUE(meeting.shared.empty());
}

}  // namespace
}  // namespace zyga::range
