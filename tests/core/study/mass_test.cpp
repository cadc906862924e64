#include "core/study/mass/mass.h"

#include <gtest/gtest.h>

namespace zyga::study {
namespace {

TEST(MassFromCircumferences, IsAlwaysARange) {
  const auto mass = massFromCircumferences(0.4, 0.5);
  EXPECT_NEAR(mass.low / mass.mass, 1 - 0.2563, 1e-12);
  EXPECT_NEAR(mass.high / mass.mass, 1 + 0.2563, 1e-12);
}

TEST(MassFromCircumferences, GoesWithTheirSum) {
  EXPECT_NEAR(massFromCircumferences(0.4, 0.5).mass, massFromCircumferences(0.1, 0.8).mass, 1e-6);
}

TEST(MassFromCircumferences, RefusesWhatIsNoCircumference) {
  EXPECT_THROW(massFromCircumferences(0, 0.5), reason::Failure);
  EXPECT_THROW(massFromCircumferences(0.4, -0.5), reason::Failure);
}

TEST(MassFromHulls, IsAlwaysARange) {
  const auto mass = massFromHulls(2, 900);
  EXPECT_NEAR(mass.mass, 2 * 1.21 * 900, 1e-9);
  EXPECT_NEAR(mass.low, 0.8 * mass.mass, 1e-9);
  EXPECT_NEAR(mass.high, 1.2 * mass.mass, 1e-9);
}

TEST(MassFromHulls, GoesWithItsFactor) {
  EXPECT_NEAR(massFromHulls(2, 900, 1.5).mass / massFromHulls(2, 900).mass, 1.5 / 1.21, 1e-12);
}

TEST(Disagreement, IsToldWhereRangesDoNotOverlapAndOnWhichSide) {
  using reason::Quantity, reason::Unit;
  const MassRange light{800, 1000, 1200}, heavy{1300, 1750, 2200};
  EXPECT_EQ(disagreement(light, heavy),
            reason::Reason(kVolumeBelowCircumference, {Quantity{1200, Unit::Mass}, Quantity{1300, Unit::Mass}}));
  EXPECT_EQ(disagreement(heavy, light),
            reason::Reason(kVolumeAboveCircumference, {Quantity{1300, Unit::Mass}, Quantity{1200, Unit::Mass}}));
  EXPECT_TRUE(disagreement(light, {1200, 1600, 2000}).empty()) << "they touch";
  EXPECT_TRUE(disagreement(light, light).empty());
}

}  // namespace
}  // namespace zyga::study
