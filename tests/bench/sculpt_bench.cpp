// All bones of the sample sculpted from its measurements on all cores, with nothing kept from before; and the same read
// back from the folder where they are kept. Figure to reach: the bones are there within the start's 8 s.
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <stdexcept>

#include "core/solid/sculpt/sculpt.h"
#include "tests/bench/sample_project.h"

namespace zyga {
namespace {

using Clock = std::chrono::steady_clock;

double secondsToSculpt(const anatomy::Specimen& specimen, const std::filesystem::path& cache) {
  solid::SculptOptions options;
  options.cacheFolder = cache;
  const auto start = Clock::now();
  const auto meshes = solid::sculptAll(specimen, options);
  const double taken = std::chrono::duration<double>(Clock::now() - start).count();
  std::size_t bones = 0, triangles = 0;
  for (const auto& mesh : meshes) {
    if (!mesh || mesh->levels.empty()) continue;
    ++bones;
    triangles += mesh->levels.front().triangles.size();
  }
  if (bones == 0) throw std::runtime_error("no bone was sculpted");
  std::printf("%zu bones, %zu triangles: %.2f s\n", bones, triangles, taken);
  std::fflush(stdout);
  return taken;
}

}  // namespace
}  // namespace zyga

int main() {
  constexpr int kRuns = 2;
  const zyga::files::Project project = zyga::bench::sampleProject();
  const auto cache = std::filesystem::temp_directory_path() / "zygapose-sculpt-bench";
  double cold = 1e9, warm = 1e9;
  for (int run = 0; run < kRuns; ++run) {
    std::filesystem::remove_all(cache);
    cold = std::min(cold, zyga::secondsToSculpt(project.specimen(), cache));
    warm = std::min(warm, zyga::secondsToSculpt(project.specimen(), cache));
  }
  std::filesystem::remove_all(cache);
  std::printf("@ sculptCold %.3f s\n@ sculptWarm %.4f s\n", cold, warm);
}
