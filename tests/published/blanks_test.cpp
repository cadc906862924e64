// B13. What stands in the blanks of a table, against what is published. Defaults only: any measured cell overrides
// them.
#include <gtest/gtest.h>

#include <numbers>

#include "core/anatomy/plan/build_specimen.h"

namespace zyga::anatomy {
namespace {

MeasurementTable ofPlan(BodyPlan plan) {
  MeasurementTable table;
  table.plan = plan;
  if (plan == BodyPlan::LowBrowser) table.counts = {15, 10, 5, 80};
  return fillBlanks(table);
}

double value(const MeasurementTable& table, BoneKind kind, int number, Measure measure) {
  return table.find({kind, number, 0, Side::Midline})->measures.value(measure);
}

/// Over the joints of the neck that have facets.
double meanLengthOverFacetHeight(const MeasurementTable& table) {
  double sum = 0;
  for (int k = 3; k <= table.counts.cervical; ++k) {
    sum += value(table, BoneKind::Cervical, k, Measure::Length) /
           value(table, BoneKind::Cervical, k, Measure::FacetHeight);
  }
  return sum / (table.counts.cervical - 2);
}

// Mean length of the centrum over height of the facets: Apatosaurus CM 3018 2.06 (Taylor 2014, PeerJ 2:e712, from the
// turns in its abstract, read), Diplodocus CM 84 3.25 (the same paper, from memory: it only bounds the other side).
// Both plans lie between, and the low browser, built as a diplodocid is, nearer to the second than the high browser.
TEST(PublishedBlanks, FacetHeightLiesBetweenTwoPublishedNecks) {
  const double high = meanLengthOverFacetHeight(ofPlan(BodyPlan::HighBrowser));
  const double low = meanLengthOverFacetHeight(ofPlan(BodyPlan::LowBrowser));
  EXPECT_GT(high, 2.06);
  EXPECT_LT(low, 3.25);
  EXPECT_GT(low, high);
}

// Angle between left and right prezygapophyseal facets of an alligator, MCZ 81457: 96 degrees at C5, 92.5 at V9, 147.5
// at V18 (data set of Jones et al. 2018, as computed from its landmarks; the meaning of its column is recalled). It
// opens towards the tail, and the plans follow it to a dozen degrees.
TEST(PublishedBlanks, FacetsOpenTowardsTheTail) {
  for (const BodyPlan plan : {BodyPlan::HighBrowser, BodyPlan::LowBrowser}) {
    const MeasurementTable table = ofPlan(plan);
    const auto opening = [&](BoneKind kind, int number) {
      return 180 - 2 * value(table, kind, number, Measure::FacetTilt) * 180 / std::numbers::pi;
    };
    EXPECT_NEAR(opening(BoneKind::Cervical, 5), 96, 12);
    EXPECT_NEAR(opening(BoneKind::Cervical, 9), 92.5, 12);
    EXPECT_NEAR(opening(BoneKind::Dorsal, table.counts.dorsal / 2), 147.5, 12);
    double before = opening(BoneKind::Cervical, 3);
    for (int k = 4; k <= table.counts.cervical + table.counts.dorsal; ++k) {
      const bool neck = k <= table.counts.cervical;
      const double here = opening(neck ? BoneKind::Cervical : BoneKind::Dorsal, neck ? k : k - table.counts.cervical);
      EXPECT_GE(here, before - 1e-9) << k;
      before = here;
    }
  }
}

}  // namespace
}  // namespace zyga::anatomy
