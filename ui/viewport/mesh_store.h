#pragma once

#include <chrono>
#include <cstdint>
#include <deque>
#include <memory>
#include <vector>

#include "core/files/export/mesh_export.h"
#include "ui/viewport/gl.h"

namespace zyga::ui {

/// The bones' meshes at their levels of detail, carried to the graphics memory bit by bit: coarsest levels of all bones
/// first, finer ones when they are asked for. The context must be current, in the destructor too.
class MeshStore {
 public:
  explicit MeshStore(Gl& gl) : gl_(gl) {}

  void setMeshes(const files::BoneMeshes& meshes);
  /// Carries meshes over until the time is up or none waits.
  void upload(std::chrono::milliseconds budget);
  bool waiting() const { return !waiting_.empty(); }
  /// Counts up whenever there is something new to draw.
  std::uint64_t revision() const { return revision_; }

  /// Counts up when bones come where none were, or all go; not when others take their places.
  std::uint64_t arrivals() const { return arrivals_; }
  /// Whether something can be drawn of every bone.
  bool complete() const;

  /// What a bone takes up, in its own frame, m: a sphere and a box around the same centre.
  struct Sphere {
    Eigen::Vector3f p_BCentre = Eigen::Vector3f::Zero();
    float radius = 0;
    Eigen::AlignedBox3f box;
  };
  bool has(anatomy::BoneIndex bone) const;
  const Sphere& sphere(anatomy::BoneIndex bone) const { return bones_[bone.value].sphere; }

  /// The coarsest level whose triangles have edges of at most `edge` m, or the nearest one that has been carried over,
  /// or what was there before; the wanted one is queued. Null while nothing of the bone is there.
  GlMesh* level(anatomy::BoneIndex bone, double edge);
  GlMesh* coarsest(anatomy::BoneIndex bone);

 private:
  struct Level {
    double edge = 0;  ///< mean length of a triangle's edge, m
    bool queued = false;
    std::unique_ptr<GlMesh> mesh;
  };
  struct BoneLevels {
    std::shared_ptr<const solid::BoneMesh> source;
    std::vector<Level> levels;            ///< finest first
    std::unique_ptr<GlMesh> predecessor;  ///< what was there before, until a level of this one is
    Sphere sphere;
  };
  static std::unique_ptr<GlMesh> takeAnyLevel(BoneLevels& bone);
  void want(std::size_t bone, std::size_t level);

  Gl& gl_;
  std::vector<BoneLevels> bones_;
  std::deque<std::pair<std::size_t, std::size_t>> waiting_;
  std::uint64_t revision_ = 0, arrivals_ = 0;
};

}  // namespace zyga::ui
