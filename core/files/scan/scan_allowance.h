#pragma once

#include <cstdint>

#include "core/files/scan/scan_precheck.h"

/// What reading a scan may take, by how much there is to read.
namespace zyga::files {

/// Whole seconds of processor time for so many triangles: `base`, and `perMillion` for every million of them.
std::uint64_t secondsAllowed(double base, double perMillion, std::uint64_t triangles);

/// The most triangles that a mesh file of so many bytes can hold, in whatever format.
std::uint64_t mostTrianglesIn(std::uint64_t bytes);

/// Bytes that reading what the head of a file declares takes, beside the program itself; 0 where it declares nothing.
/// An estimate within a tenth for positions alone; colours and normals of vertices come on top.
std::uint64_t memoryNeeded(const ScanHead& head);

}  // namespace zyga::files
