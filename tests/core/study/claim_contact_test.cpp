// Claims on bones that may collide: a neck of three joints with balls for bones, whose meeting a pencil can follow.
#include "core/study/claims/claim_contact.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/range/contact/contact.h"
#include "core/study/claims/claim_book.h"
#include "tests/support/three_joint_neck.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::study {
namespace {

using Eigen::Vector3f;
using test::kDegree;

/// A ball whose distance is known in closed form.
class Ball final : public anatomy::SignedDistance {
 public:
  Ball(const Vector3f& centre, float radius)
      : centre_(centre), radius_(radius), box_(centre.array() - radius, centre.array() + radius) {
    constexpr int kCount = 20000;
    for (int i = 0; i < kCount; ++i) {
      const float z = 1 - (2 * static_cast<float>(i) + 1) / kCount;
      const float turn = 2.39996323F * static_cast<float>(i), r = std::sqrt(1 - z * z);
      points_.push_back(centre + radius * Vector3f(r * std::cos(turn), r * std::sin(turn), z));
    }
  }
  Estimate estimate(const Vector3f& p) const override { return {distance(p), distance(p) - 0.3F * resolution()}; }
  float distance(const Vector3f& p) const override { return (p - centre_).norm() - radius_; }
  float reach() const override { return 8 * resolution(); }
  float resolution() const override { return 0.01F * radius_; }
  const Eigen::AlignedBox3f& box() const override { return box_; }
  const std::vector<Vector3f>& surfacePoints() const override { return points_; }

 private:
  Vector3f centre_;
  float radius_;
  Eigen::AlignedBox3f box_;
  std::vector<Vector3f> points_;
};

constexpr double kTolerated = 0.010;  // m

/// The middle joint alone bends, by up to 60 degrees; bones D1, C2, C1, skull.
struct BallNeck {
  std::shared_ptr<const anatomy::Specimen> specimen;
  range::Scenario scenario;

  explicit BallNeck(std::vector<std::shared_ptr<const anatomy::SignedDistance>> fields) {
    test::ThreeJointNeck neck;
    neck.limits[1] = {-60 * kDegree, 60 * kDegree};
    specimen = std::make_shared<const anatomy::Specimen>(test::specimenOf(neck));
    range::Assumptions assumptions;
    assumptions.contactTolerated = {range::ContactTolerance::In::Millimetres, kTolerated * 1e3};
    scenario = {specimen, assumptions, test::poseOf(neck, *specimen),
                std::make_shared<const range::ContactModel>(*specimen, std::move(fields))};
  }
  ClaimAnswer ask(double height, const ClaimOptions& options = {.needs = false}) const {
    return answerClaim(scenario, {ClaimKind::HeadHeight, Bound::AtLeast, height}, options).value();
  }
};

/// The snout with the middle joint so far up.
double heightAt(double angle) { return 2 + 1.3 * std::sin(angle); }

/// The first angle at which something falls below a length.
template <class Length>
double angleWhere(const Length& lengthAt, double length) {
  double above = 0, below = 60 * kDegree;
  while (below - above > 1e-9) {
    const double middle = 0.5 * (above + below);
    (lengthAt(middle) < length ? below : above) = middle;
  }
  return above;
}

/// C2 carries a ball over its middle, C1 one over its hind end: they meet as the joint between them rises.
BallNeck neighbours() {
  return BallNeck({nullptr, std::make_shared<Ball>(Vector3f(0.5F, 0, 0.3F), 0.3F),
                   std::make_shared<Ball>(Vector3f(0.3F, 0, 0.3F), 0.3F), nullptr});
}
double neighboursMeetAt() {
  const auto apart = [](double angle) {
    const Eigen::Vector2d other(1 + 0.3 * std::cos(angle) - 0.3 * std::sin(angle),
                                0.3 * std::sin(angle) + 0.3 * std::cos(angle));
    return (other - Eigen::Vector2d(0.5, 0.3)).norm();
  };
  return angleWhere(apart, 0.6 - kTolerated);
}

TEST(ClaimContact, NeighboursThatMeetEndTheRange) {
  const BallNeck neck = neighbours();
  const double meet = neighboursMeetAt();
  ASSERT_GT(meet, 10 * kDegree);
  ASSERT_LT(meet, 50 * kDegree);
  const double height = heightAt(meet + 5 * kDegree);
  const ClaimAnswer answer = neck.ask(height);
  EXPECT_FALSE(answer.supported);
  EXPECT_TRUE(answer.answered());
  EXPECT_TRUE(answer.contact.judged);
  EXPECT_TRUE(answer.contact.onlyColliding);
  EXPECT_NEAR(answer.best.value(), heightAt(meet), 0.01);
  EXPECT_NEAR(answer.shortBy, height - *answer.best, 1e-12);
  ASSERT_EQ(answer.contact.findings.size(), 1u);
  const range::ContactFinding& found = answer.contact.findings.front();
  EXPECT_EQ(found.bone.value + found.other.value, 3u) << "C2 and C1";
  EXPECT_GT(found.depth, kTolerated);
  ASSERT_EQ(answer.stopping.size(), 1u);
  EXPECT_EQ(answer.stopping.front().stop.stop.kind, range::FindingKind::BoneContact);
  EXPECT_TRUE(collisionsOf(neck.scenario, siteOf(neck.scenario, {ClaimKind::HeadHeight}), answer.pose).empty())
      << "the nearest pose is one without collisions";
}

TEST(ClaimContact, WhatIsShownWithoutCollisionsIsWithinRange) {
  const BallNeck neck = neighbours();
  const ClaimAnswer answer = neck.ask(heightAt(neighboursMeetAt() - 5 * kDegree));
  EXPECT_TRUE(answer.supported);
  EXPECT_TRUE(answer.contact.judged);
  EXPECT_FALSE(answer.contact.onlyColliding);
  EXPECT_TRUE(answer.contact.findings.empty());
  EXPECT_NEAR(answer.best.value(), heightAt(neighboursMeetAt()), 0.01);
}

TEST(ClaimContact, WithoutShapesItIsNotJudged) {
  const BallNeck neck = neighbours();
  const range::Scenario bare = neck.scenario.withContact(nullptr);
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, heightAt(neighboursMeetAt() + 5 * kDegree)};
  const ClaimAnswer answer = answerClaim(bare, claim, {.needs = false}).value();
  EXPECT_TRUE(answer.supported);
  EXPECT_FALSE(answer.contact.judged);
  // The book does not mix the two up.
  ClaimBook book;
  EXPECT_TRUE(book.answer(bare, claim)->supported);
  EXPECT_FALSE(book.answer(neck.scenario, claim)->supported);
  EXPECT_EQ(book.size(), 2u);
}

// C2 and the skull are two joints apart, so that no joint's own range knows of their meeting.
TEST(ClaimContact, BonesThatSeveralJointsMoveCountAsWell) {
  const BallNeck neck({nullptr, std::make_shared<Ball>(Vector3f(0, 0, 0), 0.85F), nullptr,
                       std::make_shared<Ball>(Vector3f(0, 0, 0), 0.85F)});
  const auto apart = [](double angle) { return std::sqrt(1 + 0.64 + 1.6 * std::cos(angle)); };
  const double meet = angleWhere(apart, 1.7 - kTolerated);
  ASSERT_LT(meet, 50 * kDegree);
  const ClaimAnswer high = neck.ask(heightAt(meet + 5 * kDegree));
  EXPECT_FALSE(high.supported);
  EXPECT_TRUE(high.contact.onlyColliding);
  EXPECT_NEAR(high.best.value(), heightAt(meet), 0.01) << "the joints between them give way";
  ASSERT_EQ(high.stopping.size(), 1u);
  EXPECT_EQ(high.stopping.front().stop.stop.kind, range::FindingKind::BoneContact);
  ASSERT_EQ(high.contact.findings.size(), 1u);
  EXPECT_EQ(high.contact.findings.front().bone.value + high.contact.findings.front().other.value, 4u);
  const ClaimAnswer low = neck.ask(heightAt(meet - 5 * kDegree));
  EXPECT_TRUE(low.supported);
  EXPECT_TRUE(low.contact.findings.empty());
  EXPECT_NEAR(low.best.value(), heightAt(meet), 0.01);
  // Samples that do not vary say the same.
  ProbabilityOptions options;
  options.varyMeasures = options.varyAssumptions = options.varyDefinitions = false;
  for (const double more : {-2 * kDegree, 2 * kDegree}) {
    const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, heightAt(meet + more)};
    EXPECT_EQ(claimProbability(neck.scenario, claim, {}, options)->probability, more < 0 ? 1 : 0);
  }
}

// Samples that do not vary say what the answer says, contact included.
TEST(ClaimContact, SamplesKeepTheShapesOfTheBones) {
  const BallNeck neck = neighbours();
  ProbabilityOptions options;
  options.varyMeasures = options.varyAssumptions = options.varyDefinitions = false;
  const auto probabilityOf = [&](double angle) {
    return claimProbability(neck.scenario, {ClaimKind::HeadHeight, Bound::AtLeast, heightAt(angle)}, {}, options)
        .value();
  };
  EXPECT_EQ(probabilityOf(neighboursMeetAt() + 2 * kDegree).probability, 0);
  EXPECT_EQ(probabilityOf(neighboursMeetAt() - 2 * kDegree).probability, 1);
  EXPECT_TRUE(probabilityOf(0.1).contact);
}

// The ends are told from faces of the centra parallel: cartilage, which turns neutral, does not move them.
TEST(ClaimContact, EndsStayWhereTheyAreWhenNeutralMoves) {
  const BallNeck neck = neighbours();
  const ClaimSite site = siteOf(neck.scenario, {ClaimKind::HeadHeight});
  const ContactEnds ends(neck.scenario, site, neck.scenario.assumptions());
  kinematics::Articulation turned = neck.scenario.articulation();
  const kinematics::JointIndex joint{1};
  const double pitch = 7 * kDegree;
  turned.rests[joint.value].rotation =
      turned.rests[joint.value].rotation * Eigen::AngleAxisd(pitch, (*neck.specimen)[joint].axes[0]).toRotationMatrix();
  range::MotionRange whole;
  whole.min = -1;
  whole.max = 1;
  const double before = ends.cut(*neck.specimen, neck.scenario.articulation(), joint, whole).max;
  EXPECT_NEAR(before, neighboursMeetAt(), 0.01);
  EXPECT_NEAR(ends.cut(*neck.specimen, turned, joint, whole).max, before - pitch, 1e-9);
  whole.min = before + 0.1;
  const range::MotionRange none = ends.cut(*neck.specimen, neck.scenario.articulation(), joint, whole);
  EXPECT_TRUE(none.empty);
  EXPECT_EQ(none.maxStop.kind, range::FindingKind::BoneContact);
}

}  // namespace
}  // namespace zyga::study
