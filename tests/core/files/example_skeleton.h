#pragma once

#include <memory>

#include "core/files/export/mesh_export.h"

namespace zyga::files::example {

/// A closed box of the given half sizes (m) whose sides are cut into n x n squares, vertices shared.
inline solid::TriangleMesh boxMesh(const Eigen::Vector3d& half, int n) {
  solid::TriangleMesh mesh;
  std::map<std::array<int, 3>, std::uint32_t> known;
  const auto vertex = [&](const std::array<int, 3>& grid) {
    const auto [entry, isNew] = known.try_emplace(grid, static_cast<std::uint32_t>(mesh.positions.size()));
    if (isNew) {
      Eigen::Vector3d p;
      for (int i = 0; i < 3; ++i) p(i) = half(i) * (2.0 * grid[static_cast<std::size_t>(i)] / n - 1);
      mesh.positions.push_back(p.cast<float>());
    }
    return entry->second;
  };
  for (std::size_t axis = 0; axis < 3; ++axis) {
    for (const int side : {0, n}) {
      for (int u = 0; u < n; ++u) {
        for (int v = 0; v < n; ++v) {
          const auto corner = [&](int du, int dv) {
            std::array<int, 3> grid{};
            grid[axis] = side;
            grid[(axis + 1) % 3] = u + du;
            grid[(axis + 2) % 3] = v + dv;
            return vertex(grid);
          };
          const auto a = corner(0, 0), b = corner(1, 0), c = corner(1, 1), d = corner(0, 1);
          if (side == 0) {
            mesh.triangles.insert(mesh.triangles.end(), {{a, c, b}, {a, d, c}});
          } else {
            mesh.triangles.insert(mesh.triangles.end(), {{a, b, c}, {a, c, d}});
          }
        }
      }
    }
  }
  solid::computeNormals(mesh);
  return mesh;
}

/// Five bones of a chain with a branch; `rib.D3.L` has grown into D3 and has no mesh, `tibia.L` hangs on `femur.L`,
/// which has none either.
struct Skeleton {
  anatomy::Specimen specimen;
  kinematics::Placement X_WB;
  BoneMeshes meshes;
  std::vector<Eigen::Vector3d> halves;

  inline static const Eigen::Vector3d kNoMesh = Eigen::Vector3d::Zero();

  Skeleton() {
    specimen.name = "Invented beast";
    add("S1", {}, {0.15, 0.2, 0.25}, anatomy::Evidence::Found);
    add("D3", 0, {0.3, 0.1, 0.2}, anatomy::Evidence::Inferred);
    add("rib.D3.L", 1, kNoMesh, anatomy::Evidence::Inferred);
    add("femur.L", 0, kNoMesh, anatomy::Evidence::Mirrored);
    add("tibia.L", 3, {0.05, 0.06, 0.5}, anatomy::Evidence::Found);
  }

  void add(const std::string& id, std::optional<std::size_t> parent, const Eigen::Vector3d& half,
           anatomy::Evidence evidence) {
    const auto i = specimen.bones.size();
    anatomy::Bone bone;
    bone.id = id;
    bone.evidence = evidence;
    specimen.bones.push_back(bone);
    if (parent) {
      anatomy::Joint joint;
      joint.id = "to " + id;
      joint.proximal = {*parent};
      joint.distal = {i};
      specimen.joints.push_back(joint);
    }
    const auto x = static_cast<double>(i);
    Eigen::Isometry3d X = Eigen::Isometry3d::Identity();
    X.translation() = Eigen::Vector3d(1.5 * x - 4, 0.3 * x, 2.5 - 0.2 * x);
    X.linear() = Eigen::AngleAxisd(0.4 * x + 0.2, Eigen::Vector3d(1, -2, 0.5).normalized()).toRotationMatrix();
    X_WB.push_back(X);
    halves.push_back(half);
    if (half.isZero(0)) {
      meshes.push_back(nullptr);
      return;
    }
    auto mesh = std::make_shared<solid::BoneMesh>();
    mesh->levels = {boxMesh(half, 3), boxMesh(half, 1)};
    meshes.push_back(mesh);
  }

  std::size_t vertices() const {
    return count([](const auto& mesh) { return mesh.positions.size(); });
  }
  std::size_t triangles() const {
    return count([](const auto& mesh) { return mesh.triangles.size(); });
  }

  double volume() const {
    double sum = 0;
    for (const auto& half : halves) sum += 8 * half.prod();
    return sum;
  }

  /// Of all meshes, world, m.
  Eigen::AlignedBox3d bounds() const {
    Eigen::AlignedBox3d box;
    for (std::size_t i = 0; i < halves.size(); ++i) {
      for (int corner = 0; corner < 8 && meshes[i]; ++corner) {
        const Eigen::Vector3d sign(corner & 1 ? 1 : -1, corner & 2 ? 1 : -1, corner & 4 ? 1 : -1);
        box.extend(X_WB[i] * sign.cwiseProduct(halves[i]));
      }
    }
    return box;
  }

 private:
  template <class Count>
  std::size_t count(Count of) const {
    std::size_t sum = 0;
    for (const auto& mesh : meshes) sum += mesh ? of(mesh->levels.front()) : 0;
    return sum;
  }
};

}  // namespace zyga::files::example
