#pragma once

#include <cstddef>
#include <string_view>

/// What the reading process tells the program: lines on its standard output, and its exit code.
namespace zyga::files::protocol {

inline constexpr std::string_view kVerb = "read-scan";
inline constexpr std::string_view kProgress = "progress ";  ///< then percent
inline constexpr std::string_view kCause = "cause ";        ///< then why it failed, in words
inline constexpr std::size_t kLongestCause = 600;           ///< bytes

enum Exit { kRead = 0, kFailed = 3, kOutOfMemory = 4, kMisused = 5 };

}  // namespace zyga::files::protocol
