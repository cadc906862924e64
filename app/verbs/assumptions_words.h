#pragma once

#include <string>

#include "core/range/assumptions.h"

namespace zyga::app {

/// "  assuming: facets share at least 50 % by length, ...", a line for people.
std::string assumptionsText(const range::Assumptions& assumptions);
/// {"overlap_by": "length", "least_overlap_percent": 50, ...}: the keys and units of the project file.
std::string assumptionsJson(const range::Assumptions& assumptions);

}  // namespace zyga::app
