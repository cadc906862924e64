#include <cstddef>
#include <cstdint>
#include <string_view>

#include "core/files/project/project.h"
#include "tests/fuzz/require.h"

using namespace zyga;

/// Any text ends in a FileError or in a project that survives writing and reading.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  files::Project project;
  try {
    project = files::parseProject(text, "fuzz.zyga");
  } catch (const files::FileError&) {
    return 0;
  }
  const auto written = files::writeProjectText(project);
  fuzz::require(files::writeProjectText(files::parseProject(written, "again.zyga")) == written,
                "a project survives writing and reading");
  return 0;
}
