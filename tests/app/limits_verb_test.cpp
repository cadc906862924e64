#include <cmath>
#include <set>

#include "core/files/project/project.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"
#include "tests/app/program.h"
#include "ui/words/range_words.h"

namespace zyga::app {
namespace {

using testing::AllOf;
using testing::ContainsRegex;
using testing::HasSubstr;

class LimitsVerb : public Program {
 protected:
  static double degrees(const QJsonObject& joint, const char* direction) {
    return joint[direction].toObject()["deg"].toDouble(std::nan(""));
  }
};

constexpr std::array<const char*, 6> kKeys{"dorsal", "ventral", "left", "right", "torsion_left", "torsion_right"};

TEST_F(LimitsVerb, JsonGivesWhatTheCoreFinds) {
  const auto json = run({"limits", smallAnimal(), "--json"}).json();
  for (const auto* key : {"assumptions", "joints", "extremes", "from", "caution"}) {
    EXPECT_TRUE(json.contains(key)) << key;
  }
  EXPECT_EQ(json["from"].toString(), "neutral");
  const auto project = files::readProject(path("small.zyga"));
  const auto articulation = range::articulate(project.specimen(), project.assumptions);
  for (const char* id : {"C3-C4", "D2-D3", "Ca1-Ca2", "skull-C1"}) {
    const auto index = project.specimen().findJoint(id);
    ASSERT_TRUE(index) << id;
    const auto limits =
        range::limits(project.specimen(), articulation, project.assumptions, *index, Eigen::Vector3d::Zero());
    const auto joint = jointOf(json, id);
    for (const range::Direction direction : range::kDirections) {
      const char* key = kKeys[static_cast<std::size_t>(direction)];
      const double expected = range::signOf(direction) * limits[direction].angle * 180 / M_PI;
      EXPECT_NEAR(degrees(joint, key), expected, 1e-5) << id << " " << key;
      EXPECT_EQ(joint[key].toObject()["stopped_by"].toString(),
                ui::stopWords(project.specimen(), *index, limits[direction].stop));
    }
  }
}

TEST_F(LimitsVerb, ListsEveryJointOfTheColumnThatMoves) {
  const auto json = run({"limits", smallAnimal(), "--json"}).json();
  std::set<std::string> ids;
  for (const auto& joint : json["joints"].toArray()) ids.insert(joint.toObject()["id"].toString().toStdString());
  EXPECT_EQ(ids.size(), json["joints"].toArray().size());
  EXPECT_THAT(ids, testing::IsSupersetOf({"skull-C1", "C1-C2", "C6-D1", "D9-S1", "S4-Ca1", "Ca11-Ca12"}));
  EXPECT_FALSE(ids.contains("hip.L"));
}

TEST_F(LimitsVerb, OneJointAskedFor) {
  const auto json = run({"limits", smallAnimal(), "--json", "--joint", "C3-C4", "--joint=hip.L"}).json();
  ASSERT_EQ(json["joints"].toArray().size(), 2);
  EXPECT_TRUE(json["extremes"].toArray().isEmpty());
  EXPECT_EQ(jointOf(json, "hip.L")["dorsal"].toObject()["motion"].toString(), "flexion");
}

TEST_F(LimitsVerb, AssumptionsAreTakenFromTheCommand) {
  const auto dorsal = [&](std::vector<std::string> words) {
    std::vector<std::string> all{"limits", "small.zyga", "--json", "--joint", "C3-C4"};
    all.insert(all.end(), words.begin(), words.end());
    return degrees(jointOf(run(all).json(), "C3-C4"), "dorsal");
  };
  smallAnimal();
  const double strict = dorsal({"--overlap", "0.9"}), half = dorsal({"--overlap", "0.5"});
  EXPECT_LT(strict, half);
  EXPECT_LE(half, dorsal({"--overlap", "0.25"}));
  EXPECT_NE(half, dorsal({"--overlap", "0.5", "--overlap-by", "area"}));
  EXPECT_NE(half, dorsal({"--overlap", "0.5", "--cartilage-percent", "20"}));
  const auto json = run({"limits", "small.zyga", "--json", "--joint", "C3-C4", "--cartilage-percent", "7"}).json();
  EXPECT_EQ(json["assumptions"].toObject()["cartilage_neck"].toObject()["amount"].toDouble(), 7);
}

TEST_F(LimitsVerb, FromThePoseOverlapIsSpent) {
  run({"bend", smallAnimal(), "--joint", "C3-C4", "--dorsiflexion", "5", "--out", "raised.zyga"});
  const auto neutral = run({"limits", "raised.zyga", "--json"}).json();
  const auto raised = run({"limits", "raised.zyga", "--json", "--from-pose"}).json();
  EXPECT_EQ(raised["from"].toString(), "present pose");
  EXPECT_LT(degrees(jointOf(raised, "C3-C4"), "left"), degrees(jointOf(neutral, "C3-C4"), "left"));
  EXPECT_NEAR(degrees(jointOf(raised, "C3-C4"), "dorsal"), degrees(jointOf(neutral, "C3-C4"), "dorsal"), 0.001)
      << "its own motion starts from neutral";
  const auto named = run({"limits", "raised.zyga", "--json", "--pose", "neutral standing"}).json();
  EXPECT_EQ(named["from"].toString(), "neutral standing");
  EXPECT_EQ(jointOf(named, "C3-C4"), jointOf(neutral, "C3-C4"));
}

TEST_F(LimitsVerb, TextHasTheAssumptionsTheTableAndTheCaution) {
  const auto ended = run({"limits", smallAnimal()});
  EXPECT_EQ(ended.exit, 0);
  EXPECT_EQ(ended.err, "");
  EXPECT_THAT(
      ended.out,
      AllOf(HasSubstr("limits from neutral"), HasSubstr("zygapophyseal overlap of at least 50\u00A0% (by length)"),
            ContainsRegex("joint +dorsal +ventral +left +right"), HasSubstr("C3-C4"),
            HasSubstr("zygapophyseal overlap 50\u00A0%"), HasSubstr("off by 5 degrees"),
            HasSubstr("Kuznetsov & Tereschenko 2010"), ContainsRegex("neck +turn"), ContainsRegex("tail +turn")));
}

TEST_F(LimitsVerb, ExtremesOfNeckAndTail) {
  const auto json = run({"limits", smallAnimal(), "--json"}).json();
  const auto extremes = json["extremes"].toArray();
  ASSERT_EQ(extremes.size(), 8);
  const auto of = [&](const char* chain, const char* direction) {
    for (const auto& one : extremes) {
      if (one.toObject()["chain"] == chain && one.toObject()["direction"] == direction) return one.toObject();
    }
    return QJsonObject();
  };
  EXPECT_GT(of("neck", "dorsal")["slope_deg"].toDouble(), of("neck", "ventral")["slope_deg"].toDouble());
  EXPECT_GT(of("neck", "left")["left_of_base_m"].toDouble(), 0);
  EXPECT_LT(of("neck", "right")["left_of_base_m"].toDouble(), 0);
  EXPECT_LT(of("tail", "dorsal")["ahead_of_base_m"].toDouble(), 0);
  EXPECT_TRUE(of("tail", "left")["eye_height_m"].isNull());
  double sum = 0;
  for (const auto& joint : json["joints"].toArray()) {
    const auto id = joint.toObject()["id"].toString();
    if (id.startsWith('C') && !id.startsWith("Ca")) sum += degrees(joint.toObject(), "dorsal");
  }
  EXPECT_NEAR(of("neck", "dorsal")["turn_deg"].toDouble(), sum, 1e-4);
}

TEST_F(LimitsVerb, UnknownJointNamesThoseThatComeNear) {
  smallAnimal();
  const auto ended = run({"limits", "small.zyga", "--joint", "c3c4"});
  EXPECT_EQ(ended.exit, 2);
  EXPECT_EQ(ended.out, "");
  EXPECT_THAT(ended.err, AllOf(HasSubstr("there is no joint c3c4"), HasSubstr("C3-C4")));
  EXPECT_THAT(run({"limits", "small.zyga", "--joint", "Ca5"}).err, AllOf(HasSubstr("Ca4-Ca5"), HasSubstr("Ca5-Ca6")));
  EXPECT_THAT(run({"limits", "small.zyga", "--joint", "wing"}).err, HasSubstr("a joint is named like"));
  EXPECT_THAT(run({"limits", "small.zyga", "--joint", "rib.D2.L"}).err, HasSubstr("rib.D2.L"));
  EXPECT_EQ(run({"limits", "small.zyga", "--overlap", "1.5"}).exit, 2);
}

/// Sculpted bones are kept from one run to the next.
class LimitsVerbWithShapes : public LimitsVerb {
 protected:
  LimitsVerbWithShapes() { setCache(ZYGAPOSE_TEST_CACHE); }
};

TEST_F(LimitsVerbWithShapes, BonesThatMeetStopEachOther) {
  const auto plain = run({"limits", smallAnimal(), "--json"}).json();
  const auto touching = runAsTyped({"limits", "small.zyga", "--json", "--contact-mm", "5"}).json();
  EXPECT_FALSE(plain["contact_judged"].toBool(true));
  EXPECT_TRUE(touching["contact_judged"].toBool(false));
  int stopped = 0;
  for (const auto& value : touching["joints"].toArray()) {
    const auto joint = value.toObject();
    const auto other = jointOf(plain, joint["id"].toString());
    for (const char* key : kKeys) {
      EXPECT_LE(degrees(joint, key), degrees(other, key) + 1e-3) << joint["id"].toString().toStdString() << " " << key;
      const auto stop = joint[key].toObject()["stopped_by"].toString();
      EXPECT_EQ(joint[key].toObject()["contact"].toBool(), stop.startsWith("bones collide: "));
      EXPECT_FALSE(other[key].toObject()["contact"].toBool(true));
      if (!stop.startsWith("bones collide: ")) continue;
      ++stopped;
      EXPECT_TRUE(stop.endsWith(", 5.0\u00A0mm")) << stop.toStdString();
    }
  }
  EXPECT_GT(stopped, 0);
}

// What a study, a reach and a comparison say of contact, and that a study's range is that of the limits.
TEST_F(LimitsVerbWithShapes, OtherVerbsJudgeContactAlike) {
  smallAnimal();
  const auto limits = runAsTyped({"limits", "small.zyga", "--json"}).json();
  const auto chart = runAsTyped({"study", "small.zyga", "--kind", "range", "--json"}).json()["study"].toObject();
  EXPECT_TRUE(chart["contact_judged"].toBool(false));
  EXPECT_FALSE(run({"study", "small.zyga", "--kind", "range", "--json"})
                   .json()["study"]
                   .toObject()["contact_judged"]
                   .toBool(true));
  int compared = 0;
  for (const auto& value : chart["joints"].toArray()) {
    const auto row = value.toObject();
    const auto limit = jointOf(limits, row["id"].toString());
    if (limit.isEmpty()) continue;
    EXPECT_NEAR(row["dorsal_deg"].toDouble(), degrees(limit, "dorsal"), 1e-5) << row["id"].toString().toStdString();
    ++compared;
  }
  EXPECT_GT(compared, 10);
  const auto reach =
      runAsTyped({"reach", "small.zyga", "--bone", "skull", "--to", "1,2,0", "--out", "o.zyga", "--json"}).json();
  EXPECT_TRUE(reach["contact_judged"].toBool(false));
  const auto stood = runAsTyped({"stand", "small.zyga", "--stance", "alert", "--out", "o.zyga", "--json"}).json();
  EXPECT_TRUE(stood["contact_judged"].toBool(false));
  EXPECT_TRUE(stood["contacts"].isArray());
  const auto compare = runAsTyped({"compare", "small.zyga", "o.zyga", "--json"}).json();
  EXPECT_TRUE(compare["contact_judged"].toBool(false));
}

}  // namespace
}  // namespace zyga::app
