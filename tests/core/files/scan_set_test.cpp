#include "core/files/scan/scan_set.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <fstream>

#include "core/files/scan/scan_faults.h"
#include "core/files/scan/scan_wire.h"
#include "tests/support/sample_animal.h"

/// Files of bones that belong together: folders, files of many bones, one unit for all.
namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;

/// A closed box as OBJ, its corners numbered behind `before` others.
std::string box(double x, const Eigen::Vector3d& size, int before = 0, const std::string& name = {}) {
  std::ostringstream out;
  if (!name.empty()) out << "o " << name << "\n";
  for (int i = 0; i < 8; ++i)
    out << "v " << x + ((i ^ (i >> 1)) & 1) * size.x() << " " << ((i >> 1) & 1) * size.y() << " "
        << ((i >> 2) & 1) * size.z() << "\n";
  for (const auto& f : {std::array{1, 4, 3, 2}, {5, 6, 7, 8}, {1, 2, 6, 5}, {3, 4, 8, 7}, {1, 5, 8, 4}, {2, 3, 7, 6}})
    out << "f " << f[0] + before << " " << f[1] + before << " " << f[2] + before << " " << f[3] + before << "\n";
  return out.str();
}

class ScanSetTest : public testing::Test {
 protected:
  ScanSetTest() { reader_.program = ZYGAPOSE_READ_SCAN; }

  fs::path path(const std::string& name = {}) const { return fs::path(folder_.path().toStdString()) / name; }
  fs::path write(const std::string& name, const std::string& bytes) const {
    std::ofstream(path(name), std::ios::binary) << bytes;
    return path(name);
  }
  ScanSet read(const ScanSetWish& wish) const { return *readScanSet(wish, animal(), reader_); }
  static const anatomy::Specimen& animal() {
    static const anatomy::Specimen animal = test::sampleAnimal("high_browser");
    return animal;
  }
  static std::vector<std::string> ids(const ScanSet& set) {
    std::vector<std::string> out;
    for (const ScanOfSet& bone : set.bones) out.push_back(toId(bone.bone.name));
    return out;
  }

  ScanReader reader_;
  QTemporaryDir folder_;
};

/// About the size of the bones of the sample's neck with their ribs, mm.
const Eigen::Vector3d kBone(700, 150, 200);

TEST_F(ScanSetTest, AFolderStandsForItsMeshes) {
  write("C5.obj", box(0, kBone));
  write("C6.OBJ", box(500, kBone));
  write("C7 broken.stl", "solid nothing");
  write("mystery.obj", box(0, kBone));
  write("pelvis.obj", box(0, kBone));
  write("cervical_5.obj", box(0, kBone));
  write("C99.obj", box(0, kBone));
  write("notes.txt", "not a mesh");
  fs::create_directory(path("C8.obj"));
  const ScanSet set = read({{path()}, {}, {}});
  EXPECT_THAT(ids(set), ElementsAre("C5", "C6"));
  EXPECT_EQ(set.unit.unit, anatomy::ScanUnit::Millimetre);
  EXPECT_TRUE(set.unit.sure);
  EXPECT_EQ(set.bones.front().unitBy, UnitBy::Size);
  std::map<std::string, reason::Reason> left;
  for (const LeftOutOfSet& each : set.leftOut) {
    left[each.file.filename().string()] = each.why;
    EXPECT_FALSE(each.asked);
  }
  EXPECT_EQ(left.size(), 5u);
  EXPECT_EQ(left["C7 broken.stl"].id, fault::kCannotRead);
  EXPECT_EQ(left["mystery.obj"].id, fault::kNameTellsNoBone);
  EXPECT_EQ(left["pelvis.obj"].id, fault::kNameNotSure);
  EXPECT_EQ(left["cervical_5.obj"].id, fault::kBoneInOtherFile);
  EXPECT_EQ(left["C99.obj"], reason::Reason(fault::kAnimalHasNone, {reason::text("C99")}));
}

TEST_F(ScanSetTest, AFolderWithoutMeshesAndAPathThatIsNotThereAreFaults) {
  write("notes.txt", "");
  EXPECT_THROW(read({{path()}, {}, {}}), FileError);
  const ScanSet set = read({{path("nowhere.stl")}, {}, {}});
  ASSERT_EQ(set.leftOut.size(), 1u);
  EXPECT_TRUE(set.leftOut.front().asked);
}

TEST_F(ScanSetTest, AFileOfManyBonesGivesThemInItsFrame) {
  const auto file = write("neck.obj", box(0, kBone, 0, "C5") + box(500, kBone, 8, "C6.001") +
                                          box(1000, kBone, 16, "pedestal") + box(1500, kBone, 24, "C6"));
  const ScanSet set = read({{file}, {}, {}});
  ASSERT_THAT(ids(set), ElementsAre("C5", "C6"));
  EXPECT_EQ(set.bones[0].clean.part, "C5");
  EXPECT_EQ(set.bones[0].clean.mesh.triangles.size(), 12u);
  EXPECT_EQ(set.bones[0].clean.mesh.positions.size(), 8u);
  EXPECT_TRUE(set.bones[0].clean.flaws.closed());
  EXPECT_EQ(set.bones[1].clean.mesh.triangles.size(), 24u) << "two parts of one bone";
  for (const auto& p : set.bones[1].clean.mesh.positions) EXPECT_GE(p.x(), 500) << "where the file has it";
  ASSERT_EQ(set.leftOut.size(), 1u);
  EXPECT_EQ(set.leftOut.front().part, "pedestal");
  EXPECT_FALSE(set.leftOut.front().asked) << "the file itself is of use";

  // Somebody says that it is one bone; or only one part is named as a bone.
  const ScanSet one = read({{file}, {{anatomy::BoneKind::Cervical, 7}}, {}});
  ASSERT_THAT(ids(one), ElementsAre("C7"));
  EXPECT_EQ(one.bones[0].clean.mesh.triangles.size(), 48u);
  EXPECT_EQ(one.bones[0].clean.part, "");
  const auto whole = write("C8.obj", box(0, kBone, 0, "C5") + box(500, kBone, 8, "chip"));
  const ScanSet named = read({{whole}, {}, {}});
  ASSERT_THAT(ids(named), ElementsAre("C8"));
  EXPECT_EQ(named.bones[0].clean.mesh.triangles.size(), 24u);
}

TEST_F(ScanSetTest, OneUnitForAllWithHowLargeTheyAreInIt) {
  // The third is so small that by itself it would be taken for centimetres.
  write("C5.obj", box(0, kBone));
  write("C6.obj", box(0, kBone));
  write("C7.obj", box(0, kBone / 12));
  const ScanSet set = read({{path()}, {}, {}});
  for (const ScanOfSet& bone : set.bones) EXPECT_EQ(bone.unit, anatomy::ScanUnit::Millimetre);
  EXPECT_EQ(set.unit.bones, 3u);
  EXPECT_GT(set.unit.factor, 0.3);
  EXPECT_LT(set.unit.factor, 3);
  EXPECT_FALSE(anatomy::isTenfold(set.unit.factor));

  const ScanSet said = read({{path()}, {}, anatomy::ScanUnit::Centimetre});
  for (const ScanOfSet& bone : said.bones) {
    EXPECT_EQ(bone.unit, anatomy::ScanUnit::Centimetre);
    EXPECT_EQ(bone.unitBy, UnitBy::Person);
  }
  EXPECT_NEAR(said.unit.factor, 10 * set.unit.factor, 1e-9);
  EXPECT_TRUE(anatomy::isTenfold(said.unit.factor));
}

TEST_F(ScanSetTest, PartsOnTheWireAreCheckedLikeAnyOtherFile) {
  RawScan raw;
  raw.mesh.positions = {{0, 0, 0}, {1, 0, 0}, {0, 1, 0}};
  raw.mesh.triangles = {{0, 1, 2}, {0, 2, 1}};
  raw.parts = {{"C5\nnot a line", 1}, {"", 1}};
  writeWire(raw, path("wire"));
  const RawScan back = readWire(path("wire"));
  ASSERT_EQ(back.parts.size(), 2u);
  EXPECT_EQ(back.parts[0].name, "C5 not a line");
  EXPECT_EQ(back.parts[1].triangles, 1u);
  raw.parts[1].triangles = 7;
  writeWire(raw, path("wire"));
  EXPECT_THROW(readWire(path("wire")), FileError) << "more triangles than there are";
  raw.parts = {{"C5", 1}};
  writeWire(raw, path("wire"));
  EXPECT_THROW(readWire(path("wire")), FileError) << "a triangle that is nobody's";
  raw.parts = {{"C5", 2}};
  writeWire(raw, path("wire"));
  fs::resize_file(path("wire"), fs::file_size(path("wire")) - 1);
  EXPECT_THROW(readWire(path("wire")), FileError);
}

}  // namespace
}  // namespace zyga::files
