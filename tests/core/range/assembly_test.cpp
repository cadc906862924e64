// How the bones of an animal lie together, told by numbers: over the plans, with other counts of vertebrae and at any
// size. Distances of the meshes by FCL. What is asked is the brief's (anatomy of sauropods, from memory where no source
// stands beside it), as shares of a bone, so that it holds at any size.
#include <gtest/gtest.h>

#include <cmath>
#include <map>
#include <memory>
#include <numbers>
#include <ostream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/placement.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "core/solid/sculpt/axial/vertebra.h"
#include "core/solid/sculpt/bone_shape.h"
#include "core/solid/sculpt/sculpt.h"
#include "tests/support/fcl_bone.h"

namespace zyga::range {
namespace {

using anatomy::BodyPlan;
using anatomy::BoneKind;
using anatomy::Measure;
using anatomy::RegionCounts;
using anatomy::Specimen;
using Eigen::Vector3d;

struct Kind {
  const char* name;
  BodyPlan plan;
  RegionCounts counts;
};

void PrintTo(const Kind& kind, std::ostream* out) { *out << kind.name; }

const std::array kKinds{Kind{"HighBrowser", BodyPlan::HighBrowser, {13, 11, 5, 52}},
                        Kind{"HighBrowserLongTrunk", BodyPlan::HighBrowser, {12, 12, 5, 45}},
                        Kind{"LowBrowser", BodyPlan::LowBrowser, {15, 10, 5, 80}},
                        Kind{"LowBrowserLongNeck", BodyPlan::LowBrowser, {19, 10, 5, 70}},
                        Kind{"WideGauge", BodyPlan::WideGauge, {13, 10, 6, 40}}};

Specimen animalOf(const Kind& kind, double factor = 1) {
  anatomy::MeasurementTable table;
  table.plan = kind.plan;
  table.counts = kind.counts;
  return anatomy::buildSpecimen(anatomy::scaledTable(anatomy::fillBlanks(table), factor));
}

/// An animal where it stands, and its meshes, sculpted when they are asked for.
class Standing {
 public:
  explicit Standing(const Kind& kind) : specimen_(animalOf(kind)) {
    auto pose = kinematics::Pose::neutral(specimen_);
    for (const auto& [id, angles] : anatomy::standingAngles(specimen_))
      if (const auto joint = specimen_.findJoint(id)) pose[*joint] = angles;
    X_WB_ = kinematics::forwardKinematics(specimen_, articulate(specimen_, grownAnimal()), pose);
  }

  const Specimen& specimen() const { return specimen_; }
  const Eigen::Isometry3d& at(const std::string& id) const { return X_WB_[index(id)]; }
  double measure(const std::string& id, Measure which) const {
    return specimen_.bones[index(id)].measures.value(which);
  }
  double length(const std::string& id) const { return measure(id, Measure::Length); }

  /// Between the surfaces of two bones, m; 0 where they meet.
  double gap(const std::string& a, const std::string& b) {
    const Eigen::Isometry3d X_AB = at(a).inverse() * at(b);
    return surface(a).collides(surface(b), X_AB.cast<float>()) ? 0
                                                               : surface(a).distance(surface(b), X_AB.cast<float>());
  }

 private:
  std::size_t index(const std::string& id) const { return specimen_.findBone(id).value().value; }
  const test::FclBone& surface(const std::string& id) {
    auto& kept = surfaces_[id];
    if (!kept) kept = std::make_unique<test::FclBone>(solid::sculptBone(specimen_, {index(id)}, 4000).levels.front());
    return *kept;
  }

  Specimen specimen_;
  std::vector<Eigen::Isometry3d> X_WB_;
  std::map<std::string, std::unique_ptr<test::FclBone>> surfaces_;
};

class Assembly : public testing::TestWithParam<Kind> {
 protected:
  Standing animal_{GetParam()};
  /// A gap as a share of a length.
  void expectGap(const std::string& a, const std::string& b, double of, double least, double most) {
    const double gap = animal_.gap(a, b) / of;
    EXPECT_GE(gap, least) << a << " to " << b;
    EXPECT_LE(gap, most) << a << " to " << b;
  }
};

INSTANTIATE_TEST_SUITE_P(Kinds, Assembly, testing::ValuesIn(kKinds),
                         [](const auto& kind) { return std::string(kind.param.name); });

TEST_P(Assembly, ShoulderGirdle) {
  const double humerus = animal_.length("humerus.L");
  expectGap("scapula.L", "scapula.R", humerus, 0.02, 0.1);
  expectGap("sternal.L", "scapula.L", humerus, 0.0, 0.1);
  expectGap("sternal.L", "humerus.L", humerus, 0.03, 0.2);
}

TEST_P(Assembly, PelvisAndSacrum) {
  const double ilium = animal_.length("ilium.L");
  expectGap("pubis.L", "pubis.R", ilium, 0, 0.02);
  expectGap("ilium.L", "pubis.L", ilium, 0, 0.01);
  expectGap("ilium.L", "ischium.L", ilium, 0, 0.01);
  for (int k = 1; k <= GetParam().counts.sacral; ++k) expectGap("S" + std::to_string(k), "ilium.L", ilium, 0, 0.01);
}

TEST_P(Assembly, Limbs) {
  const double tibia = animal_.length("tibia.L");
  expectGap("fibula.L", "tibia.L", tibia, 0, 0.01);
  expectGap("fibula.L", "femur.L", tibia, 0, 0.02);
  expectGap("tibia.L", "femur.L", tibia, 0, 0.02);
  expectGap("astragalus.L", "tibia.L", tibia, 0, 0.02);
  const double metacarpal = animal_.length("metacarpal3.L");
  for (int k = 1; k <= 5; ++k) {
    double nearest = 1;
    for (const auto& bone : animal_.specimen().bones)
      if (bone.name.kind == BoneKind::Carpal && bone.name.side == anatomy::Side::Left)
        nearest = std::min(nearest, animal_.gap(bone.id, "metacarpal" + std::to_string(k) + ".L"));
    // Two carpals lie over the middle three; the outer ones reach past them.
    EXPECT_LE(nearest / metacarpal, k == 1 || k == 5 ? 0.08 : 0.035) << k;
  }
}

TEST_P(Assembly, RibsOnTheirFacets) {
  for (const int k : {1, 2, 4, 7, GetParam().counts.dorsal}) {
    const std::string rib = "rib.D" + std::to_string(k) + ".L";
    expectGap(rib, "D" + std::to_string(k), animal_.length(rib), 0, 0.01);
  }
}

TEST_P(Assembly, TheTailStaysOffTheGround) {
  double ground = INFINITY, lowest = INFINITY;
  const auto& bones = animal_.specimen().bones;
  for (const auto& bone : bones)
    for (const auto& [name, p] : bone.landmarks) {
      const double z = (animal_.at(bone.id) * p).z();
      if (name == "sole") ground = std::min(ground, z);
      if (bone.name.kind == BoneKind::Caudal || bone.name.kind == BoneKind::Chevron) lowest = std::min(lowest, z);
    }
  ASSERT_TRUE(std::isfinite(ground) && std::isfinite(lowest));
  EXPECT_GT(lowest - ground, 0.02 * animal_.length("femur.L"));
}

// A wall of at least 0.12 of the centrum's height stands between the socket and the hollows of the side.
TEST_P(Assembly, NoHollowComesNearASocket) {
  const Specimen& specimen = animal_.specimen();
  int sockets = 0;
  for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
    const auto& bone = specimen.bones[i];
    if (!anatomy::isVertebra(bone.name.kind) || (bone.name.kind == BoneKind::Cervical && bone.name.number < 3))
      continue;
    const solid::Vertebra v = solid::describeVertebra(specimen, {i});
    if (v.cotyle.flat()) continue;
    ++sockets;
    const solid::Shape shape = solid::shapeOf(specimen, {i});
    const double inward = v.ballBehind ? -1 : 1;
    for (const double share : {0.02, 0.06, 0.10, 0.12})
      for (int around = 0; around < 12; ++around)
        for (const double beside : {0.0, 0.5, 1.0}) {
          // A low ball has its centre far away: no farther out than 0.3 of the height beside the axis.
          const double off = beside * std::min(0.6, std::asin(std::min(1.0, 0.30 * v.height / v.cotyle.radius)));
          const double turn = around * std::numbers::pi / 6;
          // On the socket's own ellipsoid.
          const Vector3d way(inward * std::cos(off), std::sin(off) * std::cos(turn), std::sin(off) * std::sin(turn));
          const double r = v.cotyle.radius + share * v.height;
          const Vector3d p =
              v.cotyle.centre +
              Vector3d(r * way.x(), (v.cotyle.radius * v.cotyle.widening + share * v.height) * way.y(), r * way.z());
          EXPECT_LT(shape.at(p), 0) << bone.id << " " << share << " " << around << " " << beside;
        }
  }
  EXPECT_GT(sockets, 10);
}

TEST_P(Assembly, IsTheSameAtAnySize) {
  const Specimen& one = animal_.specimen();
  // From a calf of a few metres to the largest that were.
  for (const double factor : {0.13, 2.2}) {
    const Specimen other = animalOf(GetParam(), factor);
    ASSERT_EQ(one.bones.size(), other.bones.size());
    for (std::size_t i = 0; i < one.bones.size(); ++i) {
      const auto &a = one.bones[i], &b = other.bones[i];
      const double size = std::max(1e-3, a.measures.valueOr(Measure::Length, 0.1));
      for (const auto& [name, p] : a.landmarks)
        EXPECT_LT((factor * p - b.landmark(name)).norm(), 1e-6 * size * factor) << a.id << " " << name << " " << factor;
      for (const auto& facet : a.facets) {
        const auto* same = b.facet(facet.role);
        ASSERT_TRUE(same);
        EXPECT_LT((factor * facet.centre - same->centre).norm(), 1e-6 * size * factor) << a.id << " " << factor;
        EXPECT_NEAR(factor * facet.length(), same->length(), 1e-6 * size * factor) << a.id << " " << factor;
        EXPECT_LT((facet.normal - same->normal).norm(), 1e-6) << a.id << " " << factor;
      }
    }
    for (std::size_t j = 0; j < one.joints.size(); ++j) {
      const auto &a = one.joints[j], &b = other.joints[j];
      EXPECT_LT((factor * a.centreProximal - b.centreProximal).norm(), 1e-6 * factor) << a.id << " " << factor;
      EXPECT_LT((factor * a.centreDistal - b.centreDistal).norm(), 1e-6 * factor) << a.id << " " << factor;
    }
    int compared = 0;
    for (std::size_t i = 0; i < one.bones.size(); ++i) {
      if (one.bones[i].fusedInto || one.bones[i].name.side == anatomy::Side::Right) continue;
      const solid::Shape a = solid::shapeOf(one, {i}), b = solid::shapeOf(other, {i});
      const auto box = a.bounds();
      for (const double x : {0.3, 0.5, 0.62})
        for (const double y : {0.4, 0.55})
          for (const double z : {0.35, 0.6}) {
            const Vector3d p = box.min() + Vector3d(x, y, z).cwiseProduct(box.sizes());
            const double size = box.sizes().maxCoeff(), at = a.at(p);
            if (std::abs(at) > 0.012 * size) continue;  // the surface is what counts
            // Nothing is sculpted thinner than a tenth of a millimetre.
            EXPECT_NEAR(factor * at, b.at(factor * p), 5e-3 * factor * size + 1e-4) << one.bones[i].id << " " << factor;
            ++compared;
          }
    }
    EXPECT_GT(compared, 100);
  }
}

}  // namespace
}  // namespace zyga::range
