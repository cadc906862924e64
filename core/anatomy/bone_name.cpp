#include "core/anatomy/bone_name.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace zyga::anatomy {
namespace {

/// How the id of a kind is made up: stem, then what follows it.
struct KindEntry {
  BoneKind kind;
  std::string_view stem;  ///< "metacarpal"
  Region region;
  bool numbered;   ///< the stem is followed by a number
  bool phalanges;  ///< and by ".phalanx"
  bool sided;
};

constexpr std::array kKinds{
    KindEntry{BoneKind::Skull, "skull", Region::Skull, false, false, false},
    KindEntry{BoneKind::Jaw, "jaw", Region::Skull, false, false, false},
    KindEntry{BoneKind::Cervical, "C", Region::Cervical, true, false, false},
    KindEntry{BoneKind::Dorsal, "D", Region::Dorsal, true, false, false},
    KindEntry{BoneKind::Lumbar, "L", Region::Dorsal, true, false, false},
    KindEntry{BoneKind::Sacral, "S", Region::Sacral, true, false, false},
    KindEntry{BoneKind::Caudal, "Ca", Region::Caudal, true, false, false},
    KindEntry{BoneKind::CervicalRib, "rib.C", Region::Cervical, true, false, true},
    KindEntry{BoneKind::DorsalRib, "rib.D", Region::Ribs, true, false, true},
    KindEntry{BoneKind::Chevron, "chevron.Ca", Region::Chevrons, true, false, false},
    KindEntry{BoneKind::Scapula, "scapula", Region::ShoulderGirdle, false, false, true},
    KindEntry{BoneKind::Coracoid, "coracoid", Region::ShoulderGirdle, false, false, true},
    KindEntry{BoneKind::SternalPlate, "sternal", Region::ShoulderGirdle, false, false, true},
    KindEntry{BoneKind::Humerus, "humerus", Region::Forelimb, false, false, true},
    KindEntry{BoneKind::Radius, "radius", Region::Forelimb, false, false, true},
    KindEntry{BoneKind::Ulna, "ulna", Region::Forelimb, false, false, true},
    KindEntry{BoneKind::Carpal, "carpal", Region::Manus, true, false, true},
    KindEntry{BoneKind::Metacarpal, "metacarpal", Region::Manus, true, false, true},
    KindEntry{BoneKind::ManusPhalanx, "manus", Region::Manus, true, true, true},
    KindEntry{BoneKind::Ilium, "ilium", Region::HipGirdle, false, false, true},
    KindEntry{BoneKind::Pubis, "pubis", Region::HipGirdle, false, false, true},
    KindEntry{BoneKind::Ischium, "ischium", Region::HipGirdle, false, false, true},
    KindEntry{BoneKind::Femur, "femur", Region::Hindlimb, false, false, true},
    KindEntry{BoneKind::Tibia, "tibia", Region::Hindlimb, false, false, true},
    KindEntry{BoneKind::Fibula, "fibula", Region::Hindlimb, false, false, true},
    KindEntry{BoneKind::Astragalus, "astragalus", Region::Hindlimb, false, false, true},
    KindEntry{BoneKind::Metatarsal, "metatarsal", Region::Pes, true, false, true},
    KindEntry{BoneKind::PesPhalanx, "pes", Region::Pes, true, true, true},
};

const KindEntry& entryOf(BoneKind kind) {
  for (const KindEntry& entry : kKinds) {
    if (entry.kind == kind) return entry;
  }
  return kKinds.front();
}

/// Takes a positive number off the front of the text; 0 when there is none or it starts with a zero.
int takeNumber(std::string_view& text) {
  int number = 0;
  if (text.empty() || text.front() < '1' || text.front() > '9') return 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
  if (error != std::errc{}) return 0;
  text.remove_prefix(static_cast<std::size_t>(end - text.data()));
  return number;
}

std::optional<BoneName> parseAs(const KindEntry& entry, std::string_view id) {
  if (!id.starts_with(entry.stem)) return std::nullopt;
  id.remove_prefix(entry.stem.size());
  BoneName name{entry.kind, 0, 0, Side::Midline};
  if (entry.numbered && (name.number = takeNumber(id)) == 0) return std::nullopt;
  if (entry.phalanges) {
    if (!id.starts_with('.')) return std::nullopt;
    id.remove_prefix(1);
    if ((name.phalanx = takeNumber(id)) == 0) return std::nullopt;
  }
  if (entry.sided) {
    if (id != ".L" && id != ".R") return std::nullopt;
    name.side = id == ".L" ? Side::Left : Side::Right;
    return name;
  }
  return id.empty() ? std::optional(name) : std::nullopt;
}

}  // namespace

std::string toId(const BoneName& name) {
  const KindEntry& entry = entryOf(name.kind);
  std::string id(entry.stem);
  if (entry.numbered) id += std::to_string(name.number);
  if (entry.phalanges) id += '.' + std::to_string(name.phalanx);
  if (name.side == Side::Left) id += ".L";
  if (name.side == Side::Right) id += ".R";
  return id;
}

std::optional<BoneName> parseBoneId(std::string_view id) {
  for (const KindEntry& entry : kKinds) {
    if (const auto name = parseAs(entry, id)) return name;
  }
  return std::nullopt;
}

BoneName mirrored(const BoneName& name) {
  BoneName other = name;
  if (name.side == Side::Left) other.side = Side::Right;
  if (name.side == Side::Right) other.side = Side::Left;
  return other;
}

Region regionOf(const BoneName& name) { return entryOf(name.kind).region; }

bool isVertebra(BoneKind kind) {
  return std::find(kColumnKinds.begin(), kColumnKinds.end(), kind) != kColumnKinds.end();
}

reason::Term termOf(Region region) {
  switch (region) {
    case Region::Skull:
      return {"region.head"};
    case Region::Cervical:
      return {"region.neck"};
    case Region::Dorsal:
      return {"region.trunk"};
    case Region::Sacral:
      return {"region.sacrum"};
    case Region::Caudal:
      return {"region.tail"};
    case Region::Ribs:
      return {"region.ribs"};
    case Region::Chevrons:
      return {"region.chevrons"};
    case Region::ShoulderGirdle:
      return {"region.shoulder"};
    case Region::Forelimb:
      return {"region.forelimb"};
    case Region::Manus:
      return {"region.manus"};
    case Region::HipGirdle:
      return {"region.pelvis"};
    case Region::Hindlimb:
      return {"region.hindlimb"};
    case Region::Pes:
      break;
  }
  return {"region.pes"};
}

}  // namespace zyga::anatomy
