#include "core/range/supported_map.h"

#include <gtest/gtest.h>

#include "core/range/joint_evaluator.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"
#include "tests/support/sample_animal.h"
#include "tests/support/two_vertebrae.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;
using test::kDegree;
using test::kOnlyJoint;

struct Posed {
  anatomy::Specimen specimen;
  Assumptions assumptions = grownAnimal();
  kinematics::Articulation articulation = test::eachByItself(articulate(specimen, assumptions));

  SupportedMap map(const Vector3d& angles = Vector3d::Zero(), int size = 48,
                   const NeighbourContact* contact = nullptr) const {
    return supportedMap(specimen, articulation, assumptions, kOnlyJoint, angles, size, contact);
  }
  Level level(const Vector3d& angles) const { return levelAt(specimen, articulation, assumptions, kOnlyJoint, angles); }
};

Posed tilted() { return {test::twoVertebrae({.tilt = 40 * kDegree, .outline = test::Outline::Ellipse})}; }

int count(const SupportedMap& map, Level level) {
  return static_cast<int>(std::count(map.cells.begin(), map.cells.end(), level));
}

TEST(SupportedMap, cellsSayWhatLevelAtSays) {
  const Posed posed = tilted();
  const double torsion = 1.5 * kDegree;
  const SupportedMap map = posed.map({0.3, -0.2, torsion});
  ASSERT_EQ(map.cells.size(), 48u * 48u);
  for (int row = 0; row < map.size; ++row) {
    for (int column = 0; column < map.size; ++column) {
      ASSERT_EQ(map.at(row, column), posed.level({map.dorsiflexionOf(row), map.lateralOf(column), torsion}));
    }
  }
  EXPECT_GT(count(map, Level::Supported), 100);
  EXPECT_GT(count(map, Level::Near), 20);
}

TEST(SupportedMap, doesNotFollowTheAnglesItShows) {
  const Posed posed = tilted();
  EXPECT_EQ(posed.map({0, 0, 0.02}), posed.map({0.3, -0.2, 0.02}));
}

/// Where the axial rotation follows the facets, the map holds what is turned beyond that.
TEST(SupportedMap, goesWithTheAxialRotation) {
  Posed posed = tilted();
  posed.articulation = articulate(posed.specimen, posed.assumptions);
  const JointEvaluator judge(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint);
  const Vector3d own(0.3, -0.2, 0.02);
  const SupportedMap map = posed.map(judge.fromOwn(own));
  EXPECT_GT((judge.fromOwn(own) - own).norm(), 1e-3);
  for (int row = 0; row < map.size; ++row)
    for (int column = 0; column < map.size; ++column)
      ASSERT_EQ(map.at(row, column),
                posed.level(judge.fromOwn({map.dorsiflexionOf(row), map.lateralOf(column), own[2]})));
}

TEST(SupportedMap, isBorderedByWhatIsBeyond) {
  for (const Posed& posed : {tilted(), Posed{test::twoVertebrae()}, Posed{test::twoVertebrae({.tail = true})}}) {
    const SupportedMap map = posed.map();
    for (int i = 0; i < map.size; ++i) {
      EXPECT_EQ(map.at(0, i), Level::Beyond);
      EXPECT_EQ(map.at(map.size - 1, i), Level::Beyond);
      EXPECT_EQ(map.at(i, 0), Level::Beyond);
      EXPECT_EQ(map.at(i, map.size - 1), Level::Beyond);
    }
  }
}

TEST(SupportedMap, endsWhereTheBandsEnd) {
  const Posed posed = tilted();
  const SupportedMap map = posed.map();
  const MotionRange band =
      range::motionRange(posed.specimen, posed.articulation, posed.assumptions, kOnlyJoint, Vector3d::Zero(), 0);
  double least = 0, most = 0;
  for (int row = 0; row < map.size; ++row) {
    if (posed.level({map.dorsiflexionOf(row), 0, 0}) == Level::Beyond) continue;
    least = std::min(least, map.dorsiflexionOf(row));
    most = std::max(most, map.dorsiflexionOf(row));
  }
  const double cell = (map.dorsal - map.ventral) / map.size;
  EXPECT_NEAR(most, band.max, cell);
  EXPECT_NEAR(least, band.min, cell);
}

TEST(SupportedMap, ofTypedLimitsIsTheirRectangle) {
  Posed posed{test::twoVertebrae()};
  posed.specimen.joints[0].kind = anatomy::JointKind::Typed;
  posed.specimen.joints[0].typed =
      anatomy::TypedLimits{{{{0, 120 * kDegree}, {-10 * kDegree, 10 * kDegree}, {0, 0}}}, anatomy::kProgramDefault};
  const SupportedMap map = posed.map();
  EXPECT_NEAR(map.dorsal / kDegree, 120, 15);
  EXPECT_LT(map.ventral, 0);
  EXPECT_EQ(map.at(map.size / 2, map.size / 2), Level::Supported);
}

TEST(SupportedMap, isEmptyWhereNothingCanBeJudged) {
  Posed posed{test::twoVertebrae()};
  posed.specimen.joints[0].kind = anatomy::JointKind::Typed;
  EXPECT_EQ(posed.map().size, 0);
  posed.specimen.joints[0].kind = anatomy::JointKind::Fixed;
  EXPECT_EQ(posed.map().size, 0);
}

TEST(SupportedMap, isBeyondThroughoutWhereTorsionAloneBreaksTheJoint) {
  const SupportedMap map = tilted().map({0, 0, 80 * kDegree});
  EXPECT_EQ(count(map, Level::Beyond), 48 * 48);
  EXPECT_GT(map.dorsal, map.ventral);
}

/// Bones that enter each other by a millimetre a degree, beyond five degrees of dorsiflexion.
class SpinesMeet : public NeighbourContact {
 public:
  ContactPlace deepest(anatomy::JointIndex, const Eigen::Isometry3d& X_PD,
                       const ContactTolerance& tolerance) const override {
    const double raised = std::atan2(X_PD.linear()(2, 0), X_PD.linear()(0, 0));
    return {0.001 * (raised / kDegree - 3), TouchingParts{}, tolerance.depth(1)};
  }
};

TEST(SupportedMap, isCutByContact) {
  Posed posed = tilted();
  posed.assumptions.contactTolerated = {ContactTolerance::In::Millimetres, 2};
  const SpinesMeet spines;
  const SupportedMap plain = posed.map();
  const SupportedMap cut = posed.map(Vector3d::Zero(), 48, &spines);
  int taken = 0;
  for (int row = 0; row < cut.size; ++row) {
    const int middle = cut.size / 2;
    const bool enters = spines
                            .deepest({0},
                                     kinematics::jointTransform(posed.specimen.joints[0], posed.articulation[{0}],
                                                                {cut.dorsiflexionOf(row), cut.lateralOf(middle), 0}),
                                     posed.assumptions.contactTolerated)
                            .beyond();
    EXPECT_EQ(cut.at(row, middle), enters ? Level::Beyond : plain.at(row, middle));
    taken += enters && plain.at(row, middle) != Level::Beyond;
  }
  EXPECT_GT(taken, 0);
}

/// Greatest lateral flexion of a map at each row.
std::vector<double> lateralByRow(const SupportedMap& map) {
  std::vector<double> most(static_cast<std::size_t>(map.size), 0);
  for (int row = 0; row < map.size; ++row) {
    for (int column = 0; column < map.size; ++column) {
      if (map.at(row, column) == Level::Beyond) continue;
      double& here = most[static_cast<std::size_t>(row)];
      here = std::max(here, map.lateralOf(column));
    }
  }
  return most;
}

// Kambic et al. 2017, Front. Zool. 14:37: lateral bend and torsion are coupled to dorsoventral flexion; the supported
// set is no box.
TEST(SupportedMap, ofTheSamplesIsNoBox) {
  for (const char* animal : {"high_browser", "low_browser"}) {
    const anatomy::Specimen specimen = test::sampleAnimal(animal);
    const Assumptions assumptions = grownAnimal();
    const auto articulation = articulate(specimen, assumptions);
    for (int number = 3; number <= 10; ++number) {
      const auto joint = specimen.findJoint("C" + std::to_string(number) + "-C" + std::to_string(number + 1));
      ASSERT_TRUE(joint);
      const SupportedMap map = supportedMap(specimen, articulation, assumptions, *joint, Vector3d::Zero());
      const std::vector<double> most = lateralByRow(map);
      const double greatest = *std::max_element(most.begin(), most.end());
      const auto partly =
          std::count_if(most.begin(), most.end(), [&](double m) { return m > 0 && m < 0.7 * greatest; });
      EXPECT_GE(partly, 6) << specimen[*joint].id << ": bend must be lost gradually as the joint is raised or lowered";
      // Overlap that is spent on dorsiflexion is gone for lateral bending.
      const auto lateral = [&](double dorsiflexion) {
        const MotionRange band =
            range::motionRange(specimen, articulation, assumptions, *joint, {dorsiflexion, 0, 0}, 1);
        return band.max - band.min;
      };
      const MotionRange dorsal = range::motionRange(specimen, articulation, assumptions, *joint, Vector3d::Zero(), 0);
      EXPECT_LT(lateral(0.8 * dorsal.max), 0.6 * lateral(0)) << specimen[*joint].id;
      EXPECT_LT(lateral(0.95 * dorsal.max), lateral(0.8 * dorsal.max)) << specimen[*joint].id;
    }
  }
}

}  // namespace
}  // namespace zyga::range
