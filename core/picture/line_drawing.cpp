#include "core/picture/line_drawing.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <stdexcept>

#include "core/picture/bone_scene.h"
#include "core/picture/line_tracing.h"
#include "core/task/parallel.h"

namespace zyga::picture {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3f;

constexpr std::uint32_t kNothing = ~0u;
constexpr int kBisections = 4;
constexpr double kFoldStep = 3;      // spacings: a step in depth that is drawn
constexpr double kShortestFold = 5;  // spacings
constexpr double kLeastSpeck = 2;    // square spacings: smaller shapes are noise of single rays

struct Sample {
  std::uint32_t id = kNothing;
  float depth = 0;  ///< m along the view
  Vector3f face_W = Vector3f::Zero();
};

/// Samples on a grid that covers the bones with a border of nothing around them.
class Grid {
 public:
  Grid(const std::vector<Instance>& instances, const Camera& camera, const DrawingOptions& options)
      : camera_(camera), options_(options), scene_(sceneOf(instances)) {
    Eigen::AlignedBox2d box;
    const Eigen::Isometry3d X_CameraW = camera.X_WCamera.inverse();
    double nearest = -1e30;
    for (const Instance& instance : instances) {
      if (!instance.mesh) continue;
      const Eigen::Isometry3d X_CameraB = X_CameraW * instance.X_WB;
      for (const Vector3f& p : instance.mesh->positions) {
        const Eigen::Vector3d q = X_CameraB * p.cast<double>();
        box.extend(Vector2d(q.x(), q.y()));
        nearest = std::max(nearest, q.z());
      }
    }
    if (box.isEmpty()) return;
    start_ = nearest + 0.1;
    // The grid lies at whole multiples of the spacing, moved by an odd share, so that it is the same for every pose
    // and seldom meets straight edges exactly.
    for (int k = 0; k < 2; ++k)
      origin_[k] = (std::floor(box.min()[k] / options.spacing) - 1.6180339887) * options.spacing;
    width_ = static_cast<int>((box.max().x() - origin_.x()) / options.spacing) + 3;
    height_ = static_cast<int>((box.max().y() - origin_.y()) / options.spacing) + 3;
    samples_.resize(static_cast<std::size_t>(width_) * static_cast<std::size_t>(height_));
  }

  int width() const { return width_; }
  int height() const { return height_; }
  const Sample& at(int x, int y) const { return samples_[static_cast<std::size_t>(y) * width_ + x]; }
  Vector2d place(double x, double y) const { return origin_ + options_.spacing * Vector2d(x, y); }

  Sample look(const Vector2d& place) const {
    const Eigen::Vector3d from = camera_.X_WCamera * Eigen::Vector3d(place.x(), place.y(), start_);
    const Vector3f direction = -camera_.X_WCamera.linear().col(2).cast<float>();
    const auto hit = scene_.nearest({from.cast<float>(), direction});
    if (!hit) return {};
    return {options_.asOne ? 0u : static_cast<std::uint32_t>(hit->instance), hit->distance, hit->face_W};
  }

  /// False when cancelled.
  bool fill() {
    const auto row = [this](std::size_t y) {
      for (int x = 0; x < width_; ++x) samples_[y * width_ + x] = look(place(x, static_cast<double>(y)));
    };
    return task::forEach(static_cast<std::size_t>(height_), options_.task, row);
  }

  /// Where between the two samples of an edge the first one's bone (or the first one's depth) ends.
  Vector2d crossing(GridEdge edge) const {
    const int along = static_cast<int>(edge & 1), x = static_cast<int>(edge >> 1 & 0xffffffffu),
              y = static_cast<int>(edge >> 33);
    const Vector2d from = place(x, y), to = place(x + (along == 0), y + (along == 1));
    const Sample &a = at(x, y), &b = at(x + (along == 0), y + (along == 1));
    double low = 0, high = 1;
    for (int i = 0; i < kBisections; ++i) {
      const double middle = (low + high) / 2;
      const Sample here = look(from + middle * (to - from));
      const bool likeFirst =
          a.id != b.id ? here.id == a.id : std::abs(here.depth - a.depth) < std::abs(here.depth - b.depth);
      (likeFirst ? low : high) = middle;
    }
    return from + (low + high) / 2 * (to - from);
  }

  /// Whether the surface jumps between two samples of one bone: it leaves the plane of both.
  bool folded(const Sample& a, const Sample& b, const Vector3f& way) const {
    if (a.id != b.id || a.id == kNothing) return false;
    const Vector3f back = camera_.X_WCamera.linear().col(2).cast<float>();
    const Vector3f between = way + (a.depth - b.depth) * back;
    const auto leaves = [&](const Sample& s) {
      return std::abs(s.face_W.dot(between)) / std::max(std::abs(s.face_W.dot(back)), 0.15f);
    };
    // Where both samples are seen nearly edge-on a smooth surface runs away as fast as a step would.
    const auto slope = [&](const Sample& s) {
      const float facing = std::clamp(std::abs(s.face_W.dot(back)), 0.02f, 1.0f);
      return std::sqrt(1 - facing * facing) / facing;
    };
    const double least = kFoldStep * options_.spacing;
    return std::min(leaves(a), leaves(b)) > least &&
           std::abs(a.depth - b.depth) > least * (1 + std::min(slope(a), slope(b)));
  }

  Vector3f stepOf(int along) const { return (options_.spacing * camera_.X_WCamera.linear().col(along)).cast<float>(); }

 private:
  static BoneScene sceneOf(const std::vector<Instance>& instances) {
    BoneScene::Meshes meshes;
    std::vector<Eigen::Isometry3d> X_WB;
    for (const Instance& instance : instances) {
      meshes.push_back(instance.mesh);
      X_WB.push_back(instance.X_WB);
    }
    return {std::move(meshes), X_WB, BoneScene::Build::Repeatable};
  }

  Camera camera_;
  const DrawingOptions& options_;
  BoneScene scene_;
  Vector2d origin_ = Vector2d::Zero();
  double start_ = 0;
  int width_ = 0, height_ = 0;
  std::vector<Sample> samples_;
};

/// Steps of all borders by bone, and pieces of folds by bone.
struct Borders {
  std::map<std::uint32_t, EdgeChains> edges;
  std::map<std::uint32_t, std::vector<std::array<GridEdge, 2>>> folds;
};

void addEdges(Borders& borders, int x, int y, const std::array<const Sample*, 4>& corners) {
  for (std::size_t k = 0; k < 4; ++k) {
    const std::uint32_t id = corners[k]->id;
    bool seen = id == kNothing;
    for (std::size_t i = 0; i < k; ++i) seen = seen || corners[i]->id == id;
    if (seen) continue;
    std::array<bool, 4> inside{};
    for (std::size_t i = 0; i < 4; ++i) inside[i] = corners[i]->id == id;
    addCell(borders.edges[id], x, y, inside);
  }
}

void addFolds(Borders& borders, const Grid& grid, int x, int y, const std::array<const Sample*, 4>& corners) {
  std::vector<GridEdge> crossed;
  std::uint32_t id = kNothing;
  for (int side = 0; side < 4; ++side) {
    const Sample &a = *corners[static_cast<std::size_t>(side)], &b = *corners[static_cast<std::size_t>((side + 1) % 4)];
    const Vector3f way = (side < 2 ? 1.0f : -1.0f) * grid.stepOf(side % 2);
    if (!grid.folded(a, b, way)) continue;
    id = a.id;
    crossed.push_back(cellSide(x, y, side));
  }
  if (crossed.size() == 2) borders.folds[id].push_back({crossed[0], crossed[1]});
}

Borders bordersOf(const Grid& grid, bool folds) {
  Borders borders;
  for (int y = 0; y + 1 < grid.height(); ++y)
    for (int x = 0; x + 1 < grid.width(); ++x) {
      const std::array<const Sample*, 4> corners{&grid.at(x, y), &grid.at(x + 1, y), &grid.at(x + 1, y + 1),
                                                 &grid.at(x, y + 1)};
      const std::uint32_t id = corners[0]->id;
      const bool alike = std::all_of(corners.begin(), corners.end(), [&](const Sample* s) { return s->id == id; });
      if (!alike) addEdges(borders, x, y, corners);
      if (folds && !(alike && id == kNothing)) addFolds(borders, grid, x, y, corners);
    }
  return borders;
}

double lengthOf(const PlaneLine& line) {
  double length = 0;
  for (std::size_t i = 1; i < line.size(); ++i) length += (line[i] - line[i - 1]).norm();
  return length;
}

}  // namespace

std::vector<BoneLines> drawLines(const std::vector<Instance>& instances, const Camera& camera,
                                 const DrawingOptions& options) {
  if (camera.perspective) throw std::invalid_argument("lines are drawn through an orthographic camera");
  if (!(options.spacing > 0)) throw std::invalid_argument("samples of a drawing need a spacing");
  Grid grid(instances, camera, options);
  if (grid.width() == 0 || !grid.fill()) return {};
  const Borders borders = bordersOf(grid, options.folds);
  std::map<GridEdge, Vector2d> found;  // neighbours share their points
  const auto line = [&](const std::vector<GridEdge>& edges) {
    PlaneLine points;
    for (const GridEdge edge : edges) {
      const auto known = found.find(edge);
      points.push_back(known != found.end() ? known->second : found.emplace(edge, grid.crossing(edge)).first->second);
    }
    return points;
  };
  const double tolerance = options.tolerance * options.spacing;
  std::vector<BoneLines> drawn;
  for (const auto& [id, chains] : borders.edges) {
    if (options.task.cancelled()) return {};
    BoneLines bone;
    bone.instance = id;
    for (const auto& loop : chains.loops()) {
      const PlaneLine points = line(loop);
      if (std::abs(areaOf({points})) < kLeastSpeck * options.spacing * options.spacing) continue;
      bone.edges.push_back(simplified(points, tolerance, true));
    }
    const auto folds = borders.folds.find(id);
    if (folds != borders.folds.end())
      for (const auto& run : joinPieces(folds->second)) {
        const PlaneLine points = line(run);
        if (lengthOf(points) > kShortestFold * options.spacing)
          bone.folds.push_back(simplified(points, tolerance, false));
      }
    if (!bone.edges.empty()) drawn.push_back(std::move(bone));
  }
  return drawn;
}

}  // namespace zyga::picture
