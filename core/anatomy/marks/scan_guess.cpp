#include "core/anatomy/marks/scan_guess.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace zyga::anatomy {

double metresOf(ScanUnit unit) {
  if (unit == ScanUnit::Millimetre) return 1e-3;
  return unit == ScanUnit::Centimetre ? 1e-2 : 1.0;
}

std::string_view toText(ScanUnit unit) {
  if (unit == ScanUnit::Millimetre) return "mm";
  return unit == ScanUnit::Centimetre ? "cm" : "m";
}

UnitGuess guessUnit(double extent, double expected) {
  constexpr double kSure = 0.7;  // decades between the best and the next
  std::array<std::pair<double, ScanUnit>, 3> off;
  std::size_t i = 0;
  for (const ScanUnit unit : {ScanUnit::Millimetre, ScanUnit::Centimetre, ScanUnit::Metre})
    off[i++] = {std::abs(std::log10(extent * metresOf(unit) / expected)), unit};
  std::sort(off.begin(), off.end());
  return {off[0].second, off[1].first - off[0].first > kSure};
}

ScanUp guessUp(std::string_view ending) {
  std::string lower(ending);
  for (char& c : lower)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c + 32);
  for (const std::string_view known : {".gltf", ".glb", ".dae", ".obj", ".fbx"})
    if (lower == known) return ScanUp::Y;
  return ScanUp::Z;
}

}  // namespace zyga::anatomy
