#include "core/files/project/project.h"
#include "core/range/findings.h"
#include "core/range/neutral.h"
#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class ReachVerb : public Program {
 protected:
  Ended reach(std::vector<std::string> arguments) const {
    arguments.insert(arguments.begin(), {"reach", smallAnimal(), "--out", "there.zyga"});
    return run(arguments);
  }
  files::Project there() const { return files::readProject(path("there.zyga")); }
  /// Where a bone's point is in a project's present pose, m.
  static Eigen::Vector3d at(const files::Project& project, std::string_view bone, std::string_view landmark) {
    const auto articulation = range::articulate(project.specimen(), project.assumptions);
    const auto index = *project.specimen().findBone(bone);
    return kinematics::forwardKinematics(project.specimen(), articulation, project.pose)[index.value] *
           project.specimen()[index].landmark(landmark);
  }
  Eigen::Vector3d snoutNow() const { return at(files::readProject(path(smallAnimal())), "skull", "snout"); }
  static std::string text(const Eigen::Vector3d& p) {
    return std::to_string(p.x()) + "," + std::to_string(p.y()) + "," + std::to_string(p.z());
  }
};

TEST_F(ReachVerb, BringsTheSnoutThereInsideTheRanges) {
  const Eigen::Vector3d target = snoutNow() + Eigen::Vector3d(-0.05, 0.1, -0.15);
  const auto ended = reach({"--bone", "skull", "--to", text(target), "--json"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  const auto json = ended.json();
  EXPECT_TRUE(json["reached"].toBool());
  EXPECT_LT(json["distance_mm"].toDouble(), 1);
  EXPECT_TRUE(json["stopping_joints"].toArray().isEmpty());
  EXPECT_GT(json["iterations"].toInt(), 0);
  const auto project = there();
  EXPECT_LT((at(project, "skull", "snout") - target).norm(), 1e-3);
  EXPECT_NEAR(json["at_m"].toArray()[2].toDouble(), target.z(), 1e-3);
  const auto articulation = range::articulate(project.specimen(), project.assumptions);
  for (std::size_t j = 0; j < project.specimen().joints.size(); ++j) {
    EXPECT_NE(range::levelAt(project.specimen(), articulation, project.assumptions, {j}, project.pose.angles[j]),
              range::Level::Beyond)
        << project.specimen().joints[j].id;
  }
}

TEST_F(ReachVerb, FallsShortWithTheNearestPoseAndWhatStopsIt) {
  const auto ended = reach({"--bone", "skull", "--to", "0,0,20", "--json"});
  EXPECT_EQ(ended.exit, 1) << ended.err;
  const auto json = ended.json();
  EXPECT_FALSE(json["reached"].toBool());
  EXPECT_GT(json["distance_mm"].toDouble(), 1000);
  EXPECT_EQ(json["stopping_joints"].toArray().size(), json["stopping_words"].toArray().size());
  EXPECT_TRUE(std::filesystem::exists(path("there.zyga")));
  EXPECT_THAT(reach({"--bone", "skull", "--to", "0,0,20"}).out,
              AllOf(HasSubstr("does not reach"), HasSubstr("mm short")));
}

TEST_F(ReachVerb, FreePassesTheRangesAndNamesWhatBreaks) {
  const Eigen::Vector3d target = snoutNow() + Eigen::Vector3d(-0.5, 0, 0.3);
  const auto ended = reach({"--bone", "skull", "--to", text(target), "--free", "--json"});
  const auto json = ended.json();
  EXPECT_EQ(ended.exit, json["reached"].toBool() ? 0 : 1);
  const auto project = there();
  const auto articulation = range::articulate(project.specimen(), project.assumptions);
  for (const auto& id : json["beyond"].toArray()) {
    const auto joint = *project.specimen().findJoint(id.toString().toStdString());
    EXPECT_EQ(range::levelAt(project.specimen(), articulation, project.assumptions, joint, project.pose[joint]),
              range::Level::Beyond);
  }
}

TEST_F(ReachVerb, LockedJointsAndTheJointsBeforeTheBaseStay) {
  const Eigen::Vector3d target = snoutNow() + Eigen::Vector3d(-0.02, 0.03, -0.05);
  reach({"--bone", "skull", "--to", text(target), "--lock", "C3-C4,C2-C3", "--base", "C4-C5", "--style", "base"});
  const auto project = there();
  for (const auto* id : {"C3-C4", "C2-C3", "C5-C6"}) {
    EXPECT_EQ(project.pose[*project.specimen().findJoint(id)].norm(), 0) << id;
  }
  EXPECT_GT(project.pose[*project.specimen().findJoint("C4-C5")].norm(), 0);
}

TEST_F(ReachVerb, TellsBadInput) {
  const std::vector<std::pair<std::vector<std::string>, const char*>> cases{
      {{"--to", "1,2,3"}, "--bone"},
      {{"--bone", "skull"}, "--to"},
      {{"--bone", "skul", "--to", "1,2,3"}, "no bone skul"},
      {{"--bone", "skull", "--to", "1,2"}, "three numbers"},
      {{"--bone", "skull", "--to", "1,2,nan"}, "three numbers"},
      {{"--bone", "skull", "--to", "1,2,3", "--gaze", "0,0,0"}, "no direction"},
      {{"--bone", "skull", "--to", "1,2,3", "--point", "ear"}, "snout"},
      {{"--bone", "skull", "--to", "1,2,3", "--base", "hip.L"}, "does not carry"},
      {{"--bone", "S1", "--to", "1,2,3"}, "no joint that could turn"},
      {{"--bone", "skull", "--to", "1,2,3", "--style", "odd"}, "even, base"}};
  for (const auto& [arguments, words] : cases) {
    const auto ended = reach(arguments);
    EXPECT_EQ(ended.exit, 2) << words;
    EXPECT_THAT(ended.err, HasSubstr(words));
    EXPECT_FALSE(std::filesystem::exists(path("there.zyga")));
  }
}

}  // namespace
}  // namespace zyga::app
