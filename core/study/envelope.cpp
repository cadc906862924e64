#include "core/study/envelope.h"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "core/kinematics/bend.h"
#include "core/range/limits.h"
#include "core/study/figures_text.h"
#include "core/study/swept_region.h"

namespace zyga::study {
namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;
using kinematics::JointIndex;
using kinematics::Pose;

/// Neck and head with all their angles zero.
struct NeutralNeck {
  std::vector<JointIndex> joints;  ///< base first
  Pose pose;
  kinematics::Placement X_WB;
};

NeutralNeck neutralNeck(const Subject& subject) {
  const auto skull = subject.specimen.findBone("skull");
  if (!skull) throw std::invalid_argument("the specimen has no skull whose snout could reach anything");
  NeutralNeck neck{kinematics::dragChain(subject.specimen, *skull), subject.pose, {}};
  for (const JointIndex joint : neck.joints) neck.pose[joint] = Vector3d::Zero();
  neck.X_WB = kinematics::place(subject.specimen, subject.articulation, neck.pose);
  return neck;
}

std::vector<PlanarJoint> planarJoints(const Subject& subject, const NeutralNeck& neck, Envelope& made) {
  const Line line = neckLine(subject.specimen, neck.X_WB, made.plane);
  std::vector<PlanarJoint> joints;
  for (std::size_t i = 0; i < neck.joints.size(); ++i) {
    const JointIndex joint = neck.joints[i];
    const range::Band band =
        range::band(subject.specimen, subject.articulation, subject.assumptions, joint, Vector3d::Zero(), 0);
    const bool moves = band.judged && !band.empty;
    if (!band.judged) made.unjudged.push_back(subject.specimen[joint].id);
    joints.push_back({line[i], moves ? band.least : 0, moves ? band.most : 0});
  }
  return joints;
}

double outOfPlane(const Subject& subject, const NeutralNeck& neck, const SagittalPlane& plane) {
  const Vector3d left = plane.up_W.cross(plane.ahead_W);
  double most = 0;
  for (const JointIndex joint : neck.joints) {
    const anatomy::Joint& j = subject.specimen[joint];
    const Vector3d p_W = neck.X_WB[j.proximal.value] * j.centreProximal;
    most = std::max(most, std::abs((p_W - plane.p_WOrigin).dot(left)));
  }
  return most;
}

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
  const NeutralNeck neck = neutralNeck(subject);
  made.plane = neckPlane(subject.specimen, X_WB);
  made.neck = neckLine(subject.specimen, X_WB, made.plane);
  made.body = bodyLines(subject.specimen, X_WB, made.plane);
  made.foreFeet = foreFeetAhead(subject.specimen, X_WB, made.plane);
  made.outOfPlane = outOfPlane(subject, neck, made.plane);
  const auto joints = planarJoints(subject, neck, made);
  const Vector2d snout = neckLine(subject.specimen, neck.X_WB, made.plane).back();
  const double outlineShare = options.space ? 0.1 : 1;
  const SweptRegion region(joints, snout, options.rings, part(watch, 0, outlineShare));
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
    all.push_back("With sideways bends and torsion it reaches at least " + figure(e.space->volume, 1) +
                  " m³ of space over the ground and " + figure(e.space->stripArea, 1) + " m² of ground.");
  }
  if (!e.unjudged.empty()) {
    all.push_back(std::to_string(e.unjudged.size()) + " joints are judged by nothing and were held in neutral.");
  }
  return all;
}

}  // namespace zyga::study
