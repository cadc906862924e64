#pragma once

#include <span>

namespace zyga::ui {

/// The forms of what core says of tables: faults with their mend, prints on the ground. What stands in quotes is the
/// table's own and stays as it is.
std::span<const char* const> tableForms();

}  // namespace zyga::ui
