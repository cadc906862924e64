#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "core/reason/reason.h"

namespace zyga::anatomy {

/// Parts of the skeleton as the bones list groups them.
enum class Region {
  Skull,
  Cervical,
  Dorsal,
  Sacral,
  Caudal,
  Ribs,
  Chevrons,
  ShoulderGirdle,
  Forelimb,
  Manus,
  HipGirdle,
  Hindlimb,
  Pes
};

enum class Side { Midline, Left, Right };

enum class BoneKind {
  Skull,
  Jaw,
  Cervical,
  Dorsal,
  Sacral,
  Caudal,
  CervicalRib,
  DorsalRib,
  Chevron,
  Scapula,
  Coracoid,
  SternalPlate,
  Humerus,
  Radius,
  Ulna,
  Carpal,
  Metacarpal,
  ManusPhalanx,
  Ilium,
  Pubis,
  Ischium,
  Femur,
  Tibia,
  Fibula,
  Astragalus,
  Metatarsal,
  PesPhalanx,
  Lumbar  ///< of mammals: vertebra of the trunk behind those that carry ribs
};

/// The vertebrae, from the head to the tail.
inline constexpr std::array kColumnKinds{BoneKind::Cervical, BoneKind::Dorsal, BoneKind::Lumbar, BoneKind::Sacral,
                                         BoneKind::Caudal};

/// What a bone is, apart from any specimen. `number` is the vertebra's number, the number of the vertebra that
/// carries a rib or chevron, or the digit; `phalanx` counts from the base of the digit, 1 first.
struct BoneName {
  BoneKind kind = BoneKind::Skull;
  int number = 0;
  int phalanx = 0;
  Side side = Side::Midline;

  auto operator<=>(const BoneName&) const = default;
};

/// Stable id, as written in tables and files: `C7`, `Ca12`, `L3`, `rib.D3.L`, `chevron.Ca4`, `humerus.R`,
/// `metacarpal3.L`, `manus1.2.L` (digit 1, second phalanx), `skull`.
std::string toId(const BoneName& name);

/// The reverse of toId; case-sensitive. Empty when the text names no bone.
std::optional<BoneName> parseBoneId(std::string_view id);

/// The same bone of the other side; a midline bone is its own mirror.
BoneName mirrored(const BoneName& name);

Region regionOf(const BoneName& name);
bool isVertebra(BoneKind kind);

/// "region.neck"; ui/words says it.
reason::Term termOf(Region region);

}  // namespace zyga::anatomy
