#include "core/study/uncertainty/measurement_error.h"

#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <numbers>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"

namespace zyga::study {
namespace {

using anatomy::Cell;
using anatomy::CellOrigin;
using anatomy::FacetRole;
using anatomy::Measure;
using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;
constexpr int kDraws = 2000;

anatomy::MeasurementTable measuredSample() {
  std::stringstream text;
  text << std::ifstream(std::string(ZYGAPOSE_SOURCE_DIR) + "/samples/high_browser.csv").rdbuf();
  return anatomy::readMeasurementTable(text.str(), "high_browser.csv").table;
}

const Cell& cellOf(const anatomy::MeasurementTable& table, std::string_view id, Measure measure) {
  return table.find(*anatomy::parseBoneId(id))->measures[measure];
}

/// Root of the mean square of the differences from a cell's own value.
double deviation(const anatomy::MeasurementTable& table, const char* id, Measure measure,
                 const CellErrors& errors = {}) {
  double squares = 0;
  for (std::uint32_t i = 0; i < kDraws; ++i) {
    const double off =
        cellOf(withErrors(table, errors, Draw(7, i)), id, measure).value - cellOf(table, id, measure).value;
    squares += off * off / kDraws;
  }
  return std::sqrt(squares);
}

// Four standard errors of a standard deviation: 4 / sqrt(2 n).
const double kSlack = 4 / std::sqrt(2.0 * kDraws);

TEST(MeasurementErrors, ACellErrsByTheErrorItStates) {
  const auto table = anatomy::fillBlanks(measuredSample());
  const Cell& spread = cellOf(table, "C7", Measure::FacetSpread);
  ASSERT_GT(spread.standardError, 0.15 * spread.value) << "by the plan";
  // Sizes never fall below a fifth, three deviations are the most: neither moves this one by more than a percent.
  EXPECT_NEAR(deviation(table, "C7", Measure::FacetSpread) / spread.standardError, 1, kSlack + 0.02);
  CellErrors half;
  half.inferred /= 2;
  EXPECT_NEAR(deviation(table, "C7", Measure::FacetSpread, half) / spread.standardError, 0.5, kSlack);
  auto stated = table;
  stated.find(*anatomy::parseBoneId("C7"))->measures[Measure::Length].standardError = 0.050;
  EXPECT_NEAR(deviation(stated, "C7", Measure::Length) / 0.050, 1, kSlack + 0.02) << "so may a measured one";
  EXPECT_NEAR(deviation(table, "C7", Measure::Length) / (0.02 * 0.460), 1, kSlack + 0.02);
}

TEST(MeasurementErrors, FacetsThatWereInferredFromOneAnotherErrAsOne) {
  auto measured = measuredSample();
  measured.find(*anatomy::parseBoneId("C9"))->measures[Measure::PostzygHeight] = {0.2, CellOrigin::Measured, {}};
  const auto table = anatomy::fillBlanks(measured);
  ASSERT_EQ(cellOf(table, "C6", Measure::PostzygSpread).rule.by, anatomy::FillBy::MatesWith);
  ASSERT_EQ(cellOf(table, "C10", Measure::FacetHeight).rule.by, anatomy::FillBy::MatesWith);
  for (std::uint32_t i = 0; i < 20; ++i) {
    const auto other = withErrors(table, {}, Draw(3, i));
    EXPECT_DOUBLE_EQ(cellOf(other, "C6", Measure::PostzygSpread).value,
                     cellOf(other, "C7", Measure::FacetSpread).value);
    EXPECT_NE(cellOf(other, "C10", Measure::FacetHeight).value, cellOf(table, "C10", Measure::FacetHeight).value);
    const auto s = anatomy::buildSpecimen(other);
    const auto& c9 = s[*s.findBone("C9")];
    const auto& c10 = s[*s.findBone("C10")];
    EXPECT_NEAR((c9.facet(FacetRole::PostzygLeft)->centre - c9.landmark("caudal")).norm(),
                (c10.facet(FacetRole::PrezygLeft)->centre - c10.landmark("cranial")).norm(), 1e-9);
  }
}

// Turned off the arc about their own centres, both alike: they lie on each other at the turn that the cells of turn and
// wedge say, and their centres stay where they were but for the errors of their places.
TEST(MeasurementErrors, APitchThatNobodyMeasuredLeavesTheTurnOfTheJoint) {
  const auto table = anatomy::fillBlanks(measuredSample());
  CellErrors onlyPitch{0, 0, 0, CellErrors{}.inferredAngle};
  bool turned = false;
  for (std::uint32_t i = 0; i < 20; ++i) {
    const auto other = withErrors(table, onlyPitch, Draw(5, i));
    const auto s = anatomy::buildSpecimen(other), before = anatomy::buildSpecimen(table);
    const auto& c6 = s[*s.findBone("C6")];
    const auto& c7 = s[*s.findBone("C7")];
    const auto pitch = [](const Vector3d& slide) { return std::atan2(slide.z(), slide.x()); };
    const auto &prezyg = *c7.facet(FacetRole::PrezygLeft), &postzyg = *c6.facet(FacetRole::PostzygLeft);
    const double turn = turnOfFacets(c6.measures, c7.measures);
    EXPECT_NEAR(pitch(prezyg.slide) - pitch(postzyg.slide), turn, 1e-9);
    const auto lifted = [](double a) { return Eigen::AngleAxisd(-a, Vector3d::UnitY()).toRotationMatrix(); };
    EXPECT_TRUE((lifted(turn) * (postzyg.centre - c6.landmark("caudal")))
                    .isApprox(prezyg.centre - c7.landmark("cranial"), 1e-9));
    turned = turned || std::abs(pitch(prezyg.slide) - 0.5 * turn) > 5 * kDegree;
  }
  EXPECT_TRUE(turned);
}

TEST(MeasurementErrors, WithoutErrorsTheTableStaysAsItIs) {
  const auto table = anatomy::fillBlanks(measuredSample());
  const auto same = withErrors(table, {0, 0, 0, 0}, Draw(1, 1));
  ASSERT_EQ(same.rows.size(), table.rows.size());
  for (std::size_t i = 0; i < table.rows.size(); ++i) {
    for (int m = 0; m < anatomy::kMeasureCount; ++m) {
      const auto measure = static_cast<Measure>(m);
      const Cell &a = same.rows[i].measures[measure], &b = table.rows[i].measures[measure];
      EXPECT_NEAR(a.value, b.value, 1e-15 + 1e-15 * std::abs(b.value)) << toId(table.rows[i].name) << toText(measure);
      EXPECT_EQ(a.rule, b.rule) << toId(table.rows[i].name) << toText(measure);
    }
  }
}

}  // namespace
}  // namespace zyga::study
