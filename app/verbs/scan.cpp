#include <QCoreApplication>
#include <filesystem>
#include <iostream>

#include "app/verbs/scan_options.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/marks/scan_guess.h"
#include "core/anatomy/marks/scan_measures.h"
#include "core/anatomy/tables/landmark_table.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/project/project.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/say.h"
#include "ui/words/scan_words.h"
#include "ui/words/table_words.h"

namespace zyga::app {
namespace {

QString inQt(const std::string& text) { return QString::fromStdString(text); }

/// Which bone every file is: what --bone says, in order; what is not said is guessed from the names of all.
std::vector<anatomy::BoneName> bonesOf(const Arguments& arguments, const anatomy::RegionCounts& counts) {
  std::vector<std::string> given;
  for (const auto& option : arguments.options)
    if (option.name == "--bone") given.push_back(option.value);
  if (given.size() > arguments.files.size())
    refuse(QT_TRANSLATE_NOOP("words", "--bone: there are more bones than files"));
  const auto guesses = anatomy::guessBones(arguments.files, counts);
  std::vector<anatomy::BoneName> bones;
  std::string faults;
  for (std::size_t i = 0; i < arguments.files.size(); ++i) {
    const auto name = i < given.size() ? anatomy::parseBoneId(given[i])
                      : guesses[i]     ? std::optional(guesses[i]->name)
                                       : std::nullopt;
    if (name && anatomy::parseBoneId(toId(*name))) {  // a guess may lack its number
      bones.push_back(*name);
    } else if (i < given.size()) {
      faults += said(QT_TRANSLATE_NOOP("words", "--bone: there is no bone '%1'"), {given[i]}) + '\n';
    } else {
      faults += said(QT_TRANSLATE_NOOP("words", "%1: its name does not tell which bone it is; give --bone ID"),
                     {arguments.files[i]}) +
                '\n';
    }
  }
  if (!faults.empty()) throw BadInput(faults.substr(0, faults.size() - 1));
  return bones;
}

anatomy::LandmarkTable landmarksOf(const Arguments& arguments) {
  const auto file = arguments.find("--landmarks");
  if (!file) return {};
  const auto reading = anatomy::readLandmarkTable(files::readWhole(*file), *file);
  if (!reading.usable()) throw BadInput(ui::say(reading.messages).toStdString());
  return reading.table;
}

anatomy::ScanUnit unitFor(const Arguments& arguments, const files::CleanScan& scan) {
  using anatomy::ScanUnit;
  if (!arguments.has("--unit")) return scan.unitGuess.unit;
  return choiceOf<ScanUnit>(arguments, "--unit",
                            {{"mm", ScanUnit::Millimetre}, {"cm", ScanUnit::Centimetre}, {"m", ScanUnit::Metre}});
}

files::ProjectScan bringIn(const Arguments& arguments, const std::string& file, const anatomy::Bone& bone,
                           const anatomy::LandmarkTable& landmarks) {
  const auto clean = readCleanScan(file, anatomy::extentOf(bone));
  auto scan = files::projectScan(clean, bone, unitFor(arguments, clean), file);
  if (const auto marked = landmarks.points.find(bone.name); marked != landmarks.points.end())
    for (const auto& [name, p] : marked->second) anatomy::setLandmark(scan.scan, bone, name, p);
  const bool sure = arguments.has("--unit") || clean.unitGuess.sure;
  const char* unit = sure ? QT_TRANSLATE_NOOP("words", "taken to be in %1")
                          : QT_TRANSLATE_NOOP("words", "taken to be in %1, which is not sure");
  const QStringList parts{
      ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "%1 is %2")), {inQt(file), inQt(bone.id)}),
      ui::translated(QT_TRANSLATE_N_NOOP("words", "%n triangles"), static_cast<int>(clean.mesh.triangles.size())),
      ui::filled(ui::translated(unit), {QString::fromUtf8(toText(scan.scan.unit).data())}),
      ui::translated(scan.scan.placed ? QT_TRANSLATE_NOOP("words", "placed by its landmarks")
                                      : QT_TRANSLATE_NOOP("words", "placed by a guess"))};
  std::cout << ui::inOneLine(parts).toStdString() << "\n";
  for (const QString& repair : ui::repairsSaid(clean)) std::cout << "  " << repair.toStdString() << "\n";
  for (const QString& flaw : ui::flawsSaid(clean.flaws, anatomy::metresOf(scan.scan.unit)))
    std::cout << "  " << flaw.toStdString() << "\n";
  return scan;
}

/// A second scan of a bone takes the first one's place.
void put(files::Project& project, files::ProjectScan scan) {
  std::erase_if(project.scans, [&](const auto& old) { return old.scan.bone == scan.scan.bone; });
  project.scans.push_back(std::move(scan));
}

/// "  C7 measures length 412.3 mm, facet tilt 31.0°", and into the table with it.
void enterMeasures(files::Project& project, const anatomy::Scan& scan) {
  const auto measures = anatomy::measuresOf(scan);
  QStringList parts;
  for (const auto& [measure, value] : measures)
    parts << ui::filled(ui::translated(QT_TRANSLATE_NOOP("words", "%1 %2")),
                        {ui::measureName(measure), ui::measureValue(measure, value)});
  const char* form = measures.empty() ? QT_TRANSLATE_NOOP("words", "%1 is not marked enough to be measured")
                                      : QT_TRANSLATE_NOOP("words", "%1 measures %2");
  std::cout << "  " << said(form, {toId(scan.bone), ui::inOneLine(parts)}) << "\n";
  project.table = fillAnew(withMeasures(std::move(project.table), scan, measures));
}

void tellWhatIsLacking(const files::Project& project) {
  const auto records = files::recordsOf(project.scans);
  for (std::size_t j = 0; j < project.specimen().joints.size(); ++j)
    for (const auto& reason : anatomy::missingInputs(project.specimen(), {j}, records))
      std::cout << "  " << project.specimen().joints[j].id << ": " << ui::say(reason).toStdString() << "\n";
}

int scanVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto into = required(spec, arguments, "--into"), out = required(spec, arguments, "--out");
  const auto landmarks = landmarksOf(arguments);
  auto project = files::readProject(into);
  for (const auto& scan : project.scans)
    if (!scan.trouble.empty()) warn(ui::say(scan.trouble));
  const auto sculpted = files::specimenOf(project.table, {});
  const auto bones = bonesOf(arguments, project.specimen().counts);
  for (std::size_t i = 0; i < bones.size(); ++i) {
    const auto index = sculpted.findBone(toId(bones[i]));
    if (!index) refuse(QT_TRANSLATE_NOOP("words", "%1: the animal has no %2"), {arguments.files[i], toId(bones[i])});
    put(project, bringIn(arguments, arguments.files[i], sculpted[*index], landmarks));
    if (arguments.has("--measures")) enterMeasures(project, project.scans.back().scan);
  }
  try {
    project.setSpecimen(files::specimenOf(project.table, project.scans));
  } catch (const reason::Failure& failure) {
    throw BadInput(ui::say(failure.reason()).toStdString());
  }
  tellWhatIsLacking(project);
  files::saveProject(project, out);
  std::cout << wroteLine(out);
  return kDone;
}

}  // namespace

Verb scanVerb() {
  return {
      {"scan",
       "FILE...",
       QT_TRANSLATE_NOOP("words", "puts bone scans in the place of sculpted bones"),
       {{"--bone", "ID",
         QT_TRANSLATE_NOOP("words", "which bone the file is, once a file in order; guessed from its name unless said")},
        {"--unit", "mm|cm|m", QT_TRANSLATE_NOOP("words", "the files' unit; guessed from size unless said")},
        {"--landmarks", "FILE.csv",
         QT_TRANSLATE_NOOP("words", "bone,landmark,x (mm),y (mm),z (mm) in the axes of the scans")},
        {"--measures", "",
         QT_TRANSLATE_NOOP("words", "what the landmarks measure goes into the table: bones around the scans follow")},
        {"--into", "FILE.zyga", QT_TRANSLATE_NOOP("words", "the project that gets them")},
        {"--out", "FILE2.zyga",
         QT_TRANSLATE_NOOP("words", "the project to write; cleaned meshes are kept beside it in the folder scans")}},
       QT_TRANSLATE_NOOP(
           "words",
           "Every file is read by a process of its own with limits on time and memory. Nothing is written unless all\n"
           "of them can be used.\n"),
       true},
      scanVerbRun};
}

}  // namespace zyga::app
