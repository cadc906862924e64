#include "core/study/uncertainty/spread.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/summary.h"
#include "core/kinematics/standing.h"
#include "core/range/neutral.h"

namespace zyga::study {
namespace {

using anatomy::BoneKind;
using anatomy::CellOrigin;
using anatomy::Measure;

constexpr double kNinetyFive = 1.6448536269514722;  // standard normal quantile of 0.95

// Philox 4x32-10 against the known answers published with the generator (Random123, kat_vectors).
TEST(Draws, PhiloxGivesTheKnownAnswers) {
  using Four = std::array<std::uint32_t, 4>;
  EXPECT_EQ(philox({0, 0, 0, 0}, {0, 0}), (Four{0x6627e8d5, 0xe169c58d, 0xbc57ac4c, 0x9b00dbd8}));
  EXPECT_EQ(philox({0xffffffff, 0xffffffff, 0xffffffff, 0xffffffff}, {0xffffffff, 0xffffffff}),
            (Four{0x408f276d, 0x41c83b0e, 0xa20bc7c6, 0x6d5451fd}));
  EXPECT_EQ(philox({0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344}, {0xa4093822, 0x299f31d0}),
            (Four{0xd16cfe09, 0x94fdcceb, 0x5001e420, 0x24126ea1}));
}

// The test values that come with algorithm AS 241 (Wichura 1988, Appl. Statist. 37:477).
TEST(Draws, NormalQuantilesAreThePublishedOnes) {
  EXPECT_NEAR(normalQuantile(0.25), -0.6744897501960817, 1e-15);
  EXPECT_NEAR(normalQuantile(0.001), -3.090232306167814, 1e-14);
  EXPECT_NEAR(normalQuantile(1e-20), -9.262340089798408, 1e-13);
  EXPECT_NEAR(normalQuantile(0.95), kNinetyFive, 1e-14);
  EXPECT_EQ(normalQuantile(0.5), 0);
}

// The inverse of the normal distribution that the standard library's error function gives.
TEST(Draws, NormalQuantileInvertsTheDistribution) {
  for (double p = 0.0005; p < 1; p += 0.0101) {
    EXPECT_NEAR(0.5 * std::erfc(-normalQuantile(p) / std::sqrt(2)), p, 1e-14);
  }
}

TEST(Draws, StreamsAndNumbersAreUncorrelatedAndEven) {
  double mean = 0, square = 0, cross = 0;
  constexpr int kDraws = 20000;
  for (std::uint32_t i = 0; i < kDraws; ++i) {
    const Draw draw(42, i);
    const double a = draw.normal(1), b = draw.normal(2);
    mean += a / kDraws;
    square += a * a / kDraws;
    cross += a * b / kDraws;
  }
  // Four standard errors.
  EXPECT_NEAR(mean, 0, 4 / std::sqrt(kDraws));
  EXPECT_NEAR(square, 1, 4 * std::sqrt(2.0 / kDraws));
  EXPECT_NEAR(cross, 0, 4 / std::sqrt(kDraws));
}

// Definition 7 of Hyndman & Fan 1996, worked by hand: between the values at place 1 + (n - 1) p.
TEST(Quantiles, LieBetweenTheNearestDraws) {
  EXPECT_DOUBLE_EQ(quantile({1, 2, 4, 8}, 0.5), 3);
  EXPECT_DOUBLE_EQ(quantile({1, 2, 4, 8}, 0.95), 4 + 0.85 * 4);
  EXPECT_DOUBLE_EQ(quantile({5}, 0.05), 5);
  const Quantiles q = quantilesOf({8, 1, 4, 2});
  EXPECT_DOUBLE_EQ(q.q50, 3);
  EXPECT_DOUBLE_EQ(q.mean, 3.75);
  EXPECT_NEAR(q.deviation, std::sqrt((7.5625 + 3.0625 + 0.0625 + 18.0625) / 3), 1e-12);
}

// A linear function of normal errors is normal: 2 a + 3 b + 5 with deviations 0.3 and 0.1.
TEST(Quantiles, OfALinearFunctionOfNormalErrorsAreThoseOfTheNormal) {
  std::vector<double> values;
  constexpr int kDraws = 40000;
  for (std::uint32_t i = 0; i < kDraws; ++i) {
    const Draw draw(2, i);
    values.push_back(5 + 2 * 0.3 * draw.normal(10) + 3 * 0.1 * draw.normal(11));
  }
  const double deviation = std::hypot(0.6, 0.3);
  const Quantiles q = quantilesOf(values);
  // Three standard errors of a sample quantile: sqrt(p (1 - p) / n) / density.
  const double tail = 3 * std::sqrt(0.05 * 0.95 / kDraws) / (0.10313564 / deviation);
  EXPECT_NEAR(q.q50, 5, 3 * std::sqrt(0.25 / kDraws) / (0.39894228 / deviation));
  EXPECT_NEAR(q.q05, 5 - kNinetyFive * deviation, tail);
  EXPECT_NEAR(q.q95, 5 + kNinetyFive * deviation, tail);
}

class SampleSpread : public testing::Test {
 protected:
  static anatomy::MeasurementTable filledTable() {
    std::stringstream text;
    text << std::ifstream(std::string(ZYGAPOSE_SOURCE_DIR) + "/samples/high_browser.csv").rdbuf();
    return anatomy::fillBlanks(anatomy::readMeasurementTable(text.str(), "high_browser.csv").table);
  }
  SpreadStudy spreadWith(const SpreadOptions& options) const {
    return spread(scenario(), table_, anatomy::buildSpecimen, options).value();
  }
  range::Scenario scenario() const {
    return {std::make_shared<const anatomy::Specimen>(specimen_), assumptions_, articulation_, pose_};
  }
  const Quantiles& of(const SpreadStudy& s, SpreadOf what) const { return s.quantiles[static_cast<std::size_t>(what)]; }

  anatomy::MeasurementTable table_ = filledTable();
  anatomy::Specimen specimen_ = anatomy::buildSpecimen(table_);
  range::Assumptions assumptions_;
  kinematics::Articulation articulation_ = range::articulate(specimen_, assumptions_);
  kinematics::Pose pose_ = kinematics::stand(specimen_, articulation_, kinematics::Pose::neutral(specimen_));
};

// Neck length is a sum of lengths: measured ones err each by itself, inferred ones together, so that the variance is
// the sum of squares of the one and the square of the sum of the other.
TEST_F(SampleSpread, NeckLengthIsTheClosedForm) {
  SpreadOptions options;
  options.draws = 300;
  options.varyAssumptions = false;
  const SpreadStudy s = spreadWith(options);
  double alone = 0, together = 0, length = 0;
  for (const auto& row : table_.rows) {
    if (row.name.kind != BoneKind::Cervical) continue;
    const auto& cell = row.measures[Measure::Length];
    length += cell.value;
    if (cell.measured()) alone += std::pow(options.errors.measured * cell.value, 2);
    if (!cell.measured()) together += options.errors.inferred * cell.value;
  }
  const double deviation = std::sqrt(alone + together * together);
  const Quantiles& q = of(s, SpreadOf::NeckLength);
  EXPECT_NEAR(s.asIs[0], length, 1e-12);
  // Four standard errors.
  EXPECT_NEAR(q.q50, length, 4 * 1.2533 * deviation / std::sqrt(300));
  EXPECT_NEAR(q.q95, length + kNinetyFive * deviation, 4 * 2.113 * deviation / std::sqrt(300));
  EXPECT_NEAR(q.q05, length - kNinetyFive * deviation, 4 * 2.113 * deviation / std::sqrt(300));
  EXPECT_EQ(s.failed, 0);
}

TEST_F(SampleSpread, WithoutErrorsEveryDrawIsTheAnimalItself) {
  SpreadOptions options;
  options.draws = 5;
  options.errors = {0, 0, 0, 0};
  options.varyAssumptions = false;
  const SpreadStudy s = spreadWith(options);
  ASSERT_EQ(s.draws.size(), 5u);
  for (const SpreadDraw& draw : s.draws) {
    for (std::size_t i = 0; i < kSpreads.size(); ++i) EXPECT_NEAR(draw.values[i], s.asIs[i], 1e-9) << i;
  }
  EXPECT_EQ(s.supportedShare, 1) << "neutral is supported";
}

TEST_F(SampleSpread, SameSeedSameNumbersOnAnyNumberOfThreads) {
  SpreadOptions options;
  options.draws = 12;
  options.threads = 1;
  const SpreadStudy one = spreadWith(options);
  options.threads = 4;
  const SpreadStudy four = spreadWith(options);
  for (std::size_t i = 0; i < one.draws.size(); ++i) EXPECT_EQ(one.draws[i].values, four.draws[i].values);
  options.seed = 2;
  EXPECT_NE(spreadWith(options).draws[0].values, one.draws[0].values);
}

TEST_F(SampleSpread, MoreErrorSpreadsMoreAndAssumptionsSpreadByThemselves) {
  SpreadOptions options;
  options.draws = 80;
  options.varyAssumptions = false;
  options.errors = {0.005, 0.01, 0, 0};
  const double usual = of(spreadWith(options), SpreadOf::HighestSnout).deviation;
  options.errors = {0.01, 0.02, 0, 0};
  EXPECT_NEAR(of(spreadWith(options), SpreadOf::HighestSnout).deviation / usual, 2, 0.3) << "small errors act linearly";
  options.errors = {0, 0, 0, 0};
  options.varyAssumptions = true;
  const SpreadStudy assumed = spreadWith(options);
  EXPECT_GT(of(assumed, SpreadOf::HighestSnout).deviation, 0.01);
  EXPECT_NEAR(of(assumed, SpreadOf::NeckLength).deviation, 0, 1e-12);
}

TEST_F(SampleSpread, ShareAtLeastCountsTheDraws) {
  SpreadOptions options;
  options.draws = 40;
  const SpreadStudy s = spreadWith(options);
  const Quantiles& q = of(s, SpreadOf::HighestSnout);
  EXPECT_EQ(s.shareAtLeast(SpreadOf::HighestSnout, q.q05 - 10), 1);
  EXPECT_EQ(s.shareAtLeast(SpreadOf::HighestSnout, q.q95 + 10), 0);
  EXPECT_NEAR(s.shareAtLeast(SpreadOf::HighestSnout, q.q50), 0.5, 1.0 / 40);
}

TEST_F(SampleSpread, CountsDrawsThatGiveNoAnimal) {
  SpreadOptions options;
  options.draws = 6;
  int built = 0;
  const Builder refuses = [&](const anatomy::MeasurementTable& table) {
    if (++built % 2 == 0) throw std::invalid_argument("no such animal");
    return anatomy::buildSpecimen(table);
  };
  options.threads = 1;
  const SpreadStudy s = spread(scenario(), table_, refuses, options).value();
  EXPECT_EQ(s.failed, 3);
  EXPECT_EQ(s.draws.size(), 3u);
}

TEST_F(SampleSpread, CancelledGivesNothing) {
  const std::atomic<bool> cancel = true;
  EXPECT_FALSE(spread(scenario(), table_, anatomy::buildSpecimen, {}, task::Task(&cancel)));
}

// Mirrored bones err with the bone they were mirrored from, condyles stay in proportion.
TEST_F(SampleSpread, WhatHangsTogetherErrsTogether) {
  const auto other = withErrors(table_, {}, Draw(3, 0));
  for (std::size_t i = 0; i < table_.rows.size(); ++i) {
    const auto& before = table_.rows[i];
    const auto& after = other.rows[i];
    const auto& whole = before.measures[Measure::LengthWithCondyle];
    if (whole.known() && before.measures[Measure::Length].known()) {
      EXPECT_NEAR(after.measures.value(Measure::LengthWithCondyle) / after.measures.value(Measure::Length),
                  whole.value / before.measures.value(Measure::Length), 1e-12);
    }
    const auto& length = before.measures[Measure::Length];
    if (length.origin != CellOrigin::Mirrored) continue;
    const auto* twin = other.find(mirrored(before.name));
    EXPECT_NEAR(after.measures.value(Measure::Length), twin->measures.value(Measure::Length), 1e-12)
        << toId(before.name);
  }
}

}  // namespace
}  // namespace zyga::study
