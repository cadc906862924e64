#include "core/solid/sculpt/axial/parts.h"

#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>

namespace zyga::solid {

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
  const Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d> axes(scatter);
  const Frame frame = frameOn(centre, axes.eigenvectors().col(0), axes.eigenvectors().col(2));
  std::vector<Eigen::Vector2d> flat;
  for (const Point& p : outline) flat.push_back((frame.inverse() * p).head<2>());
  const double reach = std::sqrt(axes.eigenvalues()(1) / static_cast<double>(outline.size()));
  return plate(frame, flat, {middle, rim, 0.8 * reach, 0, 0});
}

Shape ridge(const Point& a, const Point& b, double wide, double thick, const Point& wideDirection) {
  return strut(a, b, {wide, thick}, {wide, thick}, wideDirection);
}

namespace {

Point turned(double angle, const Point& p) { return Eigen::AngleAxisd(-angle, Point::UnitY()) * p; }

Shape cutEnds(const Shape& spool, const Vertebra& v) {
  const double blend = 0.05 * v.height;
  const Shape front = halfSpace(v.cranialRim, turned(0.5 * v.wedge, Point::UnitX()));
  const Shape back = halfSpace(v.caudalRim, turned(-0.5 * v.wedge, -Point::UnitX()));
  return intersect(intersect(spool, front, blend), back, blend);
}

}  // namespace

/// How much the hind rim must flare to stand round the neighbour's condyle, which may be larger than this cotyle.
double rimFlare(const Vertebra& v) {
  if (v.cotyle.flat()) return 1.03;
  const double off = (v.cotyle.centre - v.caudalRim).norm();
  const double opening = std::sqrt(std::max(v.cotyle.radius * v.cotyle.radius - off * off, 0.0));
  return std::max(1.05, (opening + 0.055 * v.height) / (0.5 * v.height));
}

Shape centrum(const Vertebra& v, double waist, double keel, double frontFlare) {
  const double L = v.length, y = v.width / 2, z = v.height / 2, rise = keel * v.height;
  const double front = frontFlare > 0 ? frontFlare : v.condyle.flat() ? 1.02 : 0.94, over = 0.04 * L;
  const double middle = 0.5 * (1 + waist), flare = rimFlare(v);
  const Shape spool = loft(Frame::Identity(),
                           {{-0.5 * L - over, flare * y, flare * z},
                            {-0.5 * L + 0.06 * v.height, 0.985 * flare * y, 0.985 * flare * z},
                            {-0.27 * L, middle * 0.95 * y, middle * 0.97 * z, 0, 0.55 * rise, 0.08},
                            {0.02 * L, waist * y, waist * z, 0, rise, 0.2},
                            {0.28 * L, middle * 0.94 * front * y, middle * 0.96 * front * z, 0, 0.5 * rise, 0.08},
                            {0.5 * L - 0.05 * v.height, 0.985 * front * y, 0.985 * front * z},
                            {0.5 * L + over, front * y, front * z}},
                           0);
  const Shape ends = cutEnds(spool, v);
  return v.condyle.flat() ? ends : smoothUnion(ends, v.condyle.solid(), 0.05 * v.height);
}

Shape hollowCotyle(const Shape& bone, const Vertebra& v) {
  if (!v.cotyle.flat()) return smoothCut(bone, v.cotyle.solid(), 0.05 * v.height);
  // Flat faces are dished a little, so that a rim stands round them.
  const double deep = 0.06 * v.height, ball = (0.16 * v.height * v.height + deep * deep) / (2 * deep);
  const BallPart dish{v.caudalRim - Point(ball - deep, 0, 0), ball, v.width / v.height};
  return smoothCut(bone, dish.solid(), 0.06 * v.height);
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
