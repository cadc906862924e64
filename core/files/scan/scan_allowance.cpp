#include "core/files/scan/scan_allowance.h"

#include <algorithm>
#include <cmath>

namespace zyga::files {

std::uint64_t secondsAllowed(double base, double perMillion, std::uint64_t triangles) {
  return static_cast<std::uint64_t>(std::max(1.0, std::ceil(base + perMillion * static_cast<double>(triangles) / 1e6)));
}

std::uint64_t mostTrianglesIn(std::uint64_t bytes) {
  // glTF with short indices: half a vertex of 12 bytes and three indices of 2.
  constexpr std::uint64_t kLeast = 12;
  return bytes / kLeast;
}

std::uint64_t memoryNeeded(const ScanHead& head) {
  // Of the mesh library a list of corners a face (16 bytes and a block of 32) and a position a vertex, of our own three
  // indices and a position; measured on files of a million triangles.
  constexpr std::uint64_t kFace = 60, kVertex = 24;
  // STL has three vertices of its own a triangle, and a normal at each.
  constexpr std::uint64_t kStlTriangle = 160;
  if (head.stl) return kStlTriangle * head.triangles;
  return head.declares ? kFace * head.triangles + kVertex * head.vertices : 0;
}

}  // namespace zyga::files
