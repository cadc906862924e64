#include <iostream>

#include "app/verbs/assumption_options.h"
#include "app/verbs/project_file.h"
#include "app/verbs/sculpting.h"
#include "app/verbs/verbs.h"
#include "core/files/disk/atomic_file.h"
#include "ui/report/report_pages.h"
#include "ui/report/report_picture.h"

namespace zyga::app {
namespace {

constexpr int kPictureWidth = 1800;  ///< pixels

std::string endingOf(const std::string& file) {
  const auto dot = file.rfind('.');
  return dot == std::string::npos ? "" : file.substr(dot + 1);
}

/// Told before any work is done.
void checkPlaces(const std::string& out, const std::optional<std::string>& numbers) {
  if (const auto ending = endingOf(out); ending != "pdf" && ending != "html")
    throw BadInput("--out: " + out + " must end in .pdf or .html");
  files::checkPlace(out);
  if (!numbers) return;
  if (const auto ending = endingOf(*numbers); ending != "csv" && ending != "json")
    throw BadInput("--numbers: " + *numbers + " must end in .csv or .json");
  files::checkPlace(*numbers);
}

int reportVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  const auto numbers = arguments.find("--numbers");
  checkPlaces(out, numbers);
  auto project = files::readProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto chosen = choosePose(project, arguments);
  report::ReportOptions options;
  options.claimsOnly = arguments.has("--claims-only");
  options.studies = !arguments.has("--no-studies");
  const range::Scenario scenario = scenarioOf(project, chosen.pose);
  const auto data = report::buildReport(scenario, project, chosen.index ? chosen.name : std::string(), options);
  QImage picture;
  if (!options.claimsOnly) picture = ui::posePicture(scenario, sculpt(project), kPictureWidth);
  files::writeWhole(out, ui::reportBytes(QString::fromStdString(endingOf(out)), *data, picture));
  std::cout << "wrote " << out << "\n";
  if (numbers) {
    files::writeWhole(*numbers, ui::numbersBytes(QString::fromStdString(endingOf(*numbers)), *data));
    std::cout << "wrote " << *numbers << "\n";
  }
  return kDone;
}

}  // namespace

Verb reportVerb() {
  return {{"report", "FILE.zyga", "writes what the bones support as a report that others can check",
           withAssumptionOptions({{"--out", "FILE.pdf|html", "the report"},
                                  {"--numbers", "FILE.csv|json", "its numbers as a table"},
                                  {"--pose", "NAME", "a named pose instead of the present one"},
                                  {"--claims-only", "", "one page: the project's claims and what they rest on"},
                                  {"--no-studies", "", "without heights, reach, ranges and pressure"}}),
           "Pose with a traced picture, findings, claims, specimen, evidence and sources, assumptions, limits of the\n"
           "neck, studies, mass and balance, angles, cautions. There is no clock in it: the same project gives the "
           "same\n"
           "bytes.\n",
           false, "--out"},
          reportVerbRun};
}

}  // namespace zyga::app
