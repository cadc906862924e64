#pragma once

#include "core/study/reach/elevation.h"
#include "ui/plots/plot_ink.h"

namespace zyga::ui {

/// Kind of line of each way of carrying the neck: full, dashed, dotted, both, and heavy for the present one.
QPen carriagePen(study::NeckCarriage which, const PlotInk& ink);

}  // namespace zyga::ui
