#include <iostream>
#include <numbers>

#include "app/verbs/summary_text.h"
#include "app/verbs/text_table.h"
#include "app/verbs/verbs.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "core/study/ground/trackway_table.h"

namespace zyga::app {
namespace {

using files::jsonString;
using files::member;
using study::PrintFigures;
using study::Trackway;
using Figure = std::optional<double>;

/// What the table has to say, on stderr. Throws when there is a fault among it.
void tell(const study::TrackwayReading& reading) {
  std::string faults;
  for (const auto& message : reading.messages) {
    if (message.severity == anatomy::TableMessage::Severity::Error) {
      faults += (faults.empty() ? "" : "\n") + message.text();
    } else {
      std::cerr << "warning: " << message.text() << "\n";
    }
  }
  if (!faults.empty()) throw BadInput(faults);
}

Figure inDegrees(const Figure& angle) { return angle ? Figure(*angle * 180 / std::numbers::pi) : Figure(); }

std::string orNull(const Figure& value) { return value ? millionths(*value) : "null"; }

std::string rowJson(const study::Footprint& print, const PrintFigures& figures) {
  return files::onOneLine(
      {member("foot", jsonString(print.foot)), member("pace_angulation_deg", orNull(inDegrees(figures.paceAngulation))),
       member("gauge_m", orNull(figures.gauge)), member("gauge_to_length", orNull(figures.gaugeToLength)),
       member("hip_height_m", orNull(figures.hipHeight)), member("relative_stride", orNull(figures.relativeStride)),
       member("speed_m_s", orNull(figures.speed))});
}

std::string spreadJson(const std::optional<study::Spread>& spread, double unit = 1) {
  if (!spread) return "null";
  return files::onOneLine(
      {member("least", millionths(spread->least * unit)), member("mean", millionths(spread->mean * unit)),
       member("most", millionths(spread->most * unit)), member("prints", std::to_string(spread->count))});
}

void printJson(const Trackway& trackway) {
  std::vector<std::string> rows;
  for (const auto& print : trackway.prints) {
    rows.push_back(rowJson(print, study::figuresOf(print, trackway.hipMultiplier)));
  }
  const auto summary = study::summarise(trackway);
  const auto hind = files::onOneLine(
      {member("pace_angulation_deg", spreadJson(summary.paceAngulation, 180 / std::numbers::pi)),
       member("gauge_m", spreadJson(summary.gauge)), member("hip_height_m", spreadJson(summary.hipHeight)),
       member("relative_stride", spreadJson(summary.relativeStride)), member("speed_m_s", spreadJson(summary.speed))});
  std::cout << files::onLines({member("hip_multiplier", millionths(trackway.hipMultiplier)),
                               member("hip_source", jsonString(study::hipSource(trackway.hipMultiplier))),
                               member("speed_source", jsonString("Alexander 1976, Nature 261:129")),
                               member("caution", jsonString(study::kSpeedCaution)),
                               member("rows", files::onLines(rows, "  ", '[', ']')), member("hind_prints", hind)},
                              "", '{', '}')
            << "\n";
}

std::string orUnknown(const Figure& value, int decimals, double unit = 1) {
  return value ? fixed(*value * unit, decimals) : "unknown";
}

void print(const Trackway& trackway) {
  std::vector<TextRow> rows{{"print", "pace angulation", "gauge", "hip height", "relative stride", "speed"},
                            {"", "degrees", "m", "m", "", "m/s", "km/h"}};
  rows[0].push_back("");
  for (const auto& each : trackway.prints) {
    const auto f = study::figuresOf(each, trackway.hipMultiplier);
    rows.push_back({each.foot, orUnknown(inDegrees(f.paceAngulation), 1), orUnknown(f.gauge, 2),
                    orUnknown(f.hipHeight, 2), orUnknown(f.relativeStride, 2), orUnknown(f.speed, 2),
                    orUnknown(f.speed, 1, 3.6)});
  }
  std::cout << textTable(rows, {true, false, false, false, false, false, false})
            << "hip height = " << millionths(trackway.hipMultiplier)
            << " x length of the hind print: " << study::hipSource(trackway.hipMultiplier) << "\n"
            << "speed = 0.25 g^0.5 stride^1.67 hip^-1.17: Alexander 1976, Nature 261:129\n"
            << study::kSpeedCaution << "\n";
}

int trackway(const VerbSpec&, const Arguments& arguments) {
  auto reading = study::readTrackwayTable(files::readWhole(arguments.file), arguments.file);
  tell(reading);
  for (const auto& option : arguments.options) {
    if (option.name == "--hip-multiplier") reading.trackway.hipMultiplier = numberOf(option, 1, 20, "a multiple");
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
  return {
      {"trackway",
       "TABLE.csv",
       "hip height, pace angulation, gauge and speed from a table of footprints",
       {{"--hip-multiplier", "M", "hip height over print length; 4 when absent"},
        {"--json", "", "prints the figures for machines"}},
       "Columns foot,pace_cm,next_pace_cm,stride_cm,length_cm and any of width_cm, gauge_cm, ahead_cm; a blank cell "
       "is\n"
       "unknown, and so is what follows from it. foot is a name such as LP1 or 'right fore'. Published multipliers: 4\n"
       "(Alexander 1976), 4.586 (derived titanosaurs, Gonzalez Riga 2011), 5.9 (Thulborn, recalled).\n"},
      trackway};
}

}  // namespace zyga::app
