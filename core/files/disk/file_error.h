#pragma once

#include <filesystem>

#include "core/reason/reason.h"

namespace zyga::files {

/// What a reader or writer of files has to say: the file, the place of the fault, the cause and the mend, as values.
class FileError : public reason::Failure {
 public:
  using Failure::Failure;
};

inline reason::Value pathText(const std::filesystem::path& path) { return reason::text(path.string()); }

/// What may be wrong with a file as a whole. Paths and names are Text, causes and mends are reasons of their own.
namespace fault {

using reason::Id;

inline constexpr Id kCannotSave{"file.cannot-save", 3};  ///< path, cause, mend
inline constexpr Id kCannotOpen{"file.cannot-open", 2};  ///< path, cause
inline constexpr Id kCannotRead{"file.cannot-read", 2};
inline constexpr Id kCannotExport{"file.cannot-export", 2};
inline constexpr Id kCannotMakeFolder{"file.cannot-make-folder", 2};
inline constexpr Id kFolderNotWritable{"file.folder-not-writable", 1};  ///< path
/// What the system or a library says of itself, as it puts it.
inline constexpr Id kInItsWords{"file.in-its-words", 1};

// Causes.
inline constexpr Id kNameMissing{"file.name-missing"};
inline constexpr Id kNoFolder{"file.no-folder", 1};
inline constexpr Id kFileNotFolder{"file.file-not-folder", 1};
inline constexpr Id kNameOfFolder{"file.name-of-folder"};
inline constexpr Id kMayNotWriteFile{"file.may-not-write-file"};
inline constexpr Id kMayNotWriteFolder{"file.may-not-write-folder"};
inline constexpr Id kNoSuchFile{"file.no-such-file"};
inline constexpr Id kFolderNotFile{"file.folder-not-file"};

// Mends.
inline constexpr Id kAddName{"file.add-name"};
inline constexpr Id kMakeFolder{"file.make-folder"};
inline constexpr Id kChooseFolder{"file.choose-folder"};
inline constexpr Id kChooseName{"file.choose-name"};
inline constexpr Id kChooseOtherFolder{"file.choose-other-folder"};
inline constexpr Id kMakeRoom{"file.make-room"};

}  // namespace fault

/// What an exception gives as a reason: its own, or its words.
inline reason::Reason reasonOf(const std::exception& error) {
  const auto* failure = dynamic_cast<const reason::Failure*>(&error);
  return failure ? failure->reason() : reason::Reason(fault::kInItsWords, {reason::text(error.what())});
}

}  // namespace zyga::files
