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

}  // namespace
}  // namespace zyga::study
