#pragma once

#include <gtest/gtest.h>

#include <fstream>
#include <numbers>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"

namespace zyga::test {

/// The table of one of the two animals in samples/, as it is measured: sampleTable("high_browser").
inline anatomy::MeasurementTable sampleTable(const std::string& name) {
  const std::string file = name + ".csv";
  std::stringstream text;
  text << std::ifstream(std::string(ZYGAPOSE_SOURCE_DIR) + "/samples/" + file).rdbuf();
  const anatomy::TableReading reading = anatomy::readMeasurementTable(text.str(), file);
  for (const anatomy::TableMessage& m : reading.messages) ADD_FAILURE() << debugText(m);
  return reading.table;
}

/// That of the high browser, whose C7-C8 asks for the turn which an independent implementation gave it.
inline anatomy::MeasurementTable tableOfTheOtherImplementation() {
  anatomy::MeasurementTable table = sampleTable("high_browser");
  anatomy::TableRow* c8 = table.find(*anatomy::parseBoneId("C8"));
  c8->measures[anatomy::Measure::FacetTurn] = {1.5 * std::numbers::pi / 180, anatomy::CellOrigin::Measured, {}};
  return table;
}

/// The animal, its blanks filled.
inline anatomy::Specimen sampleAnimal(const std::string& name) {
  return anatomy::buildSpecimen(anatomy::fillBlanks(sampleTable(name)));
}

}  // namespace zyga::test
