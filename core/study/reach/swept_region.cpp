#include "core/study/reach/swept_region.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using std::numbers::pi;

/// Rings kept beyond the farthest reach, so that the outline has room.
constexpr int kRingsAround = 6;

/// Least value of a ring's entries from `first` to `last` (in spokes, not whole, at most one turn apart) around each
/// spoke: the two ends are taken between spokes, what lies between them by a sliding window.
class RingWindow {
 public:
  RingWindow(double first, double last, int spokes) : first_(first), last_(last), spokes_(spokes) {
    from_ = static_cast<int>(std::ceil(first));
    to_ = std::min(static_cast<int>(std::floor(last)), from_ + spokes - 1);
  }

  void slide(const std::vector<float>& ring, std::vector<float>& least) {
    const int n = spokes_;
    const auto entry = [&](int i) { return ring[static_cast<std::size_t>(((i % n) + n) % n)]; };
    queue_.clear();
    std::size_t head = 0;
    for (int i = from_; i < to_; ++i) push(i, entry(i), head);
    for (int j = 0; j < n; ++j) {
      float value = std::min(between(entry, j + first_), between(entry, j + last_));
      if (to_ >= from_) {
        push(j + to_, entry(j + to_), head);
        while (queue_[head].index < j + from_) ++head;
        value = std::min(value, queue_[head].value);
      }
      least[static_cast<std::size_t>(j)] = value;
    }
  }

 private:
  struct Entry {
    int index;
    float value;
  };
  /// Keeps the queue rising from its head: whoever is no less than a later entry will never be the least.
  void push(int index, float value, std::size_t head) {
    while (queue_.size() > head && queue_.back().value >= value) queue_.pop_back();
    queue_.push_back({index, value});
  }
  template <class At>
  static float between(const At& entry, double place) {
    const int below = static_cast<int>(std::floor(place));
    const auto share = static_cast<float>(place - below);
    return (1 - share) * entry(below) + share * entry(below + 1);
  }

  double first_, last_;
  int spokes_, from_, to_;
  std::vector<Entry> queue_;
};

/// How far from joint k the tip can be at most: its links stretched out.
std::vector<double> farthest(const std::vector<PlanarJoint>& joints, const Vector2d& tip) {
  std::vector<double> reach(joints.size());
  for (std::size_t k = joints.size(); k-- > 0;) {
    const bool last = k + 1 == joints.size();
    const Vector2d& next = last ? tip : joints[k + 1].centre;
    reach[k] = (next - joints[k].centre).norm() + (last ? 0 : reach[k + 1]);
  }
  return reach;
}

}  // namespace

SweptRegion::SweptRegion(const std::vector<PlanarJoint>& joints, const Vector2d& tip, int rings, const Watch& watch) {
  if (joints.empty()) return;
  const std::vector<double> reach = farthest(joints, tip);
  step_ = reach.front() / rings;
  for (std::size_t k = joints.size(); k-- > 0;) {
    if (watch.cancelled()) {
      distances_.clear();
      return;
    }
    if (k + 1 == joints.size()) {
      turnAbout(joints[k], reach[k], [&](const Vector2d& p) { return (p - tip).norm(); });
    } else {
      const SweptRegion before = *this;
      turnAbout(joints[k], reach[k], [&](const Vector2d& p) { return before.distance(p); });
    }
    watch.tell(1 - static_cast<double>(k) / static_cast<double>(joints.size()));
  }
}

void SweptRegion::turnAbout(const PlanarJoint& joint, double radius, const Field& before) {
  centre_ = joint.centre;
  radius_ = radius;
  rings_ = static_cast<int>(std::ceil(radius / step_)) + kRingsAround + 1;
  spokes_ = std::max(16, static_cast<int>(std::ceil(2 * pi * radius / step_)));
  distances_.resize(static_cast<std::size_t>(rings_) * static_cast<std::size_t>(spokes_));
  // What the joint brings to a spoke comes from the spokes that lie its angles back.
  const double perSpoke = 2 * pi / spokes_;
  RingWindow window(-joint.most / perSpoke, -joint.least / perSpoke, spokes_);
  std::vector<float> ring(static_cast<std::size_t>(spokes_)), least(ring.size());
  std::vector<Vector2d> spoke(ring.size());
  for (std::size_t j = 0; j < spoke.size(); ++j) {
    const double angle = perSpoke * static_cast<double>(j);
    spoke[j] = {std::cos(angle), std::sin(angle)};
  }
  for (int i = 0; i < rings_; ++i) {
    for (std::size_t j = 0; j < ring.size(); ++j) {
      ring[j] = static_cast<float>(before(centre_ + i * step_ * spoke[j]));
    }
    window.slide(ring, least);
    std::copy(least.begin(), least.end(), distances_.begin() + static_cast<std::ptrdiff_t>(i) * spokes_);
  }
}

double SweptRegion::distance(const Vector2d& p) const {
  const Vector2d from = p - centre_;
  const double r = from.norm();
  const double outermost = (rings_ - 1) * step_;
  const double place = std::min(r, outermost) / step_;
  double turn = std::atan2(from.y(), from.x()) / (2 * pi) * spokes_;
  if (turn < 0) turn += spokes_;
  const int ring = std::min(static_cast<int>(place), rings_ - 2);
  const int spoke = std::min(static_cast<int>(turn), spokes_ - 1);
  const int next = spoke + 1 == spokes_ ? 0 : spoke + 1;
  const double a = place - ring, b = turn - spoke;
  const double inner = (1 - b) * at(ring, spoke) + b * at(ring, next);
  const double outer = (1 - b) * at(ring + 1, spoke) + b * at(ring + 1, next);
  return std::max(0.0, (1 - a) * inner + a * outer) + std::max(0.0, r - outermost);
}

double areaOf(const std::vector<Vector2d>& outline) {
  double twice = 0;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Vector2d& a = outline[i];
    const Vector2d& b = outline[(i + 1) % outline.size()];
    twice += a.x() * b.y() - a.y() * b.x();
  }
  return 0.5 * twice;
}

}  // namespace zyga::study
