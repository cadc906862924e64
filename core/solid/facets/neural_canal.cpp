#include "core/solid/facets/neural_canal.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

#include "core/solid/facets/sureness.h"

namespace zyga::solid {

namespace {

using Eigen::Vector2d;
using Eigen::Vector3d;

// Program defaults, no source.
constexpr int kSlices = 40;  ///< from face to face
constexpr int kBeside = 4;   ///< slices on either side whose bone closes a ring as well
constexpr int kCanalRays = 32;
constexpr int kEnclosed = 28;         ///< of the rays
constexpr double kLowest = 0.3;       ///< of the centrum's radius: the least height of a disc's floor
constexpr double kHighest = 4;        ///< of the centrum's radius: the greatest height of its middle
constexpr double kHeightStep = 0.08;  ///< of the centrum's radius
constexpr double kFarthestBone = 3;   ///< of the centrum's radius, along a ray
constexpr double kLeastCanal = 0.08;  ///< of the centrum's radius
constexpr double kStepsOn = 0.6;      ///< of a disc's radius: how far the next slice's may lie from it
constexpr double kLeastRun = 0.1;     ///< of the centrum's length
constexpr std::size_t kSettled = 10;  ///< discs of a run, about, that are moved to where they are largest
constexpr double kAslant = 0.4;       ///< rad, scale on which a canal runs aslant to the column
constexpr double kFunnel = 1.3;       ///< of the lower quartile of radii: wider discs are mouths
constexpr double kFullRun = 0.4;      ///< of it, from which on the run says nothing against the canal

struct SliceEdge {
  Vector2d a, b;     ///< (left, dorsal) of the centrum's axis
  Vector2d outward;  ///< out of the bone
};

/// What is met along each ray; infinite for nothing. Where the surface is met from inside the bone the ray is marked
/// so.
struct RaysMet {
  std::array<double, kCanalRays> distance;
  int inside = 0, met = 0;
};

class CanalSlices {
 public:
  CanalSlices(const TriangleMesh& mesh, const CanalPlace& place) : place_(place) {
    const Vector3d way = place.cranialFace - place.caudalFace;
    length_ = way.dot(place.axes.cranial);
    if (!(length_ > 0) || !(place.centrumRadius > 0)) return;
    edges_.resize(kSlices);
    for (const auto& triangle : mesh.triangles) cut(mesh, triangle);
    for (int i = 0; i < kCanalRays; ++i) {
      const double angle = 2 * std::numbers::pi * i / kCanalRays;
      rays_[static_cast<std::size_t>(i)] = {std::cos(angle), std::sin(angle)};
    }
  }

  bool usable() const { return !edges_.empty(); }
  double length() const { return length_; }
  double spacing() const { return length_ / kSlices; }
  double along(int slice) const { return (slice + 0.5) * spacing(); }
  /// Where the mid-plane runs through a slice at a height.
  double middleAt(int slice, double z) const {
    return -place_.midPlane.side(inSpace(slice, {0, z}));  // the axes' left is the mid-plane's normal
  }
  Vector3d inSpace(int slice, const Vector2d& p) const { return inSpace(along(slice), p); }
  Vector3d inSpace(double along, const Vector2d& p) const {
    return place_.caudalFace + along / length_ * (place_.cranialFace - place_.caudalFace) + p.x() * place_.axes.left +
           p.y() * place_.axes.dorsal();
  }

  RaysMet meet(int slice, const Vector2d& p) const {
    RaysMet out;
    out.distance.fill(std::numeric_limits<double>::infinity());
    std::array<bool, kCanalRays> inside{};
    const double farthest = kFarthestBone * place_.centrumRadius;
    for (const SliceEdge& edge : edges_[static_cast<std::size_t>(slice)]) {
      const Vector2d a = edge.a - p, b = edge.b - p;
      if (std::min(a.norm(), b.norm()) - (b - a).norm() > farthest) continue;
      // Only the rays between the two ends can meet it.
      const double turn = a.x() * b.y() - a.y() * b.x();
      const Vector2d& first = turn >= 0 ? a : b;
      const double spread = std::atan2(std::abs(turn), a.dot(b));
      const double from = std::atan2(first.y(), first.x()) * kCanalRays / (2 * std::numbers::pi);
      const double to = from + spread * kCanalRays / (2 * std::numbers::pi);
      for (int i = static_cast<int>(std::ceil(from)); i <= static_cast<int>(std::floor(to)); ++i) {
        const auto ray = static_cast<std::size_t>(((i % kCanalRays) + kCanalRays) % kCanalRays);
        const Vector2d& u = rays_[ray];
        const Vector2d d = b - a;
        const double across = u.x() * d.y() - u.y() * d.x();
        if (across == 0) continue;
        const double distance = (a.x() * d.y() - a.y() * d.x()) / across;
        if (!(distance >= 0) || distance > farthest || distance >= out.distance[ray]) continue;
        out.distance[ray] = distance;
        inside[ray] = edge.outward.dot(u) > 0;
      }
    }
    for (std::size_t ray = 0; ray < kCanalRays; ++ray) {
      if (!std::isfinite(out.distance[ray])) continue;
      ++out.met;
      if (!inside[ray]) continue;
      ++out.inside;
      out.distance[ray] = std::numeric_limits<double>::infinity();
    }
    return out;
  }

  double centrumRadius() const { return place_.centrumRadius; }

 private:
  void cut(const TriangleMesh& mesh, const std::array<std::uint32_t, 3>& triangle) {
    std::array<Vector3d, 3> p;
    std::array<double, 3> x;
    for (std::size_t k = 0; k < 3; ++k) {
      p[k] = mesh.positions[triangle[k]].cast<double>();
      x[k] = (p[k] - place_.caudalFace).dot(place_.axes.cranial);
    }
    const auto [low, high] = std::minmax({x[0], x[1], x[2]});
    const Vector3d n = (p[1] - p[0]).cross(p[2] - p[0]);
    const Vector2d outward(n.dot(place_.axes.left), n.dot(place_.axes.dorsal()));
    const int first = std::max(0, static_cast<int>(std::ceil(low / spacing() - 0.5)));
    const int last = std::min(kSlices - 1, static_cast<int>(std::floor(high / spacing() - 0.5)));
    for (int slice = first; slice <= last; ++slice) {
      const double at = along(slice);
      std::vector<Vector2d> ends;
      for (std::size_t k = 0; k < 3; ++k) {
        const std::size_t l = (k + 1) % 3;
        if ((x[k] <= at) == (x[l] <= at)) continue;
        const Vector3d off = p[k] + (at - x[k]) / (x[l] - x[k]) * (p[l] - p[k]) - inSpace(at, Vector2d::Zero());
        ends.emplace_back(off.dot(place_.axes.left), off.dot(place_.axes.dorsal()));
      }
      if (ends.size() == 2) edges_[static_cast<std::size_t>(slice)].push_back({ends[0], ends[1], outward});
    }
  }

  const CanalPlace& place_;
  double length_ = 0;
  std::vector<std::vector<SliceEdge>> edges_;
  std::array<Vector2d, kCanalRays> rays_;
};

struct EmptyDisc {
  Vector2d middle = Vector2d::Zero();
  double radius = 0, enclosed = 0;
};

/// Of some slices at one place: a ray that one of them stops is stopped. The own slice has to say that the place lies
/// outside the bone.
EmptyDisc discAt(const CanalSlices& slices, int slice, const Vector2d& p, const std::vector<RaysMet>& met) {
  const RaysMet& own = met[static_cast<std::size_t>(slice)];
  if (own.inside * 3 > own.met) return {};
  EmptyDisc out{p, std::numeric_limits<double>::infinity(), 0};
  int enclosed = 0;
  for (std::size_t ray = 0; ray < kCanalRays; ++ray) {
    double nearest = std::numeric_limits<double>::infinity();
    for (int s = std::max(0, slice - kBeside); s <= std::min(kSlices - 1, slice + kBeside); ++s)
      nearest = std::min(nearest, met[static_cast<std::size_t>(s)].distance[ray]);
    out.radius = std::min(out.radius, own.distance[ray]);
    enclosed += std::isfinite(nearest);
  }
  if (enclosed < kEnclosed) return {};
  if (!std::isfinite(out.radius))  // nothing in the slice itself: what stands beside it bounds the disc
    for (int s = std::max(0, slice - kBeside); s <= std::min(kSlices - 1, slice + kBeside); ++s)
      for (const double d : met[static_cast<std::size_t>(s)].distance) out.radius = std::min(out.radius, d);
  out.enclosed = static_cast<double>(enclosed) / kCanalRays;
  const double ground = kLowest * slices.centrumRadius();
  return out.radius >= kLeastCanal * slices.centrumRadius() && p.y() - out.radius >= ground ? out : EmptyDisc{};
}

EmptyDisc discAt(const CanalSlices& slices, int slice, const Vector2d& p) {
  std::vector<RaysMet> met(kSlices);
  for (int s = std::max(0, slice - kBeside); s <= std::min(kSlices - 1, slice + kBeside); ++s)
    met[static_cast<std::size_t>(s)] = slices.meet(s, p);
  return discAt(slices, slice, p, met);
}

/// All discs in the mid-plane, by height and slice.
std::vector<std::vector<EmptyDisc>> discsOf(const CanalSlices& slices) {
  const double radius = slices.centrumRadius();
  std::vector<std::vector<EmptyDisc>> out(kSlices);
  for (double z = kLowest * radius; z < kHighest * radius; z += kHeightStep * radius) {
    std::vector<RaysMet> met;
    std::vector<Vector2d> places;
    for (int s = 0; s < kSlices; ++s) {
      places.emplace_back(slices.middleAt(s, z), z);
      met.push_back(slices.meet(s, places.back()));
    }
    for (int s = 0; s < kSlices; ++s) {
      const EmptyDisc disc = discAt(slices, s, places[static_cast<std::size_t>(s)], met);
      if (disc.radius > 0) out[static_cast<std::size_t>(s)].push_back(disc);
    }
  }
  return out;
}

/// The largest disc of a slice within reach of another.
const EmptyDisc* nextDisc(const std::vector<EmptyDisc>& discs, const EmptyDisc& from) {
  const EmptyDisc* best = nullptr;
  for (const EmptyDisc& disc : discs)
    if (std::abs(disc.middle.y() - from.middle.y()) <= kStepsOn * from.radius && (!best || disc.radius > best->radius))
      best = &disc;
  return best;
}

/// Moved to where it is largest, a few steps of ever shorter length.
EmptyDisc settled(const CanalSlices& slices, int slice, EmptyDisc disc) {
  double step = 0.25 * disc.radius;
  for (int round = 0; round < 24 && step > 0.02 * disc.radius; ++round) {
    EmptyDisc best = disc;
    for (const Vector2d& way : {Vector2d(1, 0), Vector2d(-1, 0), Vector2d(0, 1), Vector2d(0, -1)}) {
      const EmptyDisc moved = discAt(slices, slice, disc.middle + step * way);
      if (moved.radius > best.radius) best = moved;
    }
    if (best.radius <= disc.radius) step /= 2;
    disc = best;
  }
  return disc;
}

struct PlacedDisc {
  double along;
  EmptyDisc disc;
};

/// Run of discs that follow each other, the one with the largest volume.
std::vector<std::pair<int, EmptyDisc>> bestRun(const CanalSlices& slices) {
  const auto discs = discsOf(slices);
  std::vector<std::pair<int, EmptyDisc>> best;
  double most = 0;
  for (int start = 0; start < kSlices; start += 2) {
    for (const EmptyDisc& first : discs[static_cast<std::size_t>(start)]) {
      // Only from discs that are the largest of their surroundings.
      if (nextDisc(discs[static_cast<std::size_t>(start)], first)->radius > first.radius) continue;
      std::vector<std::pair<int, EmptyDisc>> run{{start, first}};
      for (const int way : {1, -1}) {
        EmptyDisc last = first;
        for (int s = start + way; s >= 0 && s < kSlices; s += way) {
          const EmptyDisc* next = nextDisc(discs[static_cast<std::size_t>(s)], last);
          if (!next) break;
          last = *next;
          run.emplace_back(s, last);
        }
      }
      double volume = 0;
      for (const auto& [s, disc] : run) volume += disc.radius * disc.radius;
      if (volume <= most) continue;
      most = volume;
      best = std::move(run);
    }
  }
  std::sort(best.begin(), best.end(), [](const auto& a, const auto& b) { return a.first < b.first; });
  return best;
}

}  // namespace

std::optional<NeuralCanal> findNeuralCanal(const TriangleMesh& mesh, const CanalPlace& place) {
  const CanalSlices slices(mesh, place);
  if (!slices.usable()) return std::nullopt;
  const auto run = bestRun(slices);
  if (static_cast<double>(run.size()) < kLeastRun * kSlices) return std::nullopt;
  // The mouths of a canal widen like funnels, and not on all sides alike: its axis is that of its narrow part.
  std::vector<double> wide;
  for (const auto& [slice, disc] : run) wide.push_back(disc.radius);
  std::sort(wide.begin(), wide.end());
  std::vector<std::pair<int, EmptyDisc>> narrow;
  for (const auto& each : run)
    if (each.second.radius <= kFunnel * wide[wide.size() / 4]) narrow.push_back(each);
  std::vector<PlacedDisc> discs;
  const std::size_t step = std::max<std::size_t>(1, (narrow.size() - 1) / kSettled);
  for (std::size_t i = 0; i < narrow.size(); i += step)
    discs.push_back({slices.along(narrow[i].first), settled(slices, narrow[i].first, narrow[i].second)});

  std::vector<double> radii;
  for (const PlacedDisc& d : discs) radii.push_back(d.disc.radius);
  std::sort(radii.begin(), radii.end());

  // Least squares of both coordinates over the way along the column.
  const double count = static_cast<double>(discs.size());
  double mean = 0;
  Vector2d middle = Vector2d::Zero();
  for (const PlacedDisc& d : discs) {
    mean += d.along / count;
    middle += d.disc.middle / count;
  }
  double squares = 0;
  Vector2d products = Vector2d::Zero();
  for (const PlacedDisc& d : discs) {
    squares += (d.along - mean) * (d.along - mean);
    products += (d.along - mean) * (d.disc.middle - middle);
  }
  const Vector2d slope = squares > 0 ? Vector2d(products / squares) : Vector2d(Vector2d::Zero());
  double off = 0, enclosed = 0;
  for (const PlacedDisc& d : discs) {
    off += (d.disc.middle - middle - (d.along - mean) * slope).squaredNorm() / count;
    enclosed += d.disc.enclosed / count;
  }

  NeuralCanal out;
  out.radius = radii[radii.size() / 2];
  const double from = slices.along(run.front().first), to = slices.along(run.back().first);
  out.caudal = slices.inSpace(from, middle + (from - mean) * slope);
  out.cranial = slices.inSpace(to, middle + (to - mean) * slope);
  const double length = std::min(1.0, (to - from) / (kFullRun * slices.length()));
  const double straight = fallOff(std::sqrt(off), 0.5 * out.radius);
  const double centred = fallOff(place.midPlane.side((out.caudal + out.cranial) / 2), out.radius);
  const double aslant = fallOff(std::atan(slope.norm()), kAslant);
  out.confidence = geometricMean({enclosed, length, straight, centred, aslant});
  return out;
}

}  // namespace zyga::solid
