#pragma once

#include <array>
#include <bit>

#include "core/anatomy/plan_name.h"

/// Characters in which kinds of sauropod differ beyond their sizes: what a body plan says to those who sculpt and place
/// bones, so that another animal is a table and not new code. Shares and degrees, never lengths, so that they hold at
/// any size. All members are doubles (a yes or no is 1 or 0, or how far), so that they can be taken in one go. They are
/// common practice, no source, unless they say otherwise.
namespace zyga::anatomy {

/// A value that changes in a straight line from the first vertebra of a region to the last.
struct Ends {
  double first = 0, last = 0;
};

/// Of vertebrae, ribs and chevrons.
struct ColumnCharacters {
  /// Share of the tail in which a bar of bone joins the heads of a chevron over the canal.
  double chevronsBridged = 0;
  /// Share of the tail from which on chevrons end in a skid that reaches forward and back, and where that ends.
  Ends chevronSkids{0, 0};
  /// 1: from the third dorsal on a wedge (hyposphene) under the hind facets sits in a slot (hypantrum) between the
  /// front facets of the next bone; 0: none, as in titanosaurs (Wilson 2002, Zool. J. Linn. Soc. 136:217, from memory).
  double hyposphenes = 0;
  /// Length of the hollow in the side of a dorsal centrum, share of the centrum's length.
  double dorsalHollow = 0.40;
  /// 1: the centra of the tail carry their ball behind and its socket in front (procoelous), as in titanosaurs (Wilson
  /// 2002, from memory); 0: what ball there is lies in front, as in neck and trunk.
  double procoelousTail = 0;
  /// How far the spines of the tail lean back, degrees: of the first, and of the last that is more than a ridge.
  Ends caudalLean{14, 24};
  /// Half the width to which the spines at the root of the tail swell at their tops, share of the centrum's height.
  double caudalTops = 0.11;
  /// Share of the tail whose transverse processes are tall wings, and share whose centra are hollowed at their sides.
  double caudalWings = 0.08, caudalHollows = 0;
};

/// Of skull, girdles, limbs and feet.
struct LimbCharacters {
  /// Slope of the shoulder blade against the horizontal in a standing animal, degrees. At least 55, 55 to 65 in three
  /// genera: Schwarz, Frey & Meyer 2007, Anat. Rec. 290:32.
  double bladeSlope = 60;
  /// 1: the fingers have bones of their own, five and a claw on the thumb; 0: the hand ends with the metacarpals.
  double fingerBones = 1;
  /// How far the front lobe of the ilium turns outward, degrees.
  double iliacFlare = 25;
  /// How far the upper third of the thigh bone is bent inward against its shaft, degrees (a wide stance: Wilson &
  /// Carrano 1999, Paleobiology 25:252, from memory).
  double thighBend = 0;
  /// How far the thigh stands outward, its knee faces bevelled by as much so that the shank stands upright, degrees.
  double kneeBevel = 0;
};

struct Characters {
  ColumnCharacters column;
  LimbCharacters limbs;
};

/// Of the animals of a plan.
const Characters& charactersOf(BodyPlan plan);

/// Every number of the characters: equal where they are.
inline auto numbersOf(const Characters& characters) {
  return std::bit_cast<std::array<double, sizeof(Characters) / sizeof(double)>>(characters);
}

}  // namespace zyga::anatomy
