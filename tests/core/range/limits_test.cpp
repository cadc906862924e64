#include "core/range/limits.h"

#include <gtest/gtest.h>

#include "core/range/neutral.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;
using test::kDegree;
using test::kOnlyJoint;

struct Posed {
  anatomy::Specimen specimen;
  Assumptions assumptions = {};
  kinematics::Articulation articulation = test::eachByItself(articulate(specimen, assumptions));

  MotionRange motionRange(const Vector3d& angles, int motion) const {
    return range::motionRange(specimen, articulation, assumptions, kOnlyJoint, angles, motion);
  }
  bool beyond(Vector3d angles, int motion, double value) const {
    angles[motion] = value;
    return levelAt(specimen, articulation, assumptions, kOnlyJoint, angles) == Level::Beyond;
  }
};

Posed likeBones() {
  Posed posed{test::twoVertebrae({.tilt = 40 * kDegree, .outline = test::Outline::Ellipse}), {}};
  posed.assumptions.neck.amount = 3;
  posed.specimen.bones[1].facets[0].centre += Vector3d(0.004, 0.001, 0.002);
  posed.articulation = test::eachByItself(articulate(posed.specimen, posed.assumptions));
  return posed;
}

Posed typed() {
  Posed posed{test::twoVertebrae(), {}};
  anatomy::Joint& joint = posed.specimen.joints[0];
  joint.kind = anatomy::JointKind::Typed;
  joint.typed = anatomy::TypedLimits{{{{-30 * kDegree, 40 * kDegree}, {-10 * kDegree, 10 * kDegree}, {0, 0}}},
                                     anatomy::kProgramDefault};
  return posed;
}

Stop overlapStop(anatomy::Side side = anatomy::Side::Midline) {
  return {Stop::Why::Criterion, FindingKind::Overlap, side, 0.5, std::nullopt};
}

void expectTyped(const Stop& stop, double limit) {
  EXPECT_EQ(stop.kind, FindingKind::TypedLimit);
  EXPECT_NEAR(stop.limit, limit, 1e-12);
}

const TouchingParts kSpines{{{0}, BonePart::Spine}, {{1}, BonePart::Spine}};

// Equal rectangles L on an arc of radius h: half their length is left at 2 atan(L / 4h).
TEST(MotionRange, ofRectanglesIsTheClosedForm) {
  const Posed posed{test::twoVertebrae(), {}};
  const MotionRange band = posed.motionRange(Vector3d::Zero(), 0);
  const double expected = 2 * std::atan(0.06 / 0.8);
  EXPECT_NEAR(band.max, expected, 1e-5);
  EXPECT_NEAR(band.min, -expected, 1e-5);
  EXPECT_EQ(band.maxStop, overlapStop()) << "both sides at once";
  EXPECT_EQ(band.minStop, overlapStop());
  EXPECT_TRUE(band.judged);
  EXPECT_FALSE(band.empty);
}

// Against a scan in steps of 0.02 degrees outwards from zero.
TEST(MotionRange, agreesWithABruteForceScan) {
  const Posed posed = likeBones();
  for (const Vector3d& degrees : {Vector3d(0, 0, 0), Vector3d(2, 1, 0.5), Vector3d(-2, 0.5, -0.5)}) {
    const Vector3d angles = degrees * kDegree;
    for (int motion = 0; motion < 3; ++motion) {
      const MotionRange band = posed.motionRange(angles, motion);
      ASSERT_FALSE(band.empty);
      const double step = 0.02 * kDegree;
      double most = 0, least = 0;
      ASSERT_FALSE(posed.beyond(angles, motion, 0));
      while (!posed.beyond(angles, motion, most + step)) most += step;
      while (!posed.beyond(angles, motion, least - step)) least -= step;
      EXPECT_NEAR(band.max, most, step) << "motion " << motion;
      EXPECT_NEAR(band.min, least, step) << "motion " << motion;
    }
  }
}

TEST(MotionRange, endsWhereLevelAtSaysBeyond) {
  const Posed posed = likeBones();
  const Vector3d angles = Vector3d(2, -1, 0.5) * kDegree;
  for (int motion = 0; motion < 3; ++motion) {
    const MotionRange band = posed.motionRange(angles, motion);
    constexpr double kTwice = 2e-5;
    EXPECT_FALSE(posed.beyond(angles, motion, band.max)) << motion;
    EXPECT_TRUE(posed.beyond(angles, motion, band.max + kTwice)) << motion;
    EXPECT_FALSE(posed.beyond(angles, motion, band.min)) << motion;
    EXPECT_TRUE(posed.beyond(angles, motion, band.min - kTwice)) << motion;
  }
}

TEST(MotionRange, doesNotDependOnTheMotionsOwnAngle) {
  const Posed posed = likeBones();
  const MotionRange a = posed.motionRange({0, 0.03, 0}, 0);
  const MotionRange b = posed.motionRange({0.5, 0.03, 0}, 0);
  EXPECT_EQ(a.min, b.min);
  EXPECT_EQ(a.max, b.max);
}

// Kambic et al. 2017, Front. Zool. 14:37: bend and torsion are coupled; the supported set is not a box.
TEST(MotionRange, shrinksAsAnotherMotionSpendsTheOverlap) {
  const Posed posed{test::twoVertebrae(), {}};
  const MotionRange level = posed.motionRange(Vector3d::Zero(), 1);
  const MotionRange raised = posed.motionRange({7 * kDegree, 0, 0}, 1);
  EXPECT_LT(raised.max, 0.8 * level.max);
  EXPECT_GT(raised.min, 0.8 * level.min);
}

TEST(MotionRange, growsAsLessIsAskedOfTheFacets) {
  Posed posed = likeBones();
  for (int motion = 0; motion < 3; ++motion) {
    double previous = 0;
    for (const double least : {0.9, 0.7, 0.5, 0.25, 0.0}) {
      posed.assumptions.minOverlap = least;
      const MotionRange band = posed.motionRange(Vector3d::Zero(), motion);
      EXPECT_GE(band.max - band.min, previous - 1e-5) << motion << " " << least;
      previous = band.max - band.min;
    }
  }
}

TEST(MotionRange, namesTheSideThatStopsIt) {
  const Posed posed{test::twoVertebrae(), {}};
  const MotionRange band = posed.motionRange({7 * kDegree, 0, 0}, 1);
  EXPECT_EQ(band.maxStop, overlapStop(anatomy::Side::Left));
  EXPECT_EQ(band.minStop, overlapStop(anatomy::Side::Right));
}

TEST(MotionRange, mirrorsWithTheBones) {
  const Posed posed = likeBones();
  const Posed mirrored{test::mirroredFacets(posed.specimen), posed.assumptions};
  const MotionRange plain = posed.motionRange({0.02, 0, 0}, 1);
  const MotionRange other = mirrored.motionRange({0.02, 0, 0}, 1);
  EXPECT_NEAR(plain.max, -other.min, 3e-5);
  EXPECT_NEAR(plain.min, -other.max, 3e-5);
}

TEST(MotionRange, isEmptyWhenAnotherMotionBreaksTheJoint) {
  const Posed posed{test::twoVertebrae(), {}};
  EXPECT_TRUE(posed.motionRange({0, 80 * kDegree, 0}, 0).empty);
}

TEST(MotionRange, findsARangeThatLeavesZeroOut) {
  Posed posed{test::twoVertebrae(), {}};
  posed.specimen.joints[0].typed = anatomy::TypedLimits{{{{0.05, 0.12}, {-1, 1}, {-1, 1}}}, anatomy::kProgramDefault};
  const MotionRange band = posed.motionRange(Vector3d::Zero(), 0);
  ASSERT_FALSE(band.empty);
  EXPECT_NEAR(band.min, 0.05, 1e-5);
  EXPECT_NEAR(band.max, 0.12, 1e-5);
  expectTyped(band.minStop, 0.05);
}

TEST(MotionRange, findsASliverBetweenWholeDegreesAtThePresentAngle) {
  Posed posed{test::twoVertebrae(), {}};
  posed.specimen.joints[0].typed =
      anatomy::TypedLimits{{{{2.4 * kDegree, 2.6 * kDegree}, {-1, 1}, {-1, 1}}}, anatomy::kProgramDefault};
  const MotionRange band = posed.motionRange({2.5 * kDegree, 0, 0}, 0);
  ASSERT_FALSE(band.empty);
  EXPECT_NEAR(band.min / kDegree, 2.4, 0.001);
  EXPECT_NEAR(band.max / kDegree, 2.6, 0.001);
}

TEST(MotionRange, ofTypedJointsIsWhatWasTyped) {
  const MotionRange band = typed().motionRange({0, 5 * kDegree, 0}, 0);
  EXPECT_EQ(band.min, -30 * kDegree);
  EXPECT_EQ(band.max, 40 * kDegree);
  expectTyped(band.maxStop, 40 * kDegree);
  expectTyped(band.minStop, -30 * kDegree);
  EXPECT_TRUE(typed().motionRange({0, 12 * kDegree, 0}, 0).empty) << "the bend is beyond its own limit";
}

TEST(MotionRange, ofAJointThatNothingJudgesSaysSo) {
  Posed posed{test::twoVertebrae(), {}};
  posed.specimen.joints[0].kind = anatomy::JointKind::Typed;
  EXPECT_FALSE(posed.motionRange(Vector3d::Zero(), 0).judged);
  EXPECT_EQ(posed.motionRange(Vector3d::Zero(), 0).maxStop.why, Stop::Why::NoCriteria);
  posed.specimen.joints[0].kind = anatomy::JointKind::Fixed;
  const MotionRange fixed = posed.motionRange(Vector3d::Zero(), 0);
  EXPECT_TRUE(fixed.judged);
  EXPECT_EQ(fixed.max, 0);
  EXPECT_EQ(fixed.maxStop.why, Stop::Why::Fixed);
}

// Random joints and angles: the band and levelAt never contradict each other.
TEST(MotionRange, isConsistentWithLevelAtOverManyPoses) {
  const Posed posed = likeBones();
  for (int i = 0; i < 60; ++i) {
    const Vector3d angles = Vector3d((i % 5) * 2 - 4, (i % 4) - 1.5, (i % 3) - 1) * kDegree;
    for (int motion = 0; motion < 3; ++motion) {
      const MotionRange band = posed.motionRange(angles, motion);
      if (band.empty) {
        EXPECT_TRUE(posed.beyond(angles, motion, angles[motion]));
        continue;
      }
      for (const double part : {0.01, 0.3, 0.5, 0.7, 0.99}) {
        EXPECT_FALSE(posed.beyond(angles, motion, band.min + part * (band.max - band.min)));
      }
    }
  }
}

/// Contact that takes a slice out of a range: deep between 2 and 6 degrees of dorsiflexion.
class Bump : public NeighbourContact {
 public:
  ContactPlace deepest(anatomy::JointIndex, const Eigen::Isometry3d& X_PD,
                       const ContactTolerance& tolerance) const override {
    const double raised = std::atan2(X_PD.linear()(2, 0), X_PD.linear()(0, 0)) / kDegree;
    return {raised > 2 && raised < 6 ? 0.010 : 0, kSpines, tolerance.depth(0.5)};
  }
};

TEST(MotionRange, holdsThePresentAngleWhereItIsSupported) {
  const Posed posed = Posed{test::twoVertebrae(), {}};
  const Bump bump;
  const auto bandFrom = [&](double degrees) {
    return motionRange(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, {degrees * kDegree, 0, 0}, 0,
                       &bump);
  };
  const double end = posed.motionRange(Vector3d::Zero(), 0).max;
  EXPECT_NEAR(bandFrom(0).max / kDegree, 2, 0.01);
  EXPECT_NEAR(bandFrom(7).min / kDegree, 6, 0.01);
  EXPECT_EQ(bandFrom(7).max, end);
  EXPECT_NEAR(bandFrom(4).max / kDegree, 2, 0.01) << "beyond: led back to the range nearest to zero";
  EXPECT_EQ(bandFrom(-60).min, posed.motionRange(Vector3d::Zero(), 0).min);
}

TEST(MotionRange, saysWhichBonesStopIt) {
  const Posed posed = Posed{test::twoVertebrae(), {}};
  const Bump bump;
  const MotionRange cut =
      motionRange(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, Vector3d::Zero(), 0, &bump);
  EXPECT_EQ(cut.maxStop, (Stop{Stop::Why::Criterion, FindingKind::BoneContact, anatomy::Side::Midline,
                               ContactTolerance{}.depth(0.5), kSpines}));
  EXPECT_EQ(cut.minStop, overlapStop());
}

class AlwaysIn : public NeighbourContact {
 public:
  ContactPlace deepest(anatomy::JointIndex, const Eigen::Isometry3d&,
                       const ContactTolerance& tolerance) const override {
    return {0.02, {{{0}, BonePart::Rib}, {{1}, BonePart::Rib}}, tolerance.depth(0.5)};
  }
};

TEST(MotionRange, isEmptyWhereContactNeverEnds) {
  const Posed posed = Posed{test::twoVertebrae(), {}};
  const AlwaysIn contact;
  const MotionRange none =
      motionRange(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, Vector3d::Zero(), 0, &contact);
  EXPECT_TRUE(none.empty);
  EXPECT_EQ(none.maxStop.kind, FindingKind::BoneContact);
  EXPECT_EQ(none.maxStop.limit, ContactTolerance{}.depth(0.5));
  EXPECT_EQ(none.maxStop.parts.value().first.part, BonePart::Rib);
}

/// Counts what a search costs.
class Counting : public NeighbourContact {
 public:
  ContactPlace deepest(anatomy::JointIndex, const Eigen::Isometry3d&, const ContactTolerance&) const override {
    ++asked;
    return {};
  }
  mutable int asked = 0;
};

TEST(MotionRange, asksForContactSparingly) {
  const Posed posed = Posed{test::twoVertebrae(), {}};
  const Counting counting;
  const MotionRange free =
      motionRange(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, Vector3d::Zero(), 0, &counting);
  EXPECT_EQ(free.max, posed.motionRange(Vector3d::Zero(), 0).max);
  EXPECT_LE(counting.asked, 10);
}

// A range between two values of the search's grid, with the present angle far away.
TEST(MotionRange, findsASliverBetweenWholeDegrees) {
  for (const double at : {2.3, -7.6}) {
    Posed posed{test::twoVertebrae(), {}};
    posed.specimen.joints[0].typed = anatomy::TypedLimits{
        {{{(at - 0.01) * kDegree, (at + 0.01) * kDegree}, {-1, 1}, {-1, 1}}}, anatomy::kProgramDefault};
    const MotionRange band = posed.motionRange({30 * kDegree, 0, 0}, 0);
    ASSERT_FALSE(band.empty) << at;
    EXPECT_NEAR(band.min / kDegree, at - 0.01, 0.001);
    EXPECT_NEAR(band.max / kDegree, at + 0.01, 0.001);
  }
}

TEST(Limits, areTheEndsOfTheThreeBands) {
  const Posed posed = likeBones();
  const Vector3d angles = Vector3d(2, -1, 0.5) * kDegree;
  const JointLimits limits = range::limits(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, angles);
  EXPECT_EQ(limits.joint, kOnlyJoint);
  EXPECT_TRUE(limits.judged);
  for (const Direction direction : kDirections) {
    const MotionRange band = posed.motionRange(angles, motionOf(direction));
    const bool upper = signOf(direction) > 0;
    EXPECT_TRUE(limits[direction].supported);
    EXPECT_EQ(limits[direction].angle, upper ? band.max : band.min) << toText(direction);
    EXPECT_EQ(limits[direction].stop, upper ? band.maxStop : band.minStop) << toText(direction);
  }
}

TEST(Limits, tellWhatStopsThemInNumbers) {
  const Posed posed{test::twoVertebrae(), {}};
  const JointLimits raised =
      range::limits(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, {7 * kDegree, 0, 0});
  EXPECT_EQ(raised[Direction::Dorsal].stop.kind, FindingKind::Overlap);
  EXPECT_EQ(raised[Direction::Dorsal].stop.side, anatomy::Side::Midline) << "both sides at once";
  EXPECT_EQ(raised[Direction::Left].stop.side, anatomy::Side::Left);
  EXPECT_EQ(raised[Direction::Right].stop.side, anatomy::Side::Right);
  EXPECT_EQ(raised[Direction::Left].stop.limit, 0.5);

  Posed bounded = typed();
  const JointLimits limits =
      range::limits(bounded.specimen, bounded.articulation, bounded.assumptions, kOnlyJoint, Vector3d::Zero());
  EXPECT_EQ(limits[Direction::Ventral].stop.kind, FindingKind::TypedLimit);
  EXPECT_EQ(limits[Direction::Ventral].stop.limit, -30 * kDegree);
}

TEST(Limits, ofACombinationThatNothingSupportsSaySo) {
  const Posed posed{test::twoVertebrae(), {}};
  const JointLimits limits =
      range::limits(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, {0, 80 * kDegree, 0});
  EXPECT_FALSE(limits[Direction::Dorsal].supported);
  EXPECT_FALSE(limits[Direction::TorsionLeft].supported);
  EXPECT_TRUE(limits[Direction::Left].supported) << "with the other two at zero there is a range of its own";
  EXPECT_EQ(limits[Direction::Dorsal].stop.why, Stop::Why::Criterion);
}

}  // namespace
}  // namespace zyga::range
