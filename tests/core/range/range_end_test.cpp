#include "core/range/range_end.h"

#include <gtest/gtest.h>

#include <random>

#include "core/range/band_search.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "tests/support/sample_animal.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;
using test::kDegree;
using test::kOnlyJoint;

struct Bones {
  explicit Bones(anatomy::Specimen bones, double cartilagePercent = 0) : specimen(std::move(bones)) {
    assumptions.neck.amount = assumptions.trunk.amount = assumptions.tail.amount = cartilagePercent;
    articulation = articulate(specimen, assumptions);
  }
  JointJudge judge(kinematics::JointIndex joint = kOnlyJoint) const {
    return {specimen, articulation, assumptions, joint};
  }

  anatomy::Specimen specimen;
  Assumptions assumptions;
  kinematics::Articulation articulation;
};

// Rectangles of 60 mm at 200 mm over the centre: half is covered at 2 atan(30/400).
TEST(RangeEnd, isTheClosedForm) {
  const Bones bones(test::twoVertebrae());
  const JointJudge judge = bones.judge();
  const double end = 2 * std::atan(0.5 * 0.06 / 0.4);
  for (const double sign : {1.0, -1.0}) {
    const RangeEnd search(judge, Vector3d::Zero(), 0);
    EXPECT_NEAR(search.between(search.at(0), search.at(sign * 15 * kDegree)), sign * end, kBandPrecision);
    EXPECT_NEAR(search.beyond(search.at(0), sign), sign * end, kBandPrecision);
  }
}

// Whatever joint and motion, the end found by few questions is the band's: supported, and not so just past it.
TEST(RangeEnd, agreesWithTheBandsOfASample) {
  const Bones bones(test::sampleAnimal("high_browser"), 10);
  std::mt19937 random(11);
  std::uniform_real_distribution<double> u(-1, 1);
  int compared = 0;
  for (std::size_t j = 0; j < bones.specimen.joints.size(); ++j) {
    if (!bones.specimen.joints[j].hasFacets()) continue;
    const JointJudge judge = bones.judge({j});
    for (int motion = 0; motion < 3; ++motion) {
      const Vector3d angles = withMotion(Vector3d{u(random), u(random), u(random)} * 4 * kDegree, motion, 0);
      const RangeEnd search(judge, angles, motion);
      const Tried zero = search.at(0);
      const Tried far = search.at(u(random) < 0 ? -0.5 : 0.7);
      if (!zero.holds || far.holds) continue;
      const double end = search.between(zero, far);
      const Interval interval = supportedInterval(judge, angles, motion);
      EXPECT_NEAR(end, far.value < 0 ? interval.least : interval.most, 2 * kBandPrecision)
          << judge.joint().id << motion;
      EXPECT_FALSE(judge.beyond(withMotion(angles, motion, end)));
      ++compared;
    }
  }
  EXPECT_GT(compared, 100);
}

TEST(RangeEnd, findsSupportThatLeavesZeroOut) {
  Bones bones(test::twoVertebrae());
  bones.articulation = kinematics::restArticulation(bones.specimen);
  anatomy::Specimen turned = bones.specimen;
  test::askForRotation(turned, Eigen::AngleAxisd(-20 * kDegree, Vector3d::UnitY()).toRotationMatrix());
  const JointJudge judge(turned, bones.articulation, bones.assumptions, kOnlyJoint);
  const RangeEnd search(judge, Vector3d::Zero(), 0);
  EXPECT_FALSE(search.at(0).holds);
  const auto seed = search.supported();
  ASSERT_TRUE(seed);
  EXPECT_NEAR(seed->value, 20 * kDegree, 9 * kDegree);
}

TEST(RangeEnd, hasNothingToFindWhereAnotherMotionBreaksTheJoint) {
  const Bones bones(test::twoVertebrae());
  const JointJudge judge = bones.judge();
  const Vector3d broken(0, 80 * kDegree, 0);
  EXPECT_FALSE(RangeEnd(judge, broken, 0).supported());
}

}  // namespace
}  // namespace zyga::range
