// fill_bone_cache FOLDER TABLE...: sculpts the bones of tables into a cache, where the tests that run after it find
// them.
#include <cstdio>
#include <fstream>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/solid/sculpt/sculpt.h"

int main(int argc, char** argv) {
  if (argc < 3) return 2;
  for (int i = 2; i < argc; ++i) {
    std::ostringstream text;
    text << std::ifstream(argv[i]).rdbuf();
    const auto reading = zyga::anatomy::readMeasurementTable(text.str(), argv[i]);
    if (!reading.messages.empty()) return 1;
    zyga::solid::SculptOptions options;
    options.cacheFolder = argv[1];
    const auto meshes =
        zyga::solid::sculptAll(zyga::anatomy::buildSpecimen(zyga::anatomy::fillBlanks(reading.table)), options);
    std::printf("%s: %zu bones\n", argv[i], meshes.size());
    if (meshes.empty()) return 1;
  }
  return 0;
}
