#pragma once

#include <cstdio>
#include <cstdlib>

namespace zyga::fuzz {

/// Ends the program, so that the fuzzer keeps the input, when something that must hold for every input does not.
inline void require(bool holds, const char* what) {
  if (holds) return;
  std::fprintf(stderr, "does not hold: %s\n", what);
  std::abort();
}

}  // namespace zyga::fuzz
