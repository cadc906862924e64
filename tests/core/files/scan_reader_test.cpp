#include "core/files/scan/scan_reader.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <QTemporaryDir>
#include <algorithm>
#include <cstring>
#include <fstream>
#include <limits>
#include <random>
#include <sstream>
#include <thread>

#include "core/files/json/json.h"
#include "core/files/scan/clean_scan.h"
#include "core/files/scan/sanitizer_shadow.h"
#include "core/files/scan/scan_allowance.h"
#include "core/files/scan/scan_faults.h"
#include "core/files/scan/scan_process.h"
#include "core/files/scan/scan_wire.h"
#include "core/solid/mesh/surface_distance.h"
#include "tests/core/files/example_skeleton.h"
#include "tests/core/solid/mesh_library.h"
#include "ui/words/say.h"
#include "ui/words/scan_words.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;

class ScanReaderTest : public testing::Test {
 protected:
  ScanReaderTest() {
    reader_.program = ZYGAPOSE_READ_SCAN;
    reader_.limits.seconds = 10;
  }

  fs::path path(const std::string& name) const { return fs::path(folder_.path().toStdString()) / name; }
  fs::path write(const std::string& name, const std::string& bytes) const {
    std::ofstream(path(name), std::ios::binary) << bytes;
    return path(name);
  }
  /// The whole message of the failure; empty when the file could be read.
  std::string failure(const fs::path& file) const {
    try {
      readScan(file, reader_);
      return "";
    } catch (const FileError& error) {
      return ui::sayFailure(error).toStdString();
    }
  }

  ScanReader reader_;

 private:
  QTemporaryDir folder_;
};

std::string bytesOf(const fs::path& file) {
  std::ostringstream out;
  out << std::ifstream(file, std::ios::binary).rdbuf();
  return out.str();
}

template <class T>
void append(std::string& bytes, const T& value) {
  bytes.append(reinterpret_cast<const char*>(&value), sizeof(value));
}

solid::TriangleMesh box() { return example::boxMesh({1, 2, 3}, 6); }

std::string stl(const solid::TriangleMesh& mesh) {
  std::string bytes(80, ' ');
  append(bytes, static_cast<std::uint32_t>(mesh.triangles.size()));
  for (const auto& t : mesh.triangles) {
    append(bytes, Eigen::Vector3f(0, 0, 1));
    for (const auto v : t) append(bytes, mesh.positions[v]);
    append(bytes, std::uint16_t{0});
  }
  return bytes;
}

std::string ply(const solid::TriangleMesh& mesh) {
  std::string bytes = "ply\nformat binary_little_endian 1.0\nelement vertex " + std::to_string(mesh.positions.size()) +
                      "\nproperty float x\nproperty float y\nproperty float z\nelement face " +
                      std::to_string(mesh.triangles.size()) + "\nproperty list uchar int vertex_indices\nend_header\n";
  for (const auto& p : mesh.positions) append(bytes, p);
  for (const auto& t : mesh.triangles) {
    bytes += '\3';
    append(bytes, t);
  }
  return bytes;
}

std::string obj(const solid::TriangleMesh& mesh) {
  std::ostringstream text;
  for (const auto& p : mesh.positions) text << "v " << p.transpose() << "\n";
  for (const auto& t : mesh.triangles) text << "f " << t[0] + 1 << " " << t[1] + 1 << " " << t[2] + 1 << "\n";
  return text.str();
}

std::string off(const solid::TriangleMesh& mesh) {
  std::ostringstream text;
  text << "OFF\n" << mesh.positions.size() << " " << mesh.triangles.size() << " 0\n";
  for (const auto& p : mesh.positions) text << p.transpose() << "\n";
  for (const auto& t : mesh.triangles) text << "3 " << t[0] << " " << t[1] << " " << t[2] << "\n";
  return text.str();
}

/// A binary glTF of its text and one buffer.
std::string glb(std::string json, std::string buffer) {
  json.resize((json.size() + 3) / 4 * 4, ' ');
  buffer.resize((buffer.size() + 3) / 4 * 4, '\0');
  std::string bytes = "glTF";
  append(bytes, std::uint32_t{2});
  append(bytes, static_cast<std::uint32_t>(28 + json.size() + buffer.size()));
  append(bytes, static_cast<std::uint32_t>(json.size()));
  bytes += "JSON" + json;
  append(bytes, static_cast<std::uint32_t>(buffer.size()));
  return bytes + std::string("BIN\0", 4) + buffer;
}

/// A glTF text with one triangle strip of the required extension.
std::string gltfRequiring(const std::string& extension) {
  return R"({"asset": {"version": "2.0"}, "extensionsRequired": [")" + extension + R"("], "extensionsUsed": [")" +
         extension + R"("]})";
}

TEST_F(ScanReaderTest, EveryFormatBringsTheSameBox) {
  const std::vector<std::pair<std::string, std::string>> files{
      {"a.stl", stl(box())}, {"a.ply", ply(box())}, {"a.obj", obj(box())}, {"a.off", off(box())}};
  for (const auto& [name, bytes] : files) {
    const auto raw = readScan(write(name, bytes), reader_);
    ASSERT_TRUE(raw) << name;
    const auto repaired = solid::repair(raw->mesh);
    EXPECT_EQ(repaired.mesh.triangles.size(), box().triangles.size()) << name;
    EXPECT_EQ(repaired.mesh.positions.size(), box().positions.size()) << name;
    EXPECT_TRUE(repaired.flaws.closed()) << name;
    EXPECT_NEAR(solid::volume(repaired.mesh), 48, 1e-4) << name;
  }
}

TEST_F(ScanReaderTest, ExportsOfOursComeBackWithTheirUnitAndAxes) {
  const example::Skeleton beast;
  ExportOptions options;
  options.joined = true;
  exportMeshes(beast.specimen, beast.X_WB, beast.meshes, path("a.glb"), options);
  exportMeshes(beast.specimen, beast.X_WB, beast.meshes, path("a.stl"), options);
  const auto glb = readScan(path("a.glb"), reader_), stl = readScan(path("a.stl"), reader_);
  ASSERT_TRUE(glb && stl);
  EXPECT_EQ(glb->unit, 1.0);  // glTF 2.0 specification, 3.4: metres, +Y up
  EXPECT_TRUE(glb->yUp);
  EXPECT_FALSE(stl->unit);
  EXPECT_NEAR(solid::volume(glb->mesh), solid::volume(stl->mesh), 1e-6);
}

TEST_F(ScanReaderTest, ProgressComesFromTheOtherProcess) {
  std::vector<double> told;
  reader_.task = task::Task(nullptr, [&](double share) { told.push_back(share); });
  ASSERT_TRUE(readScan(write("a.stl", stl(example::boxMesh({1, 2, 3}, 60))), reader_));
  ASSERT_FALSE(told.empty());
  EXPECT_TRUE(std::all_of(told.begin(), told.end(), [](double share) { return share >= 0 && share <= 1; }));
}

TEST_F(ScanReaderTest, CancelledReadingIsEmptyAndLeavesNothing) {
  const std::atomic<bool> cancel{true};
  reader_.task = task::Task(&cancel);
  EXPECT_FALSE(readScan(write("a.stl", stl(box())), reader_));
}

TEST_F(ScanReaderTest, MessagesNameFileAndCause) {
  EXPECT_THAT(failure(path("none.stl")), AllOf(HasSubstr("none.stl"), HasSubstr("No such file")));
  EXPECT_THAT(failure(path("")), HasSubstr("is a folder"));
  EXPECT_THAT(failure("/dev/zero"), HasSubstr("not a plain file"));
  EXPECT_THAT(failure(write("empty.stl", "")), HasSubstr("it is empty"));
  EXPECT_THAT(failure(write("a.xyzzy", "what is this")), AllOf(HasSubstr("a.xyzzy"), HasSubstr("no mesh format")));
  EXPECT_THAT(failure(write("points.obj", "v 0 0 0\nv 1 0 0\nv 0 1 0\n")), HasSubstr("points.obj"));
}

TEST_F(ScanReaderTest, AFileOfFiftyGigabytesIsRefusedUnread) {
  const fs::path file = write("huge.stl", "x");
  fs::resize_file(file, std::uint64_t{50} << 30);
  EXPECT_THAT(failure(file), AllOf(HasSubstr("huge.stl"), HasSubstr("50.0\u00A0GB"), HasSubstr("1.0\u00A0GB")));
}

TEST_F(ScanReaderTest, CountsThatTheFileCannotHoldAreTold) {
  // 353 billion vertices in a few bytes had the mesh library run for a minute with 20 GB.
  EXPECT_THAT(failure(write("a.off", "OFF\n353000000000 1 0\n0 0 0\n")),
              AllOf(HasSubstr("353000000000 vertices"), HasSubstr("cut short")));
  std::string many = ply(box());
  many.replace(many.find("face "), 5, "face 9");
  EXPECT_THAT(failure(write("a.ply", many)), AllOf(HasSubstr("declares 9432 faces"), HasSubstr("cut short")));
  EXPECT_THAT(failure(write("a.stl", stl(box()).substr(0, 5000))), HasSubstr("cut short"));
  EXPECT_THAT(failure(write("b.ply", "ply\nformat ascii 1.0\nelement vertex -3\nend_header\n")), HasSubstr("'-3'"));
  EXPECT_THAT(failure(write("c.ply", "ply\nformat ascii 1.0\n")), HasSubstr("does not end"));
}

TEST_F(ScanReaderTest, CompressedMeshesAreCalledByTheirName) {
  for (const std::string extension : {"KHR_draco_mesh_compression", "EXT_meshopt_compression"}) {
    const std::string json = gltfRequiring(extension);
    EXPECT_THAT(failure(write("a.gltf", json)), AllOf(HasSubstr(extension), HasSubstr("without compression")));
    std::string glb = "glTF";
    const std::string padded = json + std::string((4 - json.size() % 4) % 4, ' ');
    append(glb, std::uint32_t{2});
    append(glb, static_cast<std::uint32_t>(20 + padded.size()));
    append(glb, static_cast<std::uint32_t>(padded.size()));
    glb += "JSON" + padded;
    EXPECT_THAT(failure(write("a.glb", glb)), HasSubstr(extension));
    EXPECT_THAT(failure(write("b.glb", glb.substr(0, glb.size() - 8))), HasSubstr("cut short"));
  }
}

TEST_F(ScanReaderTest, BrokenJsonIsToldWithItsPlace) {
  EXPECT_THAT(failure(write("a.gltf", "{\"asset\": {\n  \"version\" \"2.0\"}}")),
              AllOf(HasSubstr("a.gltf"), HasSubstr("its JSON:2")));
}

TEST_F(ScanReaderTest, PointsThatAreNoNumbersAndBadIndicesAreDroppedAndTold) {
  auto mesh = box();
  mesh.positions[0].x() = std::numeric_limits<float>::quiet_NaN();
  const auto scan = readCleanScan(write("nan.ply", ply(mesh)), reader_);
  ASSERT_TRUE(scan);
  EXPECT_GT(scan->repairs.notFinite, 0U);
  EXPECT_TRUE(ui::repairsSaid(*scan).join("\n").contains("a corner that is no number"));
  EXPECT_FALSE(scan->flaws.closed());
  EXPECT_TRUE(std::all_of(scan->mesh.positions.begin(), scan->mesh.positions.end(),
                          [](const auto& p) { return p.allFinite(); }));

  auto wrong = box();
  wrong.triangles[5][1] = 100000;
  try {
    const auto bad = readCleanScan(write("index.ply", ply(wrong)), reader_);
    EXPECT_GT(bad->repairs.badIndices + bad->leftOut.badFaces + bad->leftOut.facesLost, 0U);
    EXPECT_THAT(ui::repairsSaid(*bad).join("\n").toStdString(), testing::ContainsRegex("could not be used|not there"));
  } catch (const FileError& error) {
    EXPECT_THAT(ui::sayFailure(error).toStdString(), HasSubstr("index.ply"));
  }
}

TEST_F(ScanReaderTest, AFaceOfAnOffFileThatNamesNoVertexIsTold) {
  const std::string faces = "3 0 2 1\n3 0 1 3\n3 0 3 2\n3 1 2 3\n";
  const std::string colour = " 200 190 170 255\n";
  for (const std::string& good :
       {"OFF\n# a tetrahedron\n4 4 6\n0 0 0\n1 0 0\n0 1 0\n0 0 1\n" + faces,
        "COFF\n4 4 6\n0 0 0" + colour + "1 0 0" + colour + "0 1 0" + colour + "0 0 1" + colour + faces}) {
    const auto whole = readCleanScan(write("good.off", good), reader_);
    ASSERT_TRUE(whole);
    EXPECT_TRUE(whole->flaws.closed());
    EXPECT_EQ(whole->mesh.triangles.size(), 4u);
    std::string bad = good;
    bad.replace(bad.rfind("3\n"), 1, "4");
    try {
      readCleanScan(write("bad.off", bad), reader_);
      FAIL() << "it was read";
    } catch (const FileError& error) {
      EXPECT_THAT(ui::sayFailure(error).toStdString(), HasSubstr("bad.off"));
      EXPECT_THAT(ui::sayFailure(error).toStdString(), HasSubstr("face 4 names vertex 4, but there are only 4"));
    }
  }
}

TEST_F(ScanReaderTest, MemoryThatItWouldNeedIsToldBeforeItIsUsed) {
  reader_.limits.memory = std::uint64_t{100} << 20;
  const auto big = solid::sphereMesh(1, 700);
  ASSERT_EQ(big.triangles.size(), 1'957'200u);
  const auto told = AllOf(HasSubstr("its 1957200 triangles would need about "),
                          HasSubstr(" of memory, more than the 100.0\u00A0MB allowed"));
  EXPECT_THAT(failure(write("big.stl", stl(big))), AllOf(HasSubstr("big.stl"), told));
  EXPECT_THAT(failure(write("big.ply", ply(big))), AllOf(HasSubstr("big.ply"), told));
  // Nothing is behind these counts: they are believed for the estimate alone.
  EXPECT_THAT(failure(write("big.gltf",
                            R"({"asset": {"version": "2.0"}, "accessors": [{"count": 978602}, {"count": 5871600}],
                                "meshes": [{"primitives": [{"attributes": {"POSITION": 0}, "indices": 1}]}]})")),
              AllOf(HasSubstr("big.gltf"), told));
}

TEST_F(ScanReaderTest, TooMuchMemoryIsAMessage) {
  if (kShadowed) GTEST_SKIP() << "the sanitizer's shadow alone maps terabytes, no limit is set";
  reader_.limits.memory = std::uint64_t{100} << 20;
  // A text declares nothing: it is read until the limit is met.
  EXPECT_THAT(failure(write("big.obj", obj(example::boxMesh({1, 2, 3}, 300)))),
              AllOf(HasSubstr("big.obj"), testing::ContainsRegex("memory|broke down")));
  // A million triangles: 54 MB of file, 3.2 million vertices with normals, a list of corners each.
  EXPECT_THAT(failure(write("big.stl", stl(example::boxMesh({1, 2, 3}, 300)))),
              AllOf(HasSubstr("big.stl"), testing::ContainsRegex("memory|broke down")));
}

TEST_F(ScanReaderTest, TooMuchTimeIsAMessage) {
  reader_.limits.seconds = 0.05;
  reader_.limits.secondsPerMillion = 0;
  reader_.limits.clockTimes = 1;
  EXPECT_THAT(failure(write("big.obj", obj(example::boxMesh({1, 2, 3}, 300)))),
              AllOf(HasSubstr("big.obj"), HasSubstr("longer than the 0.05 seconds")));
}

TEST_F(ScanReaderTest, ProcessorTimeGoesByWhatTheFileHasRoomFor) {
  // Ten million faces in 80 MB of text: at 30 bytes a triangle 2.67 million, so 0.05 + 0.5 x 2.67 s, rounded up. The
  // same bytes in the tersest format would be 6.67 million, which is what the process starts with.
  std::string text = "v 0 0 0\nv 1 0 0\nv 0 1 0\n";
  for (int i = 0; i < 10'000'000; ++i) text += "f 1 2 3\n";
  reader_.limits.seconds = 0.05;
  reader_.limits.secondsPerMillion = 0.5;
  EXPECT_EQ(secondsAllowed(0.05, 0.5, mostTrianglesIn(text.size())), 4u);
  EXPECT_THAT(failure(write("long.obj", text)),
              AllOf(HasSubstr("long.obj"), HasSubstr("took more than 2\u00A0s of processor time")));
}

TEST_F(ScanReaderTest, AReaderThatSpinsIsEndedByProcessorTime) {
  reader_.program = write("spins", "#!/bin/bash\nwhile :; do :; done\n");
  fs::permissions(reader_.program, fs::perms::owner_all);
  reader_.limits.seconds = 0.5;
  EXPECT_THAT(failure(write("a.stl", stl(box()))),
              AllOf(HasSubstr("a.stl"), HasSubstr("took more than 1\u00A0s of processor time")));
}

TEST_F(ScanReaderTest, ABusyMachineDoesNotEndAReaderThatWaits) {
  // It waits for longer than its processor time and reads then, while others have the cores.
  reader_.program = write("waits", "#!/bin/bash\nsleep 1.6\nexec " ZYGAPOSE_READ_SCAN " \"$@\"\n");
  fs::permissions(reader_.program, fs::perms::owner_all);
  reader_.limits.seconds = 0.5;
  reader_.limits.clockTimes = 100;
  std::atomic<bool> over{false};
  std::vector<std::thread> busy;
  for (unsigned i = 0; i < 2 * std::max(1U, std::thread::hardware_concurrency()); ++i)
    busy.emplace_back([&] {
      while (!over) {
      }
    });
  const std::string message = failure(write("a.stl", stl(box())));
  over = true;
  for (std::thread& thread : busy) thread.join();
  EXPECT_EQ(message, "");
}

TEST_F(ScanReaderTest, AReaderThatDiesOrHangsIsAMessage) {
  const fs::path scan = write("a.stl", stl(box()));
  const auto script = [&](const std::string& name, const std::string& text) {
    reader_.program = write(name, "#!/bin/bash\n" + text + "\n");
    fs::permissions(reader_.program, fs::perms::owner_all);
    reader_.limits.seconds = 0.5;
    reader_.limits.clockTimes = 1;
    return failure(scan);
  };
  EXPECT_THAT(script("dies", "kill -SEGV $$"), AllOf(HasSubstr("a.stl"), HasSubstr("SIGSEGV")));
  EXPECT_THAT(script("hangs", "exec sleep 100"), HasSubstr("longer than"));
  EXPECT_THAT(script("silent", "exec >&-; exec sleep 100"), HasSubstr("longer than"));
  EXPECT_THAT(script("lies", "echo nonsense > $3; exit 0"), HasSubstr("damaged answer"));
  EXPECT_THAT(script("says", R"(echo 'cause {"id": "scan.no-surface", "values": []}'; exit 3)"),
              HasSubstr("no surface in it"));
  EXPECT_THAT(script("raves", "echo cause the moon is full; exit 3"), HasSubstr("damaged answer"));
  EXPECT_THAT(script("chatters", "head -c 300000 /dev/urandom; exit 7"), HasSubstr("code 7"));
  reader_.program = path("missing");
  EXPECT_THAT(failure(scan), HasSubstr("cannot start"));
}

TEST_F(ScanReaderTest, ThreeMillionTrianglesComeThinnedAndTellByHowMuch) {
  constexpr int kRings = 867;
  solid::TriangleMesh ball = solid::sphereMesh(100, kRings);  // as of mm
  for (auto& p : ball.positions)
    p *= 1 + 0.05F * std::sin(0.09F * p.x()) * std::cos(0.07F * p.y()) + 0.0005F * std::sin(0.7F * p.z());
  ASSERT_GT(ball.triangles.size(), 3'000'000u);
  const auto scan = readCleanScan(write("C3.ply", ply(ball)), reader_);
  ASSERT_TRUE(scan);
  ASSERT_TRUE(scan->thinned);
  EXPECT_EQ(scan->thinned->from, ball.triangles.size());
  EXPECT_EQ(scan->thinned->to, scan->mesh.triangles.size());
  EXPECT_LE(scan->mesh.triangles.size(), 2'000'000u);
  EXPECT_GT(scan->mesh.triangles.size(), 1'800'000u);
  EXPECT_TRUE(scan->flaws.closed());
  EXPECT_EQ(scan->flaws.surfaces, 1u);
  EXPECT_NEAR(solid::volume(scan->mesh) / solid::volume(ball), 1, 1e-5);
  EXPECT_GT(scan->thinned->error, 0);
  EXPECT_LT(scan->thinned->error, 0.05);
  // Some of the points, against every triangle.
  double farthest = 0;
  for (std::size_t i = 1; i < ball.positions.size(); i += ball.positions.size() / 8) {
    const Eigen::Vector3d p = ball.positions[i].cast<double>();
    double nearest = std::numeric_limits<double>::infinity();
    for (const auto& t : scan->mesh.triangles) {
      const auto corner = [&](std::size_t k) { return Eigen::Vector3d(scan->mesh.positions[t[k]].cast<double>()); };
      nearest = std::min(nearest, (solid::nearestOn({corner(0), corner(1), corner(2)}, p) - p).norm());
    }
    farthest = std::max(farthest, nearest);
  }
  EXPECT_LE(farthest, scan->thinned->error);
  EXPECT_THAT(ui::repairsSaid(*scan).join("\n").toStdString(),
              testing::ContainsRegex("thinned from 300[0-9]{4} to (2000000|1[89][0-9]{5}) triangles, no point moved by "
                                     "more than 0\\.0[0-9]+.*mm"));
}

TEST_F(ScanReaderTest, ThinningKeepsHolesAndEveryBoneOfAFile) {
  reader_.limits.triangles = 1000;
  auto open = example::boxMesh({1, 2, 3}, 20);
  open.triangles.erase(open.triangles.begin(), open.triangles.begin() + 800);  // one side
  const auto scan = readCleanScan(write("open.ply", ply(open)), reader_);
  ASSERT_TRUE(scan && scan->thinned);
  EXPECT_EQ(scan->thinned->from, 4000u);
  EXPECT_LE(scan->mesh.triangles.size(), 1000u);
  EXPECT_EQ(scan->flaws.holes, 1u);
  EXPECT_EQ(scan->flaws.nonManifoldEdges, 0u);
  EXPECT_NEAR(scan->thinned->error, 0, 1e-5) << "its sides are flat";

  const auto grid = example::boxMesh({1, 2, 3}, 20);
  std::ostringstream two;
  for (const int at : {0, 1}) {
    two << "o C" << 3 + at << "\n";
    for (const auto& p : grid.positions)
      two << "v " << p.x() + 5 * static_cast<float>(at) << " " << p.y() << " " << p.z() << "\n";
    const std::size_t first = 1 + static_cast<std::size_t>(at) * grid.positions.size();
    for (const auto& t : grid.triangles)
      two << "f " << t[0] + first << " " << t[1] + first << " " << t[2] + first << "\n";
  }
  const auto scans = readCleanScans(write("two.obj", two.str()), reader_);
  ASSERT_TRUE(scans);
  ASSERT_EQ(scans->bones.size(), 2u);
  for (const CleanScan& bone : scans->bones) {
    ASSERT_TRUE(bone.thinned);
    EXPECT_EQ(bone.thinned->from, 4800u);
    EXPECT_LE(bone.mesh.triangles.size(), 1000u);
    EXPECT_TRUE(bone.flaws.closed());
    EXPECT_NEAR(solid::volume(bone.mesh), 48, 1e-3);
  }
  reader_.limits.triangles = 4800;
  const auto whole = readCleanScan(write("whole.ply", ply(grid)), reader_);
  ASSERT_TRUE(whole);
  EXPECT_FALSE(whole->thinned);
}

TEST_F(ScanReaderTest, ColoursAndTexturesThatAreNotKeptAreTold) {
  const auto said = [&](const std::string& name, const std::string& bytes) {
    const auto scan = readCleanScan(write(name, bytes), reader_);
    return scan ? ui::repairsSaid(*scan).join("\n").toStdString() : std::string("nothing was read");
  };
  const std::string head =
      "ply\nformat ascii 1.0\nelement vertex 3\nproperty float x\nproperty float y\nproperty float z\n";
  const std::string rgb = "property uchar red\nproperty uchar green\nproperty uchar blue\n";
  const std::string face = "element face 1\nproperty list uchar int vertex_indices\n", end = "end_header\n";
  EXPECT_EQ(said("plain.ply", head + face + end + "0 0 0\n9 0 0\n0 9 0\n3 0 1 2\n"), "");
  EXPECT_EQ(said("vertices.ply", head + rgb + face + end + "0 0 0 9 9 9\n9 0 0 9 9 9\n0 9 0 9 9 9\n3 0 1 2\n"),
            "vertex colours were left out");
  EXPECT_EQ(said("faces.ply", head + face + rgb + end + "0 0 0\n9 0 0\n0 9 0\n3 0 1 2 9 9 9\n"),
            "colours of faces were left out");
  EXPECT_EQ(said("vertices.off", "COFF\n3 1 3\n0 0 0 9 9 9 255\n9 0 0 9 9 9 255\n0 9 0 9 9 9 255\n3 0 1 2\n"),
            "vertex colours were left out");

  const std::string triangle = "v 0 0 0\nv 9 0 0\nv 0 9 0\nvt 0 0\nvt 1 0\nvt 0 1\nusemtl skin\nf 1/1 2/2 3/3\n";
  write("plain.mtl", "newmtl skin\nKd 0.8 0.7 0.6\n");
  write("skin.mtl", "newmtl skin\nKd 0.8 0.7 0.6\nmap_Kd skin.png\n");
  EXPECT_EQ(said("plain.obj", "mtllib plain.mtl\n" + triangle), "");
  EXPECT_EQ(said("skin.obj", "mtllib skin.mtl\n" + triangle), "textures were left out");

  std::string places;
  for (const float x : {0.F, 0.F, 0.F, 9.F, 0.F, 0.F, 0.F, 9.F, 0.F}) append(places, x);
  const std::string json = R"({"asset": {"version": "2.0"}, "scene": 0, "scenes": [{"nodes": [0]}],
    "nodes": [{"mesh": 0}], "meshes": [{"primitives": [{"attributes": {"POSITION": 0}, "material": 0}]}],
    "materials": [{"pbrMetallicRoughness": {BASE}}],
    "textures": [{"source": 0}], "images": [{"uri": "skin.png"}],
    "accessors": [{"bufferView": 0, "componentType": 5126, "count": 3, "type": "VEC3", "min": [0,0,0], "max": [9,9,0]}],
    "bufferViews": [{"buffer": 0, "byteLength": 36}], "buffers": [{"byteLength": 36}]})";
  const auto with = [&](const std::string& base) {
    std::string text = json;
    return glb(text.replace(text.find("BASE"), 4, base), places);
  };
  EXPECT_EQ(said("plain.glb", with(R"("baseColorFactor": [1, 0.9, 0.8, 1])")), "");
  EXPECT_EQ(said("skin.glb", with(R"("baseColorTexture": {"index": 0})")), "textures were left out");
}

TEST_F(ScanReaderTest, FilesOutsideTheScansFolderStayClosed) {
  const std::string buffer(36, '\0');
  fs::create_directory(path("inside"));
  write("outside.bin", buffer);
  const std::string json = R"({"asset": {"version": "2.0"}, "scene": 0, "scenes": [{"nodes": [0]}],
    "nodes": [{"mesh": 0}], "meshes": [{"primitives": [{"attributes": {"POSITION": 0}}]}],
    "accessors": [{"bufferView": 0, "componentType": 5126, "count": 3, "type": "VEC3", "min": [0,0,0], "max": [0,0,0]}],
    "bufferViews": [{"buffer": 0, "byteLength": 36}], "buffers": [{"byteLength": 36, "uri": "URI"}]})";
  const auto naming = [&](const std::string& uri) {
    std::string text = json;
    return text.replace(text.find("URI"), 3, uri);
  };
  write("inside/near.bin", buffer);
  EXPECT_EQ(failure(write("inside/near.gltf", naming("near.bin"))), "");
  EXPECT_NE(failure(write("inside/far.gltf", naming("../outside.bin"))), "");
  EXPECT_NE(failure(write("inside/device.gltf", naming("/dev/zero"))), "");
}

TEST(ScanWire, AnythingButItsOwnFormIsRefused) {
  QTemporaryDir folder;
  const fs::path file = fs::path(folder.path().toStdString()) / "mesh";
  RawScan scan;
  scan.mesh = box();
  scan.facesDeclared = 7;
  scan.unit = 0.001;
  scan.looks = {true, false, true};
  writeWire(scan, file);
  const auto again = readWire(file);
  EXPECT_EQ(again.mesh.positions, scan.mesh.positions);
  EXPECT_EQ(again.mesh.triangles, scan.mesh.triangles);
  EXPECT_EQ(again.facesDeclared, 7u);
  EXPECT_EQ(again.unit, 0.001);
  EXPECT_EQ(again.looks, scan.looks);

  const std::string good = bytesOf(file);
  const auto refused = [&](const std::string& bytes) {
    std::ofstream(file, std::ios::binary | std::ios::trunc) << bytes;
    EXPECT_THROW(readWire(file), FileError);
  };
  for (std::size_t size = 0; size < good.size(); size += 97) refused(good.substr(0, size));
  refused(good + "x");
  std::string counts = good;
  const std::uint64_t many = ~std::uint64_t{0} / 12;
  std::memcpy(counts.data() + 8, &many, sizeof(many));
  refused(counts);
  std::string index = good;
  index.replace(index.size() - 4, 4, "\xff\xff\xff\x7f", 4);
  refused(index);
}

TEST(ScanCause, ComesBackAsItWasTold) {
  const reason::Reason cause(fault::kDeclaresTooMany,
                             {reason::Count{353000000000}, kVertices, reason::Count{6}, reason::Count{20}});
  EXPECT_EQ(readCause(writeCause(cause)), cause);
  const reason::Reason within(
      fault::kGltfJson,
      {reason::Count{2}, reason::Count{13},
       reason::inner({fault::kFoundInstead, {reason::inner(fault::kExpectedColon), reason::text("\"")}})});
  EXPECT_EQ(readCause(writeCause(within)), within);
  const reason::Reason memory(fault::kNeedsMemory,
                              {reason::Count{12'000'000}, reason::Quantity{2e9, reason::Unit::Bytes},
                               reason::Quantity{1e9, reason::Unit::Bytes}});
  EXPECT_EQ(readCause(writeCause(memory)), memory);
}

TEST(ScanCause, NothingFromTheOtherProcessIsTrusted) {
  const reason::Reason damaged(fault::kDamagedAnswer);
  for (const char* line :
       {"", "the moon is full", "[]", "{}", "7", R"({"id": "scan.no-surface"})",
        R"({"id": "scan.invented", "values": []})", R"({"id": "file.cannot-save", "values": ["a", "b", "c"]})",
        R"({"id": "scan.no-surface", "values": ["too many"]})", R"({"id": "scan.compressed", "values": []})",
        R"({"id": "scan.compressed", "values": [{"term": "scan.invented"}]})",
        R"({"id": "scan.compressed", "values": [null]})", R"({"id": "scan.compressed", "values": [{"bytes": "many"}]})",
        R"({"id": 7, "values": [1]})"})
    EXPECT_EQ(readCause(line), damaged) << line;
  // Reasons within reasons beyond any that are told.
  std::string deep = R"({"id": "scan.no-surface", "values": []})";
  for (int i = 0; i < 9; ++i) deep = R"({"id": "scan.elements", "values": [)" + deep + "]}";
  EXPECT_EQ(readCause(deep), damaged);
}

TEST(ScanCause, TextsAreCutAndStayOnOneLine) {
  const std::string sign = "\xE9\xAA\xA8";
  std::string name = "a\nb\x1b";
  for (int i = 0; i < 300; ++i) name += sign;
  const auto back = readCause(writeCause({fault::kCompressed, {reason::text(name)}}));
  ASSERT_EQ(back.id, fault::kCompressed);
  const std::string& text = std::get<reason::Text>(back.values[0]).text;
  EXPECT_EQ(text.substr(0, 7), "a b " + sign);
  EXPECT_LE(text.size(), 300U);
  EXPECT_EQ(text.size() % 3, 1U);  // whole characters
}

/// 200 good files with bytes cut off or bits flipped: each is read or ends in a message that names it.
TEST_F(ScanReaderTest, TruncatedAndFlippedFilesNeverDoHarm) {
  reader_.limits.seconds = 3;  // a flipped bit can send the library round in circles
  const example::Skeleton beast;
  exportMeshes(beast.specimen, beast.X_WB, beast.meshes, path("good.glb"), {});
  exportMeshes(beast.specimen, beast.X_WB, beast.meshes, path("good.dae"), {});
  const std::vector<std::pair<std::string, std::string>> good{{".stl", stl(box())},
                                                              {".ply", ply(box())},
                                                              {".obj", obj(box())},
                                                              {".off", off(box())},
                                                              {".glb", bytesOf(path("good.glb"))},
                                                              {".dae", bytesOf(path("good.dae"))}};
  std::mt19937 random(20260925);
  int read = 0, refused = 0;
  for (int i = 0; i < 200; ++i) {
    auto [ending, bytes] = good[static_cast<std::size_t>(i) % good.size()];
    if (i % 2 == 0) {
      bytes.resize(random() % bytes.size());
    } else {
      for (int flips = 0; flips < 1 + i % 7; ++flips)
        bytes[random() % bytes.size()] ^= static_cast<char>(1 << random() % 8);
    }
    const fs::path file = write("case" + ending, bytes);
    const std::string message = failure(file);
    ++(message.empty() ? read : refused);
    if (!message.empty()) {
      EXPECT_THAT(message, HasSubstr("case" + ending));
    }
  }
  EXPECT_GT(read, 20);
  EXPECT_GT(refused, 50);
}

fs::path sharedData() {
  const char* given = std::getenv("ZYGAPOSE_DATA");
  return given ? fs::path(given) : fs::path(ZYGAPOSE_SHARED_DATA);
}

/// glTF-Validator's own collection (Khronos, Apache-2.0): files broken on purpose, one way each.
TEST_F(ScanReaderTest, EveryMalformedGltfIsReadOrEndsInAMessage) {
  const fs::path folder = sharedData() / "gltf-malformed";
  if (!fs::exists(folder)) GTEST_SKIP() << "the open bone data are not at " << folder;
  int read = 0, refused = 0, broke = 0;
  for (const auto& entry : fs::recursive_directory_iterator(folder)) {
    const auto ending = entry.path().extension();
    if (ending != ".gltf" && ending != ".glb") continue;
    const std::string message = failure(entry.path());
    ++(message.empty() ? read : refused);
    broke += message.find("broke down") != std::string::npos;
    if (!message.empty()) {
      EXPECT_THAT(message, HasSubstr(entry.path().filename().string()));
    }
  }
  RecordProperty("read", read);
  RecordProperty("refused", refused);
  RecordProperty("reader_broke_down", broke);
  EXPECT_EQ(read + refused, 372);
  EXPECT_GT(refused, 200);
}

}  // namespace
}  // namespace zyga::files
