#include "core/range/contact/contact.h"

#include <algorithm>
#include <cmath>
#include <string>

namespace zyga::range {
namespace {

using anatomy::BoneIndex;
using Eigen::Isometry3d;
using Eigen::Vector3d;
using Fields = std::vector<std::shared_ptr<const anatomy::SignedDistance>>;

/// Shapes without zones of a joint are shared by all pairs of their bone.
class ShapeMaker {
 public:
  ShapeMaker(const anatomy::Specimen& specimen, const Fields& fields)
      : specimen_(specimen), fields_(fields), plain_(fields.size()) {}

  ContactShape make(BoneIndex bone, const ContactZones& ofJoint) {
    if (ofJoint.empty()) return plain(bone);
    ContactZones zones = plain(bone).zones;
    zones.insert(zones.end(), ofJoint.begin(), ofJoint.end());
    return ContactShape(fields_[bone.value], std::move(zones));
  }

  /// All of the bone but the ribs that bend.
  const ContactShape& plain(BoneIndex bone) {
    ContactShape& plain = plain_[bone.value];
    if (!plain) plain = ContactShape(fields_[bone.value], bendingRibs(specimen_[bone]));
    return plain;
  }

 private:
  const anatomy::Specimen& specimen_;
  const Fields& fields_;
  std::vector<ContactShape> plain_;
};

/// Bones that never move against each other, and how each is fixed to the one that carries them all.
struct Clusters {
  std::vector<std::size_t> root;
  std::vector<Isometry3d> X_RootBone;
  std::vector<std::size_t> jointAbove;  ///< by bone; the number of joints for the root of the skeleton
};

Clusters clustersOf(const anatomy::Specimen& specimen) {
  Clusters c;
  c.X_RootBone.assign(specimen.bones.size(), Isometry3d::Identity());
  c.jointAbove.assign(specimen.bones.size(), specimen.joints.size());
  c.root.resize(specimen.bones.size());
  for (std::size_t i = 0; i < c.root.size(); ++i) c.root[i] = i;
  const kinematics::Articulation rest = kinematics::restArticulation(specimen);
  // Joints come in order: what carries a bone has its place already.
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = specimen.joints[j];
    c.jointAbove[joint.distal.value] = j;
    if (joint.kind != anatomy::JointKind::Fixed) continue;
    c.root[joint.distal.value] = c.root[joint.proximal.value];
    c.X_RootBone[joint.distal.value] =
        c.X_RootBone[joint.proximal.value] * kinematics::jointTransform(joint, rest.rests[j], Eigen::Vector3d::Zero());
  }
  return c;
}

/// Those that can move.
std::vector<anatomy::JointIndex> jointsBetween(const anatomy::Specimen& specimen, BoneIndex a, BoneIndex b) {
  std::vector<anatomy::JointIndex> toA = specimen.chainTo(a), toB = specimen.chainTo(b);
  const auto part = std::mismatch(toA.begin(), toA.end(), toB.begin(), toB.end());
  std::vector<anatomy::JointIndex> between(part.first, toA.end());
  between.insert(between.end(), part.second, toB.end());
  std::erase_if(between, [&](anatomy::JointIndex j) { return specimen[j].kind == anatomy::JointKind::Fixed; });
  return between;
}

const Vector3d* landmark(const anatomy::Bone& bone, std::string_view name) {
  const auto found = bone.landmarks.find(name);
  return found == bone.landmarks.end() ? nullptr : &found->second;
}

bool onFacet(const anatomy::Bone& bone, const Vector3d& p) {
  return std::any_of(bone.facets.begin(), bone.facets.end(), [&](const anatomy::Facet& facet) {
    return (p - facet.centre).norm() < 0.75 * std::max(facet.length(), facet.width());
  });
}

/// Along the shaft of a cervical rib, or behind it.
bool onRib(const anatomy::Bone& bone, const Vector3d& p, const char* side) {
  const Vector3d* start = landmark(bone, std::string("parapophysis") + side);
  const Vector3d* end = landmark(bone, std::string("ribTip") + side);
  if (!start || !end) return false;
  const Vector3d way = *end - *start;
  const double along = (p - *start).dot(way) / way.squaredNorm();
  return along > 0.1 && (p - *start - std::min(along, 1.0) * way).norm() < 0.15 * way.norm();
}

}  // namespace

BonePart partAt(const anatomy::Bone& bone, const Vector3d& p) {
  if (!isVertebra(bone.name.kind)) return BonePart::Bone;
  if (onFacet(bone, p)) return BonePart::Zygapophysis;
  if (onRib(bone, p, ".L") || onRib(bone, p, ".R")) return BonePart::Rib;
  const Vector3d* canal = landmark(bone, "canal");
  const Vector3d* top = landmark(bone, "spineTop");
  const double roof = canal ? canal->z() : 0;
  const Vector3d* side = landmark(bone, "diapophysis.L");
  const bool wide = side && std::abs(p.y()) > 0.5 * std::abs(side->y());
  if (top && !wide && p.z() > roof + 0.35 * (top->z() - roof)) return BonePart::Spine;
  if (wide && p.z() > 0) return BonePart::TransverseProcess;
  return p.z() > roof ? BonePart::Arch : BonePart::Centrum;
}

/// Where a verdict follows, the deepest point counts: left and right may not differ by what a search passes over.
constexpr float kExact = 0;

ContactModel::ContactModel(anatomy::Specimen specimen, Fields fields)
    : specimen_(std::move(specimen)), extents_(specimen_.bones.size()), moved_(specimen_.joints.size()) {
  ShapeMaker shapes(specimen_, fields);
  for (ContactPair& pair : contactPairs(specimen_)) {
    if (!fields.at(pair.a.value) || !fields.at(pair.b.value)) continue;
    shapes_.emplace_back(shapes.make(pair.a, pair.zonesA), shapes.make(pair.b, pair.zonesB));
    for (const BoneIndex bone : {pair.a, pair.b}) {
      double& extent = extents_[bone.value];
      if (extent == 0) extent = meanExtent(shapes.plain(bone));
    }
    pairs_.push_back(std::move(pair));
  }
  for (const ContactPair& pair : pairs_) movers_.push_back(jointsBetween(specimen_, pair.a, pair.b));
  const Clusters clusters = clustersOf(specimen_);
  for (std::size_t i = 0; i < pairs_.size(); ++i) {
    for (const bool turned : {false, true}) {
      const std::size_t near = (turned ? pairs_[i].b : pairs_[i].a).value;
      const std::size_t far = (turned ? pairs_[i].a : pairs_[i].b).value;
      const std::size_t j = clusters.jointAbove[clusters.root[far]];
      if (j == specimen_.joints.size()) continue;
      const std::size_t proximal = specimen_.joints[j].proximal.value;
      if (clusters.root[proximal] != clusters.root[near]) continue;
      moved_[j].push_back(
          {i, clusters.X_RootBone[proximal].inverse() * clusters.X_RootBone[near], clusters.X_RootBone[far], turned});
    }
  }
}

double ContactModel::tolerated(std::size_t pair, const ContactTolerance& tolerance) const {
  const auto& [a, b] = shapes_[pair];
  return tolerance.depth(std::min(extents_[pairs_[pair].a.value], extents_[pairs_[pair].b.value]),
                         std::max(a.field->resolution(), b.field->resolution()));
}

PairMeeting ContactModel::meeting(std::size_t pair, const Isometry3d& X_WA, const Isometry3d& X_WB, double within,
                                  float slack) const {
  const Isometry3d X_AB = X_WA.inverse() * X_WB;
  const auto& [a, b] = shapes_[pair];
  const ContactMeeting found = contactDepth(a, b, X_AB.cast<float>(), static_cast<float>(within), slack);
  return {found.distance, X_WA * found.p_A.cast<double>(), found.onA};
}

std::vector<PairMeeting> ContactModel::meetings(const kinematics::Placement& X_WB, double within, float slack) const {
  std::vector<PairMeeting> all;
  all.reserve(pairs_.size());
  for (std::size_t i = 0; i < pairs_.size(); ++i) {
    all.push_back(meeting(i, X_WB[pairs_[i].a.value], X_WB[pairs_[i].b.value], within, slack));
  }
  return all;
}

ContactFinding ContactModel::finding(std::size_t pair, const PairMeeting& meeting, const kinematics::Placement& X_WB,
                                     double tolerated) const {
  const auto& [a, b] = std::pair(pairs_[pair].a, pairs_[pair].b);
  ContactFinding finding;
  finding.bone = meeting.onA ? a : b;
  finding.other = meeting.onA ? b : a;
  finding.depth = -meeting.distance;
  finding.tolerated = tolerated;
  finding.p_W = meeting.p_W;
  finding.level = finding.depth > tolerated ? Level::Beyond : Level::Near;
  if (movers_[pair].size() == 1) finding.joint = movers_[pair].front();
  const auto part = [&](BoneIndex bone) { return partOf(bone, X_WB[bone.value].inverse() * meeting.p_W); };
  finding.parts = {part(finding.bone), part(finding.other)};
  return finding;
}

std::vector<ContactFinding> ContactModel::contacts(const kinematics::Placement& X_WB,
                                                   const Assumptions& assumptions) const {
  std::vector<ContactFinding> found;
  for (std::size_t i = 0; i < pairs_.size(); ++i) {
    const double limit = tolerated(i, assumptions.contactTolerated);
    const double worthTelling = limit * (1 - assumptions.nearMargin);
    const PairMeeting met = meeting(i, X_WB[pairs_[i].a.value], X_WB[pairs_[i].b.value], -worthTelling, kExact);
    if (met.distance < -worthTelling) found.push_back(finding(i, met, X_WB, limit));
  }
  std::stable_sort(found.begin(), found.end(),
                   [](const auto& a, const auto& b) { return worse(a.severity(), b.severity()); });
  return found;
}

ContactPlace ContactModel::deepest(anatomy::JointIndex joint, const Isometry3d& X_PD,
                                   const ContactTolerance& tolerance) const {
  ContactPlace deepest;
  PairMeeting best;
  double most = -std::numeric_limits<double>::infinity();  // past the tolerance, m
  const Moved* where = nullptr;
  for (const Moved& moved : moved_[joint.value]) {
    const Isometry3d X_PB = X_PD * moved.X_DB;
    const double limit = tolerated(moved.pair, tolerance);
    const double within = -(most + limit);
    const PairMeeting met =
        meeting(moved.pair, moved.turned ? X_PB : moved.X_PA, moved.turned ? moved.X_PA : X_PB, within, kExact);
    if (met.distance >= within) continue;
    best = met;
    most = -met.distance - limit;
    deepest.tolerated = limit;
    where = &moved;
  }
  if (!where) return deepest;
  const ContactPair& pair = pairs_[where->pair];
  const Isometry3d X_PFar = X_PD * where->X_DB;
  const auto part = [&](BoneIndex bone, bool onFar) {
    return partOf(bone, (onFar ? X_PFar : where->X_PA).inverse() * best.p_W);
  };
  deepest.depth = -best.distance;
  deepest.parts = {part(pair.a, where->turned), part(pair.b, !where->turned)};
  if (!best.onA) std::swap(deepest.parts.first, deepest.parts.second);
  return deepest;
}

bool ContactModel::entersBeyond(anatomy::JointIndex joint, const Isometry3d& X_PD,
                                const ContactTolerance& tolerance) const {
  return std::any_of(moved_[joint.value].begin(), moved_[joint.value].end(), [&](const Moved& moved) {
    const Isometry3d X_PB = X_PD * moved.X_DB;
    const double limit = tolerated(moved.pair, tolerance);
    const PairMeeting met =
        meeting(moved.pair, moved.turned ? X_PB : moved.X_PA, moved.turned ? moved.X_PA : X_PB, -limit, kExact);
    return met.distance < -limit;
  });
}

bool ContactModel::entersBeyond(std::size_t pair, const kinematics::Placement& X_WB,
                                const ContactTolerance& tolerance) const {
  const double limit = tolerated(pair, tolerance);
  return meeting(pair, X_WB[pairs_[pair].a.value], X_WB[pairs_[pair].b.value], -limit, kExact).distance < -limit;
}

ContactPlace ContactModel::place(std::size_t pair, const kinematics::Placement& X_WB,
                                 const ContactTolerance& tolerance) const {
  constexpr double kAnyDepth = std::numeric_limits<double>::infinity();
  const double limit = tolerated(pair, tolerance);
  const PairMeeting met = meeting(pair, X_WB[pairs_[pair].a.value], X_WB[pairs_[pair].b.value], kAnyDepth, kExact);
  const ContactFinding found = finding(pair, met, X_WB, limit);
  return {found.depth, found.parts, limit};
}

std::vector<bool> bonesInContactPairs(const anatomy::Specimen& specimen) {
  std::vector<bool> wanted(specimen.bones.size());
  for (const ContactPair& pair : contactPairs(specimen)) wanted[pair.a.value] = wanted[pair.b.value] = true;
  return wanted;
}

void judgeContact(const ContactModel& model, const kinematics::Placement& X_WB, const Assumptions& assumptions,
                  Assessment& assessment) {
  assessment.setContacts(true, model.contacts(X_WB, assumptions));
}

}  // namespace zyga::range
