#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>

#include "core/anatomy/bone_guess.h"
#include "core/files/clean_scan.h"

/// A whole mammal's column from open data (dm_control's dog, Google DeepMind, Apache-2.0): one STL a bone, all in one
/// rest pose, metres, x forward, z up, symmetric. Brought in and named.
namespace zyga::files {
namespace {

namespace fs = std::filesystem;

fs::path folder() {
  const char* given = std::getenv("ZYGAPOSE_DATA");
  return (given ? fs::path(given) : fs::path(ZYGAPOSE_SHARED_DATA)) / "dog";
}

ScanReader reader() {
  ScanReader reader;
  reader.program = ZYGAPOSE_READ_SCAN;
  return reader;
}

/// The vertebrae by bone, in the common axes.
struct Column {
  std::map<anatomy::BoneName, CleanScan> bones;

  Column() {
    std::vector<std::string> files;
    for (const auto& entry : fs::directory_iterator(folder()))
      if (entry.path().extension() == ".stl") files.push_back(entry.path().string());
    std::sort(files.begin(), files.end());
    anatomy::RegionCounts counts;
    counts.dorsal = kDorsals;
    const auto guesses = anatomy::guessBones(files, counts);
    for (std::size_t i = 0; i < files.size(); ++i)
      if (guesses[i] && anatomy::isVertebra(guesses[i]->name.kind))
        bones.emplace(guesses[i]->name, *readCleanScan(files[i], reader()));
  }

  static constexpr int kDorsals = 14;  ///< of which the seven lumbars are the last
};

class DogColumnTest : public testing::Test {
 protected:
  void SetUp() override {
    if (!fs::exists(folder())) GTEST_SKIP() << "the open bone data are not at " << folder();
  }
  static const Column& column() {
    static const Column column;
    return column;
  }
};

TEST_F(DogColumnTest, EveryVertebraIsNamedReadAndClosed) {
  EXPECT_EQ(column().bones.size(), 7u + 7 + 1 + 21);
  for (const auto& [name, scan] : column().bones) {
    EXPECT_TRUE(scan.flaws.closed()) << toId(name);
    EXPECT_EQ(scan.unitGuess.unit, anatomy::ScanUnit::Metre) << toId(name);
    EXPECT_GT(solid::volume(scan.mesh), 0) << toId(name);
  }
  EXPECT_TRUE(column().bones.contains(*anatomy::parseBoneId("D14")));
  EXPECT_TRUE(column().bones.contains(*anatomy::parseBoneId("Ca21")));
}

}  // namespace
}  // namespace zyga::files
