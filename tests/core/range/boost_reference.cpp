#include "tests/core/range/boost_reference.h"

// Without this Boost rounds the corners to a grid of its own first.
#define BOOST_GEOMETRY_NO_ROBUSTNESS
#define BOOST_ALLOW_DEPRECATED_HEADERS
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

namespace zyga::test {
namespace {

namespace bg = boost::geometry;
using BoostPoint = bg::model::d2::point_xy<double>;
using BoostPolygon = bg::model::polygon<BoostPoint, false>;  // counter-clockwise

BoostPolygon toBoost(const range::Polygon& polygon) {
  BoostPolygon out;
  for (const Eigen::Vector2d& p : polygon) bg::append(out.outer(), BoostPoint(p.x(), p.y()));
  bg::correct(out);
  return out;
}

}  // namespace

SharedByBoost sharedByBoost(const range::Polygon& a, const range::Polygon& b) {
  std::vector<BoostPolygon> parts;
  bg::intersection(toBoost(a), toBoost(b), parts);
  SharedByBoost shared;
  double least = 1e300, most = -1e300;
  for (const BoostPolygon& part : parts) {
    shared.area += bg::area(part);
    for (const BoostPoint& p : part.outer()) {
      least = std::min(least, p.x());
      most = std::max(most, p.x());
    }
  }
  if (!parts.empty()) shared.extentX = most - least;
  return shared;
}

}  // namespace zyga::test
