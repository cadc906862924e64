#include "core/solid/watertight/posed_field.h"

#include <limits>

#include "core/solid/sdf/node.h"

namespace zyga::solid {
namespace {

Eigen::AlignedBox3f worldBox(const PosedBone& bone, double grow) {
  Box box = placedBox(bone.X_WB, bone.field->box().cast<double>());
  box.min() -= Point::Constant(grow);
  box.max() += Point::Constant(grow);
  return box.cast<float>();
}

struct PosedField {
  const anatomy::BoneField* field;
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
      : Part(worldBox(bone, bone.grow)), owner_(bone.field), field_(bone), grow_(static_cast<float>(bone.grow)) {}
  float distance(float x, float y, float z) const override { return field_.distance(x, y, z) - grow_; }

 private:
  std::shared_ptr<const anatomy::BoneField> owner_;
  PosedField field_;
  float grow_;
};

/// Half the sum of two distances is itself no steeper than a distance.
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
  std::shared_ptr<const anatomy::BoneField> ownerA_, ownerB_;
  PosedField a_, b_;
  float width_;
};

using Parts = std::vector<std::shared_ptr<const Part>>;

/// As a union of nodes, but boxes are asked first: of some hundred bones few are near any place.
class PosedNode : public FieldNode {
 public:
  PosedNode(const Box& bounds, Parts parts, float blend, const Watch* watch)
      : FieldNode(bounds), parts_(std::move(parts)), blend_(blend), watch_(watch) {}

  void evaluate(const PointBatch& p, float* out) const override {
    if (watch_) look(p.count);
    for (int i = 0; i < p.count; ++i) out[i] = parts_[0]->distance(p.x[i], p.y[i], p.z[i]);
    for (std::size_t k = 1; k < parts_.size(); ++k)
      for (int i = 0; i < p.count; ++i) out[i] = joined(out[i], parts_[k]->distance(p.x[i], p.y[i], p.z[i]));
  }

  Local near(const NodePtr& self, const Place& place) const override {
    if (watch_ && watch_->cancel && *watch_->cancel) throw Stopped();
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
    return {std::make_shared<PosedNode>(bounds(), std::move(kept), blend_, watch_), value};
  }

 private:
  float joined(float a, float b) const { return blend_ > 0 ? smoothMin(a, b, blend_) : std::min(a, b); }

  void look(int count) const {
    if (watch_->cancel && *watch_->cancel) throw Stopped();
    if (watch_->visited && count > 1) watch_->visited();
  }

  Parts parts_;
  float blend_;
  const Watch* watch_;
};

}  // namespace

Shape posedShape(const std::vector<PosedBone>& bones, const std::vector<Bridge>& bridges, double blend,
                 const Watch* watch) {
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
  return Shape(std::make_shared<PosedNode>(bounds, std::move(parts), static_cast<float>(blend), watch));
}

}  // namespace zyga::solid
