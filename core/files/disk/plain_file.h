#pragma once

#include <cstddef>
#include <filesystem>
#include <limits>
#include <optional>
#include <string>

#include "core/files/disk/file_error.h"

namespace zyga::files {

/// What may stand in the way of reading or writing a file, besides what file_error.h names.
namespace fault {

inline constexpr Id kMayNotRead{"file.may-not-read"};
inline constexpr Id kNotPlain{"file.not-plain", 1};  ///< what it is: a Term
inline constexpr Id kLinkToNothing{"file.link-to-nothing"};
inline constexpr Id kLinkLoop{"file.link-loop"};
inline constexpr Id kNotPermitted{"file.not-permitted"};
inline constexpr Id kDiskFull{"file.disk-full"};
inline constexpr Id kQuotaUsedUp{"file.quota-used-up"};
inline constexpr Id kBeyondSizeLimit{"file.beyond-size-limit"};
inline constexpr Id kReadOnlyDisk{"file.read-only-disk"};
inline constexpr Id kDiskFault{"file.disk-fault"};
inline constexpr Id kNameTooLong{"file.name-too-long"};
inline constexpr Id kTooManyOpen{"file.too-many-open"};
inline constexpr Id kNoMemory{"file.no-memory"};
inline constexpr Id kShareGone{"file.share-gone"};
inline constexpr Id kInUse{"file.in-use"};
inline constexpr Id kSystemError{"file.system-error", 1};  ///< its number

}  // namespace fault

/// Why the system would not do what it was asked: the usual values of errno in reasons of our own, others by number.
reason::Reason systemCause(int error);

/// Bytes of a plain file, or of a link to one, from its beginning; at most `most`. A folder, pipe, socket or device is
/// refused without being opened, so that none can keep the program waiting. Throws FileError with the cause alone.
std::string readPlain(const std::filesystem::path& path, std::size_t most = std::numeric_limits<std::size_t>::max());

/// What stands at a path that is there but no plain file; none for a plain file and where nothing is.
std::optional<reason::Term> unplainAt(const std::filesystem::path& path);

}  // namespace zyga::files
