#include "core/range/explain.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "core/range/limit_search.h"

namespace zyga::range {
namespace {

using Eigen::Vector3d;
using How = MotionState::How;
using Remark = Explanation::Remark;

/// Angles that would read 0.0° are not worth a word.
constexpr double kShown = 0.05 * std::numbers::pi / 180;

std::vector<int> motionsShown(const Vector3d& angles) {
  std::vector<int> motions;
  for (int k = 0; k < 3; ++k) {
    if (std::abs(angles[k]) >= kShown) motions.push_back(k);
  }
  return motions;
}

/// One joint, its verdict and its angles.
class Explainer {
 public:
  Explainer(const JointEvaluator& judge, const JointVerdict& verdict, const Vector3d& angles, const KnownRanges& known)
      : judge_(judge), verdict_(verdict), angles_(angles), known_(known), motions_(motionsShown(angles)) {}

  Explanation run() {
    const bool contact = std::any_of(verdict_.findings.begin(), verdict_.findings.end(),
                                     [](const Finding& f) { return f.kind == FindingKind::BoneContact; });
    switch (verdict_.level) {
      case Level::NotJudged:
        return {};
      case Level::Supported:
        return asTurned();
      case Level::Near:
        return judge_.hasFacets() ? nearest() : Explanation{};
      default:
        return judge_.hasFacets() || (contact && judge_.joint().typed) ? atFault() : Explanation{};
    }
  }

 private:
  Explanation asTurned() const {
    Explanation told;
    for (const int k : motions_) {
      const double angle = angles_[k];
      MotionState state{k, angle, 0, How::Turned};
      if (!judge_.hasFacets() && judge_.joint().typed) {
        const anatomy::AngleLimits& limits = judge_.joint().typed->angles[static_cast<std::size_t>(k)];
        state.end = angle < 0 ? limits.min : limits.max;
        if (state.end * angle > 0) state.how = How::Within;
      }
      told.motions.push_back(state);
    }
    return told;
  }

  Interval rangeOf(int motion) const {
    if (!known_) return LimitSearch(judge_, angles_, motion).interval();
    const MotionRange& band = known_(motion);
    return {band.min, band.max, band.empty, false, false};
  }

  /// The motion that has used most of its range.
  Explanation nearest() const {
    Explanation told;
    double most = -1;
    for (const int k : motions_) {
      const Interval range = rangeOf(k);
      if (range.empty) continue;
      const double end = angles_[k] < 0 ? range.min : range.max;
      const double used = std::abs(angles_[k]) / std::max(std::abs(end), kShown);
      if (used <= most) continue;
      most = used;
      told.motions = {{k, angles_[k], end, How::Within}};
    }
    if (told.motions.empty()) told.remark = Remark::NeutralPose;
    return told;
  }

  bool typedAtFault(int motion) const {
    return std::any_of(verdict_.findings.begin(), verdict_.findings.end(), [motion](const Finding& f) {
      return f.kind == FindingKind::TypedLimit && f.motion == motion && f.level == Level::Beyond;
    });
  }

  Explanation atFault() const {
    if (motions_.empty()) return {{}, Remark::NeutralPose};
    std::vector<int> motions = motions_;
    std::erase_if(motions, [this](int k) { return typedAtFault(k); });  // their finding names them
    Explanation told;
    std::vector<std::pair<int, Interval>> ranges;
    for (const int k : motions) ranges.emplace_back(k, rangeOf(k));
    for (const auto& [k, range] : ranges) {
      if (const auto end = endLeft(range, angles_[k])) told.motions.push_back({k, angles_[k], *end, How::Past});
    }
    if (!told.motions.empty() || motions.size() < motions_.size()) return told;
    for (const int k : motions) {
      const Vector3d alone = judge_.withMotion(Vector3d::Zero(), k, angles_[k]);
      const Interval range = LimitSearch(judge_, alone, k).interval();
      if (const auto end = endLeft(range, angles_[k])) told.motions.push_back({k, angles_[k], *end, How::PastByItself});
    }
    if (!told.motions.empty()) return told;
    for (const auto& [k, range] : ranges) {
      if (!range.empty) told.motions.push_back(outside(k, range));
    }
    return told.motions.empty() ? onlyTogether() : told;
  }

  /// The end past which an angle has left a range that leads out from zero.
  static std::optional<double> endLeft(const Interval& range, double angle) {
    if (range.empty || range.min > 0 || range.max < 0) return std::nullopt;
    if (angle > range.max) return range.max;
    return angle < range.min ? std::optional(range.min) : std::nullopt;
  }

  MotionState outside(int motion, const Interval& range) const {
    const double angle = angles_[motion];
    const double end = angle > range.max ? range.max : range.min;
    const bool past = angle * end > 0 && std::abs(angle) > std::abs(end);
    return {motion, angle, end, past ? How::Past : How::ShortOf};
  }

  Explanation onlyTogether() const {
    Explanation told = asTurned();
    for (MotionState& state : told.motions) state = {state.motion, state.angle, 0, How::Turned};
    if (judge_.beyond(Vector3d::Zero()) || judge_.contactBeyond(Vector3d::Zero())) {
      told.remark = Remark::NeutralBeyond;
    } else if (told.motions.size() > 1) {
      told.remark = Remark::OnlyTogether;
    }
    return told;
  }

  const JointEvaluator& judge_;
  const JointVerdict& verdict_;
  Vector3d angles_;
  const KnownRanges& known_;
  std::vector<int> motions_;
};

}  // namespace

Explanation explain(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                    const Assumptions& assumptions, const JointVerdict& verdict, const Vector3d& angles,
                    const NeighbourContact* contact, const KnownRanges& known) {
  const JointEvaluator judge(specimen, articulation, assumptions, verdict.joint, contact);
  return Explainer(judge, verdict, angles, known).run();
}

}  // namespace zyga::range
