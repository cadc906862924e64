#pragma once

namespace zyga::solid {

/// The cubic from b to c whose slopes there are those of the chords a-c and b-d (Catmull & Rom 1974); `t` from 0 to 1.
template <class T>
T catmullRom(const T& a, const T& b, const T& c, const T& d, double t) {
  const double t2 = t * t, t3 = t2 * t;
  return 0.5 * (2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t2 + (3 * b - a - 3 * c + d) * t3);
}

}  // namespace zyga::solid
