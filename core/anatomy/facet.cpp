#include "core/anatomy/facet.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace zyga::anatomy {
namespace {

double extent(const std::vector<Eigen::Vector2d>& outline, int axis) {
  if (outline.empty()) return 0;
  const auto [low, high] = std::minmax_element(outline.begin(), outline.end(),
                                               [axis](const auto& a, const auto& b) { return a[axis] < b[axis]; });
  return (*high)[axis] - (*low)[axis];
}

}  // namespace

Eigen::Vector3d Facet::corner(std::size_t i) const {
  return centre + outline[i].x() * slide + outline[i].y() * across();
}

double Facet::length() const { return extent(outline, 0); }
double Facet::width() const { return extent(outline, 1); }

std::vector<Eigen::Vector2d> ellipseOutline(double length, double width, int corners) {
  // A regular polygon inscribed in the unit circle has the area (n/2) sin(2 pi/n); the corners along the slide keep the
  // ellipse's length exactly, so only the width is widened to make up the area.
  const double step = 2 * std::numbers::pi / corners;
  const double widen = 2 * std::numbers::pi / (corners * std::sin(step));
  const auto circle = [](int count) {
    std::vector<Eigen::Vector2d> points;
    points.reserve(static_cast<std::size_t>(count));
    const double turn = 2 * std::numbers::pi / count;
    for (int i = 0; i < count; ++i) points.emplace_back(std::cos(i * turn), std::sin(i * turn));
    return points;
  };
  // Animals are built by the thousand where measures vary.
  static constexpr int kUsual = 48;
  static const std::vector<Eigen::Vector2d> usual = circle(kUsual);
  std::vector<Eigen::Vector2d> outline = corners == kUsual ? usual : circle(corners);
  for (Eigen::Vector2d& corner : outline) corner = {0.5 * length * corner.x(), 0.5 * width * widen * corner.y()};
  return outline;
}

FacetRole mirrored(FacetRole role) {
  switch (role) {
    case FacetRole::PrezygLeft:
      return FacetRole::PrezygRight;
    case FacetRole::PrezygRight:
      return FacetRole::PrezygLeft;
    case FacetRole::PostzygLeft:
      return FacetRole::PostzygRight;
    case FacetRole::PostzygRight:
      break;
  }
  return FacetRole::PostzygLeft;
}

Facet mirrored(const Facet& facet) {
  const auto flipped = [](const Eigen::Vector3d& v) { return Eigen::Vector3d(v.x(), 0.0 - v.y(), v.z()); };
  Facet out = facet;
  out.role = mirrored(facet.role);
  out.centre = flipped(facet.centre);
  out.normal = flipped(facet.normal);
  out.slide = flipped(facet.slide);
  // normal x slide changes sign in the mirror, and the outline must still run counter-clockwise.
  for (Eigen::Vector2d& p : out.outline) p.y() = -p.y();
  std::reverse(out.outline.begin(), out.outline.end());
  return out;
}

reason::Term termOf(FacetRole role) {
  switch (role) {
    case FacetRole::PrezygLeft:
      return {"facet.left-prezygapophyseal"};
    case FacetRole::PrezygRight:
      return {"facet.right-prezygapophyseal"};
    case FacetRole::PostzygLeft:
      return {"facet.left-postzygapophyseal"};
    case FacetRole::PostzygRight:
      break;
  }
  return {"facet.right-postzygapophyseal"};
}

bool isPrezyg(FacetRole role) { return role == FacetRole::PrezygLeft || role == FacetRole::PrezygRight; }
bool isLeft(FacetRole role) { return role == FacetRole::PrezygLeft || role == FacetRole::PostzygLeft; }

}  // namespace zyga::anatomy
