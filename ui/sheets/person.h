#pragma once

#include <QPainterPath>

namespace zyga::ui {

/// A standing adult as a plain shape of height 1: feet at (0, 0), head at (0, -1), as pages count downwards.
QPainterPath personPath();

}  // namespace zyga::ui
