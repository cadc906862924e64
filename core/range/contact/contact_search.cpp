#include "core/range/contact/contact_search.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace zyga::range {
namespace {

using Eigen::Isometry3f;
using Eigen::Vector3f;

/// Voxels between two bones from which on the points of both tell the distance: points two voxels apart miss it by a
/// fraction of a voxel. Where two surfaces cross, points of both lie within 2 sqrt(2) voxels of each other.
constexpr float kApart = 3;
/// Voxels from which on it makes no difference whose points are asked.
constexpr float kOneSided = 1.5F;

/// An isometry as matrix and vector apart, which inner loops multiply faster than a padded 4 x 4.
struct Motion {
  explicit Motion(const Isometry3f& X) : R(X.linear()), p(X.translation()) {}
  Vector3f operator*(const Vector3f& q) const { return R * q + p; }
  Eigen::Matrix3f R;
  Vector3f p;
};

/// One bone's points in the other bone's field.
struct Side {
  const ContactTree& tree;
  const anatomy::SignedDistance& field;
  const ContactZones& zonesOfField;
  Motion X_FP;  ///< points into the field's frame
};

struct Found {
  float distance;
  Vector3f p_P = Vector3f::Zero();
};

struct Waiting {
  std::uint32_t node;
  float bound;
};

// How deep two bones enter each other, or how far apart they are.
//
// A bone's field gives the distance d(p) from its surface at any point, negative inside. A true distance changes by no
// more than the way gone: |d(p) - d(q)| <= |p - q|. For a ball of points of the other bone's surface with centre c and
// radius r therefore d(p) >= d(c) - r for every point p in it, and a branch of the tree whose bound is not below the
// best value found is passed over with one evaluation (branch and bound). Depth is minus the least d over all points of
// A in the field of B and of B in the field of A: either alone misses a spike that passes between the other's points.
// Points in a joint's zones do not count, on either side.
//
// Bones that are apart are searched points against points instead, with |c_A - c_B| - r_A - r_B as the bound of a pair
// of balls. Points two voxels apart miss a distance of D voxels by about 1/(2D) voxels, which serves from kApart on.

/// Looks through the points of one side, the nearer half of each part first. A part is passed over when no point of it
/// can be deeper than the best by more than `slack`.
class Search {
 public:
  Search(const Side& side, Found& best, float slack) : side_(side), best_(best), slack_(slack) {}

  /// Until nothing better is left; with `any`, until something better is found.
  void run(bool any) {
    if (side_.tree.empty()) return;
    const float before = best_.distance;
    push(0);
    while (waiting_ > 0) {
      const Waiting next = stack_[--waiting_];
      if (!promising(next.bound)) continue;
      const ContactTree::Node& node = side_.tree.nodes()[next.node];
      if (node.count > 0) {
        tryPoints(node);
        if (any && best_.distance < before) return;
        continue;
      }
      pushNearerLast(node.first, node.first + 1);
    }
  }

 private:
  bool promising(float bound) const { return bound < best_.distance - slack_; }

  /// No point of the ball can be deeper than this.
  float boundOf(std::uint32_t index) const {
    const ContactTree::Node& node = side_.tree.nodes()[index];
    return side_.field.estimate(side_.X_FP * node.centre).min - node.radius;
  }
  void push(std::uint32_t index) {
    const float bound = boundOf(index);
    if (promising(bound)) stack_[waiting_++] = {index, bound};
  }
  void pushNearerLast(std::uint32_t a, std::uint32_t b) {
    const float boundA = boundOf(a), boundB = boundOf(b);
    const bool aNearer = boundA < boundB;
    const Waiting farther = aNearer ? Waiting{b, boundB} : Waiting{a, boundA};
    const Waiting nearer = aNearer ? Waiting{a, boundA} : Waiting{b, boundB};
    if (promising(farther.bound)) stack_[waiting_++] = farther;
    if (promising(nearer.bound)) stack_[waiting_++] = nearer;
  }
  void tryPoints(const ContactTree::Node& leaf) {
    for (std::uint32_t i = leaf.first; i < leaf.first + leaf.count; ++i) {
      const Vector3f& p_P = side_.tree.points()[i];
      const Vector3f p_F = side_.X_FP * p_P;
      if (!promising(side_.field.estimate(p_F).min)) continue;
      const float distance = side_.field.distance(p_F);
      if (distance < best_.distance && !holds(side_.zonesOfField, p_F)) best_ = {distance, p_P};
    }
  }

  const Side& side_;
  Found& best_;
  float slack_;
  std::array<Waiting, 128> stack_;
  std::size_t waiting_ = 0;
};

/// Two surfaces' points against each other: for bones that are well apart, where the spacing of the points no longer
/// shows in the distance.
class ApartSearch {
 public:
  ApartSearch(const ContactShape& a, const ContactShape& b, const Isometry3f& X_AB, float voxel)
      : a_(a), b_(b), X_AB_(X_AB), X_BA_(X_AB.inverse()), voxel_(voxel) {}

  /// The least distance below `best`, or something below `enough` as soon as it turns up.
  ContactMeeting run(float best, float enough) {
    best_ = best;
    if (a_.tree->empty() || b_.tree->empty()) return meeting_;
    visit(0, 0, b_.tree->nodes().front().radius, X_AB_ * b_.tree->nodes().front().centre, enough);
    return meeting_;
  }

 private:
  /// Far out the points tell the distance so well that the whole voxel may be spent on passing things over.
  float slack() const { return (best_ > 8 * voxel_ ? 0.85F : 0.5F) * voxel_; }

  float boundOf(const ContactTree::Node& a, float radiusB, const Vector3f& p_AB) const {
    return (a.centre - p_AB).norm() - a.radius - radiusB;
  }

  /// `p_AB`: centre of b's node in a's frame.
  void visit(std::uint32_t a, std::uint32_t b, float radiusB, const Vector3f& p_AB, float enough) {
    const ContactTree::Node& nodeA = a_.tree->nodes()[a];
    const ContactTree::Node& nodeB = b_.tree->nodes()[b];
    if (best_ < enough || boundOf(nodeA, radiusB, p_AB) >= best_ - slack()) return;
    if (nodeA.count > 0 && nodeB.count > 0) return tryPoints(nodeA, nodeB);
    const bool splitA = nodeB.count > 0 || (nodeA.count == 0 && nodeA.radius > radiusB);
    if (splitA) {
      std::uint32_t near = nodeA.first, far = near + 1;
      if (boundOf(a_.tree->nodes()[far], radiusB, p_AB) < boundOf(a_.tree->nodes()[near], radiusB, p_AB)) {
        std::swap(near, far);
      }
      visit(near, b, radiusB, p_AB, enough);
      visit(far, b, radiusB, p_AB, enough);
      return;
    }
    std::uint32_t near = nodeB.first, far = near + 1;
    Vector3f p_ANear = X_AB_ * b_.tree->nodes()[near].centre, p_AFar = X_AB_ * b_.tree->nodes()[far].centre;
    if (boundOf(nodeA, b_.tree->nodes()[far].radius, p_AFar) < boundOf(nodeA, b_.tree->nodes()[near].radius, p_ANear)) {
      std::swap(near, far);
      std::swap(p_ANear, p_AFar);
    }
    visit(a, near, b_.tree->nodes()[near].radius, p_ANear, enough);
    visit(a, far, b_.tree->nodes()[far].radius, p_AFar, enough);
  }

  void tryPoints(const ContactTree::Node& nodeA, const ContactTree::Node& nodeB) {
    for (std::uint32_t j = nodeB.first; j < nodeB.first + nodeB.count; ++j) {
      const Vector3f p_AB = X_AB_ * b_.tree->points()[j];
      if (holds(a_.zones, p_AB)) continue;
      for (std::uint32_t i = nodeA.first; i < nodeA.first + nodeA.count; ++i) {
        const Vector3f& p_A = a_.tree->points()[i];
        const float squared = (p_A - p_AB).squaredNorm();
        if (squared >= best_ * best_ || holds(b_.zones, X_BA_ * p_A)) continue;
        best_ = std::sqrt(squared);
        meeting_ = {best_, p_A, true};
      }
    }
  }

  const ContactShape& a_;
  const ContactShape& b_;
  Motion X_AB_, X_BA_;
  float voxel_;
  float best_ = 0;
  ContactMeeting meeting_;
};

/// For surfaces that do not meet: whether one bone lies wholly in the other. Any point tells.
bool oneInside(const ContactShape& a, const ContactShape& b, const Isometry3f& X_AB) {
  if (a.tree->empty() || b.tree->empty()) return false;
  return b.field->estimate(X_AB.inverse() * a.tree->points().front()).distance < 0 ||
         a.field->estimate(X_AB * b.tree->points().front()).distance < 0;
}

std::vector<Vector3f> pointsOutside(const anatomy::SignedDistance& field, const ContactZones& zones) {
  std::vector<Vector3f> points = field.surfacePoints();
  std::erase_if(points, [&](const Vector3f& p) { return holds(zones, p); });
  return points;
}

}  // namespace

bool ContactZone::holds(const Vector3f& p_B) const {
  const Eigen::Array3f p = (X_ZB * p_B).array() / half.array();
  return round ? p.matrix().squaredNorm() <= 1 : (p.abs() <= 1).all();
}

bool holds(const ContactZones& zones, const Vector3f& p_B) {
  return std::any_of(zones.begin(), zones.end(), [&](const ContactZone& zone) { return zone.holds(p_B); });
}

ContactShape::ContactShape(std::shared_ptr<const anatomy::SignedDistance> bone, ContactZones leftOut)
    : field(std::move(bone)),
      zones(std::move(leftOut)),
      tree(std::make_shared<ContactTree>(pointsOutside(*field, zones))) {}

double meanExtent(const ContactShape& shape) {
  Eigen::AlignedBox3f box;
  for (const Vector3f& p : shape.tree->points()) box.extend(p);
  return box.isEmpty() ? 0 : std::cbrt(static_cast<double>(box.volume()));
}

ContactMeeting contactDepth(const ContactShape& a, const ContactShape& b, const Isometry3f& X_AB, float within,
                            float slack) {
  const float voxel = std::max(a.field->resolution(), b.field->resolution());
  const float near = kApart * voxel;
  ContactMeeting meeting;
  Found best{within};
  bool enclosed = false;
  if (within > near) {
    meeting = ApartSearch(a, b, X_AB, voxel).run(within, near);
    enclosed = meeting.distance >= near && oneInside(a, b, X_AB);
    if (meeting.distance >= near && !enclosed) return meeting;
    best.distance = std::min(within, meeting.distance);
  }
  Search({*b.tree, *a.field, a.zones, Motion(X_AB)}, best, slack * voxel).run(false);
  if (best.distance < std::min(within, meeting.distance)) meeting = {best.distance, X_AB * best.p_P, false};
  if (best.distance > kOneSided * voxel && !enclosed) return meeting;
  const float before = best.distance;
  Search({*a.tree, *b.field, b.zones, Motion(X_AB.inverse())}, best, slack * voxel).run(false);
  if (best.distance < before) meeting = {best.distance, best.p_P, true};
  return meeting;
}

bool touch(const ContactShape& a, const ContactShape& b, const Isometry3f& X_AB) {
  Found best{0};
  Search({*b.tree, *a.field, a.zones, Motion(X_AB)}, best, 0).run(true);
  if (best.distance < 0) return true;
  Search({*a.tree, *b.field, b.zones, Motion(X_AB.inverse())}, best, 0).run(true);
  return best.distance < 0;
}

namespace {

constexpr std::uint32_t kLeaf = 12;

}  // namespace

ContactTree::ContactTree(std::vector<Eigen::Vector3f> points) : points_(std::move(points)) {
  if (points_.empty()) return;
  nodes_.emplace_back();
  build(0, 0, static_cast<std::uint32_t>(points_.size()));
}

/// Splits at the median of the longest axis of the points' box until kLeaf or fewer are left, so that the tree is
/// balanced: n points give about 2 n / kLeaf nodes, log2(n / kLeaf) deep. A node's ball is that about the middle of the
/// box, at most sqrt(3) times as large as the smallest one. Both children stand side by side in `nodes_`.
void ContactTree::build(std::size_t self, std::uint32_t first, std::uint32_t end) {
  Eigen::AlignedBox3f box;
  for (std::uint32_t i = first; i < end; ++i) box.extend(points_[i]);
  Node node;
  node.centre = box.center();
  for (std::uint32_t i = first; i < end; ++i) {
    node.radius = std::max(node.radius, (points_[i] - node.centre).squaredNorm());
  }
  node.radius = std::sqrt(node.radius);
  node.first = first;
  node.count = end - first;
  if (node.count <= kLeaf) {
    nodes_[self] = node;
    return;
  }
  int axis = 0;
  box.sizes().maxCoeff(&axis);
  const std::uint32_t middle = first + (end - first) / 2;
  std::nth_element(points_.begin() + first, points_.begin() + middle, points_.begin() + end,
                   [axis](const auto& a, const auto& b) { return a[axis] < b[axis]; });
  node.first = static_cast<std::uint32_t>(nodes_.size());
  node.count = 0;
  nodes_[self] = node;
  nodes_.resize(nodes_.size() + 2);
  build(node.first, first, middle);
  build(node.first + 1, middle, end);
}

}  // namespace zyga::range
