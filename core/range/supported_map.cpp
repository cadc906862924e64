#include "core/range/supported_map.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/range/limit_search.h"
#include "core/task/parallel.h"

namespace zyga::range {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

constexpr double kDegree = std::numbers::pi / 180;
constexpr int kRays = 24;
constexpr double kMargin = 0.08;              // of the supported extent, beyond it
constexpr double kLeastExtent = 4 * kDegree;  // so that a stiff joint still has a picture
/// Contact is asked at every fourth cell and its depth taken as linear between: it costs much more than the facets do.
constexpr int kContactEvery = 4;

/// Dorsiflexion and lateral flexion, the joint's own torsion given (kinematics::toOwn).
class Plane {
 public:
  Plane(const JointEvaluator& judge, double torsion) : judge_(judge), torsion_(torsion) {}
  Vector3d angles(const Vector2d& at) const { return judge_.fromOwn({at.x(), at.y(), torsion_}); }
  bool beyond(const Vector2d& at) const { return judge_.beyond(angles(at)); }

  /// Somewhere supported: neutral, else the nearest along either axis.
  std::optional<Vector2d> supported() const {
    if (!beyond(Vector2d::Zero())) return Vector2d::Zero();
    for (int motion = 0; motion < 2; ++motion) {
      const Interval found = LimitSearch(judge_, angles(Vector2d::Zero()), motion).interval();
      Vector2d middle = Vector2d::Zero();
      middle[motion] = 0.5 * (found.min + found.max);
      if (!found.empty) return middle;
    }
    return std::nullopt;
  }

  /// The last supported point on a ray, to a degree.
  Vector2d lastAlong(const Vector2d& from, const Vector2d& direction) const {
    Vector2d last = from;
    for (double way = kDegree; way < std::numbers::pi; way += kDegree) {
      const Vector2d next = from + way * direction;
      if (beyond(next)) break;
      last = next;
    }
    return last;
  }

 private:
  const JointEvaluator& judge_;
  double torsion_;
};

/// What a few rays from a supported point reach, with zero.
Eigen::AlignedBox2d supportedBox(const Plane& plane) {
  Eigen::AlignedBox2d box(Vector2d::Zero());
  const std::optional<Vector2d> from = plane.supported();
  if (!from) return box;
  std::array<Vector2d, kRays> reached;
  task::forEach(kRays, {}, [&](std::size_t i) {
    const double turn = 2 * std::numbers::pi * static_cast<double>(i) / kRays;
    reached[i] = plane.lastAlong(*from, {std::cos(turn), std::sin(turn)});
  });
  for (const Vector2d& end : reached) box.extend(end);
  return box;
}

Eigen::AlignedBox2d window(const JointEvaluator& judge, double torsion) {
  Eigen::AlignedBox2d box = supportedBox(Plane(judge, torsion));
  if (box.sizes().isZero() && torsion != 0) box = supportedBox(Plane(judge, 0));
  // The rays stop up to a degree short.
  const Vector2d around = kMargin * box.sizes() + Vector2d::Constant(kDegree);
  box.min() -= around;
  box.max() += around;
  const Vector2d lacking = (Vector2d::Constant(kLeastExtent) - box.sizes()).cwiseMax(0);
  box.min() -= 0.5 * lacking;
  box.max() += 0.5 * lacking;
  return box;
}

/// How far contact is past what is tolerated, over the window, sampled coarsely.
class ContactExcess {
 public:
  ContactExcess(const JointEvaluator& judge, const SupportedMap& map, double torsion)
      : nodes_((map.size + kContactEvery - 1) / kContactEvery + 1) {
    excess_.resize(static_cast<std::size_t>(nodes_ * nodes_));
    task::forEach(excess_.size(), {}, [&](std::size_t i) {
      const int row = static_cast<int>(i) / nodes_, column = static_cast<int>(i) % nodes_;
      const Vector3d angles(map.dorsiflexionOf(row * kContactEvery), map.lateralOf(column * kContactEvery), torsion);
      excess_[i] = judge.contact(judge.fromOwn(angles)).excess();
    });
  }

  double at(int row, int column) const {
    const double r = static_cast<double>(row % kContactEvery) / kContactEvery;
    const double c = static_cast<double>(column % kContactEvery) / kContactEvery;
    const auto node = [&](int down, int along) {
      return excess_[static_cast<std::size_t>((row / kContactEvery + down) * nodes_ + column / kContactEvery + along)];
    };
    return (1 - r) * ((1 - c) * node(0, 0) + c * node(0, 1)) + r * ((1 - c) * node(1, 0) + c * node(1, 1));
  }

 private:
  int nodes_;
  std::vector<double> excess_;
};

void addContact(SupportedMap& map, const JointEvaluator& judge, double torsion) {
  const ContactExcess excess(judge, map, torsion);
  for (int row = 0; row < map.size; ++row) {
    for (int column = 0; column < map.size; ++column) {
      if (excess.at(row, column) <= 0) continue;
      map.cells[static_cast<std::size_t>(row * map.size + column)] = Level::Beyond;
    }
  }
}

}  // namespace

SupportedMap supportedMap(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                          const Assumptions& assumptions, kinematics::JointIndex joint, const Vector3d& angles,
                          int size, const NeighbourContact* contact) {
  const JointEvaluator judge(specimen, articulation, assumptions, joint, contact);
  SupportedMap map;
  if (judge.fixed() || (!judge.hasFacets() && !judge.joint().typed)) return map;
  const double torsion = judge.toOwn(angles)[2];
  const Eigen::AlignedBox2d box = window(JointEvaluator(specimen, articulation, assumptions, joint), torsion);
  map.size = size;
  map.ventral = box.min().x();
  map.dorsal = box.max().x();
  map.right = box.min().y();
  map.left = box.max().y();
  map.cells.resize(static_cast<std::size_t>(size * size));
  task::forEach(static_cast<std::size_t>(size), {}, [&](std::size_t row) {
    Level* cell = &map.cells[row * static_cast<std::size_t>(size)];
    const double dorsiflexion = map.dorsiflexionOf(static_cast<int>(row));
    for (int column = 0; column < size; ++column)
      *cell++ = judge.level(judge.fromOwn({dorsiflexion, map.lateralOf(column), torsion}));
  });
  if (judge.asksContact()) addContact(map, judge, torsion);
  return map;
}

}  // namespace zyga::range
