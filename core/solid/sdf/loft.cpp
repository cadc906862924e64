#include <algorithm>
#include <cmath>

#include "core/solid/sdf/node.h"
#include "core/solid/sdf/section_distance.h"

namespace zyga::solid {

namespace {

constexpr int kSamples = 192;

struct Sample {
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

std::vector<Sample> sampled(const std::vector<Station>& stations) {
  const Profile halfY(stations, &Station::halfY), halfZ(stations, &Station::halfZ), y(stations, &Station::y),
      z(stations, &Station::z), square(stations, &Station::square);
  const double from = stations.front().at, step = (stations.back().at - from) / (kSamples - 1);
  std::vector<Sample> samples;
  for (int i = 0; i < kSamples; ++i) {
    const double x = from + i * step;
    samples.push_back({static_cast<float>(positive(halfY.at(x))), static_cast<float>(positive(halfZ.at(x))),
                       static_cast<float>(y.at(x)), static_cast<float>(z.at(x)),
                       static_cast<float>(std::clamp(square.at(x), 0.0, 1.0)), 1});
  }
  return samples;
}

/// Where the radii change along the axis the field must be flattened to keep its slope about one.
void setSteepness(std::vector<Sample>& samples, double length) {
  const float step = static_cast<float>(positive(length)) / (kSamples - 1);
  std::vector<float> slope(samples.size(), 0);
  for (std::size_t i = 0; i + 1 < samples.size(); ++i) {
    const Sample &a = samples[i], &b = samples[i + 1];
    const float change = std::max(std::abs(b.halfY - a.halfY), std::abs(b.halfZ - a.halfZ)) +
                         std::max(std::abs(b.y - a.y), std::abs(b.z - a.z));
    slope[i] = std::max(slope[i], change / step);
    slope[i + 1] = change / step;
  }
  for (std::size_t i = 0; i < samples.size(); ++i) samples[i].steep = 1 / std::sqrt(1 + slope[i] * slope[i]);
}

Box loftBox(const std::vector<Sample>& samples, double from, double to) {
  Box box;
  for (const Sample& s : samples) {
    box.extend(Point(from, s.y - s.halfY, s.z - s.halfZ));
    box.extend(Point(to, s.y + s.halfY, s.z + s.halfZ));
  }
  return box;
}

struct LoftField {
  ToLocal local;
  std::vector<Sample> samples;
  float from, to, rim;

  float operator()(float px, float py, float pz) const {
    const auto [x, y, z] = local(px, py, pz);
    const float u = std::clamp((x - from) / (to - from), 0.0f, 1.0f) * (kSamples - 1);
    const int i = std::min(static_cast<int>(u), kSamples - 2);
    const float t = u - static_cast<float>(i);
    const Sample &a = samples[static_cast<std::size_t>(i)], &b = samples[static_cast<std::size_t>(i) + 1];
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
  std::vector<Sample> samples = sampled(order);
  setSteepness(samples, to - from);
  const Box box = placedBox(frame, loftBox(samples, from, to));
  const double rim = std::clamp(rimRound, 0.0, (to - from) / 2);
  return leaf(box, LoftField{ToLocal(frame), std::move(samples), static_cast<float>(from), static_cast<float>(to),
                             static_cast<float>(rim)});
}

}  // namespace zyga::solid
