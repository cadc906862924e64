#include <cstddef>
#include <cstdint>
#include <string_view>

#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/tables/measurement_table.h"
#include "tests/fuzz/require.h"

using namespace zyga;

/// Any text ends in messages or in an animal; what was read is written so that it reads the same.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const auto reading = anatomy::readMeasurementTable(text, "fuzz.csv");
  if (!reading.usable()) return 0;
  const auto written = anatomy::writeMeasurementTable(reading.table);
  const auto again = anatomy::readMeasurementTable(written, "again.csv");
  fuzz::require(again.usable(), "a written table reads without fault");
  fuzz::require(anatomy::writeMeasurementTable(again.table) == written, "a table survives writing and reading");
  const auto specimen = anatomy::buildSpecimen(anatomy::fillBlanks(reading.table));
  fuzz::require(!specimen.bones.empty(), "a usable table gives an animal");
  return 0;
}
