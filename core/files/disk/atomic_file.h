#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace zyga::files {

/// Replaces the file's content in one step: until all bytes are on disk the old file stays as it was. Throws FileError
/// that names the path and what stands in the way.
void writeWhole(const std::filesystem::path& path, std::string_view bytes);

/// Throws the FileError that writing there would end in as far as it can be told beforehand: no folder, no permission.
void checkPlace(const std::filesystem::path& path);

/// All bytes of a file. Throws FileError: not there, a folder, no permission.
std::string readWhole(const std::filesystem::path& path);

}  // namespace zyga::files
