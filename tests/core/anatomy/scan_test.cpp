#include "core/anatomy/marks/scan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/specimen_reasons.h"
#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

const Specimen& sculpted() {
  static const Specimen specimen = buildSpecimen(fillBlanks(MeasurementTable{}));
  return specimen;
}

const Bone& bone(const Specimen& specimen, std::string_view id) { return specimen[*specimen.findBone(id)]; }

/// A bone of the specimen as if it had been scanned somewhere in space: its own landmarks and facets, moved.
Scan scanOf(const Bone& original, const Eigen::Isometry3d& X_ScanBone) {
  Scan scan;
  scan.bone = original.name;
  scan.source = "an invented collection";
  for (const auto& [name, p] : original.landmarks) scan.landmarks[name] = X_ScanBone * p;
  const auto canal = original.landmarks.find("canal");
  if (canal != original.landmarks.end()) {
    scan.landmarks[std::string(kCanalCranial)] = X_ScanBone * (canal->second + Vector3d(0.1, 0, 0));
    scan.landmarks[std::string(kCanalCaudal)] = X_ScanBone * (canal->second - Vector3d(0.1, 0, 0));
  }
  for (const Facet& facet : original.facets)
    scan.facets.push_back({mapped(facet, Eigen::Affine3d(X_ScanBone)), 0.0002});
  return scan;
}

Eigen::Isometry3d somewhere() {
  Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
  X.linear() = (Eigen::AngleAxisd(2.1, Vector3d(1, 2, -1).normalized())).toRotationMatrix();
  X.translation() = Vector3d(3, -1, 0.5);
  return X;
}

void expectSameBone(const Bone& a, const Bone& b) {
  for (const auto& [name, p] : a.landmarks) EXPECT_LT((b.landmark(name) - p).norm(), 1e-9) << a.id << " " << name;
  ASSERT_EQ(a.facets.size(), b.facets.size());
  for (const Facet& facet : a.facets) {
    const Facet* other = b.facet(facet.role);
    ASSERT_NE(other, nullptr);
    EXPECT_LT((other->centre - facet.centre).norm(), 1e-9);
    EXPECT_LT((other->normal - facet.normal).norm(), 1e-9);
    EXPECT_LT((other->slide - facet.slide).norm(), 1e-9);
    for (std::size_t i = 0; i < facet.outline.size(); ++i) EXPECT_LT((other->corner(i) - facet.corner(i)).norm(), 1e-9);
  }
}

TEST(Scan, PlacedByItsLandmarksABoneIsItself) {
  for (const char* id : {"C7", "D3", "Ca12", "femur.L", "skull"}) {
    const Bone& original = bone(sculpted(), id);
    Scan scan = scanOf(original, somewhere());
    ASSERT_TRUE(placeByLandmarks(scan, original)) << id;
    const Specimen mixed = withScans(sculpted(), std::span(&scan, 1));
    expectSameBone(original, bone(mixed, id));
    EXPECT_EQ(bone(mixed, id).evidence, Evidence::Found);
    EXPECT_EQ(bone(mixed, id).source, "an invented collection");
    for (std::size_t j = 0; j < mixed.joints.size(); ++j) {
      EXPECT_LT((mixed.joints[j].centreProximal - sculpted().joints[j].centreProximal).norm(), 1e-9);
      EXPECT_LT((mixed.joints[j].centreDistal - sculpted().joints[j].centreDistal).norm(), 1e-9);
    }
  }
}

TEST(Scan, AVertebraNeedsLittleToLie) {
  const Bone& original = bone(sculpted(), "C7");
  const Scan whole = scanOf(original, somewhere());
  for (const char* dorsal : {"spineTop", "canal"}) {
    Scan scan = whole;
    scan.facets.clear();
    scan.landmarks.clear();
    for (const char* name : {"cranialRim", "caudalRim", dorsal})
      scan.landmarks[name] = whole.landmarks.find(name)->second;
    ASSERT_TRUE(placeByLandmarks(scan, original)) << dorsal;
    EXPECT_LT((boneFromScan(scan) * (somewhere() * Vector3d(0.1, 0.2, 0.3)) - Vector3d(0.1, 0.2, 0.3)).norm(), 1e-9);
  }
  Scan scan = whole;
  scan.facets.clear();
  scan.landmarks = {{"cranialRim", {0, 0, 0}}, {"caudalRim", {1, 0, 0}}};
  const Scan before = scan;
  EXPECT_FALSE(placeByLandmarks(scan, original));
  EXPECT_EQ(scan.X_BoneScan.matrix(), before.X_BoneScan.matrix());
  EXPECT_FALSE(scan.placed);
}

TEST(Scan, CentresOfRotationFollowTheirLandmarks) {
  const Bone& original = bone(sculpted(), "C7");
  Scan scan = scanOf(original, Eigen::Isometry3d::Identity());
  const Vector3d moved = original.landmark("cranial") + Vector3d(0.01, 0, 0.003);
  scan.landmarks["cranial"] = moved;
  const Specimen mixed = withScans(sculpted(), std::span(&scan, 1));
  const auto joint = *sculpted().findJoint("C6-C7");
  const Joint& now = mixed[joint];
  const bool proximal = mixed[now.proximal].id == "C7";
  EXPECT_TRUE((proximal ? now.centreProximal : now.centreDistal).isApprox(moved));
  EXPECT_EQ(mixed[*sculpted().findJoint("C7-C8")].centreProximal,
            sculpted()[*sculpted().findJoint("C7-C8")].centreProximal);
}

TEST(Scan, MirroredItIsTheBoneOfTheOtherSide) {
  Scan left = scanOf(bone(sculpted(), "femur.L"), somewhere());
  ASSERT_TRUE(placeByLandmarks(left, bone(sculpted(), "femur.L")));
  const Scan right = mirroredScan(left);
  EXPECT_EQ(toId(right.bone), "femur.R");
  EXPECT_EQ(right.evidence, Evidence::Mirrored);
  EXPECT_THAT(right.source, HasSubstr("femur.L"));
  const Specimen mixed = withScans(sculpted(), std::span(&right, 1));
  expectSameBone(bone(sculpted(), "femur.R"), bone(mixed, "femur.R"));
  EXPECT_LT(boneFromScan(right).linear().determinant(), 0);
  // A mirrored vertebra keeps its name; its left facets are the right ones of the original.
  Scan c7 = scanOf(bone(sculpted(), "C7"), Eigen::Isometry3d::Identity());
  const Scan other = mirroredScan(c7);
  const Specimen same = withScans(sculpted(), std::span(&other, 1));
  for (const Facet& facet : bone(sculpted(), "C7").facets)
    EXPECT_LT((bone(same, "C7").facet(facet.role)->centre - facet.centre).norm(), 1e-9);
}

TEST(Scan, ScaledItGrowsAboutTheBonesOrigin) {
  Scan scan = scanOf(bone(sculpted(), "C7"), somewhere());
  ASSERT_TRUE(placeByLandmarks(scan, bone(sculpted(), "C7")));
  const Scan large = scaledScan(scan, 1.5);
  EXPECT_EQ(large.evidence, Evidence::Scaled);
  for (const auto& [name, p] : landmarksInBone(scan))
    EXPECT_LT((landmarksInBone(large).find(name)->second - 1.5 * p).norm(), 1e-9);
  const double length = facetsInBone(scan)[0].length();
  EXPECT_NEAR(facetsInBone(large)[0].length(), 1.5 * length, 1e-12);
  EXPECT_THROW(scaledScan(scan, 0), reason::Failure);
  EXPECT_THROW(scaledScan(scan, -1), reason::Failure);
}

TEST(Scan, TheChecklistSaysWhatAJointLacks) {
  const auto joint = *sculpted().findJoint("C6-C7");
  EXPECT_THAT(missingInputs(sculpted(), joint, {}), IsEmpty());
  Scan c6 = scanOf(bone(sculpted(), "C6"), somewhere());
  ASSERT_TRUE(placeByLandmarks(c6, bone(sculpted(), "C6")));
  EXPECT_THAT(missingInputs(sculpted(), joint, std::span(&c6, 1)), IsEmpty());
  c6.landmarks.erase("caudal");
  std::erase_if(c6.facets, [](const ScanFacet& f) { return f.facet.role == FacetRole::PostzygLeft; });
  c6.placed = false;
  EXPECT_THAT(missingInputs(sculpted(), joint, std::span(&c6, 1)),
              ElementsAre(reason::Reason(scan::kLacksPlace, {reason::text("C6")}),
                          reason::Reason(scan::kLacksCaudalCentre, {reason::text("C6")}),
                          reason::Reason(scan::kLacksFacet, {reason::text("C6"), termOf(FacetRole::PostzygLeft)})));
  EXPECT_THAT(missingInputs(sculpted(), *sculpted().findJoint("hip.L"), std::span(&c6, 1)), IsEmpty());
}

TEST(Scan, ABoneThatIsNotThereIsRefused) {
  Scan scan;
  scan.bone = *parseBoneId("C44");
  EXPECT_THROW(withScans(sculpted(), std::span(&scan, 1)), reason::Failure);
  scan.bone = *parseBoneId("rib.C5.L");
  EXPECT_THROW(withScans(sculpted(), std::span(&scan, 1)), reason::Failure);
}

}  // namespace
}  // namespace zyga::anatomy
