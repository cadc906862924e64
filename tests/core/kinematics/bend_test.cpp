#include "core/kinematics/bend.h"

#include <gtest/gtest.h>

#include "core/anatomy/plan/build_specimen.h"

namespace zyga::kinematics {
namespace {

using anatomy::Specimen;
using Eigen::Vector3d;

const Specimen& animal() {
  static const Specimen specimen = anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::MeasurementTable{}));
  return specimen;
}

TEST(Bend, ChainsStartWhereAPersonExpects) {
  const auto first = [&](const char* bone) {
    return animal()[dragChain(animal(), *animal().findBone(bone)).front()].id;
  };
  EXPECT_EQ(first("skull"), "C13-D1");
  EXPECT_EQ(first("C5"), "C13-D1");
  EXPECT_EQ(first("Ca20"), "S5-Ca1");
  EXPECT_EQ(first("D3"), "D11-S1");
  EXPECT_EQ(first("tibia.L"), "hip.L");
  EXPECT_EQ(first("radius.R").substr(0, 5), "scapu");
  const JointIndex base = *animal().findJoint("C9-C10");
  EXPECT_EQ(dragChain(animal(), *animal().findBone("C2"), base).front(), base);
  EXPECT_EQ(animal()[neckChain(animal()).back()].id, "skull-C1");
  EXPECT_EQ(animal()[tailChain(animal()).back()].id, "Ca51-Ca52");
}

TEST(Bend, SpreadSharesByWeight) {
  const auto chain = neckChain(animal());
  std::vector<double> weights(chain.size(), 1.0 / static_cast<double>(chain.size()));
  const Pose bent =
      spreadTurn(animal(), restArticulation(animal()), Pose::neutral(animal()), chain, weights, Vector3d(0.6, 0, 0));
  double sum = 0;
  for (const JointIndex j : chain) sum += bent[j][0];
  EXPECT_NEAR(sum, 0.6, 1e-12);
}

}  // namespace
}  // namespace zyga::kinematics
