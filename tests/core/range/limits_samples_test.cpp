#include <gtest/gtest.h>

#include <random>

#include "core/range/joint_evaluator.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "tests/core/range/boost_reference.h"
#include "tests/support/sample_animal.h"
#include "tests/support/two_vertebrae.h"

/// Limits of the sample animals against references that share nothing with the search.
namespace zyga::range {
namespace {

using anatomy::JointIndex;
using Eigen::Vector3d;
using test::kDegree;

struct Animal {
  anatomy::Specimen specimen;
  Assumptions assumptions;
  kinematics::Articulation articulation;

  JointLimits limits(JointIndex joint, const Vector3d& angles) const {
    return range::limits(specimen, articulation, assumptions, joint, angles);
  }
  MotionRange motionRange(JointIndex joint, const Vector3d& angles, int motion) const {
    return range::motionRange(specimen, articulation, assumptions, joint, angles, motion);
  }
};

Animal animalOf(anatomy::Specimen specimen, double cartilagePercent = 4.5) {
  Animal animal{std::move(specimen), grownAnimal(), {}};
  animal.assumptions.neck.amount = animal.assumptions.trunk.amount = animal.assumptions.tail.amount = cartilagePercent;
  // One motion at a time here; following_test.cpp has axial rotation that goes along.
  animal.articulation = test::eachByItself(articulate(animal.specimen, animal.assumptions));
  return animal;
}

std::vector<JointIndex> facetJoints(const anatomy::Specimen& specimen) {
  std::vector<JointIndex> joints;
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    if (specimen.joints[j].hasFacets()) joints.push_back({j});
  }
  return joints;
}

/// Angles somewhere inside the box that the limits from neutral span, now and then outside what is supported.
Vector3d randomStart(const JointLimits& fromNeutral, std::mt19937& random) {
  Vector3d angles;
  for (int motion = 0; motion < 3; ++motion) {
    const auto k = static_cast<std::size_t>(2 * motion);
    std::uniform_real_distribution<double> within(fromNeutral.ends[k + 1].angle, fromNeutral.ends[k].angle);
    angles[motion] = 0.9 * within(random);
  }
  return angles;
}

/// By going through every twentieth of a degree up to a right angle and asking levelAt.
class Scan {
 public:
  Scan(const Animal& animal, JointIndex joint, const Vector3d& angles, int motion)
      : animal_(animal), joint_(joint), angles_(angles), motion_(motion) {}

  static constexpr double kStep = 0.05 * test::kDegree;

  bool supported(double value) const {
    Vector3d angles = angles_;
    angles[motion_] = value;
    return levelAt(animal_.specimen, animal_.articulation, animal_.assumptions, joint_, angles) != Level::Beyond;
  }

  /// The present value where it is supported, else the supported one nearest to zero.
  std::optional<double> seed() const {
    if (supported(angles_[motion_])) return angles_[motion_];
    for (int i = 0; i <= 1800; ++i) {
      if (supported(i * kStep)) return i * kStep;
      if (supported(-i * kStep)) return -i * kStep;
    }
    return std::nullopt;
  }

  double last(double from, double sign) const {
    while (std::abs(from) < 90 * kDegree && supported(from + sign * kStep)) from += sign * kStep;
    return from;
  }

 private:
  const Animal& animal_;
  JointIndex joint_;
  Vector3d angles_;
  int motion_;
};

class SampleLimits : public testing::TestWithParam<const char*> {
 protected:
  const Animal animal_ = animalOf(test::sampleAnimal(GetParam()));
};

TEST_P(SampleLimits, agreeWithABruteForceScan) {
  std::mt19937 random(7);
  int compared = 0, beyondAtFirst = 0;
  for (const JointIndex joint : facetJoints(animal_.specimen)) {
    const JointLimits fromNeutral = animal_.limits(joint, Vector3d::Zero());
    for (int i = 0; i < 2; ++i) {
      const Vector3d start = i == 0 ? Vector3d(Vector3d::Zero()) : randomStart(fromNeutral, random);
      const JointLimits found = animal_.limits(joint, start);
      for (const Direction direction : kDirections) {
        const Scan scan(animal_, joint, start, motionOf(direction));
        const std::optional<double> seed = scan.seed();
        ASSERT_EQ(found[direction].supported, seed.has_value()) << animal_.specimen[joint].id << toText(direction);
        if (!seed) continue;
        ++compared;
        beyondAtFirst += *seed != start[motionOf(direction)];
        EXPECT_NEAR(found[direction].angle, scan.last(*seed, signOf(direction)), Scan::kStep)
            << animal_.specimen[joint].id << " " << toText(direction) << " from " << start.transpose() / kDegree;
      }
    }
  }
  EXPECT_GT(compared, 500);
  EXPECT_GT(beyondAtFirst, 30);
}

/// A postzyg outline on the plane of its prezyg, thrown there along the mean of both normals: from the corners in
/// space, by nothing but geometry.
Polygon thrownOntoPrezyg(const anatomy::Facet& prezyg, const anatomy::Facet& postzyg,
                         const Eigen::Isometry3d& X_PrePost) {
  const Vector3d along = (prezyg.normal - X_PrePost.linear() * postzyg.normal).normalized();
  Polygon polygon;
  for (std::size_t i = 0; i < postzyg.outline.size(); ++i) {
    Vector3d p = X_PrePost * postzyg.corner(i);
    p -= along * ((p - prezyg.centre).dot(prezyg.normal) / along.dot(prezyg.normal));
    polygon.emplace_back((p - prezyg.centre).dot(prezyg.slide), (p - prezyg.centre).dot(prezyg.across()));
  }
  return polygon;
}

double extent(const Polygon& polygon) {
  const auto [least, most] =
      std::minmax_element(polygon.begin(), polygon.end(), [](const auto& a, const auto& b) { return a.x() < b.x(); });
  return most->x() - least->x();
}

/// The share that Boost.Geometry finds for one side.
double shareByBoost(const Animal& animal, JointIndex joint, const Vector3d& angles, const SideFacets& side) {
  const Eigen::Isometry3d X_PrePost = PrezygView(
      animal.specimen, joint)(kinematics::jointTransform(animal.specimen[joint], animal.articulation[joint], angles));
  const Polygon postzyg = thrownOntoPrezyg(*side.prezyg, *side.postzyg, X_PrePost);
  const test::SharedByBoost shared = test::sharedByBoost(side.prezyg->outline, postzyg);
  if (animal.assumptions.overlapBy == OverlapBy::Length) {
    return shared.extentX / std::min(side.prezyg->length(), extent(postzyg));
  }
  const auto areaOf = [](const Polygon& outline) { return test::sharedByBoost(outline, outline).area; };
  return shared.area / std::min(areaOf(side.prezyg->outline), areaOf(side.postzyg->outline));
}

/// The least share of both sides is what was asked for where overlap stops a motion, by Boost.Geometry.
TEST_P(SampleLimits, leaveTheOverlapThatWasAskedForByAnotherLibrary) {
  std::mt19937 random(11);
  for (const auto& [by, least] : {std::pair(OverlapBy::Length, 0.5), std::pair(OverlapBy::Area, 0.35)}) {
    Animal animal = animal_;
    animal.assumptions.overlapBy = by;
    animal.assumptions.minOverlap = least;
    int compared = 0;
    for (const JointIndex joint : facetJoints(animal.specimen)) {
      const Vector3d start = 0.5 * randomStart(animal.limits(joint, Vector3d::Zero()), random);
      const JointLimits found = animal.limits(joint, start);
      for (const Direction direction : kDirections) {
        const Limit& limit = found[direction];
        if (!limit.supported || limit.stop.kind != FindingKind::Overlap) continue;
        Vector3d angles = start;
        angles[motionOf(direction)] = limit.angle;
        std::array<double, 2> shares{};
        for (std::size_t s = 0; s < 2; ++s) {
          shares[s] = shareByBoost(animal, joint, angles, facetsOf(animal.specimen, joint)[s]);
        }
        const double stops = std::min(shares[0], shares[1]);
        EXPECT_NEAR(stops, least, 2e-4) << animal.specimen[joint].id << " " << toText(direction);
        if (limit.stop.side != anatomy::Side::Midline) {
          EXPECT_EQ(stops, shares[limit.stop.side == anatomy::Side::Left ? 0 : 1]);
        }
        ++compared;
      }
    }
    EXPECT_GT(compared, 100);
  }
}

/// What stands to the left of a specimen stands to the right of its mirror image.
Direction mirrored(Direction direction) {
  const auto k = static_cast<int>(direction);
  return k < 2 ? direction : static_cast<Direction>(k ^ 1);
}

Vector3d mirrored(const Vector3d& angles) { return {angles[0], -angles[1], -angles[2]}; }

void expectMirrored(const Animal& animal, const Animal& image) {
  std::mt19937 random(13);
  for (const JointIndex joint : facetJoints(animal.specimen)) {
    const Vector3d start = 0.6 * randomStart(animal.limits(joint, Vector3d::Zero()), random);
    const JointLimits plain = animal.limits(joint, start);
    const JointLimits other = image.limits(joint, mirrored(start));
    for (const Direction direction : kDirections) {
      const Limit& a = plain[direction];
      const Limit& b = other[mirrored(direction)];
      const double sign = motionOf(direction) == 0 ? 1 : -1;
      ASSERT_EQ(a.supported, b.supported) << animal.specimen[joint].id << " " << toText(direction);
      if (!a.supported) continue;
      EXPECT_NEAR(a.angle, sign * b.angle, 3e-5) << animal.specimen[joint].id << " " << toText(direction);
    }
  }
}

TEST_P(SampleLimits, ofAMirroredAnimalAreMirrored) {
  expectMirrored(animal_, animalOf(test::mirroredFacets(animal_.specimen)));
}

/// As crushing in the rock leaves them: every facet moved and tilted by its own amount.
TEST_P(SampleLimits, ofAMirroredAsymmetricAnimalAreMirrored) {
  std::mt19937 random(17);
  std::uniform_real_distribution<double> some(-1, 1);
  anatomy::Specimen crushed = animal_.specimen;
  for (anatomy::Bone& bone : crushed.bones) {
    for (anatomy::Facet& facet : bone.facets) {
      const Vector3d shift{some(random), some(random), some(random)}, tilt{some(random), some(random), some(random)};
      const Eigen::Matrix3d turn = Eigen::AngleAxisd(0.05 * tilt.norm(), tilt.normalized()).toRotationMatrix();
      facet.centre += 0.05 * facet.length() * shift;
      facet.normal = turn * facet.normal;
      facet.slide = turn * facet.slide;
    }
  }
  const Animal animal = animalOf(crushed);
  double difference = 0;
  for (const JointIndex joint : facetJoints(crushed)) {
    const JointLimits limits = animal.limits(joint, Vector3d::Zero());
    difference = std::max(difference, std::abs(limits[Direction::Left].angle + limits[Direction::Right].angle));
  }
  EXPECT_GT(difference, kDegree) << "not asymmetric enough to tell";
  expectMirrored(animal, animalOf(test::mirroredFacets(crushed)));
}

/// The end of a motion recedes as less is asked of the facets: overlap, contact, gap, each by itself.
TEST_P(SampleLimits, growAsLessIsAsked) {
  const std::array<void (*)(Assumptions&, double), 3> eased{
      [](Assumptions& a, double by) { a.minOverlap = 0.8 - 0.7 * by; },
      [](Assumptions& a, double by) { a.facetContactTolerated = 0.05 + 0.3 * by; },
      [](Assumptions& a, double by) { a.facetGapTolerated = 0.1 + 0.5 * by; }};
  std::mt19937 random(19);
  for (const JointIndex joint : facetJoints(animal_.specimen)) {
    const Vector3d start = 0.4 * randomStart(animal_.limits(joint, Vector3d::Zero()), random);
    for (const auto& ease : eased) {
      Animal animal = animal_;
      std::optional<JointLimits> stricter;
      for (const double by : {0.0, 0.3, 0.6, 1.0}) {
        ease(animal.assumptions, by);
        const bool supported =
            levelAt(animal.specimen, animal.articulation, animal.assumptions, joint, start) != Level::Beyond;
        ASSERT_TRUE(supported || !stricter);
        if (!supported) continue;
        const JointLimits now = animal.limits(joint, start);
        for (const Direction direction : kDirections) {
          if (!stricter) break;
          EXPECT_GE(signOf(direction) * (now[direction].angle - (*stricter)[direction].angle), -2e-5)
              << animal.specimen[joint].id << " " << toText(direction);
        }
        stricter = now;
      }
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Animals, SampleLimits, testing::Values("high_browser", "low_browser"));

}  // namespace
}  // namespace zyga::range
