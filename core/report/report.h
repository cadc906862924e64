#pragma once

#include <memory>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/anatomy/summary.h"
#include "core/files/project/project.h"
#include "core/kinematics/stand_readings.h"
#include "core/range/scenario.h"
#include "core/study/claims/claim_probability.h"
#include "core/study/mass/balance.h"
#include "core/study/run.h"

/// What the bones support in a pose, with sources and assumptions, so that others can check it: as values. ui/report
/// says them and sets them on pages.
namespace zyga::report {

/// The studies that a report holds, in its order.
inline constexpr std::array<study::StudyKind, 5> kReportStudies{study::StudyKind::Elevation, study::StudyKind::Envelope,
                                                                study::StudyKind::Range, study::StudyKind::Pressure,
                                                                study::StudyKind::Stress};

struct ReportOptions {
  bool studies = true;      ///< kReportStudies; some seconds
  bool claimsOnly = false;  ///< nothing but the claims and the assumptions they rest on: one page
  /// What has been worked out already; may be null. Has to outlive the work.
  study::StudyAnswers* answers = nullptr;
};

struct AnsweredClaim {
  study::Claim claim;
  std::shared_ptr<const study::ClaimAnswer> answer;                      ///< never null
  std::shared_ptr<const study::ClaimProbability> probability = nullptr;  ///< null where the claim is not answered
};

struct StudyOfKind {
  study::StudyKind kind;
  study::StudyOutcome outcome;  ///< a result, or why there is none
};

/// Everything that a report tells. Lengths in m, angles in rad, masses in kg.
struct ReportData {
  range::Scenario scenario;
  std::string name;      ///< of the specimen, as somebody typed it
  std::string poseName;  ///< likewise; empty for the present pose
  bool claimsOnly = false;
  std::vector<AnsweredClaim> claims;

  // What follows is left empty when claimsOnly.
  anatomy::BodyPlan plan = anatomy::BodyPlan::HighBrowser;  /// that missing limbs and skull follow
  bool onTracks = false;                                    ///< footprints are part of the project
  kinematics::StandReadings stand;
  std::optional<double> snoutHeight;
  anatomy::Summary lengths;
  anatomy::Completeness completeness;
  std::vector<range::JointLimits>
      neckLimits;                    ///< from neutral, base of the neck first; contact counts where it is known
  std::vector<StudyOfKind> studies;  ///< none when they were not asked for
  study::Balance balance;
  std::optional<study::CircumferenceMass> massByCircumference;  ///< where the table has humerus and femur

  /// Null where the study was not asked for or gave nothing.
  template <class Study>
  const Study* find() const {
    for (const StudyOfKind& one : studies)
      if (one.outcome.result)
        if (const auto* found = std::get_if<Study>(one.outcome.result.get())) return found;
    return nullptr;
  }
};

/// All that there is to tell of the project's animal in the scenario. The same input gives the same data: there is no
/// clock in it. Nothing when cancelled.
std::optional<ReportData> buildReport(const range::Scenario& scenario, const files::Project& project,
                                      const std::string& poseName, const ReportOptions& options = {},
                                      const task::Task& task = {});

}  // namespace zyga::report
