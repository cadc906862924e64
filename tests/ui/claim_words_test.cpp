#include "ui/words/claim_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/study/claims/claim_site.h"
#include "core/study/reach/extremes.h"
#include "tests/support/two_vertebrae.h"
#include "ui/words/ground_words.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"
#include "ui/words/stance_words.h"

namespace zyga::ui {
namespace {

using study::Bound;
using study::Claim;
using study::ClaimAnswer;
using study::ClaimKind;
using test::kDegree;
using testing::ElementsAre;

/// Numbers keep their unit on the same line; here a plain space is easier to read.
std::string plain(QString words) { return words.replace(QChar(0xA0), QLatin1Char(' ')).toStdString(); }
std::vector<std::string> plain(const QStringList& words) {
  std::vector<std::string> all;
  for (const QString& each : words) all.push_back(plain(each));
  return all;
}

range::Scenario scenarioOf(anatomy::Specimen specimen) {
  const kinematics::Pose neutral = kinematics::Pose::neutral(specimen);
  return {std::make_shared<const anatomy::Specimen>(std::move(specimen)), {}, neutral};
}

ClaimWords wordsOf(const Claim& claim, const ClaimAnswer& answer) {
  return claimWords(scenarioOf(test::twoVertebrae()), claim, answer);
}

TEST(ClaimWords, namesSayWhatIsClaimed) {
  const auto name = [](const Claim& claim) { return plain(claimName(claim)); };
  EXPECT_EQ(name({ClaimKind::HeadHeight, Bound::AtLeast, 8.5}), "Minimum head height 8.50 m");
  EXPECT_EQ(name({ClaimKind::NeckSlope, Bound::AtMost, 20 * kDegree}), "Neck inclination at most 20.0\u00B0");
  EXPECT_EQ(name({ClaimKind::NeckBaseSlope, Bound::AtLeast, 40 * kDegree}),
            "Neck base inclination at least 40.0\u00B0");
  EXPECT_EQ(name({ClaimKind::SnoutToGround, Bound::AtLeast, 2}),
            "Snout reaches the ground 2.00 m ahead of the forefeet");
  EXPECT_EQ(name({ClaimKind::HeadAhead, Bound::AtLeast, 3.25, 2}),
            "Head reaches a height of 3.25 m, 2.00 m ahead of the forefeet");
  EXPECT_EQ(name({ClaimKind::TailBaseLevel, Bound::AtLeast, 10 * kDegree}),
            "Tail base within 10.0\u00B0 of horizontal");
  EXPECT_EQ(plain(claimWithSource({ClaimKind::HeadHeight, Bound::AtLeast, 8.5, 0, "invented, 2020"})),
            "Minimum head height 8.50 m (invented, 2020)");
}

TEST(ClaimWords, anAnswerInFull) {
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 8.5};
  ClaimAnswer answer;
  answer.best = 7.91;
  answer.shortBy = 0.59;
  answer.minOverlap = 0.3187;
  answer.minCartilage = 12.41;
  answer.mostCartilage = study::kMaxCartilage;
  answer.joints = 14;
  answer.nearEdge = {test::kOnlyJoint};
  range::Stop overlap;
  overlap.why = range::Stop::Why::Criterion;
  overlap.kind = range::FindingKind::Overlap;
  overlap.limit = 0.5;
  answer.stopping = {{test::kOnlyJoint, 1, {test::kOnlyJoint, 0, 1, 7.1 * kDegree, overlap}, false}};
  answer.inGround = 0.123;
  const ClaimWords w = wordsOf(claim, answer);
  EXPECT_EQ(plain(w.claim), "Minimum head height 8.50 m");
  EXPECT_EQ(plain(w.verdict), "Out of range: the snout reaches 7.91 m at most, 0.59 m short.");
  EXPECT_THAT(plain(w.stops), ElementsAre("C6-C7 dorsiflexion 7.1\u00B0: zygapophyseal overlap 50 % on both sides"));
  EXPECT_THAT(plain(w.needs),
              ElementsAre("It would be within range with a minimum overlap of 31 % or less (now 50 %).",
                          "It would be within range with cartilage in the neck from 12.5 % of the centrum's length on "
                          "(now 0.0 %)."));
  EXPECT_THAT(plain(w.notes), ElementsAre("Joints near their limit in this pose: 1 of 14 that bend.",
                                          "Collisions between bones were not assessed.",
                                          "In this pose a part lies 123 mm in the ground."));
  answer.supported = true;
  answer.minCartilage = 0;
  const ClaimWords yes = wordsOf(claim, answer);
  EXPECT_EQ(plain(yes.verdict), "Within range: the snout reaches up to 7.91 m.");
  EXPECT_THAT(plain(yes.needs),
              ElementsAre("It stays within range up to a minimum overlap of 31 % (now 50 %).",
                          "It stays within range without cartilage in the neck and with any up to 40.0 % of the "
                          "centrum's length (now 0.0 %)."));
}

TEST(ClaimWords, theMarginOfAllRangesIsSaidInItsDirection) {
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 8.5};
  ClaimAnswer answer;
  answer.best = 7.91;
  answer.shortBy = 0.59;
  const auto last = [&] { return plain(wordsOf(claim, answer).needs.last()); };
  answer.margin = study::ClaimMargin{std::nullopt, 3.5 * kDegree};
  EXPECT_EQ(last(), "It would be within range with every joint's range widened by 3.5\u00B0 at either end.");
  answer.margin = study::ClaimMargin{};
  EXPECT_EQ(last(), "Not even every joint's range widened by 10.0\u00B0 at either end brings it within range.");
  answer.supported = true;
  EXPECT_THAT(last(), testing::HasSubstr("cartilage")) << "of a pose bent aside nothing is known";
  answer.margin = study::ClaimMargin{4 * kDegree, std::nullopt};
  EXPECT_EQ(last(), "It stays within range with every joint's range narrowed by up to 4.0\u00B0 at either end.");
  answer.margin = study::ClaimMargin{study::kMostMargin, std::nullopt};
  EXPECT_EQ(last(), "It stays within range even with every joint's range narrowed by 10.0\u00B0 at either end.");
  answer.margin = study::ClaimMargin{0, std::nullopt};
  EXPECT_EQ(last(), "It is out of range where every joint's range is narrowed by 0.5\u00B0 at either end.");
}

TEST(ClaimWords, dorsalsAndHabitualPosturesStandBesideTheAnswer) {
  ClaimAnswer answer;
  answer.best = 7.91;
  answer.shortBy = 0.59;
  study::ClaimDorsals dorsals;
  dorsals.joints = {test::kOnlyJoint};
  dorsals.best = 8.62;
  dorsals.gain = 0.71;
  dorsals.supported = true;
  dorsals.turned = {7.25 * kDegree};
  answer.dorsals = dorsals;
  study::ClaimHabit habit;
  habit.undeflected = 3.2;
  habit.extended = 8.75;
  habit.extendedShows = true;
  habit.share = 0.625;
  answer.habit = habit;
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 8.5};
  EXPECT_THAT(
      plain(wordsOf(claim, answer).beside),
      ElementsAre("With C6-C7 bending as well: 8.62 m instead of 7.91 m, within range; they turn by +7.3\u00B0 in "
                  "all.",
                  "Neck undeflected, habitual by Stevens 2013: 3.20 m, not as claimed.",
                  "Neck extended from its base, habitual by Taylor, Wedel & Naish 2009: 8.75 m, as claimed.",
                  "The claimed value lies at 63 % of the way from the undeflected neck to the most within "
                  "range."));
  answer.habit->extendedCollides = true;
  answer.habit->share = 1.2;
  answer.dorsals.reset();
  const auto fewer = plain(wordsOf({ClaimKind::NeckSlope, Bound::AtLeast, 1}, answer).beside);
  ASSERT_EQ(fewer.size(), 2u) << "past what is within range there is no share to tell";
  EXPECT_THAT(fewer[1], testing::EndsWith("as claimed; there bones collide."));
}

TEST(ClaimWords, aJointWithoutRangeIsNotAnswered) {
  ClaimAnswer answer;
  range::Stop overlap;
  overlap.why = range::Stop::Why::Criterion;
  overlap.kind = range::FindingKind::Overlap;
  overlap.limit = 0.5;
  answer.notAnswered = {{test::kOnlyJoint, 1, {test::kOnlyJoint, 0, 1, 0, overlap}, true}};
  const ClaimWords w = wordsOf({ClaimKind::HeadHeight, Bound::AtLeast, 8}, answer);
  EXPECT_EQ(plain(w.verdict),
            "Not answered: joint C6-C7 has no range, because of zygapophyseal overlap 50 % on both sides at every "
            "angle.");
  EXPECT_THAT(plain(w.stops), ElementsAre("C6-C7 at every angle: zygapophyseal overlap 50 % on both sides"));
  EXPECT_EQ(claimState(answer), "not answered");
  answer.notAnswered.push_back(answer.notAnswered.front());
  EXPECT_EQ(plain(wordsOf({ClaimKind::HeadHeight, Bound::AtLeast, 8}, answer).verdict),
            "Not answered: joints C6-C7, C6-C7 have no range.");
}

TEST(ClaimWords, bonesThatCollideAreNamed) {
  const Claim claim{ClaimKind::HeadHeight, Bound::AtLeast, 8.5};
  ClaimAnswer answer;
  answer.best = 7.91;
  answer.shortBy = 0.59;
  answer.contact.judged = answer.contact.onlyColliding = true;
  range::ContactFinding found;
  found.bone = {0};
  found.other = {1};
  found.parts = {{{0}, range::BonePart::Spine}, {{1}, range::BonePart::Spine}};
  found.depth = 0.012;
  found.tolerated = 0.005;
  answer.contact.findings = {found};
  const std::string bones = plain(contactWords(test::twoVertebrae(), found));
  EXPECT_EQ(plain(wordsOf(claim, answer).verdict),
            "Out of range: the snout reaches 7.91 m at most, 0.59 m short. Farther only with bones that collide: " +
                bones + ".");
  answer.shortBy = 0;
  EXPECT_EQ(plain(wordsOf(claim, answer).verdict), "Out of range: only with bones that collide: " + bones + ".");
  answer.contact.findings.assign(4, found);
  EXPECT_EQ(plain(wordsOf(claim, answer).verdict),
            "Out of range: only with bones that collide: " + bones + ", " + bones + " and 2 more.");
  answer.contact.onlyColliding = false;
  answer.contact.findings = {found};
  answer.shortBy = 0.59;
  EXPECT_THAT(plain(wordsOf(claim, answer).notes), testing::Contains("In this pose bones collide: " + bones + "."));
}

study::ClaimProbability sampled(int supported, int samples) {
  study::ClaimProbability p;
  p.options.samples = samples;
  p.supported = supported;
  p.probability = static_cast<double>(supported) / samples;
  const double a = supported + 1, b = samples - supported + 1;
  p.standardError = std::sqrt(a * b / (a + b + 1)) / (a + b);
  return p;
}

// So many figures as the number of samples bears, and never none or all.
TEST(ClaimWords, aProbabilityIsSaidInTheWordsOfTheGuideline) {
  const auto words = [](int supported, int samples) { return plain(probabilityWords(sampled(supported, samples))); };
  EXPECT_EQ(words(784, 1000), "Likely: within range in 78 % of 1000 samples.");
  EXPECT_EQ(words(500, 1000), "About as likely as not: within range in 50 % of 1000 samples.");
  EXPECT_EQ(words(784000, 1000000), "Likely: within range in 78.4 % of 1000000 samples.");
  EXPECT_EQ(words(78400, 100000), "Likely: within range in 78.4 % of 100000 samples.");
  EXPECT_EQ(words(0, 1000), "Exceptionally unlikely: within range in less than 1 % of 1000 samples.");
  EXPECT_EQ(words(1000, 1000), "Virtually certain: within range in more than 99 % of 1000 samples.");
  EXPECT_EQ(words(945, 1000), "Very likely: within range in 95 % of 1000 samples.");
  EXPECT_EQ(words(55, 1000), "Very unlikely: within range in 6 % of 1000 samples.");
  study::ClaimProbability none = sampled(0, 1000);
  none.failed = 1000;
  EXPECT_EQ(plain(probabilityWords(none)), "No probability: none of 1000 samples gave an answer.");
}

TEST(ClaimWords, samplesThatSayNothingAreCounted) {
  study::ClaimProbability p = sampled(400, 1000);
  EXPECT_TRUE(probabilityNotes(p).empty());
  p.notAnswered = 12;
  p.failed = 2;
  EXPECT_THAT(plain(probabilityNotes(p)),
              ElementsAre("Samples in which a joint had no range, left out: 12.",
                          "2 samples gave no animal that could be built and were left out."));
}

TEST(ClaimWords, whatTheSamplesVaryIsSaid) {
  study::ClaimProbability p = sampled(400, 1000);
  p.measures = p.contact = true;
  const std::string all = plain(probabilityBasis(p));
  EXPECT_THAT(all, testing::HasSubstr("measured 2 %, inferred 10 %"));
  EXPECT_THAT(
      all, testing::HasSubstr("minimum overlap from 0 % to 50 %, cartilage from 2.6 % to 6.9 % (rarely up to 24 %)"));
  EXPECT_THAT(all, testing::HasSubstr("Bones collide where those of the animal as it is do."));
  p.measures = false;
  p.options.varyAssumptions = p.options.varyDefinitions = p.contact = false;
  EXPECT_EQ(plain(probabilityBasis(p)),
            "Collisions between bones were not assessed. Words of likelihood: Mastrandrea et al. 2010, IPCC.");
}

TEST(ClaimWords, theTallyLeavesOutWhatThereIsNot) {
  EXPECT_EQ(plain(tallyWords({3, 8, 1, 2})),
            "3 measured, 8 partly measured, 1 inferred, 2 without facets (limits set by the program)");
  EXPECT_EQ(plain(tallyWords({0, 0, 14, 0})), "14 inferred");
  ClaimAnswer answer;
  answer.best = 1;
  EXPECT_EQ(wordsOf({ClaimKind::HeadHeight, Bound::AtLeast, 8}, answer).tally, "");
  answer.tally = {0, 9, 3, 2};
  EXPECT_EQ(plain(wordsOf({ClaimKind::HeadHeight, Bound::AtLeast, 8}, answer).tally),
            "Facets of the joints that bend: 9 partly measured, 3 inferred, 2 without facets (limits set by the "
            "program).");
  EXPECT_EQ(plain(evidenceWords(range::EvidenceClass::PartlyMeasured)), "partly measured");
}

TEST(ClaimWords, noneIsSaidAsNone) {
  ClaimAnswer answer;
  answer.best = 0.2;
  answer.shortBy = 0.1;
  const ClaimWords w = wordsOf({ClaimKind::TailBaseLevel, Bound::AtLeast, 0.1}, answer);
  EXPECT_THAT(plain(w.needs),
              ElementsAre("No minimum overlap alone brings it within range, however small.",
                          "No cartilage in the tail up to 40.0 % of the centrum's length alone brings it within "
                          "range."));
}

TEST(ClaimWords, whatIsMissedByAlmostNothingIsStillMissed) {
  ClaimAnswer answer;
  answer.best = 40 * kDegree;
  answer.shortBy = 0.01 * kDegree;
  EXPECT_EQ(plain(wordsOf({ClaimKind::NeckSlope, Bound::AtLeast, 40.01 * kDegree}, answer).verdict),
            "Out of range: the neck rises to 40.0\u00B0 and no farther, less than 0.1\u00B0 too flat.");
  answer.best = 8;
  answer.shortBy = 0.00001;
  EXPECT_EQ(plain(wordsOf({ClaimKind::HeadHeight, Bound::AtLeast, 8.00001}, answer).verdict),
            "Out of range: the snout reaches 8.00 m at most, less than 0.1 mm short.");
}

TEST(ClaimWords, aReachWithoutAnyPlaceSaysSo) {
  const Claim claim{ClaimKind::SnoutToGround, Bound::AtLeast, 2};
  ClaimAnswer answer;
  answer.shortBy = 1.25;
  EXPECT_EQ(plain(wordsOf(claim, answer).verdict),
            "Out of range: the snout stays 1.25 m short of that place. It does not come to the ground anywhere ahead "
            "of or beside the forefeet.");
  answer.best = 3;
  EXPECT_EQ(plain(wordsOf(claim, answer).verdict),
            "Out of range: the snout stays 1.25 m short of that place. The nearest place where it reaches the ground "
            "is 3.00 m ahead; nearer to the feet the neck cannot bend enough.");
}

TEST(ClaimWords, whatCannotBeAskedIsNotAnswered) {
  ClaimAnswer answer;
  answer.unanswerable = {study::kClaimNeedsSkull, {}};
  const ClaimWords w = wordsOf({ClaimKind::HeadHeight, Bound::AtLeast, 8}, answer);
  EXPECT_EQ(plain(w.verdict), "Not answered: the specimen has no skull.");
  EXPECT_TRUE(w.needs.empty());
  EXPECT_EQ(claimState(answer), "not answered");
  EXPECT_EQ(plain(say(study::validate({ClaimKind::HeadHeight, Bound::AtLeast, 31}))),
            "the value of a claim on head height must be from 0.00 m to 30.00 m");
}

TEST(ClaimWords, jointsThatNothingAssessesAreNamedUpToFour) {
  anatomy::Specimen specimen = test::twoVertebrae();
  specimen.joints.resize(6, specimen.joints.front());
  const range::Scenario scenario = scenarioOf(specimen);
  ClaimAnswer answer;
  answer.best = 1;
  const auto notes = [&](std::size_t count) {
    answer.notJudged.clear();
    for (std::size_t i = 0; i < count; ++i) answer.notJudged.push_back({i});
    return plain(claimWords(scenario, {ClaimKind::HeadHeight, Bound::AtLeast, 8}, answer).notes);
  };
  EXPECT_THAT(notes(2), testing::Contains("Not assessed, therefore left as posed: C6-C7, C6-C7."));
  EXPECT_THAT(notes(6), testing::Contains("Not assessed, therefore left as posed: C6-C7, C6-C7, C6-C7, C6-C7 and 2 "
                                          "more."));
}

study::StandingFoot footAt(kinematics::Foot foot, const Eigen::Vector2d& centre) {
  study::StandingFoot standing;
  standing.foot = foot;
  standing.soles = {{centre.x(), centre.y(), 0}};
  standing.centre = centre;
  return standing;
}

study::PlacedPrint printAt(kinematics::Foot foot, const Eigen::Vector2d& p_W, double heading = 0) {
  study::PlacedPrint print;
  print.label = isLeft(foot) ? "LP1" : "RP1";
  print.foot = foot;
  print.p_W = p_W;
  print.heading = heading;
  return print;
}

TEST(FootFitWords, sayWhereAFootLiesFromItsPrint) {
  using kinematics::Foot;
  // The print heads along world y: a foot at larger y is ahead, at smaller x to the left.
  std::vector<study::PlacedPrint> prints{printAt(Foot::LeftHind, {1, 1}, std::acos(0.0))};
  const auto left = study::fitFeet({footAt(Foot::LeftHind, {0.9, 1.3})}, prints);
  EXPECT_EQ(plain(footFitWords(left[0], prints)), "Left hind foot 300 mm ahead of and 100 mm left of LP1");
  prints = {printAt(Foot::RightHind, {0, 0})};
  const auto words = [&](const Eigen::Vector2d& centre) {
    return plain(footFitWords(study::fitFeet({footAt(Foot::RightHind, centre)}, prints)[0], prints));
  };
  EXPECT_EQ(words({0.004, 0}), "Right hind foot on RP1 (4 mm)");
  EXPECT_EQ(words({-0.12, 0.001}), "Right hind foot 120 mm behind RP1");
  EXPECT_EQ(words({0.001, -0.05}), "Right hind foot 50 mm right of RP1");
  EXPECT_EQ(words({-0.12, -0.05}), "Right hind foot 120 mm behind and 50 mm right of RP1");
  EXPECT_EQ(plain(footFitWords(study::fitFeet({footAt(Foot::LeftFore, {0, 0})}, prints)[0], prints)),
            "Left fore foot: no print");
  EXPECT_EQ(printName(prints[0]), "RP1");
  prints[0].ownRow = false;
  EXPECT_EQ(printName(prints[0]), "after RP1");
  EXPECT_EQ(words({0.004, 0}), "Right hind foot on the print after RP1 (4 mm)");
}

TEST(TrackwayWords, sayWhyPrintsStayOut) {
  EXPECT_EQ(say(reason::Reason(study::kPaceUnknown, {reason::text("RP2")})),
            "The prints after RP2 can't be laid: its pace is unknown.");
  EXPECT_EQ(say(reason::Reason(study::kPrintWithoutSide, {reason::text("nobody")})),
            "'nobody' can't be laid: its side is unknown.");
  EXPECT_EQ(say(study::kOwnHipRule), "own choice");
}

TEST(BalanceWords, sayWhereTheCentreOfMassLies) {
  using kinematics::Foot;
  study::Balance balance;
  EXPECT_EQ(plain(balanceWords(balance, {1, 0})), "Nothing touches the ground: no balance to tell.");
  EXPECT_EQ(plain(balanceInShort(balance)), "off the ground");
  balance.margin = 0.4123;
  balance.planted = {Foot::LeftHind, Foot::LeftFore, Foot::RightHind, Foot::RightFore};
  balance.p_WNearest = {0, 0.4};
  EXPECT_EQ(plain(balanceWords(balance, {1, 0})),
            "The centre of mass lies over the 4 planted feet, 412 mm inside the nearest edge, which is on the left.");
  balance.onTail = true;
  EXPECT_EQ(plain(balanceWords(balance, {0, 1})),
            "The centre of mass lies over the 4 planted feet and the tail, 412 mm inside the nearest edge, which is in "
            "front.");
  balance.onTail = false;
  balance.planted = {Foot::LeftFore, Foot::RightFore};
  balance.margin = -0.6;
  balance.p_WNearest = {0.6, 0};
  EXPECT_EQ(plain(balanceWords(balance, {1, 0})),
            "The centre of mass lies 600 mm outside the 2 planted feet, behind: the animal would tip over.");
}

TEST(BalanceWords, sayWhatTheTailCarries) {
  study::Balance balance;
  EXPECT_EQ(plain(tailLoadWords(balance)), "");
  balance.feetMargin = -0.312;
  balance.tailLoad = study::TailLoad{0.12, 0.38, 0.24};
  EXPECT_EQ(
      plain(tailLoadWords(balance)),
      "The tail carries 12 % to 38 % of the weight, 24 % with hind feet and tail loaded in their middles. Without "
      "the tail it would tip: the centre of mass lies 312 mm outside the feet.");
  balance.feetMargin = 0.05;
  balance.tailLoad = study::TailLoad{0, 0.2, std::nullopt};
  EXPECT_EQ(plain(tailLoadWords(balance)),
            "The tail carries 0 % to 20 % of the weight. The centre of mass lies over the feet alone too, 50 mm "
            "inside.");
}

TEST(MassWords, sayWhatTheyRestOn) {
  study::Densities densities;
  EXPECT_EQ(plain(hullFactorWords(densities)), "1.21");
  densities.hullFactors[3] = 1.5;
  EXPECT_EQ(plain(hullFactorWords(densities)), "1.21 to 1.50");
  EXPECT_EQ(plain(circumferenceErrorWords()), "mean error 25.63 %, not a bound: single animals lie farther off");
  EXPECT_THAT(plain(say(study::disagreement({1, 2, 3}, {40, 50, 60}))),
              testing::StartsWith("By volume at most 3 kg, by circumference at least 40 kg: the two do not overlap."));
  EXPECT_THAT(plain(say(study::disagreement({40, 50, 60}, {1, 2, 3}))),
              testing::StartsWith("By volume at least 40 kg, by circumference at most 3 kg: the two do not overlap."));
  EXPECT_THAT(plain(say(study::disagreement({7035, 8793, 10552}, {17736, 23849, 29961}))),
              testing::StartsWith("By volume at most 10.6 t, by circumference at least 17.7 t: the two"));
  study::BodyMass body;
  body.mass.mass = 900;
  body.p_WCentre = {1, 0, 1};
  body.p_WPartCentres[3] = {-2, 0, 1};
  body.ranges[3] = {50, 200, 300};
  // 100 kg more at 3 m behind, of 1000 kg then.
  EXPECT_EQ(plain(tailFleshWords(body, {2, 0})),
            "With the tail 50 % heavier, as the errors of its flesh and density allow, the centre of mass lies 300 mm "
            "farther back.");
  EXPECT_THAT(plain(tailFleshWords(body, {-1, 0})), testing::EndsWith("300 mm farther ahead."));
}

TEST(StanceWords, everyStanceHasANameAndAMeaning) {
  QStringList seen;
  for (const study::Stance stance : study::kStances) {
    EXPECT_FALSE(stanceMeaning(stance).isEmpty());
    EXPECT_FALSE(seen.contains(stanceName(stance))) << stanceName(stance).toStdString();
    seen << stanceName(stance);
  }
  EXPECT_EQ(plain(say(reason::Reason(study::kFootMisses, {study::termOf(kinematics::Foot::LeftFore),
                                                          reason::Quantity{0.032, reason::Unit::Length}}))),
            "The left fore foot misses its place by 32.0 mm.");
}

}  // namespace
}  // namespace zyga::ui
