#pragma once

#include <Eigen/Core>
#include <functional>
#include <vector>

#include "core/study/reach/planar_neck.h"
#include "core/task/task.h"

namespace zyga::study {

/// Distance from every point of the plane to what the tip of a chain can reach, m, on rings about the base.
///
/// Found from the tip inwards: what the tip reaches with the joints from k on is what it reaches with those from k + 1
/// on, turned about joint k through all of its range. Rings about joint k turn into themselves, so that step is a least
/// value over a window along each ring and misses no combination of angles; between joints the distances are looked up
/// linearly on rings about the next centre. Distance rather than yes or no is carried along because it stays smooth at
/// the edge: the outline is good to about `step`.
class SweptRegion {
 public:
  /// `joints` from the base outwards, `tip` with all angles zero; `rings` from the base to the farthest reach. Empty
  /// when cancelled.
  SweptRegion(const std::vector<PlanarJoint>& joints, const Eigen::Vector2d& tip, int rings,
              const task::Task& task = {});

  bool empty() const { return distances_.empty(); }
  /// m; 0 inside. Good near the region; far outside of the rings it comes out somewhat too large.
  double distance(const Eigen::Vector2d& p) const;
  double step() const { return step_; }      ///< m, from ring to ring and about as much along the outermost
  double radius() const { return radius_; }  ///< m, no point farther from the base is reached
  const Eigen::Vector2d& centre() const { return centre_; }

 private:
  using Field = std::function<double(const Eigen::Vector2d&)>;
  void turnAbout(const PlanarJoint& joint, double radius, const Field& before);
  float at(int ring, int spoke) const { return distances_[static_cast<std::size_t>(ring * spokes_ + spoke)]; }

  Eigen::Vector2d centre_ = Eigen::Vector2d::Zero();
  double radius_ = 0, step_ = 0;
  int rings_ = 0, spokes_ = 0;
  std::vector<float> distances_;
};

/// Closed outlines of the set where `distance` is practically zero, m: outer ones counter-clockwise, holes
/// clockwise, largest first. Looked for on a square grid of this step over the box.
std::vector<std::vector<Eigen::Vector2d>> outlinesOf(const SweptRegion& region);

/// Signed area of a closed polygon, counter-clockwise positive, m2.
double areaOf(const std::vector<Eigen::Vector2d>& outline);

}  // namespace zyga::study
