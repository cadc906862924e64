#pragma once

#include <condition_variable>
#include <list>
#include <memory>
#include <mutex>
#include <vector>

#include "core/study/claims/claim_answer.h"
#include "core/study/claims/claim_probability.h"

namespace zyga::study {

/// Answers that have been worked out, each once, and probabilities likewise: window, report and verbs that ask the same
/// of the same scenario share them. Two scenarios are the same here with the same specimen and the same contact model
/// (or none), equal assumptions and equal poses; a claim's source changes no answer. Keeps the latest only. For any
/// number of threads.
class ClaimBook {
 public:
  explicit ClaimBook(std::size_t kept = 64) : kept_(kept) {}

  /// The answer of answerClaim, needs included. Where another thread is asking the same it waits for that answer. Null
  /// when the task was cancelled. What answerClaim throws is thrown on.
  std::shared_ptr<const ClaimAnswer> answer(const range::Scenario& scenario, const Claim& claim,
                                            const task::Task& task = {});
  /// The same of claimProbability. `measures`, where given, have to be what the scenario's specimen was built from.
  std::shared_ptr<const ClaimProbability> probability(const range::Scenario& scenario, const Claim& claim,
                                                      const Measures& measures, const ProbabilityOptions& options = {},
                                                      const task::Task& task = {});
  /// The same of several claims, in their order, those that are not there yet worked out together
  /// (claimProbabilities). Empty when the task was cancelled.
  std::vector<std::shared_ptr<const ClaimProbability>> probabilities(const range::Scenario& scenario,
                                                                     const std::vector<Claim>& claims,
                                                                     const Measures& measures,
                                                                     const ProbabilityOptions& options = {},
                                                                     const task::Task& task = {});
  /// The answer if it is there.
  std::shared_ptr<const ClaimAnswer> find(const range::Scenario& scenario, const Claim& claim) const;
  /// How many answers are there.
  std::size_t size() const;

 private:
  struct Question {
    range::Scenario scenario;
    Claim claim;                 ///< without its source
    ProbabilityOptions options;  ///< of probabilities
    bool measures = false;       ///< likewise: they were given
    bool sameAs(const Question& other) const;
  };
  template <class Value>
  struct Entry {
    Question question;
    std::shared_ptr<const Value> value;  ///< null while it is being worked out
  };
  template <class Value>
  using Shelf = std::list<Entry<Value>>;  ///< latest first
  /// Gives the place of a question its value, or gives it up where there is none, so that another who waits asks for
  /// itself.
  template <class Value>
  void settle(Shelf<Value>& shelf, typename Shelf<Value>::iterator place, std::shared_ptr<const Value> value);
  template <class Value, class Work>
  std::shared_ptr<const Value> workedOut(Shelf<Value>& shelf, const Question& question, const task::Task& task,
                                         const Work& work);

  const std::size_t kept_;
  mutable std::mutex mutex_;  ///< of what follows
  std::condition_variable settled_;
  Shelf<ClaimAnswer> answers_;
  Shelf<ClaimProbability> probabilities_;
};

/// The book of this program. It holds what any caller would work out for itself, so that sharing it changes no answer.
ClaimBook& claimBook();

}  // namespace zyga::study
