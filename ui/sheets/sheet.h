#pragma once

#include <optional>

#include "ui/sheets/page.h"
#include "ui/sheets/sheet_scene.h"

namespace zyga::ui {

/// Draws a sheet; nothing when cancelled. Throws std::invalid_argument when the specimen cannot be drawn in this layout
/// (no bones with a mesh), or not at the chosen scale.
std::optional<Page> drawSheet(const SheetScene& scene, const files::Sheet& sheet, const SheetWork& work);

/// The body around the bones, which takes seconds and can serve several sheets of one pose; none where this sheet draws
/// none, and when cancelled. Throws reason::Failure as solid::bodyGuide does.
std::shared_ptr<const solid::TriangleMesh> bodyAround(const SheetScene& scene, const files::Sheet& sheet,
                                                      const task::Task& task);

/// Width and height of a paper in landscape format, mm (ISO 216).
QSizeF sizeOf(files::SheetPaper paper);

}  // namespace zyga::ui
