#pragma once

#include <string>

#include "core/files/json/json_write.h"
#include "core/range/assumptions.h"

namespace zyga::app {

/// "  assuming zygapophyseal overlap of at least 50 % (by length), ...\n", a line for people.
std::string assumptionsText(const range::Assumptions& assumptions);
/// {"overlap_by": "length", "least_overlap_percent": 50, ...}: the keys and units of the project file.
files::json::Value assumptionsJson(const range::Assumptions& assumptions);
/// What a range from bare bones cannot know (Kuznetsov & Tereschenko 2010; Cobley et al. 2013; Hutson & Hutson 2012).
std::string caution();

}  // namespace zyga::app
