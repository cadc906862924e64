#include "core/range/overlap.h"

#include <algorithm>

#include "core/range/convex_clip.h"
#include "core/range/facet_pair.h"

namespace zyga::range {

double signedArea(const Polygon& polygon) {
  double doubled = 0;
  for (std::size_t i = 0, n = polygon.size(); i < n; ++i) {
    const Eigen::Vector2d& p = polygon[i];
    const Eigen::Vector2d& q = polygon[i + 1 == n ? 0 : i + 1];
    doubled += p.x() * q.y() - p.y() * q.x();
  }
  return 0.5 * doubled;
}

Polygon sharedPolygon(const Polygon& a, const Polygon& b) {
  double size = 0;
  for (const Eigen::Vector2d& p : a) size = std::max(size, (p - a.front()).cwiseAbs().maxCoeff());
  for (const Eigen::Vector2d& p : b) size = std::max(size, (p - b.front()).cwiseAbs().maxCoeff());
  const double touch = 1e-12 * size;
  ConvexClip clip;
  Polygon shared;
  if (!clip.intersect(a, b, touch)) return shared;
  clip.visitCorners([&](const Eigen::Vector2d& p) { shared.push_back(p); });
  if (signedArea(shared) <= touch * size) shared.clear();
  return shared;
}

FacetMeeting meet(const anatomy::Facet& prezyg, const anatomy::Facet& postzyg, const Eigen::Isometry3d& X_PrePost) {
  return FacetPair(prezyg, postzyg).meet(X_PrePost);
}

}  // namespace zyga::range
