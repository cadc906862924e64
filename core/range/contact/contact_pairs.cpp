#include "core/range/contact/contact_pairs.h"

#include <algorithm>
#include <map>
#include <optional>
#include <set>

namespace zyga::range {
namespace {

using anatomy::Bone;
using anatomy::BoneIndex;
using anatomy::BoneKind;
using anatomy::BoneName;
using anatomy::Facet;
using anatomy::Joint;
using anatomy::Measure;
using anatomy::Side;
using Eigen::Vector3d;

// What of neighbours is the joint's own affair. Program default, no source.
constexpr double kFacetWidening = 1.4;
constexpr double kCentrumWidening = 1.2;

constexpr int kFingers = 5;

ContactZone zoneOf(const Facet& facet) {
  Eigen::Isometry3d X_BZ = Eigen::Isometry3d::Identity();
  X_BZ.linear() << facet.slide, facet.across(), facet.normal;
  X_BZ.translation() = facet.centre;
  const Vector3d half(facet.length() * kFacetWidening, facet.width() * kFacetWidening, facet.width());
  return {X_BZ.inverse().cast<float>(), (0.5 * half).cast<float>(), false};
}

/// The facing ends of two centra, as large as the larger of them.
ContactZone zoneAbout(const Vector3d& centre, double height, double width) {
  const Vector3d half = 0.5 * kCentrumWidening * Vector3d(std::max(height, width), width, height);
  const Eigen::Isometry3d X_ZB(Eigen::Translation3d(-centre));
  return {X_ZB.cast<float>(), half.cast<float>(), true};
}

/// Half the shaft's thickness as the sculptor makes it, and how much wider its root is.
constexpr double kShaftOfLength = 0.019, kShaftOfHeight = 0.05, kRootWidening = 2.6;
/// The shaft begins this share of the centrum's length behind the rib's head.
constexpr double kBehindHead = 0.12;

std::optional<ContactZone> shaftZone(const Bone& bone, const std::string& side) {
  const auto at = [&](const std::string& name) -> const Vector3d* {
    const auto found = bone.landmarks.find(name + side);
    return found == bone.landmarks.end() ? nullptr : &found->second;
  };
  const Vector3d *head = at("parapophysis"), *outer = at("diapophysis"), *tip = at("ribTip");
  if (!head || !outer || !tip) return std::nullopt;
  const double length = bone.measures.valueOr(Measure::Length, 0);
  const double height = bone.measures.valueOr(Measure::CotyleHeight, 0);
  const double half = kRootWidening * std::max(kShaftOfLength * length, kShaftOfHeight * height);
  const Vector3d root(head->x() - kBehindHead * length, 0.5 * (head->y() + outer->y()), head->z() - 0.08 * height);
  const Vector3d way = *tip - root;
  if (way.x() >= 0) return std::nullopt;  // no longer than its head
  Eigen::Isometry3d X_BZ = Eigen::Isometry3d::Identity();
  const Vector3d x = way.normalized(), y = Vector3d::UnitZ().cross(x).normalized();
  X_BZ.linear() << x, y, x.cross(y);
  X_BZ.translation() = root + 0.5 * (way + half * x);
  // It sags a little, and its tip ends in the zone.
  const Vector3d size(way.norm() + half, 2 * half, 2 * half + 0.02 * way.norm());
  return ContactZone{X_BZ.inverse().cast<float>(), (0.5 * size).cast<float>(), false};
}

double larger(const Bone& a, const Bone& b, Measure measure) {
  return std::max(a.measures.valueOr(measure, 0), b.measures.valueOr(measure, 0));
}

class Pairing {
 public:
  explicit Pairing(const anatomy::Specimen& specimen) : specimen_(specimen) {
    for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
      if (!specimen.bones[i].fusedInto) byName_[specimen.bones[i].name] = {i};
    }
  }

  std::vector<ContactPair> run() {
    for (const Joint& joint : specimen_.joints) addJoint(joint);
    for (const auto& [name, index] : byName_) addSuspects(name, index);
    return std::move(pairs_);
  }

 private:
  std::optional<BoneIndex> find(BoneKind kind, int number, Side side = Side::Midline) const {
    const auto found = byName_.find({kind, number, 0, side});
    return found == byName_.end() ? std::nullopt : std::optional(found->second);
  }

  /// Vertebra after this one towards the tail.
  std::optional<BoneIndex> behind(const BoneName& name) const {
    if (const auto next = find(name.kind, name.number + 1)) return next;
    auto here = std::find(anatomy::kColumnKinds.begin(), anatomy::kColumnKinds.end(), name.kind);
    if (here == anatomy::kColumnKinds.end()) return std::nullopt;
    while (++here != anatomy::kColumnKinds.end())
      if (const auto next = find(*here, 1)) return next;
    return std::nullopt;
  }

  void add(BoneIndex a, std::optional<BoneIndex> b, ContactZones zonesA = {}, ContactZones zonesB = {}) {
    if (!b || a == *b || !done_.insert(std::minmax(a, *b)).second) return;
    pairs_.push_back({a, *b, std::move(zonesA), std::move(zonesB)});
  }

  /// Vertebrae, and the skull on the first, at the joint between them.
  void addJoint(const Joint& joint) {
    const Bone& proximal = specimen_[joint.proximal];
    const Bone& distal = specimen_[joint.distal];
    const bool head = distal.name.kind == BoneKind::Skull;
    if (!isVertebra(proximal.name.kind) || !(isVertebra(distal.name.kind) || head)) return;
    if (joint.kind == anatomy::JointKind::Fixed) {
      done_.insert(std::minmax(joint.proximal, joint.distal));
      return;
    }
    ContactZones zonesA, zonesB;
    const double height = larger(proximal, distal, Measure::CotyleHeight);
    const double width = larger(proximal, distal, Measure::CotyleWidth);
    zonesA.push_back(zoneAbout(joint.centreProximal, height, width));
    zonesB.push_back(zoneAbout(joint.centreDistal, height, width));
    for (const Facet& facet : proximal.facets) zonesA.push_back(zoneOf(facet));
    for (const Facet& facet : distal.facets) zonesB.push_back(zoneOf(facet));
    add(joint.proximal, joint.distal, std::move(zonesA), std::move(zonesB));
  }

  void addSuspects(const BoneName& name, BoneIndex index) {
    switch (name.kind) {
      case BoneKind::Cervical:
        if (const auto next = behind(name)) add(index, behind(specimen_[*next].name));
        return;
      case BoneKind::DorsalRib:
        add(index, find(BoneKind::DorsalRib, name.number + 1, name.side));
        if (const auto carrier = find(BoneKind::Dorsal, name.number)) add(index, behind(specimen_[*carrier].name));
        addLimbs(name, index);
        return;
      case BoneKind::Chevron:
        addChevron(name, index);
        return;
      case BoneKind::Skull:
      case BoneKind::Jaw:
        for (const int number : {1, 2}) add(index, find(BoneKind::Cervical, number));
        for (const Side side : {Side::Left, Side::Right}) addFrontOfBody(index, side);
        return;
      case BoneKind::Radius:
      case BoneKind::Ulna:
      case BoneKind::Tibia:
      case BoneKind::Fibula:
      case BoneKind::Metacarpal:
      case BoneKind::Metatarsal:
        addOtherLimbs(name, index);
        return;
      default:
        return;
    }
  }

  /// What a head can come near that the neck brings back to the body or down between the arms.
  void addFrontOfBody(BoneIndex head, Side side) {
    for (const BoneKind kind : {BoneKind::Scapula, BoneKind::Humerus, BoneKind::Radius, BoneKind::Ulna})
      add(head, find(kind, 0, side));
    for (int number = 1; number <= kFingers; ++number) add(head, find(BoneKind::Metacarpal, number, side));
    for (int rib = 1; rib <= 4; ++rib) add(head, find(BoneKind::DorsalRib, rib, side));
  }

  /// The same limb of the other side, and the foot of the same side behind or before it.
  void addOtherLimbs(const BoneName& name, BoneIndex index) {
    const bool fore = name.kind == BoneKind::Metacarpal, foot = fore || name.kind == BoneKind::Metatarsal;
    const Side other = name.side == Side::Left ? Side::Right : Side::Left;
    const auto addAll = [&](BoneKind kind, Side side) {
      for (int number = 1; number <= kFingers; ++number) add(index, find(kind, number, side));
    };
    if (foot) {
      addAll(name.kind, other);
      if (fore) addAll(BoneKind::Metatarsal, name.side);
      return;
    }
    const bool arm = name.kind == BoneKind::Radius || name.kind == BoneKind::Ulna;
    for (const BoneKind kind : {arm ? BoneKind::Radius : BoneKind::Tibia, arm ? BoneKind::Ulna : BoneKind::Fibula})
      add(index, find(kind, 0, other));
  }

  /// The ribs that a limb can come near.
  void addLimbs(const BoneName& rib, BoneIndex index) {
    if (rib.number <= 8) add(index, find(BoneKind::Scapula, 0, rib.side));
    if (rib.number <= 6) add(index, find(BoneKind::Humerus, 0, rib.side));
    if (rib.number + 4 > specimen_.counts.dorsal) add(index, find(BoneKind::Femur, 0, rib.side));
  }

  void addChevron(const BoneName& name, BoneIndex index) {
    add(index, find(BoneKind::Chevron, name.number + 1));
    const auto next = find(BoneKind::Caudal, name.number + 1);
    if (!next) return;
    // A chevron sits on the rims of both vertebrae.
    const Bone& vertebra = specimen_[*next];
    const double height = vertebra.measures.valueOr(Measure::CotyleHeight, 0);
    add(index, next, {zoneAbout(Vector3d::Zero(), 0.4 * height, height)});
  }

  const anatomy::Specimen& specimen_;
  std::map<BoneName, BoneIndex> byName_;
  std::set<std::pair<BoneIndex, BoneIndex>> done_;
  std::vector<ContactPair> pairs_;
};

}  // namespace

ContactZones bendingRibs(const Bone& bone) {
  ContactZones zones;
  if (bone.name.kind != BoneKind::Cervical || bone.scanned) return zones;
  for (const char* side : {".L", ".R"})
    if (const auto zone = shaftZone(bone, side)) zones.push_back(*zone);
  return zones;
}

std::vector<ContactPair> contactPairs(const anatomy::Specimen& specimen) { return Pairing(specimen).run(); }

}  // namespace zyga::range
