#include "core/picture/bone_scene.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <map>
#include <stdexcept>

namespace zyga::picture {

namespace {

void setFrame(RTCGeometry instance, const Eigen::Isometry3d& X_WB) {
  const Eigen::Matrix<float, 3, 4> columns = X_WB.matrix().topRows<3>().cast<float>();
  rtcSetGeometryTransform(instance, 0, RTC_FORMAT_FLOAT3X4_COLUMN_MAJOR, columns.data());
}

RTCRayHit query(const Ray& ray, float reach) {
  RTCRayHit q{};
  q.ray.org_x = ray.origin.x();
  q.ray.org_y = ray.origin.y();
  q.ray.org_z = ray.origin.z();
  q.ray.dir_x = ray.direction.x();
  q.ray.dir_y = ray.direction.y();
  q.ray.dir_z = ray.direction.z();
  q.ray.tfar = reach;
  q.ray.mask = ~0u;
  q.hit.geomID = RTC_INVALID_GEOMETRY_ID;
  q.hit.instID[0] = RTC_INVALID_GEOMETRY_ID;
  return q;
}

Eigen::Vector3f towards(const Eigen::Vector3f& normal, const Eigen::Vector3f& direction) {
  return normal.dot(direction) > 0 ? Eigen::Vector3f(-normal) : normal;
}

/// The mesh's own normal at barycentric (u, v); the face's where the mesh has none or they cancel out.
Eigen::Vector3f smoothNormal(const solid::TriangleMesh& mesh, std::size_t triangle, float u, float v,
                             const Eigen::Vector3f& face_B) {
  if (mesh.normals.size() != mesh.positions.size()) return face_B;
  const auto& [a, b, c] = mesh.triangles[triangle];
  const Eigen::Vector3f n = (1 - u - v) * mesh.normals[a] + u * mesh.normals[b] + v * mesh.normals[c];
  const float length = n.norm();
  return length > 1e-6f ? Eigen::Vector3f(n / length) : face_B;
}

Eigen::AlignedBox3d boxOf(const solid::TriangleMesh& mesh) {
  Eigen::AlignedBox3d box_B;
  for (const Eigen::Vector3f& p_B : mesh.positions) box_B.extend(p_B.cast<double>());
  return box_B;
}

}  // namespace

BoneScene::BoneScene(Meshes meshes, const std::vector<Eigen::Isometry3d>& X_WB, Build build)
    : meshes_(std::move(meshes)), X_WB_(X_WB) {
  if (X_WB_.size() != meshes_.size()) throw std::invalid_argument("as many frames as meshes are needed");
  device_.reset(rtcNewDevice(build == Build::Repeatable ? "threads=1" : nullptr));
  if (!device_) throw reason::Failure(kNoRayTracer);
  scene_.reset(rtcNewScene(device_.get()));
  rtcSetSceneFlags(scene_.get(), RTC_SCENE_FLAG_ROBUST | RTC_SCENE_FLAG_DYNAMIC);
  for (std::size_t i = 0; i < meshes_.size(); ++i)
    boxes_B_.push_back(present(i) ? boxOf(*meshes_[i]) : Eigen::AlignedBox3d());
  addInstances();
  move(X_WB);
}

BoneScene::Scene BoneScene::buildMesh(const solid::TriangleMesh& mesh) const {
  RTCGeometry geometry = rtcNewGeometry(device_.get(), RTC_GEOMETRY_TYPE_TRIANGLE);
  // Copied, because Embree reads sixteen bytes a vertex and would run past the end of a shared array.
  auto* positions = static_cast<Eigen::Vector3f*>(rtcSetNewGeometryBuffer(
      geometry, RTC_BUFFER_TYPE_VERTEX, 0, RTC_FORMAT_FLOAT3, sizeof(Eigen::Vector3f), mesh.positions.size()));
  auto* triangles = static_cast<std::array<std::uint32_t, 3>*>(rtcSetNewGeometryBuffer(
      geometry, RTC_BUFFER_TYPE_INDEX, 0, RTC_FORMAT_UINT3, 3 * sizeof(std::uint32_t), mesh.triangles.size()));
  std::copy(mesh.positions.begin(), mesh.positions.end(), positions);
  std::copy(mesh.triangles.begin(), mesh.triangles.end(), triangles);
  rtcCommitGeometry(geometry);
  Scene scene(rtcNewScene(device_.get()));
  rtcSetSceneFlags(scene.get(), RTC_SCENE_FLAG_ROBUST);
  rtcAttachGeometryByID(scene.get(), geometry, 0);
  rtcReleaseGeometry(geometry);
  rtcCommitScene(scene.get());
  return scene;
}

void BoneScene::addInstances() {
  std::map<const solid::TriangleMesh*, RTCScene> built;
  for (std::size_t i = 0; i < meshes_.size(); ++i) {
    if (!present(i)) continue;
    RTCScene& mesh = built[meshes_[i].get()];
    if (!mesh) mesh = meshScenes_.emplace_back(buildMesh(*meshes_[i])).get();
    RTCGeometry instance = rtcNewGeometry(device_.get(), RTC_GEOMETRY_TYPE_INSTANCE);
    rtcSetGeometryInstancedScene(instance, mesh);
    rtcAttachGeometryByID(scene_.get(), instance, static_cast<unsigned>(i));
    rtcReleaseGeometry(instance);
  }
}

void BoneScene::move(const std::vector<Eigen::Isometry3d>& X_WB) {
  if (X_WB.size() != meshes_.size()) throw std::invalid_argument("as many frames as meshes are needed");
  X_WB_ = X_WB;
  bounds_.setEmpty();
  for (std::size_t i = 0; i < meshes_.size(); ++i) {
    if (!present(i)) continue;
    RTCGeometry instance = rtcGetGeometry(scene_.get(), static_cast<unsigned>(i));
    setFrame(instance, X_WB_[i]);
    rtcCommitGeometry(instance);
    bounds_.extend(boxes_B_[i].transformed(X_WB_[i]));
  }
  rtcCommitScene(scene_.get());
}

std::optional<SurfaceHit> BoneScene::nearest(const Ray& ray) const {
  RTCIntersectContext context;
  rtcInitIntersectContext(&context);
  RTCRayHit q = query(ray, std::numeric_limits<float>::infinity());
  rtcIntersect1(scene_.get(), &context, &q);
  if (q.hit.geomID == RTC_INVALID_GEOMETRY_ID) return std::nullopt;

  SurfaceHit hit;
  hit.instance = q.hit.instID[0];
  hit.triangle = q.hit.primID;
  hit.distance = q.ray.tfar;
  hit.p_W = ray.origin + hit.distance * ray.direction;
  const Eigen::Matrix3f R_WB = X_WB_[hit.instance].linear().cast<float>();
  const Eigen::Vector3f face_B = Eigen::Vector3f(q.hit.Ng_x, q.hit.Ng_y, q.hit.Ng_z).normalized();
  const Eigen::Vector3f smooth_B = smoothNormal(*meshes_[hit.instance], hit.triangle, q.hit.u, q.hit.v, face_B);
  hit.face_W = towards(R_WB * face_B, ray.direction);
  hit.normal_W = R_WB * smooth_B;
  if (hit.normal_W.dot(hit.face_W) < 0) hit.normal_W = -hit.normal_W;
  return hit;
}

float BoneScene::clearance(const Ray& ray, float reach) const {
  RTCIntersectContext context;
  rtcInitIntersectContext(&context);
  RTCRayHit q = query(ray, reach);
  rtcIntersect1(scene_.get(), &context, &q);
  return std::min(q.ray.tfar, reach);
}

bool BoneScene::blocked(const Ray& ray, float reach) const {
  RTCIntersectContext context;
  rtcInitIntersectContext(&context);
  RTCRayHit q = query(ray, reach);
  rtcOccluded1(scene_.get(), &context, &q.ray);
  return q.ray.tfar < 0;
}

namespace {

/// How far the camera's plane must move backwards to have the whole box before it, m.
double retreat(const Eigen::Isometry3d& X_WCamera, const Eigen::AlignedBox3d& box) {
  if (box.isEmpty()) return 0;
  const Eigen::Vector3d back = X_WCamera.linear().col(2);
  const Eigen::Vector3d half = box.sizes() / 2;
  const double nearest = (box.center() - X_WCamera.translation()).dot(back) + back.cwiseAbs().dot(half);
  return nearest + 0.01 * box.diagonal().norm() + 1e-3;
}

}  // namespace

CameraRays::CameraRays(const Camera& camera, int width, int height, const Eigen::AlignedBox3d& box)
    : perspective_(camera.perspective),
      width_(width),
      middle_((0.5 + (camera.perspective ? camera.rise : 0)) * height) {
  assert(width > 0 && height > 0);
  const Eigen::Matrix3d R = camera.X_WCamera.linear();
  Eigen::Vector3d origin = camera.X_WCamera.translation();
  if (!perspective_) origin += retreat(camera.X_WCamera, box) * R.col(2);
  const double tall = perspective_ ? 2 * std::tan(camera.fieldOfView / 2) : camera.viewHeight;
  pixel_ = static_cast<float>(tall / height);
  origin_ = origin.cast<float>();
  right_ = R.col(0).cast<float>();
  up_ = R.col(1).cast<float>();
  back_ = R.col(2).cast<float>();
}

Ray CameraRays::through(double x, double y) const {
  const Eigen::Vector3f aside =
      static_cast<float>(x - 0.5 * width_) * pixel_ * right_ + static_cast<float>(middle_ - y) * pixel_ * up_;
  if (perspective_) return {origin_, (aside - back_).normalized()};
  return {origin_ + aside, -back_};
}

}  // namespace zyga::picture
