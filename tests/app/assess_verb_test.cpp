#include <set>

#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::AllOf;
using testing::HasSubstr;

class AssessVerb : public Program {
 protected:
  std::string beyond() const {
    run({"bend", smallAnimal(), "--joint", "C3-C4", "--dorsiflexion", "40", "--lateral", "-2", "--out", "beyond.zyga"});
    return "beyond.zyga";
  }
  static std::set<std::string> keys(const QJsonObject& object) {
    std::set<std::string> out;
    for (const auto& key : object.keys()) out.insert(key.toStdString());
    return out;
  }
};

TEST_F(AssessVerb, NeutralStandingIsSupported) {
  const auto ended = run({"assess", smallAnimal()});
  EXPECT_EQ(ended.exit, 0);
  EXPECT_THAT(ended.out, AllOf(HasSubstr("Small invented animal"), HasSubstr("within range"), HasSubstr("bare bones")));
}

TEST_F(AssessVerb, BeyondIsExitOneWithTheReason) {
  const auto ended = run({"assess", beyond()});
  EXPECT_EQ(ended.exit, 1);
  EXPECT_EQ(ended.err, "");
  EXPECT_THAT(ended.out, AllOf(HasSubstr("present pose: out of range"), HasSubstr("C3-C4"), HasSubstr("40.0"),
                               HasSubstr("zygapophyseal overlap"), HasSubstr("1 out of range")));
}

TEST_F(AssessVerb, JsonHasTheKeysScriptsRelyOn) {
  const auto json = run({"assess", beyond(), "--json"}).json();
  for (const auto* key : {"specimen", "pose", "assumptions", "summary", "level", "joints"}) {
    EXPECT_TRUE(json.contains(key)) << key;
  }
  EXPECT_EQ(keys(json["summary"].toObject()),
            (std::set<std::string>{"skull_m", "neck_m", "trunk_m", "sacrum_m", "tail_m", "column_m", "total_m",
                                   "femur_m", "humerus_to_femur"}));
  const auto joint = jointOf(json, "C3-C4");
  EXPECT_EQ(keys(joint), (std::set<std::string>{"id", "region", "dorsiflexion_deg", "lateral_deg", "torsion_deg",
                                                "axial", "settling_mm", "evidence", "left", "right", "centrum_gap_mm",
                                                "level", "reasons", "stopped_by_default", "sentence", "articulation"}));
  EXPECT_EQ(keys(joint["left"].toObject()),
            (std::set<std::string>{"overlap_length", "overlap_width", "overlap_area", "gap_min_mm", "gap_max_mm"}));
}

TEST_F(AssessVerb, JsonTellsTheBentJoint) {
  const auto json = run({"assess", beyond(), "--json"}).json();
  EXPECT_EQ(json["level"].toString(), "beyond");
  const auto joint = jointOf(json, "C3-C4");
  EXPECT_EQ(joint["region"].toString(), "cervical");
  EXPECT_NEAR(joint["dorsiflexion_deg"].toDouble(), 40, 1e-6);
  EXPECT_NEAR(joint["lateral_deg"].toDouble(), -2, 1e-6);
  EXPECT_EQ(joint["level"].toString(), "beyond");
  EXPECT_FALSE(joint["reasons"].toArray().isEmpty());
  EXPECT_THAT(joint["sentence"].toString().toStdString(), HasSubstr("C3-C4 out of range: "));
  EXPECT_LT(joint["left"].toObject()["overlap_length"].toDouble(), 0.5);
  EXPECT_FALSE(joint["stopped_by_default"].toBool(true)) << "the overlap has its source";
  EXPECT_EQ(jointOf(json, "C4-C5")["level"].toString(), "supported");
  EXPECT_FALSE(jointOf(json, "C4-C5")["stopped_by_default"].toBool(true));
  EXPECT_TRUE(jointOf(json, "hip.L")["left"].isNull());
}

TEST_F(AssessVerb, TakesOtherAssumptionsForOneRun) {
  run({"bend", smallAnimal(), "--joint", "C3-C4", "--dorsiflexion", "7", "--out", "bent.zyga"});
  const auto levelWith = [&](std::vector<std::string> options) {
    options.insert(options.begin(), {"assess", "bent.zyga", "--json"});
    return jointOf(run(options).json(), "C3-C4")["level"].toString();
  };
  EXPECT_EQ(levelWith({"--overlap", "0.95"}), "beyond");
  EXPECT_EQ(levelWith({"--overlap", "0"}), "supported");
  const auto json = run({"assess", "bent.zyga", "--json", "--overlap", "0.25", "--overlap-by", "area",
                         "--cartilage-percent", "15", "--neutral-by", "facets-and-centra"})
                        .json();
  const auto assumptions = json["assumptions"].toObject();
  EXPECT_EQ(assumptions["least_overlap_percent"].toDouble(), 25);
  EXPECT_EQ(assumptions["overlap_by"].toString(), "area");
  EXPECT_EQ(assumptions["neutral_by"].toString(), "facets and centra");
  EXPECT_EQ(assumptions["contact_tolerated_percent"].toDouble(), 1.3);
  EXPECT_FALSE(assumptions["inferred_neighbours"].toBool(true));
  const auto other = run({"assess", "bent.zyga", "--json", "--contact-mm", "7", "--inferred-neighbours"})
                         .json()["assumptions"]
                         .toObject();
  EXPECT_EQ(other["contact_tolerated_mm"].toDouble(), 7);
  EXPECT_FALSE(other.contains("contact_tolerated_percent"));
  EXPECT_TRUE(other["inferred_neighbours"].toBool(false));
  for (const char* part : {"cartilage_neck", "cartilage_trunk", "cartilage_tail"}) {
    EXPECT_EQ(assumptions[part].toObject()["amount"].toDouble(), 15) << part;
  }
  EXPECT_THAT(run({"assess", "bent.zyga", "--neutral-by", "facets-and-centra"}).out,
              HasSubstr("neutral articulation: facets centred, centrum faces parallel"));
  EXPECT_EQ(run({"assess", "bent.zyga", "--json"}).json()["assumptions"].toObject()["overlap_by"].toString(), "length")
      << "the project keeps its own";
}

TEST_F(AssessVerb, TellsBadAssumptions) {
  smallAnimal();
  const auto fault = [&](const std::string& option, const std::string& value) {
    const auto ended = run({"assess", "small.zyga", option, value});
    EXPECT_EQ(ended.exit, 2);
    return ended.err;
  };
  EXPECT_THAT(fault("--overlap", "50"), HasSubstr("--overlap: 50 is too far; write a share from 0 to 1"));
  EXPECT_THAT(fault("--overlap-by", "volume"), HasSubstr("not among length, area"));
  const auto both = run({"assess", "small.zyga", "--contact-mm", "5", "--contact-percent", "1"});
  EXPECT_EQ(both.exit, 2);
  EXPECT_THAT(both.err, HasSubstr("give one of the two"));
}

TEST_F(AssessVerb, NamedPoseIsJudgedInsteadOfThePresentOne) {
  beyond();
  EXPECT_EQ(run({"assess", "beyond.zyga", "--pose", "neutral standing"}).exit, 0);
  const auto ended = run({"assess", "beyond.zyga", "--pose", "rearing"});
  EXPECT_EQ(ended.exit, 2);
  EXPECT_THAT(ended.err, HasSubstr("there is no pose 'rearing'; there are 'neutral standing'"));
}

TEST_F(AssessVerb, DamagedProjectIsToldWithItsPlace) {
  auto text = bytes(smallAnimal());
  write("cut.zyga", text.substr(0, text.size() / 2));
  const auto cut = run({"assess", "cut.zyga"});
  EXPECT_EQ(cut.exit, 2);
  EXPECT_THAT(cut.err, testing::ContainsRegex("cut.zyga:[0-9]+, column [0-9]+: "));
  write("new.zyga", text.replace(text.find("\"version\": 1"), 12, "\"version\": 2"));
  EXPECT_THAT(run({"assess", "new.zyga"}).err, HasSubstr("newest this program reads is 1"));
}

TEST_F(AssessVerb, SaysThatContactWasNotJudgedWhereNobodyWantsIt) {
  EXPECT_THAT(runAsTyped({"assess", smallAnimal(), "--no-contact"}).out,
              HasSubstr("collisions between bones were not assessed (--no-contact)"));
  const auto json = runAsTyped({"assess", smallAnimal(), "--json", "--no-contact"}).json();
  EXPECT_FALSE(json["contact_judged"].toBool(true));
  EXPECT_TRUE(json["contacts"].isNull());
}

TEST_F(AssessVerb, TellsBonesThatEnterEachOther) {
  setCache(ZYGAPOSE_TEST_CACHE);
  run({"bend", smallAnimal(), "--joint", "D5-D6", "--dorsiflexion", "25", "--out", "bent.zyga"});
  const auto json = runAsTyped({"assess", "bent.zyga", "--json", "--contact-mm", "5"}).json();
  EXPECT_TRUE(json["contact_judged"].toBool());
  ASSERT_FALSE(json["contacts"].toArray().isEmpty());
  const auto contact = json["contacts"].toArray().at(0).toObject();
  EXPECT_EQ(keys(contact), (std::set<std::string>{"bone", "other", "depth_mm", "place_mm", "level", "sentence"}));
  EXPECT_GT(contact["depth_mm"].toDouble(), 5);
  EXPECT_THAT(contact["sentence"].toString().toStdString(), HasSubstr("(tolerated 5.0\u00A0mm)"));
  EXPECT_THAT(run({"assess", "bent.zyga", "--contact"}).out, HasSubstr("bones collide: ")) << "for older scripts";
  const auto free = runAsTyped({"assess", "small.zyga"});
  EXPECT_EQ(free.exit, 0);
  EXPECT_THAT(free.out, AllOf(HasSubstr("no bones interpenetrate by more than the tolerated 1.3\u00A0% of the smaller "
                                        "bone's mean extent"),
                              HasSubstr("cervical ribs bend")));
  const auto both = run({"assess", "bent.zyga", "--contact", "--no-contact"});
  EXPECT_EQ(both.exit, 2);
  EXPECT_THAT(both.err, HasSubstr("leave one out"));
  EXPECT_EQ(jointOf(json, "D5-D6")["level"].toString(), "beyond") << "a joint's level counts its bones' contact";
}

}  // namespace
}  // namespace zyga::app
