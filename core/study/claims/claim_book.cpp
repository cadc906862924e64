#include "core/study/claims/claim_book.h"

#include <algorithm>
#include <chrono>

namespace zyga::study {
namespace {

Claim withoutSource(Claim claim) {
  claim.source.clear();
  return claim;
}

bool same(const range::Scenario& a, const range::Scenario& b) {
  return a.sharedSpecimen() == b.sharedSpecimen() && a.sharedContact() == b.sharedContact() &&
         a.assumptions() == b.assumptions() && a.pose() == b.pose();
}

/// The entry that holds a question; the end where none does.
template <class Shelf, class Question>
auto entryOf(Shelf& shelf, const Question& question) {
  return std::find_if(shelf.begin(), shelf.end(), [&](const auto& entry) { return entry.question.sameAs(question); });
}

}  // namespace

bool ClaimBook::Question::sameAs(const Question& other) const {
  return claim == other.claim && measures == other.measures && options.sameNumbers(other.options) &&
         same(scenario, other.scenario);
}

std::shared_ptr<const ClaimAnswer> ClaimBook::find(const range::Scenario& scenario, const Claim& claim) const {
  const std::lock_guard lock(mutex_);
  const auto found = entryOf(answers_, Question{scenario, withoutSource(claim), {}, false});
  return found == answers_.end() ? nullptr : found->value;
}

std::size_t ClaimBook::size() const {
  const std::lock_guard lock(mutex_);
  return answers_.size();
}

template <class Value, class Work>
std::shared_ptr<const Value> ClaimBook::workedOut(Shelf<Value>& shelf, const Question& question, const task::Task& task,
                                                  const Work& work) {
  constexpr std::chrono::milliseconds kLook{20};  // how often one who waits looks whether it is cancelled
  std::unique_lock lock(mutex_);
  for (auto found = entryOf(shelf, question); found != shelf.end(); found = entryOf(shelf, question)) {
    if (found->value) return found->value;
    if (task.cancelled()) return nullptr;
    settled_.wait_for(lock, kLook);
  }
  const auto mine = shelf.insert(shelf.begin(), {question, nullptr});
  lock.unlock();
  std::shared_ptr<const Value> value;
  // The place is given up where there is no answer, so that another who waits asks for itself.
  const auto settle = [&] {
    lock.lock();
    if (value)
      mine->value = value;
    else
      shelf.erase(mine);
    std::size_t ready = 0;
    std::erase_if(shelf, [&](const auto& entry) { return entry.value && ++ready > kept_; });
    lock.unlock();
    settled_.notify_all();
  };
  try {
    if (auto worked = work()) value = std::make_shared<const Value>(*std::move(worked));
  } catch (...) {
    settle();
    throw;
  }
  settle();
  return value;
}

std::shared_ptr<const ClaimAnswer> ClaimBook::answer(const range::Scenario& scenario, const Claim& claim,
                                                     const task::Task& task) {
  const Claim bare = withoutSource(claim);
  return workedOut(answers_, {scenario, bare, {}, false}, task, [&] { return answerClaim(scenario, bare, {}, task); });
}

std::shared_ptr<const ClaimProbability> ClaimBook::probability(const range::Scenario& scenario, const Claim& claim,
                                                               const Measures& measures,
                                                               const ProbabilityOptions& options,
                                                               const task::Task& task) {
  const Claim bare = withoutSource(claim);
  return workedOut(probabilities_, {scenario, bare, options, static_cast<bool>(measures.filled)}, task,
                   [&] { return claimProbability(scenario, bare, measures, options, task); });
}

ClaimBook& claimBook() {
  static ClaimBook book;
  return book;
}

}  // namespace zyga::study
