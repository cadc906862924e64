#include <QString>
#include <algorithm>
#include <iostream>

#include "app/verbs/assumption_options.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verbs.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/export/study_json.h"
#include "core/files/json/json_write.h"
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
  if (low > high) throw BadInput(std::string(name) + ": write the smaller number first, as in LOW,HIGH");
  return {low, high};
}

study::SpreadOptions spreadOptions(const Arguments& arguments) {
  study::SpreadOptions options;
  options.draws = static_cast<int>(given(arguments, "--draws", options.draws, 1, 100000, "draws"));
  options.seed = static_cast<std::uint64_t>(given(arguments, "--seed", 1, 0, 4294967295.0, "a whole number"));
  options.errors.measured =
      given(arguments, "--measured-percent", 100 * options.errors.measured, 0, 50, "percent") / 100;
  options.errors.inferred =
      given(arguments, "--inferred-percent", 100 * options.errors.inferred, 0, 50, "percent") / 100;
  options.overlap = betweenOf(arguments, "--overlap-between", options.overlap, 0, 1, "a share");
  options.cartilagePercent = betweenOf(arguments, "--cartilage-between", options.cartilagePercent, 0, 100, "percent");
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
  settings.heart.share = given(arguments, "--heart", settings.heart.share, 0, 1, "a share");
  return settings;
}

study::Measures measuresOf(const files::Project& project) {
  return {std::make_shared<const anatomy::MeasurementTable>(project.table),
          [scans = project.scans](const anatomy::MeasurementTable& table) { return files::specimenOf(table, scans); }};
}

std::string document(const files::Project& project, const range::Assumptions& assumptions, const std::string& pose,
                     const study::StudyResult& found) {
  return json::document(json::object({{"specimen", project.table.name},
                                      {"pose", pose},
                                      {"assumptions", assumptionsJson(assumptions)},
                                      {"study", files::studyJson(found, ui::toldOf(found))},
                                      {"caution", ui::bareBoneCaution().toStdString()}},
                                     json::Layout::OnLines));
}

std::string text(const files::Project& project, const range::Assumptions& assumptions, const std::string& pose,
                 const study::StudyResult& found) {
  std::string out = project.table.name + ": " + pose + "\n" + assumptionsText(assumptions) + "\n";
  for (const QString& sentence : ui::sentences(found)) out += "  " + sentence.toStdString() + "\n";
  out += "\n";
  for (const QString& sentence : ui::cautions(found)) out += "  " + sentence.toStdString() + "\n";
  return out;
}

std::string endingOf(const std::string& file) {
  const auto dot = file.rfind('.');
  return dot == std::string::npos ? "" : file.substr(dot + 1);
}

void savePlot(const std::string& file, const study::StudyResult& found) {
  const auto paint = [&found](QPainter& painter, const QRectF& area) {
    ui::paintStudy(painter, area, found, ui::printInk());
  };
  const QByteArray bytes =
      ui::plotBytes(QString::fromStdString(endingOf(file)), ui::figureSize(study::kindOf(found)), paint);
  if (bytes.isEmpty()) throw BadInput("--plot: " + file + " could not be drawn");
  files::writeWhole(file, std::string_view(bytes.constData(), static_cast<std::size_t>(bytes.size())));
}

/// Told before the study begins to work.
void checkPlaces(const std::optional<std::string>& out, const std::optional<std::string>& plot) {
  if (out && endingOf(*out) != "json") throw BadInput("--out: " + *out + " must end in .json");
  if (out) files::checkPlace(*out);
  if (plot && !ui::plotEndings().contains(QString::fromStdString(endingOf(*plot)))) {
    throw BadInput("--plot: " + *plot + " must end in .svg, .pdf or .png");
  }
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
                                         {"pressure", StudyKind::Pressure}});
  const auto out = arguments.find("--out"), plot = arguments.find("--plot");
  checkPlaces(out, plot);
  auto project = files::readProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const range::Assumptions& assumptions = project.assumptions;
  const auto chosen = choosePose(project, arguments);
  const study::StudyOutcome outcome =
      study::run(kind, scenarioOf(project, chosen.pose), settingsFrom(kind, arguments), measuresOf(project));
  if (!outcome.result) throw BadInput(ui::say(outcome.failure).toStdString());
  const study::StudyResult& found = *outcome.result;
  const std::string json = document(project, assumptions, chosen.name, found);
  if (out) files::writeWhole(*out, json);
  if (plot) savePlot(*plot, found);
  if (arguments.has("--json")) {
    std::cout << json;
    return kDone;
  }
  std::cout << text(project, assumptions, chosen.name, found);
  for (const auto& file : {out, plot}) {
    if (file) std::cout << "wrote " << *file << "\n";
  }
  return kDone;
}

}  // namespace

Verb studyVerb() {
  return {
      {"study", "FILE.zyga", "tells what follows from a pose: heights, reach, ranges, their uncertainty",
       withAssumptionOptions(
           {{"--kind", "WORD", "elevation, envelope, range, spread or pressure"},
            {"--pose", "NAME", "a named pose instead of the present one"},
            {"--out", "FILE.json", "the numbers as a file"},
            {"--plot", "FILE.svg|pdf|png", "the figure"},
            {"--json", "", "the numbers on standard output"},
            {"--outline-only", "", "envelope: the side outline without the space sideways, which takes longest"},
            {"--seed", "N", "spread: of the draws; the same seed gives the same numbers; else 1"},
            {"--draws", "N", "spread: how many; else 400"},
            {"--measured-percent", "P", "spread: standard error of measured lengths; else 2"},
            {"--inferred-percent", "P", "spread: of inferred ones; else 10"},
            {"--overlap-between", "LOW,HIGH", "spread: least overlap, a share; else 0.25,0.5"},
            {"--cartilage-between", "LOW,HIGH", "spread: cartilage, %; else 0,4.56"},
            {"--fixed-assumptions", "", "spread: the project's assumptions in every draw"},
            {"--heart", "SHARE", "pressure: height of the heart in the chest, 0 ribs' ends, 1 column; else 0.333"}}),
       "elevation: head height and neck slope in neutral, at the ends of the range and now.\n"
       "envelope: what the snout reaches inside the ranges: side outline, space, strip on the ground.\n"
       "range: where each joint of the column ends. spread: how far the answer moves with measurement error and\n"
       "assumptions, 5, 50 and 95 %. pressure: the column of blood from heart to head, an assumption-laden figure.\n"
       "Heights are over the ground; the trunk stays as it stands. Contact between bones is not looked at.\n",
       false, "--plot"},
      studyVerbRun};
}

}  // namespace zyga::app
