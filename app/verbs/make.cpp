#include <iostream>

#include "app/verbs/summary_text.h"
#include "app/verbs/verbs.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "core/files/project/project.h"

namespace zyga::app {
namespace {

using files::member;

/// What the table has to say, on stderr. Throws when there is a fault among it.
void tell(const anatomy::TableReading& reading) {
  std::string faults;
  std::size_t count = 0;
  for (const auto& message : reading.messages) {
    if (message.severity == anatomy::TableMessage::Severity::Error) {
      faults += message.text() + "\n";
      ++count;
    } else {
      std::cerr << "warning: " << message.text() << "\n";
    }
  }
  if (count == 0) return;
  throw BadInput(faults + "the table has " + std::to_string(count) + (count == 1 ? " fault" : " faults") +
                 "; nothing was written");
}

files::Project projectOf(const anatomy::MeasurementTable& table) {
  auto project = files::projectFromTable(table);
  for (const auto& message : anatomy::proportionWarnings(project.table)) {
    std::cerr << "warning: " << message.text() << "\n";
  }
  return project;
}

void print(const files::Project& project, const std::string& out) {
  const auto cells = countCells(project.table);
  std::cout << project.table.name << "\n"
            << summaryText(anatomy::summarise(project.specimen)) << "  " << cells.bones << " bones, "
            << cells.bonesFound << " found; " << cells.measured << " cells measured, " << cells.inferred
            << " inferred and marked with their rule\n"
            << "wrote " << out << "\n";
}

void printJson(const files::Project& project, const std::string& out) {
  const auto cells = countCells(project.table);
  std::cout << files::onLines(
                   {member("specimen", files::jsonString(project.table.name)), member("file", files::jsonString(out)),
                    member("summary", summaryJson(anatomy::summarise(project.specimen))),
                    member("bones", std::to_string(cells.bones)),
                    member("bones_found", std::to_string(cells.bonesFound)),
                    member("cells_measured", std::to_string(cells.measured)),
                    member("cells_inferred", std::to_string(cells.inferred))},
                   "", '{', '}')
            << "\n";
}

int make(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  const auto reading = anatomy::readMeasurementTable(files::readWhole(arguments.file), arguments.file);
  tell(reading);
  const auto project = projectOf(reading.table);
  files::saveProject(project, out);
  if (arguments.has("--json")) {
    printJson(project, out);
  } else {
    print(project, out);
  }
  return kDone;
}

}  // namespace

Verb makeVerb() {
  return {
      {"make",
       "TABLE.csv",
       "builds a whole animal from a measurement table, blanks inferred and marked",
       {{"--out", "FILE.zyga", "the project to write"}, {"--json", "", "prints the summary for machines"}},
       "The animal stands in its neutral articulation, saved as the pose 'neutral standing'. Every fault of the table\n"
       "is told with line and column; warnings do not stop the work.\n"},
      make};
}

}  // namespace zyga::app
