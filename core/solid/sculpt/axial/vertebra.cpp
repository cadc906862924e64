#include "core/solid/sculpt/axial/vertebra.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/anatomy/characters.h"
#include "core/anatomy/condyle.h"
#include "core/linear/linear.h"

namespace zyga::solid {

using anatomy::Bone;
using anatomy::Facet;
using anatomy::FacetRole;
using anatomy::Measure;

namespace {

Point flipped(const Point& p) { return {p.x(), -p.y(), p.z()}; }

std::optional<Point> landmarkIfAny(const Bone& bone, const std::string& name) {
  const auto found = bone.landmarks.find(name);
  if (found == bone.landmarks.end()) return std::nullopt;
  return found->second;
}

VertebraSide describeSide(const Bone& bone, bool left) {
  const std::string suffix = left ? ".L" : ".R";
  const auto place = [&](const Point& p) { return left ? p : flipped(p); };
  VertebraSide side;
  side.diapophysis = place(bone.landmark("diapophysis" + suffix));
  side.parapophysis =
      place(landmarkIfAny(bone, "parapophysis" + suffix).value_or(bone.landmark("diapophysis" + suffix)));
  if (const auto tip = landmarkIfAny(bone, "ribTip" + suffix)) side.ribTip = place(*tip);
  const auto facet = [&](FacetRole role) -> std::optional<Facet> {
    const Facet* found = bone.facet(role);
    if (!found) return std::nullopt;
    return left ? *found : mirrored(*found);
  };
  side.prezyg = facet(left ? FacetRole::PrezygLeft : FacetRole::PrezygRight);
  side.postzyg = facet(left ? FacetRole::PostzygLeft : FacetRole::PostzygRight);
  return side;
}

Point ballBase(const Bone& bone) { return bone.landmark(hasCondyleBehind(bone) ? "caudalRim" : "cranialRim"); }

/// A condyle is a cap over a rim of 0.45 cotyle heights; radius of the ball it is part of.
double condyleRadius(const Bone& bone) {
  const double depth = (bone.landmark("condyleTip") - ballBase(bone)).norm();
  if (depth <= 1e-6) return 0;
  const double rim = 0.45 * bone.measures.value(Measure::CotyleHeight);
  return (rim * rim + depth * depth) / (2 * depth);
}

double widening(const Bone& bone) {
  const double height = bone.measures.value(Measure::CotyleHeight);
  return std::clamp(bone.measures.valueOr(Measure::CotyleWidth, height) / height, 0.5, 2.0);
}

/// Centre of the ball that a condyle is part of. Low swellings have it farther back than the joint turns about.
Point ballCentre(const Bone& bone) {
  const Point tip = bone.landmark("condyleTip");
  const Point way = tip - ballBase(bone);
  return way.norm() <= 1e-6 ? tip : Point(tip - condyleRadius(bone) * way.normalized());
}

/// The vertebra behind this one, or before it, if a joint joins them.
const Bone* next(const anatomy::Specimen& specimen, anatomy::BoneIndex bone, bool behind) {
  for (std::size_t i = 0; i < specimen.joints.size(); ++i) {
    const anatomy::JointIndex joint{i};
    if (specimen[joint].proximal != bone && specimen[joint].distal != bone) continue;
    const Bone& other = specimen[specimen[joint].proximal == bone ? specimen[joint].distal : specimen[joint].proximal];
    if (!anatomy::isVertebra(other.name.kind)) continue;
    if ((specimen.cranialBone(joint) == bone) == behind) return &other;
  }
  return nullptr;
}

}  // namespace

Shape BallPart::solid(double by) const {
  return ellipsoid(centre, Point(radius + by, radius * widening + by, radius + by));
}

Vertebra describeVertebra(const anatomy::Specimen& specimen, anatomy::BoneIndex index) {
  const Bone& bone = specimen[index];
  Vertebra v;
  v.number = bone.name.number;
  v.length = bone.measures.value(Measure::Length);
  v.height = bone.measures.value(Measure::CotyleHeight);
  v.width = bone.measures.valueOr(Measure::CotyleWidth, v.height);
  v.wedge = bone.measures.valueOr(Measure::Wedge, 0);
  v.fork = bone.measures.valueOr(Measure::SpineFork, 0);
  v.condyle = {ballCentre(bone), condyleRadius(bone), widening(bone)};
  v.ballBehind = hasCondyleBehind(bone);
  const bool locked = anatomy::charactersOf(specimen.plan).column.hyposphenes > 0;
  if (const Bone* hind = next(specimen, index, true)) {
    if (!hasCondyleBehind(*hind)) {
      const Point seat = bone.landmark("caudal") + ballCentre(*hind) - hind->landmark("cranial");
      v.cotyle = {seat, condyleRadius(*hind), widening(*hind)};
    }
    if (locked) v.wedgeBehind = wedgeBetween(bone, *hind, false);
  }
  if (const Bone* front = next(specimen, index, false)) {
    if (hasCondyleBehind(*front)) {
      const Point seat = bone.landmark("cranial") + ballCentre(*front) - front->landmark("caudal");
      v.cotyle = {seat, condyleRadius(*front), widening(*front)};
      v.ballBehind = true;
    }
    if (locked) v.wedgeBefore = wedgeBetween(*front, bone, true);
  }
  v.cranialRim = bone.landmark("cranialRim");
  v.caudalRim = bone.landmark("caudalRim");
  v.canal = bone.landmark("canal");
  v.spineTop = bone.landmark("spineTop");
  v.left = describeSide(bone, true);
  v.right = describeSide(bone, false);
  return v;
}

using anatomy::Facet;

namespace {

/// How much larger the ellipse with the outline's length and width must be to hold the whole outline.
double ellipseExcess(const Facet& facet) {
  const double a = facet.length() / 2, b = facet.width() / 2;
  double most = 1;
  for (const Eigen::Vector2d& p : facet.outline) most = std::max(most, std::hypot(p.x() / a, p.y() / b));
  return most;
}

/// x along the facet's normal, z along the direction of sliding.
Frame facetFrame(const Facet& facet) { return frameAlong(facet.centre, facet.centre + facet.normal, facet.slide); }

bool steep(const Facet& facet) { return std::abs(facet.normal.z()) < 0.6; }

/// The pad's top stands over the facet's plane and is levelled later.
Shape facetPad(const Facet& facet) {
  const double grow = 1.46 * ellipseExcess(facet), depth = padDepth(facet), over = 0.08 * facet.length();
  const double along = grow * facet.length() / 2, across = grow * facet.width() / 2;
  return loft(
      facetFrame(facet),
      {{-depth, 0.55 * across, 0.6 * along}, {-0.45 * depth, 0.90 * across, 0.92 * along}, {over, across, along}},
      0.3 * over);
}

/// All that must be free over a facet, and on from it towards the bone's middle, where the neighbour's facet slides.
Shape roomOver(const Facet& facet, double slide) {
  const double grow = 1.6 * ellipseExcess(facet);
  const double along = grow * facet.length() / 2, across = grow * facet.width() / 2;
  // Steep facets need less room over them, and have less before they meet the bone's own rim.
  const double high = (steep(facet) ? 0.4 : 0.8) * facet.length();
  const double on = 0.5 * slide * facet.length();
  const double towardsMiddle = facet.centre.x() * facet.slide.x() > 0 ? -on : on;
  const Shape room =
      loft(facetFrame(facet),
           {{0, across, along + on, 0, towardsMiddle}, {high, 1.1 * across, 1.3 * along + on, 0, towardsMiddle}}, 0);
  // Facets that look at each other across the mid-plane each clear their own half.
  return facet.normal.y() < 0 ? intersect(room, halfSpace(Point::Zero(), -Point::UnitY())) : room;
}

/// A left facet and the mirror image of a right one, laid in one go so that the bone stays symmetric.
struct FacetPair {
  std::optional<Facet> left, right;
  const Facet& either() const { return left ? *left : *right; }
  bool empty() const { return !left && !right; }
  template <class Sculpt>
  Shape both(Sculpt sculpt) const {
    return unite({left ? sculpt(*left) : Shape(), right ? mirrored(sculpt(*right)) : Shape()});
  }
};

Shape addPads(const Shape& bone, const FacetPair& pair) {
  return pair.empty() ? bone : smoothUnion(bone, pair.both(facetPad), 0.25 * padDepth(pair.either()));
}

/// The pads stand higher over their planes than this blend is wide, so the blend rounds edges only.
Shape level(const Shape& bone, const FacetPair& pair, double slide) {
  const auto room = [slide](const Facet& facet) { return roomOver(facet, slide); };
  return pair.empty() ? bone : smoothCut(bone, pair.both(room), 0.05 * pair.either().length());
}

}  // namespace

double padDepth(const Facet& facet) {
  // Hind facets that look outward stand back to back: their pads meet in the mid-plane.
  const double room = steep(facet) && facet.normal.y() > 0 ? 0.9 * facet.centre.y() : facet.length();
  return std::min(0.32 * facet.length(), room);
}

Shape layFacets(const Shape& bone, const Vertebra& v, double slide) {
  const FacetPair front{v.left.prezyg, v.right.prezyg}, hind{v.left.postzyg, v.right.postzyg};
  return level(level(addPads(addPads(bone, front), hind), front, slide), hind, slide);
}

Shape web(const std::vector<Point>& outline, double middle, double rim) {
  Point centre = Point::Zero();
  for (const Point& p : outline) centre += p / static_cast<double>(outline.size());
  Eigen::Matrix3d scatter = Eigen::Matrix3d::Zero();
  for (const Point& p : outline) scatter += (p - centre) * (p - centre).transpose();
  const auto axes = linear::symmetricEigen(scatter);
  const Frame frame = frameOn(centre, axes.vectors.col(0), axes.vectors.col(2));
  std::vector<Eigen::Vector2d> flat;
  for (const Point& p : outline) flat.push_back((frame.inverse() * p).head<2>());
  const double reach = std::sqrt(axes.values(1) / static_cast<double>(outline.size()));
  return plate(frame, flat, {middle, rim, 0.8 * reach, 0, 0});
}

Shape bluntNotch(const Point& top, double deep, double length, double height) {
  return ellipsoid(top + Point(0, 0, 0.2 * deep), Point(2 * length, 0.03 * height + 0.30 * deep, 1.2 * deep));
}

Shape ridge(const Point& a, const Point& b, double wide, double thick, const Point& wideDirection) {
  return strut(a, b, {wide, thick}, {wide, thick}, wideDirection);
}

namespace {

Point turned(double angle, const Point& p) { return Eigen::AngleAxisd(-angle, Point::UnitY()) * p; }

/// Half a turn about the vertical, which lays a ball behind to the front.
Point turnedRound(const Point& p) { return {-p.x(), -p.y(), p.z()}; }
Shape turnedRound(const Shape& shape) {
  return placed(shape, Frame(Eigen::AngleAxisd(std::numbers::pi, Point::UnitZ())));
}
/// The centrum alone.
Vertebra turnedRound(const Vertebra& v) {
  Vertebra out = v;
  out.ballBehind = !v.ballBehind;
  out.cranialRim = turnedRound(v.caudalRim);
  out.caudalRim = turnedRound(v.cranialRim);
  out.condyle.centre = turnedRound(v.condyle.centre);
  out.cotyle.centre = turnedRound(v.cotyle.centre);
  return out;
}

Shape cutEnds(const Shape& spool, const Vertebra& v) {
  const double blend = 0.05 * v.height;
  const Shape back = halfSpace(v.caudalRim, turned(-0.5 * v.wedge, -Point::UnitX()));
  const Shape free = intersect(spool, back, blend);
  // Under a condyle no edge is left that would stand round it: the spool tapers into it.
  if (!v.condyle.flat()) return free;
  return intersect(free, halfSpace(v.cranialRim, turned(0.5 * v.wedge, Point::UnitX())), blend);
}

/// The part of the ball that stands before the centrum, no wider than its base: a low ball would stand over it.
Shape condyleCap(const Vertebra& v) {
  const double H = v.height, base = v.cranialRim.x() - 0.015 * H, top = v.condyle.centre.x() + v.condyle.radius + H;
  const double y = 0.455 * v.width, z = 0.455 * H;
  const Shape column =
      loft(Frame(Eigen::Translation3d(0, v.cranialRim.y(), v.cranialRim.z())), {{base, y, z}, {top, y, z}}, 0);
  return intersect(v.condyle.solid(), column);
}

/// Deepest point of the cotyle before the hind rim, m.
double cotyleDepth(const Vertebra& v) {
  if (v.cotyle.flat()) return 0.06 * v.height;
  return std::max(0.0, v.cotyle.centre.x() + v.cotyle.radius - v.caudalRim.x());
}

constexpr double kCotyleWall = 0.14;  ///< of the height

}  // namespace

/// How much the hind rim must flare to stand round the neighbour's condyle, which may be larger than this cotyle.
double rimFlare(const Vertebra& v) {
  if (v.cotyle.flat()) return 1.03;
  const double off = (v.cotyle.centre - v.caudalRim).norm();
  const double opening = std::sqrt(std::max(v.cotyle.radius * v.cotyle.radius - off * off, 0.0));
  return std::max(1.05, (opening + 0.055 * v.height) / (0.5 * v.height));
}

Shape centrum(const Vertebra& v, double waist, double keel, double frontFlare) {
  if (v.ballBehind) return turnedRound(centrum(turnedRound(v), waist, keel, frontFlare));
  const double L = v.length, y = v.width / 2, z = v.height / 2, rise = keel * v.height;
  const double front = frontFlare > 0 ? frontFlare : v.condyle.flat() ? 1.02 : 0.94, over = 0.04 * L;
  const double middle = 0.5 * (1 + waist), flare = rimFlare(v);
  const bool flat = v.condyle.flat();
  const double end = flat ? front : 0.90, beyond = flat ? over : 0;
  const Shape spool = loft(Frame::Identity(),
                           {{-0.5 * L - over, flare * y, flare * z},
                            {-0.5 * L + 0.06 * v.height, 0.985 * flare * y, 0.985 * flare * z},
                            {-0.27 * L, middle * 0.95 * y, middle * 0.97 * z, 0, 0.55 * rise, 0.08},
                            {0.02 * L, waist * y, waist * z, 0, rise, 0.2},
                            {0.28 * L, middle * 0.94 * front * y, middle * 0.96 * front * z, 0, 0.5 * rise, 0.08},
                            {0.5 * L - (flat ? 0.05 : 0.13) * v.height, 0.985 * front * y, 0.985 * front * z},
                            {0.5 * L + beyond, end * y, end * z}},
                           0);
  const Shape ends = cutEnds(spool, v);
  return flat ? ends : smoothUnion(ends, condyleCap(v), 0.05 * v.height);
}

Shape hollowCotyle(const Shape& bone, const Vertebra& v) {
  if (v.ballBehind) return turnedRound(hollowCotyle(turnedRound(bone), turnedRound(v)));
  if (!v.cotyle.flat()) return smoothCut(bone, v.cotyle.solid(), 0.05 * v.height);
  // Flat faces are dished a little, so that a rim stands round them.
  const double deep = 0.06 * v.height, ball = (0.16 * v.height * v.height + deep * deep) / (2 * deep);
  const BallPart dish{v.caudalRim - Point(ball - deep, 0, 0), ball, v.width / v.height};
  return smoothCut(bone, dish.solid(), 0.06 * v.height);
}

Shape cotyleWall(const Vertebra& v) {
  if (v.ballBehind) return turnedRound(cotyleWall(turnedRound(v)));
  const double wall = kCotyleWall * v.height;
  if (!v.cotyle.flat()) return v.cotyle.solid(wall);
  return halfSpace(v.caudalRim + Point(cotyleDepth(v) + wall, 0, 0), Point::UnitX());
}

Span hollowSpan(const Vertebra& v, double middle, double length) {
  if (v.ballBehind) {
    const Span span = hollowSpan(turnedRound(v), -middle, length);
    return {-span.front, -span.hind};
  }
  Span span{middle - 0.5 * length, middle + 0.5 * length};
  const double hind = v.caudalRim.x() + cotyleDepth(v) + kCotyleWall * v.height;
  const double front = v.cranialRim.x() - 0.14 * v.height;
  if (span.hind < hind) span = {hind, hind + length};
  span.front = std::clamp(span.front, span.hind + 0.04 * v.length, std::max(front, span.hind + 0.04 * v.length));
  return span;
}

Shape canalTool(const Vertebra& v, double radius) {
  const double far = 0.75 * v.length;
  const Frame frame = Frame(Eigen::Translation3d(v.canal));
  return loft(frame,
              {{-far, 1.2 * radius, 1.1 * radius},
               {-0.4 * v.length, 1.25 * radius, 1.2 * radius},
               {0, radius, radius},
               {0.4 * v.length, 1.25 * radius, 1.2 * radius},
               {far, 1.2 * radius, 1.1 * radius}},
              0);
}

}  // namespace zyga::solid
