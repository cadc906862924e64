#include "core/report/sections.h"
#include "core/report/words.h"

namespace zyga::report {
namespace {

std::string keyOf(study::NeckCarriage which) {
  std::string key(toText(which));
  for (char& c : key) c = c == ' ' ? '_' : c;
  return key;
}

}  // namespace

Section elevationSection(const study::Elevation& elevation, Numbers& numbers) {
  Section section;
  section.heading = "Head height and slope of the neck";
  section.sentences = sentences(elevation);
  section.figure = Figure::Elevation;
  for (const auto& one : elevation.cases) {
    numbers.push_back({"elevation." + keyOf(one.which) + ".snout_height", one.carriage.snoutHeight, "m"});
    numbers.push_back({"elevation." + keyOf(one.which) + ".neck_slope", one.slope * 180 / M_PI, "deg"});
  }
  return section;
}

Section envelopeSection(const study::Envelope& envelope, Numbers& numbers) {
  Section section;
  section.heading = "Reach of the snout";
  section.sentences = sentences(envelope);
  section.figure = Figure::Envelope;
  section.figureCaption =
      "Side view to scale: what the snout reaches with every joint of neck and head inside its range.";
  numbers.push_back({"reach.highest", envelope.highest.y(), "m"});
  numbers.push_back({"reach.area", envelope.area, "m2"});
  return section;
}

Section rangesSection(const study::RangeChart& ranges) {
  Section section;
  section.heading = "Ranges of the column";
  section.sentences = sentences(ranges);
  section.figure = Figure::RangeChart;
  return section;
}

Section pressureSection(const study::Pressure& pressure, Numbers& numbers) {
  Section section;
  section.heading = "Blood pressure between heart and head";
  section.sentences = sentences(pressure);
  section.figure = Figure::Pressure;
  for (const auto& row : pressure.rows) numbers.push_back({"pressure." + keyOf(row.which), row.pressure, "mmHg"});
  for (const auto view : study::kPressureViews) section.cautions.emplace_back(view);
  section.cautions.emplace_back(study::kPressureCaution);
  return section;
}

}  // namespace zyga::report
