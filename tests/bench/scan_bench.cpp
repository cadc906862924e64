// A scan of a million triangles made ready for the window: read in a process of its own, repaired, with its levels of
// detail; against the mesh library alone in this process, which joins vertices but neither repairs nor simplifies.
// Target: at most 1.5 times its time.
#include <assimp/config.h>
#include <assimp/postprocess.h>
#include <assimp/scene.h>
#include <benchmark/benchmark.h>

#include <assimp/Importer.hpp>
#include <cstring>
#include <filesystem>
#include <fstream>

#include "core/files/project/project_scan.h"
#include "core/files/scan/clean_scan.h"
#include "core/files/scan/scan_process.h"
#include "core/solid/mesh/simplify.h"
#include "tests/bench/lumpy_ball.h"

namespace zyga {
namespace {

namespace fs = std::filesystem;

constexpr int kRings = 708;  ///< 2 n^2 = 1,002,528 triangles

std::string stl(const solid::TriangleMesh& mesh) {
  const auto count = static_cast<std::uint32_t>(mesh.triangles.size());
  std::string bytes(84 + 50 * mesh.triangles.size(), '\0');
  std::memcpy(bytes.data() + 80, &count, 4);
  char* at = bytes.data() + 84;
  for (const auto& t : mesh.triangles) {
    for (std::size_t i = 0; i < 3; ++i) std::memcpy(at + 12 * (i + 1), mesh.positions[t[i]].data(), 12);
    at += 50;
  }
  return bytes;
}

/// The file of this ending, written on first use.
fs::path scanFile(const std::string& ending) {
  const fs::path file = fs::temp_directory_path() / ("zygapose-scan-bench" + ending);
  static const solid::TriangleMesh mesh = bench::lumpyBall(kRings);
  if (!fs::exists(file)) std::ofstream(file, std::ios::binary) << (ending == ".stl" ? stl(mesh) : files::scanPly(mesh));
  return file;
}

void libraryAlone(benchmark::State& state, const std::string& ending, unsigned flags) {
  const fs::path file = scanFile(ending);
  for (auto _ : state) {
    Assimp::Importer importer;
    importer.SetPropertyInteger(AI_CONFIG_PP_RVC_FLAGS,
                                aiComponent_NORMALS | aiComponent_COLORS | aiComponent_TEXCOORDS);
    const aiScene* scene = importer.ReadFile(file.string(), flags);
    if (!scene) return state.SkipWithError("cannot be read");
    benchmark::DoNotOptimize(scene->mMeshes[0]->mVertices);
  }
}

constexpr unsigned kJoined = aiProcess_Triangulate | aiProcess_RemoveComponent | aiProcess_JoinIdenticalVertices;

void ours(benchmark::State& state, const std::string& ending, bool levels) {
  const fs::path file = scanFile(ending);
  files::ScanReader reader;  // this program again
  for (auto _ : state) {
    auto scan = files::readCleanScan(file, reader);
    if (levels) {
      const auto bone = solid::displayLevels(std::move(scan->mesh));
      benchmark::DoNotOptimize(bone.levels.data());
    }
    benchmark::ClobberMemory();
  }
}

#define SCAN_ROWS(name, ending)                                                                                   \
  BENCHMARK_CAPTURE(libraryAlone, name##_bare, ending, 0u)->Unit(benchmark::kMillisecond)->UseRealTime();         \
  BENCHMARK_CAPTURE(libraryAlone, name##_vertices_joined, ending, kJoined)                                        \
      ->Unit(benchmark::kMillisecond)                                                                             \
      ->UseRealTime();                                                                                            \
  BENCHMARK_CAPTURE(ours, name##_read_and_repaired, ending, false)->Unit(benchmark::kMillisecond)->UseRealTime(); \
  BENCHMARK_CAPTURE(ours, name##_ready_for_the_window, ending, true)->Unit(benchmark::kMillisecond)->UseRealTime()

SCAN_ROWS(stl, ".stl");
SCAN_ROWS(ply, ".ply");

}  // namespace
}  // namespace zyga

int main(int argc, char** argv) {
  if (argc > 1 && argv[1] == zyga::files::protocol::kVerb) return zyga::files::readScanProcess(argc - 1, argv + 1);
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
}
