#pragma once

#include <condition_variable>
#include <list>
#include <memory>
#include <mutex>

#include "core/study/claims/claim_answer.h"

namespace zyga::study {

/// Answers that have been worked out, each once: window, report and verbs that ask the same of the same scenario share
/// them. Two scenarios are the same here with the same specimen, equal assumptions and equal poses; shapes of bones and
/// a claim's source change no answer. Keeps the latest answers only. For any number of threads.
class ClaimBook {
 public:
  explicit ClaimBook(std::size_t kept = 64) : kept_(kept) {}

  /// The answer of answerClaim, needs included. Where another thread is asking the same it waits for that answer. Null
  /// when the task was cancelled. What answerClaim throws is thrown on.
  std::shared_ptr<const ClaimAnswer> answer(const range::Scenario& scenario, const Claim& claim,
                                            const task::Task& task = {});
  /// The answer if it is there.
  std::shared_ptr<const ClaimAnswer> find(const range::Scenario& scenario, const Claim& claim) const;
  std::size_t size() const;

 private:
  struct Entry {
    range::Scenario scenario;
    Claim claim;                                ///< without its source
    std::shared_ptr<const ClaimAnswer> answer;  ///< null while it is being worked out
  };
  using Entries = std::list<Entry>;
  Entries::const_iterator at(const range::Scenario& scenario, const Claim& claim) const;
  void forgetOldest();

  const std::size_t kept_;
  mutable std::mutex mutex_;  ///< of what follows
  std::condition_variable settled_;
  Entries entries_;  ///< latest first
};

/// The book of this program. It holds what any caller would work out for itself, so that sharing it changes no answer.
ClaimBook& claimBook();

}  // namespace zyga::study
