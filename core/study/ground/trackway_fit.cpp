#include "core/study/ground/trackway_fit.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <limits>

namespace zyga::study {
namespace {

using Eigen::Vector2d;

/// Sum of squared misses of the feet from the prints they are given, after the best shift.
struct Seat {
  Vector2d shift = Vector2d::Zero();
  double cost = std::numeric_limits<double>::infinity();
};

Seat seat(const std::vector<StandingFoot>& feet, const std::vector<PlacedPrint>& prints, const Vector2d& start) {
  Seat best{start, 0};
  // Nearest prints, then the mean of the misses; a handful of rounds settles which print is whose.
  for (int round = 0; round < 8; ++round) {
    auto moved = prints;
    for (auto& print : moved) print.p_W += best.shift;
    Vector2d sum = Vector2d::Zero();
    double squares = 0;
    int count = 0;
    for (const auto& fit : fitFeet(feet, moved)) {
      if (!fit.print) continue;
      const Vector2d miss = fit.p_WCentre - moved[*fit.print].p_W;
      sum += miss;
      squares += miss.squaredNorm();
      ++count;
    }
    if (count == 0) return {};
    best.cost = squares - sum.squaredNorm() / count;
    best.shift += sum / count;
    if (sum.norm() / count < 1e-9) break;
  }
  return best;
}

}  // namespace

std::vector<FootFit> fitFeet(const std::vector<StandingFoot>& feet, const std::vector<PlacedPrint>& prints) {
  std::vector<FootFit> fits;
  for (const auto& foot : feet) {
    FootFit fit{.foot = foot.foot, .print = {}, .p_WCentre = foot.centre};
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < prints.size(); ++i) {
      const Vector2d miss = foot.centre - prints[i].p_W;
      if (prints[i].foot != foot.foot || miss.norm() >= least) continue;
      least = miss.norm();
      fit.print = i;
      fit.miss = Eigen::Rotation2Dd(-prints[i].heading) * miss;
    }
    fits.push_back(fit);
  }
  return fits;
}

Trackway movedUnder(const Trackway& trackway, const std::vector<StandingFoot>& feet) {
  const auto laid = layOut(trackway);
  Seat best;
  // Every print of a foot may be the one under it: start from each.
  for (const auto& foot : feet) {
    for (const auto& print : laid.prints) {
      if (print.foot != foot.foot) continue;
      const Seat found = seat(feet, laid.prints, foot.centre - print.p_W);
      if (found.cost < best.cost - 1e-12) best = found;
    }
  }
  Trackway moved = trackway;
  moved.x += best.shift.x();
  moved.y += best.shift.y();
  return moved;
}

std::vector<kinematics::LegTask> tasksOnto(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB,
                                           const std::vector<FootFit>& fits, const std::vector<PlacedPrint>& prints) {
  std::vector<kinematics::LegTask> tasks;
  for (const auto& fit : fits) {
    if (!fit.print) continue;
    const auto rig = kinematics::footRig(specimen, fit.foot);
    const auto& X_WFoot = X_WB[rig.bone.value];
    auto X_WFlat = kinematics::flatOnGround(rig, X_WFoot);
    // The toes come along: the middle of the whole foot, not of the rig's own soles, belongs over the print.
    auto X_WFlatB = X_WB;
    const Eigen::Isometry3d X_WW = X_WFlat * X_WFoot.inverse();
    for (auto& X : X_WFlatB) X = X_WW * X;
    const auto flat = feetOf(specimen, X_WFlatB);
    const auto foot =
        std::find_if(flat.begin(), flat.end(), [&](const StandingFoot& each) { return each.foot == fit.foot; });
    const Vector2d shift = prints[*fit.print].p_W - foot->centre;
    X_WFlat.translation().head<2>() += shift;
    tasks.push_back({fit.foot, X_WFlat});
  }
  return tasks;
}

SteppedOn stepOnto(const range::Scenario& scenario, const std::vector<PlacedPrint>& prints, double maxLowered) {
  const anatomy::Specimen& specimen = scenario.specimen();
  const kinematics::Articulation& articulation = scenario.articulation();
  const auto fits = fitFeet(feetOf(specimen, scenario.placement()), prints);
  const auto at = [&](double lowered) {
    kinematics::Pose low = scenario.pose();
    low.X_WRoot.translation().z() -= lowered;
    kinematics::FeetAnswer answer{low, {}};
    // A leg may turn its foot about the heel to get there; the next round puts the foot as it is turned now over the
    // print.
    for (int round = 0; round < 4; ++round) {
      const auto tasks =
          tasksOnto(specimen, kinematics::forwardKinematics(specimen, articulation, answer.pose), fits, prints);
      answer = kinematics::setFeet(specimen, articulation, low, tasks);
    }
    return SteppedOn{answer, lowered};
  };
  constexpr int kSteps = 24;
  SteppedOn best = at(0);
  for (int step = 1; step <= kSteps && !best.feet.hold(); ++step) {
    auto next = at(maxLowered * step / kSteps);
    if (next.feet.worstMiss() < best.feet.worstMiss()) best = std::move(next);
  }
  return best;
}

}  // namespace zyga::study
