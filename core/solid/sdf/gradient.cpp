#include "core/solid/sdf/gradient.h"

#include <algorithm>

namespace zyga::solid {

namespace {

constexpr int kCorner[4][3] = {{1, -1, -1}, {-1, -1, 1}, {-1, 1, -1}, {1, 1, 1}};

struct Buffer {
  float x[kBatch], y[kBatch], z[kBatch];
  PointBatch batch(int count) const { return {x, y, z, count}; }
  void set(int i, const Point& p) {
    x[i] = static_cast<float>(p.x()), y[i] = static_cast<float>(p.y()), z[i] = static_cast<float>(p.z());
  }
};

}  // namespace

std::vector<float> sampleValues(const FieldNode& node, const std::vector<Point>& points) {
  std::vector<float> out(points.size());
  Buffer buffer;
  for (std::size_t from = 0; from < points.size(); from += kBatch) {
    const int count = static_cast<int>(std::min<std::size_t>(kBatch, points.size() - from));
    for (int i = 0; i < count; ++i) buffer.set(i, points[from + static_cast<std::size_t>(i)]);
    node.evaluate(buffer.batch(count), &out[from]);
  }
  return out;
}

FieldSamples sampleField(const FieldNode& node, const std::vector<Point>& points, double step) {
  FieldSamples samples{sampleValues(node, points), {points.size(), Eigen::Vector3f::Zero()}};
  std::vector<Point> moved(points.size());
  for (const auto& corner : kCorner) {
    const Eigen::Vector3d offset(corner[0], corner[1], corner[2]);
    for (std::size_t i = 0; i < points.size(); ++i) moved[i] = points[i] + step * offset;
    const std::vector<float> values = sampleValues(node, moved);
    for (std::size_t i = 0; i < points.size(); ++i)
      samples.gradient[i] += offset.cast<float>() * (values[i] / static_cast<float>(4 * step));
  }
  return samples;
}

void projectOnSurface(const FieldNode& node, std::vector<Point>& points, double step, double reach) {
  const FieldSamples samples = sampleField(node, points, step);
  for (std::size_t i = 0; i < points.size(); ++i) {
    const Eigen::Vector3d g = samples.gradient[i].cast<double>();
    // Near creases the averaged gradient is short; a full Newton step would overshoot.
    const double slope2 = std::max(g.squaredNorm(), 0.25);
    Eigen::Vector3d move = -samples.value[i] / slope2 * g;
    if (move.norm() > reach) move *= reach / move.norm();
    points[i] += move;
  }
}

}  // namespace zyga::solid
