#include "core/solid/sculpt/bone_shape.h"

#include <bit>
#include <cstdint>

#include "core/anatomy/characters.h"
#include "core/anatomy/landmarks.h"
#include "core/solid/sculpt/appendicular/appendicular.h"
#include "core/solid/sculpt/axial/axial.h"
#include "core/solid/sculpt/axial/vertebra.h"

namespace zyga::solid {

using anatomy::BoneKind;

namespace {

Shape leftOrMidline(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  switch (specimen[bone].name.kind) {
    case BoneKind::Cervical:
      if (specimen[bone].name.number == 1) return atlasShape(specimen, bone);
      if (specimen[bone].name.number == 2) return axisShape(specimen, bone);
      return cervicalShape(specimen, bone);
    case BoneKind::Dorsal:
    case BoneKind::Lumbar:
      return dorsalShape(specimen, bone);
    case BoneKind::Sacral:
      return sacralShape(specimen, bone);
    case BoneKind::Caudal:
      return caudalShape(specimen, bone);
    case BoneKind::CervicalRib:
      return {};  // grown into its vertebra
    case BoneKind::DorsalRib:
      return dorsalRibShape(specimen, bone);
    case BoneKind::Chevron:
      return chevronShape(specimen, bone);
    default:
      return appendicularShape(specimen, bone);
  }
}

}  // namespace

Shape shapeOf(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  if (specimen[bone].fusedInto) return {};
  if (specimen[bone].name.side != anatomy::Side::Right) return leftOrMidline(specimen, bone);
  return mirrored(leftOrMidline(mirroredSpecimen(specimen), bone));
}

std::vector<FlatPart> flatPartsOf(const anatomy::Bone& bone) {
  std::vector<FlatPart> parts;
  for (const anatomy::Facet& facet : bone.facets)
    parts.push_back({facet.centre, facet.normal, facet.slide, facet.length() / 2, facet.width() / 2});
  return parts;
}

BoneMesh meshBone(const anatomy::Specimen& specimen, anatomy::BoneIndex bone, std::size_t triangleBudget) {
  return meshLevels(shapeOf(specimen, bone), triangleBudget, flatPartsOf(specimen[bone]));
}

BoneMesh previewBone(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  return previewMesh(shapeOf(specimen, bone));
}

using anatomy::Bone;

namespace {

// Subtracting leaves a plain zero where the sign would only be changed.
Point inTheMirror(const Point& p) { return {p.x(), 0.0 - p.y(), p.z()}; }

void mirrorBone(Bone& bone) {
  bone.name = anatomy::mirrored(bone.name);
  bone.id = anatomy::toId(bone.name);
  decltype(bone.landmarks) landmarks;
  for (const auto& [name, place] : bone.landmarks) landmarks[anatomy::otherSide(name)] = inTheMirror(place);
  bone.landmarks = std::move(landmarks);
  for (anatomy::Facet& facet : bone.facets) facet = mirrored(facet);
}

}  // namespace

anatomy::Specimen mirroredSpecimen(const anatomy::Specimen& specimen) {
  anatomy::Specimen out = specimen;
  for (Bone& bone : out.bones) mirrorBone(bone);
  for (anatomy::Joint& joint : out.joints) {
    joint.centreProximal = inTheMirror(joint.centreProximal);
    joint.centreDistal = inTheMirror(joint.centreDistal);
  }
  return out;
}

using anatomy::Bone;
using anatomy::BoneIndex;
using anatomy::Specimen;

namespace {

/// Two FNV-1a sums with different starts (Fowler, Noll & Vo; offset basis and prime of the 64-bit variant).
class Digest {
 public:
  void add(std::uint64_t value) {
    for (int i = 0; i < 8; ++i) {
      const std::uint64_t byte = (value >> (8 * i)) & 0xff;
      a_ = (a_ ^ byte) * kPrime;
      b_ = (b_ ^ (byte + 0x9e)) * kPrime;
    }
  }
  void add(double value) { add(std::bit_cast<std::uint64_t>(value + 0.0)); }  // -0 and 0 are one number
  void add(const std::string& text) {
    add(static_cast<std::uint64_t>(text.size()));
    for (const char c : text) add(static_cast<std::uint64_t>(static_cast<unsigned char>(c)));
  }
  void add(const Eigen::Vector3d& p) { add(p.x()), add(p.y()), add(p.z()); }

  std::string text() const {
    std::string out;
    for (const std::uint64_t sum : {a_, b_})
      for (int shift = 60; shift >= 0; shift -= 4) out += "0123456789abcdef"[(sum >> shift) & 0xf];
    return out;
  }

 private:
  static constexpr std::uint64_t kPrime = 0x100000001b3;
  std::uint64_t a_ = 0xcbf29ce484222325, b_ = 0x84222325cbf29ce4;
};

void addFacets(Digest& digest, const Bone& bone) {
  for (const anatomy::Facet& facet : bone.facets) {
    digest.add(static_cast<std::uint64_t>(facet.role));
    digest.add(facet.centre);
    digest.add(facet.normal);
    digest.add(facet.slide);
    for (const Eigen::Vector2d& p : facet.outline) digest.add(p.x()), digest.add(p.y());
  }
}

void addBone(Digest& digest, const Bone& bone) {
  digest.add(bone.id);
  for (int i = 0; i < anatomy::kMeasureCount; ++i) {
    const anatomy::Cell& cell = bone.measures[static_cast<anatomy::Measure>(i)];
    digest.add(static_cast<std::uint64_t>(cell.known()));
    digest.add(cell.known() ? cell.value : 0.0);
  }
  for (const auto& [name, place] : bone.landmarks) {
    digest.add(name);
    digest.add(place);
  }
  addFacets(digest, bone);
}

bool isAxial(const Bone& bone) {
  using anatomy::BoneKind;
  return anatomy::isVertebra(bone.name.kind) || bone.name.kind == BoneKind::DorsalRib ||
         bone.name.kind == BoneKind::CervicalRib || bone.name.kind == BoneKind::Chevron;
}

/// A bone of the column has to fit the vertebrae it is joined to.
void addJoined(Digest& digest, const Specimen& specimen, BoneIndex bone) {
  for (const anatomy::Joint& joint : specimen.joints) {
    if (joint.proximal != bone && joint.distal != bone) continue;
    const Bone& other = specimen[joint.proximal == bone ? joint.distal : joint.proximal];
    if (anatomy::isVertebra(other.name.kind)) addBone(digest, other);
  }
}

/// The others may look at any bone of head, girdles and limbs on their own side and in the middle.
void addOwnSide(Digest& digest, const Specimen& specimen, BoneIndex bone) {
  for (const Bone& other : specimen.bones)
    if (!isAxial(other) && (other.name.side == specimen[bone].name.side || other.name.side == anatomy::Side::Midline))
      addBone(digest, other);
}

}  // namespace

std::string shapeKey(const Specimen& specimen, BoneIndex bone, std::size_t triangleBudget) {
  Digest digest;
  digest.add(static_cast<std::uint64_t>(kSculptVersion));
  digest.add(static_cast<std::uint64_t>(triangleBudget));
  for (const double number : anatomy::numbersOf(anatomy::charactersOf(specimen.plan))) digest.add(number);
  addBone(digest, specimen[bone]);
  if (isAxial(specimen[bone])) {
    for (const anatomy::BoneKind kind : anatomy::kColumnKinds)  // how far along its region a bone lies
      digest.add(static_cast<std::uint64_t>(countOf(specimen.counts, kind)));
    addJoined(digest, specimen, bone);
  } else {
    addOwnSide(digest, specimen, bone);
  }
  return digest.text();
}

}  // namespace zyga::solid
