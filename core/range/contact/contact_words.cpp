#include "core/range/contact/contact_words.h"

#include <algorithm>
#include <cmath>

#include "core/range/wording.h"

namespace zyga::range {
namespace {

using anatomy::Bone;
using Eigen::Vector3d;

const Vector3d* landmark(const Bone& bone, std::string_view name) {
  const auto found = bone.landmarks.find(name);
  return found == bone.landmarks.end() ? nullptr : &found->second;
}

bool onFacet(const Bone& bone, const Vector3d& p) {
  return std::any_of(bone.facets.begin(), bone.facets.end(), [&](const anatomy::Facet& facet) {
    return (p - facet.centre).norm() < 0.75 * std::max(facet.length(), facet.width());
  });
}

/// Along the shaft of a cervical rib, or behind it.
bool onRib(const Bone& bone, const Vector3d& p, const char* side) {
  const Vector3d* start = landmark(bone, std::string("parapophysis") + side);
  const Vector3d* end = landmark(bone, std::string("ribTip") + side);
  if (!start || !end) return false;
  const Vector3d way = *end - *start;
  const double along = (p - *start).dot(way) / way.squaredNorm();
  return along > 0.1 && (p - *start - std::min(along, 1.0) * way).norm() < 0.15 * way.norm();
}

std::string named(const PlaceOnBone& place) {
  const std::string_view part = partAt(place);
  return part.empty() ? place.bone.id : std::string(part) + " of " + place.bone.id;
}

std::string plural(std::string_view part) {
  if (part == "zygapophysis") return "zygapophyses";
  if (part == "centrum") return "centra";
  return std::string(part) + (part.ends_with('s') ? "es" : part == "arch" ? "es" : "s");
}

bool alike(const PlaceOnBone& one, const PlaceOnBone& other) {
  return !partAt(one).empty() && partAt(one) == partAt(other);
}

}  // namespace

std::string_view partAt(const PlaceOnBone& place) {
  const Bone& bone = place.bone;
  const Vector3d& p = place.p_B;
  if (!isVertebra(bone.name.kind)) return "";
  if (onFacet(bone, p)) return "zygapophysis";
  if (onRib(bone, p, ".L") || onRib(bone, p, ".R")) return "rib";
  const Vector3d* canal = landmark(bone, "canal");
  const Vector3d* top = landmark(bone, "spineTop");
  const double roof = canal ? canal->z() : 0;
  const Vector3d* side = landmark(bone, "diapophysis.L");
  const bool wide = side && std::abs(p.y()) > 0.5 * std::abs(side->y());
  if (top && !wide && p.z() > roof + 0.35 * (top->z() - roof)) return "spine";
  if (wide && p.z() > 0) return "transverse process";
  return p.z() > roof ? "arch" : "centrum";
}

std::string bothParts(const PlaceOnBone& one, const PlaceOnBone& other) {
  if (!alike(one, other)) return named(one) + " and " + named(other);
  // Names order by kind and number, which is along the column.
  const bool inOrder = one.bone.name < other.bone.name;
  const PlaceOnBone& first = inOrder ? one : other;
  const PlaceOnBone& second = inOrder ? other : one;
  return plural(partAt(first)) + " of " + first.bone.id + " and " + second.bone.id;
}

std::string contactSentence(const PlaceOnBone& entering, const PlaceOnBone& entered, double depth, double tolerated) {
  Criterion criterion;
  criterion.kind = FindingKind::BoneContact;
  criterion.measured = depth;
  criterion.limit = tolerated;
  const TextPair text = textApart(criterion);
  const std::string amount = " by " + text.measured + " (tolerated " + text.limit + ")";
  if (alike(entering, entered)) return bothParts(entering, entered) + " enter each other" + amount;
  return named(entering) + " enters " + named(entered) + amount;
}

}  // namespace zyga::range
