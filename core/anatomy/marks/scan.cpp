#include "core/anatomy/marks/scan.h"

#include <algorithm>
#include <cmath>

#include "core/anatomy/landmarks.h"
#include "core/anatomy/specimen_reasons.h"
#include "core/linear/linear.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;
using Points = std::map<std::string, Vector3d, std::less<>>;

constexpr double kSamePlace = 1e-9;  ///< m

const Vector3d kReflect(1, -1, 1);

std::optional<Vector3d> find(const Points& points, std::string_view name) {
  const auto found = points.find(name);
  if (found == points.end()) return std::nullopt;
  return found->second;
}

/// What was marked, scaled and straightened but not yet placed.
Points shaped(const Scan& scan) {
  Points points;
  for (const auto& [name, p] : scan.landmarks) points[name] = scan.scale * (scan.straighten * p);
  return points;
}

/// Sum of all steps from right to left: paired landmarks and paired facets.
Vector3d towardsLeft(const Scan& scan, const Points& points) {
  Vector3d sum = Vector3d::Zero();
  for (const auto& [name, p] : points)
    if (name.ends_with(".L"))
      if (const auto right = find(points, otherSide(name))) sum += p - *right;
  for (const auto& left : scan.facets)
    for (const auto& right : scan.facets)
      if (isLeft(left.facet.role) && right.facet.role == mirrored(left.facet.role))
        sum += scan.straighten * (left.facet.centre - right.facet.centre) * scan.scale;
  return sum;
}

/// x cranial, y left, z dorsal; none when what is marked lies along one line.
std::optional<Eigen::Matrix3d> axesFrom(const Vector3d& cranial, const Vector3d& left) {
  const Vector3d x = cranial.normalized();
  const Vector3d y = left - left.dot(x) * x;
  if (!(cranial.norm() > kSamePlace) || !(y.norm() > 1e-3 * left.norm()) || !(left.norm() > kSamePlace))
    return std::nullopt;
  Eigen::Matrix3d R_ScanBone;
  R_ScanBone << x, y.normalized(), x.cross(y.normalized());
  return R_ScanBone;
}

std::optional<Eigen::Isometry3d> vertebraFrame(const Scan& scan) {
  const Points points = shaped(scan);
  const auto front = find(points, "cranialRim"), back = find(points, "caudalRim");
  if (!front || !back) return std::nullopt;
  const Vector3d middle = (*front + *back) / 2;
  const auto canalFront = find(points, kCanalCranial), canalBack = find(points, kCanalCaudal);
  const Vector3d cranial = canalFront && canalBack ? Vector3d(*canalFront - *canalBack) : Vector3d(*front - *back);
  Vector3d left = towardsLeft(scan, points);
  if (left.isZero()) {
    // z x x = y: whatever lies dorsally will do.
    for (const char* dorsal : {"spineTop", "canal"})
      if (const auto p = find(points, dorsal); p && left.isZero()) left = (*p - middle).cross(cranial);
    if (canalFront && left.isZero()) left = (*canalFront - middle).cross(cranial);
  }
  const auto R_ScanBone = axesFrom(cranial, left);
  if (!R_ScanBone) return std::nullopt;
  Eigen::Isometry3d X_BoneScan = Eigen::Isometry3d::Identity();
  X_BoneScan.linear() = R_ScanBone->transpose();
  X_BoneScan.translation() = -(R_ScanBone->transpose() * middle);
  return X_BoneScan;
}

/// Where the sculpted bone's origin is one of its landmarks, the scan's shall be that one exactly.
void seatOrigin(const Points& points, const Bone& sculpted, Eigen::Isometry3d& X_BoneScan) {
  for (const auto& [name, p_B] : sculpted.landmarks) {
    const auto marked = find(points, name);
    if (!marked || p_B.norm() > kSamePlace) continue;
    X_BoneScan.translation() = -(X_BoneScan.linear() * *marked);
    return;
  }
}

std::optional<Eigen::Isometry3d> frameByLikeness(const Scan& scan, const Bone& sculpted) {
  const Points points = shaped(scan);
  std::vector<std::pair<Vector3d, Vector3d>> shared;
  for (const auto& [name, p] : points)
    if (const auto there = sculpted.landmarks.find(name); there != sculpted.landmarks.end())
      shared.emplace_back(p, there->second);
  if (shared.size() < 3) return std::nullopt;
  Eigen::Matrix3Xd from(3, shared.size()), to(3, shared.size());
  for (std::size_t i = 0; i < shared.size(); ++i) {
    from.col(static_cast<Eigen::Index>(i)) = shared[i].first;
    to.col(static_cast<Eigen::Index>(i)) = shared[i].second;
  }
  // Points on one line leave the turn about it open.
  const Eigen::Matrix3Xd about = from.colwise() - from.rowwise().mean();
  const Eigen::Vector3d spread = linear::singularValues(about);
  if (!(spread(1) > 1e-3 * spread(0))) return std::nullopt;
  const Eigen::Matrix4d T = linear::similarity(from, to);
  const double scale = std::cbrt(T.topLeftCorner<3, 3>().determinant());
  Eigen::Isometry3d X_BoneScan = Eigen::Isometry3d::Identity();
  X_BoneScan.linear() = T.topLeftCorner<3, 3>() / scale;
  X_BoneScan.translation() = to.rowwise().mean() - X_BoneScan.linear() * from.rowwise().mean();
  seatOrigin(points, sculpted, X_BoneScan);
  return X_BoneScan;
}

/// The centre of rotation follows the landmark it lay on: where several lie there, the one that stands for it, then any
/// that was marked.
void follow(Vector3d& centre, const Points& before, const Points& now) {
  const Vector3d old = centre;
  for (const bool centresOnly : {true, false})
    for (const auto& [name, p] : before) {
      const bool isCentre = name == "cranial" || name == "caudal" || name == "proximal" || name == "distal";
      const auto moved = now.find(name);
      if (isCentre != centresOnly || (p - old).norm() > kSamePlace || moved == now.end()) continue;
      centre = moved->second;
      return;
    }
}

void moveJoints(Specimen& specimen, BoneIndex bone, const Points& before, const Points& marked) {
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    Joint& joint = specimen.joints[j];
    if (joint.proximal == bone) follow(joint.centreProximal, before, marked);
    if (joint.distal == bone) follow(joint.centreDistal, before, marked);
    const auto front = find(marked, "cranialRim"), back = find(marked, "caudalRim");
    if (joint.hasFacets() && specimen.caudalBone({j}) == bone && front && back)
      joint.centrumLength = (*front - *back).norm();
  }
}

void putIn(Specimen& specimen, const Scan& scan) {
  const auto index = specimen.findBone(toId(scan.bone));
  if (!index) throw reason::Failure({specimen::kNoSuchBone, {reason::text(toId(scan.bone))}});
  Bone& bone = specimen.bones[index->value];
  if (bone.fusedInto)
    throw reason::Failure({specimen::kFused, {reason::text(bone.id), reason::text(specimen[*bone.fusedInto].id)}});
  const Points before = bone.landmarks;
  Points marked = landmarksInBone(scan);
  marked.erase(std::string(kCanalCranial));
  marked.erase(std::string(kCanalCaudal));
  for (const auto& [name, p] : marked) bone.landmarks[name] = p;
  bone.facets = facetsInBone(scan);
  bone.evidence = scan.evidence;
  bone.scanned = true;
  bone.source = scan.source;
  moveJoints(specimen, *index, before, marked);
}

const Scan* scanOf(std::span<const Scan> scans, const Bone& bone) {
  const auto found = std::find_if(scans.begin(), scans.end(), [&](const Scan& s) { return s.bone == bone.name; });
  return found == scans.end() ? nullptr : &*found;
}

void addLacking(const Scan& scan, bool cranialOne, std::vector<reason::Reason>& out) {
  const reason::Value id = reason::text(toId(scan.bone));
  if (!scan.placed) out.push_back({scan::kLacksPlace, {id}});
  const Points marked = landmarksInBone(scan);
  if (!marked.contains(cranialOne ? "caudal" : "cranial"))
    out.push_back({cranialOne ? scan::kLacksCaudalCentre : scan::kLacksCranialCentre, {id}});
  const auto facets = facetsInBone(scan);
  const std::array<FacetRole, 2> roles = cranialOne ? std::array{FacetRole::PostzygLeft, FacetRole::PostzygRight}
                                                    : std::array{FacetRole::PrezygLeft, FacetRole::PrezygRight};
  for (const FacetRole role : roles)
    if (std::none_of(facets.begin(), facets.end(), [role](const Facet& f) { return f.role == role; }))
      out.push_back({scan::kLacksFacet, {id, termOf(role)}});
}

}  // namespace

double extentOf(const Bone& bone) {
  Eigen::AlignedBox3d box;
  for (const auto& [name, p] : bone.landmarks) box.extend(p);
  return box.isEmpty() || !(box.sizes().maxCoeff() > 0) ? kUsualExtent : box.sizes().maxCoeff();
}

Eigen::Affine3d boneFromScan(const Scan& scan) {
  Eigen::Affine3d map = Eigen::Affine3d::Identity();
  map.linear() = scan.X_BoneScan.linear() * scan.scale * scan.straighten;
  map.translation() = scan.X_BoneScan.translation();
  if (!scan.mirror) return map;
  return Eigen::Affine3d(kReflect.asDiagonal()) * map;
}

Facet mapped(const Facet& facet, const Eigen::Affine3d& map) {
  const Eigen::Matrix3d A = map.linear();
  Facet out = facet;
  out.centre = map * facet.centre;
  out.normal = (A.inverse().transpose() * facet.normal).normalized();
  const Vector3d slide = A * facet.slide;
  out.slide = (slide - slide.dot(out.normal) * out.normal).normalized();
  out.radius = facet.radius * std::cbrt(std::abs(A.determinant()));
  const Vector3d across = out.across();
  for (std::size_t i = 0; i < facet.outline.size(); ++i) {
    const Vector3d d = map * facet.corner(i) - out.centre;
    out.outline[i] = {d.dot(out.slide), d.dot(across)};
  }
  if (A.determinant() < 0) std::reverse(out.outline.begin(), out.outline.end());
  return out;
}

Points landmarksInBone(const Scan& scan) {
  const Eigen::Affine3d map = boneFromScan(scan);
  Points out;
  for (const auto& [name, p] : scan.landmarks) out[scan.mirror ? otherSide(name) : name] = map * p;
  return out;
}

std::vector<Facet> facetsInBone(const Scan& scan) {
  const Eigen::Affine3d map = boneFromScan(scan);
  std::vector<Facet> out;
  for (const auto& marked : scan.facets) {
    out.push_back(mapped(marked.facet, map));
    if (scan.mirror) out.back().role = mirrored(marked.facet.role);
  }
  return out;
}

bool placeByLandmarks(Scan& scan, const Bone& sculpted) {
  // The landmarks are those of the bone as it was found; a mirrored one lies as its original does.
  auto X_BoneScan = isVertebra(scan.bone.kind) ? vertebraFrame(scan) : std::nullopt;
  if (!X_BoneScan) X_BoneScan = frameByLikeness(scan, sculpted);
  if (!X_BoneScan) return false;
  scan.X_BoneScan = *X_BoneScan;
  scan.placed = true;
  return true;
}

Specimen withScans(Specimen sculpted, std::span<const Scan> scans) {
  for (const Scan& scan : scans) putIn(sculpted, scan);
  return sculpted;
}

std::vector<reason::Reason> missingInputs(const Specimen& specimen, JointIndex joint, std::span<const Scan> scans) {
  std::vector<reason::Reason> out;
  if (!specimen[joint].hasFacets()) return out;
  if (const Scan* cranial = scanOf(scans, specimen[specimen.cranialBone(joint)])) addLacking(*cranial, true, out);
  if (const Scan* caudal = scanOf(scans, specimen[specimen.caudalBone(joint)])) addLacking(*caudal, false, out);
  return out;
}

Scan mirroredScan(const Scan& scan) {
  Scan out = scan;
  out.bone = mirrored(scan.bone);
  out.mirror = !scan.mirror;
  out.evidence = Evidence::Mirrored;
  out.source = toId(scan.bone) + (scan.source.empty() ? "" : "; " + scan.source);
  return out;
}

Scan scaledScan(Scan scan, double factor) {
  if (!(factor > 0) || !std::isfinite(factor)) throw reason::Failure(specimen::kScaleNotPositive);
  scan.scale *= factor;
  scan.X_BoneScan.translation() *= factor;
  scan.evidence = Evidence::Scaled;
  return scan;
}

}  // namespace zyga::anatomy
