#pragma once

#include <filesystem>

#include "core/files/scan/scan_reader.h"

/// The file in which the reading process hands a mesh back: a head of fixed size with the counts, then positions, then
/// triangles, then the parts with their names, in this machine's own byte order.
namespace zyga::files {

inline constexpr std::size_t kLongestPartName = 256;  ///< bytes

/// Throws FileError when it cannot be written.
void writeWire(const RawScan& scan, const std::filesystem::path& path);

/// Throws FileError when the file is not exactly what writeWire makes: another version, counts that do not give its
/// size, triangles that name vertices which are not there.
RawScan readWire(const std::filesystem::path& path);

}  // namespace zyga::files
