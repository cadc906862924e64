#include <cstddef>
#include <cstdint>
#include <string_view>

#include "core/anatomy/tables/facet_table.h"
#include "tests/fuzz/require.h"

using namespace zyga;

/// Any text ends in messages or in facets; what was read is written so that it reads the same.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const auto reading = anatomy::readFacetTable(text, "fuzz.csv");
  if (!reading.usable()) return 0;
  const auto written = anatomy::writeFacetTable(reading.table);
  const auto again = anatomy::readFacetTable(written, "again.csv");
  fuzz::require(again.usable(), "a written facet table reads without fault");
  fuzz::require(anatomy::writeFacetTable(again.table) == written, "facets survive writing and reading");
  return 0;
}
