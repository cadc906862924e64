#include <cstddef>
#include <cstdint>
#include <string_view>

#include "core/study/ground/trackway_table.h"
#include "tests/fuzz/require.h"

using namespace zyga;

/// Any text ends in messages or in footprints; what was read is written so that it reads the same.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const auto reading = study::readTrackwayTable(text, "fuzz.csv");
  if (!reading.usable()) return 0;
  const auto written = study::writeTrackwayTable(reading.trackway);
  const auto again = study::readTrackwayTable(written, "again.csv");
  fuzz::require(again.usable(), "a written trackway reads without fault");
  fuzz::require(study::writeTrackwayTable(again.trackway) == written, "a trackway survives writing and reading");
  return 0;
}
