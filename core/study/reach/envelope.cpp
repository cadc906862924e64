#include "core/study/reach/envelope.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "core/study/figures_text.h"
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

/// The outline takes the first tenth of the time, the space the rest.
Watch part(const Watch& watch, double from, double to) {
  return {watch.cancel, [&watch, from, to](double share) { watch.tell(from + (to - from) * share); }};
}

}  // namespace

std::optional<Envelope> envelope(const Subject& subject, const EnvelopeOptions& options, const Watch& watch) {
  Envelope made;
  const auto X_WB = kinematics::place(subject.specimen, subject.articulation, subject.pose);
  if (!subject.specimen.findBone("skull")) {
    throw std::invalid_argument("the specimen has no skull whose snout could reach anything");
  }
  const PlanarNeck neck = planarNeck(subject);
  made.plane = neck.plane;
  made.unjudged = neck.unjudged;
  made.outOfPlane = neck.outOfPlane;
  made.neck = neckLine(subject.specimen, X_WB, made.plane);
  made.body = bodyLines(subject.specimen, X_WB, made.plane);
  made.foreFeet = foreFeetAhead(subject.specimen, X_WB, made.plane);
  const double outlineShare = options.space ? 0.1 : 1;
  const SweptRegion region(neck.chain, neck.tip, options.rings, part(watch, 0, outlineShare));
  if (watch.cancelled()) return std::nullopt;
  made.outlines = outlinesOf(region);
  made.precision = region.step();
  readOff(made);
  if (!options.space) return made;
  made.space = reachSpace(subject, options.reach, part(watch, outlineShare, 1));
  if (!made.space) return std::nullopt;
  return made;
}

std::vector<std::string> sentences(const Envelope& e) {
  std::vector<std::string> all;
  if (e.outlines.empty()) return all;
  all.push_back("Bending up and down only, the snout reaches " + metresWord(e.highest.y()) + " high and " +
                metresWord(e.farthest.x()) + " ahead of the neck's base.");
  if (e.ground.empty()) {
    all.push_back("It does not reach the ground; its lowest place is " + metresWord(e.lowest.y()) + " over it.");
  }
  for (const GroundStretch& stretch : e.ground) {
    const double origin = e.foreFeet.value_or(0);
    all.push_back("It reaches the ground from " + metresWord(stretch.from - origin) + " to " +
                  metresWord(stretch.to - origin) + " ahead of the " +
                  (e.foreFeet ? "foremost fore foot." : "neck's base."));
  }
  if (e.space) {
    const std::string ground = e.space->strip.empty() ? "" : " and " + figure(e.space->stripArea, 1) + " m² of ground";
    all.push_back("With sideways bends and torsion it reaches at least " + figure(e.space->volume, 1) +
                  " m³ of space over the ground" + ground + ".");
  }
  if (!e.unjudged.empty()) {
    all.push_back(std::to_string(e.unjudged.size()) + " joints are judged by nothing and were held in neutral.");
  }
  return all;
}

}  // namespace zyga::study
