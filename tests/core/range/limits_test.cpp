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
  kinematics::Articulation articulation = articulate(specimen, assumptions);

  Band band(const Vector3d& angles, int motion) const {
    return range::band(specimen, articulation, assumptions, kOnlyJoint, angles, motion);
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
  posed.articulation = articulate(posed.specimen, posed.assumptions);
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
TEST(Band, ofRectanglesIsTheClosedForm) {
  const Posed posed{test::twoVertebrae(), {}};
  const Band band = posed.band(Vector3d::Zero(), 0);
  const double expected = 2 * std::atan(0.06 / 0.8);
  EXPECT_NEAR(band.most, expected, 1e-5);
  EXPECT_NEAR(band.least, -expected, 1e-5);
  EXPECT_EQ(band.mostStop, overlapStop()) << "both sides at once";
  EXPECT_EQ(band.leastStop, overlapStop());
  EXPECT_TRUE(band.judged);
  EXPECT_FALSE(band.empty);
}

// Against a scan in steps of 0.02 degrees outwards from zero.
TEST(Band, agreesWithABruteForceScan) {
  const Posed posed = likeBones();
  for (const Vector3d& degrees : {Vector3d(0, 0, 0), Vector3d(2, 1, 0.5), Vector3d(-2, 0.5, -0.5)}) {
    const Vector3d angles = degrees * kDegree;
    for (int motion = 0; motion < 3; ++motion) {
      const Band band = posed.band(angles, motion);
      ASSERT_FALSE(band.empty);
      const double step = 0.02 * kDegree;
      double most = 0, least = 0;
      ASSERT_FALSE(posed.beyond(angles, motion, 0));
      while (!posed.beyond(angles, motion, most + step)) most += step;
      while (!posed.beyond(angles, motion, least - step)) least -= step;
      EXPECT_NEAR(band.most, most, step) << "motion " << motion;
      EXPECT_NEAR(band.least, least, step) << "motion " << motion;
    }
  }
}

TEST(Band, endsWhereLevelAtSaysBeyond) {
  const Posed posed = likeBones();
  const Vector3d angles = Vector3d(2, -1, 0.5) * kDegree;
  for (int motion = 0; motion < 3; ++motion) {
    const Band band = posed.band(angles, motion);
    constexpr double kTwice = 2e-5;
    EXPECT_FALSE(posed.beyond(angles, motion, band.most)) << motion;
    EXPECT_TRUE(posed.beyond(angles, motion, band.most + kTwice)) << motion;
    EXPECT_FALSE(posed.beyond(angles, motion, band.least)) << motion;
    EXPECT_TRUE(posed.beyond(angles, motion, band.least - kTwice)) << motion;
  }
}

TEST(Band, doesNotDependOnTheMotionsOwnAngle) {
  const Posed posed = likeBones();
  const Band a = posed.band({0, 0.03, 0}, 0);
  const Band b = posed.band({0.5, 0.03, 0}, 0);
  EXPECT_EQ(a.least, b.least);
  EXPECT_EQ(a.most, b.most);
}

// Kambic et al. 2017, Front. Zool. 14:37: bend and torsion are coupled; the supported set is not a box.
TEST(Band, shrinksAsAnotherMotionSpendsTheOverlap) {
  const Posed posed{test::twoVertebrae(), {}};
  const Band level = posed.band(Vector3d::Zero(), 1);
  const Band raised = posed.band({7 * kDegree, 0, 0}, 1);
  EXPECT_LT(raised.most, 0.8 * level.most);
  EXPECT_GT(raised.least, 0.8 * level.least);
}

TEST(Band, growsAsLessIsAskedOfTheFacets) {
  Posed posed = likeBones();
  for (int motion = 0; motion < 3; ++motion) {
    double previous = 0;
    for (const double least : {0.9, 0.7, 0.5, 0.25, 0.0}) {
      posed.assumptions.leastOverlap = least;
      const Band band = posed.band(Vector3d::Zero(), motion);
      EXPECT_GE(band.most - band.least, previous - 1e-5) << motion << " " << least;
      previous = band.most - band.least;
    }
  }
}

TEST(Band, namesTheSideThatStopsIt) {
  const Posed posed{test::twoVertebrae(), {}};
  const Band band = posed.band({7 * kDegree, 0, 0}, 1);
  EXPECT_EQ(band.mostStop, overlapStop(anatomy::Side::Left));
  EXPECT_EQ(band.leastStop, overlapStop(anatomy::Side::Right));
}

TEST(Band, mirrorsWithTheBones) {
  const Posed posed = likeBones();
  const Posed mirrored{test::mirroredFacets(posed.specimen), posed.assumptions};
  const Band plain = posed.band({0.02, 0, 0}, 1);
  const Band other = mirrored.band({0.02, 0, 0}, 1);
  EXPECT_NEAR(plain.most, -other.least, 3e-5);
  EXPECT_NEAR(plain.least, -other.most, 3e-5);
}

TEST(Band, isEmptyWhenAnotherMotionBreaksTheJoint) {
  const Posed posed{test::twoVertebrae(), {}};
  EXPECT_TRUE(posed.band({0, 80 * kDegree, 0}, 0).empty);
}

TEST(Band, findsARangeThatLeavesZeroOut) {
  Posed posed{test::twoVertebrae(), {}};
  posed.specimen.joints[0].typed = anatomy::TypedLimits{{{{0.05, 0.12}, {-1, 1}, {-1, 1}}}, anatomy::kProgramDefault};
  const Band band = posed.band(Vector3d::Zero(), 0);
  ASSERT_FALSE(band.empty);
  EXPECT_NEAR(band.least, 0.05, 1e-5);
  EXPECT_NEAR(band.most, 0.12, 1e-5);
  expectTyped(band.leastStop, 0.05);
}

TEST(Band, findsASliverBetweenWholeDegreesAtThePresentAngle) {
  Posed posed{test::twoVertebrae(), {}};
  posed.specimen.joints[0].typed =
      anatomy::TypedLimits{{{{2.4 * kDegree, 2.6 * kDegree}, {-1, 1}, {-1, 1}}}, anatomy::kProgramDefault};
  const Band band = posed.band({2.5 * kDegree, 0, 0}, 0);
  ASSERT_FALSE(band.empty);
  EXPECT_NEAR(band.least / kDegree, 2.4, 0.001);
  EXPECT_NEAR(band.most / kDegree, 2.6, 0.001);
}

TEST(Band, ofTypedJointsIsWhatWasTyped) {
  const Band band = typed().band({0, 5 * kDegree, 0}, 0);
  EXPECT_EQ(band.least, -30 * kDegree);
  EXPECT_EQ(band.most, 40 * kDegree);
  expectTyped(band.mostStop, 40 * kDegree);
  expectTyped(band.leastStop, -30 * kDegree);
  EXPECT_TRUE(typed().band({0, 12 * kDegree, 0}, 0).empty) << "the bend is beyond its own limit";
}

TEST(Band, ofAJointThatNothingJudgesSaysSo) {
  Posed posed{test::twoVertebrae(), {}};
  posed.specimen.joints[0].kind = anatomy::JointKind::Typed;
  EXPECT_FALSE(posed.band(Vector3d::Zero(), 0).judged);
  EXPECT_EQ(posed.band(Vector3d::Zero(), 0).mostStop.why, Stop::Why::NoCriteria);
  posed.specimen.joints[0].kind = anatomy::JointKind::Fixed;
  const Band fixed = posed.band(Vector3d::Zero(), 0);
  EXPECT_TRUE(fixed.judged);
  EXPECT_EQ(fixed.most, 0);
  EXPECT_EQ(fixed.mostStop.why, Stop::Why::Fixed);
}

// Random joints and angles: the band and levelAt never contradict each other.
TEST(Band, isConsistentWithLevelAtOverManyPoses) {
  const Posed posed = likeBones();
  for (int i = 0; i < 60; ++i) {
    const Vector3d angles = Vector3d((i % 5) * 2 - 4, (i % 4) - 1.5, (i % 3) - 1) * kDegree;
    for (int motion = 0; motion < 3; ++motion) {
      const Band band = posed.band(angles, motion);
      if (band.empty) {
        EXPECT_TRUE(posed.beyond(angles, motion, angles[motion]));
        continue;
      }
      for (const double part : {0.01, 0.3, 0.5, 0.7, 0.99}) {
        EXPECT_FALSE(posed.beyond(angles, motion, band.least + part * (band.most - band.least)));
      }
    }
  }
}

/// Contact that takes a slice out of a range: deep between 2 and 6 degrees of dorsiflexion.
class Bump : public NeighbourContact {
 public:
  ContactPlace deepest(anatomy::JointIndex, const Eigen::Isometry3d& X_PD) const override {
    const double raised = std::atan2(X_PD.linear()(2, 0), X_PD.linear()(0, 0)) / kDegree;
    return {raised > 2 && raised < 6 ? 0.010 : 0, kSpines};
  }
};

TEST(Band, holdsThePresentAngleWhereItIsSupported) {
  const Posed posed = Posed{test::twoVertebrae(), {}};
  const Bump bump;
  const auto bandFrom = [&](double degrees) {
    return band(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, {degrees * kDegree, 0, 0}, 0, &bump);
  };
  const double end = posed.band(Vector3d::Zero(), 0).most;
  EXPECT_NEAR(bandFrom(0).most / kDegree, 2, 0.01);
  EXPECT_NEAR(bandFrom(7).least / kDegree, 6, 0.01);
  EXPECT_EQ(bandFrom(7).most, end);
  EXPECT_NEAR(bandFrom(4).most / kDegree, 2, 0.01) << "beyond: led back to the range nearest to zero";
  EXPECT_EQ(bandFrom(-60).least, posed.band(Vector3d::Zero(), 0).least);
}

TEST(Band, saysWhichBonesStopIt) {
  const Posed posed = Posed{test::twoVertebrae(), {}};
  const Bump bump;
  const Band cut = band(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, Vector3d::Zero(), 0, &bump);
  EXPECT_EQ(cut.mostStop,
            (Stop{Stop::Why::Criterion, FindingKind::BoneContact, anatomy::Side::Midline, 0.005, kSpines}));
  EXPECT_EQ(cut.leastStop, overlapStop());
}

class AlwaysIn : public NeighbourContact {
 public:
  ContactPlace deepest(anatomy::JointIndex, const Eigen::Isometry3d&) const override {
    return {0.02, {{{0}, BonePart::Rib}, {{1}, BonePart::Rib}}};
  }
};

TEST(Band, isEmptyWhereContactNeverEnds) {
  const Posed posed = Posed{test::twoVertebrae(), {}};
  const AlwaysIn contact;
  const Band none =
      band(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, Vector3d::Zero(), 0, &contact);
  EXPECT_TRUE(none.empty);
  EXPECT_EQ(none.mostStop.kind, FindingKind::BoneContact);
  EXPECT_EQ(none.mostStop.limit, 0.005);
  EXPECT_EQ(none.mostStop.parts.value().first.part, BonePart::Rib);
}

/// Counts what a search costs.
class Counting : public NeighbourContact {
 public:
  ContactPlace deepest(anatomy::JointIndex, const Eigen::Isometry3d&) const override {
    ++asked;
    return {};
  }
  mutable int asked = 0;
};

TEST(Band, asksForContactSparingly) {
  const Posed posed = Posed{test::twoVertebrae(), {}};
  const Counting counting;
  const Band free =
      band(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, Vector3d::Zero(), 0, &counting);
  EXPECT_EQ(free.most, posed.band(Vector3d::Zero(), 0).most);
  EXPECT_LE(counting.asked, 10);
}

// A range between two values of the search's grid, with the present angle far away.
TEST(Band, findsASliverBetweenWholeDegrees) {
  for (const double at : {2.3, -7.6}) {
    Posed posed{test::twoVertebrae(), {}};
    posed.specimen.joints[0].typed = anatomy::TypedLimits{
        {{{(at - 0.01) * kDegree, (at + 0.01) * kDegree}, {-1, 1}, {-1, 1}}}, anatomy::kProgramDefault};
    const Band band = posed.band({30 * kDegree, 0, 0}, 0);
    ASSERT_FALSE(band.empty) << at;
    EXPECT_NEAR(band.least / kDegree, at - 0.01, 0.001);
    EXPECT_NEAR(band.most / kDegree, at + 0.01, 0.001);
  }
}

TEST(Limits, areTheEndsOfTheThreeBands) {
  const Posed posed = likeBones();
  const Vector3d angles = Vector3d(2, -1, 0.5) * kDegree;
  const JointLimits limits = range::limits(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, angles);
  EXPECT_EQ(limits.joint, kOnlyJoint);
  EXPECT_TRUE(limits.judged);
  for (const Direction direction : kDirections) {
    const Band band = posed.band(angles, motionOf(direction));
    const bool upper = signOf(direction) > 0;
    EXPECT_TRUE(limits[direction].supported);
    EXPECT_EQ(limits[direction].angle, upper ? band.most : band.least) << toText(direction);
    EXPECT_EQ(limits[direction].stop, upper ? band.mostStop : band.leastStop) << toText(direction);
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
