#pragma once

#include <array>
#include <cstddef>
#include <deque>
#include <memory>
#include <mutex>
#include <string_view>
#include <variant>

#include "core/study/reach/envelope.h"
#include "core/study/reach/range_chart.h"
#include "core/study/stress/joint_stress.h"
#include "core/study/stress/pressure.h"
#include "core/study/uncertainty/spread.h"

namespace zyga::study {

enum class StudyKind { Elevation, Envelope, Range, Spread, Pressure, Stress };
inline constexpr std::array<StudyKind, 6> kStudyKinds{StudyKind::Elevation, StudyKind::Envelope, StudyKind::Range,
                                                      StudyKind::Spread,    StudyKind::Pressure, StudyKind::Stress};
/// Its id in files and on the command line: "elevation", "envelope", "range", "spread", "pressure", "stress".
std::string_view toText(StudyKind kind);
/// Over within milliseconds, so that it can follow a moving animal.
bool isQuick(StudyKind kind);

/// What a study has found; alternatives in the order of StudyKind.
using StudyResult = std::variant<Elevation, Envelope, RangeChart, SpreadStudy, Pressure, JointStress>;
StudyKind kindOf(const StudyResult& result);
/// Whether bones that enter each other ended the ranges that it rests on.
bool contactJudged(const StudyResult& result);

/// What a person may set about the studies; each kind looks at its own.
struct StudySettings {
  bool space = false;  ///< Envelope: the space sideways and the strip on the ground as well
  SpreadOptions spread;
  HeartPlace heart;
  TensionPlace tension;
  Densities densities;  ///< Stress: of the project
  bool operator==(const StudySettings&) const = default;
};

/// Spread was asked for without the measures that it varies.
inline constexpr reason::Id kNoMeasures{"study.no-measures", 0};
/// A study met something unforeseen; Text: what, as the machine puts it.
inline constexpr reason::Id kUnforeseen{"study.unforeseen", 1};

/// How a study has ended: with a result, with a reason why there is none, or cancelled (neither).
struct StudyOutcome {
  std::shared_ptr<const StudyResult> result;
  reason::Reason failure;
  bool cancelled() const { return !result && failure.empty(); }
};

/// Runs a study of this kind. Never throws for an animal that the study cannot be made of: the outcome says why.
StudyOutcome run(StudyKind kind, const range::Scenario& scenario, const StudySettings& settings = {},
                 const Measures& measures = {}, const task::Task& task = {});

/// Runs studies and keeps the last answers, so that whoever asks the same of the same animal is not kept waiting again:
/// the panel and the report share one. The same animal is the same specimen in memory, in the same pose and under the
/// same assumptions, with the same shapes or none for contact; `measures` has to be what that specimen was built from.
/// May be asked by several threads at once.
class StudyAnswers {
 public:
  /// `most`: of each kind.
  explicit StudyAnswers(std::size_t most = 4) : most_(most) {}

  StudyOutcome run(StudyKind kind, const range::Scenario& scenario, const StudySettings& settings = {},
                   const Measures& measures = {}, const task::Task& task = {});

 private:
  struct Question {
    StudyKind kind;
    StudySettings settings;  ///< those of the kind, the others as they are by default
    range::Scenario scenario;
  };
  struct Answer {
    Question question;
    std::shared_ptr<const StudyResult> result;
  };
  static bool same(const Question& a, const Question& b);
  std::shared_ptr<const StudyResult> known(const Question& question);
  void keep(const Question& question, const std::shared_ptr<const StudyResult>& result);

  std::mutex mutex_;  ///< of what follows
  std::size_t most_;
  std::deque<Answer> answers_;  ///< asked for last first
};

}  // namespace zyga::study
