#include "core/solid/facets/missing_parts.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>

#include "core/solid/facets/face_surface.h"

namespace zyga::solid {
namespace {

using Eigen::Vector3d;

// Program defaults, no source.
constexpr double kMeetsWithin = 0.2;         ///< of the bone's size
constexpr double kSpread = 0.07;             ///< of the bone's size, between points that stand for the surface
constexpr std::size_t kMostMirrored = 4000;  ///< points that are mirrored
constexpr int kMostCuts = 24;                ///< of a triangle's side

/// Points of the surface in the bone's frame, each for so much area.
struct SpreadPoints {
  std::vector<Vector3d> places;
  std::vector<double> areas;
};

SpreadPoints spreadOver(const TriangleMesh& mesh, const Eigen::Affine3d& X_BS, double spacing) {
  SpreadPoints out;
  for (const auto& t : mesh.triangles) {
    const Vector3d a = X_BS * mesh.positions[t[0]].cast<double>(), b = X_BS * mesh.positions[t[1]].cast<double>(),
                   c = X_BS * mesh.positions[t[2]].cast<double>();
    const double longest = std::max({(b - a).norm(), (c - b).norm(), (a - c).norm()});
    const int parts = std::clamp(static_cast<int>(std::ceil(longest / spacing)), 1, kMostCuts);
    const double area = (b - a).cross(c - a).norm() / 2 / (parts * parts);
    const auto add = [&](double u, double v) {
      out.places.push_back(a + u * (b - a) + v * (c - a));
      out.areas.push_back(area);
    };
    for (int i = 0; i < parts; ++i)
      for (int j = 0; i + j < parts; ++j) {
        add((i + 1.0 / 3) / parts, (j + 1.0 / 3) / parts);
        if (i + j + 1 < parts) add((i + 2.0 / 3) / parts, (j + 2.0 / 3) / parts);
      }
  }
  return out;
}

}  // namespace

std::optional<OneSidedness> oneSidedness(const anatomy::Scan& scan, const TriangleMesh& mesh) {
  if (!scan.placed || scan.bone.side != anatomy::Side::Midline || mesh.empty()) return std::nullopt;
  const Eigen::Affine3d X_BS = boneFromScan(scan);
  const double size = surfaceSize(mesh) * std::cbrt(std::abs(X_BS.linear().determinant()));
  if (!(size > 0)) return std::nullopt;
  const SpreadPoints points = spreadOver(mesh, X_BS, kSpread * size);
  const PointTree tree(points.places);
  double total = 0;
  for (const double area : points.areas) total += area;
  struct Quarter {
    double there = 0, alone = 0;
  };
  std::array<Quarter, 4> quarters;  // left or right, cranial or caudal
  const auto quarterOf = [](const Vector3d& p) -> std::size_t { return (p.y() > 0 ? 0U : 2U) + (p.x() > 0 ? 0U : 1U); };
  double passed = 0, next = 0, mirrored = 0, alone = 0;
  for (std::size_t i = 0; i < points.places.size(); ++i) {
    if ((passed += points.areas[i]) < next) continue;
    const double weight = total / static_cast<double>(kMostMirrored);
    while (next <= passed) next += weight;
    const Vector3d& p = points.places[i];
    Quarter& quarter = quarters[quarterOf(p)];
    const Vector3d image(p.x(), -p.y(), p.z());
    const bool meets = tree.nearest(image, kMeetsWithin * size, [](std::uint32_t) { return true; }).has_value();
    quarter.there += 1;
    mirrored += 1;
    if (meets) continue;
    quarter.alone += 1;
    alone += 1;
  }
  const auto missingAt = [&](std::size_t opposite) {
    return quarters[opposite].there > 0 ? quarters[opposite].alone / quarters[opposite].there : 0;
  };
  return OneSidedness{mirrored > 0 ? alone / mirrored : 0, missingAt(2), missingAt(3), missingAt(0), missingAt(1)};
}

}  // namespace zyga::solid
