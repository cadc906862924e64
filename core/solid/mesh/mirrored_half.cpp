#include "core/solid/mesh/mirrored_half.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/anatomy/landmarks.h"

namespace zyga::solid {
namespace {

using anatomy::Bone;
using anatomy::Facet;
using Eigen::Vector3d;
using Eigen::Vector3f;

/// Corners nearer than this to the mid-plane are laid into it, m.
constexpr float kInPlane = 1e-4F;

Vector3d acrossMidplane(const Vector3d& p) { return {p.x(), -p.y(), p.z()}; }
Vector3f acrossMidplane(const Vector3f& p) { return {p.x(), -p.y(), p.z()}; }

bool alike(const Facet& a, const Facet& b, double tolerance) {
  return (a.centre - b.centre).norm() <= tolerance && (a.normal - b.normal).norm() <= 1e-6 &&
         std::abs(a.length() - b.length()) <= tolerance && std::abs(a.width() - b.width()) <= tolerance;
}

/// The part of a mesh to the left of the mid-plane.
class LeftHalf {
 public:
  explicit LeftHalf(const TriangleMesh& mesh) : corners_(mesh.positions) {
    for (Vector3f& p : corners_) {
      if (std::abs(p.y()) < kInPlane) p.y() = 0;
    }
    kept_.assign(corners_.size(), kNone);
    for (const auto& triangle : mesh.triangles) clip(triangle);
  }

  TriangleMesh withMirrorImage() && {
    std::vector<std::uint32_t> image(half_.positions.size());
    const std::size_t own = half_.positions.size();
    for (std::uint32_t i = 0; i < own; ++i) {
      const Vector3f p = half_.positions[i];
      image[i] = p.y() == 0 ? i : static_cast<std::uint32_t>(half_.positions.size());
      if (p.y() != 0) half_.positions.push_back(acrossMidplane(p));
    }
    const auto left = half_.triangles;
    for (const auto& t : left) half_.triangles.push_back({image[t[0]], image[t[2]], image[t[1]]});
    return std::move(half_);
  }

 private:
  static constexpr std::uint32_t kNone = ~0U;

  void clip(const std::array<std::uint32_t, 3>& t) {
    std::vector<std::uint32_t> polygon;
    bool anyLeft = false;
    for (std::size_t k = 0; k < 3; ++k) {
      const std::uint32_t a = t[k], b = t[(k + 1) % 3];
      const float ya = corners_[a].y(), yb = corners_[b].y();
      anyLeft = anyLeft || ya > 0;
      if (ya >= 0) polygon.push_back(corner(a));
      if (ya * yb < 0) polygon.push_back(crossing(a, b));
    }
    if (!anyLeft) return;
    for (std::size_t k = 2; k < polygon.size(); ++k)
      half_.triangles.push_back({polygon[0], polygon[k - 1], polygon[k]});
  }

  std::uint32_t add(const Vector3f& p) {
    half_.positions.push_back(p);
    return static_cast<std::uint32_t>(half_.positions.size() - 1);
  }
  std::uint32_t corner(std::uint32_t i) {
    if (kept_[i] == kNone) kept_[i] = add(corners_[i]);
    return kept_[i];
  }
  std::uint32_t crossing(std::uint32_t a, std::uint32_t b) {
    const auto key = std::minmax(a, b);
    const auto [at, isNew] = crossings_.try_emplace({key.first, key.second}, 0);
    if (isNew) {
      const Vector3f &p = corners_[key.first], &q = corners_[key.second];
      Vector3f between = p + (q - p) * (p.y() / (p.y() - q.y()));
      between.y() = 0;
      at->second = add(between);
    }
    return at->second;
  }

  std::vector<Vector3f> corners_;
  std::vector<std::uint32_t> kept_;
  std::map<std::pair<std::uint32_t, std::uint32_t>, std::uint32_t> crossings_;
  TriangleMesh half_;
};

}  // namespace

bool mirrorsItself(const Bone& bone, double tolerance) {
  if (bone.name.side != anatomy::Side::Midline) return false;
  for (const auto& [name, place] : bone.landmarks) {
    const auto other = bone.landmarks.find(anatomy::otherSide(name));
    if (other == bone.landmarks.end() || (other->second - acrossMidplane(place)).norm() > tolerance) return false;
  }
  return std::all_of(bone.facets.begin(), bone.facets.end(), [&](const Facet& facet) {
    const Facet image = mirrored(facet);
    const Facet* other = bone.facet(image.role);
    return other && alike(image, *other, tolerance);
  });
}

std::vector<bool> bonesThatMirrorThemselves(const anatomy::Specimen& specimen) {
  std::vector<bool> out;
  for (const Bone& bone : specimen.bones) out.push_back(mirrorsItself(bone));
  return out;
}

std::optional<TriangleMesh> mirroredHalf(const TriangleMesh& mesh, double share) {
  if (mesh.empty()) return std::nullopt;
  TriangleMesh out = LeftHalf(mesh).withMirrorImage();
  const MeshHealth health = examine(out);
  const double whole = volume(mesh);
  if (!health.closed || !health.oriented || std::abs(health.volume - whole) > share * whole) return std::nullopt;
  return out;
}

}  // namespace zyga::solid
