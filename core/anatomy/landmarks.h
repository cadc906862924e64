#pragma once

/// Which landmarks the kinds of bone carry (Bone::landmarks), all in the bone's own frame: x cranial, y left, z dorsal,
/// metres. Left and right of a paired landmark end in ".L" and ".R".
///
/// Vertebrae. Origin: middle of the functional length on the axis of the centrum; the neural canal is horizontal.
///   cranial      centre of rotation of the cranial joint (condyle's centre of curvature, or centre of the rim)
///   caudal       centre of rotation of the caudal joint, where the neighbour's condyle is centred when seated
///   cranialRim   centre of the base of the condyle / of the cranial rim
///   caudalRim    centre of the cotyle's rim
///   condyleTip   foremost point of the condyle (equal to cranialRim on flat centra)
///   canal        centre of the neural canal over the middle of the centrum
///   spineTop     top of the neural spine in the mid-plane
///   diapophysis.L/R, parapophysis.L/R   where the rib's tuberculum and capitulum meet the vertebra (cervicals and
///                dorsals; on caudals and sacrals `diapophysis` is the tip of the transverse process)
///   ribTip.L/R   end of the shaft of a fused cervical rib
/// Dorsal ribs. Origin: the capitulum; landmarks `tuberculum`, `middle` (farthest out), `tip`.
/// Chevrons. Origin: middle of the articulation with the column; landmark `tip`.
/// Skull. Origin: centre of the occipital condyle; landmarks `snout`, `jawHinge`, `eye.L/R`, `foramenMagnum`.
/// Jaw. Origin: hinge axis in the mid-plane; landmark `chin`.
/// Limb bones. Origin: centre of rotation of the proximal joint; z runs up the long axis, so the distal end is at
/// negative z. Landmarks `proximal`, `distal` (centres of rotation), `shaftTop`, `shaftBottom` (ends of the shaft's
/// axis), further ones where limb_bones.cpp sets them.
namespace zyga::anatomy {}
