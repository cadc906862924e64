#pragma once

namespace zyga::files {

/// Whether the address sanitizer watches this build: its shadow alone maps terabytes, so no limit of memory is set
/// then.
#if defined(__SANITIZE_ADDRESS__)
inline constexpr bool kShadowed = true;
#elif defined(__has_feature)
inline constexpr bool kShadowed = __has_feature(address_sanitizer);
#else
inline constexpr bool kShadowed = false;
#endif

}  // namespace zyga::files
