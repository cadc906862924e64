#pragma once

#include <optional>

namespace zyga::study {

/// Angle at the middle one of three successive prints, rad, by the cosine rule from the two paces and the stride
/// between them (m, or any one unit). Nothing when no such triangle exists or a length is not positive.
std::optional<double> paceAngulation(double pace, double nextPace, double stride);

}  // namespace zyga::study
