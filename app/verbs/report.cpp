#include <QCoreApplication>
#include <iostream>

#include "app/verbs/assumption_options.h"
#include "app/verbs/contact_for.h"
#include "app/verbs/project_file.h"
#include "app/verbs/sculpting.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/disk/atomic_file.h"
#include "ui/report/report_pages.h"
#include "ui/report/report_picture.h"

namespace zyga::app {
namespace {

constexpr int kPictureWidth = 1800;  ///< pixels

/// Told before any work is done.
void checkReportPlaces(const std::string& out, const std::optional<std::string>& numbers) {
  if (const auto ending = endingOf(out); ending != "pdf" && ending != "html")
    refuse(QT_TRANSLATE_NOOP("words", "--out: %1 must end in .pdf or .html"), {out});
  files::checkPlace(out);
  if (!numbers) return;
  if (const auto ending = endingOf(*numbers); ending != "csv" && ending != "json")
    refuse(QT_TRANSLATE_NOOP("words", "--numbers: %1 must end in .csv or .json"), {*numbers});
  files::checkPlace(*numbers);
}

int reportVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  const auto numbers = arguments.find("--numbers");
  checkReportPlaces(out, numbers);
  auto project = openProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto chosen = choosePose(project, arguments);
  report::ReportOptions options;
  options.claimsOnly = arguments.has("--claims-only");
  options.studies = !arguments.has("--no-studies");
  const auto meshes = options.claimsOnly && arguments.has("--no-contact") ? files::BoneMeshes() : sculpt(project);
  const range::Scenario scenario = scenarioOf(project, chosen.pose, contactFor(project, arguments, meshes));
  const auto data = report::buildReport(scenario, project, chosen.index ? chosen.name : std::string(), options);
  QImage picture;
  if (!options.claimsOnly) picture = ui::posePicture(scenario, meshes, kPictureWidth);
  files::writeWhole(out, ui::reportBytes(QString::fromStdString(endingOf(out)), *data, picture));
  std::cout << wroteLine(out);
  if (numbers) {
    files::writeWhole(*numbers, ui::numbersBytes(QString::fromStdString(endingOf(*numbers)), *data));
    std::cout << wroteLine(*numbers);
  }
  return kDone;
}

}  // namespace

Verb reportVerb() {
  return {
      {"report", "FILE.zyga",
       QT_TRANSLATE_NOOP("words", "writes a report on the pose and the project's claims that others can check"),
       withAssumptionOptions(withContactOptions(
           {{"--out", "FILE.pdf|html", QT_TRANSLATE_NOOP("words", "the report")},
            {"--numbers", "FILE.csv|json", QT_TRANSLATE_NOOP("words", "its numbers as a table")},
            {"--pose", "NAME", QT_TRANSLATE_NOOP("words", "a named pose instead of the present one")},
            {"--claims-only", "", QT_TRANSLATE_NOOP("words", "one page: the project's claims and what they rest on")},
            {"--no-studies", "", QT_TRANSLATE_NOOP("words", "without heights, reach, ranges and pressure")}})),
       QT_TRANSLATE_NOOP(
           "words",
           "Pose with a traced picture, findings, claims, specimen, evidence and sources, assumptions, limits of the\n"
           "neck, studies, mass and balance, angles, cautions. There is no clock in it: the same project gives the "
           "same\n"
           "bytes.\n"),
       false, "--out"},
      reportVerbRun};
}

}  // namespace zyga::app
