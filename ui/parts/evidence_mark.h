#pragma once

#include <QPixmap>

#include "core/anatomy/specimen.h"

class QComboBox;
class QWidget;

namespace zyga::ui {

/// The sign of an evidence status: a chip in the bone's tone; hatched where the bone was borrowed from elsewhere, with
/// a broken edge where it is inferred. `size` in device-independent pixels.
QPixmap evidenceMark(anatomy::Evidence evidence, int size, qreal devicePixelRatio);

/// The status in a word or two, short enough for a narrow column.
QString evidenceWord(anatomy::Evidence evidence);
/// A choice among all statuses, each with its mark; the data of an item is the status as a number.
QComboBox* evidenceChoice(QWidget* parent = nullptr);
/// Paints the marks again, in the colours of the theme in use.
void paintEvidenceMarks(QComboBox& choice);

}  // namespace zyga::ui
