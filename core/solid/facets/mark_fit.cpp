#include "core/solid/facets/mark_fit.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

#include "core/solid/facets/face_surface.h"
#include "core/solid/facets/outline.h"
#include "core/solid/mesh/surface_distance.h"

namespace zyga::solid {
namespace {

using anatomy::MarkBy;
using Eigen::Vector2d;
using Eigen::Vector3d;

// Program defaults, no source.
constexpr double kFacetDepth = 0.25;  ///< of the root of a facet's area
constexpr double kLooksItsWay = 0.3;  ///< cosine
constexpr double kFinePart = 0.12;    ///< of the root of a facet's area: parts into which larger triangles are cut
constexpr int kMostPartsASide = 16;   ///< a side
constexpr double kBesideRing = 0.3;   ///< of the radius, by which a fitted ring's centre may lie farther from the bone
constexpr double kFacesInwards = -0.5;  ///< cosine

std::array<Vector3d, 3> cornersAt(const TriangleMesh& mesh, std::size_t t) {
  return {mesh.positions[mesh.triangles[t][0]].cast<double>(), mesh.positions[mesh.triangles[t][1]].cast<double>(),
          mesh.positions[mesh.triangles[t][2]].cast<double>()};
}

/// One mark against the surface.
class SurfaceDoubts {
 public:
  SurfaceDoubts(const anatomy::Scan& scan, const MarkedSurface& surface) : scan_(scan), surface_(surface) {}

  std::vector<anatomy::MarkDoubt> of(const anatomy::WantedMark& mark) const {
    const auto p = placeOf(scan_, mark);
    if (!p) return {};
    const double off = surface_.distance(*p);
    if (mark.role) return ofFacet(mark, facetOf(scan_, *mark.role)->facet, off);
    if (mark.by == MarkBy::Point) return ofDistance(mark, off, anatomy::doubtful::kOffSurface, 0);
    const auto fit = scan_.fits.find(mark.name);
    if (fit == scan_.fits.end()) return ofDistance(mark, off, anatomy::doubtful::kFarFromBone, 0, true);
    // The centre of what was fitted lies a radius from the surface.
    return ofDistance(mark, off, anatomy::doubtful::kOffSurface, (1 + kBesideRing) * fit->second.radius, true);
  }

 private:
  using Doubts = std::vector<anatomy::MarkDoubt>;

  reason::Value length(double metres) const { return reason::Quantity{scan_.scale * metres, reason::Unit::Length}; }
  Doubts ofDistance(const anatomy::WantedMark& mark, double off, double share, double more, bool centre = false) const {
    const double most = share * surface_.size() + more;
    if (!(off > most)) return {};
    return {{mark.name,
             {centre ? anatomy::doubt::kFarFromBone : anatomy::doubt::kOffSurface,
              {markValue(mark), length(off), length(most)}},
             {}}};
  }
  Doubts ofFacet(const anatomy::WantedMark& mark, const anatomy::Facet& facet, double off) const {
    if (auto far = ofDistance(mark, off, anatomy::doubtful::kOffSurface, 0); !far.empty()) return far;
    if (surface_.facing(facet.centre, facet.normal) < kFacesInwards)
      return {{mark.name, {anatomy::doubt::kIntoBone, {markValue(mark)}}, {}}};
    const auto under = surface_.under(facet);
    if (under.covered < anatomy::doubtful::kLeastSurface)
      return {{mark.name,
               {anatomy::doubt::kNoSurface, {markValue(mark), reason::Quantity{under.covered, reason::Unit::Share}}},
               {}}};
    return {};
  }

  const anatomy::Scan& scan_;
  const MarkedSurface& surface_;
};

}  // namespace

MarkedSurface::MarkedSurface(const TriangleMesh& mesh) : mesh_(mesh), size_(surfaceSize(mesh)) {
  middles_.reserve(mesh.triangles.size());
  radii_.reserve(mesh.triangles.size());
  for (std::size_t t = 0; t < mesh.triangles.size(); ++t) {
    const auto corners = cornersAt(mesh, t);
    const Vector3d middle = (corners[0] + corners[1] + corners[2]) / 3;
    double radius = 0;
    for (const Vector3d& c : corners) radius = std::max(radius, (c - middle).norm());
    middles_.push_back(middle);
    radii_.push_back(radius);
  }
}

MarkedSurface::Nearest MarkedSurface::nearest(const Vector3d& p) const {
  Nearest best{std::numeric_limits<double>::infinity(), 0};
  for (std::size_t t = 0; t < middles_.size(); ++t) {
    const double most = best.distance + radii_[t];
    if ((p - middles_[t]).squaredNorm() >= most * most) continue;
    const double off = (p - nearestOn(cornersAt(mesh_, t), p)).norm();
    if (off < best.distance) best = {off, static_cast<std::uint32_t>(t)};
  }
  return best;
}

double MarkedSurface::distance(const Vector3d& p) const { return nearest(p).distance; }

double MarkedSurface::facing(const Vector3d& p, const Vector3d& normal) const {
  if (middles_.empty()) return 0;
  const auto t = cornersAt(mesh_, nearest(p).triangle);
  const Vector3d face = (t[1] - t[0]).cross(t[2] - t[0]);
  return face.norm() > 0 ? face.normalized().dot(normal) : 0;
}

MarkedSurface::UnderFacet MarkedSurface::under(const anatomy::Facet& facet) const {
  const double area = outlineArea(facet.outline), root = std::sqrt(area);
  double reach = 0;
  for (const Vector2d& q : facet.outline) reach = std::max(reach, q.norm());
  const Vector3d across = facet.across();
  double seen = 0, squares = 0;
  for (std::size_t t = 0; t < middles_.size(); ++t) {
    if ((middles_[t] - facet.centre).norm() > reach + radii_[t] + kFacetDepth * root) continue;
    const auto c = cornersAt(mesh_, t);
    const Vector3d face = (c[1] - c[0]).cross(c[2] - c[0]) / 2;
    const double flat = face.dot(facet.normal);  // its area seen along the facet's normal
    if (!(flat > kLooksItsWay * face.norm()) || !(flat > 0)) continue;
    const int parts = std::clamp(static_cast<int>(std::ceil(2 * radii_[t] / (kFinePart * root))), 1, kMostPartsASide);
    const double share = flat / (parts * parts);
    // The middles of parts^2 equal triangles, upright ones and those between them.
    const auto add = [&](double u, double v) {
      const Vector3d d = c[0] + u * (c[1] - c[0]) + v * (c[2] - c[0]) - facet.centre;
      const double height = d.dot(facet.normal);
      if (std::abs(height) > kFacetDepth * root || !withinOutline(facet.outline, {d.dot(facet.slide), d.dot(across)}))
        return;
      seen += share;
      squares += share * height * height;
    };
    for (int i = 0; i < parts; ++i)
      for (int j = 0; i + j < parts; ++j) {
        add((i + 1.0 / 3) / parts, (j + 1.0 / 3) / parts);
        if (i + j + 1 < parts) add((i + 2.0 / 3) / parts, (j + 2.0 / 3) / parts);
      }
  }
  if (!(seen > 0) || !(area > 0)) return {};
  return {std::sqrt(squares / seen), std::min(1.0, seen / area)};
}

std::vector<anatomy::MarkDoubt> markDoubts(const anatomy::Scan& scan, const anatomy::Bone& sculpted,
                                           const MarkedSurface& surface) {
  const auto wanted = anatomy::marksFor(sculpted);
  const SurfaceDoubts bySurface(scan, surface);
  std::vector<anatomy::MarkDoubt> found;
  std::set<std::string> off;
  for (const anatomy::WantedMark& mark : wanted)
    for (anatomy::MarkDoubt& doubt : bySurface.of(mark)) {
      off.insert(doubt.mark);
      found.push_back(std::move(doubt));
    }
  std::vector<anatomy::MarkDoubt> among = doubtsAmongMarks(scan, sculpted, surface.size());
  std::erase_if(among, [&](const anatomy::MarkDoubt& doubt) {
    return !doubt.partner.empty() && (off.contains(doubt.mark) || off.contains(doubt.partner));
  });
  std::vector<anatomy::MarkDoubt> out;
  for (const anatomy::WantedMark& mark : wanted)
    for (const auto* part : {&found, &among})
      for (const anatomy::MarkDoubt& doubt : *part)
        if (doubt.mark == mark.name) out.push_back(doubt);
  return out;
}

int measureMirrored(anatomy::Scan& scan, const MarkedSurface& surface) {
  int measured = 0;
  for (anatomy::ScanFacet& marked : scan.facets) {
    if (marked.measured) continue;
    const auto under = surface.under(marked.facet);
    if (under.covered < anatomy::doubtful::kLeastSurface) continue;
    marked.residual = under.residual;
    marked.measured = true;
    ++measured;
  }
  return measured;
}

}  // namespace zyga::solid
