#pragma once

#include <string>

/// Which landmarks the kinds of bone carry (Bone::landmarks), all in the bone's own frame: x cranial, y left, z dorsal,
/// metres. Left and right of a paired landmark end in ".L" and ".R".
///
/// Vertebrae. Origin: middle of the functional length on the axis of the centrum; the neural canal is horizontal.
///   cranial      centre of rotation of the cranial joint: where its own condyle turns, where the neighbour's does when
///                seated, or centre of the rim
///   caudal       the same of the caudal joint
///   cranialRim, caudalRim   centre of the rim of the cranial and the caudal face: of a condyle its base, of a cotyle
///                its rim
///   condyleTip   point of the condyle that is farthest out: in front, or behind where x < 0 (equal to cranialRim on
///                flat centra)
///   canal        centre of the neural canal over the middle of the centrum
///   spineTop     top of the neural spine in the mid-plane
///   diapophysis.L/R, parapophysis.L/R   where the rib's tuberculum and capitulum meet the vertebra (cervicals and
///                dorsals; on caudals and sacrals `diapophysis` is the tip of the transverse process)
///   ribTip.L/R   end of the shaft of a fused cervical rib
///   yoke.L/R     on sacrals, where the rib that has grown to them meets the ilium
/// Dorsal ribs. Origin: the capitulum; landmarks `tuberculum`, `middle` (farthest out), `tip`.
/// Chevrons. Origin: middle of the articulation with the column; landmark `tip`.
/// Skull. Origin: centre of the occipital condyle, x along the skull to the snout; landmarks `snout`, `jawHinge`,
/// `eye.L/R`, `nostril.L/R`, `foramenMagnum`.
/// Jaw. Origin: hinge axis in the mid-plane, axes as the skull's with the mouth closed; landmark `chin`.
///
/// Limb bones. Origin: centre of rotation of the proximal joint; z runs up the long axis, so the distal end is at
/// negative z. Landmarks `proximal`, `distal` (centres of rotation), on long bones and girdles `top` and `bottom` (ends
/// of the greatest length on the bone's axis), on long bones `shaftTop`, `shaftBottom` (ends of the shaft's axis). The
/// origin of a bone that does not move against its neighbour is the middle of its upper end.
/// Scapula. Origin on the blade, where it glides on the ribs (its joint's centre lies inside the barrel of the ribs); z
/// up the blade; `distal` is the shoulder socket, `breast` the point of the mid-plane towards which the coracoid is
/// bent. Coracoid. Origin: the seam with the scapula. It has no mesh of its own. Sternal plate: origin in its middle, x
/// cranial, z dorsal. Ilium, pubis, ischium. Origin: the hip socket; on the ilium `front`, `back`, `crest` are ends of
/// its blade, on the other two `middle` is the point of the mid-plane beside `bottom`, where they meet their fellows.
/// Ulna. `face`: where the humerus rests, below the origin. Femur. Origin: centre of its head; the shaft (`top`,
/// `bottom`, `shaftTop`...) lies outward of it. Astragalus. Origin: its middle, about which the ankle turns. Carpals.
/// Origin on the wrist's axis; `middle` is the middle of the bone. `sole`: on metacarpals the lowest point of the
/// standing hand under that bone, the pad that is not bone included; on the third metatarsal the lowest point of the
/// standing foot, pad included, below the heel; on fingers and toes a point of their underside.
namespace zyga::anatomy {

/// "ribTip.L" for "ribTip.R" and the other way round; a name without a side stays.
inline std::string otherSide(const std::string& landmark) {
  if (landmark.ends_with(".L")) return landmark.substr(0, landmark.size() - 1) + "R";
  if (landmark.ends_with(".R")) return landmark.substr(0, landmark.size() - 1) + "L";
  return landmark;
}

}  // namespace zyga::anatomy
