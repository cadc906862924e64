#include "ui/viewport/bone_finder.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace zyga::ui {
namespace {

constexpr double kReach = 5;           // pixels beside a thin bone
constexpr double kStickReach = 9;      // pixels beside a stick
constexpr std::size_t kEnough = 6000;  // triangles a bone: closer than a pixel at any usual magnification

using Mesh = std::shared_ptr<const solid::TriangleMesh>;

// The finest level that is not larger than needed; it lives as long as the bone does.
Mesh levelToPick(const std::shared_ptr<const solid::BoneMesh>& bone) {
  for (const auto& level : bone->levels)
    if (level.triangles.size() <= kEnough) return Mesh(bone, &level);
  return Mesh(bone, &bone->levels.back());
}

double distanceToStick(const Eigen::Vector2d& p, const Eigen::Vector2d& a, const Eigen::Vector2d& b, double& along) {
  const Eigen::Vector2d d = b - a;
  along = d.squaredNorm() > 0 ? std::clamp((p - a).dot(d) / d.squaredNorm(), 0.0, 1.0) : 0.0;
  return (a + along * d - p).norm();
}

}  // namespace

struct BoneFinder::Build {
  std::vector<Mesh> meshes;
  std::vector<BoneIndex> bones;
  std::unique_ptr<picture::Picker> picker;
};

BoneFinder::BoneFinder(QObject* parent) : QObject(parent) {}

BoneFinder::~BoneFinder() {
  for (const auto& thread : threads_)
    if (thread) thread->wait();
}

void BoneFinder::setSpecimen(const anatomy::Specimen& specimen) {
  build_.reset();
  picker_.reset();
  sticks_.clear();
  for (const auto& bone : specimen.bones) sticks_.push_back(sticksOf(bone));
}

void BoneFinder::setMeshes(const files::BoneMeshes& meshes) {
  picker_.reset();
  auto build = std::make_shared<Build>();
  for (std::size_t b = 0; b < meshes.size(); ++b) {
    if (!meshes[b] || meshes[b]->levels.empty()) continue;
    build->meshes.push_back(levelToPick(meshes[b]));
    build->bones.push_back(BoneIndex{b});
  }
  build_ = build;
  if (build->meshes.empty()) return;
  QThread* thread = QThread::create([build] { build->picker = std::make_unique<picture::Picker>(build->meshes); });
  connect(thread, &QThread::finished, this, [this, build] { adopt(build); });
  connect(thread, &QThread::finished, thread, &QObject::deleteLater);
  threads_.emplace_back(thread);
  thread->start();
}

void BoneFinder::adopt(const std::shared_ptr<Build>& build) {
  std::erase_if(threads_, [](const QPointer<QThread>& thread) { return !thread || thread->isFinished(); });
  if (build_ != build) return;
  picker_ = std::move(build->picker);
  bones_ = build->bones;
  moved_.clear();
  build_.reset();
  emit becameExact();
}

void BoneFinder::moveTo(const kinematics::Placement& X_WB) {
  const auto same = [](const Eigen::Isometry3d& a, const Eigen::Isometry3d& b) { return a.matrix() == b.matrix(); };
  if (std::equal(moved_.begin(), moved_.end(), X_WB.begin(), X_WB.end(), same)) return;
  moved_ = X_WB;
  std::vector<Eigen::Isometry3d> frames;
  for (const BoneIndex bone : bones_) frames.push_back(X_WB[bone.value]);
  picker_->move(frames);
}

std::optional<FoundBone> BoneFinder::onSurface(const Ray& ray) const {
  const auto hit = picker_->pick(ray.p_WOrigin, ray.direction_W);
  if (!hit) return std::nullopt;
  return FoundBone{bones_[hit->instance], hit->p_W};
}

std::optional<FoundBone> BoneFinder::onSticks(const Camera& camera, const Eigen::Vector2d& pixel,
                                              const kinematics::Placement& X_WB) const {
  std::optional<FoundBone> best;
  double nearest = kStickReach;
  for (std::size_t b = 0; b < sticks_.size() && b < X_WB.size(); ++b) {
    for (const auto& [from, to] : sticks_[b]) {
      const auto a = camera.project(X_WB[b] * from), e = camera.project(X_WB[b] * to);
      double along = 0;
      if (!a || !e) continue;
      const double away = distanceToStick(pixel, *a, *e, along);
      if (away >= nearest) continue;
      nearest = away;
      best = FoundBone{BoneIndex{b}, X_WB[b] * (from + along * (to - from))};
    }
  }
  return best;
}

std::optional<FoundBone> BoneFinder::find(const Camera& camera, const Eigen::Vector2d& pixel,
                                          const kinematics::Placement& X_WB) {
  if (!picker_) return onSticks(camera, pixel, X_WB);
  moveTo(X_WB);
  if (const auto found = onSurface(camera.ray(pixel))) return found;
  for (int i = 0; i < 8; ++i) {
    const double a = 0.7853981633974483 * i;
    const Eigen::Vector2d beside = pixel + kReach * Eigen::Vector2d(std::cos(a), std::sin(a));
    if (const auto found = onSurface(camera.ray(beside))) return found;
  }
  return std::nullopt;
}

}  // namespace zyga::ui
