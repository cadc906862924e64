#include <algorithm>
#include <cmath>
#include <limits>

#include "core/solid/sdf/catmull_rom.h"
#include "core/solid/sdf/node.h"
#include "core/solid/sdf/section_distance.h"

namespace zyga::solid {

namespace {

constexpr int kSamples = 192;

struct LoftSample {
  float halfY, halfZ, y, z, square, steep;
};

/// Monotone cubic slope between three values (Fritsch & Carlson 1980, SIAM J. Numer. Anal. 17:238, in the harmonic
/// form): no section bulges beyond its neighbours.
double monotoneSlope(double x0, double x1, double x2, double v0, double v1, double v2) {
  const double a = (v1 - v0) / (x1 - x0), b = (v2 - v1) / (x2 - x1);
  if (a * b <= 0) return 0;
  const double w1 = 2 * (x2 - x1) + (x1 - x0), w2 = (x2 - x1) + 2 * (x1 - x0);
  return (w1 + w2) / (w1 / a + w2 / b);
}

class Profile {
 public:
  Profile(const std::vector<Station>& stations, double Station::*member) {
    for (const Station& s : stations) x_.push_back(s.at), v_.push_back(s.*member);
    const std::size_t n = x_.size();
    slope_.assign(n, 0);
    for (std::size_t i = 1; i + 1 < n; ++i)
      slope_[i] = monotoneSlope(x_[i - 1], x_[i], x_[i + 1], v_[i - 1], v_[i], v_[i + 1]);
    if (n < 2) return;
    if (n == 2) slope_[0] = slope_[1] = (v_[1] - v_[0]) / (x_[1] - x_[0]);
    if (n == 2) return;
    slope_[0] = endSlope((v_[1] - v_[0]) / (x_[1] - x_[0]), slope_[1]);
    slope_[n - 1] = endSlope((v_[n - 1] - v_[n - 2]) / (x_[n - 1] - x_[n - 2]), slope_[n - 2]);
  }

  double at(double x) const {
    if (x_.size() == 1 || x <= x_.front()) return v_.front();
    if (x >= x_.back()) return v_.back();
    const std::size_t i = static_cast<std::size_t>(std::upper_bound(x_.begin(), x_.end(), x) - x_.begin()) - 1;
    const double h = x_[i + 1] - x_[i], t = (x - x_[i]) / h, t2 = t * t, t3 = t2 * t;
    return v_[i] * (2 * t3 - 3 * t2 + 1) + v_[i + 1] * (3 * t2 - 2 * t3) + h * slope_[i] * (t3 - 2 * t2 + t) +
           h * slope_[i + 1] * (t3 - t2);
  }

 private:
  static double endSlope(double chord, double inner) { return 1.5 * chord - 0.5 * inner; }
  std::vector<double> x_, v_, slope_;
};

std::vector<Station> sorted(std::vector<Station> stations) {
  std::stable_sort(stations.begin(), stations.end(), [](const Station& a, const Station& b) { return a.at < b.at; });
  for (std::size_t i = 1; i < stations.size(); ++i)
    stations[i].at = std::max(stations[i].at, stations[i - 1].at + kLeastExtent);
  return stations;
}

std::vector<LoftSample> sampled(const std::vector<Station>& stations) {
  const Profile halfY(stations, &Station::halfY), halfZ(stations, &Station::halfZ), y(stations, &Station::y),
      z(stations, &Station::z), square(stations, &Station::square);
  const double from = stations.front().at, step = (stations.back().at - from) / (kSamples - 1);
  std::vector<LoftSample> samples;
  for (int i = 0; i < kSamples; ++i) {
    const double x = from + i * step;
    samples.push_back({static_cast<float>(positive(halfY.at(x))), static_cast<float>(positive(halfZ.at(x))),
                       static_cast<float>(y.at(x)), static_cast<float>(z.at(x)),
                       static_cast<float>(std::clamp(square.at(x), 0.0, 1.0)), 1});
  }
  return samples;
}

/// Where the radii change along the axis the field must be flattened to keep its slope about one.
void setSteepness(std::vector<LoftSample>& samples, double length) {
  const float step = static_cast<float>(positive(length)) / (kSamples - 1);
  std::vector<float> slope(samples.size(), 0);
  for (std::size_t i = 0; i + 1 < samples.size(); ++i) {
    const LoftSample &a = samples[i], &b = samples[i + 1];
    const float change = std::max(std::abs(b.halfY - a.halfY), std::abs(b.halfZ - a.halfZ)) +
                         std::max(std::abs(b.y - a.y), std::abs(b.z - a.z));
    slope[i] = std::max(slope[i], change / step);
    slope[i + 1] = change / step;
  }
  for (std::size_t i = 0; i < samples.size(); ++i) samples[i].steep = 1 / std::sqrt(1 + slope[i] * slope[i]);
}

Box loftBox(const std::vector<LoftSample>& samples, double from, double to) {
  Box box;
  for (const LoftSample& s : samples) {
    box.extend(Point(from, s.y - s.halfY, s.z - s.halfZ));
    box.extend(Point(to, s.y + s.halfY, s.z + s.halfZ));
  }
  return box;
}

struct LoftField {
  ToLocal local;
  std::vector<LoftSample> samples;
  float from, to, rim;

  float operator()(float px, float py, float pz) const {
    const auto [x, y, z] = local(px, py, pz);
    const float u = std::clamp((x - from) / (to - from), 0.0f, 1.0f) * (kSamples - 1);
    const int i = std::min(static_cast<int>(u), kSamples - 2);
    const float t = u - static_cast<float>(i);
    const LoftSample &a = samples[static_cast<std::size_t>(i)], &b = samples[static_cast<std::size_t>(i) + 1];
    const auto mix = [t](float p, float q) { return p + (q - p) * t; };
    const float halfY = mix(a.halfY, b.halfY), halfZ = mix(a.halfZ, b.halfZ), square = mix(a.square, b.square);
    const float v = y - mix(a.y, b.y), w = z - mix(a.z, b.z);
    float d = ellipseDistance(v, w, halfY, halfZ);
    if (square > 0) d += square * (roundedRectangleDistance(v, w, halfY, halfZ) - d);
    return roundedMax(d * mix(a.steep, b.steep), std::max(from - x, x - to), rim);
  }
};

}  // namespace

Shape loft(const Frame& frame, const std::vector<Station>& stations, double rimRound) {
  if (stations.empty()) return {};
  const std::vector<Station> order = sorted(stations);
  const double from = order.front().at, to = std::max(order.back().at, from + kLeastExtent);
  std::vector<LoftSample> samples = sampled(order);
  setSteepness(samples, to - from);
  const Box box = placedBox(frame, loftBox(samples, from, to));
  const double rim = std::clamp(rimRound, 0.0, (to - from) / 2);
  return leaf(box, LoftField{ToLocal(frame), std::move(samples), static_cast<float>(from), static_cast<float>(to),
                             static_cast<float>(rim)});
}

namespace {

/// A place on the curve with its frame: tangent, wide direction, and radii.
struct Waypoint {
  Point at, tangent, wide;
  double halfWide = 0, halfThick = 0;
};

Point acrossTangent(const Point& tangent, const Point& wide) {
  const Point v = wide - tangent * tangent.dot(wide);
  return v.norm() > 1e-9 ? Point(v.normalized()) : tangent.unitOrthogonal();
}

/// Knots with every wide direction filled in and doubled points dropped.
std::vector<Knot> tidy(const std::vector<Knot>& knots, const Point& wideDirection) {
  std::vector<Knot> out;
  Point wide = wideDirection;
  for (const Knot& knot : knots) {
    if (knot.wideDirection.squaredNorm() > 0) wide = knot.wideDirection.normalized();
    if (!out.empty() && (knot.at - out.back().at).norm() < kLeastExtent) continue;
    out.push_back({knot.at, {positive(knot.section.wide), positive(knot.section.thick)}, wide});
  }
  return out;
}

/// Knot i with the curve continued straight past both ends.
Knot knotOrBeyond(const std::vector<Knot>& knots, int i) {
  const int last = static_cast<int>(knots.size()) - 1;
  Knot knot = knots[static_cast<std::size_t>(std::clamp(i, 0, last))];
  if (i < 0) knot.at = 2 * knots[0].at - knots[1].at;
  if (i > last) knot.at = 2 * knots.back().at - knots[knots.size() - 2].at;
  return knot;
}

Waypoint between(const std::vector<Knot>& knots, int i, double t) {
  const Knot a = knotOrBeyond(knots, i - 1), b = knotOrBeyond(knots, i), c = knotOrBeyond(knots, i + 1),
             d = knotOrBeyond(knots, i + 2);
  Waypoint place;
  place.at = catmullRom<Point>(a.at, b.at, c.at, d.at, t);
  place.wide = b.wideDirection + (c.wideDirection - b.wideDirection) * t;
  // Smoothstep keeps the radii between those of the two knots.
  const double s = t * t * (3 - 2 * t);
  place.halfWide = b.section.wide + (c.section.wide - b.section.wide) * s;
  place.halfThick = b.section.thick + (c.section.thick - b.section.thick) * s;
  return place;
}

void setFrames(std::vector<Waypoint>& places) {
  const std::size_t last = places.size() - 1;
  for (std::size_t i = 0; i <= last; ++i) {
    places[i].tangent = (places[std::min(i + 1, last)].at - places[i > 0 ? i - 1 : 0].at).normalized();
    places[i].wide = acrossTangent(places[i].tangent, places[i].wide);
  }
}

std::vector<Waypoint> alongCurve(const std::vector<Knot>& knots, bool smooth) {
  constexpr int kPerSpan = 6;
  std::vector<Waypoint> places;
  const int spans = static_cast<int>(knots.size()) - 1;
  for (int i = 0; i < spans; ++i)
    for (int j = 0; j < (smooth ? kPerSpan : 1); ++j)
      places.push_back(between(knots, i, smooth ? static_cast<double>(j) / kPerSpan : 0));
  places.push_back(between(knots, spans - 1, 1));
  setFrames(places);
  return places;
}

struct Vec {
  float x, y, z;
  Vec operator-(const Vec& o) const { return {x - o.x, y - o.y, z - o.z}; }
  float dot(const Vec& o) const { return x * o.x + y * o.y + z * o.z; }
};

Vec vec(const Point& p) { return {static_cast<float>(p.x()), static_cast<float>(p.y()), static_cast<float>(p.z())}; }
Vec between3(const Vec& a, const Vec& b, float t) {
  return {a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t, a.z + (b.z - a.z) * t};
}

/// One short piece of the tube between two planes across the curve. Between the planes sections are carried along the
/// curve, so neighbouring pieces meet without a crease; beyond them the piece ends in a rounded cap.
struct TubePiece {
  Vec a, b, tangentA, tangentB, wideA, wideB, leaveA, leaveB;  ///< leave: derivatives of the Hermite centre line
  float halfWideA, halfWideB, halfThickA, halfThickB, steep;

  Vec centre(float t) const {
    const float t2 = t * t, t3 = t2 * t;
    const float h1 = t3 - 2 * t2 + t, h2 = t3 - t2, h3 = 3 * t2 - 2 * t3;
    const auto one = [&](float p, float q, float dp, float dq) { return p + (q - p) * h3 + dp * h1 + dq * h2; };
    return {one(a.x, b.x, leaveA.x, leaveB.x), one(a.y, b.y, leaveA.y, leaveB.y), one(a.z, b.z, leaveA.z, leaveB.z)};
  }

  float distance(const Vec& p) const {
    const float s0 = (p - a).dot(tangentA), s1 = (p - b).dot(tangentB);
    const float span = s0 - s1;
    float t = span > 1e-9f ? s0 / span : (s0 > 0 ? 1.0f : 0.0f);
    t = std::clamp(t, 0.0f, 1.0f);
    const Vec tangent = between3(tangentA, tangentB, t), wide = between3(wideA, wideB, t), q = p - centre(t);
    const float onTangent = q.dot(tangent), onWide = q.dot(wide);
    const float along2 = onTangent * onTangent / tangent.dot(tangent), u2 = onWide * onWide / wide.dot(wide);
    const float v2 = std::max(q.dot(q) - along2 - u2, 0.0f);
    const float halfWide = halfWideA + (halfWideB - halfWideA) * t,
                halfThick = halfThickA + (halfThickB - halfThickA) * t;
    return steep * ellipsoidDistanceOfSquares(along2, v2, u2, std::min(halfWide, halfThick), halfThick, halfWide);
  }
};

TubePiece makeTubePiece(const Waypoint& p, const Waypoint& q) {
  TubePiece piece{};
  const double length = (q.at - p.at).norm();
  piece.a = vec(p.at), piece.b = vec(q.at);
  piece.tangentA = vec(p.tangent), piece.tangentB = vec(q.tangent);
  piece.leaveA = vec(p.tangent * length), piece.leaveB = vec(q.tangent * length);
  piece.wideA = vec(p.wide), piece.wideB = vec(q.wide);
  piece.halfWideA = static_cast<float>(p.halfWide), piece.halfWideB = static_cast<float>(q.halfWide);
  piece.halfThickA = static_cast<float>(p.halfThick), piece.halfThickB = static_cast<float>(q.halfThick);
  const double slope =
      std::max(std::abs(p.halfWide - q.halfWide), std::abs(p.halfThick - q.halfThick)) / positive(length);
  piece.steep = static_cast<float>(1 / std::sqrt(1 + slope * slope));
  return piece;
}

/// By value: the compiler then knows that writing to `out` leaves the piece as it is.
ZYGA_WIDE void takeNearer(const TubePiece piece, const float* x, const float* y, const float* z, int count,
                          float* out) {
  for (int i = 0; i < count; ++i) out[i] = std::min(out[i], piece.distance({x[i], y[i], z[i]}));
}

class TubeNode : public FieldNode {
 public:
  TubeNode(const Box& bounds, std::vector<TubePiece> pieces) : FieldNode(bounds), pieces_(std::move(pieces)) {}

  void evaluate(const PointBatch& p, float* out) const override {
    std::fill(out, out + p.count, std::numeric_limits<float>::max());
    for (const TubePiece& piece : pieces_) takeNearer(piece, p.x, p.y, p.z, p.count, out);
  }

  Local near(const NodePtr& self, const Place& place) const override {
    if (pieces_.size() == 1) return {self, at(place.centre)};
    std::vector<float> values;
    const Vec centre{place.centre.x(), place.centre.y(), place.centre.z()};
    for (const TubePiece& piece : pieces_) values.push_back(piece.distance(centre));
    const float least = *std::min_element(values.begin(), values.end());
    const float reach = std::max(place.spread() + std::min(least + place.spread(), place.band), least);
    std::vector<TubePiece> kept;
    for (std::size_t i = 0; i < pieces_.size(); ++i)
      if (values[i] <= reach) kept.push_back(pieces_[i]);
    if (kept.size() == pieces_.size()) return {self, least};
    return {std::make_shared<TubeNode>(bounds(), std::move(kept)), least};
  }

 private:
  std::vector<TubePiece> pieces_;
};

Box tubeBox(const std::vector<Waypoint>& places) {
  Box box;
  for (const Waypoint& place : places) {
    const Point r = Point::Constant(std::max(place.halfWide, place.halfThick));
    box.extend(Box(place.at - r, place.at + r));
  }
  return box;
}

}  // namespace

Shape tube(const std::vector<Knot>& knots, const Point& wideDirection, bool smooth) {
  const std::vector<Knot> tidied = tidy(knots, wideDirection);
  if (tidied.empty()) return {};
  if (tidied.size() == 1) return ball(tidied[0].at, std::min(tidied[0].section.wide, tidied[0].section.thick));
  const std::vector<Waypoint> places = alongCurve(tidied, smooth);
  std::vector<TubePiece> pieces;
  for (std::size_t i = 0; i + 1 < places.size(); ++i) pieces.push_back(makeTubePiece(places[i], places[i + 1]));
  return Shape(std::make_shared<TubeNode>(tubeBox(places), std::move(pieces)));
}

}  // namespace zyga::solid
