#include "core/study/claims/claim_book.h"

#include <algorithm>
#include <chrono>
#include <utility>

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

template <class Value>
void ClaimBook::settle(Shelf<Value>& shelf, typename Shelf<Value>::iterator place, std::shared_ptr<const Value> value) {
  const std::lock_guard lock(mutex_);
  if (value)
    place->value = std::move(value);
  else
    shelf.erase(place);
  std::size_t ready = 0;
  std::erase_if(shelf, [&](const auto& entry) { return entry.value && ++ready > kept_; });
  settled_.notify_all();
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
  try {
    if (auto worked = work()) value = std::make_shared<const Value>(*std::move(worked));
  } catch (...) {
    settle(shelf, mine, std::shared_ptr<const Value>());
    throw;
  }
  settle(shelf, mine, value);
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

std::vector<std::shared_ptr<const ClaimProbability>> ClaimBook::probabilities(const range::Scenario& scenario,
                                                                              const std::vector<Claim>& claims,
                                                                              const Measures& measures,
                                                                              const ProbabilityOptions& options,
                                                                              const task::Task& task) {
  std::vector<Claim> asked;
  std::vector<Shelf<ClaimProbability>::iterator> places;
  {
    const std::lock_guard lock(mutex_);
    for (const Claim& claim : claims) {
      const Question question{scenario, withoutSource(claim), options, static_cast<bool>(measures.filled)};
      if (entryOf(probabilities_, question) != probabilities_.end()) continue;
      asked.push_back(question.claim);
      places.push_back(probabilities_.insert(probabilities_.begin(), {question, nullptr}));
    }
  }
  std::optional<std::vector<ClaimProbability>> worked;
  const auto settleAll = [&] {
    for (std::size_t i = 0; i < places.size(); ++i)
      settle(probabilities_, places[i], worked ? std::make_shared<const ClaimProbability>((*worked)[i]) : nullptr);
  };
  try {
    if (!asked.empty()) worked = claimProbabilities(scenario, asked, measures, options, task);
  } catch (...) {
    settleAll();
    throw;
  }
  settleAll();
  std::vector<std::shared_ptr<const ClaimProbability>> all;
  for (const Claim& claim : claims) {
    // Those that others have worked out, or are about to.
    all.push_back(task.cancelled() ? nullptr : probability(scenario, claim, measures, options, task));
    if (!all.back()) return {};
  }
  return all;
}

ClaimBook& claimBook() {
  static ClaimBook book;
  return book;
}

}  // namespace zyga::study
