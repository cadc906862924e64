#include <cmath>

#include "core/files/project/project.h"
#include "core/kinematics/standing.h"
#include "core/range/neutral.h"
#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::HasSubstr;

class StandVerb : public Program {
 protected:
  std::string highBrowser() const {
    EXPECT_EQ(run({"make", ZYGAPOSE_SAMPLE_TABLE, "--out", "high.zyga"}).exit, 0);
    return "high.zyga";
  }
};

TEST_F(StandVerb, TellsHowTheSampleStands) {
  const auto ended = run({"stand", highBrowser(), "--out", "stood.zyga", "--json"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  const auto json = ended.json();
  // Common practice, no source: the high browser's trunk rises forward and its tail leaves the hip near level.
  EXPECT_GT(json["trunk_slope_deg"].toDouble(), 6);
  EXPECT_LT(std::abs(json["tail_base_slope_deg"].toDouble()), 10);
  EXPECT_NEAR(json["roll_deg"].toDouble(), 0, 1e-3);
  EXPECT_GT(json["hip_height_m"].toDouble(), 2);
  EXPECT_GT(json["glenoacetabular_distance_m"].toDouble(), 2);
  // 55 to 65 degrees in three genera: Schwarz, Frey & Meyer 2007, Anat. Rec. 290:32.
  EXPECT_GT(json["blade_slope_deg"].toArray()[0].toDouble(), 55);
  EXPECT_LT(json["blade_slope_deg"].toArray()[0].toDouble(), 65);
  ASSERT_EQ(json["feet"].toArray().size(), 4);
  for (const auto foot : json["feet"].toArray()) EXPECT_LT(std::abs(foot.toObject()["height_mm"].toDouble()), 1);
}

TEST_F(StandVerb, EveryStanceIsWrittenAndTold) {
  highBrowser();
  for (const std::string stance : {"alert", "browse", "drink", "walk-1", "walk-2", "walk-3", "walk-4", "rear"}) {
    const auto ended = run({"stand", "high.zyga", "--stance", stance, "--out", "stood.zyga", "--json"});
    EXPECT_EQ(ended.exit, 0) << stance << ended.err << ended.out;
    const auto json = ended.json();
    EXPECT_EQ(json["stance"].toString().toStdString(), stance);
    EXPECT_TRUE(json["complete"].toBool()) << stance;
    EXPECT_TRUE(json["beyond"].toArray().isEmpty()) << stance;
    const auto project = files::readProject(path("stood.zyga"));
    const auto articulation = range::articulate(project.specimen(), project.assumptions);
    const auto X_WB = kinematics::forwardKinematics(project.specimen(), articulation, project.pose);
    const std::size_t planted = kinematics::plantedFeet(project.specimen(), X_WB).size();
    EXPECT_EQ(planted, stance == "rear" ? 2U : stance.starts_with("walk") ? 3U : 4U) << stance;
    EXPECT_EQ(json["tail_load"].isNull(), stance != "rear") << stance;
    const auto load = json["tail_load"].toObject();
    EXPECT_LE(load["share_least"].toDouble(), load["share_most"].toDouble()) << stance;
    EXPECT_LT(stance == "drink" ? json["snout_height_m"].toDouble() : 0, 0.01);
  }
}

TEST_F(StandVerb, ReadsForPeopleNameUnitsAndPlace) {
  const auto ended = run({"stand", smallAnimal(), "--out", "stood.zyga"});
  EXPECT_THAT(ended.out, HasSubstr("hip height"));
  EXPECT_THAT(ended.out, HasSubstr("\u00A0m\n"));
  EXPECT_THAT(ended.out, HasSubstr("wrote stood.zyga"));
}

TEST_F(StandVerb, SlopeOfTheNeckBaseSaysByWhatItIsMeasured) {
  const std::string animal = smallAnimal();
  const auto json = [&](const std::string& by) {
    return run({"stand", animal, "--horizontal-by", by, "--out", "by.zyga", "--json"}).json();
  };
  EXPECT_EQ(json("canal")["horizontal_by"].toString(), "neural canal");
  EXPECT_EQ(json("articulation")["horizontal_by"].toString(), "articulation");
  EXPECT_NE(json("canal")["neck_base_slope_deg"].toDouble(), json("articulation")["neck_base_slope_deg"].toDouble());
  EXPECT_THAT(run({"stand", animal, "--out", "by.zyga"}).out, testing::HasSubstr("(floor of the neural canal)"));
}

TEST_F(StandVerb, BadInputIsTold) {
  const auto unknown = run({"stand", smallAnimal(), "--stance", "fly", "--out", "stood.zyga"});
  EXPECT_EQ(unknown.exit, 2);
  EXPECT_THAT(unknown.err, HasSubstr("'fly' is not among alert, browse, drink, walk-1, walk-2, walk-3, walk-4, rear"));
  EXPECT_FALSE(std::filesystem::exists(path("stood.zyga")));
  EXPECT_EQ(run({"stand", "small.zyga"}).exit, 2) << "no --out";
  EXPECT_EQ(run({"stand", "none.zyga", "--out", "stood.zyga"}).exit, 2);
}

}  // namespace
}  // namespace zyga::app
