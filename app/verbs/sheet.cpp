#include "ui/sheets/sheet.h"

#include <unistd.h>

#include <QCoreApplication>
#include <iostream>

#include "app/verbs/bone_list.h"
#include "app/verbs/contact_for.h"
#include "app/verbs/project_file.h"
#include "app/verbs/sculpting.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/anatomy/bone_parts.h"
#include "core/files/disk/atomic_file.h"
#include "ui/sheets/page_file.h"

namespace zyga::app {
namespace {

constexpr double kUsualSheetWidth = 5000;  // pixels
constexpr double kPrintResolution = 300;   // dots per inch

template <class Value, std::size_t n>
Value wordOr(const Arguments& arguments, std::string_view name,
             const std::array<std::pair<std::string_view, Value>, n>& words, Value usual) {
  if (!arguments.has(name)) return usual;
  return choiceOf<Value>(arguments, name, {words.begin(), words.end()});
}

bool flagOr(const Arguments& arguments, std::string_view name, bool usual) {
  if (!arguments.has(name)) return usual;
  return choiceOf<bool>(arguments, name, {{"on", true}, {"off", false}});
}

/// "50" or "1:50"
double scaleOf(const std::string& word) {
  const std::string number = word.starts_with("1:") ? word.substr(2) : word;
  return numberOf({"--scale", number}, files::kLeastScale, files::kMostScale, QT_TRANSLATE_NOOP("words", "N of 1:N"));
}

/// The project's own sheet with what was asked for.
files::Sheet sheetFrom(const Arguments& arguments, files::Sheet sheet) {
  sheet.layout = wordOr(arguments, "--layout", files::kSheetLayouts, sheet.layout);
  sheet.paper = wordOr(arguments, "--paper", files::kSheetPapers, sheet.paper);
  sheet.bones = wordOr(arguments, "--bones", files::kSheetBones, sheet.bones);
  if (const auto scale = arguments.find("--scale")) sheet.scale = scaleOf(*scale);
  if (const auto person = arguments.find("--person-m"))
    sheet.person =
        *person == "none" ? 0 : numberOf({"--person-m", *person}, files::kLeastPerson, files::kMostPerson, "m");
  if (const auto plate = arguments.find("--plate")) {
    sheet.layout = files::SheetLayout::Plate;
    sheet.plate = *plate;
  }
  sheet.jointMarks = flagOr(arguments, "--joint-marks", sheet.jointMarks);
  sheet.evidenceTones = flagOr(arguments, "--evidence-tones", sheet.evidenceTones);
  sheet.spans = flagOr(arguments, "--spans", sheet.spans);
  sheet.ground = flagOr(arguments, "--ground", sheet.ground);
  sheet.notes = flagOr(arguments, "--notes", sheet.notes);
  if (arguments.has("--transparent")) sheet.transparent = true;
  if (const auto title = arguments.find("--title")) sheet.title = *title;
  return sheet;
}

std::string pageEndingOf(const std::string& out) {
  for (const QString& ending : ui::pageEndings())
    if (out.ends_with("." + ending.toStdString())) return ending.toStdString();
  refuse(QT_TRANSLATE_NOOP("words", "--out: %1 must end in .pdf, .svg or .png"), {out});
}

/// A plate needs no other bones than its own.
ui::SheetScene sceneOf(const files::Project& project, const ChosenPose& chosen, const files::Sheet& sheet,
                       const Arguments& arguments) {
  if (sheet.layout == files::SheetLayout::Plate) {
    const std::vector<bool> only = bonesListed(arguments, "--plate", project.specimen());
    const files::BoneMeshes meshes =
        sculpt(project, only.empty() ? anatomy::bonesInList(project.specimen(), sheet.plate).listed : only);
    return {scenarioOf(project, chosen.pose, nullptr), meshes, {}, {}, project.guide, {}};
  }
  const files::BoneMeshes meshes = sculpt(project);
  return {scenarioOf(project, chosen.pose, contactFor(project, arguments, meshes)),
          meshes,
          chosen.index ? chosen.name : std::string(),
          project.notes,
          project.guide,
          {}};
}

ui::SheetWork workFor(const files::Sheet& sheet, const std::string& ending, int width) {
  ui::SheetWork work;
  // A picture's own pixels, so that nothing is drawn twice as fine or half as fine as it is shown.
  work.dotsPerInch = ending == "png" ? width / ui::sizeOf(sheet.paper).width() * 25.4 : kPrintResolution;
  if (work.dotsPerInch > 500) work.samples = 4;
  work.task = taskAtTerminal(QT_TRANSLATE_NOOP("words", "drawing"));
  return work;
}

int sheetVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  const auto out = required(spec, arguments, "--out");
  const std::string ending = pageEndingOf(out);
  files::checkPlace(out);
  const auto widthGiven = arguments.find("--width");
  if (widthGiven && ending != "png") refuse(QT_TRANSLATE_NOOP("words", "--width: only a .png has pixels"));
  const int width = static_cast<int>(
      widthGiven ? numberOf({"--width", *widthGiven}, 200, ui::kWidestPng, QT_TRANSLATE_NOOP("words", "pixels"))
                 : kUsualSheetWidth);
  const auto project = openProject(arguments.file);
  const files::Sheet sheet = sheetFrom(arguments, project.sheet);
  const auto page = ui::drawSheet(sceneOf(project, choosePose(project, arguments), sheet, arguments), sheet,
                                  workFor(sheet, ending, width));
  const QByteArray bytes = ui::pageBytes(*page, QString::fromStdString(ending), width);
  files::writeWhole(out, {bytes.data(), static_cast<std::size_t>(bytes.size())});
  std::cout << wroteLine(out);
  return kDone;
}

}  // namespace

Verb sheetVerb() {
  return {
      {"sheet", "FILE.zyga", QT_TRANSLATE_NOOP("words", "draws a page to scale, the same bytes every time"),
       withContactOptions(
           {{"--layout", "LAYOUT", QT_TRANSLATE_NOOP("words", "side, three-views, evidence, neck or plate")},
            {"--plate", "LIST",
             QT_TRANSLATE_NOOP("words",
                               "a plate of these bones in five views: C5, manus.L, pelvis,sacrum and the like")},
            {"--out", "FILE.pdf|svg|png", QT_TRANSLATE_NOOP("words", "the page to write")},
            {"--pose", "NAME", QT_TRANSLATE_NOOP("words", "a named pose instead of the present one")},
            {"--paper", "SIZE", QT_TRANSLATE_NOOP("words", "a4, a3, a2 or a1, in landscape format")},
            {"--scale", "N", QT_TRANSLATE_NOOP("words", "1:N instead of the largest round scale that fits")},
            {"--bones", "LOOK",
             QT_TRANSLATE_NOOP("words",
                               "shaded, outline, silhouette or in-body (white before the body guide's dark shape)")},
            {"--person-m", "HEIGHT", QT_TRANSLATE_NOOP("words", "of the human figure, m, or none")},
            {"--joint-marks", "on|off", QT_TRANSLATE_NOOP("words", "the verdict's shape on every joint")},
            {"--evidence-tones", "on|off", QT_TRANSLATE_NOOP("words", "bones toned by their evidence")},
            {"--spans", "on|off", QT_TRANSLATE_NOOP("words", "measured heights and lengths")},
            {"--ground", "on|off", QT_TRANSLATE_NOOP("words", "the ground as a line")},
            {"--notes", "on|off", QT_TRANSLATE_NOOP("words", "numbered call-outs with their legend")},
            {"--transparent", "", QT_TRANSLATE_NOOP("words", "no paper behind the drawing")},
            {"--title", "TEXT", QT_TRANSLATE_NOOP("words", "instead of the specimen's name")},
            {"--width", "PX", QT_TRANSLATE_NOOP("words", "of a .png, 5000 unless said otherwise, up to 16000")}}),
       QT_TRANSLATE_NOOP(
           "words",
           "What is not said is as the project's own sheet has it. In an SVG every outlined bone is a group with the\n"
           "bone's id, its edges editable paths, and the unit is the millimetre.\n"
           "Not an engineering document; local codes and licensed practice decide.\n"),
       false, "--out"},
      sheetVerbRun};
}

}  // namespace zyga::app
