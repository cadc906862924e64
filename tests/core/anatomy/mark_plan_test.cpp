#include "core/anatomy/marks/mark_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numbers>
#include <set>

#include "core/anatomy/marks/straighten.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/summary.h"
#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

const Specimen& sculpted() {
  static const Specimen specimen = buildSpecimen(fillBlanks(MeasurementTable{}));
  return specimen;
}
const Bone& bone(std::string_view id) { return sculpted()[*sculpted().findBone(id)]; }

Eigen::Isometry3d somewhere() {
  Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
  X.linear() = Eigen::AngleAxisd(2.1, Vector3d(1, 2, -1).normalized()).toRotationMatrix();
  X.translation() = Vector3d(3, -1, 0.5);
  return X;
}

/// A scan of a vertebra that lies anyhow, with only the marks of the mid-line and those of the left.
Scan leftHalf(const Bone& original, const Eigen::Affine3d& X_SB) {
  Scan scan;
  scan.bone = original.name;
  const Vector3d canal = original.landmark("canal");
  setLandmark(scan, original, std::string(kCanalCranial), X_SB * (canal + Vector3d(0.1, 0, 0)));
  setLandmark(scan, original, std::string(kCanalCaudal), X_SB * (canal - Vector3d(0.1, 0, 0)));
  for (const auto& [name, p] : original.landmarks)
    if (name != "canal" && !name.ends_with(".R")) setLandmark(scan, original, name, X_SB * p);
  for (const Facet& facet : original.facets)
    if (isLeft(facet.role)) setFacet(scan, original, {mapped(facet, X_SB), 0.0002});
  return scan;
}

TEST(MarkPlan, AsksForEverythingABoneHasOnceAndNamesItForPeople) {
  for (const Bone& each : sculpted().bones) {
    std::set<std::string> names;
    std::set<std::pair<std::string_view, Side>> words;
    for (const WantedMark& mark : marksFor(each)) {
      EXPECT_TRUE(names.insert(mark.name).second) << each.id << " " << mark.name;
      EXPECT_TRUE(words.insert({mark.what.id, mark.side}).second) << each.id << " " << mark.what.id;
      EXPECT_FALSE(mark.purpose.id.empty()) << each.id << " " << mark.name;
      EXPECT_FALSE(mark.what.id.empty()) << mark.name << " has a word of the trade";
    }
    for (const auto& [name, p] : each.landmarks)
      EXPECT_TRUE(names.contains(name) || name == "canal") << each.id << " " << name;
    for (const Facet& facet : each.facets) EXPECT_TRUE(names.contains(std::string(toText(facet.role))));
  }
}

TEST(MarkPlan, WhatIsNeededSufficesToLayAVertebraAndToJudgeIt) {
  const Eigen::Affine3d X_SB(somewhere());
  for (const char* id : {"C7", "D4", "Ca3"}) {
    const Bone& original = bone(id);
    Scan scan;
    scan.bone = original.name;
    for (const WantedMark& mark : marksFor(original)) {
      if (!mark.required) continue;
      const Vector3d canal = original.landmark("canal");
      if (mark.role)
        setFacet(scan, original, {mapped(*original.facet(*mark.role), X_SB), 0});
      else if (mark.name == kCanalCranial)
        setLandmark(scan, original, mark.name, X_SB * (canal + Vector3d(0.1, 0, 0)));
      else if (mark.name == kCanalCaudal)
        setLandmark(scan, original, mark.name, X_SB * (canal - Vector3d(0.1, 0, 0)));
      else
        setLandmark(scan, original, mark.name, X_SB * original.landmark(mark.name));
    }
    EXPECT_TRUE(scan.placed) << id;
    EXPECT_TRUE((boneFromScan(scan) * X_SB).isApprox(Eigen::Affine3d::Identity(), 1e-9)) << id;
    EXPECT_LT((landmarksInBone(scan).at("canal") - original.landmark("canal")).norm(), 1e-9);
    const Specimen mixed = withScans(sculpted(), std::span(&scan, 1));
    for (std::size_t j = 0; j < mixed.joints.size(); ++j)
      if (mixed[mixed.joints[j].distal].id == id || mixed[mixed.joints[j].proximal].id == id) {
        EXPECT_THAT(missingInputs(mixed, {j}, std::span(&scan, 1)), testing::IsEmpty()) << id;
      }
  }
}

TEST(MirrorMarks, TheOtherHalfOfASymmetricBoneComesOutWhereItIs) {
  const Bone& original = bone("C7");
  const Eigen::Affine3d X_SB(somewhere());
  Scan scan = leftHalf(original, X_SB);
  ASSERT_TRUE(scan.placed);
  const int made = mirrorMarks(scan, original);
  EXPECT_EQ(made, 2 + 3) << "two facets, diapophysis, parapophysis and end of the rib";
  for (const auto& [name, p] : original.landmarks) EXPECT_LT((landmarksInBone(scan).at(name) - p).norm(), 1e-9) << name;
  for (const Facet& facet : facetsInBone(scan)) {
    const Facet& known = *original.facet(facet.role);
    EXPECT_LT((facet.centre - known.centre).norm(), 1e-9);
    EXPECT_LT((facet.normal - known.normal).norm(), 1e-9);
    EXPECT_NEAR(facet.length(), known.length(), 1e-9);
    EXPECT_NEAR(facet.width(), known.width(), 1e-9);
  }
  EXPECT_EQ(mirrorMarks(scan, original), 0) << "nothing is missing any more";
}

TEST(MirrorMarks, OneMarkGoesOverItsPartnerAndABoneWithoutMidPlaneIsRefused) {
  const Bone& original = bone("C7");
  const Eigen::Affine3d X_SB(somewhere());
  Scan scan = leftHalf(original, X_SB);
  scan.landmarks["diapophysis.R"] = X_SB * Vector3d(1, 1, 1);
  EXPECT_EQ(mirrorMarks(scan, original, "diapophysis.L"), 1);
  EXPECT_FALSE(facetOf(scan, FacetRole::PrezygRight));
  EXPECT_LT((scan.landmarks.at("diapophysis.R") - X_SB * original.landmark("diapophysis.R")).norm(), 1e-9);
  Scan thigh;
  thigh.bone = *parseBoneId("femur.L");
  thigh.placed = true;
  EXPECT_THROW(mirrorMarks(thigh, bone("femur.L")), reason::Failure);
  Scan blank;
  blank.bone = original.name;
  EXPECT_THROW(mirrorMarks(blank, original), reason::Failure);
}

TEST(SetFacet, SlidesAsTheSculptedOneOnceTheBoneLies) {
  const Bone& original = bone("C7");
  const Eigen::Affine3d X_SB(somewhere());
  Facet turned = mapped(*original.facet(FacetRole::PrezygLeft), X_SB);
  // The same patch with its outline told in other axes of its plane.
  std::vector<Vector3d> corners;
  for (std::size_t i = 0; i < turned.outline.size(); ++i) corners.push_back(turned.corner(i));
  turned.slide = Eigen::AngleAxisd(0.7, turned.normal) * turned.slide;
  for (std::size_t i = 0; i < corners.size(); ++i)
    turned.outline[i] = {(corners[i] - turned.centre).dot(turned.slide),
                         (corners[i] - turned.centre).dot(turned.across())};
  Scan scan;
  scan.bone = original.name;
  setFacet(scan, original, {turned, 0});
  EXPECT_FALSE(scan.placed);
  const Scan rest = leftHalf(original, X_SB);
  for (const auto& [name, p] : rest.landmarks) setLandmark(scan, original, name, p);
  ASSERT_TRUE(scan.placed);
  const Facet made = facetsInBone(scan).front();
  EXPECT_LT((made.slide - original.facet(FacetRole::PrezygLeft)->slide).norm(), 1e-9);
  for (std::size_t i = 0; i < corners.size(); ++i)
    EXPECT_LT((made.corner(i) - original.facet(FacetRole::PrezygLeft)->corner(i)).norm(), 1e-9);
}

/// A shear by a known angle (closed form: the map is known) is found from the marks and undone.
TEST(StraightenScan, AShearIsFoundAndUndoneAndTheMarksStay) {
  const Bone& original = bone("C7");
  const double angle = 8 * std::numbers::pi / 180;
  Eigen::Affine3d shear = Eigen::Affine3d::Identity();
  shear.linear()(2, 1) = std::tan(angle);  // the left side slid up
  Scan scan = leftHalf(original, somewhere() * shear);
  for (const auto& [name, p] : original.landmarks)
    if (name.ends_with(".R")) scan.landmarks[name] = somewhere() * shear * p;
  const auto found = straightening(scan, DeformedBy::Shear);
  EXPECT_NEAR(found.amount, angle, 1e-6);
  EXPECT_LT(found.asymmetry, 1e-9);
  EXPECT_GT(found.before, 0.01);
  const auto before = scan.landmarks;
  const Scan straight = straightened(scan, original, found.map);
  EXPECT_EQ(straight.landmarks, before);
  EXPECT_EQ(straight.evidence, Evidence::FoundDeformed);
  EXPECT_LT((landmarksInBone(straight).at("diapophysis.R") - original.landmark("diapophysis.R")).norm(), 1e-6);
  const Scan back = straightened(straight, original, Eigen::Matrix3d::Identity());
  EXPECT_EQ(back.evidence, Evidence::Found);
  EXPECT_TRUE(back.straighten.isIdentity());
}

TEST(ScaledTable, EveryLengthGrowsAndAnglesStay) {
  MeasurementTable table = fillBlanks(MeasurementTable{});
  TableRow& found = *table.find(*parseBoneId("C7"));
  found.evidence = Evidence::Found;
  found.source = "invented";
  const MeasurementTable larger = scaledTable(table, 1.25);
  const Summary a = summarise(buildSpecimen(table)), b = summarise(buildSpecimen(larger));
  EXPECT_NEAR(b.femur, 1.25 * a.femur, 1e-12);
  EXPECT_NEAR(b.total, 1.25 * a.total, 1e-9);
  const auto tilt = [](const MeasurementTable& t) {
    return t.find(*parseBoneId("C7"))->measures.value(Measure::FacetTilt);
  };
  EXPECT_EQ(tilt(larger), tilt(table));
  EXPECT_EQ(larger.find(*parseBoneId("C7"))->evidence, Evidence::Scaled);
  EXPECT_EQ(larger.find(*parseBoneId("C7"))->source, "invented; × 1.25");
  EXPECT_THROW(scaledTable(table, 0), reason::Failure);
}

}  // namespace
}  // namespace zyga::anatomy
