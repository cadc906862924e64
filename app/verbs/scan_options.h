#pragma once

#include <variant>

#include "app/arguments/arguments.h"
#include "core/files/json/json_write.h"
#include "core/files/scan/scan_set.h"

namespace zyga::app {

/// Reads a scan in a process of its own, with progress on stderr when that is a terminal. Throws FileError.
files::CleanScan readCleanScan(const std::string& file, double expected = 0.3);

/// Reads files and folders as files::readScanSet, for an animal that is there or for a plan, with progress on stderr
/// when that is a terminal. Throws FileError.
files::ScanSet readScans(const files::ScanSetWish& wish,
                         const std::variant<anatomy::BodyPlan, anatomy::Specimen>& animal);

/// Metres to one unit of the file: `--unit`, or the guess.
double unitOf(const Arguments& arguments, const files::CleanScan& scan);

/// {"from": triangles, "to": triangles, "error_mm": ...} of a scan that was thinned, else null. `unit` as unitOf.
files::json::Value thinnedJson(const files::CleanScan& scan, double unit);

}  // namespace zyga::app
