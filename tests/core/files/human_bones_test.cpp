#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>

#include "core/files/scan/clean_scan.h"
#include "core/solid/mesh/triangle_mesh.h"
#include "ui/words/scan_words.h"

/// Human vertebrae and limb bones of open data (MyoHub myo_sim, Apache-2.0): coarse and flawed, with open borders,
/// edges of more than two triangles and a bone that is inside out.
namespace zyga::files {
namespace {

namespace fs = std::filesystem;

fs::path folder() {
  const char* given = std::getenv("ZYGAPOSE_DATA");
  return (given ? fs::path(given) : fs::path(ZYGAPOSE_SHARED_DATA)) / "human";
}

TEST(HumanBones, EveryOneComesOutFacingOutwardsWithItsFlawsTold) {
  if (!fs::exists(folder())) GTEST_SKIP() << "the open bone data are not at " << folder();
  ScanReader reader;
  reader.program = ZYGAPOSE_READ_SCAN;
  int vertebrae = 0, flawed = 0;
  for (const auto& entry : fs::directory_iterator(folder())) {
    if (entry.path().extension() != ".stl") continue;
    const std::string name = entry.path().filename().string();
    const auto scan = readCleanScan(entry.path(), reader);
    ASSERT_TRUE(scan) << name;
    EXPECT_GT(solid::massProperties(scan->mesh).volume, 0) << name;
    if (!scan->flaws.closed()) {
      EXPECT_FALSE(ui::flawsSaid(scan->flaws, 1).isEmpty()) << name;
    }
    flawed += !scan->flaws.closed();
    const bool vertebra = name.starts_with("lumbar") || name.starts_with("thoracic");
    vertebrae += vertebra;
    // Greatest extents of human vertebrae lie between 4 and 12 cm (common practice, no source).
    const double extent = scan->extent * anatomy::metresOf(anatomy::guessUnit(scan->extent, 0.08).unit);
    if (vertebra) {
      EXPECT_GT(extent, 0.04) << name;
      EXPECT_LT(extent, 0.12) << name;
    }
    std::vector<int> uses(scan->mesh.positions.size(), 0);
    for (const auto& t : scan->mesh.triangles)
      for (const auto v : t) ++uses[v];
    EXPECT_EQ(std::count(uses.begin(), uses.end(), 0), 0) << name << ": vertices nobody uses";
  }
  EXPECT_EQ(vertebrae, 17);
  EXPECT_GT(flawed, 0) << "the data are known to be flawed";
}

}  // namespace
}  // namespace zyga::files
