#include "core/files/project/project.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <numbers>

#include "core/files/json/numeral.h"
#include "tests/core/files/example_project.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

using testing::AllOf;
using testing::HasSubstr;

const std::string& wholeText() {
  static const std::string text = writeProjectText(example::everything());
  return text;
}

std::string errorOf(const std::string& text) {
  try {
    parseProject(text, "neck.zyga");
  } catch (const FileError& error) {
    return ui::sayFailure(error).toStdString();
  }
  return "";
}

/// The whole text with the first `from` exchanged.
std::string with(const std::string& from, const std::string& to) {
  std::string text = wholeText();
  const auto at = text.find(from);
  EXPECT_NE(at, std::string::npos) << from;
  return text.replace(at, from.size(), to);
}

/// Line on which the first `what` stands, counted from 1.
std::string lineOf(const std::string& text, const std::string& what) {
  const auto lines = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(text.find(what)), '\n');
  return std::to_string(lines);
}

TEST(Project, EveryFieldComesBackToTheBit) {
  const auto project = example::everything();
  const auto read = parseProject(wholeText(), "neck.zyga");
  EXPECT_EQ(read.table, project.table);
  EXPECT_EQ(read.assumptions, project.assumptions);
  EXPECT_EQ(read.pose, project.pose);
  EXPECT_EQ(read.poses, project.poses);
  EXPECT_EQ(read.specimen().name, project.specimen().name);
  EXPECT_EQ(read.specimen().bones.size(), project.specimen().bones.size());
}

TEST(Project, WritesTheSameBytesAgain) {
  EXPECT_EQ(writeProjectText(parseProject(wholeText(), "neck.zyga")), wholeText());
}

// Breaks the build when an assumption is added, so that the file and oddAssumptions() are not forgotten.
TEST(Project, KnowsEveryAssumption) {
  auto [least, by, neutral, horizontal, neck, trunk, tail, settling, press, gap, contact, near, neighbours] =
      example::oddAssumptions();
  const range::Assumptions usual;
  EXPECT_NE(least, usual.minOverlap);
  EXPECT_NE(by, usual.overlapBy);
  EXPECT_FALSE(neck == usual.neck || trunk == usual.trunk || tail == usual.tail);
  EXPECT_NE(neutral, usual.neutralBy);
  EXPECT_NE(horizontal, usual.horizontalBy);
  EXPECT_NE(settling, usual.settling);
  EXPECT_NE(press, usual.facetContactTolerated);
  EXPECT_NE(contact, usual.contactTolerated);
  EXPECT_NE(gap, usual.facetGapTolerated);
  EXPECT_NE(near, usual.nearMargin);
  EXPECT_NE(neighbours, usual.inferredNeighbours);
}

TEST(Project, AContactInMillimetresIsOfOlderFilesAndMeansThatOfEveryBone) {
  std::string text = wholeText();
  const std::string percent = "\"contact_tolerated_percent\": 0.25";
  const auto at = text.find(percent);
  ASSERT_NE(at, std::string::npos);
  const std::string old = std::string(text).replace(at, percent.size(), "\"contact_tolerated_mm\": 5");
  const auto project = parseProject(old, "old.zyga");
  EXPECT_EQ(project.assumptions.contactTolerated,
            (range::ContactTolerance{range::ContactTolerance::In::Millimetres, 5}));
  EXPECT_EQ(project.assumptions.contactTolerated.depth(0.1), 0.005);
  EXPECT_EQ(project.assumptions.contactTolerated.depth(2), 0.005);
  EXPECT_EQ(writeProjectText(project), old) << "it stays what it was";
  EXPECT_DOUBLE_EQ(example::oddAssumptions().contactTolerated.depth(2), 0.005);
  text.insert(at, "\"contact_tolerated_mm\": 5, ");
  EXPECT_THROW(parseProject(text, "both.zyga"), FileError);
}

TEST(Project, IsJsonInMillimetresAndDegreesForAnyReader) {
  const auto project = example::everything();
  const auto json = QJsonDocument::fromJson(QByteArray::fromStdString(wholeText())).object();
  EXPECT_EQ(json["schema"].toString(), "zygapose-project");
  EXPECT_EQ(json["version"].toInt(), 1);
  EXPECT_EQ(json["counts"].toObject()["caudal"].toInt(), 80);
  EXPECT_EQ(json["assumptions"].toObject()["cartilage_neck"].toObject()["amount"].toDouble(), 4.56);
  EXPECT_EQ(json["region_totals_mm"].toObject()["neck"].toDouble(), 9876.5);
  const auto angles = json["pose"].toObject()["angles_deg"].toObject()["C6-C7"].toArray();
  const auto joint = *project.specimen().findJoint("C6-C7");
  for (int i = 0; i < 3; ++i) {
    EXPECT_NEAR(angles.at(i).toDouble(), project.pose[joint](i) * 180 / std::numbers::pi, 1e-11);
  }
}

TEST(Project, KeepsOneBoneALine) {
  const auto text = wholeText();
  const auto start = text.find("{\"bone\": \"C6\"");
  ASSERT_NE(start, std::string::npos);
  const auto line = text.substr(start, text.find('\n', start) - start);
  EXPECT_THAT(line,
              AllOf(HasSubstr("\"length (mm)\": [612.5, \"measured\"]"),
                    HasSubstr("\"wedge (deg)\": [1.25, \"measured\"]"), HasSubstr("\"source\": \"invented, box 3\"")));
  EXPECT_EQ(std::count(text.begin(), text.end(), '\n') > static_cast<int>(example::everything().table.rows.size()),
            true);
}

TEST(Project, WritesOnlyTurnedJoints) {
  auto project = example::everything();
  project.poses.clear();
  project.pose = kinematics::Pose::neutral(project.specimen());
  EXPECT_THAT(writeProjectText(project), HasSubstr("\"angles_deg\": {}"));
  project.pose[*project.specimen().findJoint("C6-C7")] = {7.1 * std::numbers::pi / 180, 0, 0};
  EXPECT_THAT(writeProjectText(project), HasSubstr("\"angles_deg\": {\n      \"C6-C7\": [7.1, 0, 0]\n    }"));
}

TEST(Project, FilesFromBeforeAnAssumptionKeepItsDefault) {
  auto text = wholeText();
  for (const char* key : {"\"neutral_by\"", "\"contact_tolerated_percent\"", "\"inferred_neighbours\""}) {
    const auto start = text.rfind('\n', text.find(key));
    ASSERT_NE(start, std::string::npos);
    text.erase(start, text.find('\n', start + 1) - start);
  }
  const auto read = parseProject(text, "old.zyga").assumptions;
  EXPECT_EQ(read.neutralBy, range::Assumptions{}.neutralBy);
  EXPECT_EQ(read.contactTolerated, range::Assumptions{}.contactTolerated);
  EXPECT_FALSE(read.inferredNeighbours);
  EXPECT_EQ(read.nearMargin, example::oddAssumptions().nearMargin);
}

TEST(Project, ABlankIsFilledByARuleAndSentencesOfOlderFilesBecomeRules) {
  using anatomy::FillBy;
  const auto c6 = *anatomy::parseBoneId("C6");
  const anatomy::FillRule rule{FillBy::Between, *anatomy::parseBoneId("C5"), *anatomy::parseBoneId("C8")};
  auto project = example::everything();
  project.table.find(c6)->measures[anatomy::Measure::Length] = {0.4, anatomy::CellOrigin::BetweenNeighbours, rule};
  const std::string text = writeProjectText(project), written = "\"length (mm)\": [400, \"between neighbours\", ";
  const auto at = text.find(written + "\"between C5 C8\"]");
  ASSERT_NE(at, std::string::npos);
  const auto ruleIn = [&](const std::string& words) {
    std::string other = text;
    other.replace(at + written.size(), std::string("\"between C5 C8\"").size(), '"' + words + '"');
    return parseProject(other, "neck.zyga").table.find(c6)->measures[anatomy::Measure::Length].rule;
  };
  EXPECT_EQ(ruleIn("between C5 C8"), rule);
  EXPECT_EQ(ruleIn("between C5 and C8 along the column"), rule);
  EXPECT_EQ(ruleIn("measured on a cast").by, FillBy::Other);
  EXPECT_EQ(ruleIn("measured on a cast").words, "measured on a cast");
}

TEST(Project, RefusesToWriteWhatIsNoNumber) {
  auto project = example::everything();
  project.pose[*project.specimen().findJoint("C6-C7")](1) = std::numeric_limits<double>::quiet_NaN();
  EXPECT_THROW(
      {
        try {
          writeProjectText(project);
        } catch (const FileError& error) {
          EXPECT_THAT(error.what(), HasSubstr("C6-C7"));
          throw;
        }
      },
      FileError);
}

TEST(ProjectFault, NewerVersion) {
  EXPECT_THAT(errorOf(with("\"version\": 1", "\"version\": 7")),
              AllOf(HasSubstr("version 7"), HasSubstr("newest this program reads is 1"), HasSubstr("neck.zyga:3")));
}

TEST(ProjectFault, NewerVersionIsToldBeforeAnythingElseThatIsNew) {
  EXPECT_THAT(errorOf("{\"schema\": \"zygapose-project\", \"version\": 2, \"new\": {}}"), HasSubstr("version 2"));
}

TEST(ProjectFault, OtherJson) {
  EXPECT_THAT(errorOf("{\"schema\": \"recipe\"}"), HasSubstr("neck.zyga is not a Zygapose project"));
  EXPECT_THAT(errorOf("{}"), HasSubstr("is not a Zygapose project"));
  EXPECT_THAT(errorOf("[]"), HasSubstr("expected an object"));
}

TEST(ProjectFault, DamageIsToldWithLineAndColumn) {
  const auto text = with("\"plan\": ", "\"plan\" ");
  EXPECT_THAT(errorOf(text), HasSubstr("neck.zyga:5, column 10: expected ':'"));
}

struct Edit {
  const char* from;
  const char* to;
  const char* message;
};

class ProjectFaultIn : public testing::TestWithParam<Edit> {};

TEST_P(ProjectFaultIn, IsToldWithItsPlaceInTheDocument) {
  const auto& [from, to, message] = GetParam();
  const auto text = with(from, to);
  EXPECT_THAT(errorOf(text), AllOf(HasSubstr("neck.zyga:" + lineOf(wholeText(), from) + ", "), HasSubstr(message)));
}

INSTANTIATE_TEST_SUITE_P(
    All, ProjectFaultIn,
    testing::Values(
        Edit{"\"specimen\": \"", "\"specimen\": 3, \"x\": \"", "x: no such member"},
        Edit{"\"plan\": \"low browser\"", "\"plan\": \"swimmer\"", "plan: \"swimmer\" is no body plan"},
        Edit{"\"cervical\": 15", "\"cervical\": \"15\"", "counts.cervical: expected a number"},
        Edit{"\"cervical\": 15", "\"cervical\": 150", "counts.cervical: must be from 2 to 19"},
        Edit{"\"overlap_by\": \"area\"", "\"overlap_by\": \"colour\"", "is not among length, area"},
        Edit{"\"least_overlap_percent\": 33.3", "\"least_overlap_percent\": 133", "from 0 to 100"},
        Edit{"\"amount\": 4.56", "\"amount\": -4.56", "assumptions.cartilage_neck.amount: must not be"},
        Edit{"\"unit\": \"mm\"", "\"unit\": \"inch\"", "assumptions.cartilage_trunk.unit: \"inch\""},
        Edit{"\"neck\": 9876.5", "\"nekc\": 9876.5", "region_totals_mm.nekc: no such member"},
        Edit{"\"name\": \"neutral\"", "\"name\": null", "poses[0].name: expected a text"},
        Edit{"{\"bone\": \"C6\"", "{\"bone\": \"C66\"", "].bone: "},
        Edit{"{\"bone\": \"C6\"", "{\"bone\": \"Q6\"", "there is no bone \"Q6\""},
        Edit{"[612.5, \"measured\"]", "[\"long\", \"measured\"]", ".cells.length (mm)[0]: expected a number"},
        Edit{"[612.5, \"measured\"]", "[612.5, \"dreamt\"]", ".cells.length (mm)[1]: \"dreamt\" is not among"},
        Edit{"[612.5, \"measured\"]", "[612.5]", ".cells.length (mm): expected [value, origin]"},
        Edit{"[612.5, \"measured\"]", "[-612.5, \"measured\"]", "must not be negative"}));

TEST(ProjectFault, PoseIsToldByPath) {
  auto project = example::everything();
  project.poses.resize(2);
  project.poses[1].pose = kinematics::Pose::neutral(project.specimen());
  project.poses[1].pose[*project.specimen().findJoint("C6-C7")] = {0.1, 0, 0};
  const auto text = writeProjectText(project);
  const auto edited = [&](const std::string& from, const std::string& to) {
    auto copy = text;
    return copy.replace(copy.rfind(from), from.size(), to);
  };
  EXPECT_THAT(errorOf(edited("\"C6-C7\": [", "\"C6-C9\": [")),
              HasSubstr("poses[1].angles_deg.C6-C9: the specimen has no joint \"C6-C9\""));
  EXPECT_THAT(errorOf(edited("\"C6-C7\": [", "\"C6-C7\": [1, ")),
              HasSubstr("poses[1].angles_deg.C6-C7: expected a list of 3 angles in degrees, found 4"));
  EXPECT_THAT(errorOf(edited("\"root_rotation\": [[1, 0, 0]", "\"root_rotation\": [[2, 0, 0]")),
              HasSubstr("poses[1].root_rotation: these rows are not a rotation"));
  EXPECT_THAT(errorOf(edited("\"root_rotation\": [[1, 0, 0]", "\"root_rotation\": [[-1, 0, 0]")),
              HasSubstr("not a rotation"));
}

TEST(ProjectFault, BoneThatTheAnimalDoesNotHaveOrHasAlready) {
  EXPECT_THAT(errorOf(with("\"caudal\": 80", "\"caudal\": 79")),
              HasSubstr("].bone: an animal of this plan and these counts has no Ca80"));
  EXPECT_THAT(errorOf(with("{\"bone\": \"C6\"", "{\"bone\": \"C7\"")), HasSubstr("].bone: C7 is given twice"));
}

TEST(ProjectFault, MissingBone) {
  auto text = wholeText();
  const auto start = text.find("{\"bone\": \"C6\"");
  const auto lineStart = text.rfind('\n', start), lineEnd = text.find('\n', start);
  EXPECT_THAT(errorOf(text.erase(lineStart, lineEnd - lineStart)), AllOf(HasSubstr("not complete"), HasSubstr("C6")));
}

TEST(ProjectFault, EveryCutShortTextIsRefused) {
  const auto& text = wholeText();
  for (std::size_t length = 0; length + 2 < text.size(); length += 1 + text.size() / 200) {
    EXPECT_NE(errorOf(text.substr(0, length)), "") << length;
  }
}

// Whatever a few changed bytes do, the reader ends in a project or in a message.
TEST(ProjectFault, ChangedBytesNeverCrash) {
  std::mt19937 generator(3);
  for (int round = 0; round < 150; ++round) {
    auto text = wholeText();
    for (int i = 0; i < 3; ++i) text[generator() % text.size()] = static_cast<char>(generator());
    errorOf(text);
  }
}

}  // namespace
}  // namespace zyga::files
