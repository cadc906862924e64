// Every row of the list of published values has a test, or says what it is instead: ROWS.csv beside this file.
#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>

#include "core/anatomy/tables/csv.h"

namespace zyga {
namespace {

const std::filesystem::path kTests = std::filesystem::path(ZYGAPOSE_SOURCE_DIR) / "tests";

std::string textOf(const std::filesystem::path& path) {
  std::ostringstream text;
  text << std::ifstream(path).rdbuf();
  return text.str();
}

struct Row {
  std::string id, mark, file, test;
};

std::vector<Row> rows() {
  std::vector<Row> out;
  for (const anatomy::CsvLine& line : anatomy::splitCsv(textOf(kTests / "published/ROWS.csv"))) {
    if (line.comment || line.fields[0] == "row") continue;
    EXPECT_EQ(line.fields.size(), 4u) << "ROWS.csv:" << line.number;
    if (line.fields.size() == 4) out.push_back({line.fields[0], line.fields[1], line.fields[2], line.fields[3]});
  }
  return out;
}

/// Without line breaks and blanks, as a long name may be broken.
std::string squeezed(std::string text) {
  std::erase_if(text, [](unsigned char c) { return std::isspace(c); });
  return text;
}

TEST(PublishedRows, NoneIsMissing) {
  const std::map<char, int> groups{{'A', 22}, {'B', 13}, {'C', 8}, {'D', 5}, {'E', 3}, {'F', 8}};
  std::set<std::string> expected, listed;
  for (const auto& [letter, count] : groups)
    for (int i = 1; i <= count; ++i) expected.insert(letter + std::to_string(i));
  for (const Row& row : rows()) listed.insert(row.id);
  EXPECT_EQ(listed, expected);
}

TEST(PublishedRows, EachTestThatIsNamedIsThere) {
  std::map<std::string, std::string> sources;
  for (const Row& row : rows()) {
    if (row.mark == "open") continue;
    const std::string& source = sources.try_emplace(row.file, squeezed(textOf(kTests / row.file))).first->second;
    const auto dot = row.test.find('.');
    ASSERT_NE(dot, std::string::npos) << row.id;
    const std::string named = "(" + row.test.substr(0, dot) + "," + row.test.substr(dot + 1) + ")";
    bool there = false;
    for (const char* macro : {"TEST", "TEST_F", "TEST_P"}) there |= source.find(macro + named) != std::string::npos;
    EXPECT_TRUE(there) << row.id << ": no test " << row.test << " in tests/" << row.file;
  }
}

TEST(PublishedRows, MarksAreOfTheKindsThatAreKnown) {
  const std::set<std::string> known{"genuine", "partial", "definition", "arithmetic", "echo of the input", "open"};
  for (const Row& row : rows()) {
    EXPECT_TRUE(known.contains(row.mark)) << row.id << ": " << row.mark;
    EXPECT_EQ(row.mark == "open", row.test.empty()) << row.id << ": an open row has no test, any other has one";
    // Only rows about living animals may still be open.
    EXPECT_TRUE(row.mark != "open" || row.id.front() == 'F') << row.id;
  }
}

}  // namespace
}  // namespace zyga
