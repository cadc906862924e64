#include <gtest/gtest.h>

#include <numbers>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/specimen_reasons.h"
#include "core/anatomy/summary.h"

namespace zyga::anatomy {
namespace {

Specimen build(const std::string& text) {
  const TableReading reading = readMeasurementTable(text, "t.csv");
  EXPECT_TRUE(reading.usable());
  return buildSpecimen(fillBlanks(reading.table));
}

// B8 of the checks: the region counts that occur all build (mixed sources, partly memory).
class Counts : public ::testing::TestWithParam<RegionCounts> {};

TEST_P(Counts, WholeAnimalBuilds) {
  MeasurementTable table;
  for (const BodyPlan plan : {BodyPlan::HighBrowser, BodyPlan::LowBrowser}) {
    table.plan = plan;
    table.counts = GetParam();
    const Specimen specimen = buildSpecimen(fillBlanks(table));
    EXPECT_EQ(specimen.joints.size() + 1, specimen.bones.size());
    for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
      const Joint& joint = specimen.joints[j];
      const auto carrier = specimen.jointAbove(joint.proximal);
      EXPECT_TRUE(!carrier || carrier->value < j)
          << joint.id << ": the joint that carries the proximal bone comes first";
      EXPECT_EQ(specimen.jointAbove(joint.distal)->value, j) << joint.id;
      EXPECT_TRUE(joint.restRotation.isUnitary(1e-9)) << joint.id;
    }
    EXPECT_EQ(specimen.bones[0].id, "S1");
    EXPECT_TRUE(specimen.findJoint("skull-C1"));
    const std::string lastCaudal = "Ca" + std::to_string(GetParam().caudal);
    EXPECT_TRUE(specimen.findBone(lastCaudal));
  }
}

INSTANTIATE_TEST_SUITE_P(Occurring, Counts,
                         ::testing::Values(RegionCounts{2, 9, 4, 10}, RegionCounts{12, 12, 5, 45},
                                           RegionCounts{13, 11, 5, 52}, RegionCounts{15, 10, 5, 80},
                                           RegionCounts{19, 14, 6, 90}));

TEST(BuildColumn, FacetsOfAJointAreEqualAndMirrorEachOther) {
  const Specimen specimen = build("bone,length (mm)\nC7,460\n");
  const Bone& c7 = specimen[*specimen.findBone("C7")];
  const Bone& c6 = specimen[*specimen.findBone("C6")];
  const Facet* left = c7.facet(FacetRole::PrezygLeft);
  const Facet* right = c7.facet(FacetRole::PrezygRight);
  const Facet* post = c6.facet(FacetRole::PostzygLeft);
  ASSERT_TRUE(left && right && post);
  EXPECT_TRUE(right->centre.isApprox(left->centre.cwiseProduct(Eigen::Vector3d(1, -1, 1))));
  EXPECT_TRUE(right->normal.isApprox(left->normal.cwiseProduct(Eigen::Vector3d(1, -1, 1))));
  EXPECT_EQ(left->outline, post->outline);
  EXPECT_GT(left->normal.z(), 0) << "prezyg faces up";
  EXPECT_LT(left->normal.y(), 0) << "and inward";
  EXPECT_LT(post->normal.z(), 0) << "postzyg faces down";
}

TEST(BuildColumn, KindsOfJoints) {
  const Specimen specimen = build("bone,length (mm)\nC7,460\n");
  const auto kind = [&](const char* id) { return specimen[*specimen.findJoint(id)].kind; };
  EXPECT_EQ(kind("C6-C7"), JointKind::BallAndSocket);
  EXPECT_EQ(kind("C13-D1"), JointKind::BallAndSocket);
  EXPECT_EQ(kind("D5-D6"), JointKind::BallAndSocket);
  EXPECT_EQ(kind("D11-S1"), JointKind::FlatFaces);
  EXPECT_EQ(kind("S1-S2"), JointKind::Fixed);
  EXPECT_EQ(kind("S5-Ca1"), JointKind::FlatFaces);
  EXPECT_EQ(kind("Ca10-Ca11"), JointKind::FlatFaces);
  EXPECT_EQ(kind("Ca50-Ca51"), JointKind::Typed);
  EXPECT_EQ(kind("C1-C2"), JointKind::Typed);
  EXPECT_EQ(specimen[*specimen.findJoint("Ca50-Ca51")].typed->source, kProgramDefault);
}

TEST(BuildColumn, CondylesCentreOfCurvatureLiesBehindItsTip) {
  // A cap of depth d over a rim of radius r belongs to a sphere of radius (r^2 + d^2) / 2d.
  const Specimen specimen = build("bone,length (mm),length with condyle (mm),cotyle height (mm)\nC7,460,520,150\n");
  const Bone& c7 = specimen[*specimen.findBone("C7")];
  const double r = 0.45 * 0.150, d = 0.060, R = (r * r + d * d) / (2 * d);
  EXPECT_NEAR(c7.landmark("condyleTip").x(), 0.230 + d, 1e-12);
  EXPECT_NEAR(c7.landmark("cranial").x(), 0.230 + d - R, 1e-12);
}

TEST(BuildColumn, RibsAreAsLongAsMeasured) {
  const Specimen specimen = build("bone,length (mm)\nrib.D5.L,1700\n");
  const Bone& rib = specimen[*specimen.findBone("rib.D5.L")];
  const Eigen::Vector3d head = Eigen::Vector3d::Zero();
  const double chords = (rib.landmark("tuberculum") - head).norm() +
                        (rib.landmark("middle") - rib.landmark("tuberculum")).norm() +
                        (rib.landmark("tip") - rib.landmark("middle")).norm();
  EXPECT_LT(chords, 1.700);
  EXPECT_GT(chords, 1.700 * 0.95);
}

TEST(BuildColumn, UnfilledTableIsRefusedByName) {
  MeasurementTable table = fillBlanks(MeasurementTable{});
  table.find({BoneKind::Cervical, 5, 0, Side::Midline})->measures[Measure::CotyleWidth] = {};
  try {
    buildSpecimen(table);
    FAIL() << "must refuse";
  } catch (const reason::Failure& failure) {
    EXPECT_EQ(failure.reason(),
              reason::Reason(specimen::kNotFilled, {reason::text("C5"), termOf(Measure::CotyleWidth)}));
  }
}

}  // namespace
}  // namespace zyga::anatomy
