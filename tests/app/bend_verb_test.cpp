#include <numbers>

#include "core/files/project/project.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class BendVerb : public Program {
 protected:
  Ended bend(std::vector<std::string> arguments) const {
    arguments.insert(arguments.begin(), {"bend", smallAnimal(), "--out", "bent.zyga"});
    return run(arguments);
  }
  files::Project bent() const { return files::readProject(path("bent.zyga")); }
  static Eigen::Vector3d degrees(const files::Project& project, const kinematics::Pose& pose, std::string_view joint) {
    return pose[*project.specimen().findJoint(joint)] * 180 / std::numbers::pi;
  }
};

TEST_F(BendVerb, SetsEachJointsOwnAngles) {
  const auto ended = bend({"--joint", "C3-C4", "--dorsiflexion", "3", "--torsion=-1", "--joint", "Ca2-Ca3", "--lateral",
                           "2.5", "--joint", "jaw", "--dorsiflexion", "-4"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  const auto project = bent();
  EXPECT_TRUE(degrees(project, project.pose, "C3-C4").isApprox(Eigen::Vector3d(3, 0, -1), 1e-12));
  const Eigen::Vector3d aside = degrees(project, project.pose, "Ca2-Ca3");
  EXPECT_TRUE(aside.head<2>().isApprox(Eigen::Vector2d(0, 2.5), 1e-12));
  EXPECT_LT(std::abs(aside.z()), 0.2) << "what the facets ask for";
  EXPECT_TRUE(project.pose.isAxialTyped(project.specimen().findJoint("C3-C4").value()));
  EXPECT_FALSE(project.pose.isAxialTyped(project.specimen().findJoint("Ca2-Ca3").value()));
  EXPECT_THAT(ended.out, AllOf(HasSubstr("C3-C4 "), HasSubstr("3 joints bent")));
}

TEST_F(BendVerb, LeavesNamedPosesAloneUnlessOneIsNamed) {
  bend({"--joint", "C3-C4", "--dorsiflexion", "3"});
  const auto project = bent();
  ASSERT_EQ(project.poses.size(), 1U);
  EXPECT_EQ(degrees(project, project.poses[0].pose, "C3-C4").norm(), 0);
  bend({"--joint", "C3-C4", "--dorsiflexion", "3", "--pose", "neutral standing"});
  EXPECT_EQ(bent().poses[0].pose, bent().pose);
  EXPECT_NEAR(degrees(bent(), bent().pose, "C3-C4").x(), 3, 1e-12);
}

TEST_F(BendVerb, SpanSharesTheTurnInProportionToTheRanges) {
  ASSERT_EQ(bend({"--span", "C2-C6", "--dorsiflexion", "8"}).exit, 0);
  const auto project = bent();
  const auto articulation = range::articulate(project.specimen(), project.assumptions);
  double sum = 0;
  std::vector<double> perRange;
  for (const auto* id : {"C2-C3", "C3-C4", "C4-C5", "C5-C6"}) {
    const auto joint = *project.specimen().findJoint(id);
    const auto band =
        range::motionRange(project.specimen(), articulation, project.assumptions, joint, Eigen::Vector3d::Zero(), 0);
    const double turn = degrees(project, project.pose, id).x();
    sum += turn;
    perRange.push_back(turn / (band.max - band.min));
  }
  EXPECT_NEAR(sum, 8, 1e-9);
  for (const double share : perRange) EXPECT_NEAR(share, perRange.front(), 1e-3 * perRange.front());
  EXPECT_EQ(degrees(project, project.pose, "C1-C2").norm(), 0);
}

TEST_F(BendVerb, SpanAddsToWhatIsThere) {
  ASSERT_EQ(bend({"--joint", "C3-C4", "--dorsiflexion", "1", "--span", "C4-C3", "--dorsiflexion", "2"}).exit, 0);
  EXPECT_NEAR(degrees(bent(), bent().pose, "C3-C4").x(), 3, 1e-9);
}

TEST_F(BendVerb, BeyondRangeIsWrittenAndTold) {
  const auto ended = bend({"--joint", "C3-C4", "--dorsiflexion", "40"});
  EXPECT_EQ(ended.exit, 0);
  EXPECT_THAT(ended.out, HasSubstr("C3-C4 out of range: "));
  EXPECT_EQ(run({"assess", "bent.zyga"}).exit, 1);
}

struct Fault {
  std::vector<std::string> arguments;
  const char* message;
};

class BendFault : public BendVerb, public testing::WithParamInterface<Fault> {};

TEST_P(BendFault, IsToldAndNothingIsWritten) {
  const auto ended = bend(GetParam().arguments);
  EXPECT_EQ(ended.exit, 2);
  EXPECT_THAT(ended.err, HasSubstr(GetParam().message));
  EXPECT_FALSE(std::filesystem::exists(path("bent.zyga")));
}

INSTANTIATE_TEST_SUITE_P(
    All, BendFault,
    testing::Values(Fault{{}, "nothing to bend"}, Fault{{"--joint", "C3-C4"}, "--joint C3-C4 has no angle"},
                    Fault{{"--dorsiflexion", "3"}, "--dorsiflexion comes before any --joint"},
                    Fault{{"--joint", "C3-C9", "--lateral", "1"}, "there is no joint C3-C9"},
                    Fault{{"--joint", "S1-S2", "--lateral", "1"}, "S1-S2 does not move"},
                    Fault{{"--span", "C3", "--lateral", "1"}, "does not name two bones"},
                    Fault{{"--span", "S1-S3", "--lateral", "1"}, "nothing moves between S1-S3"},
                    Fault{{"--joint", "C3-C4", "--lateral", "much"},
                          "'much' is not a number; write degrees from -180 to 180"},
                    Fault{{"--joint", "C3-C4", "--lateral", "181"}, "from -180 to 180"},
                    Fault{{"--joint", "C3-C4", "--sideways", "1"}, "unknown option --sideways"},
                    Fault{{"--joint", "C3-C4", "--lateral", "1", "--pose", "none"}, "there is no pose 'none'"}));

}  // namespace
}  // namespace zyga::app
