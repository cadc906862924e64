#pragma once

#include <array>

#include "core/anatomy/specimen.h"

namespace zyga::files {

/// Tone of a bone in pictures and exported materials, sRGB 0 to 1: what was found, what was mirrored or borrowed, and
/// what was inferred can be told apart.
std::array<float, 3> boneTone(anatomy::Evidence evidence);

/// One channel of sRGB to linear light (IEC 61966-2-1).
float linearFromSrgb(float channel);

}  // namespace zyga::files
