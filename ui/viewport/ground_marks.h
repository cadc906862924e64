#pragma once

#include "ui/ground/ground_state.h"
#include "ui/theme/theme.h"
#include "ui/viewport/scene.h"

namespace zyga::ui {

/// Outline of a footprint on the ground, m, counter-clockwise: egg-shaped, broad in front, fore prints wider than long.
/// A width that was not typed is drawn in proportion (practice), a print without a length as a
/// small ring.
std::vector<Eigen::Vector2d> printOutline(const study::PlacedPrint& print);

/// Footprints, left ones filled and right ones hollow, the steps between them, and the polygon that carries the animal.
std::vector<GroundMark> groundMarks(const GroundState& ground, const GroundShown& shown, const Theme& theme);

}  // namespace zyga::ui
