#pragma once

#include "core/files/project/project.h"
#include "core/study/uncertainty/spread.h"

namespace zyga::files {

/// What the project's animal was built from, and how another one is built of other measures, its scans in it. A copy:
/// it may go to another thread.
study::Measures measuresOf(const Project& project);

}  // namespace zyga::files
