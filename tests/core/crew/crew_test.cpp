#include "core/crew/crew.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <numeric>
#include <stdexcept>
#include <vector>

namespace zyga::crew {
namespace {

TEST(Crew, CallsEachOnceWhateverItsSize) {
  for (const unsigned threads : {0u, 1u, 2u, 7u}) {
    for (const std::size_t count : {0u, 1u, 5u, 1000u}) {
      std::vector<int> calls(count);
      EXPECT_TRUE(forEach(count, {threads, nullptr, {}}, [&](std::size_t i) { ++calls[i]; }));
      EXPECT_EQ(calls, std::vector<int>(count, 1)) << threads << " threads";
    }
  }
}

TEST(Crew, ProgressCountsUpToTheEnd) {
  std::vector<std::size_t> told;
  const auto tell = [&](std::size_t done, std::size_t total) {
    EXPECT_EQ(total, 300u);
    told.push_back(done);
  };
  EXPECT_TRUE(forEach(300, {4, nullptr, tell}, [](std::size_t) {}));
  std::vector<std::size_t> expected(300);
  std::iota(expected.begin(), expected.end(), 1u);
  EXPECT_EQ(told, expected);
}

TEST(Crew, StopsWhenItIsCancelled) {
  std::atomic<bool> cancel = false;
  std::atomic<std::size_t> calls = 0;
  EXPECT_FALSE(forEach(100'000, {4, &cancel, {}}, [&](std::size_t) {
    if (++calls == 50) cancel = true;
  }));
  EXPECT_GE(calls, 50u);
  EXPECT_LE(calls, 53u) << "those begun may end";
}

TEST(Crew, CancelledAfterTheLastCallItIsDoneAllTheSame) {
  std::atomic<bool> cancel = false;
  const auto tell = [&](std::size_t done, std::size_t total) { cancel = done == total; };
  EXPECT_TRUE(forEach(20, {3, &cancel, tell}, [](std::size_t) {}));
}

TEST(Crew, ThrowsOnWhatACallThrows) {
  for (const unsigned threads : {1u, 4u}) {
    std::atomic<std::size_t> calls = 0;
    const auto work = [&](std::size_t i) {
      ++calls;
      if (i == 10) throw std::runtime_error("ten");
    };
    try {
      forEach(100'000, {threads, nullptr, {}}, work);
      ADD_FAILURE() << "nothing was thrown";
    } catch (const std::runtime_error& error) {
      EXPECT_STREQ(error.what(), "ten");
    }
    EXPECT_GE(calls, 11u);
    EXPECT_LT(calls, 100'000u) << "the others go home";
  }
}

}  // namespace
}  // namespace zyga::crew
