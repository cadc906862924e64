#pragma once

#include <span>

namespace zyga::ui {

/// The forms of core's sentences, with %1 to %4 for their parts; the first that fits is meant.
std::span<const char* const> coreForms();

}  // namespace zyga::ui
