#include "core/solid/cache/bone_cache.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include <chrono>
#include <fstream>
#include <random>
#include <thread>

#include "core/anatomy/plan/build_specimen.h"
#include "core/solid/cache/bone_bytes.h"
#include "core/solid/levelset/level_set.h"
#include "core/solid/sculpt/bone_shape.h"
#include "core/solid/sculpt/sculpt.h"
#include "tests/core/solid/mesh_library.h"

namespace zyga::solid {
namespace {

using Kind = BoneCache::Kind;
using Meshes = std::vector<std::shared_ptr<const BoneMesh>>;
using std::filesystem::path;

/// A folder of its own that goes with the test.
class Cache : public testing::Test {
 protected:
  Cache() : folder_(std::filesystem::temp_directory_path() / ("zyga-cache-" + std::to_string(::getpid()))) {
    std::filesystem::remove_all(folder_);
    std::filesystem::create_directories(folder_);
  }
  ~Cache() override { std::filesystem::remove_all(folder_); }

  /// The files there, by name.
  std::vector<std::string> names() const {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(folder_)) names.push_back(entry.path().filename());
    std::sort(names.begin(), names.end());
    return names;
  }

  Meshes sculpted() const { return sculptAll(twoBones(), {1000, folder_, {}}); }
  static const anatomy::Specimen& twoBones() {
    static const anatomy::Specimen specimen = [] {
      anatomy::MeasurementTable table;
      table.plan = anatomy::BodyPlan::HighBrowser;
      const anatomy::Specimen whole = anatomy::buildSpecimen(anatomy::fillBlanks(table));
      anatomy::Specimen few;
      for (const char* id : {"Ca3", "chevron.Ca4"}) few.bones.push_back(whole[*whole.findBone(id)]);
      return few;
    }();
    return specimen;
  }

  const path folder_;
};

bool sameBone(const BoneMesh& a, const BoneMesh& b) { return bytesOf(a) == bytesOf(b); }

/// Changes a few bytes in the middle of a file.
void scratch(const path& file) {
  std::fstream bytes(file, std::ios::in | std::ios::out | std::ios::binary);
  bytes.seekp(static_cast<std::streamoff>(std::filesystem::file_size(file) / 3));
  bytes.put('!').put('?').put('!');
}

TEST_F(Cache, GivesBackWhatWasSculpted) {
  const Meshes fresh = sculpted(), again = sculpted();
  for (std::size_t i = 0; i < fresh.size(); ++i) EXPECT_TRUE(sameBone(*fresh[i], *again[i]));
  EXPECT_TRUE(BoneCache(folder_).read(Kind::Mesh, shapeKey(twoBones(), {0}, 1000)).has_value());
  for (const std::string& name : names()) EXPECT_EQ(path(name).extension(), ".bone");
}

TEST_F(Cache, IgnoresAndReplacesDamagedFiles) {
  const Meshes fresh = sculpted();
  const BoneCache cache(folder_);
  const std::string key = shapeKey(twoBones(), {0}, 1000);
  const path file = cache.fileOf(Kind::Mesh, key);
  const auto size = std::filesystem::file_size(file);
  for (const std::uintmax_t keep : {std::uintmax_t{0}, std::uintmax_t{10}, std::uintmax_t{20}, size / 2, size - 1}) {
    std::filesystem::resize_file(file, keep);
    EXPECT_FALSE(cache.read(Kind::Mesh, key).has_value()) << keep;
    EXPECT_TRUE(sameBone(*fresh[0], *sculpted()[0]));
    EXPECT_TRUE(cache.read(Kind::Mesh, key).has_value()) << "rewritten";
  }
  scratch(file);
  EXPECT_FALSE(cache.read(Kind::Mesh, key).has_value()) << "three bytes changed";
}

TEST_F(Cache, WholeFilesWithoutSenseAreReplacedToo) {
  const Meshes fresh = sculpted();
  const BoneCache cache(folder_);
  const std::string key = shapeKey(twoBones(), {0}, 1000);
  BoneMesh wrong = *fresh[0];
  wrong.levels[0].triangles[0][1] = static_cast<std::uint32_t>(wrong.levels[0].positions.size());
  BoneMesh uneven = *fresh[0];
  uneven.levels[0].normals.pop_back();
  std::vector<char> longer = bytesOf(*fresh[0]);
  longer.push_back('x');
  for (const std::vector<char>& bytes : {bytesOf(wrong), bytesOf(uneven), longer, std::vector<char>(200, '\x7f')}) {
    cache.write(Kind::Mesh, key, bytes);
    EXPECT_TRUE(cache.read(Kind::Mesh, key).has_value());
    EXPECT_TRUE(sameBone(*fresh[0], *sculpted()[0]));
  }
}

TEST_F(Cache, WithoutAFolderOrWithABadOneNothingFails) {
  for (const char* folder : {"", "/proc/no/such/folder"})
    EXPECT_FALSE(sculptAll(twoBones(), {500, folder, {}}).empty());
}

TEST_F(Cache, ForgetsWhatWasNotUsedForLongest) {
  const std::vector<char> kilobyte(1000, 'b');
  const BoneCache cache(folder_, 3500);
  const auto now = std::filesystem::file_time_type::clock::now();
  for (int i = 0; i < 5; ++i) {
    const std::string key = "k" + std::to_string(i);
    cache.write(i % 2 ? Kind::LevelSet : Kind::Mesh, key, kilobyte);
    std::filesystem::last_write_time(cache.fileOf(i % 2 ? Kind::LevelSet : Kind::Mesh, key),
                                     now - std::chrono::hours(10 - i));
  }
  EXPECT_TRUE(cache.read(Kind::Mesh, "k0").has_value()) << "counts as used just now";
  cache.trim();
  EXPECT_THAT(names(), testing::ElementsAre("k0.bone", "k3.levelset", "k4.bone"));
}

TEST_F(Cache, TrimsItselfAfterWritingAndLeavesOtherFilesAlone) {
  std::ofstream(folder_ / "notes.txt") << std::string(5000, 'n');
  { BoneCache(folder_, 2500).write(Kind::Mesh, "old", std::vector<char>(2000, 'o')); }
  std::filesystem::last_write_time(folder_ / "old.bone",
                                   std::filesystem::file_time_type::clock::now() - std::chrono::hours(1));
  { BoneCache(folder_, 2500).write(Kind::Mesh, "new", std::vector<char>(2000, 'n')); }
  EXPECT_THAT(names(), testing::ElementsAre("new.bone", "notes.txt"));
}

TEST_F(Cache, SweepsUpWhatWritersLeftThatDied) {
  std::ofstream(folder_ / "k.bone.1-1.part") << "half";
  std::ofstream(folder_ / "k.bone.2-1.part") << "being written";
  std::filesystem::last_write_time(folder_ / "k.bone.1-1.part",
                                   std::filesystem::file_time_type::clock::now() - std::chrono::hours(3));
  BoneCache(folder_).trim();
  EXPECT_THAT(names(), testing::ElementsAre("k.bone.2-1.part"));
}

TEST_F(Cache, ManyMayReadAndWriteTheSameKeyAtOnce) {
  const std::vector<char> bytes(200000, 'm');
  {
    std::vector<std::jthread> users;
    for (int user = 0; user < 4; ++user)
      users.emplace_back([&] {
        const BoneCache cache(folder_, 150000);  // too small for even one: each trims what another reads
        for (int i = 0; i < 25; ++i) {
          cache.write(Kind::Mesh, "same", bytes);
          if (const auto found = cache.read(Kind::Mesh, "same")) {
            EXPECT_TRUE(*found == bytes);
          }
          if (i % 5 == 0) cache.trim();
        }
      });
  }
  for (const std::string& name : names()) EXPECT_EQ(path(name).extension(), ".bone");
}

TriangleMesh lump(double radius) { return sphereMesh(radius, 24); }

std::shared_ptr<const anatomy::SignedDistance> fieldOf(const TriangleMesh& mesh, const path& folder) {
  LevelSetOptions options;
  options.cacheFolder = folder;
  const Meshes meshes{std::make_shared<const BoneMesh>(BoneMesh{{mesh}})};
  return levelSets(meshes, {true}, options).at(0);
}

void expectSame(const anatomy::SignedDistance& a, const anatomy::SignedDistance& b) {
  EXPECT_EQ(a.reach(), b.reach());
  EXPECT_EQ(a.resolution(), b.resolution());
  EXPECT_EQ(a.surfacePoints(), b.surfacePoints());
  EXPECT_EQ(a.box().min(), b.box().min());
  EXPECT_EQ(a.box().max(), b.box().max());
  std::mt19937 random(5);
  std::uniform_real_distribution<float> metre(-0.4F, 0.4F);
  for (int i = 0; i < 3000; ++i) {
    const Eigen::Vector3f p(metre(random), metre(random), metre(random));
    ASSERT_EQ(a.distance(p), b.distance(p));
    ASSERT_EQ(a.estimate(p).distance, b.estimate(p).distance);
    ASSERT_EQ(a.estimate(p).min, b.estimate(p).min);
  }
}

TEST_F(Cache, GivesBackLevelSetsToTheBit) {
  const auto made = fieldOf(lump(0.2), folder_), kept = fieldOf(lump(0.2), folder_), bare = fieldOf(lump(0.2), {});
  ASSERT_THAT(names(), testing::SizeIs(1));
  expectSame(*made, *bare);
  expectSame(*kept, *bare);
}

TEST_F(Cache, LevelSetsReallyComeFromIt) {
  fieldOf(lump(0.2), folder_);
  const path first = folder_ / names().at(0);
  std::filesystem::remove(first);
  const auto other = fieldOf(lump(0.25), folder_);
  std::filesystem::rename(folder_ / names().at(0), first);  // under the key of the smaller one
  EXPECT_EQ(fieldOf(lump(0.2), folder_)->box().max(), other->box().max());
}

TEST_F(Cache, LevelSetsHaveAKeyForAllTheyAreMadeOf) {
  fieldOf(lump(0.2), folder_);
  TriangleMesh moved = lump(0.2);
  moved.positions[7] *= 1.001F;
  fieldOf(moved, folder_);
  LevelSetOptions options;
  options.cacheFolder = folder_;
  const Meshes meshes{std::make_shared<const BoneMesh>(BoneMesh{{lump(0.2)}})};
  options.voxel = 0.008;
  levelSets(meshes, {true}, options);
  options.mirrorsItself = {true};
  levelSets(meshes, {true}, options);
  EXPECT_THAT(names(), testing::SizeIs(4));
}

TEST_F(Cache, LevelSetsOfDamagedFilesAreMadeAnew) {
  const auto made = fieldOf(lump(0.2), folder_);
  const path file = folder_ / names().at(0);
  const auto size = std::filesystem::file_size(file);
  for (const std::uintmax_t keep : {std::uintmax_t{0}, std::uintmax_t{12}, size / 2, size - 1}) {
    std::filesystem::resize_file(file, keep);
    expectSame(*fieldOf(lump(0.2), folder_), *made);
    EXPECT_EQ(std::filesystem::file_size(file), size) << "rewritten";
  }
  scratch(file);
  expectSame(*fieldOf(lump(0.2), folder_), *made);
  // Whole, but of something else.
  BoneCache(folder_).write(Kind::LevelSet, file.stem(), std::vector<char>(500, '\x01'));
  expectSame(*fieldOf(lump(0.2), folder_), *made);
}

}  // namespace
}  // namespace zyga::solid
