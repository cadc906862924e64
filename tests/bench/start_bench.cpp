// The program itself, started on the sample as a process of its own until its window is drawn, until all bones are
// in the picture, if only roughly, and until they are in full detail; without anything kept from before, and with the
// bones kept from the start before. Needs a display. Figures to reach: 2 s with the bones kept, 8 s without.
#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <map>
#include <stdexcept>
#include <string>

namespace zyga {
namespace {

namespace fs = std::filesystem;
using Clock = std::chrono::steady_clock;

constexpr int kRuns = 2;
/// What the program says, and the name of its row.
constexpr std::array kWords{std::pair("window", "Window"), std::pair("likeness", "Likeness"),
                            std::pair("bones", "Bones")};

/// Seconds from the start until the program says each word; and by what it draws ("renderer").
struct Start {
  std::map<std::string, double> seconds;
  std::string renderer;
};

/// Nothing of the person who runs this is read or written.
std::string commandIn(const fs::path& home) {
  std::string command = "env";
  for (const char* variable : {"HOME", "XDG_CONFIG_HOME", "XDG_CACHE_HOME", "XDG_DATA_HOME"})
    command += std::string(" ") + variable + "='" + home.string() + "'";
  return command + " timeout 120 '" ZYGAPOSE_PROGRAM "' --tell-start --language en '" ZYGAPOSE_SOURCE_DIR
                   "/samples/high_browser.csv'";
}

Start start(const fs::path& home) {
  Start found;
  const auto begin = Clock::now();
  std::FILE* program = popen(commandIn(home).c_str(), "r");
  if (!program) throw std::runtime_error("the program cannot be started");
  std::array<char, 512> line{};
  while (std::fgets(line.data(), line.size(), program)) {
    const double now = std::chrono::duration<double>(Clock::now() - begin).count();
    std::string word(line.data());
    word.resize(word.find_last_not_of("\r\n") + 1);
    if (word.starts_with("renderer "))
      found.renderer = word.substr(9);
    else if (std::any_of(kWords.begin(), kWords.end(), [&word](const auto& known) { return word == known.first; }))
      found.seconds.try_emplace(word, now);
  }
  if (pclose(program) != 0 || found.seconds.size() != kWords.size())
    throw std::runtime_error("the program did not come to show its bones");
  return found;
}

struct Least {
  std::map<std::string, double> seconds;
  std::string renderer;

  void take(const Start& start) {
    renderer = start.renderer;
    for (const auto& [word, taken] : start.seconds) {
      double& least = seconds.try_emplace(word, taken).first->second;
      least = std::min(least, taken);
      std::printf("%s %.2f s  ", word.c_str(), taken);
    }
    std::printf("\n");
    std::fflush(stdout);
  }
  void tell(const std::string& name) const {
    for (const auto& [word, row] : kWords) {
      std::printf("@ %s%s %.3f s\n", name.c_str(), row, seconds.at(word));
      std::printf("# %s%s drawn by %s\n", name.c_str(), row, renderer.c_str());
    }
  }
};

int run() {
  const fs::path home = fs::temp_directory_path() / "zygapose-start-bench";
  Least cold, warm;
  for (int i = 0; i < kRuns; ++i) {
    fs::remove_all(home);
    fs::create_directories(home);
    cold.take(start(home));
    warm.take(start(home));
  }
  fs::remove_all(home);
  cold.tell("cold");
  warm.tell("warm");
  return 0;
}

}  // namespace
}  // namespace zyga

int main() {
  try {
    return zyga::run();
  } catch (const std::exception& error) {
    std::fprintf(stderr, "error: %s\n", error.what());
    return 1;
  }
}
