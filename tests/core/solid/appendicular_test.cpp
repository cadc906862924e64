#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "core/anatomy/plan/limb_rig.h"
#include "core/solid/sculpt/bone_shape.h"
#include "core/solid/sdf/levels.h"
#include "core/solid/sdf/mesher.h"

namespace zyga::solid {
namespace {

using anatomy::BodyPlan;
using anatomy::Bone;
using anatomy::BoneIndex;
using anatomy::BoneKind;
using anatomy::Measure;
using anatomy::Side;
using anatomy::Specimen;

anatomy::MeasurementTable table(BodyPlan plan) {
  anatomy::MeasurementTable t;
  t.plan = plan;
  if (plan == BodyPlan::LowBrowser) t.counts = {15, 10, 5, 80};
  return t;
}

const Specimen& animal(BodyPlan plan) {
  static const Specimen high = buildSpecimen(fillBlanks(table(BodyPlan::HighBrowser)));
  static const Specimen low = buildSpecimen(fillBlanks(table(BodyPlan::LowBrowser)));
  return plan == BodyPlan::HighBrowser ? high : low;
}

BoneIndex indexOf(const Specimen& specimen, const std::string& id) { return specimen.findBone(id).value(); }

Shape shapeNamed(const Specimen& specimen, const std::string& id) { return shapeOf(specimen, indexOf(specimen, id)); }

/// Left and midline bones of skull, girdles, limbs and feet that have a mesh of their own.
std::vector<BoneIndex> sculptedBones(const Specimen& specimen) {
  std::vector<BoneIndex> bones;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const Bone& bone = specimen.bones[i];
    const bool head = bone.name.kind == BoneKind::Skull || bone.name.kind == BoneKind::Jaw;
    if ((head || bone.name.kind >= BoneKind::Scapula) && bone.name.side != Side::Right && !bone.fusedInto)
      bones.push_back({i});
  }
  return bones;
}

/// Samples of a solid on a grid.
struct Grid {
  int nx = 0, ny = 0, nz = 0;
  std::vector<char> inside;

  Grid(const Shape& shape, double step) {
    const Box box = shape.bounds();
    const Point size = box.sizes();
    nx = static_cast<int>(size.x() / step) + 2;
    ny = static_cast<int>(size.y() / step) + 2;
    nz = static_cast<int>(size.z() / step) + 2;
    inside.assign(static_cast<std::size_t>(nx) * static_cast<std::size_t>(ny) * static_cast<std::size_t>(nz), 0);
    constexpr int kBlock = 8;  // a leaner field for each block
    for (int z = 0; z < nz; z += kBlock)
      for (int y = 0; y < ny; y += kBlock)
        for (int x = 0; x < nx; x += kBlock) fill(shape, box.min(), step, {x, y, z}, kBlock);
  }

  void fill(const Shape& shape, const Point& origin, double step, const std::array<int, 3>& from, int block) {
    const Point centre = origin + step * (Point(from[0], from[1], from[2]) + Point::Constant(0.5 * block));
    const Shape local = shape.near(centre, 0.87 * step * block, step);
    for (int z = from[2]; z < std::min(from[2] + block, nz); ++z)
      for (int y = from[1]; y < std::min(from[1] + block, ny); ++y)
        for (int x = from[0]; x < std::min(from[0] + block, nx); ++x)
          inside[index(x, y, z)] = local.at(origin + step * Point(x, y, z)) < 0;
  }

  std::size_t index(int x, int y, int z) const { return static_cast<std::size_t>((z * ny + y) * nx + x); }

  /// Edges and corners count as contact: thin plates run across the grid.
  std::vector<std::size_t> neighbours(std::size_t i) const {
    const int n = static_cast<int>(i), x = n % nx, y = n / nx % ny, z = n / (nx * ny);
    std::vector<std::size_t> all;
    for (int k = std::max(z - 1, 0); k <= std::min(z + 1, nz - 1); ++k)
      for (int j = std::max(y - 1, 0); j <= std::min(y + 1, ny - 1); ++j)
        for (int h = std::max(x - 1, 0); h <= std::min(x + 1, nx - 1); ++h) all.push_back(index(h, j, k));
    return all;
  }

  /// Samples of each connected solid, largest first.
  std::vector<std::size_t> solids() const {
    std::vector<char> seen(inside.size(), 0);
    std::vector<std::size_t> sizes;
    for (std::size_t start = 0; start < inside.size(); ++start) {
      if (!inside[start] || seen[start]) continue;
      std::vector<std::size_t> open{start};
      seen[start] = 1;
      std::size_t count = 0;
      while (!open.empty()) {
        const std::size_t i = open.back();
        open.pop_back();
        ++count;
        for (const std::size_t next : neighbours(i)) {
          if (!inside[next] || seen[next]) continue;
          seen[next] = 1;
          open.push_back(next);
        }
      }
      sizes.push_back(count);
    }
    std::sort(sizes.rbegin(), sizes.rend());
    return sizes;
  }
};

class Appendicular : public testing::TestWithParam<BodyPlan> {};
INSTANTIATE_TEST_SUITE_P(Plans, Appendicular, testing::Values(BodyPlan::HighBrowser, BodyPlan::LowBrowser),
                         [](const auto& plan) { return std::string(plan.index == 0 ? "High" : "Low"); });

TEST_P(Appendicular, EveryBoneIsAClosedOrientedSurface) {
  const Specimen& specimen = animal(GetParam());
  for (const BoneIndex bone : sculptedBones(specimen)) {
    const Shape shape = shapeOf(specimen, bone);
    const MeshHealth health = examine(meshSurface(shape, voxelFor(shape, 3000)));
    EXPECT_TRUE(health.closed) << specimen[bone].id;
    EXPECT_TRUE(health.oriented) << specimen[bone].id;
    EXPECT_EQ(health.components, 1u) << specimen[bone].id;
    EXPECT_GT(health.volume, 0) << specimen[bone].id;
  }
}

// The mesher keeps the largest part only, so loose parts are looked for in the field itself.
TEST_P(Appendicular, EveryBoneIsInOnePiece) {
  const Specimen& specimen = animal(GetParam());
  for (const BoneIndex bone : sculptedBones(specimen)) {
    const Shape shape = shapeOf(specimen, bone);
    const bool head = specimen[bone].name.kind == BoneKind::Skull || specimen[bone].name.kind == BoneKind::Jaw;
    const double samples = head ? 400000 : 40000;
    const std::vector<std::size_t> sizes = Grid(shape, std::cbrt(shape.bounds().volume() / samples)).solids();
    ASSERT_FALSE(sizes.empty()) << specimen[bone].id;
    EXPECT_LE(sizes.size() > 1 ? sizes[1] : 0u, 3u) << specimen[bone].id << " has a loose part";
  }
}

TEST_P(Appendicular, RightIsTheMirrorOfLeft) {
  const Specimen& specimen = animal(GetParam());
  for (const BoneIndex bone : sculptedBones(specimen)) {
    const Shape left = shapeOf(specimen, bone);
    const Shape right = shapeOf(specimen, indexOf(specimen, toId(mirrored(specimen[bone].name))));
    const Box box = left.bounds();
    for (int i = 0; i < 60; ++i) {  // the same scattered points on every run
      const Point share(std::fmod(i * 0.7548776662, 1.0), std::fmod(i * 0.5698402910, 1.0),
                        std::fmod(i * 0.3819660113, 1.0));
      const Point p = box.min() + share.cwiseProduct(box.sizes());
      EXPECT_NEAR(left.at(p), right.at({p.x(), -p.y(), p.z()}), 2e-6) << specimen[bone].id;
    }
  }
}

TEST_P(Appendicular, LongBonesAreAsLongAndAsWideAsTheyMeasure) {
  const Specimen& specimen = animal(GetParam());
  for (const std::string id : {"humerus.L", "femur.L", "tibia.L", "fibula.L", "radius.L", "ulna.L", "metacarpal3.L",
                               "metatarsal1.L", "metatarsal3.L"}) {
    const Bone& bone = specimen[indexOf(specimen, id)];
    const Shape shape = shapeNamed(specimen, id);
    const TriangleMesh mesh = meshSurface(shape, voxelFor(shape, 6000));
    const Point up = (bone.landmark("top") - bone.landmark("bottom")).normalized();
    double low = 1e9, high = -1e9;
    for (const auto& p : mesh.positions) {
      low = std::min(low, up.dot(p.cast<double>()));
      high = std::max(high, up.dot(p.cast<double>()));
    }
    const double length = bone.measures.value(Measure::Length);
    EXPECT_NEAR(high - low, length, 0.03 * length) << id;
    // Side to side across the middle of the shaft.
    const Point middle = 0.5 * (bone.landmark("top") + bone.landmark("bottom"));
    double left = 0, right = 0;
    while (shape.at(middle + Point(0, left, 0)) < 0) left += 0.0005;
    while (shape.at(middle - Point(0, right, 0)) < 0) right += 0.0005;
    const double shaft = bone.measures.value(Measure::ShaftWidth);
    EXPECT_NEAR(left + right, shaft, 0.12 * shaft) << id;
  }
}

TEST_P(Appendicular, HeadIsSymmetric) {
  const Specimen& specimen = animal(GetParam());
  for (const std::string id : {"skull", "jaw"}) {
    const Shape shape = shapeNamed(specimen, id);
    const Box box = shape.bounds();
    for (int i = 0; i < 200; ++i) {
      const Point share(std::fmod(i * 0.7548776662, 1.0), std::fmod(i * 0.5698402910, 1.0),
                        std::fmod(i * 0.3819660113, 1.0));
      const Point p = box.min() + share.cwiseProduct(box.sizes());
      EXPECT_NEAR(shape.at(p), shape.at({p.x(), -p.y(), p.z()}), 2e-6) << id;
    }
  }
}

/// True when nothing of the shape lies between two points.
bool clear(const Shape& shape, const Point& a, const Point& b) {
  for (int i = 0; i <= 400; ++i)
    if (shape.at(a + (b - a) * (i / 400.0)) < 0) return false;
  return true;
}

// Large nostrils and eyes, open from the outside: common practice, no source.
TEST_P(Appendicular, EyesAndNostrilsAreOpen) {
  const Specimen& specimen = animal(GetParam());
  const Bone& skull = specimen[indexOf(specimen, "skull")];
  const Shape shape = shapeNamed(specimen, "skull");
  const double width = skull.measures.value(Measure::Width);
  for (const std::string side : {".L", ".R"}) {
    const Point out(0, side == ".L" ? width : -width, 0);
    const Point eye = skull.landmark("eye" + side), nostril = skull.landmark("nostril" + side);
    EXPECT_TRUE(clear(shape, eye - 0.12 * out, eye + out)) << "eye" << side;
    const Point way = GetParam() == BodyPlan::HighBrowser ? out : Point(0, 0, width);
    EXPECT_TRUE(clear(shape, nostril, nostril + way)) << "nostril" << side;
  }
}

TEST(Appendicular, HighBrowserHasASlimBarBetweenItsNostrils) {
  const Specimen& specimen = animal(BodyPlan::HighBrowser);
  const Bone& skull = specimen[indexOf(specimen, "skull")];
  const Shape shape = shapeNamed(specimen, "skull");
  const double length = skull.measures.value(Measure::Length), height = skull.measures.value(Measure::Height);
  const auto meets = [&](double y) {
    return !clear(shape, Point(0.50 * length, y, 0.33 * height), Point(0.9 * length, y, 0.33 * height));
  };
  EXPECT_TRUE(meets(0));
  EXPECT_FALSE(meets(0.05 * length));
}

/// How deep the surface of one bone enters another as they stand (m, positive: depth), and how near they come.
struct Meeting {
  double deepest = 0;
  double nearest = 1e9;
};

Meeting meet(const Specimen& specimen, const std::string& a, const std::string& b) {
  const auto X_RB = restFrames(specimen);
  const Shape of = shapeNamed(specimen, a), other = shapeNamed(specimen, b);
  const Eigen::Isometry3d X_BA = X_RB[indexOf(specimen, b).value].inverse() * X_RB[indexOf(specimen, a).value];
  Meeting meeting;
  for (const auto& p : meshSurface(of, voxelFor(of, 6000)).positions) {
    const double d = other.at(X_BA * p.cast<double>());
    meeting.deepest = std::max(meeting.deepest, -d);
    meeting.nearest = std::min(meeting.nearest, std::abs(d));
  }
  return meeting;
}

// Neighbours come within reach of a cartilage of each other and do not run into each other.
TEST_P(Appendicular, NeighboursMeet) {
  const Specimen& specimen = animal(GetParam());
  const std::pair<const char*, const char*> pairs[] = {
      {"femur.L", "ilium.L"},         {"tibia.L", "femur.L"},
      {"astragalus.L", "tibia.L"},    {"metatarsal3.L", "astragalus.L"},
      {"fibula.L", "tibia.L"},        {"humerus.L", "scapula.L"},
      {"ulna.L", "humerus.L"},        {"radius.L", "humerus.L"},
      {"radius.L", "ulna.L"},         {"carpal1.L", "radius.L"},
      {"metacarpal2.L", "carpal1.L"}, {"pubis.L", "ilium.L"},
      {"ischium.L", "ilium.L"},       {"manus1.2.L", "manus1.1.L"},
      {"pes1.1.L", "metatarsal1.L"},  {"jaw", "skull"}};
  for (const auto& [a, b] : pairs) {
    const Meeting meeting = meet(specimen, a, b);
    EXPECT_LT(meeting.deepest, 0.020) << a << " runs into " << b;
    EXPECT_LT(meeting.nearest, 0.035) << a << " hangs clear of " << b;
  }
}

TEST_P(Appendicular, PubesAndIschiaMeetTheirFellows) {
  const Specimen& specimen = animal(GetParam());
  for (const std::string bone : {"pubis", "ischium"}) {
    const Meeting meeting = meet(specimen, bone + ".L", bone + ".R");
    EXPECT_LT(meeting.deepest, 0.02) << bone;
    EXPECT_LT(meeting.nearest, 0.02) << bone;
  }
}

}  // namespace
}  // namespace zyga::solid
