#include <iostream>

#include "app/verbs/assess_report.h"
#include "app/verbs/assumption_options.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verbs.h"

namespace zyga::app {
namespace {

int assess(const VerbSpec&, const Arguments& arguments) {
  auto project = files::readProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto chosen = choosePose(project, arguments);
  const auto assessment = assessmentOf(project, chosen.pose);
  const Report report{project, chosen.name, chosen.pose, assessment};
  std::cout << (arguments.has("--json") ? reportJson(report) : reportText(report));
  return overallLevel(assessment) == range::Level::Beyond ? kBeyond : kDone;
}

}  // namespace

range::Level overallLevel(const range::Assessment& assessment) {
  auto worst = range::Level::Supported;
  for (const auto& joint : assessment.joints) {
    if (joint.level != range::Level::NotJudged) worst = std::max(worst, joint.level);
  }
  return worst;
}

Verb assessVerb() {
  return {
      {"assess", "FILE.zyga", "judges every joint of a pose by its bones",
       withAssumptionOptions({{"--pose", "NAME", "a named pose instead of the present one"},
                              {"--json", "", "every joint, for machines"}}),
       "Findings are sorted worst first. Exit 1 when a joint is beyond its range. Assumptions that are given stand\n"
       "for this run only; those of the project hold for the rest.\n"},
      assess};
}

}  // namespace zyga::app
