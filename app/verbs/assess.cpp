#include <iostream>

#include "app/verbs/assess_report.h"
#include "app/verbs/assumption_options.h"
#include "app/verbs/contact_shapes.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verbs.h"

namespace zyga::app {
namespace {

int assess(const VerbSpec&, const Arguments& arguments) {
  auto project = files::readProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto chosen = choosePose(project, arguments);
  auto assessment = assessmentOf(project, chosen.pose);
  if (arguments.has("--contact")) {
    const auto placement = kinematics::place(project.specimen, articulationOf(project), chosen.pose);
    judgeContact(contactShapes(project), placement, project.assumptions, assessment);
  }
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
  for (const auto& contact : assessment.contacts) worst = std::max(worst, contact.level);
  return worst;
}

Verb assessVerb() {
  return {
      {"assess", "FILE.zyga", "judges every joint of a pose by its bones",
       withAssumptionOptions({{"--pose", "NAME", "a named pose instead of the present one"},
                              {"--contact", "", "bones that enter each other count too; sculpts them first"},
                              {"--json", "", "every joint, for machines"}}),
       "Findings are sorted worst first. Exit 1 when a joint is beyond its range, or with --contact when bones\n"
       "enter each other deeper than is tolerated. Assumptions that are given stand for this run only; those of the\n"
       "project hold for the rest.\n"},
      assess};
}

}  // namespace zyga::app
