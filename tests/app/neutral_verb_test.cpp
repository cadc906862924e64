#include <cmath>
#include <numbers>
#include <set>

#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::AllOf;
using testing::HasSubstr;

constexpr double kDegree = std::numbers::pi / 180;

class NeutralVerb : public Program {
 protected:
  static std::set<std::string> keys(const QJsonObject& object) {
    std::set<std::string> out;
    for (const auto& key : object.keys()) out.insert(key.toStdString());
    return out;
  }
};

TEST_F(NeutralVerb, WritesTheAnimalAtNeutralAndStanding) {
  run({"bend", smallAnimal(), "--joint", "C3-C4", "--dorsiflexion", "40", "--out", "bent.zyga"});
  ASSERT_EQ(run({"assess", "bent.zyga"}).exit, 1);
  const auto ended = run({"neutral", "bent.zyga", "--cartilage-percent", "10", "--out", "neutral.zyga"});
  EXPECT_EQ(ended.exit, 0) << ended.err;
  EXPECT_THAT(ended.out, AllOf(HasSubstr("all joints at neutral"), HasSubstr("cartilage 10\u00A0%"),
                               HasSubstr("joints with facets"), HasSubstr("wrote neutral.zyga")));
  const auto json = run({"assess", "neutral.zyga", "--json"}).json();
  EXPECT_EQ(json["level"].toString(), "supported");
  EXPECT_EQ(json["assumptions"].toObject()["cartilage_neck"].toObject()["amount"].toDouble(), 10)
      << "the bones stand by these assumptions";
  for (const auto& joint : json["joints"].toArray()) {
    if (!joint.toObject()["left"].isObject()) continue;
    EXPECT_EQ(joint.toObject()["dorsiflexion_deg"].toDouble(), 0) << joint.toObject()["id"].toString().toStdString();
  }
  EXPECT_EQ(run({"assess", "neutral.zyga", "--pose", "neutral standing"}).exit, 0) << "named poses stay";
}

// The published law: cartilage of thickness t turns a joint by t / h rad (Taylor 2014, PeerJ 2:e712).
TEST_F(NeutralVerb, JsonTellsHowEachJointComesToRest) {
  const auto json = run({"neutral", smallAnimal(), "--json", "--cartilage-percent", "8"}).json();
  const auto joints = json["joints"].toArray();
  EXPECT_GT(joints.size(), 20);
  for (const auto& value : joints) {
    const auto joint = value.toObject();
    const std::string id = joint["id"].toString().toStdString();
    EXPECT_EQ(keys(joint),
              (std::set<std::string>{"id", "solved", "residual_mm", "cartilage_turn_deg", "t_mm", "h_mm", "note"}));
    EXPECT_TRUE(joint["solved"].toBool()) << id;
    EXPECT_TRUE(joint["note"].isNull()) << id;
    const double ratio = joint["t_mm"].toDouble() / joint["h_mm"].toDouble();
    if (ratio > 0.58) continue;  // where the checks end
    EXPECT_NEAR(joint["cartilage_turn_deg"].toDouble(), ratio / kDegree, 0.5) << id;
  }
  // 8 % of C4's 310 mm.
  EXPECT_EQ(joints.last().toObject()["id"].toString(), "C2-C3");
  const auto c3 = joints[joints.size() - 2].toObject();
  EXPECT_EQ(c3["id"].toString(), "C3-C4");
  EXPECT_NEAR(c3["t_mm"].toDouble(), 24.8, 1e-6);
}

TEST_F(NeutralVerb, ParallelFacesAreTheOtherDefinition) {
  const auto turnOf = [&](const std::string& by) {
    const auto json = run({"neutral", "small.zyga", "--json", "--cartilage-percent", "8", "--neutral-by", by}).json();
    EXPECT_EQ(json["assumptions"].toObject()["neutral_by"].toString().toStdString(),
              by == "facets" ? "facets" : "facets and centra");
    return json["joints"].toArray().last().toObject()["cartilage_turn_deg"].toDouble();
  };
  smallAnimal();
  EXPECT_NEAR(turnOf("facets-and-centra") / turnOf("facets"), 0.5, 0.05);
}

TEST_F(NeutralVerb, BadOptionsAreToldWithTheirMend) {
  const auto fault = [&](std::vector<std::string> options) {
    options.insert(options.begin(), {"neutral", "small.zyga"});
    const auto ended = run(options);
    EXPECT_EQ(ended.exit, 2);
    return ended.err;
  };
  smallAnimal();
  EXPECT_THAT(fault({}), HasSubstr("nothing to do: add --out FILE2.zyga"));
  EXPECT_THAT(fault({"--out="}), HasSubstr("--out: the name is empty"));
  EXPECT_THAT(fault({"--json", "--cartilage-percent", "thick"}), HasSubstr("'thick' is not a number; write percent"));
  EXPECT_THAT(fault({"--json", "--cartilage-percent", "-3"}), HasSubstr("from 0 to 100"));
  EXPECT_THAT(fault({"--json", "--neutral-by", "centra"}), HasSubstr("not among facets, facets-and-centra"));
  EXPECT_THAT(fault({"--out", "no/such/folder/x.zyga"}), HasSubstr("no/such/folder"));
}

TEST_F(NeutralVerb, HelpNamesTheAssumptions) {
  const auto ended = run({"neutral", "--help"});
  EXPECT_EQ(ended.exit, 0);
  for (const char* option : {"--overlap SHARE", "--overlap-by length|area", "--cartilage-percent P", "--neutral-by",
                             "--out FILE2.zyga", "--json"}) {
    EXPECT_THAT(ended.out, HasSubstr(option));
  }
}

}  // namespace
}  // namespace zyga::app
