#include "core/kinematics/keep_in_space.h"

#include <gtest/gtest.h>

#include <random>

#include "core/kinematics/placement.h"
#include "tests/support/sample_animal.h"

namespace zyga::kinematics {
namespace {

using Eigen::Vector3d;

struct Moved {
  anatomy::Specimen specimen = test::sampleAnimal("low_browser");
  Articulation before = restArticulation(specimen);
  Articulation after = before;
  Pose pose = Pose::neutral(specimen);

  Moved() {
    std::mt19937 random(3);
    std::normal_distribution<double> n(0, 0.1);
    pose.X_WRoot = Eigen::Translation3d(1, 2, 3) * Eigen::AngleAxisd(0.4, Vector3d::UnitZ());
    for (std::size_t j = 0; j < pose.angles.size(); ++j) {
      pose.angles[j] = Vector3d{n(random), n(random), n(random)};
      if (!specimen.joints[j].hasFacets()) continue;
      after.rests[j].rotation *= Eigen::AngleAxisd(n(random), Vector3d::UnitY()).toRotationMatrix();
      after.rests[j].cartilage = std::abs(n(random));
    }
  }
};

TEST(KeepInSpace, everyBoneKeepsItsOrientation) {
  const Moved m;
  const Pose kept = keepInSpace(m.specimen, m.before, m.after, m.pose);
  const Placement X = forwardKinematics(m.specimen, m.before, m.pose);
  const Placement Y = forwardKinematics(m.specimen, m.after, kept);
  const Placement turned = forwardKinematics(m.specimen, m.after, m.pose);
  double most = 0;
  for (std::size_t i = 0; i < X.size(); ++i) {
    EXPECT_TRUE(Y[i].linear().isApprox(X[i].linear(), 1e-9)) << m.specimen.bones[i].id;
    most = std::max(most, (turned[i].linear() - X[i].linear()).norm());
  }
  EXPECT_GT(most, 0.1) << "keeping the deflections instead turns the bones";
  EXPECT_EQ(kept.X_WRoot.matrix(), m.pose.X_WRoot.matrix());
}

TEST(KeepInSpace, andBackIsWhereItBegan) {
  const Moved m;
  const Pose back = keepInSpace(m.specimen, m.after, m.before, keepInSpace(m.specimen, m.before, m.after, m.pose));
  for (std::size_t j = 0; j < back.angles.size(); ++j) {
    EXPECT_TRUE(back.angles[j].isApprox(m.pose.angles[j], 1e-9)) << m.specimen.joints[j].id;
  }
}

TEST(KeepInSpace, jointsThatDoNotMoveKeepTheirAnglesToTheBit) {
  const Moved m;
  const Pose kept = keepInSpace(m.specimen, m.before, m.after, m.pose);
  for (std::size_t j = 0; j < kept.angles.size(); ++j) {
    if (m.specimen.joints[j].hasFacets()) continue;
    EXPECT_EQ(kept.angles[j], m.pose.angles[j]) << m.specimen.joints[j].id;
  }
  EXPECT_EQ(keepInSpace(m.specimen, m.after, m.after, m.pose), m.pose);
}

}  // namespace
}  // namespace zyga::kinematics
