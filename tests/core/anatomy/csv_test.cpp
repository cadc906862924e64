#include "core/anatomy/tables/csv.h"

#include <gtest/gtest.h>

namespace zyga::anatomy {
namespace {

TEST(Csv, QuotingAsInRfc4180) {
  const auto lines = splitCsv("a,\"b, c\",\"say \"\"x\"\"\"\r\n1,,3\n");
  ASSERT_EQ(lines.size(), 2u);
  EXPECT_EQ(lines[0].fields, (std::vector<std::string>{"a", "b, c", "say \"x\""}));
  EXPECT_EQ(lines[1].fields, (std::vector<std::string>{"1", "", "3"}));
}

TEST(Csv, LineNumbersCountEveryLineOfTheFile) {
  const auto lines = splitCsv("\xEF\xBB\xBF# remark\n\nbone,\"two\nlines\"\n\nC1,1\n");
  ASSERT_EQ(lines.size(), 3u);
  EXPECT_TRUE(lines[0].comment);
  EXPECT_EQ(lines[1].number, 3);
  EXPECT_EQ(lines[2].number, 6);
}

TEST(Csv, SemicolonsWhereTheHeaderUsesThem) {
  const auto lines = splitCsv("bone;length (mm)\nC3;12,5\n");
  ASSERT_EQ(lines.size(), 2u);
  double value = 0;
  ASSERT_TRUE(parseNumber(lines[1].fields[1], value));
  EXPECT_DOUBLE_EQ(value, 12.5);
}

TEST(Csv, NumbersAreTakenWholeOrNotAtAll) {
  double value = 0;
  EXPECT_TRUE(parseNumber("1e3", value));
  EXPECT_DOUBLE_EQ(value, 1000);
  EXPECT_TRUE(parseNumber("+4.5", value));
  for (const char* text : {"", "abc", "4 5", "4mm", "1,234,567", "nan", "inf", "--3", "0x10"}) {
    EXPECT_FALSE(parseNumber(text, value)) << text;
  }
}

}  // namespace
}  // namespace zyga::anatomy
