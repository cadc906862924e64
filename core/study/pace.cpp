#include "core/study/pace.h"

#include <cmath>

namespace zyga::study {

std::optional<double> paceAngulation(double pace, double nextPace, double stride) {
  if (!(pace > 0 && nextPace > 0 && stride > 0)) return {};
  const double cosine = (pace * pace + nextPace * nextPace - stride * stride) / (2 * pace * nextPace);
  if (std::abs(cosine) > 1) return {};
  return std::acos(cosine);
}

}  // namespace zyga::study
