#pragma once

#include <Eigen/Geometry>
#include <array>
#include <cstdint>
#include <vector>

namespace zyga::range {

/// Points of a surface in a tree of bounding spheres, so that the one deepest inside another bone is found without
/// asking for all of them.
class ContactTree {
 public:
  struct Node {
    Eigen::Vector3f centre = Eigen::Vector3f::Zero();
    float radius = 0;
    std::uint32_t first = 0;  ///< first point of a leaf, or the first child; the second follows it
    std::uint32_t count = 0;  ///< points of a leaf, 0 for a fork
  };

  explicit ContactTree(std::vector<Eigen::Vector3f> points);

  bool empty() const { return points_.empty(); }
  const std::vector<Node>& nodes() const { return nodes_; }
  const std::vector<Eigen::Vector3f>& points() const { return points_; }

 private:
  void build(std::size_t node, std::uint32_t first, std::uint32_t end);

  std::vector<Eigen::Vector3f> points_;  ///< in tree order
  std::vector<Node> nodes_;
};

}  // namespace zyga::range
