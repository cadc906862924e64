#include "core/study/reach/envelope.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <set>

#include "core/kinematics/bend.h"
#include "core/kinematics/standing.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "core/range/reach_ranges.h"
#include "core/study/reach/extremes.h"
#include "core/study/reach/swept_region.h"
#include "tests/support/random_tree.h"
#include "tests/support/sample_animal.h"
#include "tests/support/small_neck.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;

bool holds(const std::vector<Line>& outlines, const Vector2d& p) {
  bool inside = false;
  for (const Line& outline : outlines) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
      const Vector2d &a = outline[i], &b = outline[(i + 1) % outline.size()];
      if ((a.y() < p.y()) != (b.y() < p.y()) && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
        inside = !inside;
      }
    }
  }
  return inside;
}

double distanceTo(const std::vector<Line>& outlines, const Vector2d& p) {
  double nearest = 1e9;
  for (const Line& outline : outlines)
    for (const Vector2d& q : outline) nearest = std::min(nearest, (p - q).norm());
  return nearest;
}

struct Animal {
  explicit Animal(anatomy::Specimen made, const range::Assumptions& assumed = {})
      : specimen(std::move(made)), assumptions(assumed) {}
  range::Scenario scenario() const {
    return {std::make_shared<const anatomy::Specimen>(specimen), assumptions, articulation, pose};
  }

  anatomy::Specimen specimen;
  range::Assumptions assumptions;
  kinematics::Articulation articulation = range::articulate(specimen, assumptions);
  kinematics::Pose pose = kinematics::Pose::neutral(specimen);
};

Animal standing(const char* sample) {
  Animal animal(test::sampleAnimal(sample), range::grownAnimal());
  animal.pose = kinematics::stand(animal.specimen, animal.articulation, animal.pose);
  return animal;
}

EnvelopeOptions outlineOnly() {
  EnvelopeOptions options;
  options.space = false;
  return options;
}

EnvelopeOptions quickOutline() {
  EnvelopeOptions options = outlineOnly();
  options.rings = 300;
  return options;
}

class SampleEnvelope : public testing::TestWithParam<const char*> {
 protected:
  const Animal animal_ = standing(GetParam());
  const Envelope envelope_ = envelope(animal_.scenario(), quickOutline()).value();
};

TEST_P(SampleEnvelope, HoldsBothExtremesAndEveryPoseInsideTheRanges) {
  const double slack = 3 * envelope_.precision;
  test::Chance chance(7);
  const auto joints = kinematics::neckChain(animal_.specimen);
  std::vector<range::MotionRange> bands;
  for (const auto joint : joints) {
    bands.push_back(
        range::motionRange(animal_.specimen, animal_.articulation, animal_.assumptions, joint, Vector3d::Zero(), 0));
  }
  for (int i = 0; i < 400; ++i) {
    kinematics::Pose pose = animal_.pose;
    const bool corner = i < 40;  // joints at their very ends
    for (std::size_t k = 0; k < joints.size(); ++k) {
      double share = corner ? static_cast<double>(chance.below(2)) : chance.in(0, 1);
      if (i == 0) share = 1;
      if (i == 1) share = 0;
      pose[joints[k]] = Vector3d(std::lerp(bands[k].min, bands[k].max, share), 0, 0);
    }
    const auto X_WB = kinematics::forwardKinematics(animal_.specimen, animal_.articulation, pose);
    const Vector2d snout = neckLine(animal_.specimen, X_WB, envelope_.plane).back();
    EXPECT_TRUE(holds(envelope_.outlines, snout) || distanceTo(envelope_.outlines, snout) < slack) << i;
  }
}

/// What lies a little inside is reached by the solver, what lies a little outside is not.
TEST_P(SampleEnvelope, SolverAgreesOnBothSidesOfTheOutline) {
  const range::ReachRanges ranges(animal_.specimen, animal_.articulation, animal_.assumptions);
  const auto skull = *animal_.specimen.findBone("skull");
  kinematics::IkGoal goal;
  goal.bone = skull;
  goal.joints = kinematics::neckChain(animal_.specimen);
  goal.p_BPoint = animal_.specimen[skull].landmark("snout");
  goal.motions = {true, false, false};
  kinematics::Pose neutral = animal_.pose;
  for (const auto joint : goal.joints) neutral[joint] = Vector3d::Zero();
  const double away = 5 * envelope_.precision;
  const Line& outline = envelope_.outlines.front();
  int missed = 0, asked = 0;
  for (std::size_t i = 0; i < outline.size(); i += outline.size() / 24) {
    const Vector2d along = outline[(i + 4) % outline.size()] - outline[(i + outline.size() - 4) % outline.size()];
    const Vector2d outwards = Vector2d(along.y(), -along.x()).normalized();
    const auto distance = [&](const Vector2d& p) {
      goal.p_WTarget = envelope_.plane.inWorld(p);
      return kinematics::reach(animal_.specimen, animal_.articulation, ranges, neutral, goal).distance;
    };
    EXPECT_GT(distance(outline[i] + away * outwards), away - 3 * envelope_.precision) << i;
    ++asked;
    if (distance(outline[i] - away * outwards) > 1e-3) ++missed;
  }
  // The solver may stop short of a place that a chain on its limits reaches in one way only.
  EXPECT_LE(missed, asked / 8);
}

TEST_P(SampleEnvelope, ReadsOffItsOwnOutline) {
  for (const Line& outline : envelope_.outlines) {
    for (const Vector2d& p : outline) {
      EXPECT_LE(p.y(), envelope_.highest.y());
      EXPECT_GE(p.y(), envelope_.lowest.y());
      EXPECT_LE(p.x(), envelope_.farthest.x());
    }
  }
  for (const GroundStretch& stretch : envelope_.ground) {
    EXPECT_LT(stretch.from, stretch.to);
    const double middle = 0.5 * (stretch.from + stretch.to);
    EXPECT_TRUE(holds(envelope_.outlines, {middle, 1e-6}));
  }
  EXPECT_GT(envelope_.area, 1);
  EXPECT_TRUE(envelope_.foreFeet.has_value());
  EXPECT_NEAR(envelope_.outOfPlane, 0, 1e-9) << "the sample is symmetric";
}

INSTANTIATE_TEST_SUITE_P(Animals, SampleEnvelope, testing::Values("high_browser", "low_browser"));

TEST(Envelope, GroundCutsAwayWhatLiesUnderIt) {
  // Base free over a half turn, 1 m over the ground, stiff beyond: an arc band around it.
  test::SmallNeck spec;
  spec.cervicals = 2;
  spec.dorsiflexion = {-90 * kDegree, 90 * kDegree};
  Animal animal(test::smallNeck(spec));
  animal.pose = test::smallPose(animal.specimen, 1);
  const Envelope e = envelope(animal.scenario(), outlineOnly()).value();
  EXPECT_NEAR(e.highest.y(), 1 + 2.5, 3 * e.precision);
  EXPECT_NEAR(e.farthest.x(), 2.5, 3 * e.precision);
  ASSERT_FALSE(e.ground.empty());
  EXPECT_NEAR(e.ground.back().to, std::sqrt(2.5 * 2.5 - 1), 0.02) << "stretched out to the ground";
  double whole = 0;
  for (const Line& outline : e.outlines) whole += areaOf(outline);
  EXPECT_LT(e.area, whole);
}

// Two joints with every motion, against voxels that a dense set of postures falls into.
TEST(ReachSpace, AgreesWithVoxelsOnASmallNeck) {
  test::SmallNeck spec;
  spec.cervicals = 2;
  spec.dorsiflexion = {-50 * kDegree, 60 * kDegree};
  spec.lateral = {-40 * kDegree, 40 * kDegree};
  Animal animal(test::smallNeck(spec));
  animal.pose = test::smallPose(animal.specimen, 10);  // far from the ground
  ReachSpaceOptions options;
  options.spacing = 0.1;
  const ReachSpace space = reachSpace(animal.scenario(), options).value();

  constexpr double kVoxel = 0.1;
  constexpr int kSteps = 40;
  std::set<std::array<int, 3>> filled;
  const auto angle = [](const anatomy::AngleLimits& limits, int i) {
    return std::lerp(limits.min, limits.max, static_cast<double>(i) / (kSteps - 1));
  };
  const auto turn = [](double up, double left) {
    return Eigen::AngleAxisd(-up, Vector3d::UnitY()) * Eigen::AngleAxisd(left, Vector3d::UnitZ());
  };
  for (int a = 0; a < kSteps; ++a)
    for (int b = 0; b < kSteps; ++b)
      for (int c = 0; c < kSteps; ++c)
        for (int d = 0; d < kSteps; ++d) {
          const Vector3d upper = turn(angle(spec.dorsiflexion, c), angle(spec.lateral, d)) * Vector3d(1.5, 0, 0);
          const Vector3d p =
              turn(angle(spec.dorsiflexion, a), angle(spec.lateral, b)) * Vector3d(Vector3d(1, 0, 0) + upper);
          const Eigen::Vector3i cell = (p / kVoxel).array().floor().cast<int>();
          filled.insert({cell.x(), cell.y(), cell.z()});
        }
  // Voxels that the surface runs through count whole, half of them too much on average.
  std::size_t surface = 0;
  for (const auto& cell : filled) {
    bool bare = false;
    for (std::size_t k = 0; k < 3; ++k) {
      for (const int step : {-1, 1}) {
        auto next = cell;
        next[k] += step;
        bare = bare || !filled.contains(next);
      }
    }
    surface += bare ? 1 : 0;
  }
  const double voxel = std::pow(kVoxel, 3);
  const double expected = voxel * (static_cast<double>(filled.size()) - 0.5 * static_cast<double>(surface));
  EXPECT_NEAR(space.volumeWithGround, expected, 0.25 * voxel * static_cast<double>(surface) + 0.04 * expected);
  EXPECT_DOUBLE_EQ(space.volume, space.volumeWithGround);
  EXPECT_TRUE(space.strip.empty());
}

TEST(ReachSpace, IsTheSameOnAnyNumberOfThreads) {
  const Animal animal = standing("high_browser");
  ReachSpaceOptions options;
  options.spacing = 0.6;
  options.bearings = 12;
  options.threads = 1;
  const ReachSpace one = reachSpace(animal.scenario(), options).value();
  options.threads = 3;
  const ReachSpace three = reachSpace(animal.scenario(), options).value();
  EXPECT_EQ(one.volume, three.volume);
  EXPECT_EQ(one.stripArea, three.stripArea);
  EXPECT_GT(one.volume, 1);
}

TEST(ReachSpace, StripMeetsTheSideOutlineStraightAhead) {
  Animal animal = standing("low_browser");
  const Envelope e = envelope(animal.scenario(), outlineOnly()).value();
  ASSERT_FALSE(e.ground.empty()) << "the low browser drinks";
  ReachSpaceOptions options;
  options.spacing = 1.5;
  options.bearings = 25;  // an odd number has a bearing straight ahead
  const ReachSpace space = reachSpace(animal.scenario(), options).value();
  const auto ahead =
      std::find_if(space.strip.begin(), space.strip.end(), [](const auto& s) { return std::abs(s.bearing) < 1e-9; });
  ASSERT_NE(ahead, space.strip.end());
  EXPECT_NEAR(e.plane.flat({ahead->to.x(), ahead->to.y(), 0}).x(), e.ground.back().to, 0.1);
}

TEST(Envelope, CancelledGivesNothing) {
  const Animal animal = standing("high_browser");
  const std::atomic<bool> cancel = true;
  EXPECT_FALSE(envelope(animal.scenario(), {}, task::Task(&cancel)));
}

TEST(Envelope, RefusesAnAnimalWithoutHead) {
  Animal animal(test::smallNeck());
  animal.specimen.bones.pop_back();
  animal.specimen.joints.pop_back();
  EXPECT_THROW(envelope(animal.scenario()), reason::Failure);
}

}  // namespace
}  // namespace zyga::study
