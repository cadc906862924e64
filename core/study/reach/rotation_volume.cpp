#include "core/study/reach/rotation_volume.h"

#include <array>
#include <cmath>
#include <numbers>
#include <set>

#include "core/range/limit_search.h"
#include "core/range/limits.h"

namespace zyga::study {
namespace {

using Eigen::Vector3d;
using Cell = std::array<int, 3>;

constexpr double kCellsAMotion = 20;
constexpr std::size_t kMostCells = 400'000;  // a set that runs on and on is not followed farther

/// Of one cell around a middle angle; the cosine is averaged over it.
RotationVolume cellVolume(double middle, const Vector3d& size) {
  const double half = 0.5 * size[1];
  return {size.prod(), size[0] * size[2] * (std::sin(middle + half) - std::sin(middle - half))};
}

bool judgeable(const range::JointEvaluator& judge) {
  return !judge.fixed() && judge.hasCriteria() && (judge.hasFacets() || judge.joint().typed);
}

/// Supported angles near neutral.
std::optional<Vector3d> seedOf(const range::JointEvaluator& judge) {
  if (!judge.beyond(Vector3d::Zero())) return Vector3d(Vector3d::Zero());
  for (int motion = 0; motion < 3; ++motion) {
    const auto found = range::LimitSearch(judge, Vector3d::Zero(), motion).interval();
    if (!found.empty) return range::withMotion(Vector3d::Zero(), motion, 0.5 * (found.min + found.max));
  }
  return std::nullopt;
}

}  // namespace

RotationVolume rotationVolume(const Vector3d& least, const Vector3d& most) {
  const Vector3d size = most - least;
  if ((size.array() <= 0).any()) return {};
  return {size.prod(), size[0] * size[2] * (std::sin(most[1]) - std::sin(least[1]))};
}

RotationVolume rotationVolume(const std::function<bool(const Vector3d&)>& inside, const Vector3d& seed,
                              const Vector3d& cell) {
  RotationVolume sum;
  std::set<Cell> known{{0, 0, 0}};
  std::vector<Cell> open{{0, 0, 0}};
  const auto middleOf = [&](const Cell& c) { return Vector3d(seed + cell.cwiseProduct(Vector3d(c[0], c[1], c[2]))); };
  while (!open.empty() && known.size() < kMostCells) {
    const Cell at = open.back();
    open.pop_back();
    const Vector3d middle = middleOf(at);
    if (std::abs(middle[1]) > std::numbers::pi / 2 || !inside(middle)) continue;
    const RotationVolume one = cellVolume(middle[1], cell);
    sum.plain += one.plain;
    sum.corrected += one.corrected;
    for (std::size_t k = 0; k < 3; ++k) {
      for (const int step : {-1, 1}) {
        Cell next = at;
        next[k] += step;
        if (known.insert(next).second) open.push_back(next);
      }
    }
  }
  return sum;
}

RotationVolume supportedRotations(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                                  const range::Assumptions& assumptions, kinematics::JointIndex joint) {
  const range::JointEvaluator judge(specimen, articulation, assumptions, joint);
  if (!judgeable(judge)) return {};
  if (!judge.hasFacets()) {
    const auto& a = judge.joint().typed->angles;
    return rotationVolume(Vector3d(a[0].min, a[1].min, a[2].min), Vector3d(a[0].max, a[1].max, a[2].max));
  }
  const auto seed = seedOf(judge);
  if (!seed) return {};
  Vector3d cell;
  for (int motion = 0; motion < 3; ++motion) {
    const auto found = range::LimitSearch(judge, *seed, motion).interval();
    if (found.empty || found.max <= found.min) return {};
    cell[motion] = (found.max - found.min) / kCellsAMotion;
  }
  return rotationVolume([&](const Vector3d& angles) { return !judge.beyond(angles); }, *seed, cell);
}

}  // namespace zyga::study
