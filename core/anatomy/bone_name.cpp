#include "core/anatomy/bone_name.h"

#include <array>
#include <charconv>

namespace zyga::anatomy {
namespace {

/// How the id of a kind is made up: stem, then what follows it.
struct KindEntry {
  BoneKind kind;
  std::string_view stem;   ///< "metacarpal"
  std::string_view words;  ///< "metacarpal"
  Region region;
  bool numbered;   ///< the stem is followed by a number
  bool phalanges;  ///< and by ".phalanx"
  bool sided;
};

constexpr std::array kKinds{
    KindEntry{BoneKind::Skull, "skull", "skull", Region::Skull, false, false, false},
    KindEntry{BoneKind::Jaw, "jaw", "lower jaw", Region::Skull, false, false, false},
    KindEntry{BoneKind::Cervical, "C", "cervical vertebra", Region::Cervical, true, false, false},
    KindEntry{BoneKind::Dorsal, "D", "dorsal vertebra", Region::Dorsal, true, false, false},
    KindEntry{BoneKind::Sacral, "S", "sacral vertebra", Region::Sacral, true, false, false},
    KindEntry{BoneKind::Caudal, "Ca", "caudal vertebra", Region::Caudal, true, false, false},
    KindEntry{BoneKind::CervicalRib, "rib.C", "cervical rib", Region::Cervical, true, false, true},
    KindEntry{BoneKind::DorsalRib, "rib.D", "dorsal rib", Region::Ribs, true, false, true},
    KindEntry{BoneKind::Chevron, "chevron.Ca", "chevron", Region::Chevrons, true, false, false},
    KindEntry{BoneKind::Scapula, "scapula", "shoulder blade", Region::ShoulderGirdle, false, false, true},
    KindEntry{BoneKind::Coracoid, "coracoid", "coracoid", Region::ShoulderGirdle, false, false, true},
    KindEntry{BoneKind::SternalPlate, "sternal", "sternal plate", Region::ShoulderGirdle, false, false, true},
    KindEntry{BoneKind::Humerus, "humerus", "humerus", Region::Forelimb, false, false, true},
    KindEntry{BoneKind::Radius, "radius", "radius", Region::Forelimb, false, false, true},
    KindEntry{BoneKind::Ulna, "ulna", "ulna", Region::Forelimb, false, false, true},
    KindEntry{BoneKind::Carpal, "carpal", "carpal", Region::Manus, true, false, true},
    KindEntry{BoneKind::Metacarpal, "metacarpal", "metacarpal", Region::Manus, true, false, true},
    KindEntry{BoneKind::ManusPhalanx, "manus", "finger", Region::Manus, true, true, true},
    KindEntry{BoneKind::Ilium, "ilium", "ilium", Region::HipGirdle, false, false, true},
    KindEntry{BoneKind::Pubis, "pubis", "pubis", Region::HipGirdle, false, false, true},
    KindEntry{BoneKind::Ischium, "ischium", "ischium", Region::HipGirdle, false, false, true},
    KindEntry{BoneKind::Femur, "femur", "femur", Region::Hindlimb, false, false, true},
    KindEntry{BoneKind::Tibia, "tibia", "tibia", Region::Hindlimb, false, false, true},
    KindEntry{BoneKind::Fibula, "fibula", "fibula", Region::Hindlimb, false, false, true},
    KindEntry{BoneKind::Astragalus, "astragalus", "astragalus", Region::Hindlimb, false, false, true},
    KindEntry{BoneKind::Metatarsal, "metatarsal", "metatarsal", Region::Pes, true, false, true},
    KindEntry{BoneKind::PesPhalanx, "pes", "toe", Region::Pes, true, true, true},
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
  return kind == BoneKind::Cervical || kind == BoneKind::Dorsal || kind == BoneKind::Sacral || kind == BoneKind::Caudal;
}

std::string_view title(Region region) {
  switch (region) {
    case Region::Skull:
      return "Head";
    case Region::Cervical:
      return "Neck";
    case Region::Dorsal:
      return "Trunk";
    case Region::Sacral:
      return "Sacrum";
    case Region::Caudal:
      return "Tail";
    case Region::Ribs:
      return "Ribs";
    case Region::Chevrons:
      return "Chevrons";
    case Region::ShoulderGirdle:
      return "Shoulder";
    case Region::Forelimb:
      return "Forelimb";
    case Region::Manus:
      return "Manus";
    case Region::HipGirdle:
      return "Pelvis";
    case Region::Hindlimb:
      return "Hindlimb";
    case Region::Pes:
      return "Pes";
  }
  return "";
}

std::string title(const BoneName& name) {
  const KindEntry& entry = entryOf(name.kind);
  std::string words;
  if (name.side == Side::Left) words = "left ";
  if (name.side == Side::Right) words = "right ";
  if (name.kind == BoneKind::Cervical && name.number == 1) return "atlas";
  if (name.kind == BoneKind::Cervical && name.number == 2) return "axis";
  words += entry.words;
  if (entry.numbered) words += ' ' + std::to_string(name.number);
  if (entry.phalanges) words += ", phalanx " + std::to_string(name.phalanx);
  return words;
}

}  // namespace zyga::anatomy
