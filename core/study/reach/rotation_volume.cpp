#include "core/study/reach/rotation_volume.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
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

/// How far contact is past what is tolerated over a joint's angles, m: asked on a lattice four cells wide when first
/// needed, linear between. Contact costs far more than facets do.
class ContactLattice {
 public:
  ContactLattice(const range::JointEvaluator& judge, const Vector3d& origin, const Vector3d& cell)
      : judge_(judge), origin_(origin), step_(kEvery * cell) {}

  bool beyond(const Vector3d& angles) {
    if (!judge_.asksContact()) return false;
    const Vector3d place = (angles - origin_).cwiseQuotient(step_);
    const Vector3d below = place.array().floor(), share = place - below;
    double excess = 0;
    for (int corner = 0; corner < 8; ++corner) {
      double weight = 1;
      Cell node{};
      for (int k = 0; k < 3; ++k) {
        const bool upper = (corner >> k & 1) != 0;
        node[static_cast<std::size_t>(k)] = static_cast<int>(below[k]) + (upper ? 1 : 0);
        weight *= upper ? share[k] : 1 - share[k];
      }
      if (weight > 0) excess += weight * at(node);
    }
    return excess > 0;
  }

 private:
  static constexpr double kEvery = 4;

  double at(const Cell& node) {
    const auto [known, isNew] = known_.try_emplace(node, 0);
    if (isNew) {
      const Vector3d steps(node[0], node[1], node[2]);
      known->second = judge_.contact(origin_ + step_.cwiseProduct(steps)).excess();
    }
    return known->second;
  }

  const range::JointEvaluator& judge_;
  Vector3d origin_, step_;
  std::map<Cell, double> known_;
};

/// Supported angles near neutral.
std::optional<Vector3d> seedOf(const range::JointEvaluator& judge) {
  if (!judge.beyond(Vector3d::Zero()) && !judge.contactBeyond(Vector3d::Zero())) return Vector3d(Vector3d::Zero());
  for (int motion = 0; motion < 3; ++motion) {
    const auto found = range::LimitSearch(judge, Vector3d::Zero(), motion).interval();
    if (!found.empty) return judge.withMotion(Vector3d::Zero(), motion, 0.5 * (found.min + found.max));
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
                                  const range::Assumptions& assumptions, kinematics::JointIndex joint,
                                  const range::NeighbourContact* contact) {
  const range::JointEvaluator judge(specimen, articulation, assumptions, joint, contact);
  if (!judgeable(judge)) return {};
  if (!judge.hasFacets() && !judge.asksContact()) {
    const auto& a = judge.joint().typed->angles;
    return rotationVolume(Vector3d(a[0].min, a[1].min, a[2].min), Vector3d(a[0].max, a[1].max, a[2].max));
  }
  auto seed = seedOf(judge);
  if (!seed) return {};
  Vector3d cell;
  for (int motion = 0; motion < 3 && !judge.hasFacets(); ++motion) {
    // A box is filled by whole cells.
    const anatomy::AngleLimits& typed = judge.joint().typed->angles[static_cast<std::size_t>(motion)];
    cell[motion] = (typed.max - typed.min) / kCellsAMotion;
    if (!(cell[motion] > 0)) return {};
    const double cells = std::floor((std::clamp((*seed)[motion], typed.min, typed.max) - typed.min) / cell[motion]);
    (*seed)[motion] = typed.min + (std::min(cells, kCellsAMotion - 1.0) + 0.5) * cell[motion];
  }
  for (int motion = 0; motion < 3 && judge.hasFacets(); ++motion) {
    const auto found = range::LimitSearch(judge, *seed, motion).interval();
    if (found.empty || found.max <= found.min) return {};
    cell[motion] = (found.max - found.min) / kCellsAMotion;
  }
  ContactLattice contacts(judge, *seed, cell);
  const auto inside = [&](const Vector3d& angles) { return !judge.beyond(angles) && !contacts.beyond(angles); };
  return rotationVolume(inside, *seed, cell);
}

}  // namespace zyga::study
