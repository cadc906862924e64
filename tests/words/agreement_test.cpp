// One question, one answer: what the strip draws and what the joint's sentence says are asked of a thousand invented
// scenarios, what a claim finds of two hundred and what the report prints of ten, and never disagree. Contact of bones
// is left out here: see WithContact.BandVerdictAndLimitsAgree.

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <numbers>
#include <random>
#include <sstream>

#include "core/anatomy/tables/measurement_table.h"
#include "core/files/project/project.h"
#include "core/kinematics/following.h"
#include "core/report/report.h"
#include "core/study/claims/claim_answer.h"
#include "core/study/claims/claim_site.h"
#include "core/study/reach/extremes.h"
#include "ui/words/claim_words.h"
#include "ui/words/range_words.h"

namespace zyga {
namespace {

using kinematics::JointIndex;
using kinematics::Pose;

constexpr int kScenarios = 500;    // of each sample
constexpr double kEnd = 1e-4;      // rad: ends are found to 1e-5
constexpr double kALittle = 0.01;  // m
constexpr int kClaims = 100;       // of those that a claim is put to; all thousand agreed when it was (2026-11-30)
constexpr int kReports = 5, kAsked = 1;  // scenarios that a report is made of, and with a claim in it

files::Project sample(const std::string& name) {
  std::stringstream text;
  text << std::ifstream(std::string(ZYGAPOSE_SOURCE_DIR) + "/samples/" + name + ".csv").rdbuf();
  return files::projectFromTable(anatomy::readMeasurementTable(text.str(), name + ".csv").table);
}

class ThousandScenarios : public testing::TestWithParam<const char*> {
 protected:
  const files::Project project_ = sample(GetParam());
  const range::Scenario neutral_ = files::scenarioOf(project_);
  std::mt19937 random_{1000};

  double between(double low, double high) { return std::uniform_real_distribution<double>(low, high)(random_); }

  range::Assumptions anyAssumptions() {
    range::Assumptions any;
    any.minOverlap = between(0, 0.6);
    any.overlapBy = between(0, 1) < 0.7 ? range::OverlapBy::Length : range::OverlapBy::Area;
    any.neutralBy = between(0, 1) < 0.5 ? range::NeutralBy::Facets : range::NeutralBy::FacetsAndCentra;
    any.neck.amount = any.trunk.amount = any.tail.amount = between(0, 1) < 0.3 ? 0 : between(0, 7);
    any.settling = between(0, 1) < 0.5 ? 0 : between(0.1, 0.5);
    any.facetContactTolerated *= between(0.5, 2);
    any.facetGapTolerated *= between(0.5, 2);
    return any;
  }

  /// Neck bent at random, mostly up and down, within what the joints support or somewhat past it.
  range::Scenario anyScenario() {
    const range::Scenario standing(neutral_.sharedSpecimen(), anyAssumptions(), neutral_.pose());
    const double most = between(0.2, 1.3), aside = between(0, 1) < 0.5 ? 0 : between(0, 0.4);
    Pose pose = standing.pose();
    for (const JointIndex joint : study::jointsOf(standing.specimen(), study::Chain::Neck)) {
      const auto& band = standing.motionRange(joint, 0);
      if (band.empty || !band.judged) continue;
      Eigen::Vector3d angles = Eigen::Vector3d::Zero();
      const double share = between(-most, most);
      angles = kinematics::withMotion(standing.specimen()[joint], standing.articulation()[joint], angles, 0,
                                      share * std::abs(share > 0 ? band.max : band.min));
      if (aside > 0)
        angles = kinematics::withMotion(standing.specimen()[joint], standing.articulation()[joint], angles, 1,
                                        aside * between(-1, 1) * standing.motionRange(joint, 1).max);
      pose[joint] = angles;
    }
    return standing.withPose(pose);
  }

  double snoutHeight(const range::Scenario& scenario, const study::ClaimSite& site) const {
    return (scenario.placement()[site.span.to.value] * site.span.p_To).z();
  }

  /// How many of the joints are past their range.
  static int beyond(const range::Scenario& scenario, const std::vector<JointIndex>& joints) {
    return static_cast<int>(std::count_if(joints.begin(), joints.end(), [&](JointIndex joint) {
      return scenario.assessment().find(joint)->level == range::Level::Beyond;
    }));
  }
};

INSTANTIATE_TEST_SUITE_P(Both, ThousandScenarios, testing::Values("high_browser", "low_browser"),
                         [](const auto& info) { return std::string(info.param).substr(0, 3); });

TEST_P(ThousandScenarios, BandAndSentenceAgree) {
  int outside = 0, inside = 0;
  for (int i = 0; i < kScenarios; ++i) {
    const range::Scenario scenario = anyScenario();
    const auto joints = study::jointsOf(scenario.specimen(), study::Chain::Neck);
    for (int k = 0; k < 3; ++k) {
      const JointIndex joint = joints[static_cast<std::size_t>(between(0, static_cast<double>(joints.size()) - 1e-9))];
      const range::JointVerdict& verdict = *scenario.assessment().find(joint);
      if (!verdict.judged) continue;
      const bool out = verdict.level == range::Level::Beyond;
      ++(out ? outside : inside);
      const std::string id = scenario.specimen()[joint].id;
      for (const int motion : {0, 1}) {
        const auto& band = scenario.motionRange(joint, motion);
        const double angle = scenario.pose()[joint][motion];
        if (!band.empty && std::min(std::abs(angle - band.min), std::abs(angle - band.max)) < kEnd) continue;
        EXPECT_EQ(band.holds(angle), !out) << i << " " << id << " motion " << motion;
      }
      const QString sentence = ui::verdictSentence(scenario, verdict);
      EXPECT_EQ(sentence.startsWith(QString::fromStdString(id) + " out of range: "), out) << sentence.toStdString();
    }
  }
  EXPECT_GT(outside, kScenarios / 10);
  EXPECT_GT(inside, kScenarios / 2);
}

TEST_P(ThousandScenarios, ClaimAndBandAgree) {
  int shown = 0, answered = 0;
  for (int i = 0; i < kClaims; ++i) {
    const range::Scenario scenario = anyScenario();
    study::Claim claim{study::ClaimKind::HeadHeight};
    const study::ClaimSite site = study::siteOf(scenario, claim);
    ASSERT_TRUE(site.missing.empty());
    // What a pose within range shows, is supported.
    const double height = snoutHeight(scenario, site);
    claim.value = height - 1e-6;
    if (!study::validate(claim).empty()) continue;
    study::ClaimOptions plain;
    plain.needs = false;
    const auto own = study::answerClaim(scenario, claim, plain).value();
    if (!own.answered()) continue;
    ++answered;
    if (beyond(scenario, site.joints) == 0) {
      EXPECT_TRUE(own.supported) << i;
      ++shown;
    }
    ASSERT_TRUE(own.best) << i;
    // A little under the highest is supported, and its pose is within every band.
    for (const bool over : {false, true}) {
      claim.value = *own.best + (over ? kALittle : -kALittle);
      const auto answer = study::answerClaim(scenario, claim, plain).value();
      EXPECT_EQ(answer.supported, !over) << i;
      const range::Scenario posed = scenario.withPose(answer.pose);
      EXPECT_EQ(beyond(posed, site.joints), 0) << i << (over ? " over" : " under");
      EXPECT_NEAR(snoutHeight(posed, site), over ? *own.best : claim.value, over ? 1e-6 : 1) << i;
      const QString said = ui::claimWords(scenario, claim, answer).verdict;
      EXPECT_EQ(said.startsWith("Within range"), answer.supported) << said.toStdString();
      // What stops it stands at an end of its band.
      for (const study::ClaimStop& stop : answer.stopping) {
        const auto& band = posed.motionRange(stop.joint, 0);
        const double angle = posed.pose()[stop.joint][0];
        EXPECT_LT(std::min(std::abs(angle - band.min), std::abs(angle - band.max)), kEnd)
            << i << " " << scenario.specimen()[stop.joint].id;
      }
      EXPECT_EQ(answer.stopping.empty(), answer.supported) << i;
    }
  }
  // A head that hangs under the ground, as it often does with little cartilage, makes no claim.
  EXPECT_GT(answered, kClaims / 3);
  EXPECT_GT(shown, kClaims / 20);
}

TEST_P(ThousandScenarios, ReportAgrees) {
  for (int i = 0; i < kReports; ++i) {
    const range::Scenario scenario = anyScenario();
    files::Project project = project_;
    project.assumptions = scenario.assumptions();
    project.claims.clear();
    study::Claim claim{study::ClaimKind::HeadHeight};
    claim.value = 7;
    if (i < kAsked) project.claims.push_back(claim);
    report::ReportOptions options;
    options.studies = false;
    const auto data = report::buildReport(scenario, project, "", options).value();
    const range::Scenario unbent = scenario.withPose(Pose::neutral(scenario.specimen()));
    ASSERT_FALSE(data.neckLimits.empty());
    for (const range::JointLimits& limits : data.neckLimits) {
      const auto& band = unbent.motionRange(limits.joint, 0);
      EXPECT_EQ(limits[range::Direction::Dorsal].supported, !band.empty);
      EXPECT_EQ(limits[range::Direction::Dorsal].angle, band.max) << scenario.specimen()[limits.joint].id;
      EXPECT_EQ(limits[range::Direction::Ventral].angle, band.min) << scenario.specimen()[limits.joint].id;
    }
    for (const report::AnsweredClaim& one : data.claims) {
      const auto alone = study::answerClaim(scenario, one.claim).value();
      EXPECT_EQ(one.answer->supported, alone.supported);
      EXPECT_EQ(one.answer->best, alone.best);
      EXPECT_EQ(static_cast<bool>(one.probability), alone.answered());
    }
    EXPECT_EQ(data.claims.size(), i < kAsked ? 1u : 0u);
  }
}

}  // namespace
}  // namespace zyga
