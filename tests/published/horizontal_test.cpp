// A13. Taylor & Wedel 2022, J. Paleontol. Techniques 25:1: when is a vertebra horizontal? Four definitions.
#include "core/anatomy/horizontal.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <set>

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/files/project/project.h"
#include "core/kinematics/stand_readings.h"
#include "core/range/neutral.h"
#include "core/study/claims/claim_site.h"
#include "ui/words/assumption_words.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;

const anatomy::Specimen& animal() {
  static const anatomy::Specimen made = anatomy::buildSpecimen(anatomy::fillBlanks({}));
  return made;
}

/// In the mid-plane of a bone of a scan: from straight up, `degrees` towards the head.
Vector3d leaning(double degrees) { return {std::sin(degrees * kDegree), 0, std::cos(degrees * kDegree)}; }

/// How far a line of the bone leans towards the head from what is upright by the definition, degrees.
double lean(const anatomy::Specimen& s, anatomy::BoneIndex bone, const Vector3d& line, HorizontalBy by) {
  const Vector3d cranial = anatomy::cranialDirection(s, bone, by).value();
  const Vector3d up = cranial.cross(Vector3d::UnitY());
  return std::atan2(line.dot(cranial), line.dot(up)) / kDegree;
}

/// D5 as a scan whose canal falls by 15 degrees towards the head against its centrum, its arch leaning so far, degrees.
anatomy::Specimen withScanOf(double archLean) {
  const Bone& model = animal()[*animal().findBone("D5")];
  anatomy::Scan scan;
  scan.bone = model.name;
  for (const char* kept : {"cranialRim", "caudalRim", "cranial", "caudal", "diapophysis.L", "diapophysis.R"})
    scan.landmarks[kept] = model.landmark(kept);
  const Vector3d along(std::cos(15 * kDegree), 0, -std::sin(15 * kDegree)), canal = model.landmark("canal");
  scan.landmarks[std::string(anatomy::kCanalCranial)] = canal + 0.1 * along;
  scan.landmarks[std::string(anatomy::kCanalCaudal)] = canal - 0.1 * along;
  scan.landmarks["canal"] = canal;
  scan.landmarks["spineTop"] = canal + 0.3 * leaning(archLean);
  EXPECT_TRUE(anatomy::placeByLandmarks(scan, model));
  return anatomy::withScans(animal(), std::array{scan});
}

// Their example: a neural arch that leans forward by 35 degrees with the centrum held level leans by 20 once the bone
// is pitched back by 15 to bring its canal level; an arch that leans forward by 10 then leans back by 5. Marks on a
// scan, laid by the program.
TEST(PublishedHorizontal, TheSlopeOfAnArchHangsOnTheDefinition) {
  for (const auto& [byCentrum, byCanal] : {std::pair(35.0, 20.0), std::pair(10.0, -5.0)}) {
    const anatomy::Specimen s = withScanOf(byCentrum);
    const anatomy::BoneIndex d5 = *s.findBone("D5");
    const Vector3d arch = s[d5].landmark("spineTop") - s[d5].landmark("canal");
    EXPECT_NEAR(lean(s, d5, arch, HorizontalBy::CentrumAxis), byCentrum, 1e-6);
    EXPECT_NEAR(lean(s, d5, arch, HorizontalBy::CanalFloor), byCanal, 1e-6);
  }
}

// On a bone of a table the canal runs along the centrum and a wedge is shared by both faces, so that three agree.
TEST(PublishedHorizontal, ThreeDefinitionsAgreeOnABoneOfATable) {
  anatomy::MeasurementTable table = anatomy::fillBlanks({});
  table.find({anatomy::BoneKind::Dorsal, 5})->measures[anatomy::Measure::Wedge].value = 10 * kDegree;
  const anatomy::Specimen s = anatomy::buildSpecimen(table);
  for (const char* id : {"C6", "D5", "Ca4"}) {
    for (const HorizontalBy by : {HorizontalBy::CanalFloor, HorizontalBy::CentrumAxis, HorizontalBy::CentrumFaces}) {
      EXPECT_LT((anatomy::cranialDirection(s, *s.findBone(id), by).value() - Vector3d::UnitX()).norm(), 1e-12) << id;
    }
  }
}

// Faces: the mean of both, so a wedge that is all in one face turns it by half of the wedge.
TEST(PublishedHorizontal, FacesOfAWedgedCentrumAreTakenAtTheirMean) {
  anatomy::Specimen s = animal();
  const anatomy::BoneIndex d5 = *s.findBone("D5");
  anatomy::Joint& behind = s.joints[s.findJoint("D5-D6")->value];
  ASSERT_EQ(behind.distal, d5);
  behind.longAxisDistal = Eigen::AngleAxisd(-12 * kDegree, Vector3d::UnitY()) * behind.longAxisDistal;
  const Vector3d cranial = anatomy::cranialDirection(s, d5, HorizontalBy::CentrumFaces).value();
  EXPECT_NEAR(std::atan2(cranial.z(), cranial.x()) / kDegree, 6, 1e-9);
}

// Similarity in articulation: "two copies of the same vertebra, held in the same orientation, are articulated
// optimally"; the line through any point of both is level then. Three steps carry a copy onto the vertebra.
TEST(PublishedHorizontal, ArticulationJoinsACopyToItsLike) {
  anatomy::Specimen s = animal();
  const anatomy::BoneIndex d5 = *s.findBone("D5");
  anatomy::Bone& bone = s.bones[d5.value];
  // Centrum and facets ask for the same step: it alone decides.
  const Vector3d step = bone.landmark("cranial") - bone.landmark("caudal") + Vector3d(0, 0, 0.05);
  bone.landmarks["caudal"] = bone.landmark("cranial") - step;
  for (anatomy::Facet& facet : bone.facets) {
    if (!anatomy::isPrezyg(facet.role)) continue;
    const auto hind = anatomy::isLeft(facet.role) ? anatomy::FacetRole::PostzygLeft : anatomy::FacetRole::PostzygRight;
    facet.centre = bone.facet(hind)->centre + step;
  }
  const Vector3d cranial = anatomy::cranialDirection(s, d5, HorizontalBy::Articulation).value();
  EXPECT_LT((cranial - step.normalized()).norm(), 1e-12);
  bone.facets.pop_back();
  EXPECT_FALSE(anatomy::cranialDirection(s, d5, HorizontalBy::Articulation)) << "not without all four facets";
  EXPECT_FALSE(anatomy::cranialDirection(s, *s.findBone("skull"), HorizontalBy::CanalFloor)) << "no vertebra";
}

// The definition in use is an assumption: the canal unless somebody says otherwise, saved with the project, followed by
// the reading and by claims, and named beside them.
TEST(PublishedHorizontal, TheOneInUseIsStoredFollowedAndNamed) {
  EXPECT_EQ(range::Assumptions().horizontalBy, HorizontalBy::CanalFloor);
  files::Project project = files::projectFromTable({});
  project.assumptions.horizontalBy = HorizontalBy::Articulation;
  EXPECT_EQ(files::parseProject(files::writeProjectText(project), "a.zyga").assumptions.horizontalBy,
            HorizontalBy::Articulation);

  anatomy::Specimen s = project.specimen();
  const anatomy::BoneIndex last = *s.findBone("C13");
  for (anatomy::Facet& facet : s.bones[last.value].facets)
    if (anatomy::isPrezyg(facet.role)) facet.centre.z() += 0.15;
  const Vector3d along = anatomy::cranialDirection(s, last, HorizontalBy::Articulation).value();
  const double pitch = std::atan2(along.z(), along.x());
  ASSERT_GT(pitch, 5 * kDegree);
  const auto X_WB = kinematics::forwardKinematics(s, kinematics::restArticulation(s), kinematics::Pose::neutral(s));
  const double canal = kinematics::readStand(s, X_WB).neckBaseSlope;
  EXPECT_NEAR(kinematics::readStand(s, X_WB, HorizontalBy::Articulation).neckBaseSlope, canal + pitch, 1e-9);

  project.setSpecimen(s);
  const study::Claim claim{study::ClaimKind::NeckBaseSlope, study::Bound::AtLeast, 0.1};
  EXPECT_LT((study::siteOf(files::scenarioOf(project), claim).span.p_To - along).norm(), 1e-12);
  s.bones[last.value].facets.clear();
  project.setSpecimen(s);
  EXPECT_EQ(study::siteOf(files::scenarioOf(project), claim).missing.id, study::kClaimNeedsHorizontal);

  std::set<QString> names;
  for (const HorizontalBy by : anatomy::kHorizontalBy) {
    names.insert(ui::horizontalName(by));
    EXPECT_TRUE(ui::horizontalSources(by).contains("Taylor & Wedel 2022"));
  }
  EXPECT_EQ(names.size(), 4u);
}

}  // namespace
}  // namespace zyga::anatomy
