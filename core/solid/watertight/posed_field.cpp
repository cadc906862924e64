#include "core/solid/watertight/posed_field.h"

#include <Eigen/Geometry>
#include <cassert>
#include <cmath>
#include <limits>

#include "core/solid/mesh/seams.h"
#include "core/solid/sdf/node.h"

namespace zyga::solid {

namespace {

bool sound(const TriangleMesh& mesh) {
  const MeshHealth health = examine(mesh);
  return health.closed && health.oriented;
}

}  // namespace

BoneDistanceFields boneDistanceFields(const PosedSkeleton& skeleton, std::size_t triangles,
                                      const LevelSetOptions& options) {
  assert(skeleton.X_WB.size() == skeleton.meshes.size());
  BoneDistanceFields spaces;
  std::vector<std::shared_ptr<const BoneMesh>> closed(skeleton.meshes.size());
  for (std::size_t i = 0; i < closed.size(); ++i) {
    if (options.task.cancelled()) return spaces;
    const auto& mesh = skeleton.meshes[i];
    if (!mesh || mesh->levels.empty()) continue;
    const TriangleMesh& level = sampledLevel(*mesh, triangles);
    if (sound(level)) {
      closed[i] = mesh;
      continue;
    }
    TriangleMesh filled = withHolesClosed(level);
    if (sound(filled)) {
      ++spaces.holesClosed;
      closed[i] = std::make_shared<const BoneMesh>(BoneMesh{{std::move(filled)}});
    } else {
      spaces.leftOut.push_back({i});
    }
  }
  LevelSetOptions own = options;
  own.triangles = triangles;
  spaces.fields = levelSets(closed, std::vector<bool>(closed.size(), true), own);
  return spaces;
}

double surfaceOf(const PosedSkeleton& skeleton) {
  double twice = 0;
  for (const auto& bone : skeleton.meshes) {
    if (!bone || bone->levels.empty()) continue;
    const TriangleMesh& mesh = sampledLevel(*bone, 20000);
    for (const auto& t : mesh.triangles)
      twice += (mesh.positions[t[1]] - mesh.positions[t[0]]).cross(mesh.positions[t[2]] - mesh.positions[t[0]]).norm();
  }
  return twice / 2;
}

namespace {

Eigen::AlignedBox3f worldBox(const PosedBone& bone, double grow) {
  Box box = placedBox(bone.X_WB, bone.field->box().cast<double>());
  box.min() -= Point::Constant(grow);
  box.max() += Point::Constant(grow);
  return box.cast<float>();
}

struct PosedField {
  const anatomy::SignedDistance* field;
  ToLocal toBone;

  explicit PosedField(const PosedBone& bone) : field(bone.field.get()), toBone(bone.X_WB) {}
  float distance(float x, float y, float z) const {
    const auto p = toBone(x, y, z);
    return field->distance({p[0], p[1], p[2]});
  }
};

class Part {
 public:
  explicit Part(const Eigen::AlignedBox3f& box) : box_(box) {}
  virtual ~Part() = default;
  virtual float distance(float x, float y, float z) const = 0;
  /// Encloses the part.
  const Eigen::AlignedBox3f& box() const { return box_; }

 private:
  Eigen::AlignedBox3f box_;
};

class BonePart : public Part {
 public:
  explicit BonePart(const PosedBone& bone)
      : Part(worldBox(bone, bone.grow)), owner_(bone.field), field_(bone), grow_(static_cast<float>(bone.grow)) {
    assert(bone.field && bone.grow <= bone.field->reach());
  }
  float distance(float x, float y, float z) const override { return field_.distance(x, y, z) - grow_; }

 private:
  std::shared_ptr<const anatomy::SignedDistance> owner_;
  PosedField field_;
  float grow_;
};

/// The points p with a(p) + b(p) < w, for the distances a and b from two bones: f = (a + b - w) / 2. Between two flat
/// faces a gap of g apart a + b is g everywhere, so the filling reaches as far as the gap stays below w. The gradient
/// of f is the mean of two unit vectors, no longer than 1: f is no steeper than a distance.
class BridgePart : public Part {
 public:
  explicit BridgePart(const Bridge& bridge)
      : Part(worldBox(bridge.a, bridge.width).intersection(worldBox(bridge.b, bridge.width))),
        ownerA_(bridge.a.field),
        ownerB_(bridge.b.field),
        a_(bridge.a),
        b_(bridge.b),
        width_(static_cast<float>(bridge.width)) {}
  float distance(float x, float y, float z) const override {
    return 0.5F * (a_.distance(x, y, z) + b_.distance(x, y, z) - width_);
  }

 private:
  std::shared_ptr<const anatomy::SignedDistance> ownerA_, ownerB_;
  PosedField a_, b_;
  float width_;
};

/// Counts the blocks of points that one evaluation, on one thread, comes to.
class Progress {
 public:
  explicit Progress(Evaluation evaluation) : evaluation_(std::move(evaluation)) {}

  void check() const {
    if (evaluation_.task.cancelled()) throw Stopped();
  }
  /// Of a batch; single points are looked up in passing.
  void visit(int points) {
    check();
    if (!(evaluation_.blocks > 0) || points < 2) return;
    constexpr std::size_t kBetween = 256;  // blocks between two tellings
    if (++visited_ % kBetween == 0)
      evaluation_.task.tell(1 - std::exp(-static_cast<double>(visited_) / evaluation_.blocks));
  }

 private:
  const Evaluation evaluation_;
  std::size_t visited_ = 0;
};

using Parts = std::vector<std::shared_ptr<const Part>>;

/// The union of solids is the minimum of their distances, smooth (smoothMin) where they blend. A point in the frame of
/// a bone is X_WB^-1 p; a rigid map keeps distances. As a union of nodes, but boxes are asked first: of some hundred
/// bones few are near any place.
class PosedNode : public FieldNode {
 public:
  PosedNode(const Box& bounds, Parts parts, float blend, std::shared_ptr<Progress> progress)
      : FieldNode(bounds), parts_(std::move(parts)), blend_(blend), progress_(std::move(progress)) {}

  void evaluate(const PointBatch& p, float* out) const override {
    progress_->visit(p.count);
    for (int i = 0; i < p.count; ++i) out[i] = parts_[0]->distance(p.x[i], p.y[i], p.z[i]);
    for (std::size_t k = 1; k < parts_.size(); ++k)
      for (int i = 0; i < p.count; ++i) out[i] = joined(out[i], parts_[k]->distance(p.x[i], p.y[i], p.z[i]));
  }

  Local near(const NodePtr& self, const Place& place) const override {
    progress_->check();
    const Eigen::Vector3f& c = place.centre;
    const float outer = place.spread() + place.band + 1.5F * blend_;
    std::vector<float> values(parts_.size());
    float least = std::numeric_limits<float>::max(), value = least;
    for (std::size_t k = 0; k < parts_.size(); ++k) {
      const float toBox = parts_[k]->box().exteriorDistance(c);
      values[k] = toBox > outer ? toBox : parts_[k]->distance(c.x(), c.y(), c.z());
      least = std::min(least, values[k]);
      value = k == 0 ? values[k] : joined(value, values[k]);
    }
    const float reach = std::max(1.5F * blend_ + place.spread() + std::min(least + place.spread(), place.band), least);
    Parts kept;
    for (std::size_t k = 0; k < parts_.size(); ++k)
      if (values[k] <= reach) kept.push_back(parts_[k]);
    if (kept.size() == parts_.size()) return {self, value};
    return {std::make_shared<PosedNode>(bounds(), std::move(kept), blend_, progress_), value};
  }

 private:
  float joined(float a, float b) const { return blend_ > 0 ? smoothMin(a, b, blend_) : std::min(a, b); }

  Parts parts_;
  float blend_;
  const std::shared_ptr<Progress> progress_;
};

}  // namespace

Shape posedShape(const std::vector<PosedBone>& bones, const std::vector<Bridge>& bridges, double blend,
                 Evaluation evaluation) {
  assert(blend >= 0);
  Parts parts;
  for (const PosedBone& bone : bones) parts.push_back(std::make_shared<BonePart>(bone));
  for (const Bridge& bridge : bridges) {
    auto part = std::make_shared<BridgePart>(bridge);
    if (!part->box().isEmpty()) parts.push_back(std::move(part));
  }
  if (parts.empty()) return {};
  Eigen::AlignedBox3f box;
  for (const auto& part : parts) box.extend(part->box());
  Box bounds = box.cast<double>();
  bounds.min() -= Point::Constant(blend / 3);
  bounds.max() += Point::Constant(blend / 3);
  return Shape(std::make_shared<PosedNode>(bounds, std::move(parts), static_cast<float>(blend),
                                           std::make_shared<Progress>(std::move(evaluation))));
}

namespace {

using anatomy::BoneIndex;

/// The bone that carries the surface: a rib grown into its vertebra is the vertebra.
BoneIndex carrier(const anatomy::Specimen& specimen, BoneIndex bone) {
  while (specimen[bone].fusedInto) bone = *specimen[bone].fusedInto;
  return bone;
}

/// Narrowest gap (m) between two bones; negative where they enter each other.
double gapBetween(const PosedBone& a, const PosedBone& b) {
  const Eigen::Isometry3f X_AB = (a.X_WB.inverse() * b.X_WB).cast<float>();
  float least = std::numeric_limits<float>::max();
  for (const Eigen::Vector3f& p_B : b.field->surfacePoints()) {
    const Eigen::Vector3f p_A = X_AB * p_B;
    if (a.field->box().exteriorDistance(p_A) < least) least = std::min(least, a.field->distance(p_A));
  }
  return least;
}

}  // namespace

JointBridges jointBridges(const PosedSkeleton& skeleton, const SignedDistances& fields, double overlap, double widest) {
  JointBridges out;
  for (std::size_t j = 0; j < skeleton.specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = skeleton.specimen.joints[j];
    const BoneIndex a = carrier(skeleton.specimen, joint.proximal), b = carrier(skeleton.specimen, joint.distal);
    if (a == b || !fields[a.value] || !fields[b.value]) continue;
    Bridge bridge{{fields[a.value], skeleton.X_WB[a.value]}, {fields[b.value], skeleton.X_WB[b.value]}};
    const double gap = gapBetween(bridge.a, bridge.b);
    if (gap > widest) {
      out.unfilled.push_back({j});
      continue;
    }
    bridge.width = std::max(gap, 0.0) + overlap;
    out.bridges.push_back(bridge);
  }
  return out;
}

}  // namespace zyga::solid
