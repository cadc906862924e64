#include <cstddef>
#include <cstdint>
#include <string_view>

#include "core/files/disk/container.h"
#include "core/files/project/project.h"

using namespace zyga;

/// Any bytes taken for a project in one file end in a FileError or in a project whose scans are read or told of.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  try {
    const files::Container container({reinterpret_cast<const char*>(data), size}, "fuzz.zygazip");
    files::readProject(container, "/nowhere/fuzz.zygazip");
  } catch (const files::FileError&) {
  }
  return 0;
}
