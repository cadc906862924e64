#pragma once

#include <span>

namespace zyga::ui {

/// The forms of what core says of files and of work that cannot be done: "cannot open /a/b.zyga: there is no such
/// file". The first that fits is taken. %1 to %6 and what stands in quotes are the file's own and stay as they are; %7
/// and on are said again, each by itself.
std::span<const char* const> faultForms();

}  // namespace zyga::ui
