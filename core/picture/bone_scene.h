#pragma once

#include <embree3/rtcore.h>

#include <Eigen/Geometry>
#include <limits>
#include <memory>
#include <optional>
#include <vector>

#include "core/picture/picture.h"
#include "core/reason/reason.h"

namespace zyga::picture {

/// The processor lacks what the ray tracer needs.
inline constexpr reason::Id kNoRayTracer{"picture.no-ray-tracer", 0};

struct Ray {
  Eigen::Vector3f origin;
  Eigen::Vector3f direction;  ///< unit
};

/// Where a ray meets a bone.
struct SurfaceHit {
  std::size_t instance = 0;
  std::size_t triangle = 0;
  float distance = 0;  ///< m
  Eigen::Vector3f p_W;
  Eigen::Vector3f face_W;    ///< unit normal of the triangle, towards the ray's origin
  Eigen::Vector3f normal_W;  ///< unit normal from the mesh's own normals where it has them, towards the ray's origin
};

/// The posed bones as one Embree scene: each distinct mesh is built once and placed by its instances.
class BoneScene {
 public:
  enum class Build {
    Repeatable,  ///< on one thread: the same tree, and so the same hits, every time
    Fast         ///< on all cores
  };
  using Meshes = std::vector<std::shared_ptr<const solid::TriangleMesh>>;

  /// Meshes and frames by instance; instances with no mesh or an empty one are never hit. Throws std::runtime_error
  /// when Embree cannot start.
  BoneScene(Meshes meshes, const std::vector<Eigen::Isometry3d>& X_WB, Build build);

  /// Frames by instance. Cheap: only the tree over the instances is built anew.
  void move(const std::vector<Eigen::Isometry3d>& X_WB);

  std::optional<SurfaceHit> nearest(const Ray& ray) const;
  /// Distance to the first bone within `reach` (m), or `reach`.
  float clearance(const Ray& ray, float reach) const;
  bool blocked(const Ray& ray, float reach = std::numeric_limits<float>::infinity()) const;

  /// A world box around all instances, m, not always the tightest; empty when there is nothing to hit.
  const Eigen::AlignedBox3d& bounds() const { return bounds_; }
  const Meshes& meshes() const { return meshes_; }
  const std::vector<Eigen::Isometry3d>& frames() const { return X_WB_; }

 private:
  struct Release {
    void operator()(RTCDevice device) const { rtcReleaseDevice(device); }
    void operator()(RTCScene scene) const { rtcReleaseScene(scene); }
  };
  using Device = std::unique_ptr<std::remove_pointer_t<RTCDevice>, Release>;
  using Scene = std::unique_ptr<std::remove_pointer_t<RTCScene>, Release>;

  Scene buildMesh(const solid::TriangleMesh& mesh) const;
  void addInstances();
  bool present(std::size_t instance) const { return meshes_[instance] && !meshes_[instance]->empty(); }

  Meshes meshes_;
  std::vector<Eigen::AlignedBox3d> boxes_B_;
  std::vector<Eigen::Isometry3d> X_WB_;
  Device device_;
  std::vector<Scene> meshScenes_;
  Scene scene_;
  Eigen::AlignedBox3d bounds_;
};

/// The rays of a camera's picture. Picture coordinates are in pixels from the top left corner, y downwards.
class CameraRays {
 public:
  /// Orthographic rays start in front of `box` (world, m), so that nothing is cut off.
  CameraRays(const Camera& camera, int width, int height, const Eigen::AlignedBox3d& box);

  Ray through(double x, double y) const;
  /// Width of a pixel in the world at this distance along a ray, m.
  float footprint(float distance) const { return perspective_ ? pixel_ * distance : pixel_; }

  bool perspective() const { return perspective_; }
  const Eigen::Vector3f& right() const { return right_; }
  const Eigen::Vector3f& up() const { return up_; }
  /// Unit, from the scene towards the viewer.
  const Eigen::Vector3f& back() const { return back_; }

 private:
  bool perspective_;
  int width_;
  double middle_;  ///< row that the camera's axis meets, pixels
  float pixel_;    ///< m a pixel: anywhere, or at 1 m from the eye
  Eigen::Vector3f origin_, right_, up_, back_;
};

}  // namespace zyga::picture
