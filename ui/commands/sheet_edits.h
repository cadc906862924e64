#pragma once

#include <QString>

#include "core/files/project/sheet.h"

namespace zyga::ui {

class Document;

/// One undoable step to another sheet; none when nothing changes. Steps with the same non-zero mergeKey that follow
/// each other become one.
void changeSheet(Document& document, const files::Sheet& sheet, const QString& text, int mergeKey = 0);

}  // namespace zyga::ui
