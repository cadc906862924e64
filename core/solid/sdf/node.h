#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <memory>
#include <utility>
#include <vector>

#include "core/solid/sdf/shape.h"

namespace zyga::solid {

/// Points are evaluated in batches, so that the cost of walking the tree of nodes is shared and the loops vectorise.
inline constexpr int kBatch = 128;

struct PointBatch {
  const float* x = nullptr;
  const float* y = nullptr;
  const float* z = nullptr;
  int count = 0;  ///< at most kBatch
};

/// Compiled for 8 numbers at a time as well, and chosen by what the processor has; the results are the same to the bit.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && !defined(__SANITIZE_ADDRESS__) && \
    !defined(__SANITIZE_THREAD__)
#define ZYGA_WIDE __attribute__((target_clones("avx2", "default")))
#else
#define ZYGA_WIDE
#endif

/// A node of a field's expression tree.
class FieldNode {
 public:
  /// What is left of a node near a place, and its value at the place itself.
  struct Local {
    std::shared_ptr<const FieldNode> node;
    float value = 0;
  };

  /// A ball, and how far from zero values must be right in it.
  struct Place {
    Eigen::Vector3f centre;
    float radius;
    float band;
    /// Fields are only about 1-Lipschitz; a value at the centre may be off by this much elsewhere in the ball.
    float spread() const { return 1.2f * radius; }
  };

  explicit FieldNode(Box bounds) : bounds_(std::move(bounds)) {}
  virtual ~FieldNode() = default;
  /// At most kBatch points; `out` has room for as many.
  virtual void evaluate(const PointBatch& points, float* out) const = 0;
  /// A node with the same values at the place, as far as they are in the place's band; `self` owns this node.
  virtual Local near(const std::shared_ptr<const FieldNode>& self, const Place& place) const;
  const Box& bounds() const { return bounds_; }
  float at(const Eigen::Vector3f& p) const;

 private:
  Box bounds_;
};

using NodePtr = std::shared_ptr<const FieldNode>;

/// A node whose field is a plain function of the point.
template <class Function>
class LeafNode : public FieldNode {
 public:
  LeafNode(const Box& bounds, Function function) : FieldNode(bounds), function_(std::move(function)) {}
  void evaluate(const PointBatch& p, float* out) const override {
    for (int i = 0; i < p.count; ++i) out[i] = function_(p.x[i], p.y[i], p.z[i]);
  }

 private:
  Function function_;
};

template <class Function>
Shape leaf(const Box& bounds, Function function) {
  return Shape(std::make_shared<LeafNode<Function>>(bounds, std::move(function)));
}

/// Rigid map to the local coordinates of a frame, in single precision.
struct ToLocal {
  std::array<float, 12> m{};
  explicit ToLocal(const Frame& frame);
  std::array<float, 3> operator()(float x, float y, float z) const {
    return {m[0] * x + m[1] * y + m[2] * z + m[3], m[4] * x + m[5] * y + m[6] * z + m[7],
            m[8] * x + m[9] * y + m[10] * z + m[11]};
  }
};

/// Box around a local box after it has been placed.
Box placedBox(const Frame& frame, const Box& local);

/// Smooth minimum m of two fields a <= b over a width k = `blend`: with h = max(k - (b - a), 0) / k,
///   m = a - k h^3 / 6,   dm/da = 1 - h^2 / 2,   dm/db = h^2 / 2,   d2m/da2 = -h / k.
/// The cubic is the least power of h whose second derivative vanishes where the blend begins (h = 0), so that curvature
/// is continuous there; the sixth makes both derivatives 1/2 where the fields are equal (h = 1), so that m is smooth
/// across a = b too. The derivatives are weights that sum to 1: the gradient of m lies between those of a and b, and a
/// blend of distances is no steeper than a distance. It lies below both by k / 6 at most.
inline float smoothMin(float a, float b, float blend) {
  const float h = std::max(blend - std::fabs(a - b), 0.0f) / blend;
  return std::min(a, b) - h * h * h * blend * (1.0f / 6);
}

/// No solid is thinner than this, m.
inline constexpr double kLeastExtent = 1e-4;
inline double positive(double extent) { return extent > kLeastExtent ? extent : kLeastExtent; }

/// Values and gradients of a field at any number of points, from four samples at the corners of a small tetrahedron
/// around each point and one in its middle. With corners p + s c_i, c_i = (+-1, +-1, +-1) and the sum of c_i c_i^T over
/// the four = 4 I, the gradient is the sum of c_i f(p + s c_i) / (4 s): exact for linear fields, and one sample less
/// than differences along three axes take.
struct FieldSamples {
  std::vector<float> value;
  std::vector<Eigen::Vector3f> gradient;
};

FieldSamples sampleField(const FieldNode& node, const std::vector<Point>& points, double step);
std::vector<float> sampleValues(const FieldNode& node, const std::vector<Point>& points);

/// Moves points onto the surface along the gradient, by at most `reach` (m).
void projectOnSurface(const FieldNode& node, std::vector<Point>& points, double step, double reach);

}  // namespace zyga::solid
