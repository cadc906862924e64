#include "core/study/reach/envelope.h"

#include <algorithm>
#include <cmath>

#include "core/study/reach/swept_region.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;

/// Where the outlines cross the ground, ahead and sorted.
std::vector<double> groundCrossings(const std::vector<Line>& outlines) {
  std::vector<double> at;
  for (const Line& outline : outlines) {
    for (std::size_t i = 0; i < outline.size(); ++i) {
      const Vector2d& a = outline[i];
      const Vector2d& b = outline[(i + 1) % outline.size()];
      if ((a.y() < 0) != (b.y() < 0)) at.push_back(a.x() + a.y() / (a.y() - b.y()) * (b.x() - a.x()));
    }
  }
  std::sort(at.begin(), at.end());
  return at;
}

/// The part of a closed polygon that is over the ground.
Line overGround(const Line& outline) {
  Line kept;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Vector2d& a = outline[i];
    const Vector2d& b = outline[(i + 1) % outline.size()];
    if (a.y() >= 0) kept.push_back(a);
    if ((a.y() < 0) != (b.y() < 0)) kept.emplace_back(a.x() + a.y() / (a.y() - b.y()) * (b.x() - a.x()), 0);
  }
  return kept;
}

void readOff(Envelope& made) {
  const auto crossings = groundCrossings(made.outlines);
  for (std::size_t i = 0; i + 1 < crossings.size(); i += 2) made.ground.push_back({crossings[i], crossings[i + 1]});
  for (const Line& outline : made.outlines) made.area += areaOf(overGround(outline));
  if (made.outlines.empty()) return;
  made.highest = made.lowest = made.farthest = made.outlines.front().front();
  for (const Line& outline : made.outlines) {
    for (const Vector2d& p : outline) {
      if (p.y() > made.highest.y()) made.highest = p;
      if (p.y() < made.lowest.y()) made.lowest = p;
      if (p.x() > made.farthest.x()) made.farthest = p;
    }
  }
}

}  // namespace

std::optional<Envelope> envelope(const range::Scenario& scenario, const EnvelopeOptions& options,
                                 const task::Task& task) {
  const anatomy::Specimen& specimen = scenario.specimen();
  const kinematics::Placement& X_WB = scenario.placement();
  if (!specimen.findBone("skull")) throw reason::Failure(reason::Reason(kNoSnout));
  const PlanarNeck neck = planarNeck(scenario);
  Envelope made;
  made.plane = neck.plane;
  made.unjudged = neck.unjudged;
  made.contactJudged = scenario.contact() != nullptr;
  made.outOfPlane = neck.outOfPlane;
  made.neck = neckLine(specimen, X_WB, made.plane);
  made.body = bodyLines(specimen, X_WB, made.plane);
  made.foreFeet = foreFeetAhead(specimen, X_WB, made.plane);
  // With the space to look at, the outline takes the first tenth of the time.
  const double outlineShare = options.space ? 0.1 : 1;
  const SweptRegion region(neck.chain, neck.tip, options.rings, task.part(0, outlineShare));
  if (task.cancelled()) return std::nullopt;
  made.outlines = outlinesOf(region);
  made.precision = region.step();
  readOff(made);
  if (!options.space) return made;
  made.space = reachSpace(scenario, options.reach, task.part(outlineShare, 1));
  if (!made.space) return std::nullopt;
  return made;
}

}  // namespace zyga::study
