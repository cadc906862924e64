#pragma once

#include <vector>

#include "core/solid/sdf/node.h"

namespace zyga::solid {

/// Values and gradients of a field at any number of points, from four samples at the corners of a small tetrahedron
/// around each point and one in its middle.
struct FieldSamples {
  std::vector<float> value;
  std::vector<Eigen::Vector3f> gradient;
};

FieldSamples sampleField(const FieldNode& node, const std::vector<Point>& points, double step);
std::vector<float> sampleValues(const FieldNode& node, const std::vector<Point>& points);

/// Moves points onto the surface along the gradient, by at most `reach` (m).
void projectOnSurface(const FieldNode& node, std::vector<Point>& points, double step, double reach);

}  // namespace zyga::solid
