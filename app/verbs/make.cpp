#include <QCoreApplication>
#include <iostream>

#include "app/verbs/project_file.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
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

files::Project projectOf(const anatomy::MeasurementTable& table) {
  auto project = files::projectFromTable(table);
  for (const auto& message : anatomy::proportionWarnings(project.table)) warn(ui::say(message));
  return project;
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

int make(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  const auto reading = anatomy::readMeasurementTable(files::readWhole(arguments.file), arguments.file);
  tell(reading);
  const auto project = projectOf(reading.table);
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
           "TABLE.csv",
           QT_TRANSLATE_NOOP("words", "builds a whole animal from a measurement table, blanks inferred and marked"),
           {{"--out", "FILE.zyga", QT_TRANSLATE_NOOP("words", "the project to write")},
            {"--json", "", QT_TRANSLATE_NOOP("words", "prints the summary for machines")}},
           QT_TRANSLATE_NOOP("words",
                             "The animal stands in its neutral articulation, saved as the pose 'neutral standing'. "
                             "Every fault of the table\n"
                             "is told with line and column; warnings do not stop the work.\n")},
          make};
}

}  // namespace zyga::app
