#include "core/range/limit_search.h"

#include <gtest/gtest.h>

#include <random>

#include "core/range/explain.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
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
  JointEvaluator judge(kinematics::JointIndex joint = kOnlyJoint, const NeighbourContact* contact = nullptr) const {
    return {specimen, articulation, assumptions, joint, contact};
  }

  anatomy::Specimen specimen;
  Assumptions assumptions = grownAnimal();
  kinematics::Articulation articulation;
};

// Rectangles of 60 mm at 200 mm over the centre: half is covered at 2 atan(30/400).
TEST(LimitSearch, isTheClosedForm) {
  const Bones bones(test::twoVertebrae());
  const JointEvaluator judge = bones.judge();
  const double end = 2 * std::atan(0.5 * 0.06 / 0.4);
  for (const double from : {0.0, 15 * kDegree, -15 * kDegree}) {
    const Interval found = LimitSearch(judge, {from, 0, 0}, 0).interval();
    EXPECT_NEAR(found.max, end, kBandPrecision);
    EXPECT_NEAR(found.min, -end, kBandPrecision);
  }
}

// Whatever joint and motion, the end told in the explanation of a joint that has left its range is the band's:
// supported, and not so just past it.
TEST(LimitSearch, explanationsAgreeWithTheBandsOfASample) {
  const Bones bones(test::sampleAnimal("high_browser"), 10);
  std::mt19937 random(11);
  std::uniform_real_distribution<double> u(-1, 1);
  int compared = 0;
  for (std::size_t j = 0; j < bones.specimen.joints.size(); ++j) {
    if (!bones.specimen.joints[j].hasFacets()) continue;
    const JointEvaluator judge = bones.judge({j});
    for (int motion = 0; motion < 3; ++motion) {
      const Vector3d some = Vector3d{u(random), u(random), u(random)} * 4 * kDegree;
      const Vector3d rest = judge.withMotion(some, motion, 0);
      const Vector3d far = judge.withMotion(rest, motion, u(random) < 0 ? -0.5 : 0.7);
      if (judge.beyond(rest) || !judge.beyond(far)) continue;
      const JointVerdict verdict = assessJoint(bones.specimen, bones.articulation, bones.assumptions, {j}, far);
      const Explanation told = explain(bones.specimen, bones.articulation, bones.assumptions, verdict, far);
      const Interval interval = LimitSearch(judge, rest, motion).interval();
      const auto found = std::find_if(told.motions.begin(), told.motions.end(),
                                      [&](const MotionState& state) { return state.motion == motion; });
      ASSERT_NE(found, told.motions.end()) << judge.joint().id << motion;
      EXPECT_NEAR(found->end, far[motion] < 0 ? interval.min : interval.max, 2 * kBandPrecision)
          << judge.joint().id << motion;
      EXPECT_FALSE(judge.beyond(judge.withMotion(far, motion, found->end)));
      ++compared;
    }
  }
  EXPECT_GT(compared, 100);
}

TEST(LimitSearch, findsSupportThatLeavesZeroOut) {
  Bones bones(test::twoVertebrae());
  bones.articulation = kinematics::restArticulation(bones.specimen);
  anatomy::Specimen turned = bones.specimen;
  test::askForRotation(turned, Eigen::AngleAxisd(-20 * kDegree, Vector3d::UnitY()).toRotationMatrix());
  const JointEvaluator judge(turned, bones.articulation, bones.assumptions, kOnlyJoint);
  ASSERT_TRUE(judge.beyond(Vector3d::Zero()));
  const Interval found = LimitSearch(judge, Vector3d::Zero(), 0).interval();
  ASSERT_FALSE(found.empty);
  EXPECT_GT(found.min, 0);
  EXPECT_NEAR(0.5 * (found.min + found.max), 20 * kDegree, 1 * kDegree);
  const JointVerdict verdict =
      assessJoint(turned, bones.articulation, bones.assumptions, kOnlyJoint, {2 * kDegree, 0, 0});
  const Explanation told = explain(turned, bones.articulation, bones.assumptions, verdict, {2 * kDegree, 0, 0});
  ASSERT_EQ(told.motions.size(), 1u);
  EXPECT_EQ(told.motions[0].how, MotionState::How::ShortOf);
  EXPECT_NEAR(told.motions[0].end, found.min, kBandPrecision);
}

TEST(LimitSearch, hasNothingToFindWhereAnotherMotionBreaksTheJoint) {
  const Bones bones(test::twoVertebrae());
  const JointEvaluator judge = bones.judge();
  EXPECT_TRUE(LimitSearch(judge, {0, 80 * kDegree, 0}, 0).interval().empty);
}

// Near begins a tenth of the way from half cover to full cover: at 55 % of the length.
TEST(LimitSearch, firmIsWhatIsClearOfTheNearMargin) {
  const Bones bones(test::twoVertebrae());
  const JointEvaluator judge = bones.judge();
  const LimitSearch search(judge, Vector3d::Zero(), 0);
  const Interval firm = search.firm(search.interval());
  const double edge = 2 * std::atan(0.45 * 0.06 / 0.4);
  ASSERT_FALSE(firm.empty);
  EXPECT_NEAR(firm.max, edge, 0.001);
  EXPECT_NEAR(firm.min, -edge, 0.001);
}

TEST(LimitSearch, aDragStopsAtTheLastSupportedAnglesOfItsWay) {
  const Bones bones(test::twoVertebrae());
  const JointEvaluator judge = bones.judge();
  const double end = 2 * std::atan(0.5 * 0.06 / 0.4);
  const Vector3d straight = lastSupported(judge, Vector3d::Zero(), {30 * kDegree, 0, 0});
  EXPECT_NEAR(straight[0], end, 2 * kBandPrecision);
  const Vector3d slanting = lastSupported(judge, Vector3d::Zero(), {20 * kDegree, -30 * kDegree, 10 * kDegree});
  EXPECT_FALSE(judge.beyond(slanting));
  EXPECT_TRUE(judge.beyond(slanting * 1.001));
  EXPECT_NEAR(slanting[1] / slanting[0], -1.5, 1e-9) << "on the way";
  const Vector3d within(3 * kDegree, 1 * kDegree, 0);
  EXPECT_EQ(lastSupported(judge, Vector3d::Zero(), within), within);
}

/// The bones enter each other by 10 mm beyond five degrees of dorsiflexion.
class EntersPastFive : public NeighbourContact {
 public:
  static constexpr double kEnd = 5 * kDegree;
  ContactPlace deepest(anatomy::JointIndex, const Eigen::Isometry3d& X_PD,
                       const ContactTolerance& tolerance) const override {
    const double raised = std::atan2(X_PD.linear()(2, 0), X_PD.linear()(0, 0));
    return {raised > kEnd ? 0.010 : 0, {{{0}, BonePart::Spine}, {{1}, BonePart::Spine}}, tolerance.depth(0.5)};
  }
};

TEST(LimitSearch, aDragStopsWhereTheBonesEnterEachOtherAsTheRangeDoes) {
  const Bones bones(test::twoVertebrae());
  const EntersPastFive contact;
  const JointEvaluator judge = bones.judge(kOnlyJoint, &contact);
  const double end = LimitSearch(judge, Vector3d::Zero(), 0).interval().max;
  EXPECT_NEAR(end, EntersPastFive::kEnd, kContactPrecision);
  EXPECT_NEAR(lastSupported(judge, Vector3d::Zero(), {30 * kDegree, 0, 0})[0], end, 2 * kContactPrecision);
  // The other way the facets end it, and from inside each other the bones do not hold it.
  const double facets = -LimitSearch(judge, Vector3d::Zero(), 0).interval().min;
  EXPECT_NEAR(lastSupported(judge, Vector3d::Zero(), {-30 * kDegree, 0, 0})[0], -facets, 2 * kBandPrecision);
  EXPECT_NEAR(lastSupported(judge, {7 * kDegree, 0, 0}, {30 * kDegree, 0, 0})[0], facets, 2 * kBandPrecision);
}

}  // namespace
}  // namespace zyga::range
