#pragma once

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <functional>
#include <random>

#include "core/files/project/project.h"

namespace zyga::files {

/// Saves one project over the other in a process that is killed, so many times; looks at the file each time.
inline void whileSavesAreKilled(const Project& one, const Project& other, const std::filesystem::path& path, int rounds,
                                const std::function<void()>& look) {
  std::mt19937 generator(17);
  for (int round = 0; round < rounds; ++round) {
    std::array<int, 2> ends{};
    ASSERT_EQ(pipe(ends.data()), 0);
    const pid_t child = fork();
    if (child == 0) {
      for (int i = 0;; ++i) {
        saveProject(i % 2 ? one : other, path);
        if (i == 0 && write(ends[1], "x", 1) != 1) _exit(1);
      }
    }
    char started = 0;
    ASSERT_EQ(read(ends[0], &started, 1), 1);  // it saves without end from here on
    usleep(generator() % 20000);               // where in a save it dies is left to chance
    kill(child, SIGKILL);
    waitpid(child, nullptr, 0);
    close(ends[0]);
    close(ends[1]);
    look();
  }
}

}  // namespace zyga::files
