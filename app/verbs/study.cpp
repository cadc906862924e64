#include <QCoreApplication>
#include <QString>
#include <algorithm>
#include <iostream>

#include "app/verbs/assumption_options.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/contact_for.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/export/study_json.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project_measures.h"
#include "ui/plots/plot_file.h"
#include "ui/plots/study_plots.h"
#include "ui/words/assumption_words.h"
#include "ui/words/say.h"
#include "ui/words/study_words.h"

namespace zyga::app {
namespace {

namespace json = files::json;

double given(const Arguments& arguments, const char* name, double usual, double least, double most, const char* unit) {
  const auto value = arguments.find(name);
  return value ? numberOf({name, *value}, least, most, unit) : usual;
}

/// "0.25,0.5", or one number that stays put.
study::Between betweenOf(const Arguments& arguments, const char* name, const study::Between& usual, double least,
                         double most, const char* unit) {
  const auto text = arguments.find(name);
  if (!text) return usual;
  const auto comma = text->find(',');
  const double low = numberOf({name, text->substr(0, comma)}, least, most, unit);
  const double high = comma == std::string::npos ? low : numberOf({name, text->substr(comma + 1)}, least, most, unit);
  if (low > high) refuse(QT_TRANSLATE_NOOP("words", "%1: write the smaller number first, as in LOW,HIGH"), {name});
  return {low, high};
}

study::SpreadOptions spreadOptions(const Arguments& arguments) {
  study::SpreadOptions options;
  options.draws =
      static_cast<int>(given(arguments, "--draws", options.draws, 1, 100000, QT_TRANSLATE_NOOP("words", "samples")));
  options.seed = static_cast<std::uint64_t>(
      given(arguments, "--seed", 1, 0, 4294967295.0, QT_TRANSLATE_NOOP("words", "a whole number")));
  options.errors.measured = given(arguments, "--measured-percent", 100 * options.errors.measured, 0, 50,
                                  QT_TRANSLATE_NOOP("words", "percent")) /
                            100;
  options.errors.inferred = given(arguments, "--inferred-percent", 100 * options.errors.inferred, 0, 50,
                                  QT_TRANSLATE_NOOP("words", "percent")) /
                            100;
  options.overlap =
      betweenOf(arguments, "--overlap-between", options.overlap, 0, 1, QT_TRANSLATE_NOOP("words", "a share"));
  options.cartilagePercent = betweenOf(arguments, "--cartilage-between", options.cartilagePercent, 0, 100,
                                       QT_TRANSLATE_NOOP("words", "percent"));
  // Assumptions that were given for this run are meant.
  const bool own = std::any_of(arguments.options.begin(), arguments.options.end(), [](const GivenOption& option) {
    return option.name == "--overlap" || option.name == "--cartilage-percent";
  });
  options.varyAssumptions = !arguments.has("--fixed-assumptions") && !own;
  return options;
}

study::StudySettings settingsFrom(study::StudyKind kind, const Arguments& arguments) {
  study::StudySettings settings;
  settings.space = !arguments.has("--outline-only");
  if (kind == study::StudyKind::Spread) settings.spread = spreadOptions(arguments);
  settings.heart.share = given(arguments, "--heart", settings.heart.share, 0, 1, QT_TRANSLATE_NOOP("words", "a share"));
  settings.tension.share = given(arguments, "--tension", settings.tension.share, study::kLeastTension,
                                 study::kMostTension, QT_TRANSLATE_NOOP("words", "a share"));
  return settings;
}

std::string studyDocument(const files::Project& project, const range::Assumptions& assumptions, const std::string& pose,
                          const study::StudyResult& found) {
  return json::document(json::object({{"specimen", project.table.name},
                                      {"pose", pose},
                                      {"assumptions", assumptionsJson(assumptions)},
                                      {"study", files::studyJson(found, ui::toldOf(found))},
                                      {"caution", ui::bareBoneCaution().toStdString()}},
                                     json::Layout::OnLines));
}

std::string studyText(const files::Project& project, const range::Assumptions& assumptions, const std::string& pose,
                      const study::StudyResult& found) {
  std::string out = project.table.name + ": " + pose + "\n" + assumptionsText(assumptions) + "\n";
  for (const QString& sentence : ui::sentences(found)) out += "  " + sentence.toStdString() + "\n";
  out += "\n";
  for (const QString& sentence : ui::cautions(found)) out += "  " + sentence.toStdString() + "\n";
  return out;
}

void savePlot(const std::string& file, const study::StudyResult& found) {
  const auto paint = [&found](QPainter& painter, const QRectF& area) {
    ui::paintStudy(painter, area, found, ui::printInk());
  };
  const QByteArray bytes =
      ui::plotBytes(QString::fromStdString(endingOf(file)), ui::figureSize(study::kindOf(found)), paint);
  if (bytes.isEmpty()) refuse(QT_TRANSLATE_NOOP("words", "--plot: %1 could not be drawn"), {file});
  files::writeWhole(file, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

/// Told before the study begins to work.
void checkPlaces(const std::optional<std::string>& out, const std::optional<std::string>& plot) {
  if (out && endingOf(*out) != "json") refuse(QT_TRANSLATE_NOOP("words", "--out: %1 must end in .json"), {*out});
  if (out) files::checkPlace(*out);
  if (plot && !ui::plotEndings().contains(QString::fromStdString(endingOf(*plot))))
    refuse(QT_TRANSLATE_NOOP("words", "--plot: %1 must end in .svg, .pdf or .png"), {*plot});
  if (plot) files::checkPlace(*plot);
}

int studyVerbRun(const VerbSpec& spec, const Arguments& arguments) {
  required(spec, arguments, "--kind");
  using study::StudyKind;
  const auto kind = choiceOf<StudyKind>(arguments, "--kind",
                                        {{"elevation", StudyKind::Elevation},
                                         {"envelope", StudyKind::Envelope},
                                         {"range", StudyKind::Range},
                                         {"spread", StudyKind::Spread},
                                         {"pressure", StudyKind::Pressure},
                                         {"stress", StudyKind::Stress}});
  const auto out = arguments.find("--out"), plot = arguments.find("--plot");
  checkPlaces(out, plot);
  auto project = openProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const range::Assumptions& assumptions = project.assumptions;
  const auto chosen = choosePose(project, arguments);
  study::StudySettings settings = settingsFrom(kind, arguments);
  settings.densities = project.densities;
  const study::StudyOutcome outcome = study::run(kind, scenarioOf(project, chosen.pose, contactFor(project, arguments)),
                                                 settings, files::measuresOf(project));
  if (!outcome.result) throw BadInput(ui::say(outcome.failure).toStdString());
  const study::StudyResult& found = *outcome.result;
  const std::string json = studyDocument(project, assumptions, chosen.name, found);
  if (out) files::writeWhole(*out, json);
  if (plot) savePlot(*plot, found);
  if (arguments.has("--json")) {
    std::cout << json;
    return kDone;
  }
  std::cout << studyText(project, assumptions, chosen.name, found);
  for (const auto& file : {out, plot}) {
    if (file) std::cout << wroteLine(*file);
  }
  return kDone;
}

}  // namespace

Verb studyVerb() {
  return {
      {"study", "FILE.zyga",
       QT_TRANSLATE_NOOP("words", "tells what follows from a pose: heights, reach, ranges, their uncertainty"),
       withAssumptionOptions(withContactOptions(
           {{"--kind", "WORD", QT_TRANSLATE_NOOP("words", "elevation, envelope, range, spread, pressure or stress")},
            {"--pose", "NAME", QT_TRANSLATE_NOOP("words", "a named pose instead of the present one")},
            {"--out", "FILE.json", QT_TRANSLATE_NOOP("words", "the numbers as a file")},
            {"--plot", "FILE.svg|pdf|png", QT_TRANSLATE_NOOP("words", "the figure")},
            {"--json", "", QT_TRANSLATE_NOOP("words", "the numbers on standard output")},
            {"--outline-only", "",
             QT_TRANSLATE_NOOP("words", "envelope: the side outline without the space sideways, which takes longest")},
            {"--seed", "N",
             QT_TRANSLATE_NOOP("words", "spread: of the samples; the same seed gives the same numbers; else 1")},
            {"--draws", "N", QT_TRANSLATE_NOOP("words", "spread: how many samples; else 400")},
            {"--measured-percent", "P",
             QT_TRANSLATE_NOOP("words", "spread: standard error of measured lengths; else 2")},
            {"--inferred-percent", "P", QT_TRANSLATE_NOOP("words", "spread: of inferred ones; else 10")},
            {"--overlap-between", "LOW,HIGH",
             QT_TRANSLATE_NOOP("words", "spread: minimum zygapophyseal overlap, a share; else 0.25,0.5")},
            {"--cartilage-between", "LOW,HIGH", QT_TRANSLATE_NOOP("words", "spread: cartilage, %; else 0,4.56")},
            {"--fixed-assumptions", "",
             QT_TRANSLATE_NOOP("words", "spread: the project's assumptions in every sample")},
            {"--heart", "SHARE",
             QT_TRANSLATE_NOOP("words",
                               "pressure: height of the heart in the chest, 0 ribs' ends, 1 column; else 0.333")},
            {"--tension", "SHARE",
             QT_TRANSLATE_NOOP("words",
                               "stress: where the tension runs, a share of the neural spine's height; else 1")}})),
       QT_TRANSLATE_NOOP("words",
                         "elevation: head height and neck slope in neutral, at the ends of the range and now.\n"
                         "envelope: feeding envelope, what the snout reaches inside the ranges: side outline, space, "
                         "strip on the ground.\n"
                         "range: where each joint of the column ends. spread: uncertainty (Monte Carlo), how far the "
                         "answer moves with\n"
                         "measurement error and assumptions, 5, 50 and 95\u00A0%. pressure: the column of blood from "
                         "heart to head and\n"
                         "what the heart has to give, an assumption-laden figure. stress: how hard each joint of the "
                         "neck is pressed,\n"
                         "posture by posture, and how even that is, with what speaks against the method. Heights are "
                         "over the ground; the\n"
                         "trunk stays as it stands. Bones that collide end ranges too.\n"),
       false, "--plot"},
      studyVerbRun};
}

}  // namespace zyga::app
