#pragma once

namespace zyga::ui {

/// What sanitizers slow down.
#if defined(__SANITIZE_ADDRESS__) || defined(__SANITIZE_THREAD__)
constexpr int kSlowness = 10;
#elif defined(__has_feature)
#if __has_feature(address_sanitizer) || __has_feature(thread_sanitizer)
constexpr int kSlowness = 10;
#else
constexpr int kSlowness = 1;
#endif
#else
constexpr int kSlowness = 1;
#endif

/// How long a test waits for what must come, ms: sculpting, or a study, on one busy core. Four times within the limit
/// of a test (TIMEOUT in tests/CMakeLists.txt), so that it is the wait which fails, and says where.
constexpr int kPatience = 300'000 * kSlowness;

/// For what a busy window does by itself, ms.
constexpr int kMoment = 3'000 * kSlowness;

}  // namespace zyga::ui
