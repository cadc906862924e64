#include "core/anatomy/marks/straighten.h"

#include <gtest/gtest.h>

#include <Eigen/Geometry>
#include <random>
#include <stdexcept>

namespace zyga::anatomy {
namespace {

using Eigen::Matrix3d;
using Eigen::Vector3d;

/// A symmetric bone somewhere in space, under a linear map.
struct Marked {
  std::vector<std::pair<Vector3d, Vector3d>> pairs;
  std::vector<Vector3d> midline;

  Marked(const Matrix3d& map, double noise = 0) {
    const Matrix3d R =
        (Eigen::AngleAxisd(0.6, Vector3d::UnitX()) * Eigen::AngleAxisd(0.4, Vector3d::UnitZ())).toRotationMatrix();
    std::mt19937 random(11);
    std::normal_distribution<double> off(0, 1);
    const auto put = [&](const Vector3d& p) {
      return Vector3d(R * (map * p) + Vector3d(1, 2, 3) + noise * Vector3d{off(random), off(random), off(random)});
    };
    for (const Vector3d& p : {Vector3d(0.2, 0.08, 0.12), Vector3d(-0.15, 0.06, 0.14), Vector3d(0.05, 0.15, -0.02),
                              Vector3d(-0.02, 0.11, 0.05)})
      pairs.emplace_back(put(p), put({p.x(), -p.y(), p.z()}));
    midline = {put({0, 0, 0.25}), put({0.25, 0, 0}), put({-0.25, 0, 0})};
  }
};

/// Slides what lies to the left forwards.
Matrix3d shear(double angle) {
  Matrix3d map = Matrix3d::Identity();
  map(0, 1) = std::tan(angle);
  return map;
}

TEST(Straighten, LeavesASymmetricBoneAlone) {
  const Marked bone(Matrix3d::Identity());
  const auto out = straighten(bone.pairs, bone.midline, DeformedBy::Shear);
  EXPECT_TRUE(out.map.isApprox(Matrix3d::Identity(), 1e-6));
  EXPECT_NEAR(out.amount, 0, 1e-7);
  EXPECT_LT(out.before, 1e-9);
}

TEST(Straighten, UndoesAShearAndSaysHowMuch) {
  for (const double angle : {0.05, 0.2, 0.5}) {
    const Marked bone(shear(angle));
    const auto out = straighten(bone.pairs, bone.midline, DeformedBy::Shear);
    EXPECT_NEAR(out.amount, angle, 1e-9);
    EXPECT_LT(out.asymmetry, 1e-9);
    EXPECT_GT(out.before, 0.005);
    EXPECT_NEAR(out.map.determinant(), 1, 1e-12);
    // Distances between the straightened points are those of the bone before the shear.
    const Marked whole(Matrix3d::Identity());
    for (std::size_t i = 0; i < bone.pairs.size(); ++i)
      EXPECT_NEAR((out.map * (bone.pairs[i].first - bone.pairs[0].second)).norm(),
                  (whole.pairs[i].first - whole.pairs[0].second).norm(), 1e-9);
  }
}

/// Pressed along a direction 45 degrees to the mid-plane: the shape comes back whole.
TEST(Straighten, UndoesASquashAndSaysHowMuch) {
  const Vector3d pressed = Vector3d(1, 1, 0).normalized(), widened = Vector3d(1, -1, 0).normalized();
  for (const double share : {0.05, 0.2}) {
    const double k = 1 - share;
    const Matrix3d map =
        Matrix3d::Identity() + (k - 1) * pressed * pressed.transpose() + (1 / k - 1) * widened * widened.transpose();
    const Marked bone(map), whole(Matrix3d::Identity());
    const auto out = straighten(bone.pairs, bone.midline, DeformedBy::Squash);
    EXPECT_NEAR(out.amount, share, 1e-9);
    EXPECT_LT(out.asymmetry, 1e-9);
    EXPECT_TRUE(out.map.isApprox(out.map.transpose(), 1e-12));
    for (std::size_t i = 0; i < bone.pairs.size(); ++i)
      EXPECT_NEAR((out.map * (bone.pairs[i].first - bone.pairs[0].second)).norm(),
                  (whole.pairs[i].first - whole.pairs[0].second).norm(), 1e-9);
  }
}

TEST(Straighten, StandsSlipsOfTheHand) {
  const Marked bone(shear(0.3), 0.001);
  const auto out = straighten(bone.pairs, bone.midline, DeformedBy::Shear);
  EXPECT_NEAR(out.amount, 0.3, 0.03);
  EXPECT_LT(out.asymmetry, 0.004);
}

TEST(Straighten, RefusesTooLittle) {
  const Marked bone(Matrix3d::Identity());
  EXPECT_THROW(straighten(std::span(bone.pairs).first(1), bone.midline, DeformedBy::Shear), reason::Failure);
  const std::vector<std::pair<Vector3d, Vector3d>> line{{{0, 1, 0}, {0, -1, 0}}, {{1, 1, 0}, {1, -1, 0}}};
  EXPECT_THROW(straighten(line, {}, DeformedBy::Shear), reason::Failure);
}

}  // namespace
}  // namespace zyga::anatomy
