#include "core/report/report.h"

#include "core/files/project/project_measures.h"
#include "core/range/contact/contact.h"
#include "core/study/claims/claim_book.h"
#include "core/study/mass/body_segments.h"
#include "core/study/reach/extremes.h"

namespace zyga::report {
namespace {

std::vector<range::JointLimits> neckLimits(const range::Scenario& scenario) {
  std::vector<range::JointLimits> all;
  for (const auto joint : study::jointsOf(scenario.specimen(), study::Chain::Neck))
    all.push_back(range::limits(scenario.specimen(), scenario.articulation(), scenario.assumptions(), joint,
                                Eigen::Vector3d::Zero(), scenario.contact()));
  return all;
}

/// False when cancelled.
bool answerClaims(ReportData& data, const files::Project& project, const task::Task& task) {
  const study::Measures measures = files::measuresOf(project);
  std::vector<study::Claim> answered;
  for (const study::Claim& claim : project.claims) {
    data.claims.push_back({claim, study::claimBook().answer(data.scenario, claim, task.quiet()), nullptr});
    if (!data.claims.back().answer) return false;
    if (data.claims.back().answer->answered()) answered.push_back(claim);
  }
  const auto found = study::claimBook().probabilities(data.scenario, answered, measures, {}, task.quiet());
  if (found.size() != answered.size()) return false;
  auto next = found.begin();
  for (AnsweredClaim& claim : data.claims)
    if (claim.answer->answered()) claim.probability = *next++;
  return true;
}

/// False when cancelled.
bool runStudies(ReportData& data, const files::Project& project, const ReportOptions& options, const task::Task& task) {
  study::StudySettings settings;
  settings.densities = project.densities;
  double done = 0;
  for (const study::StudyKind kind : kReportStudies) {
    const double share = study::isQuick(kind) ? 0.02 : 0.47;
    const task::Task part = task.part(done, done + share);
    const study::StudyOutcome outcome = options.answers ? options.answers->run(kind, data.scenario, settings, {}, part)
                                                        : study::run(kind, data.scenario, settings, {}, part);
    if (outcome.cancelled()) return false;
    data.studies.push_back({kind, outcome});
    done += share;
    task.tell(done);
  }
  return true;
}

}  // namespace

std::optional<ReportData> buildReport(const range::Scenario& scenario, const files::Project& project,
                                      const std::string& poseName, const ReportOptions& options,
                                      const task::Task& task) {
  ReportData data;
  data.scenario = scenario;
  data.name = project.table.name;
  data.poseName = poseName;
  data.claimsOnly = options.claimsOnly;
  if (task.cancelled() || !answerClaims(data, project, task)) return std::nullopt;
  if (options.claimsOnly) {
    task.tell(1);
    return data;
  }
  task.tell(0.2);
  data.plan = project.table.plan;
  data.onTracks = !project.trackway.prints.empty();
  data.stand = kinematics::readStand(scenario.specimen(), scenario.placement(), scenario.assumptions().horizontalBy);
  data.snoutHeight = kinematics::snoutHeight(scenario.specimen(), scenario.placement());
  data.lengths = anatomy::summarise(scenario.specimen());
  data.completeness = anatomy::completeness(scenario.specimen());
  data.neckLimits = neckLimits(scenario);
  task.tell(0.3);
  if (options.studies && !runStudies(data, project, options, task.part(0.3, 0.9))) return std::nullopt;
  data.balance = study::balanceOf(scenario, study::bodySegments(scenario), project.densities);
  data.massByCircumference = study::massFromCircumferences(project.table);
  if (task.cancelled()) return std::nullopt;
  task.tell(1);
  return data;
}

}  // namespace zyga::report
