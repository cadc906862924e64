#pragma once

#include <QFont>

namespace zyga::ui {

/// Steps of the layout grid, px.
inline constexpr int kGridStep = 4;
inline constexpr int kGap = 8;
inline constexpr int kWideGap = 16;

/// `base`, or where its figures differ in width the nearest installed face of the same size whose figures do not, so
/// that numbers stand still while they change.
QFont figureFont(const QFont& base);
bool hasTabularFigures(const QFont& font);
/// `base` in the weight and size of panel titles.
QFont titleFont(const QFont& base);
/// `base` in the size of labels inside drawings and of secondary words.
QFont smallFont(const QFont& base);

}  // namespace zyga::ui
