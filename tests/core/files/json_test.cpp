#include "core/files/json/json.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QJsonArray>
#include <QJsonDocument>
#include <random>

#include "core/files/json/json_write.h"
#include "core/files/json/utf8.h"
#include "core/files/project/project.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

using testing::HasSubstr;

std::string errorOf(std::string_view text) {
  try {
    parseJson(text, "a.zyga");
  } catch (const FileError& error) {
    return ui::sayFailure(error).toStdString();
  }
  return "";
}

template <class Question>
std::string refusal(std::string_view text, Question ask) {
  const auto document = parseJson(text, "a.zyga");
  try {
    ask(JsonPlace(document));
  } catch (const FileError& error) {
    return ui::sayFailure(error).toStdString();
  }
  return "";
}

TEST(Json, ReadsEveryKindOfValue) {
  const auto document = parseJson(R"( {"a": [1, -2.50e3, true, false, null], "b": {"c": "d"}} )", "x");
  const JsonPlace root(document);
  const auto items = root["a"].items();
  ASSERT_EQ(items.size(), 5U);
  EXPECT_EQ(items[0].integer(), 1);
  EXPECT_EQ(items[1].numeral(), "-2.50e3");
  EXPECT_EQ(items[1].number(), -2500);
  EXPECT_EQ(root["b"]["c"].string(), "d");
  EXPECT_FALSE(root.find("e"));
}

TEST(Json, ReadsEscapesAndOtherScripts) {
  const auto document = parseJson(R"(["\"\\\/\b\f\n\r\t", "\u00e9\u20AC\ud83e\udd95", "é€🦕"])", "x");
  const auto items = JsonPlace(document).items();
  EXPECT_EQ(items[0].string(), "\"\\/\b\f\n\r\t");
  EXPECT_EQ(items[1].string(), "é€🦕");
  EXPECT_EQ(items[2].string(), "é€🦕");
}

TEST(Json, WritesTextsThatAnotherReaderUnderstands) {
  const std::string text = "Dippy \"II\" \\ é🦕\n\t\x01 end";
  const auto array = QJsonDocument::fromJson(QByteArray::fromStdString("[" + json::inQuotes(text) + "]")).array();
  EXPECT_EQ(array.at(0).toString().toStdString(), text);
  EXPECT_EQ(json::inQuotes("a\xFFz"), "\"a\uFFFDz\"");
}

struct Fault {
  const char* text;
  const char* place;
  const char* cause;
};

class JsonFault : public testing::TestWithParam<Fault> {};

TEST_P(JsonFault, IsToldWithItsPlace) {
  const auto& [text, place, cause] = GetParam();
  EXPECT_THAT(errorOf(text), HasSubstr("a.zyga:" + std::string(place) + ": "));
  EXPECT_THAT(errorOf(text), HasSubstr(cause));
}

INSTANTIATE_TEST_SUITE_P(
    All, JsonFault,
    testing::Values(
        Fault{"", "1, column 1", "the file ends here"}, Fault{"{", "1, column 2", "the file ends here"},
        Fault{"{\n  \"a\": 1\n  \"b\": 2\n}", "3, column 3", "expected ','"},
        Fault{"{\"a\" 1}", "1, column 6", "expected ':'"}, Fault{"[1, 2,]", "1, column 7", "expected a value"},
        Fault{"{\"a\": 1,}", "1, column 9", "expected a key"}, Fault{"[1 2]", "1, column 4", "expected ','"},
        Fault{"[01]", "1, column 2", "must not begin with 0"}, Fault{"[1.]", "1, column 4", "expected a digit"},
        Fault{"[-]", "1, column 3", "expected a digit"}, Fault{"[1e+]", "1, column 5", "expected a digit"},
        Fault{"[nul]", "1, column 2", "expected a value"}, Fault{"[NaN]", "1, column 2", "expected a value"},
        Fault{"[\"abc", "1, column 2", "has no end"}, Fault{"[\"a\nb\"]", "1, column 4", "line break"},
        Fault{"[\"\\x\"]", "1, column 3", "unknown escape"}, Fault{"[\"\\u12g4\"]", "1, column 7", "hexadecimal"},
        Fault{"[\"\\ud83e\"]", "1, column 3", "surrogate"}, Fault{"[\"\xC0\x80\"]", "1, column 3", "UTF-8"},
        Fault{"[\"é€\", x]", "1, column 8", "expected a value"}, Fault{"[1] 2", "1, column 5", "after the end"},
        Fault{"{\"a\": 1, \"a\": 2}", "1, column 10", "given twice"}));

TEST(Json, EndsInAMessageWhenNestedWithoutEnd) {
  EXPECT_THAT(errorOf(std::string(1000000, '[')), HasSubstr("nested deeper"));
  EXPECT_EQ(errorOf(std::string(60, '[') + std::string(60, ']')), "");
}

TEST(Json, SkipsAByteOrderMark) { EXPECT_EQ(errorOf("\xEF\xBB\xBF[1]"), ""); }

TEST(Json, PointsAtAWrongType) {
  const char* text = "{\"poses\": [{}, {\n  \"angles\": {\"C6-C7\": [1, \"x\"]}}]}";
  const auto angles = [](const JsonPlace& root) { return root["poses"].items()[1]["angles"]["C6-C7"]; };
  EXPECT_EQ(refusal(text, [&](const JsonPlace& root) { angles(root).items()[1].number(); }),
            "a.zyga:2, column 27, poses[1].angles.C6-C7[1]: expected a number, found a text in quotes");
  EXPECT_THAT(refusal(text, [&](const JsonPlace& root) { angles(root).items(3, kAnglesInDegrees); }),
              HasSubstr("poses[1].angles.C6-C7: expected a list of 3 angles in degrees, found 2"));
  EXPECT_THAT(refusal(text, [&](const JsonPlace& root) { root["poses"].items()[0]["angles"]; }),
              HasSubstr("poses[0]: the member \"angles\" is missing"));
  EXPECT_THAT(refusal(text, [&](const JsonPlace& root) { root.allowOnly({"pose"}); }),
              HasSubstr("poses: no such member here; known are pose"));
}

TEST(Json, FaultsAreValues) {
  const auto document = parseJson("{\n \"a\": [true]}", "a.zyga");
  try {
    JsonPlace(document)["a"].items()[0].number();
    FAIL() << "taken";
  } catch (const FileError& error) {
    const reason::Reason cause(fault::kExpectedKind, {kKindTerms.number, kKindTerms.boolean});
    EXPECT_EQ(error.reason(),
              reason::Reason(fault::kAtMember, {reason::text("a.zyga"), reason::Count{2}, reason::Count{8},
                                                reason::text("a[0]"), reason::inner(cause)}));
  }
  try {
    parseJson("{\"a\": 1 2}", "a.zyga");
    FAIL() << "taken";
  } catch (const FileError& error) {
    EXPECT_EQ(error.reason().id, fault::kDamagedAt);
    const auto& cause = *std::get<reason::Inner>(error.reason().values.back());
    EXPECT_EQ(cause,
              reason::Reason(fault::kFoundInstead, {reason::inner(fault::kExpectedMemberEnd), reason::text("2")}));
  }
}

TEST(JsonWrite, KeepsTheOrderAndLaysOutLineByLine) {
  json::Value root = json::object({{"b", 1}, {"a", json::array({"x", true, nullptr})}}, json::Layout::OnLines);
  root.add("empty", json::Value::array(json::Layout::OnLines));
  root.add("lines", json::arrayOf(std::vector<json::Value>{json::object({{"n", json::number(0.1)}}), json::array({})},
                                  json::Layout::OnLines));
  EXPECT_EQ(json::document(root),
            "{\n  \"b\": 1,\n  \"a\": [\"x\", true, null],\n  \"empty\": [],\n  \"lines\": [\n    {\"n\": "
            "0.1},\n    []\n  ]\n}\n");
}

TEST(JsonWrite, SaysNumbersAsTheyAreMeant) {
  EXPECT_EQ(json::text(json::number(std::nan(""))), "null");
  EXPECT_EQ(json::text(json::millionths(1.0 / 3)), "0.333333");
  EXPECT_EQ(json::text(json::degrees(std::numbers::pi / 3)), "60");
  EXPECT_EQ(json::text(json::Value(std::optional<std::string>())), "null");
  EXPECT_EQ(json::text(json::Value::numeral("1e3")), "1e3");
}

TEST(Json, AsksForWholeAndFiniteNumbers) {
  EXPECT_THAT(refusal("[1.5]", [](const JsonPlace& root) { root.items()[0].integer(); }), HasSubstr("whole number"));
  EXPECT_THAT(refusal("[99999999999]", [](const JsonPlace& root) { root.items()[0].integer(); }),
              HasSubstr("whole number"));
  EXPECT_THAT(refusal("[1e999]", [](const JsonPlace& root) { root.items()[0].number(); }), HasSubstr("too large"));
}

// Qt's reader as a second opinion. It is the laxer one (".5", "1.", unknown escapes, line breaks in quotes), so it must
// take whatever ours takes.
TEST(Json, TakesNothingThatALaxerReaderRefuses) {
  const std::string whole =
      "{\"a\": [1, -2.5e3, 0.25, true, false, null],\n \"b\\u0041\": {\"c\": \"d\\n\xC3\xA9\"}, \"e\": [], \"f\": {}}";
  std::mt19937 generator(5);
  const std::string spice = "{}[]\",:\\0123456789eE+-. tfnu\n\xC3\xA9\x80";
  int refused = 0;
  for (int round = 0; round < 20000; ++round) {
    std::string text = whole;
    for (unsigned edits = 1 + generator() % 3; edits > 0; --edits) {
      const auto at = generator() % text.size();
      if (generator() % 3 == 0) {
        text.erase(at, 1);
      } else {
        text[at] = spice[generator() % spice.size()];
      }
    }
    QJsonParseError error{};
    QJsonDocument::fromJson(QByteArray::fromStdString(text), &error);
    const auto ours = errorOf(text);
    if (ours.empty()) {
      EXPECT_EQ(error.error, QJsonParseError::NoError) << text << "\n" << error.errorString().toStdString();
    }
    refused += !ours.empty();
  }
  EXPECT_GT(refused, 5000);
}

TEST(Utf8, KnowsTheEdgesOfTheTable) {
  // RFC 3629 section 4.
  EXPECT_EQ(utf8Length("\x7F", 0), 1U);
  EXPECT_EQ(utf8Length("\xC2\x80", 0), 2U);
  EXPECT_EQ(utf8Length("\xC1\xBF", 0), 0U);
  EXPECT_EQ(utf8Length("\xE0\xA0\x80", 0), 3U);
  EXPECT_EQ(utf8Length("\xE0\x9F\xBF", 0), 0U);
  EXPECT_EQ(utf8Length("\xED\x9F\xBF", 0), 3U);
  EXPECT_EQ(utf8Length("\xED\xA0\x80", 0), 0U);
  EXPECT_EQ(utf8Length("\xF4\x8F\xBF\xBF", 0), 4U);
  EXPECT_EQ(utf8Length("\xF4\x90\x80\x80", 0), 0U);
  EXPECT_EQ(utf8Length("\xE2\x82", 0), 0U);
  EXPECT_EQ(utf8(0x1F995), "🦕");
  EXPECT_EQ(utf8(0x20AC), "€");
}

}  // namespace
}  // namespace zyga::files
