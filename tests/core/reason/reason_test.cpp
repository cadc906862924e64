#include "core/reason/reason.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace zyga::reason {
namespace {

constexpr Id kPlain{"test.plain", 0};
constexpr Id kOther{"test.other", 0};
constexpr Id kOf{"test.of", 1};
constexpr Id kOfTwo{"test.of-two", 2};

TEST(Reason, WithoutAnIdIsEmpty) {
  EXPECT_TRUE(Reason().empty());
  EXPECT_FALSE(Reason(kPlain).empty());
}

TEST(Reason, EqualsByIdAndValues) {
  EXPECT_EQ(Reason(kPlain), Reason(kPlain));
  EXPECT_FALSE(Reason(kPlain) == Reason(kOther));
  EXPECT_EQ(Reason(kOf, {Count{3}}), Reason(kOf, {Count{3}}));
  EXPECT_FALSE(Reason(kOf, {Count{3}}) == Reason(kOf, {Count{4}}));
  EXPECT_FALSE(Reason(kOf, {Count{3}}) == Reason(kOf, {Quantity{3}})) << "another kind of value";
  EXPECT_FALSE(Reason(kOf, {Quantity{3, Unit::Length}}) == Reason(kOf, {Quantity{3, Unit::Angle}}));
  EXPECT_FALSE(Reason(kOf, {text("femur")}) == Reason(kOf, {Term{"femur"}})) << "typed is not a word of the trade";
}

TEST(Reason, EqualsByWhatInnerReasonsAndListsHold) {
  const auto nested = [](long long n) {
    return Reason(kOfTwo, {inner(Reason(kOf, {Count{n}})), list({text("a"), inner(Reason(kOf, {Count{n}}))})});
  };
  EXPECT_EQ(nested(1), nested(1)) << "made twice, so not the same pointers";
  EXPECT_FALSE(nested(1) == nested(2));
  EXPECT_FALSE(Reason(kOf, {list({text("a")})}) == Reason(kOf, {list({text("a"), text("b")})}));
}

TEST(Reason, TellsLogsWhatItHolds) {
  EXPECT_EQ(debugText(Reason(kPlain)), "test.plain");
  EXPECT_EQ(debugText(Reason(kOfTwo, {text("femur"), Count{3}})), "test.of-two(femur, 3)");
  const Reason whole(kOfTwo, {list({Term{"bone.femur"}, Count{2}}), inner(Reason(kOf, {text("x")}))});
  EXPECT_EQ(debugText(whole), "test.of-two([bone.femur, 2], test.of(x))");
}

TEST(Reason, AFailureCarriesIt) {
  try {
    throw Failure(Reason(kOf, {Count{7}}));
  } catch (const std::runtime_error& error) {
    EXPECT_STREQ(error.what(), "test.of(7)");
    const auto* failure = dynamic_cast<const Failure*>(&error);
    ASSERT_TRUE(failure);
    EXPECT_EQ(failure->reason(), Reason(kOf, {Count{7}}));
  }
}

#ifndef NDEBUG
TEST(ReasonDeathTest, AsksForAsManyValuesAsItsIdSays) {
  EXPECT_DEATH(static_cast<void>(Reason(kOf, {})), "values");
  EXPECT_DEATH(static_cast<void>(Reason(kPlain, {Count{1}})), "values");
}
#endif

}  // namespace
}  // namespace zyga::reason
