#include "core/range/contact/contact.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "core/anatomy/plan/build_specimen.h"

namespace zyga::range {
namespace {

using Eigen::Isometry3f;
using Eigen::Vector3f;

/// A solid about the origin whose distance is known in closed form.
class Solid : public anatomy::SignedDistance {
 public:
  Estimate estimate(const Vector3f& p) const override { return {distance(p), distance(p) - 0.3F * voxel_}; }
  float reach() const override { return 8 * voxel_; }
  float resolution() const override { return voxel_; }
  const Eigen::AlignedBox3f& box() const override { return box_; }
  const std::vector<Vector3f>& surfacePoints() const override { return points_; }

 protected:
  Solid(const Vector3f& half, float voxel) : box_(-half, half), voxel_(voxel) {}
  Eigen::AlignedBox3f box_;
  float voxel_;
  std::vector<Vector3f> points_;
};

/// Points on it by the golden angle.
class Ball : public Solid {
 public:
  explicit Ball(float radius) : Solid(Vector3f::Constant(radius), 0.02F * radius), radius_(radius) {
    constexpr int kCount = 8000;
    for (int i = 0; i < kCount; ++i) {
      const float z = 1 - (2 * static_cast<float>(i) + 1) / kCount;
      const float turn = 2.39996323F * static_cast<float>(i), r = std::sqrt(1 - z * z);
      points_.push_back(radius * Vector3f(r * std::cos(turn), r * std::sin(turn), z));
    }
  }
  float distance(const Vector3f& p) const override { return p.norm() - radius_; }

 private:
  float radius_;
};

/// A box, or with one half small a plate. Points on a lattice on each face.
class Block : public Solid {
 public:
  Block(const Vector3f& half, float voxel) : Solid(half, voxel), half_(half) {
    const Eigen::Vector3i count = (half / voxel).array().ceil().cast<int>();
    for (int x = -count.x(); x <= count.x(); ++x) {
      for (int y = -count.y(); y <= count.y(); ++y) {
        for (int z = -count.z(); z <= count.z(); ++z) {
          const Eigen::Vector3i at(x, y, z);
          if ((at.cwiseAbs().array() < count.array()).all()) continue;
          points_.push_back(at.cast<float>().cwiseQuotient(count.cast<float>()).cwiseProduct(half));
        }
      }
    }
  }
  float distance(const Vector3f& p) const override {
    const Vector3f q = p.cwiseAbs() - half_;
    return q.cwiseMax(0).norm() + std::min(q.maxCoeff(), 0.0F);
  }

 private:
  Vector3f half_;
};

Isometry3f at(const Vector3f& p) { return Isometry3f(Eigen::Translation3f(p)); }

ContactShape ball(float radius, ContactZones zones = {}) {
  return ContactShape(std::make_shared<Ball>(radius), std::move(zones));
}
ContactShape block(const Vector3f& half, float voxel) { return ContactShape(std::make_shared<Block>(half, voxel)); }

// Depth or clearance of two balls is the distance of their centres less both radii; where the smaller lies in the
// larger, its deepest place is the one nearest to the larger's centre.
TEST(Contact, OfTwoBallsIsAsDeepAndWhereTheClosedFormSays) {
  const ContactShape a = ball(0.2F), b = ball(0.1F);
  const Vector3f way = Vector3f(1, 2, -2) / 3;
  for (const float apart : {0.05F, 0.22F, 0.26F, 0.2995F, 0.302F, 0.32F, 0.5F, 3.1F}) {
    const ContactMeeting met = contactDepth(a, b, at(way * apart));
    EXPECT_NEAR(met.distance, apart > 0.1F ? apart - 0.3F : 0.1F - apart - 0.2F, 0.004F) << apart;
    const Vector3f expected = way * (met.onA ? 0.2F : apart - 0.1F);
    EXPECT_TRUE(apart < 0.1F || (met.p_A - expected).norm() < 0.05F) << apart;
    EXPECT_NEAR(contactDepth(b, a, at(-way * apart)).distance, met.distance, 0.004F);
  }
}

TEST(Contact, OfABallWithABlockIsAsDeepAsTheClosedFormSays) {
  const Vector3f half(0.2F, 0.1F, 0.1F);
  const ContactShape a = block(half, 0.005F), b = ball(0.1F);
  // On a face, an edge and a corner of the block: how far the ball's centre is from it, less the radius.
  for (const Vector3f& direction : {Vector3f(0, 0, 1), Vector3f(0, 1, 1), Vector3f(1, 1, 1)}) {
    for (const float apart : {-0.04F, -0.01F, 0.001F, 0.01F, 0.1F, 1.0F}) {
      const Vector3f corner = half.cwiseProduct(direction);
      const Vector3f p = corner + direction.normalized() * (0.1F + apart);
      EXPECT_NEAR(contactDepth(a, b, at(p)).distance, apart, 0.005F) << direction.transpose() << ", " << apart;
    }
  }
}

// The plate's edge goes into the ball by 30 mm, and neither half of the plate's thickness hides that.
TEST(Contact, OfAThinPlateWithABallIsAsDeepAsItsEdgeReaches) {
  const ContactShape plate = block({0.1F, 0.1F, 0.0015F}, 0.005F), b = ball(0.1F);
  EXPECT_NEAR(contactDepth(plate, b, at({0.1F + 0.07F, 0, 0})).distance, -0.03F, 0.005F);
  EXPECT_NEAR(contactDepth(plate, b, at({0.1F + 0.13F, 0, 0})).distance, 0.03F, 0.005F);
}

TEST(Contact, SaysWhetherBallsTouch) {
  const ContactShape a = ball(0.2F), b = ball(0.1F);
  EXPECT_TRUE(touch(a, b, at({0.298F, 0, 0})));
  EXPECT_FALSE(touch(a, b, at({0.302F, 0, 0})));
  EXPECT_TRUE(touch(a, b, at({0, 0.01F, 0}))) << "one wholly inside the other";
}

TEST(Contact, LooksNoFartherThanAsked) {
  const ContactShape a = ball(0.2F), b = ball(0.1F);
  EXPECT_TRUE(std::isinf(contactDepth(a, b, at({0.35F, 0, 0}), 0.04F).distance));
  EXPECT_TRUE(std::isinf(contactDepth(a, b, at({0.28F, 0, 0}), -0.03F).distance));
  EXPECT_NEAR(contactDepth(a, b, at({0.28F, 0, 0}), -0.01F).distance, -0.02F, 0.004F);
  EXPECT_NEAR(contactDepth(a, b, at({0.02F, 0, 0}), 0.01F).distance, -0.12F, 0.004F) << "one wholly inside the other";
}

TEST(Contact, LeavesTheJointsOwnZoneOut) {
  const ContactZone zone{at({-0.2F, 0, 0}), Vector3f::Constant(0.15F), true};
  const ContactShape plain = ball(0.2F), zoned = ball(0.2F, {zone}), b = ball(0.1F);
  EXPECT_LT(contactDepth(plain, b, at({0.28F, 0, 0})).distance, -0.019F);
  EXPECT_GT(contactDepth(zoned, b, at({0.28F, 0, 0})).distance, 0) << "where the zoned bone comes first";
  EXPECT_GT(contactDepth(b, zoned, at({-0.28F, 0, 0})).distance, 0) << "where it comes second";
  EXPECT_FALSE(touch(zoned, b, at({0.28F, 0, 0})));
  EXPECT_LT(contactDepth(zoned, b, at({0, 0.28F, 0})).distance, -0.019F) << "elsewhere";
}

/// An animal of whose bones some are balls about the middle of their own frames.
class ContactOfAnAnimal : public testing::Test {
 protected:
  using Fields = std::vector<std::shared_ptr<const anatomy::SignedDistance>>;

  anatomy::BoneIndex bone(const char* id) const { return specimen_.findBone(id).value(); }
  ContactModel model(const std::vector<std::pair<const char*, float>>& balls) const {
    Fields fields(specimen_.bones.size());
    for (const auto& [id, radius] : balls) fields[bone(id).value] = std::make_shared<Ball>(radius);
    return {specimen_, fields};
  }
  kinematics::Placement neutral() const {
    return kinematics::forwardKinematics(specimen_, kinematics::restArticulation(specimen_),
                                         kinematics::Pose::neutral(specimen_));
  }

  anatomy::Specimen specimen_ = anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::MeasurementTable()));
};

TEST_F(ContactOfAnAnimal, OnlyPairsWithBothShapesAreJudged) {
  EXPECT_TRUE(model({}).pairs().empty());
  const ContactModel three = model({{"rib.D3.L", 0.1F}, {"rib.D4.L", 0.1F}, {"tibia.L", 0.1F}});
  ASSERT_EQ(three.pairs().size(), 1U);
  EXPECT_EQ(std::max(three.pairs()[0].a, three.pairs()[0].b), std::max(bone("rib.D3.L"), bone("rib.D4.L")));
}

TEST_F(ContactOfAnAnimal, TellsDepthPlaceAndBonesOfAContact) {
  const auto X_WB = neutral();
  const Eigen::Vector3d p = X_WB[bone("rib.D3.L").value].translation(), q = X_WB[bone("rib.D4.L").value].translation();
  const double apart = (p - q).norm();
  const auto radius = static_cast<float>(0.5 * apart + 0.006);
  const ContactModel two = model({{"rib.D3.L", radius}, {"rib.D4.L", radius}});
  Assumptions assumptions;
  assumptions.contactTolerated = {ContactTolerance::In::Millimetres, 5};
  const auto found = two.contacts(X_WB, assumptions);
  ASSERT_EQ(found.size(), 1U);
  EXPECT_NEAR(found[0].depth, 0.012, 0.02 * radius);
  EXPECT_EQ(found[0].level, Level::Beyond);
  EXPECT_LT((found[0].p_W - 0.5 * (p + q)).norm(), 0.3 * radius);
  EXPECT_EQ(found[0].tolerated, 0.005);
  EXPECT_EQ(found[0].parts, (TouchingParts{{found[0].bone, BonePart::Bone}, {found[0].other, BonePart::Bone}}));
  EXPECT_EQ(found[0].joint, specimen_.findJoint("D3-D4")) << "the ribs have grown onto D3 and D4";
  assumptions.contactTolerated.amount = 1000 * found[0].depth + 0.1;
  EXPECT_EQ(two.contacts(X_WB, assumptions).at(0).level, Level::Near);
  assumptions.contactTolerated.amount = 50;
  EXPECT_TRUE(two.contacts(X_WB, assumptions).empty());
}

// The cube about the smaller ball is as wide as the ball: a share of it for a joint and for the whole animal alike.
TEST_F(ContactOfAnAnimal, ToleratesAShareOfTheSmallerBone) {
  const auto X_WB = neutral();
  const double apart = (X_WB[bone("rib.D3.L").value].translation() - X_WB[bone("rib.D4.L").value].translation()).norm();
  const ContactModel two =
      model({{"rib.D3.L", static_cast<float>(0.8 * apart)}, {"rib.D4.L", static_cast<float>(0.4 * apart)}});
  for (const double percent : {3.0, 5.0}) {
    Assumptions assumptions;
    assumptions.contactTolerated = {ContactTolerance::In::PercentOfBone, percent};
    const double expected = percent * 0.01 * 0.8 * apart;
    EXPECT_NEAR(two.tolerated(0, assumptions.contactTolerated), expected, 0.01 * expected);
    EXPECT_EQ(two.contacts(X_WB, assumptions).at(0).tolerated, two.tolerated(0, assumptions.contactTolerated));
    const auto joint = specimen_.findJoint("D3-D4").value();
    const auto X_PD = kinematics::jointTransform(specimen_[joint], kinematics::restArticulation(specimen_)[joint],
                                                 Eigen::Vector3d::Zero());
    EXPECT_EQ(two.deepest(joint, X_PD, assumptions.contactTolerated).tolerated,
              two.tolerated(0, assumptions.contactTolerated));
  }
}

// Two pairs of one joint: the deeper one is of large bones, the other past what is tolerated of a small one.
TEST_F(ContactOfAnAnimal, AJointIsToldThePairFarthestPastItsTolerance) {
  const auto X_WB = neutral();
  const auto joint = specimen_.findJoint("D3-D4").value();
  const ContactModel both = model({{"rib.D3.L", 0.5F}, {"rib.D4.L", 0.5F}, {"rib.D3.R", 0.01F}, {"rib.D4.R", 0.5F}});
  const auto X_PD = kinematics::jointTransform(specimen_[joint], kinematics::restArticulation(specimen_)[joint],
                                               Eigen::Vector3d::Zero());
  const ContactPlace strict = both.deepest(joint, X_PD, {ContactTolerance::In::Millimetres, 0});
  const auto isLarge = [&](const ContactPlace& place) {
    return place.parts.first.bone == bone("rib.D3.L") || place.parts.second.bone == bone("rib.D3.L");
  };
  EXPECT_TRUE(isLarge(strict)) << "the deepest where all are granted the same";
  const double percent = 100 * strict.depth / 1.0;  // all of the large ones' depth
  const ContactPlace fair = both.deepest(joint, X_PD, {ContactTolerance::In::PercentOfBone, percent});
  EXPECT_FALSE(isLarge(fair));
  EXPECT_GT(fair.excess(), 0);
}

TEST_F(ContactOfAnAnimal, RaisesTheLevelOfAnAssessment) {
  const ContactModel large = model({{"rib.D3.L", 0.5F}, {"rib.D4.L", 0.5F}});
  Assessment assessment;
  judgeContact(large, neutral(), Assumptions{}, assessment);
  EXPECT_TRUE(assessment.contactJudged);
  EXPECT_EQ(assessment.level, Level::Beyond);
  ASSERT_EQ(assessment.contacts.size(), 1U);
}

// What a joint is told about itself is what the whole animal tells: C6 and C7 with nothing else moving.
TEST_F(ContactOfAnAnimal, TellsAJointItsOwnContactsAtAnyAngle) {
  const ContactModel two = model({{"rib.D3.L", 0.5F}, {"D4", 0.5F}});
  const auto joint = specimen_.findJoint("D3-D4").value();
  const auto articulation = kinematics::restArticulation(specimen_);
  kinematics::Pose pose = kinematics::Pose::neutral(specimen_);
  for (const double angle : {-0.1, 0.0, 0.2}) {
    pose[joint] = {angle, 0.5 * angle, 0};
    const auto X_WB = kinematics::forwardKinematics(specimen_, articulation, pose);
    const auto X_PD = kinematics::jointTransform(specimen_[joint], articulation[joint], pose[joint]);
    const ContactPlace place = two.deepest(joint, X_PD, {});
    EXPECT_NEAR(place.depth, -two.meetings(X_WB, std::numeric_limits<double>::infinity(), 0).at(0).distance, 1e-4);
    EXPECT_TRUE(place.parts.first.bone == bone("rib.D3.L") || place.parts.second.bone == bone("rib.D3.L"));
  }
  EXPECT_EQ(two.deepest(specimen_.findJoint("D4-D5").value(), Eigen::Isometry3d::Identity(), {}).depth, 0);
}

// Klein, Christian & Sander 2012, Biol. Lett. 8:1032 (abstract): long cervical ribs are ossified tendons.
TEST_F(ContactOfAnAnimal, LeavesTheShaftsOfCervicalRibsOutUnlessTheyAreScanned) {
  anatomy::Bone c6 = specimen_.bones[bone("C6").value];
  const ContactZones shafts = bendingRibs(c6);
  ASSERT_EQ(shafts.size(), 2U);
  for (const char* side : {".L", ".R"}) {
    const Eigen::Vector3d head = c6.landmark(std::string("parapophysis") + side);
    const Eigen::Vector3d tip = c6.landmark(std::string("ribTip") + side);
    EXPECT_FALSE(holds(shafts, head.cast<float>()));
    EXPECT_FALSE(holds(shafts, c6.landmark(std::string("diapophysis") + side).cast<float>()));
    for (const double along : {0.5, 0.8, 1.0}) EXPECT_TRUE(holds(shafts, (head + along * (tip - head)).cast<float>()));
  }
  for (const char* kept : {"caudalRim", "cranialRim", "caudal", "spineTop"})
    EXPECT_FALSE(holds(shafts, c6.landmark(kept).cast<float>())) << kept;
  for (const anatomy::Facet& facet : c6.facets) EXPECT_FALSE(holds(shafts, facet.centre.cast<float>()));
  c6.scanned = true;
  EXPECT_TRUE(bendingRibs(c6).empty()) << "a scan is evidence";
  EXPECT_TRUE(bendingRibs(specimen_.bones[bone("D1").value]).empty());
  EXPECT_TRUE(bendingRibs(specimen_.bones[bone("rib.D3.L").value]).empty());
}

// A ball at a rib's tip is not met by the rib's vertebra, but is by its scan.
TEST_F(ContactOfAnAnimal, ARibThatBendsDoesNotStopAnother) {
  const Eigen::Vector3d tip = specimen_.bones[bone("C6").value].landmark("ribTip.L");
  const auto depth = [&](bool scanned) {
    specimen_.bones[bone("C6").value].scanned = scanned;
    // As wide as the rib's own way, so that the tip lies inside it and in C8 alone.
    const ContactModel two = model({{"C6", static_cast<float>(tip.norm() + 0.01)}, {"C8", 0.02F}});
    EXPECT_EQ(two.pairs().size(), 1U);
    auto X_WB = neutral();
    X_WB[bone("C8").value].linear().setIdentity();
    X_WB[bone("C8").value].translation() = X_WB[bone("C6").value] * tip;
    return -two.meetings(X_WB, std::numeric_limits<double>::infinity(), 0).at(0).distance;
  };
  EXPECT_GT(depth(true), 0.02);
  EXPECT_LT(depth(false), 0.001);
}

TEST_F(ContactOfAnAnimal, HeadLimbsAndFeetAreInIt) {
  const auto pairs = contactPairs(specimen_);
  const auto has = [&](const char* a, const char* b) {
    const std::pair both(bone(a), bone(b));
    return std::any_of(pairs.begin(), pairs.end(), [&](const ContactPair& p) {
      return (p.a == both.first && p.b == both.second) || (p.a == both.second && p.b == both.first);
    });
  };
  for (const auto& [a, b] : std::vector<std::pair<const char*, const char*>>{{"skull", "C1"},
                                                                             {"jaw", "C2"},
                                                                             {"skull", "humerus.L"},
                                                                             {"skull", "metacarpal3.R"},
                                                                             {"jaw", "rib.D2.L"},
                                                                             {"humerus.R", "rib.D3.R"},
                                                                             {"femur.L", "rib.D10.L"},
                                                                             {"radius.L", "ulna.R"},
                                                                             {"tibia.L", "tibia.R"},
                                                                             {"metacarpal3.L", "metatarsal3.L"},
                                                                             {"metacarpal1.L", "metacarpal1.R"},
                                                                             {"metatarsal2.L", "metatarsal5.R"}})
    EXPECT_TRUE(has(a, b)) << a << " and " << b;
  EXPECT_FALSE(has("femur.L", "tibia.L")) << "neighbours across a limb's joint";
  EXPECT_FALSE(has("metacarpal3.L", "metatarsal3.R"));
}

// A hind foot set down in the forefoot before it: no single joint does that.
TEST_F(ContactOfAnAnimal, AHindFootInAForefootIsFound) {
  const ContactModel two = model({{"metacarpal3.L", 0.05F}, {"metatarsal3.L", 0.05F}});
  auto X_WB = neutral();
  EXPECT_TRUE(two.contacts(X_WB, {}).empty());
  X_WB[bone("metatarsal3.L").value] = X_WB[bone("metacarpal3.L").value];
  X_WB[bone("metatarsal3.L").value].translation().x() -= 0.08;
  const auto found = two.contacts(X_WB, {});
  ASSERT_EQ(found.size(), 1U);
  EXPECT_NEAR(found[0].depth, 0.02, 0.002);
  EXPECT_FALSE(found[0].joint.has_value());
  EXPECT_NEAR(found[0].tolerated, 0.001414, 1e-5)
      << "as fine as two shapes on grids of 1 mm tell: over 1.3 % of 100 mm";
}

TEST_F(ContactOfAnAnimal, TellsWhatOfAVertebraAPlaceBelongsTo) {
  const auto& c6 = specimen_.bones[bone("C6").value];
  EXPECT_EQ(partAt(c6, c6.landmark("spineTop")), BonePart::Spine);
  EXPECT_EQ(partAt(c6, c6.landmark("caudalRim")), BonePart::Centrum);
  EXPECT_EQ(partAt(c6, c6.landmark("ribTip.R")), BonePart::Rib);
  EXPECT_EQ(partAt(c6, c6.facets.front().centre), BonePart::Zygapophysis);
  const auto& scapula = specimen_.bones[bone("scapula.L").value];
  EXPECT_EQ(partAt(scapula, Eigen::Vector3d::Zero()), BonePart::Bone);
}

// A joint's level counts the contacts of its own bones and of what has grown onto them.
TEST_F(ContactOfAnAnimal, LevelsTheJointThatMovesTheBones) {
  const ContactModel two = model({{"rib.D3.L", 0.5F}, {"rib.D4.L", 0.5F}});
  const auto articulation = kinematics::restArticulation(specimen_);
  Assessment assessment = assess(specimen_, articulation, {}, kinematics::Pose::neutral(specimen_));
  judgeContact(two, neutral(), Assumptions{}, assessment);
  const JointVerdict* verdict = assessment.find(specimen_.findJoint("D3-D4").value());
  ASSERT_NE(verdict, nullptr);
  EXPECT_EQ(verdict->level, Level::Beyond);
  EXPECT_EQ(verdict->findings.at(0).kind, FindingKind::BoneContact);
  EXPECT_LT(assessment.find(specimen_.findJoint("D4-D5").value())->level, Level::Beyond);
}

}  // namespace
}  // namespace zyga::range
