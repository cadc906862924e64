#include "core/study/run.h"

#include <algorithm>
#include <utility>

namespace zyga::study {
namespace {

template <class Found>
std::shared_ptr<const StudyResult> whenThere(std::optional<Found> found) {
  return found ? std::make_shared<const StudyResult>(std::move(*found)) : nullptr;
}

/// Null when cancelled; throws as the studies do.
std::shared_ptr<const StudyResult> found(StudyKind kind, const range::Scenario& scenario, const StudySettings& settings,
                                         const Measures& measures, const task::Task& task) {
  switch (kind) {
    case StudyKind::Elevation:
      return std::make_shared<const StudyResult>(elevation(scenario));
    case StudyKind::Envelope: {
      EnvelopeOptions options;
      options.space = settings.space;
      return whenThere(envelope(scenario, options, task));
    }
    case StudyKind::Range:
      return whenThere(rangeChart(scenario, task));
    case StudyKind::Spread:
      if (!measures.filled || !measures.build) throw reason::Failure(reason::Reason(kNoMeasures));
      return whenThere(spread(scenario, *measures.filled, measures.build, settings.spread, task));
    case StudyKind::Pressure:
      return std::make_shared<const StudyResult>(pressure(scenario, settings.heart));
    case StudyKind::Stress:
      break;
  }
  return std::make_shared<const StudyResult>(jointStress(scenario, settings.tension, settings.densities));
}

StudySettings ofKind(StudyKind kind, const StudySettings& all) {
  StudySettings own;
  if (kind == StudyKind::Envelope) own.space = all.space;
  if (kind == StudyKind::Spread) own.spread = all.spread;
  if (kind == StudyKind::Pressure) own.heart = all.heart;
  if (kind == StudyKind::Stress) {
    own.tension = all.tension;
    own.densities = all.densities;
  }
  return own;
}

}  // namespace

std::string_view toText(StudyKind kind) {
  static constexpr std::array<std::string_view, kStudyKinds.size()> kWords{"elevation", "envelope", "range",
                                                                           "spread",    "pressure", "stress"};
  return kWords[static_cast<std::size_t>(kind)];
}

bool isQuick(StudyKind kind) {
  return kind == StudyKind::Elevation || kind == StudyKind::Pressure || kind == StudyKind::Stress;
}

StudyKind kindOf(const StudyResult& result) { return kStudyKinds[result.index()]; }

namespace {

bool judged(const Elevation& elevation) { return elevation.contactJudged; }
bool judged(const Envelope& envelope) { return envelope.contactJudged; }
bool judged(const RangeChart& chart) { return chart.contactJudged; }
bool judged(const SpreadStudy&) { return false; }  // its samples are other animals, whose bones have no shapes
bool judged(const Pressure& pressure) { return pressure.elevation.contactJudged; }
bool judged(const JointStress& stress) { return stress.contactJudged; }

}  // namespace

bool contactJudged(const StudyResult& result) {
  return std::visit([](const auto& found) { return judged(found); }, result);
}

StudyOutcome run(StudyKind kind, const range::Scenario& scenario, const StudySettings& settings,
                 const Measures& measures, const task::Task& task) {
  if (task.cancelled()) return {};
  try {
    return {found(kind, scenario, settings, measures, task), {}};
  } catch (const reason::Failure& failure) {
    return {nullptr, failure.reason()};
  } catch (const std::exception& error) {
    return {nullptr, reason::Reason(kUnforeseen, {reason::text(error.what())})};
  }
}

StudyOutcome StudyAnswers::run(StudyKind kind, const range::Scenario& scenario, const StudySettings& settings,
                               const Measures& measures, const task::Task& task) {
  const Question question{kind, ofKind(kind, settings), scenario};
  if (auto result = known(question)) return {std::move(result), {}};
  StudyOutcome outcome = study::run(kind, scenario, settings, measures, task);
  if (outcome.result) keep(question, outcome.result);
  return outcome;
}

bool StudyAnswers::same(const Question& a, const Question& b) {
  return a.kind == b.kind && a.settings == b.settings && a.scenario.sharedSpecimen() == b.scenario.sharedSpecimen() &&
         a.scenario.sharedContact() == b.scenario.sharedContact() &&
         a.scenario.assumptions() == b.scenario.assumptions() && a.scenario.pose() == b.scenario.pose();
}

std::shared_ptr<const StudyResult> StudyAnswers::known(const Question& question) {
  const std::lock_guard lock(mutex_);
  const auto at = std::find_if(answers_.begin(), answers_.end(),
                               [&](const Answer& answer) { return same(answer.question, question); });
  if (at == answers_.end()) return nullptr;
  std::rotate(answers_.begin(), at, at + 1);
  return answers_.front().result;
}

void StudyAnswers::keep(const Question& question, const std::shared_ptr<const StudyResult>& result) {
  const std::lock_guard lock(mutex_);
  answers_.push_front({question, result});
  std::size_t ofTheKind = 0;
  std::erase_if(answers_,
                [&](const Answer& answer) { return answer.question.kind == question.kind && ++ofTheKind > most_; });
}

}  // namespace zyga::study
