#include "core/task/task.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#ifdef __linux__
#include <sys/resource.h>
#endif

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <numeric>
#include <set>
#include <stdexcept>
#include <thread>
#include <vector>

#include "core/task/parallel.h"

namespace zyga::task {
namespace {

using testing::ElementsAre;

Task onThreads(unsigned threads) { return Task().withThreads(threads); }

TEST(Task, OfNobodyIsNeverCancelledAndTellsNobody) {
  const Task task;
  EXPECT_FALSE(task.cancelled());
  EXPECT_FALSE(task.watched());
  task.tell(0.5);
  task.part(0.2, 0.4).tell(0.5);
  EXPECT_FALSE(task.part(0.2, 0.4).watched());
}

TEST(Task, PartsTellInScaleAndPartsOfPartsToo) {
  std::vector<double> told;
  const Task task(nullptr, [&](double share) { told.push_back(share); });
  const Task second = task.part(0.5, 1);
  second.tell(0);
  second.tell(1);
  second.part(0.5, 0.75).tell(1);
  EXPECT_THAT(told, ElementsAre(0.5, 1, 0.875));
}

TEST(Task, PartsAndQuietOnesAreCancelledWithTheWhole) {
  std::atomic<bool> cancel = false;
  double told = -1;
  const Task task(
      &cancel, [&](double share) { told = share; }, 3);
  const Task part = task.part(0, 0.5), quiet = task.quiet();
  quiet.tell(0.7);
  EXPECT_EQ(told, -1);
  EXPECT_EQ(part.threads(), 3u);
  EXPECT_EQ(quiet.threads(), 3u);
  EXPECT_EQ(task.withThreads(1).threads(), 1u);
  cancel = true;
  EXPECT_TRUE(part.cancelled() && quiet.cancelled() && task.withThreads(1).cancelled());
}

TEST(ForEach, CallsEachOnceWhateverItsSize) {
  for (const unsigned threads : {0u, 1u, 2u, 7u}) {
    for (const std::size_t count : {0u, 1u, 5u, 1000u}) {
      std::vector<int> calls(count);
      EXPECT_TRUE(forEach(count, onThreads(threads), [&](std::size_t i) { ++calls[i]; }));
      EXPECT_EQ(calls, std::vector<int>(count, 1)) << threads << " threads";
    }
  }
}

TEST(ForEach, ProgressCountsUpToTheEnd) {
  std::vector<double> told;
  const Task task(
      nullptr, [&](double share) { told.push_back(share); }, 4);
  EXPECT_TRUE(forEach(300, task, [](std::size_t) {}));
  std::vector<double> expected;
  for (int i = 1; i <= 300; ++i) expected.push_back(i / 300.0);
  EXPECT_EQ(told, expected);
}

TEST(ForEach, StopsWhenItIsCancelled) {
  std::atomic<bool> cancel = false;
  std::atomic<std::size_t> calls = 0;
  EXPECT_FALSE(forEach(100'000, Task(&cancel, {}, 4), [&](std::size_t) {
    if (++calls == 50) cancel = true;
  }));
  EXPECT_GE(calls, 50u);
  EXPECT_LE(calls, 53u) << "those begun may end";
}

TEST(ForEach, CancelledBeforeItBeginsCallsNothing) {
  const std::atomic<bool> cancel = true;
  for (const unsigned threads : {1u, 4u})
    EXPECT_FALSE(
        forEach(10, Task(&cancel, {}, threads), [](std::size_t i) { ADD_FAILURE() << "call " << i << " was made"; }));
}

TEST(ForEach, CancelledAfterTheLastCallItIsDoneAllTheSame) {
  std::atomic<bool> cancel = false;
  const Task task(
      &cancel, [&](double share) { cancel = share == 1; }, 3);
  EXPECT_TRUE(forEach(20, task, [](std::size_t) {}));
}

TEST(ForEach, ThrowsOnWhatACallThrows) {
  for (const unsigned threads : {1u, 4u}) {
    std::atomic<std::size_t> calls = 0;
    const auto work = [&](std::size_t i) {
      ++calls;
      if (i == 10) throw std::runtime_error("ten");
    };
    try {
      forEach(100'000, onThreads(threads), work);
      ADD_FAILURE() << "nothing was thrown";
    } catch (const std::runtime_error& error) {
      EXPECT_STREQ(error.what(), "ten");
    }
    EXPECT_GE(calls, 11u);
    EXPECT_LT(calls, 100'000u) << "the others go home";
  }
}

TEST(ForEach, ThrowsOnWhatTheTellingThrows) {
  const Task task(
      nullptr,
      [](double share) {
        if (share >= 0.5) throw std::logic_error("half");
      },
      4);
  EXPECT_THROW(forEach(100, task, [](std::size_t) {}), std::logic_error);
}

TEST(ForEach, KeepsToItsThreads) {
  for (const unsigned threads : {1u, 2u, 3u}) {
    std::mutex mutex;
    std::set<std::thread::id> seen;
    std::atomic<unsigned> at = 0, most = 0;
    forEach(60, onThreads(threads), [&](std::size_t) {
      const unsigned now = ++at;
      for (unsigned before = most; before < now && !most.compare_exchange_weak(before, now);) {
      }
      const std::lock_guard lock(mutex);
      seen.insert(std::this_thread::get_id());
      --at;
    });
    EXPECT_LE(most, threads);
    if (threads == 1) {
      EXPECT_THAT(seen, ElementsAre(std::this_thread::get_id()));
    }
  }
}

/// The first call waits for the second to begin, which takes a thread of its own.
TEST(ForEach, WorksOnManyAtOnce) {
  if (cores() < 2) GTEST_SKIP() << "one core";
  std::mutex mutex;
  std::condition_variable told;
  bool begun = false, met = false;
  forEach(2, onThreads(2), [&](std::size_t i) {
    std::unique_lock lock(mutex);
    if (i == 1) {
      begun = true;
      told.notify_all();
    } else {
      met = told.wait_for(lock, std::chrono::seconds(60), [&] { return begun; });
    }
  });
  EXPECT_TRUE(met);
}

TEST(ForEach, MayBeUsedWithinItsOwnCalls) {
  std::vector<std::vector<int>> calls(20, std::vector<int>(30));
  EXPECT_TRUE(forEach(calls.size(), onThreads(4), [&](std::size_t i) {
    EXPECT_TRUE(forEach(calls[i].size(), onThreads(4), [&](std::size_t j) { ++calls[i][j]; }));
  }));
  EXPECT_EQ(calls, std::vector<std::vector<int>>(20, std::vector<int>(30, 1)));
}

/// A call that waits for an inner forEach must not take up another outer call meanwhile: it would wait for its own
/// lock.
TEST(ForEach, WaitsWithinWithoutTakingUpOtherCalls) {
  std::mutex held;
  std::size_t sum = 0;
  EXPECT_TRUE(forEach(50, onThreads(4), [&](std::size_t) {
    const std::lock_guard lock(held);
    std::atomic<std::size_t> inner = 0;
    forEach(8, onThreads(4), [&](std::size_t i) {
      std::this_thread::sleep_for(std::chrono::microseconds(50));
      inner += i;
    });
    sum += inner;
  }));
  EXPECT_EQ(sum, 50u * 28u);
}

TEST(ForEach, AnInnerExceptionReachesTheOutside) {
  const auto inner = [](std::size_t j) {
    if (j == 3) throw std::out_of_range("three");
  };
  EXPECT_THROW(forEach(10, onThreads(4), [&](std::size_t) { forEach(10, onThreads(4), inner); }), std::out_of_range);
}

TEST(ForEach, ServesManyAskersAtOnce) {
  std::vector<std::size_t> sums(4, 0);
  {
    std::vector<std::jthread> askers;
    for (std::size_t& sum : sums)
      askers.emplace_back([&sum] {
        std::vector<std::size_t> squares(500);
        forEach(squares.size(), onThreads(3), [&](std::size_t i) { squares[i] = i * i; });
        sum = std::accumulate(squares.begin(), squares.end(), std::size_t{0});
      });
  }
  EXPECT_EQ(sums, std::vector<std::size_t>(4, 499u * 500u * 999u / 6u));
}

#ifdef __linux__
TEST(ForEach, HelpersStandBackWithWhoAsks) {
  std::vector<int> nice(200, -1);
  std::jthread([&] {
    setpriority(PRIO_PROCESS, 0, 5);
    forEach(nice.size(), onThreads(4), [&](std::size_t i) {
      std::this_thread::sleep_for(std::chrono::microseconds(200));
      nice[i] = getpriority(PRIO_PROCESS, 0);
    });
  }).join();
  EXPECT_THAT(nice, testing::Each(testing::Ge(5)));
}
#endif

}  // namespace
}  // namespace zyga::task
