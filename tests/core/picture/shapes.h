#pragma once

#include <cmath>
#include <memory>
#include <numbers>
#include <random>

#include "core/picture/picture.h"

namespace zyga::picture::test {

using MeshPointer = std::shared_ptr<const solid::TriangleMesh>;

/// Axis-aligned box about the origin, edges in m.
inline MeshPointer box(double x, double y, double z) {
  auto mesh = std::make_shared<solid::TriangleMesh>();
  for (int i = 0; i < 8; ++i)
    mesh->positions.emplace_back((i & 1 ? 0.5 : -0.5) * x, (i & 2 ? 0.5 : -0.5) * y, (i & 4 ? 0.5 : -0.5) * z);
  mesh->triangles = {{0, 2, 1}, {1, 2, 3}, {4, 5, 6}, {5, 7, 6}, {0, 1, 4}, {1, 5, 4},
                     {2, 6, 3}, {3, 6, 7}, {0, 4, 2}, {2, 4, 6}, {1, 3, 5}, {3, 7, 5}};
  return mesh;
}

/// Sphere about the origin with normals, radius in m.
inline MeshPointer sphere(double radius, int rings = 24) {
  auto mesh = std::make_shared<solid::TriangleMesh>();
  const int sectors = 2 * rings;
  for (int i = 0; i <= rings; ++i)
    for (int j = 0; j < sectors; ++j) {
      const double t = std::numbers::pi * i / rings, p = std::numbers::pi * j / rings;
      const Eigen::Vector3d d(std::sin(t) * std::cos(p), std::sin(t) * std::sin(p), std::cos(t));
      mesh->normals.push_back(d.cast<float>());
      mesh->positions.push_back((radius * d).cast<float>());
    }
  const auto id = [&](int i, int j) { return static_cast<std::uint32_t>(i * sectors + j % sectors); };
  for (int i = 0; i < rings; ++i)
    for (int j = 0; j < sectors; ++j) {
      mesh->triangles.push_back({id(i, j), id(i + 1, j), id(i + 1, j + 1)});
      mesh->triangles.push_back({id(i, j), id(i + 1, j + 1), id(i, j + 1)});
    }
  return mesh;
}

inline Eigen::Vector3d randomPoint(std::mt19937& random, double half) {
  std::uniform_real_distribution<double> u(-half, half);
  const double x = u(random), y = u(random), z = u(random);
  return {x, y, z};
}

/// Unconnected triangles with corners in a cube of 2 m about the origin.
inline MeshPointer triangleSoup(std::mt19937& random, int count) {
  auto mesh = std::make_shared<solid::TriangleMesh>();
  for (int i = 0; i < count; ++i) {
    const Eigen::Vector3d middle = randomPoint(random, 0.8);
    const auto first = static_cast<std::uint32_t>(mesh->positions.size());
    for (int k = 0; k < 3; ++k) mesh->positions.push_back((middle + randomPoint(random, 0.2)).cast<float>());
    mesh->triangles.push_back({first, first + 1, first + 2});
  }
  return mesh;
}

inline Eigen::Isometry3d at(double x, double y, double z) {
  Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
  X.translation() = Eigen::Vector3d(x, y, z);
  return X;
}

inline Eigen::Isometry3d randomFrame(std::mt19937& random) {
  Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
  const Eigen::Vector3d axis = randomPoint(random, 1).normalized();
  std::uniform_real_distribution<double> angle(-3, 3);
  X.rotate(Eigen::AngleAxisd(angle(random), axis));
  X.pretranslate(randomPoint(random, 2));
  return X;
}

inline Eigen::AlignedBox3d worldBox(const std::vector<Instance>& instances) {
  Eigen::AlignedBox3d box;
  for (const Instance& i : instances)
    for (const Eigen::Vector3f& p : i.mesh->positions) box.extend(i.X_WB * p.cast<double>());
  return box;
}

/// Options of a small and quick picture.
inline PictureOptions quick(int width, int height) {
  PictureOptions options;
  options.width = width;
  options.height = height;
  options.samplesPerPixel = 4;
  options.occlusionRays = 8;
  options.shadowRays = 2;
  return options;
}

struct Pixel {
  int red, green, blue, alpha;
  int sum() const { return red + green + blue; }
  bool operator==(const Pixel&) const = default;
};

inline Pixel pixel(const Image& image, int x, int y) {
  const std::uint8_t* p = &image.rgba[4 * (static_cast<std::size_t>(y) * image.width + x)];
  return {p[0], p[1], p[2], p[3]};
}

/// Mean brightness of a square of pixels, 0 to 255.
inline double brightness(const Image& image, int x, int y, int half = 2) {
  double sum = 0;
  for (int j = y - half; j <= y + half; ++j)
    for (int i = x - half; i <= x + half; ++i) sum += pixel(image, i, j).sum() / 3.0;
  return sum / ((2 * half + 1) * (2 * half + 1));
}

}  // namespace zyga::picture::test
