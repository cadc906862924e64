#include "core/study/reach/reach_space.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/kinematics/bend.h"
#include "core/range/contact/clear_reach.h"
#include "core/range/contact/contact.h"
#include "core/study/reach/sagittal_plane.h"
#include "core/task/parallel.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using std::numbers::pi;

constexpr int kMostSteps = 40;  // of one walk along a ray

/// A half line on which the snout is wanted, up to `length`.
struct Ray {
  Vector3d p_WFrom;
  Vector3d d_W;  ///< unit
  double length;
};

/// Where along a ray the reach begins and ends, m.
struct Hit {
  bool any = false;
  double nearest = 0, farthest = 0;
};

/// Asks how far the snout stays from a point; keeps the last answer to start the next search from.
class Snout {
 public:
  Snout(const range::Scenario& scenario, const kinematics::Pose& start)
      : scenario_(scenario),
        ranges_(scenario.specimen(), scenario.articulation(), scenario.assumptions(), scenario.contact()),
        start_(start) {
    const anatomy::Specimen& specimen = scenario.specimen();
    const auto skull = specimen.findBone("skull").value();
    goal_.bone = skull;
    goal_.p_BPoint = specimen[skull].landmark("snout");
    goal_.joints = kinematics::dragChain(specimen, skull);
  }

  void forget() { last_.reset(); }

  double distanceTo(const Vector3d& target) {
    goal_.p_WTarget = target;
    const auto found = range::reachClear(scenario_, ranges_, start_, goal_, last_ ? &*last_ : nullptr).reached;
    last_ = found.pose;
    return found.distance;
  }

 private:
  const range::Scenario& scenario_;
  range::ReachRanges ranges_;
  const kinematics::Pose& start_;
  kinematics::IkGoal goal_;
  std::optional<kinematics::Pose> last_;
};

/// From `at` on along the ray in the direction of `sign` by as much as the snout stays away, until it is there.
std::optional<double> walk(Snout& snout, const Ray& ray, double at, double sign, double precision) {
  for (int step = 0; step < kMostSteps && at >= 0 && at <= ray.length; ++step) {
    const double away = snout.distanceTo(ray.p_WFrom + at * ray.d_W);
    if (away < precision) return at;
    at += sign * away;
  }
  return std::nullopt;
}

Hit hitOf(Snout& snout, const Ray& ray, double precision) {
  const auto farthest = walk(snout, ray, ray.length, -1, precision);
  if (!farthest) return {};
  const auto nearest = walk(snout, ray, 0, 1, precision);
  return {true, std::min(nearest.value_or(*farthest), *farthest), *farthest};
}

/// A row of rays at one angle from where the neck points, walked in turn so that each search starts near its answer.
struct Row {
  std::vector<Vector3d> directions;  ///< world
  double solidAngle = 0;             ///< of each ray, sr
};

/// Rings around the direction `ahead`, each divided so that rays stand about `spacing` apart.
std::vector<Row> rowsAround(const SagittalPlane& plane, double spacing) {
  const Vector3d left = plane.up_W.cross(plane.ahead_W);
  const int rings = std::max(2, static_cast<int>(std::lround(pi / spacing)));
  std::vector<Row> rows;
  for (int i = 0; i < rings; ++i) {
    const double least = pi * i / rings, most = pi * (i + 1) / rings, middle = 0.5 * (least + most);
    const int count = std::max(3, static_cast<int>(std::lround(2 * pi * std::sin(middle) / spacing)));
    Row row;
    row.solidAngle = 2 * pi * (std::cos(least) - std::cos(most)) / count;
    for (int k = 0; k < count; ++k) {
      const double turn = 2 * pi * (k + 0.5) / count;
      row.directions.push_back(std::cos(middle) * plane.ahead_W +
                               std::sin(middle) * (std::cos(turn) * plane.up_W + std::sin(turn) * left));
    }
    rows.push_back(row);
  }
  return rows;
}

double coneVolume(double solidAngle, double from, double to) {
  return to > from ? solidAngle * (std::pow(to, 3) - std::pow(from, 3)) / 3 : 0;
}

/// Where a ray meets the ground, m along it.
double groundAlong(const Ray& ray) {
  if (ray.p_WFrom.z() <= 0) return ray.d_W.z() > 0 ? std::numeric_limits<double>::infinity() : 0;
  return ray.d_W.z() < 0 ? -ray.p_WFrom.z() / ray.d_W.z() : std::numeric_limits<double>::infinity();
}

/// What one row adds.
struct RowSum {
  double volume = 0, whole = 0, share = 0;
};

double stretched(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, const SagittalPlane& plane) {
  const Line line = neckLine(specimen, X_WB, plane);
  double length = 0;
  for (std::size_t i = 0; i + 1 < line.size(); ++i) length += (line[i + 1] - line[i]).norm();
  return length;
}

double stripAreaOf(const std::vector<ReachSpace::Strip>& strip, const Vector2d& from, double spacing) {
  double area = 0;
  for (const auto& s : strip) {
    area += 0.5 * spacing * ((s.to - from).squaredNorm() - (s.from - from).squaredNorm());
  }
  return area;
}

class SpaceStudy {
 public:
  SpaceStudy(const range::Scenario& scenario, const ReachSpaceOptions& options, const task::Task& task)
      : scenario_(scenario), options_(options), task_(task), start_(scenario.pose()) {
    const anatomy::Specimen& specimen = scenario.specimen();
    const auto skull = specimen.findBone("skull");
    if (!skull) throw reason::Failure(reason::Reason(kNoSnout));
    for (const auto joint : kinematics::dragChain(specimen, *skull)) start_[joint] = Vector3d::Zero();
    const auto X_WB = kinematics::forwardKinematics(specimen, scenario.articulation(), start_);
    plane_ = neckPlane(specimen, X_WB);
    length_ = stretched(specimen, X_WB, plane_);
    const Vector2d base = neckLine(specimen, X_WB, plane_).front();
    space_.p_WBase = plane_.inWorld(base);
    space_.precision = options.precision;
  }

  std::optional<ReachSpace> operator()() {
    const auto rows = rowsAround(plane_, options_.spacing);
    std::vector<RowSum> sums(rows.size());
    const std::size_t bearings = static_cast<std::size_t>(options_.bearings);
    std::vector<Hit> onGround(bearings);
    const std::size_t groups = (bearings + kBearingsInTurn - 1) / kBearingsInTurn;
    const auto work = [&](std::size_t i) {
      Snout snout(scenario_, start_);
      if (i < rows.size()) {
        sums[i] = sumOf(snout, rows[i]);
      } else {
        walkGround(snout, (i - rows.size()) * kBearingsInTurn, onGround);
      }
    };
    if (!task::forEach(rows.size() + groups, task_.withThreads(options_.threads), work)) return std::nullopt;
    gather(rows, sums, onGround);
    return space_;
  }

 private:
  static constexpr std::size_t kBearingsInTurn = 12;

  RowSum sumOf(Snout& snout, const Row& row) const {
    RowSum sum;
    for (const Vector3d& direction : row.directions) {
      if (task_.cancelled()) return {};
      const Ray ray{space_.p_WBase, direction, length_};
      const Hit hit = hitOf(snout, ray, options_.precision);
      if (!hit.any) continue;
      sum.share += row.solidAngle / (4 * pi);
      sum.whole += coneVolume(row.solidAngle, hit.nearest, hit.farthest);
      sum.volume += coneVolume(row.solidAngle, hit.nearest, std::min(hit.farthest, groundAlong(ray)));
    }
    return sum;
  }

  double bearingOf(std::size_t i) const { return -pi + 2 * pi * (static_cast<double>(i) + 0.5) / options_.bearings; }
  Vector3d onGround(double bearing) const {
    const Vector3d left = Vector3d::UnitZ().cross(plane_.ahead_W);
    return std::cos(bearing) * plane_.ahead_W + std::sin(bearing) * left;
  }
  Vector3d underBase() const { return {space_.p_WBase.x(), space_.p_WBase.y(), 0}; }

  void walkGround(Snout& snout, std::size_t first, std::vector<Hit>& hits) const {
    const double reach = std::sqrt(std::max(0.0, length_ * length_ - space_.p_WBase.z() * space_.p_WBase.z()));
    for (std::size_t i = first; i < std::min(first + kBearingsInTurn, hits.size()); ++i) {
      if (task_.cancelled()) return;
      if (reach > 0) hits[i] = hitOf(snout, {underBase(), onGround(bearingOf(i)), reach}, options_.precision);
    }
  }

  void gather(const std::vector<Row>& rows, const std::vector<RowSum>& sums, const std::vector<Hit>& onGroundHits) {
    for (std::size_t i = 0; i < rows.size(); ++i) {
      space_.rays += static_cast<int>(rows[i].directions.size());
      space_.volume += sums[i].volume;
      space_.volumeWithGround += sums[i].whole;
      space_.share += sums[i].share;
    }
    const Vector2d under = underBase().head<2>();
    for (std::size_t i = 0; i < onGroundHits.size(); ++i) {
      if (!onGroundHits[i].any) continue;
      const Vector2d way = onGround(bearingOf(i)).head<2>();
      space_.strip.push_back(
          {bearingOf(i), under + onGroundHits[i].nearest * way, under + onGroundHits[i].farthest * way});
    }
    space_.stripArea = stripAreaOf(space_.strip, under, 2 * pi / options_.bearings);
  }

  const range::Scenario& scenario_;
  const ReachSpaceOptions& options_;
  const task::Task& task_;
  kinematics::Pose start_;
  SagittalPlane plane_;
  double length_ = 0;
  ReachSpace space_;
};

}  // namespace

std::optional<ReachSpace> reachSpace(const range::Scenario& scenario, const ReachSpaceOptions& options,
                                     const task::Task& task) {
  return SpaceStudy(scenario, options, task)();
}

}  // namespace zyga::study
