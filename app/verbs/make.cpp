#include <QCoreApplication>
#include <filesystem>
#include <iostream>

#include "app/verbs/project_file.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/plan_table.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project.h"
#include "ui/words/say.h"
#include "ui/words/table_words.h"

namespace zyga::app {
namespace {

namespace json = files::json;

/// What the table has to say, on stderr. Throws when there is a fault among it.
void tell(const anatomy::TableReading& reading) {
  QString faults;
  int count = 0;
  for (const auto& message : reading.messages) {
    if (message.severity == anatomy::TableMessage::Severity::Error) {
      faults += ui::say(message) + '\n';
      ++count;
    } else {
      warn(ui::say(message));
    }
  }
  if (count == 0) return;
  faults += count == 1
                ? ui::translated(QT_TRANSLATE_NOOP("words", "the table has one fault; nothing was written"))
                : ui::translated(QT_TRANSLATE_N_NOOP("words", "the table has %n faults; nothing was written"), count);
  throw BadInput(faults.toStdString());
}

void print(const files::Project& project, const std::string& wrote) {
  const auto cells = countCells(project.table);
  const std::string counted = said(
      QT_TRANSLATE_NOOP("words", "%1 bones, %2 preserved; %3 cells measured, %4 inferred and marked with their rule"),
      {QString::number(cells.bones), QString::number(cells.bonesFound), QString::number(cells.measured),
       QString::number(cells.inferred)});
  std::cout << project.table.name << "\n"
            << summaryText(anatomy::summarise(project.specimen())) << "  " << counted << "\n"
            << wrote;
}

void printJson(const files::Project& project, const std::string& out) {
  const auto cells = countCells(project.table);
  std::cout << json::document(json::object({{"specimen", project.table.name},
                                            {"file", out},
                                            {"summary", summaryJson(anatomy::summarise(project.specimen()))},
                                            {"bones", cells.bones},
                                            {"bones_found", cells.bonesFound},
                                            {"cells_measured", cells.measured},
                                            {"cells_inferred", cells.inferred}},
                                           json::Layout::OnLines));
}

/// A table to be filled in. Never over a file that is there: it may be somebody's measurements.
int makeBlank(const Arguments& arguments, const std::string& file) {
  if (!arguments.file.empty())
    refuse(QT_TRANSLATE_NOOP("words", "--blank writes a table of its own and reads none; leave out %1"),
           {arguments.file});
  if (arguments.has("--out"))
    refuse(QT_TRANSLATE_NOOP("words", "--blank writes a table and --out a project; give one of the two"));
  std::vector<std::pair<std::string_view, anatomy::BodyPlan>> plans;
  for (const anatomy::BodyPlan plan : anatomy::kBodyPlans) plans.emplace_back(toText(plan), plan);
  const auto plan = choiceOf(arguments, "--plan", plans);
  std::error_code unknown;
  if (std::filesystem::exists(std::filesystem::symlink_status(file, unknown)))
    refuse(QT_TRANSLATE_NOOP("words", "%1 is there already and is not written over"), {file});
  const auto counts = anatomy::planTable(plan).counts;
  files::writeWhole(file, ui::blankTableText(plan, counts));
  const auto bones = anatomy::allBones(plan, counts).size();
  if (arguments.has("--json"))
    std::cout << json::document(json::object({{"file", file}, {"bones", bones}}, json::Layout::OnLines));
  else
    std::cout << wroteLine(file);
  return kDone;
}

int make(const VerbSpec& spec, const Arguments& arguments) {
  if (const auto blank = arguments.find("--blank")) return makeBlank(arguments, *blank);
  if (arguments.has("--plan"))
    refuse(QT_TRANSLATE_NOOP("words", "--plan goes with --blank; a table names its plan in a line '# plan: ...'"));
  if (arguments.file.empty()) throw BadInput({fault::kFileMissing, {reason::text("TABLE.csv")}});
  const auto out = required(spec, arguments, "--out");
  std::error_code unknown;
  if (std::filesystem::equivalent(arguments.file, out, unknown))
    refuse(QT_TRANSLATE_NOOP("words", "--out: %1 is the table that is read; give the project a name of its own"),
           {out});
  const auto reading = anatomy::readMeasurementTable(files::readWhole(arguments.file), arguments.file);
  tell(reading);
  const auto project = files::projectFromTable(reading.table);
  const auto wrote = saveProject(project, out, arguments.has("--json"));
  if (arguments.has("--json")) {
    printJson(project, out);
  } else {
    print(project, wrote);
  }
  return kDone;
}

}  // namespace

Verb makeVerb() {
  return {{"make",
           "[TABLE.csv]",
           QT_TRANSLATE_NOOP("words", "builds a whole animal from a measurement table, blanks inferred and marked"),
           {{"--out", "FILE.zyga", QT_TRANSLATE_NOOP("words", "the project to write")},
            {"--blank", "FILE.csv",
             QT_TRANSLATE_NOOP("words", "writes a blank table with all bones instead, to be filled in")},
            {"--plan", "PLAN",
             QT_TRANSLATE_NOOP("words", "of the blank table: 'high browser' (default), 'low browser', mammal or bird")},
            {"--json", "", QT_TRANSLATE_NOOP("words", "prints the summary for machines")}},
           QT_TRANSLATE_NOOP("words",
                             "The animal stands in its neutral articulation, saved as the pose 'neutral standing'. "
                             "Every fault of the table\n"
                             "is told with line, column, bone and measure; warnings do not stop the work. Measured "
                             "cells that are hard to\n"
                             "believe are remarked on: against the bones beside them, the other side, the bone's other "
                             "measures and\n"
                             "the size of the animal.\n")},
          make};
}

}  // namespace zyga::app
