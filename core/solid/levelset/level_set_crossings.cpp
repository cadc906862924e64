#include "core/solid/levelset/level_set_crossings.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>

namespace zyga::solid {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3f;

Vector2d flat(const Vector3f& p) { return p.tail<2>().cast<double>(); }

/// Whether p lies to the left of the edge from a to b, in the plane of y and z. Always worked out in the same direction
/// of the edge, so that its two triangles agree to the last bit.
bool leftOf(std::uint32_t a, std::uint32_t b, const TriangleMesh& mesh, const Vector2d& p) {
  const bool turned = b < a;
  const Vector2d start = flat(mesh.positions[turned ? b : a]);
  const Vector2d way = flat(mesh.positions[turned ? a : b]) - start;
  const Vector2d to = p - start;
  return (way.x() * to.y() - way.y() * to.x() > 0) != turned;
}

struct Span {
  int first, last;
};

Span spanOf(float least, float most, float start, float spacing, int count) {
  return {std::max(0, static_cast<int>(std::floor((least - start) / spacing))),
          std::min(count - 1, static_cast<int>(std::ceil((most - start) / spacing)))};
}

void addTriangle(const TriangleMesh& mesh, const std::array<std::uint32_t, 3>& t, const LineGrid& lines,
                 std::vector<Crossing>& out) {
  const Vector3f &a = mesh.positions[t[0]], &b = mesh.positions[t[1]], &c = mesh.positions[t[2]];
  const Eigen::Vector3d normal = (b - a).cast<double>().cross((c - a).cast<double>());
  const Vector3f least = a.cwiseMin(b).cwiseMin(c), most = a.cwiseMax(b).cwiseMax(c);
  const Span y = spanOf(least.y(), most.y(), lines.y, lines.spacing, lines.countY);
  const Span z = spanOf(least.z(), most.z(), lines.z, lines.spacing, lines.countZ);
  for (int k = z.first; k <= z.last; ++k) {
    for (int j = y.first; j <= y.last; ++j) {
      const Vector2d p(lines.y + static_cast<float>(j) * lines.spacing,
                       lines.z + static_cast<float>(k) * lines.spacing);
      const bool left = leftOf(t[0], t[1], mesh, p);
      if (leftOf(t[1], t[2], mesh, p) != left || leftOf(t[2], t[0], mesh, p) != left) continue;
      const Vector2d to = p - flat(a);
      const double x = a.x() - (normal.y() * to.x() + normal.z() * to.y()) / normal.x();
      out.push_back({static_cast<std::uint32_t>(k * lines.countY + j),
                     std::clamp(static_cast<float>(x), least.x(), most.x()), left ? -1 : 1});
    }
  }
}

}  // namespace

std::vector<Crossing> crossings(const TriangleMesh& mesh, const LineGrid& lines) {
  std::vector<Crossing> out;
  for (const auto& t : mesh.triangles) addTriangle(mesh, t, lines, out);
  std::sort(out.begin(), out.end(),
            [](const Crossing& a, const Crossing& b) { return a.line != b.line ? a.line < b.line : a.x < b.x; });
  return out;
}

}  // namespace zyga::solid
