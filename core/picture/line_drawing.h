#pragma once

#include <cstdint>
#include <vector>

#include "core/picture/picture.h"

/// The bones as lines on a plane instead of pixels: what each shows of itself, hidden parts left out.
namespace zyga::picture {

/// Points on the picture's plane: the camera's x (right) and y (up), m.
using PlaneLine = std::vector<Eigen::Vector2d>;

/// One bone as it is seen.
struct BoneLines {
  std::size_t instance = 0;
  std::vector<PlaneLine> edges;  ///< closed, the bone to the left of the way round, so that holes run clockwise
  std::vector<PlaneLine> folds;  ///< open: where one part of the bone ends before another part of it
};

struct DrawingOptions {
  double spacing = 0.01;   ///< m between samples; edges are found between them to a sixteenth of it
  double tolerance = 0.2;  ///< of simplified lines, in spacings
  bool folds = true;       ///< lines inside a bone
  bool asOne = false;      ///< all bones together as one shape (instance 0), for a silhouette
  task::Task task;
};

/// Bones that are seen, in the order of the instances, drawn through an orthographic camera. Where one bone passes
/// before another their lines lie on each other to within the tolerance. The same input gives the same lines, whatever
/// the thread count. Empty when cancelled. Throws std::invalid_argument for a perspective camera or a spacing that is
/// not positive.
std::vector<BoneLines> drawLines(const std::vector<Instance>& instances, const Camera& camera,
                                 const DrawingOptions& options);

/// Area inside closed lines, holes taken away, m^2.
double areaOf(const std::vector<PlaneLine>& edges);

}  // namespace zyga::picture
