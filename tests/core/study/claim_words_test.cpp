#include "core/study/claims/claim_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/two_vertebrae.h"

namespace zyga::study {
namespace {

using test::kDegree;
using testing::ElementsAre;

ClaimWords words(const Claim& claim, const ClaimAnswer& answer, const range::Assumptions& assumptions = {}) {
  return claimWords(test::twoVertebrae(), assumptions, claim, answer);
}

TEST(ClaimWords, sentencesSayWhatIsClaimed) {
  EXPECT_EQ(sentence({ClaimKind::HeadHeight, Bound::AtLeast, 8.5}), "head at least 8.5 m high");
  EXPECT_EQ(sentence({ClaimKind::NeckSlope, Bound::AtMost, 20 * kDegree}), "neck at most 20° to the horizontal");
  EXPECT_EQ(sentence({ClaimKind::NeckBaseSlope, Bound::AtLeast, 40 * kDegree}),
            "neck base at least 40° to the horizontal");
  EXPECT_EQ(sentence({ClaimKind::SnoutToGround, Bound::AtLeast, 2}),
            "snout reaches the ground 2 m ahead of the forefeet");
  EXPECT_EQ(sentence({ClaimKind::HeadAhead, Bound::AtLeast, 3.25, 2}),
            "head reaches 3.25 m high, 2 m ahead of the forefeet");
  EXPECT_EQ(sentence({ClaimKind::TailBaseLevel, Bound::AtLeast, 10 * kDegree}), "tail base within 10° of level");
}

TEST(ClaimWords, usualClaimsMakeSense) {
  for (const ClaimKind kind : kClaimKinds) {
    EXPECT_EQ(traitsOf(kind).kind, kind);
    EXPECT_EQ(faultOf(usualClaim(kind)), "");
  }
}

TEST(ClaimWords, anAnswerInFull) {
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 8.5};
  ClaimAnswer answer;
  answer.best = 7.91;
  answer.shortBy = 0.59;
  answer.leastOverlap = 0.3187;
  answer.leastCartilage = 12.41;
  answer.mostCartilage = kMostCartilage;
  answer.joints = 14;
  answer.nearEdge = {test::kOnlyJoint};
  answer.stopping = {{test::kOnlyJoint, 1, "C6-C7 dorsiflexion 7.1°: both facets share 50 %"}};
  answer.inGround = 0.123;
  const ClaimWords w = words(claim, answer);
  EXPECT_EQ(w.claim, "Head at least 8.5 m high");
  EXPECT_EQ(w.verdict, "Not supported: the snout comes to 7.91 m at most, 0.59 m short.");
  EXPECT_THAT(w.stops, ElementsAre("C6-C7 dorsiflexion 7.1°: both facets share 50 %"));
  EXPECT_THAT(
      w.needs,
      ElementsAre(
          "It would be supported if the facets had to share no more than 31 % (now 50 %).",
          "It would be supported with cartilage in the neck from 12.5 % on of the centrum's length (now 0 %)."));
  EXPECT_THAT(w.notes, ElementsAre("1 of the 14 joints that bend is near the edge of its range.",
                                   "In this pose a part lies 123 mm in the ground."));
  answer.supported = true;
  answer.leastCartilage = 0;
  const ClaimWords yes = words(claim, answer);
  EXPECT_EQ(yes.verdict, "Supported: the snout comes up to 7.91 m.");
  EXPECT_THAT(yes.needs,
              ElementsAre("It holds for every rule of least overlap up to 31 % (now 50 %).",
                          "It holds without cartilage in the neck and with any up to 40 % of the centrum's length (now "
                          "0 %)."));
}

TEST(ClaimWords, noneIsSaidAsNone) {
  ClaimAnswer answer;
  answer.best = 0.2;
  answer.shortBy = 0.1;
  const ClaimWords w = words({ClaimKind::TailBaseLevel, Bound::AtLeast, 0.1}, answer);
  EXPECT_THAT(w.needs,
              ElementsAre("No overlap rule by itself makes it supported, even with facets that all but part.",
                          "No cartilage in the tail up to 40 % of the centrum's length by itself makes it supported."));
}

TEST(ClaimWords, aReachWithoutAnyPlaceSaysSo) {
  ClaimAnswer answer;
  answer.shortBy = 1.25;
  EXPECT_EQ(words({ClaimKind::SnoutToGround, Bound::AtLeast, 2}, answer).verdict,
            "Not supported: the snout stays 1.25 m short of that place. It does not come to the ground anywhere ahead "
            "of or beside the forefeet.");
  answer.best = 3;
  EXPECT_EQ(words({ClaimKind::SnoutToGround, Bound::AtLeast, 2}, answer).verdict,
            "Not supported: the snout stays 1.25 m short of that place. The nearest place where it reaches the ground "
            "is 3 m ahead; nearer to the feet the neck cannot bend enough.");
}

TEST(ClaimWords, whatCannotBeAskedIsNotAnswered) {
  ClaimAnswer answer;
  answer.unanswerable = "the specimen has no skull";
  const ClaimWords w = words({ClaimKind::HeadHeight, Bound::AtLeast, 8}, answer);
  EXPECT_EQ(w.verdict, "Not answered: the specimen has no skull.");
  EXPECT_TRUE(w.needs.empty());
}

}  // namespace
}  // namespace zyga::study
