#include "core/range/assumptions.h"

#include <gtest/gtest.h>

#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using anatomy::Region;

TEST(Cartilage, percentIsOfTheCaudalBonesCentrum) {
  const anatomy::Joint joint = test::jointOf({.centrumLength = 0.5});
  EXPECT_DOUBLE_EQ((Cartilage{Cartilage::In::PercentOfCentrum, 4.5}.thickness(joint)), 0.0225);
}

TEST(Cartilage, millimetresAreTheSameOnEveryCentrum) {
  const Cartilage cartilage{Cartilage::In::Millimetres, 12};
  EXPECT_DOUBLE_EQ(cartilage.thickness(test::jointOf({.centrumLength = 0.5})), 0.012);
  EXPECT_DOUBLE_EQ(cartilage.thickness(test::jointOf({.centrumLength = 0.1})), 0.012);
}

TEST(Cartilage, jointsWithoutCentraAndFusedOnesHaveNone) {
  const Cartilage cartilage{Cartilage::In::Millimetres, 12};
  anatomy::Joint jaw = test::jointOf({});
  jaw.centrumLength = 0;
  EXPECT_EQ(cartilage.thickness(jaw), 0);
  anatomy::Joint sacral = test::jointOf({});
  sacral.kind = anatomy::JointKind::Fixed;
  EXPECT_EQ(cartilage.thickness(sacral), 0);
}

TEST(Assumptions, cartilageGoesByRegion) {
  Assumptions assumptions;
  assumptions.neck.amount = 1;
  assumptions.trunk.amount = 2;
  assumptions.tail.amount = 3;
  EXPECT_EQ(assumptions.cartilageOf(Region::Skull).amount, 1);
  EXPECT_EQ(assumptions.cartilageOf(Region::Cervical).amount, 1);
  EXPECT_EQ(assumptions.cartilageOf(Region::Dorsal).amount, 2);
  EXPECT_EQ(assumptions.cartilageOf(Region::Caudal).amount, 3);
  EXPECT_EQ(assumptions.cartilageOf(Region::Hindlimb).amount, 0);
}

}  // namespace
}  // namespace zyga::range
