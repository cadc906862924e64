#pragma once

#include <optional>

#include "ui/sheets/page.h"
#include "ui/sheets/sheet_scene.h"

namespace zyga::ui {

/// Draws a sheet; nothing when cancelled. Throws std::invalid_argument when the specimen cannot be drawn in this layout
/// (no bones with a mesh), or not at the chosen scale.
std::optional<Page> drawSheet(const SheetScene& scene, const files::Sheet& sheet, const SheetWork& work);

/// Width and height of a paper in landscape format, mm (ISO 216).
QSizeF sizeOf(files::SheetPaper paper);

}  // namespace zyga::ui
