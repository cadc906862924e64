#include <algorithm>
#include <cassert>
#include <cmath>
#include <limits>

#include "core/solid/sdf/node.h"

namespace zyga::solid {

namespace {

class UnionNode : public FieldNode {
 public:
  UnionNode(const Box& bounds, std::vector<NodePtr> children, float blend)
      : FieldNode(bounds), children_(std::move(children)), blend_(blend) {}

  void evaluate(const PointBatch& p, float* out) const override {
    assert(p.count <= kBatch);
    children_[0]->evaluate(p, out);
    float other[kBatch];
    for (std::size_t c = 1; c < children_.size(); ++c) {
      children_[c]->evaluate(p, other);
      if (blend_ > 0)
        for (int i = 0; i < p.count; ++i) out[i] = smoothMin(out[i], other[i], blend_);
      else
        for (int i = 0; i < p.count; ++i) out[i] = std::min(out[i], other[i]);
    }
  }

  Local near(const NodePtr& self, const Place& place) const override {
    std::vector<Local> locals;
    float least = std::numeric_limits<float>::max(), value = 0;
    bool same = true;
    for (const NodePtr& child : children_) {
      locals.push_back(child->near(child, place));
      const float v = locals.back().value;
      value = locals.size() == 1 ? v : blend_ > 0 ? smoothMin(value, v, blend_) : std::min(value, v);
      least = std::min(least, v);
      same = same && locals.back().node == child;
    }
    // Which children have a say in the ball? One whose distance at the centre is v is at least v - spread anywhere in
    // it; the least is at most least + spread there, or beyond the band, where only signs count. A child has no part in
    // a blend from a blend's width above the running minimum on. That minimum may itself lie below the least child, by
    // a sixth of the width where two are equal: hence 1.5 widths.
    const float reach = 1.5f * blend_ + place.spread() + std::min(least + place.spread(), place.band);
    std::vector<NodePtr> kept;
    for (const Local& local : locals)
      if (local.value <= std::max(reach, least)) kept.push_back(local.node);
    if (kept.size() == 1) return {kept[0], value};
    if (same && kept.size() == children_.size()) return {self, value};
    return {std::make_shared<UnionNode>(bounds(), std::move(kept), blend_), value};
  }

 private:
  std::vector<NodePtr> children_;
  float blend_;
};

/// Intersection of a with b, or with what is outside b.
class IntersectNode : public FieldNode {
 public:
  IntersectNode(const Box& bounds, NodePtr a, NodePtr b, bool outsideB, float blend)
      : FieldNode(bounds), a_(std::move(a)), b_(std::move(b)), sign_(outsideB ? -1.0f : 1.0f), blend_(blend) {}

  void evaluate(const PointBatch& p, float* out) const override {
    assert(p.count <= kBatch);
    a_->evaluate(p, out);
    float other[kBatch];
    b_->evaluate(p, other);
    if (blend_ > 0)
      for (int i = 0; i < p.count; ++i) out[i] = -smoothMin(-out[i], -sign_ * other[i], blend_);
    else
      for (int i = 0; i < p.count; ++i) out[i] = std::max(out[i], sign_ * other[i]);
  }

  Local near(const NodePtr& self, const Place& place) const override {
    const Local a = a_->near(a_, place), b = b_->near(b_, place);
    const float vb = sign_ * b.value;
    const float value = blend_ > 0 ? -smoothMin(-a.value, -vb, blend_) : std::max(a.value, vb);
    // The lesser of the two has no say where it is far below the other or below the band.
    const auto mute = [&](float lesser, float other) {
      return lesser + place.spread() + blend_ < std::max(other - place.spread(), -place.band);
    };
    if (mute(vb, a.value)) return {a.node, value};
    if (sign_ > 0 && mute(a.value, vb)) return {b.node, value};
    if (a.node == a_ && b.node == b_) return {self, value};
    return {std::make_shared<IntersectNode>(bounds(), a.node, b.node, sign_ < 0, blend_), value};
  }

 private:
  NodePtr a_, b_;
  float sign_, blend_;
};

class PlacedNode : public FieldNode {
 public:
  PlacedNode(const Box& bounds, NodePtr child, const ToLocal& local)
      : FieldNode(bounds), child_(std::move(child)), local_(local) {}

  void evaluate(const PointBatch& p, float* out) const override {
    assert(p.count <= kBatch);
    float x[kBatch], y[kBatch], z[kBatch];
    for (int i = 0; i < p.count; ++i) {
      const auto q = local_(p.x[i], p.y[i], p.z[i]);
      x[i] = q[0], y[i] = q[1], z[i] = q[2];
    }
    child_->evaluate({x, y, z, p.count}, out);
  }

  Local near(const NodePtr& self, const Place& place) const override {
    const auto q = local_(place.centre.x(), place.centre.y(), place.centre.z());
    const Local local = child_->near(child_, {{q[0], q[1], q[2]}, place.radius, place.band});
    if (local.node == child_) return {self, local.value};
    return {std::make_shared<PlacedNode>(bounds(), local.node, local_), local.value};
  }

 private:
  NodePtr child_;
  ToLocal local_;
};

class MirroredNode : public FieldNode {
 public:
  MirroredNode(const Box& bounds, NodePtr child) : FieldNode(bounds), child_(std::move(child)) {}

  void evaluate(const PointBatch& p, float* out) const override {
    assert(p.count <= kBatch);
    float y[kBatch];
    for (int i = 0; i < p.count; ++i) y[i] = -p.y[i];
    child_->evaluate({p.x, y, p.z, p.count}, out);
  }

  Local near(const NodePtr& self, const Place& place) const override {
    const Eigen::Vector3f& c = place.centre;
    const Local local = child_->near(child_, {{c.x(), -c.y(), c.z()}, place.radius, place.band});
    if (local.node == child_) return {self, local.value};
    return {std::make_shared<MirroredNode>(bounds(), local.node), local.value};
  }

 private:
  NodePtr child_;
};

class InflatedNode : public FieldNode {
 public:
  InflatedNode(const Box& bounds, NodePtr child, float by) : FieldNode(bounds), child_(std::move(child)), by_(by) {}

  void evaluate(const PointBatch& p, float* out) const override {
    child_->evaluate(p, out);
    for (int i = 0; i < p.count; ++i) out[i] -= by_;
  }

  Local near(const NodePtr& self, const Place& place) const override {
    const Local local = child_->near(child_, {place.centre, place.radius, place.band + std::abs(by_)});
    if (local.node == child_) return {self, local.value - by_};
    return {std::make_shared<InflatedNode>(bounds(), local.node, by_), local.value - by_};
  }

 private:
  NodePtr child_;
  float by_;
};

class WeatheredNode : public FieldNode {
 public:
  WeatheredNode(const Box& bounds, NodePtr child, float depth, float wavelength)
      : FieldNode(bounds), child_(std::move(child)), depth_(depth), wave_(6.2831853f / wavelength) {}

  void evaluate(const PointBatch& p, float* out) const override {
    child_->evaluate(p, out);
    for (int i = 0; i < p.count; ++i) out[i] += depth_ * waves(wave_ * p.x[i], wave_ * p.y[i], wave_ * p.z[i]);
  }

  Local near(const NodePtr& self, const Place& place) const override {
    const Eigen::Vector3f& c = place.centre;
    const Local local = child_->near(child_, {c, place.radius, place.band + depth_});
    const float value = local.value + depth_ * waves(wave_ * c.x(), wave_ * c.y(), wave_ * c.z());
    if (local.node == child_) return {self, value};
    return {std::make_shared<WeatheredNode>(bounds(), local.node, depth_, 6.2831853f / wave_), value};
  }

 private:
  /// Three layers of waves whose periods share no common multiple; only cosines of y, so the sum is even in y.
  static float waves(float x, float y, float z) {
    return 0.5f * std::sin(x + 0.7f * z) * std::cos(1.1f * y) +
           0.3f * std::sin(1.83f * z - 0.6f * x) * std::cos(1.47f * y) +
           0.2f * std::sin(2.9f * x + 1.3f * z) * std::cos(2.3f * y);
  }

  NodePtr child_;
  float depth_, wave_;
};

Box grown(Box box, double by) {
  if (box.isEmpty()) return box;
  box.min() -= Point::Constant(by);
  box.max() += Point::Constant(by);
  return box;
}

Shape unionOf(const std::vector<Shape>& shapes, double blend) {
  std::vector<NodePtr> children;
  Box box;
  for (const Shape& shape : shapes) {
    if (shape.empty()) continue;
    children.push_back(shape.node());
    box.extend(shape.bounds());
  }
  if (children.empty()) return {};
  if (children.size() == 1) return Shape(children[0]);
  const float width = static_cast<float>(std::max(blend, 0.0));
  // Each of the blends in a row may swell the surface by a sixth of its width.
  return Shape(std::make_shared<UnionNode>(grown(box, width / 3.0), std::move(children), width));
}

Shape intersection(const Shape& a, const Shape& b, bool outsideB, double blend) {
  if (a.empty()) return {};
  if (b.empty()) return outsideB ? a : Shape();
  const Box box = outsideB ? a.bounds() : a.bounds().intersection(b.bounds());
  return Shape(
      std::make_shared<IntersectNode>(box, a.node(), b.node(), outsideB, static_cast<float>(std::max(blend, 0.0))));
}

}  // namespace

Shape unite(const std::vector<Shape>& shapes) { return unionOf(shapes, 0); }
Shape smoothUnion(const std::vector<Shape>& shapes, double blend) { return unionOf(shapes, blend); }
Shape smoothUnion(const Shape& a, const Shape& b, double blend) { return unionOf({a, b}, blend); }
Shape intersect(const Shape& a, const Shape& b, double blend) { return intersection(a, b, false, blend); }
Shape cut(const Shape& a, const Shape& tool) { return intersection(a, tool, true, 0); }
Shape smoothCut(const Shape& a, const Shape& tool, double blend) { return intersection(a, tool, true, blend); }

Shape placed(const Shape& shape, const Frame& frame) {
  if (shape.empty()) return {};
  return Shape(std::make_shared<PlacedNode>(placedBox(frame, shape.bounds()), shape.node(), ToLocal(frame)));
}

Shape mirrored(const Shape& shape) {
  if (shape.empty()) return {};
  const Box box = shape.bounds();
  const Box flipped(Point(box.min().x(), -box.max().y(), box.min().z()),
                    Point(box.max().x(), -box.min().y(), box.max().z()));
  return Shape(std::make_shared<MirroredNode>(flipped, shape.node()));
}

Shape symmetric(const Shape& shape, double blend) { return unionOf({shape, mirrored(shape)}, blend); }

Shape inflated(const Shape& shape, double by) {
  if (shape.empty()) return {};
  return Shape(
      std::make_shared<InflatedNode>(grown(shape.bounds(), std::max(by, 0.0)), shape.node(), static_cast<float>(by)));
}

Shape weathered(const Shape& shape, double depth, double wavelength) {
  if (shape.empty()) return {};
  return Shape(std::make_shared<WeatheredNode>(grown(shape.bounds(), std::abs(depth)), shape.node(),
                                               static_cast<float>(depth), static_cast<float>(positive(wavelength))));
}

}  // namespace zyga::solid
