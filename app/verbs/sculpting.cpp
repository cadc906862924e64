#include "app/verbs/sculpting.h"

#include <unistd.h>

#include <cstdlib>
#include <iostream>
#include <mutex>

namespace zyga::app {
namespace {

std::filesystem::path cacheHome() {
  const char* xdg = std::getenv("XDG_CACHE_HOME");
  if (xdg && *xdg == '/') return xdg;  // the specification has relative paths ignored
  const char* home = std::getenv("HOME");
  return home && *home ? std::filesystem::path(home) / ".cache" : std::filesystem::path();
}

}  // namespace

std::filesystem::path cacheFolder() {
  const auto home = cacheHome();
  if (home.empty()) return {};
  const auto folder = home / "zygapose";
  std::error_code failed;
  std::filesystem::create_directories(folder, failed);
  return !failed && access(folder.c_str(), W_OK) == 0 ? folder : std::filesystem::path();
}

files::BoneMeshes sculpt(const files::Project& project, std::size_t triangles) {
  for (const auto& scan : project.scans)
    if (!scan.trouble.empty()) std::cerr << "warning: " << scan.trouble << "\n";
  solid::SculptOptions options;
  options.triangleBudget = triangles;
  options.cacheFolder = cacheFolder();
  std::mutex mutex;
  std::size_t most = 0;
  if (isatty(STDERR_FILENO)) {
    options.progress = [&](std::size_t done, std::size_t total) {
      const std::lock_guard lock(mutex);
      if (done <= most) return;  // threads may report out of order
      most = done;
      std::cerr << "\rsculpting bones " << done << " of " << total << (done == total ? "\n" : "") << std::flush;
    };
  }
  return files::boneMeshes(project, options);
}

}  // namespace zyga::app
