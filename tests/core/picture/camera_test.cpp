#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/picture/picture.h"

namespace zyga::picture {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

/// Place on the picture, (-1, -1) bottom left to (1, 1) top right.
Vector2d onPicture(const Camera& camera, double aspect, const Vector3d& p_W) {
  const Vector3d p = camera.X_WCamera.inverse() * p_W;
  const double halfHeight = camera.perspective ? -p.z() * std::tan(camera.fieldOfView / 2) : camera.viewHeight / 2;
  return {p.x() / (halfHeight * aspect), p.y() / halfHeight};
}

constexpr StandardView kAll[] = {StandardView::Left,    StandardView::Right,  StandardView::Dorsal,
                                 StandardView::Cranial, StandardView::Caudal, StandardView::ThreeQuarter,
                                 StandardView::Ventral};

/// About an animal: long in x, off centre.
const Eigen::AlignedBox3d kAnimal(Vector3d(-9, -1.2, 0), Vector3d(8, 1.0, 7));

TEST(Frame, HoldsEveryCornerWithTheMargin) {
  for (const double aspect : {0.5, 1.0, 1.6, 4.0})
    for (const StandardView view : kAll) {
      const Camera camera = frame(view, kAnimal, aspect);
      double widest = 0;
      for (int i = 0; i < 8; ++i) {
        const Vector3d corner = kAnimal.corner(static_cast<Eigen::AlignedBox3d::CornerType>(i));
        EXPECT_GT(0, (camera.X_WCamera.inverse() * corner).z()) << "before the camera";
        widest = std::max(widest, onPicture(camera, aspect, corner).cwiseAbs().maxCoeff());
      }
      // 4 % of the picture on each side leaves 92 % of it, exactly on the tighter pair of sides; the perspective eye is
      // centred between the other pair of planes, so a corner may come a little nearer to the middle.
      EXPECT_LE(widest, 0.92 + 1e-9) << static_cast<int>(view);
      EXPECT_GE(widest, 0.92 - 1e-9) << static_cast<int>(view);
    }
}

TEST(Frame, ShowsTheSidesTheyAreNamedFor) {
  const Vector3d head(8, 0, 6), tail(-9, 0, 2), left(0, 1, 3), right(0, -1, 3), top(0, 0, 7), bottom(0, 0, 0);
  const auto x = [&](StandardView view, const Vector3d& p) { return onPicture(frame(view, kAnimal, 1.6), 1.6, p).x(); };
  const auto y = [&](StandardView view, const Vector3d& p) { return onPicture(frame(view, kAnimal, 1.6), 1.6, p).y(); };
  EXPECT_LT(x(StandardView::Left, head), x(StandardView::Left, tail));
  EXPECT_GT(x(StandardView::Right, head), x(StandardView::Right, tail));
  EXPECT_LT(x(StandardView::Dorsal, head), x(StandardView::Dorsal, tail));
  EXPECT_LT(y(StandardView::Dorsal, left), y(StandardView::Dorsal, right));
  EXPECT_LT(x(StandardView::Ventral, head), x(StandardView::Ventral, tail));
  EXPECT_GT(y(StandardView::Ventral, left), y(StandardView::Ventral, right));
  EXPECT_GT(x(StandardView::Cranial, left), x(StandardView::Cranial, right));
  EXPECT_LT(x(StandardView::Caudal, left), x(StandardView::Caudal, right));
  EXPECT_LT(x(StandardView::ThreeQuarter, head), x(StandardView::ThreeQuarter, tail));
  for (const StandardView view : kAll) {
    if (view == StandardView::Dorsal || view == StandardView::Ventral) continue;
    EXPECT_GT(y(view, top), y(view, bottom)) << static_cast<int>(view);
  }
}

TEST(Frame, LooksAlongTheNamedAxis) {
  const auto forward = [](StandardView view) -> Vector3d {
    return -frame(view, kAnimal, 1.6).X_WCamera.linear().col(2);
  };
  EXPECT_TRUE(forward(StandardView::Left).isApprox(-Vector3d::UnitY()));
  EXPECT_TRUE(forward(StandardView::Right).isApprox(Vector3d::UnitY()));
  EXPECT_TRUE(forward(StandardView::Dorsal).isApprox(-Vector3d::UnitZ()));
  EXPECT_TRUE(forward(StandardView::Ventral).isApprox(Vector3d::UnitZ()));
  EXPECT_TRUE(forward(StandardView::Cranial).isApprox(-Vector3d::UnitX()));
  EXPECT_TRUE(forward(StandardView::Caudal).isApprox(Vector3d::UnitX()));
}

TEST(Frame, IsARotation) {
  for (const StandardView view : kAll) {
    const Eigen::Matrix3d R = frame(view, kAnimal, 1.6).X_WCamera.linear();
    EXPECT_TRUE((R.transpose() * R).isIdentity(1e-12));
    EXPECT_NEAR(R.determinant(), 1, 1e-12);
  }
}

TEST(Frame, TakesEmptyAndFlatBoxes) {
  for (const StandardView view : kAll)
    for (const Eigen::AlignedBox3d& box : {Eigen::AlignedBox3d(), Eigen::AlignedBox3d(Vector3d(1, 2, 3)),
                                           Eigen::AlignedBox3d(Vector3d(0, 0, 0), Vector3d(3, 0, 0))}) {
      const Camera camera = frame(view, box, 1.6);
      EXPECT_TRUE(camera.X_WCamera.matrix().allFinite());
      EXPECT_GT(camera.viewHeight, 0);
    }
}

}  // namespace
}  // namespace zyga::picture
