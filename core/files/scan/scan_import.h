#pragma once

#include "core/files/scan/scan_precheck.h"
#include "core/files/scan/scan_reader.h"

namespace zyga::files {

/// Reads a mesh with the mesh library, in this very process: only for the process that may die of it. Opens no file
/// outside the scan's own folder, and none that is no plain file or larger than `largestFile` bytes. `head` is that of
/// the file. Throws FileError with the cause alone.
RawScan importScan(const std::filesystem::path& path, const ScanHead& head, std::uint64_t largestFile,
                   const task::Task& task = {});

}  // namespace zyga::files
