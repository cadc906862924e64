#include "core/range/contact/contact_tree.h"

#include <algorithm>
#include <cmath>

namespace zyga::range {
namespace {

constexpr std::uint32_t kLeaf = 12;

}  // namespace

ContactTree::ContactTree(std::vector<Eigen::Vector3f> points) : points_(std::move(points)) {
  if (points_.empty()) return;
  nodes_.emplace_back();
  build(0, 0, static_cast<std::uint32_t>(points_.size()));
}

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
