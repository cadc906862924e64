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
  return a.sharedSpecimen() == b.sharedSpecimen() && a.assumptions() == b.assumptions() && a.pose() == b.pose();
}

}  // namespace

ClaimBook::Entries::const_iterator ClaimBook::at(const range::Scenario& scenario, const Claim& claim) const {
  return std::find_if(entries_.begin(), entries_.end(),
                      [&](const Entry& entry) { return entry.claim == claim && same(entry.scenario, scenario); });
}

std::shared_ptr<const ClaimAnswer> ClaimBook::find(const range::Scenario& scenario, const Claim& claim) const {
  const std::lock_guard lock(mutex_);
  const auto found = at(scenario, withoutSource(claim));
  return found == entries_.end() ? nullptr : found->answer;
}

std::size_t ClaimBook::size() const {
  const std::lock_guard lock(mutex_);
  return entries_.size();
}

void ClaimBook::forgetOldest() {
  std::size_t answered = 0;
  std::erase_if(entries_, [&](const Entry& entry) { return entry.answer && ++answered > kept_; });
}

std::shared_ptr<const ClaimAnswer> ClaimBook::answer(const range::Scenario& scenario, const Claim& claim,
                                                     const task::Task& task) {
  constexpr std::chrono::milliseconds kLook{20};  // how often one who waits looks whether it is cancelled
  const Claim bare = withoutSource(claim);
  std::unique_lock lock(mutex_);
  for (auto found = at(scenario, bare); found != entries_.end(); found = at(scenario, bare)) {
    if (found->answer) return found->answer;
    if (task.cancelled()) return nullptr;
    settled_.wait_for(lock, kLook);
  }
  const auto mine = entries_.insert(entries_.begin(), {scenario, bare, nullptr});
  lock.unlock();
  std::shared_ptr<const ClaimAnswer> answer;
  // The place is given up where there is no answer, so that another who waits asks for itself.
  const auto settle = [&] {
    lock.lock();
    if (answer)
      mine->answer = answer;
    else
      entries_.erase(mine);
    forgetOldest();
    lock.unlock();
    settled_.notify_all();
  };
  try {
    if (auto worked = answerClaim(scenario, bare, {}, task))
      answer = std::make_shared<const ClaimAnswer>(*std::move(worked));
  } catch (...) {
    settle();
    throw;
  }
  settle();
  return answer;
}

ClaimBook& claimBook() {
  static ClaimBook book;
  return book;
}

}  // namespace zyga::study
