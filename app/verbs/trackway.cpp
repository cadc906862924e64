#include <QCoreApplication>
#include <QStringList>
#include <iostream>
#include <numbers>

#include "app/verbs/text_table.h"
#include "app/verbs/verb_words.h"
#include "app/verbs/verbs.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/json/json_write.h"
#include "core/files/json/numeral.h"
#include "core/study/ground/trackway_table.h"
#include "ui/words/ground_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/table_words.h"

namespace zyga::app {
namespace {

namespace json = files::json;

using study::PrintValues;
using study::Trackway;
using Value = std::optional<double>;

/// What the table has to say, on stderr. Throws when there is a fault among it.
void tell(const study::TrackwayReading& reading) {
  QString faults;
  for (const auto& message : reading.messages) {
    if (message.severity == anatomy::TableMessage::Severity::Error) {
      faults += (faults.isEmpty() ? "" : "\n") + ui::say(message);
    } else {
      warn(ui::say(message));
    }
  }
  if (!faults.isEmpty()) throw BadInput(faults.toStdString());
}

Value inDegrees(const Value& angle) { return angle ? Value(*angle * 180 / std::numbers::pi) : Value(); }

json::Value rowJson(const study::Footprint& print, const PrintValues& values) {
  return json::object({{"foot", print.foot},
                       {"pace_angulation_deg", json::millionths(inDegrees(values.paceAngulation))},
                       {"gauge_m", json::millionths(values.gauge)},
                       {"gauge_to_length", json::millionths(values.gaugeToLength)},
                       {"hip_height_m", json::millionths(values.hipHeight)},
                       {"relative_stride", json::millionths(values.relativeStride)},
                       {"speed_m_s", json::millionths(values.speed)}});
}

json::Value summaryJson(const std::optional<study::MinMeanMax>& values, double unit = 1) {
  if (!values) return {};
  return json::object({{"least", json::millionths(values->min * unit)},
                       {"mean", json::millionths(values->mean * unit)},
                       {"most", json::millionths(values->max * unit)},
                       {"prints", values->count}});
}

void printJson(const Trackway& trackway) {
  std::vector<json::Value> rows;
  for (const auto& print : trackway.prints) {
    rows.push_back(rowJson(print, study::valuesOf(print, trackway.hipMultiplier)));
  }
  const auto summary = study::summarise(trackway);
  const auto hind = json::object({{"pace_angulation_deg", summaryJson(summary.paceAngulation, 180 / std::numbers::pi)},
                                  {"gauge_m", summaryJson(summary.gauge)},
                                  {"hip_height_m", summaryJson(summary.hipHeight)},
                                  {"relative_stride", summaryJson(summary.relativeStride)},
                                  {"speed_m_s", summaryJson(summary.speed)}});
  std::cout << json::document(json::object({{"hip_multiplier", json::millionths(trackway.hipMultiplier)},
                                            {"hip_source", said(study::hipSource(trackway.hipMultiplier))},
                                            {"speed_source", said(study::kSpeedSource)},
                                            {"caution", ui::speedCaution().toStdString()},
                                            {"rows", json::arrayOf(rows, json::Layout::OnLines)},
                                            {"hind_prints", hind}},
                                           json::Layout::OnLines));
}

std::string orUnknown(const Value& value, int decimals, double unit = 1) {
  return value ? ui::plain(*value * unit, decimals).toStdString() : said(QT_TRANSLATE_NOOP("words", "unknown"));
}

void print(const Trackway& trackway) {
  std::vector<TextRow> rows{
      {said(QT_TRANSLATE_NOOP("words", "print")), said(QT_TRANSLATE_NOOP("words", "pace angulation")),
       said(QT_TRANSLATE_NOOP("words", "gauge")), said(QT_TRANSLATE_NOOP("words", "hip height")),
       said(QT_TRANSLATE_NOOP("words", "relative stride")), said(QT_TRANSLATE_NOOP("words", "speed")), ""},
      {"", said(QT_TRANSLATE_NOOP("words", "degrees")), "m", "m", "", "m/s", "km/h"}};
  for (const auto& each : trackway.prints) {
    const auto f = study::valuesOf(each, trackway.hipMultiplier);
    rows.push_back({each.foot, orUnknown(inDegrees(f.paceAngulation), 1), orUnknown(f.gauge, 2),
                    orUnknown(f.hipHeight, 2), orUnknown(f.relativeStride, 2), orUnknown(f.speed, 2),
                    orUnknown(f.speed, 1, 3.6)});
  }
  std::cout << textTable(rows, {true, false, false, false, false, false, false})
            << said(QT_TRANSLATE_NOOP("words", "hip height = %1 x length of the hind print: %2"),
                    {files::toNumeral(trackway.hipMultiplier), ui::say(study::hipSource(trackway.hipMultiplier))})
            << "\n"
            << said(QT_TRANSLATE_NOOP("words", "speed = 0.25 g^0.5 stride^1.67 hip^-1.17: %1"),
                    {ui::say(study::kSpeedSource)})
            << "\n"
            << ui::speedCaution().toStdString() << "\n";
}

int trackway(const VerbSpec&, const Arguments& arguments) {
  auto reading = study::readTrackwayTable(files::readWhole(arguments.file), arguments.file);
  tell(reading);
  for (const auto& option : arguments.options) {
    if (option.name == "--hip-multiplier")
      reading.trackway.hipMultiplier = numberOf(option, 1, 20, QT_TRANSLATE_NOOP("words", "a multiple"));
  }
  if (arguments.has("--json")) {
    printJson(reading.trackway);
  } else {
    print(reading.trackway);
  }
  return kDone;
}

}  // namespace

Verb trackwayVerb() {
  return {{"trackway",
           "TABLE.csv",
           QT_TRANSLATE_NOOP("words", "hip height, pace angulation, gauge and speed from a table of footprints"),
           {{"--hip-multiplier", "M", QT_TRANSLATE_NOOP("words", "hip height over print length; 4 when absent")},
            {"--json", "", QT_TRANSLATE_NOOP("words", "prints the figures for machines")}},
           QT_TRANSLATE_NOOP(
               "words",
               "Columns foot,pace_cm,next_pace_cm,stride_cm,length_cm and any of width_cm, gauge_cm, ahead_cm; a blank "
               "cell is\n"
               "unknown, and so is what follows from it. foot is a name such as LP1 or 'right fore'. Published "
               "multipliers: 4\n"
               "(Alexander 1976), 4.586 (derived titanosaurs, Gonzalez Riga 2011).\n")},
          trackway};
}

}  // namespace zyga::app
