#include "core/solid/facets/centrum_end.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/anatomy/condyle.h"
#include "core/solid/facets/sureness.h"

namespace zyga::solid {
namespace {

using Eigen::Vector3d;

// Program defaults, no source.
constexpr double kFullFace = 0.2;  ///< of its square: area of a face from which on size says nothing
// Of balls.
constexpr double kBallRadius = 1.6;  ///< most, of the radius of the disc that it covers: a cap of 39 degrees
constexpr double kMostOfFace = 0.9;  ///< share of a face's corners within its radius
constexpr double kCore = 0.75;       ///< of a face's radius: what is looked at of its middle
constexpr double kCoreDepth = 1.2;   ///< of its radius: how deep a socket is
constexpr double kBallCap = 0.4;     ///< cosine to the top within which a ball is looked at
constexpr double kRounder = 0.7;     ///< residual of the ball over that of the plane, at most
constexpr double kOnBall = 0.04;     ///< of the ball's radius: so near to it lies what belongs to it
constexpr double kBallBase = 0.03;   ///< share of a socket's area beyond its rim
constexpr double kUsualBase = 0.4;   ///< of the ball's radius: height of its base over the centre, where nothing tells
constexpr double kHighestBase = 0.95;

/// What of a surface lies on a ball, within an angle of its top.
std::vector<std::uint32_t> onBall(const TriangleMesh& mesh, const SphereFit& ball, const Vector3d& top, double near,
                                  double cap = kBallCap) {
  std::vector<std::uint32_t> out;
  const double sense = ball.hollow ? -1 : 1;
  for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t) {
    const auto& triangle = mesh.triangles[t];
    const Vector3d a = mesh.positions[triangle[0]].cast<double>(), b = mesh.positions[triangle[1]].cast<double>(),
                   c = mesh.positions[triangle[2]].cast<double>();
    const Vector3d off = (a + b + c) / 3 - ball.centre, doubled = (b - a).cross(c - a);
    const double distance = off.norm();
    if (std::abs(distance - ball.radius) <= near * ball.radius && sense * off.dot(top) > cap * distance &&
        sense * doubled.dot(off) > kLooksAlong * doubled.norm() * distance)
      out.push_back(t);
  }
  return out;
}

/// Of the disc that some triangles cover, seen along an axis.
double discRadiusOf(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles, const Vector3d& axis) {
  double doubled = 0;
  for (const std::uint32_t t : triangles) {
    const auto& triangle = mesh.triangles[t];
    const Vector3d a = mesh.positions[triangle[0]].cast<double>();
    doubled += std::abs((mesh.positions[triangle[1]].cast<double>() - a)
                            .cross(mesh.positions[triangle[2]].cast<double>() - a)
                            .dot(axis));
  }
  return std::sqrt(doubled / 2 / std::numbers::pi);
}

/// The middle of an end, rim left out: what looks out of the bone near the axis of the face. The face itself may be no
/// more than the ring round a socket, or the part of a ball that lies over against the other bone.
std::vector<std::uint32_t> coreOf(const TriangleMesh& mesh, const CentrumEnd& end) {
  std::vector<double> reach;
  for (const std::uint32_t t : end.triangles)
    for (const std::uint32_t v : mesh.triangles[t]) {
      const Vector3d off = mesh.positions[v].cast<double>() - end.middle;
      reach.push_back((off - off.dot(end.normal) * end.normal).norm());
    }
  const auto most = reach.begin() + static_cast<std::ptrdiff_t>(kMostOfFace * static_cast<double>(reach.size() - 1));
  std::nth_element(reach.begin(), most, reach.end());
  const double radius = *most;
  std::vector<std::uint32_t> out;
  for (std::uint32_t t = 0; t < mesh.triangles.size(); ++t) {
    const auto& triangle = mesh.triangles[t];
    const Vector3d a = mesh.positions[triangle[0]].cast<double>(), b = mesh.positions[triangle[1]].cast<double>(),
                   c = mesh.positions[triangle[2]].cast<double>();
    const Vector3d off = (a + b + c) / 3 - end.middle, doubled = (b - a).cross(c - a);
    const double along = off.dot(end.normal);
    if (std::abs(along) < kCoreDepth * radius && (off - along * end.normal).norm() < kCore * radius &&
        doubled.dot(end.normal) > 0.5 * doubled.norm())
      out.push_back(t);
  }
  return out;
}

/// The ball that goes through some triangles and what lies on it besides: rounder than it is flat, and a good part of a
/// ball.
std::optional<SphereFit> ballThrough(const TriangleMesh& mesh, const std::vector<std::uint32_t>& start,
                                     const Vector3d& top) {
  constexpr std::size_t kFewest = 8;
  if (start.size() < kFewest) return std::nullopt;
  try {
    const BrushedPatch patch = patchOf(mesh, start);
    SphereFit ball = fitSphere(patch);
    if (ball.quality.rms > kRounder * fitPlane(patch).quality.rms) return std::nullopt;
    std::vector<std::uint32_t> whole;
    for (const double near : {2.5 * kOnBall, 1.5 * kOnBall, kOnBall}) {
      whole = onBall(mesh, ball, top, near);
      if (whole.size() < kFewest) return std::nullopt;
      ball = fitSphere(patchOf(mesh, whole));
    }
    whole = onBall(mesh, ball, top, kOnBall);
    if (ball.radius < kBallRadius * discRadiusOf(mesh, whole, top)) return ball;
  } catch (const reason::Failure&) {  // flat
  }
  return std::nullopt;
}

/// The ball or socket that an end is, if it is one.
std::optional<SphereFit> ballOf(const TriangleMesh& mesh, const CentrumEnd& end) {
  auto ball = ballThrough(mesh, coreOf(mesh, end), end.normal);
  return ball ? ball : ballThrough(mesh, end.triangles, end.normal);
}

/// Middle of the rim of a socket: what of the surface lies on its ball ends there.
Vector3d rimOfSocket(const TriangleMesh& mesh, const CentrumEnd& end) {
  const SphereFit& ball = *end.ball;
  std::vector<std::pair<double, double>> heights;  // over the centre, out of the bone; area
  double total = 0;
  for (const std::uint32_t t : onBall(mesh, ball, end.normal, kOnBall, 0)) {
    const Eigen::Matrix3d corners = patchOf(mesh, std::array{t}).triangles.front();
    heights.emplace_back((corners.rowwise().mean() - ball.centre).dot(end.normal),
                         0.5 * (corners.col(1) - corners.col(0)).cross(corners.col(2) - corners.col(0)).norm());
    total += heights.back().second;
  }
  std::sort(heights.rbegin(), heights.rend());
  double passed = 0, height = 0;
  for (const auto& [h, area] : heights) {
    height = h;
    if ((passed += area) > kBallBase * total) break;
  }
  return ball.centre + std::min(0.0, height) * end.normal;
}

}  // namespace

Vector3d baseOfBall(const CentrumEnd& end, double share) {
  return end.ball->centre + std::clamp(share, 0.0, kHighestBase) * end.ball->radius * end.normal;
}

CentrumEnd endOf(const TriangleMesh& mesh, std::vector<std::uint32_t> triangles, const MidPlane& midPlane,
                 double size) {
  CentrumEnd out;
  out.triangles = std::move(triangles);
  const BrushedPatch patch = patchOf(mesh, out.triangles);
  for (const Eigen::Matrix3d& t : patch.triangles) {
    const double own = 0.5 * (t.col(1) - t.col(0)).cross(t.col(2) - t.col(0)).norm();
    out.middle += own * t.rowwise().mean();
    out.area += own;
  }
  out.middle /= out.area;
  out.normal = patch.normal.normalized();
  out.rim = out.middle;
  out.ball = ballOf(mesh, out);
  if (out.ball) out.rim = out.ball->hollow ? rimOfSocket(mesh, out) : baseOfBall(out, kUsualBase);
  const double residual = out.ball ? out.ball->quality.rms : fitPlane(patch).quality.rms;
  out.confidence =
      geometricMean({std::min(1.0, out.area / (kFullFace * size * size)), fallOff(residual, 0.15 * std::sqrt(out.area)),
                     fallOff(midPlane.side(out.middle), kFaceCentred * size)});
  return out;
}

bool isJointOfBall(const CentrumEnd& a, const CentrumEnd& b) {
  return a.ball && b.ball && a.ball->hollow != b.ball->hollow;
}

Vector3d openingOf(const TriangleMesh& mesh, const CentrumEnd& end) {
  Vector3d way = end.normal;
  if (!end.ball || !end.ball->hollow) return way;
  for (int round = 0; round < 10; ++round) {
    const Vector3d next = patchOf(mesh, onBall(mesh, *end.ball, way, kOnBall, 0)).normal.normalized();
    const bool same = next.dot(way) > 1 - 1e-8;
    way = next;
    if (same) break;
  }
  return way;
}

std::vector<std::uint32_t> faceOnBall(const TriangleMesh& mesh, const CentrumEnd& end, const Vector3d& way) {
  return onBall(mesh, *end.ball, way, kOnBall, kLooksAlong);
}

EndPlaces placesOf(const CentrumEnd& end, const CentrumEnd* mate) {
  const bool ball = mate ? isJointOfBall(end, *mate) : end.ball.has_value();
  if (!ball) return {end.middle, end.middle};
  const bool seated = end.ball->hollow && mate;
  const Vector3d centre =
      seated ? Vector3d(end.ball->centre - (end.ball->radius - mate->ball->radius) * end.normal) : end.ball->centre;
  // Balls have their centre inside the bone, sockets outside.
  const auto beyondRim = [](const CentrumEnd& e, const Vector3d& p) {
    return (e.ball->hollow ? 1 : -1) * (p - e.rim).dot(e.normal);
  };
  const CentrumEnd& deep = seated ? *mate : end;
  const double depth = deep.ball->radius - beyondRim(deep, deep.ball->centre), inside = beyondRim(end, centre);
  return {end.rim, end.rim + (centre - end.rim) * (inside > 0 ? anatomy::turningDepth(inside, depth) / inside : 1)};
}

void seatBases(CentrumEnd& a, CentrumEnd& b) {
  if (!isJointOfBall(a, b)) return;
  CentrumEnd &ball = a.ball->hollow ? b : a, &socket = a.ball->hollow ? a : b;
  ball.rim = baseOfBall(ball, (socket.rim - ball.ball->centre).dot(ball.normal) / ball.ball->radius);
}

}  // namespace zyga::solid
