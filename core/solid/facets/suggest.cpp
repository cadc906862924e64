#include "core/solid/facets/suggest.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <cmath>
#include <limits>

#include "core/solid/facets/centrum_end.h"
#include "core/solid/facets/patch_shape.h"
#include "core/solid/facets/sureness.h"

namespace zyga::solid {

namespace {

using Eigen::Vector3d;
using TriangleList = std::vector<std::uint32_t>;

// Program defaults, no source: shares of the bone's size (surfaceSize), the same for every bone.
constexpr double kDiscReach = 0.6;       ///< between the faces of two centra, and how deep they may enter each other
constexpr double kDeepestFacets = 0.12;  ///< that facets may enter each other, as modelled bones do
constexpr double kLeastReach = 0.02;     ///< of the ladder of distances at facets
constexpr double kRungStep = 1.25;       ///< from rung to rung
constexpr int kRungs = 12;               ///< so that the last is a quarter
constexpr double kOffMidPlane = 0.05;    ///< what lies nearer to the mid-plane is no facet
constexpr double kHeight = 0.2;          ///< of a facet over the middle of the centra, at least
constexpr double kMirrored = 0.15;       ///< scale on which left and right lie apart
constexpr double kTogether = 0.3;        ///< scale on which the two facets of one side lie apart
constexpr double kCentred = 0.15;        ///< scale on which the face of a centrum lies beside the mid-plane
constexpr double kOver = 0.25;           ///< scale on which the faces of two centra lie out of line
// Shares of its square.
constexpr double kLeastFace = 0.02;    ///< area of the face of a centrum
constexpr double kLeastFacet = 0.005;  ///< area of a facet
constexpr double kFullFacet = 0.08;    ///< area from which on size says nothing against it
constexpr double kTurned = 0.5;        ///< cosine of 60 degrees from a patch's mean normal
constexpr int kMostPatches = 3;        ///< that one connected region is taken for
constexpr double kAsWell = 0.95;       ///< share of the best that will do
constexpr double kAlone = 0.5;         ///< what the score of a facet without a fellow counts for
constexpr double kFellow = 0.3;        ///< of its score: what the other side has to offer to be its fellow
constexpr double kSteep = 0.8;         ///< cosine to the left of a wedge's sides
constexpr double kLying = 0.6;         ///< cosine to dorsal of facets that lie over a wedge
constexpr double kOverWedge = 0.03;    ///< of the bone's size: how much farther out and up they lie than its sides
constexpr double kOfWedge = 0.25;      ///< of its value: theirs, at least
constexpr double kAloneSides = 0.2;    ///< what it counts for where left and right ought to be mirror images

double cosineOf(const Vector3d& a, const Vector3d& b) {
  const double lengths = a.norm() * b.norm();
  return lengths > 0 ? a.dot(b) / lengths : 0;
}

void checkBone(const TriangleMesh& mesh, reason::Term which) {
  for (const auto& triangle : mesh.triangles)
    for (const std::uint32_t v : triangle)
      if (v >= mesh.positions.size() || !mesh.positions[v].allFinite())
        throw reason::Failure({fault::kNotFinite, {which}});
  if (!(surfaceSize(mesh) > 0)) throw reason::Failure({fault::kNoSurface, {which}});
  if (massProperties(mesh).volume < 0) throw reason::Failure({fault::kInsideOut, {which}});
}

/// One bone of the pair.
struct PairBone {
  const TriangleMesh& mesh;
  FaceSurface surface;
  FaceSurface::Opposed facing;  ///< near, for facets
  TriangleList face;            ///< of the centrum
};

struct PatchRegion {
  TriangleList triangles;
  Vector3d middle, normal;
  double area = 0;

  PatchRegion(const FaceSurface& surface, TriangleList t)
      : triangles(std::move(t)),
        middle(surface.middleOf(triangles)),
        normal(surface.meanNormalOf(triangles)),
        area(surface.areaOf(triangles)) {}
};

/// The largestPart connected part.
TriangleList largestPart(const FaceSurface& surface, std::span<const std::uint32_t> triangles) {
  TriangleList best;
  double most = 0;
  for (auto& part : surface.connected(triangles)) {
    const double area = surface.areaOf(part);
    if (area <= most) continue;
    most = area;
    best = std::move(part);
  }
  return best;
}

/// The part of a region that looks one way: what is turned too far from its mean normal is left out until nothing
/// changes.
TriangleList oneWay(const FaceSurface& surface, const TriangleList& region) {
  TriangleList patch = region;
  for (int round = 0; round < 20 && !patch.empty(); ++round) {
    const Vector3d mean = surface.meanNormalOf(patch);
    TriangleList turned;
    for (const std::uint32_t t : region)
      if (cosineOf(surface.normal(t), mean) > kTurned) turned.push_back(t);
    turned = largestPart(surface, turned);
    if (turned == patch) break;
    patch = std::move(turned);
  }
  return patch;
}

/// What the patches of a joint are searched with.
struct PairSearch {
  std::array<PairBone, 2> bones;  ///< cranial, caudal
  double size = 0;
  MidPlane midPlane;
  ColumnAxes axes;
  Vector3d centre = Vector3d::Zero();

  /// Patches of one bone on one side (0 left, 1 right) that face the other bone within `reach`.
  std::vector<PatchRegion> patches(std::size_t bone, int side, double reach) const;
};

/// What looks along the column at the other bone, in connected parts. `sense` -1 for the caudal face.
std::vector<PatchRegion> endwards(const FaceSurface& surface, const FaceSurface::Opposed& facing, double sense,
                                  const Vector3d& cranial, double size) {
  TriangleList ends;
  for (std::uint32_t t = 0; t < surface.size(); ++t)
    if (std::isfinite(facing.gap[t]) && sense * surface.normal(t).dot(cranial) > kLooksAlong) ends.push_back(t);
  std::vector<PatchRegion> out;
  for (auto& part : surface.connected(ends)) {
    PatchRegion region(surface, std::move(part));
    if (region.area > kLeastFace * size * size) out.push_back(std::move(region));
  }
  return out;
}

/// The faces of two centra: the largestPart pair about the mid-plane that lies over each other.
std::optional<std::pair<PatchRegion, PatchRegion>> centrumFaces(const std::vector<PatchRegion>& below,
                                                                const std::vector<PatchRegion>& above,
                                                                const Vector3d& along, const MidPlane& midPlane,
                                                                double size) {
  std::optional<std::pair<PatchRegion, PatchRegion>> best;
  double most = 0;
  for (const PatchRegion& b : below)
    for (const PatchRegion& a : above) {
      const Vector3d between = b.middle - a.middle;
      const double score = std::sqrt(b.area * a.area) * fallOff(midPlane.side(b.middle), kCentred * size) *
                           fallOff(midPlane.side(a.middle), kCentred * size) *
                           fallOff((between - between.dot(along) * along).norm(), kOver * size);
      if (score <= most) continue;
      most = score;
      best.emplace(b, a);
    }
  return best;
}

/// Faces of the centra, the column's axes and the centre of rotation; the axes follow from the faces, and the faces
/// from the axes, a few times.
void findCentra(PairSearch& search) {
  const FaceSurface &cranial = search.bones[0].surface, &caudal = search.bones[1].surface;
  const double far = kDiscReach * search.size;
  const auto down = cranial.farOpposedTo(caudal, far), up = caudal.farOpposedTo(cranial, far);
  const auto meets = [](const FaceSurface::Opposed& o) {
    return std::any_of(o.gap.begin(), o.gap.end(), [](double gap) { return std::isfinite(gap); });
  };
  if (!meets(down) && !meets(up))
    throw reason::Failure({fault::kFarApart, {reason::Quantity{kDiscReach, reason::Unit::Share}}});
  const auto inMidPlane = [&](const Vector3d& v) -> Vector3d {
    return (v - v.dot(search.midPlane.normal) * search.midPlane.normal).normalized();
  };
  Vector3d along = inMidPlane(cranial.centroid() - caudal.centroid());
  std::optional<std::pair<PatchRegion, PatchRegion>> faces;
  for (int round = 0; round < 5; ++round) {
    faces = centrumFaces(endwards(cranial, down, -1, along, search.size), endwards(caudal, up, 1, along, search.size),
                         along, search.midPlane, search.size);
    if (!faces) throw reason::Failure({fault::kNoCentra, {}});
    const Vector3d next = inMidPlane(faces->second.normal - faces->first.normal);
    const bool same = next.dot(along) > 1 - 1e-8;
    along = next;
    if (same) break;
  }
  TriangleList below = faces->first.triangles, above = faces->second.triangles;
  const CentrumEnd hind = endOf(search.bones[0].mesh, below, search.midPlane, search.size),
                   front = endOf(search.bones[1].mesh, above, search.midPlane, search.size);
  if (isJointOfBall(hind, front)) {
    // A ball looks alike from all sides: the rim of the socket tells the axis.
    along = hind.ball->hollow ? Vector3d(-inMidPlane(openingOf(search.bones[0].mesh, hind)))
                              : inMidPlane(openingOf(search.bones[1].mesh, front));
    below = faceOnBall(search.bones[0].mesh, hind, -along);
    above = faceOnBall(search.bones[1].mesh, front, along);
  }
  search.centre = (cranial.middleOf(below) + caudal.middleOf(above)) / 2;
  search.bones[0].face = std::move(below);
  search.bones[1].face = std::move(above);
  // Arch and spine make the surface lie dorsal to the faces of the centra.
  const Vector3d off = cranial.centroid() + caudal.centroid() - 2 * search.centre;
  Vector3d left = search.midPlane.normal;
  if (along.cross(left).dot(off) < 0) left = -left;
  search.midPlane.normal = left;
  search.axes = {along, left};
}

std::vector<PatchRegion> PairSearch::patches(std::size_t bone, int side, double reach) const {
  const PairBone& own = bones[bone];
  std::vector<bool> taken(own.surface.size(), false);
  for (const std::uint32_t t : own.face) taken[t] = true;
  TriangleList facing;
  for (std::uint32_t t = 0; t < own.surface.size(); ++t) {
    const double off = midPlane.side(own.surface.middle(t));
    if (!taken[t] && own.facing.gap[t] < reach && (side == 0 ? off : -off) > kOffMidPlane * size) facing.push_back(t);
  }
  std::vector<PatchRegion> out;
  for (TriangleList& region : own.surface.connected(facing)) {
    for (int i = 0; i < kMostPatches && own.surface.areaOf(region) > kLeastFacet * size * size; ++i) {
      PatchRegion patch(own.surface, oneWay(own.surface, region));
      if (patch.triangles.empty()) break;
      TriangleList rest;
      std::set_difference(region.begin(), region.end(), patch.triangles.begin(), patch.triangles.end(),
                          std::back_inserter(rest));
      region = std::move(rest);
      const bool high = axes.dorsal().dot(patch.middle - centre) > kHeight * size;
      if (high && patch.area > kLeastFacet * size * size) out.push_back(std::move(patch));
    }
  }
  return out;
}

/// Two patches that face each other.
struct Meeting {
  PatchRegion post, pre;
  double score = 0;   ///< area over the squared bone size, less for what does not agree
  double facing = 0;  ///< 0 to 1
};

double facingOf(const PatchRegion& post, const PatchRegion& pre, double size) {
  return fallOff((post.middle - pre.middle).norm(), kTogether * size) *
         std::max(0.0, -cosineOf(post.normal, pre.normal));
}

/// 1 for mirror images.
double mirroredOf(const PatchRegion& left, const PatchRegion& right, const MidPlane& plane, double size) {
  const double cosine = std::max(0.0, cosineOf(left.normal, plane.mirroredDirection(right.normal)));
  return fallOff((left.middle - plane.mirrored(right.middle)).norm(), kMirrored * size) * cosine * cosine;
}

/// Area, counted the less the less squarely it is faced.
double squareArea(const PairBone& side, const PatchRegion& region) {
  double sum = 0;
  for (const std::uint32_t t : region.triangles)
    sum += side.surface.area(t) * side.facing.square[t] * side.facing.square[t];
  return sum;
}

/// What one rung of the ladder finds.
struct Rung {
  double reach = 0, score = 0, mirrored = 0;
  std::array<std::optional<Meeting>, 2> sides;
};

std::vector<Meeting> meetingsOf(const PairSearch& search, int side, double reach) {
  std::vector<Meeting> out;
  const auto posts = search.patches(0, side, reach), pres = search.patches(1, side, reach);
  for (const PatchRegion& post : posts)
    for (const PatchRegion& pre : pres) {
      const double facing = facingOf(post, pre, search.size);
      const double area = std::sqrt(squareArea(search.bones[0], post) * squareArea(search.bones[1], pre));
      if (facing > 0) out.push_back({post, pre, area * facing / (search.size * search.size), facing});
    }
  return out;
}

Rung rungAt(const PairSearch& search, double reach) {
  Rung best;
  best.reach = reach;
  const auto left = meetingsOf(search, 0, reach), right = meetingsOf(search, 1, reach);
  for (const Meeting& l : left)
    for (const Meeting& r : right) {
      const double mirrored = std::sqrt(mirroredOf(l.post, r.post, search.midPlane, search.size) *
                                        mirroredOf(l.pre, r.pre, search.midPlane, search.size));
      const double score = std::min(l.score, r.score) * mirrored;
      if (score > best.score) best = {reach, score, mirrored, {l, r}};
    }
  // One side alone, where the other has nothing of its rank: a facet is broken off, and what is left over there must
  // not pair with some small patch of this side that happens to be its mirror image.
  const auto most = [](const std::vector<Meeting>& side) {
    double score = 0;
    for (const Meeting& m : side) score = std::max(score, m.score);
    return score;
  };
  for (const auto* side : {&left, &right}) {
    const double other = most(side == &left ? right : left);
    for (const Meeting& m : *side) {
      if (kAlone * m.score <= best.score || other >= kFellow * m.score) continue;
      best = {reach, kAlone * m.score, kAloneSides, {}};
      best.sides[side == &left ? 0 : 1] = m;
    }
  }
  return best;
}

/// Whether a meeting is of the sides of a hyposphene in its hypantrum, and `nearer` of the zygapophyses over it: those
/// lie dorsal and lateral to the wedge and more nearly level, where its sides are upright. The front facets may have
/// flown together with the walls of the slot.
bool isWedgeUnder(const PairSearch& search, const Meeting& meeting, const Meeting& nearer) {
  const Vector3d dorsal = search.axes.dorsal();
  const auto lying = [&](const PatchRegion& p) { return std::abs(cosineOf(p.normal, dorsal)) > kLying; };
  const double step = kOverWedge * search.size;
  return std::abs(cosineOf(meeting.post.normal, search.axes.left)) > kSteep && lying(nearer.post) &&
         lying(nearer.pre) &&
         std::abs(search.midPlane.side(nearer.post.middle)) >
             std::abs(search.midPlane.side(meeting.post.middle)) + step &&
         dorsal.dot(nearer.post.middle - meeting.post.middle) > step;
}

bool isWedgeUnder(const PairSearch& search, const Rung& rung, const Rung& nearer) {
  for (std::size_t s = 0; s < 2; ++s)
    if (!rung.sides[s] || !nearer.sides[s] || !isWedgeUnder(search, *rung.sides[s], *nearer.sides[s])) return false;
  return true;
}

/// The rung whose patches are large and change least: score times the lesser over the greater of its neighbours'.
std::pair<Rung, double> steadiest(const PairSearch& search) {
  std::vector<Rung> rungs;
  for (int i = 0; i < kRungs; ++i) rungs.push_back(rungAt(search, kLeastReach * search.size * std::pow(kRungStep, i)));
  // A first rung has nothing before it: facets of bones that enter each other are there from the start.
  std::vector<double> steady, value;
  for (std::size_t i = 0; i < rungs.size(); ++i) {
    const double own = rungs[i].score;
    const double before = i > 0 ? rungs[i - 1].score : own, after = i + 1 < rungs.size() ? rungs[i + 1].score : 0;
    const double greatest = std::max({before, own, after});
    steady.push_back(greatest > 0 ? std::min({before, own, after}) / greatest : 0);
    value.push_back(own * steady.back());
  }
  // The nearest that does as well.
  const double most = *std::max_element(value.begin(), value.end());
  std::size_t best = 0;
  while (best + 1 < rungs.size() && value[best] < kAsWell * most) ++best;
  // A wedge has some play in its slot, so that zygapophyses are met first.
  std::optional<std::size_t> zygs;
  for (std::size_t i = 0; i < best; ++i)
    if (value[i] > kOfWedge * value[best] && isWedgeUnder(search, rungs[best], rungs[i]) &&
        (!zygs || value[i] > value[*zygs]))
      zygs = i;
  best = zygs.value_or(best);
  return {rungs[best], steady[best]};
}

SuggestedFace suggestedFaceOf(const PairBone& side) {
  const PatchRegion region(side.surface, side.face);
  return {region.triangles, region.middle, region.normal.normalized(), region.area};
}

}  // namespace

double Confidence::whole() const {
  return std::max(0.0, area) * std::pow(std::max(0.0, flatness * sides * facing * steady), 1.0 / 4);
}

NeighbourSuggestion suggestNeighbours(const TriangleMesh& cranial, const TriangleMesh& caudal,
                                      const SuggestOptions& options) {
  checkBone(cranial, kCranialBone);
  checkBone(caudal, kCaudalBone);
  const double size = std::min(surfaceSize(cranial), surfaceSize(caudal));
  PairSearch search{
      {PairBone{cranial, FaceSurface(cranial, size), {}, {}}, PairBone{caudal, FaceSurface(caudal, size), {}, {}}},
      size,
      {},
      {},
      Vector3d::Zero()};
  auto& [upper, lower] = search.bones;
  const Vector3d between = upper.surface.centroid() - lower.surface.centroid();
  if (options.midPlane) {
    search.midPlane = *options.midPlane;
  } else {
    const std::array<const FaceSurface*, 2> surfaces{&upper.surface, &lower.surface};
    search.midPlane = findMidPlane(surfaces, between.norm() > 0 ? Vector3d(between.normalized()) : Vector3d::UnitX());
  }
  findCentra(search);
  const double reach = kLeastReach * size * std::pow(kRungStep, kRungs), depth = kDeepestFacets * size;
  upper.facing = upper.surface.opposedTo(lower.surface, reach, depth);
  lower.facing = lower.surface.opposedTo(upper.surface, reach, depth);
  const auto [rung, steady] = steadiest(search);
  if (!(rung.score > 0)) throw reason::Failure({fault::kNoFacets, {}});

  NeighbourSuggestion out;
  out.boneSize = size;
  out.midPlane = search.midPlane;
  out.axes = search.axes;
  out.caudalFace = suggestedFaceOf(upper);
  out.cranialFace = suggestedFaceOf(lower);
  out.centre = search.centre;
  out.disc = (out.caudalFace.centre - out.cranialFace.centre).dot(out.axes.cranial);
  out.reach = rung.reach;
  const PatchFitter ofUpper(cranial, upper.surface, upper.facing.gap, size),
      ofLower(caudal, lower.surface, lower.facing.gap, size);
  using anatomy::FacetRole;
  int gaps = 0;
  for (std::size_t s = 0; s < 2; ++s) {
    if (!rung.sides[s]) continue;
    const Meeting& meeting = *rung.sides[s];
    const bool left = s == 0;
    SuggestedFacet post = ofUpper.fit(ofUpper.trimmed(meeting.post.triangles),
                                      left ? FacetRole::PostzygLeft : FacetRole::PostzygRight, out.axes, out.centre);
    SuggestedFacet pre = ofLower.fit(ofLower.trimmed(meeting.pre.triangles),
                                     left ? FacetRole::PrezygLeft : FacetRole::PrezygRight, out.axes, out.centre);
    out.jointSpace += ofUpper.medianGap(post.triangles) + ofLower.medianGap(pre.triangles);
    gaps += 2;
    Confidence& sure = out.confidence[s];
    sure.sides = rung.mirrored;
    // Of the planes, which are what counts, rather than of the patches.
    sure.facing = fallOff((post.facet.centre - pre.facet.centre).norm(), kTogether * size) *
                  std::max(0.0, -post.facet.normal.dot(pre.facet.normal));
    sure.steady = steady;
    for (SuggestedFacet* facet : {&post, &pre}) {
      sure.area = std::min(1.0, facet->shape.area / (kFullFacet * size * size));
      sure.flatness = fallOff(facet->shape.cylinderResidual, 0.15 * std::sqrt(facet->shape.area));
      facet->confidence = sure.whole();
    }
    sure.area = std::min(1.0, std::min(post.shape.area, pre.shape.area) / (kFullFacet * size * size));
    sure.flatness = std::min(fallOff(post.shape.cylinderResidual, 0.15 * std::sqrt(post.shape.area)),
                             fallOff(pre.shape.cylinderResidual, 0.15 * std::sqrt(pre.shape.area)));
    out.postzygs[s] = std::move(post);
    out.prezygs[s] = std::move(pre);
  }
  out.jointSpace /= gaps;
  return out;
}

}  // namespace zyga::solid
