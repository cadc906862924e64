#pragma once

#include "core/anatomy/specimen.h"
#include "core/solid/sdf/shape.h"

/// One function a kind of bone, left side, in the bone's frame. Throws std::out_of_range when a landmark or measure the
/// bone needs is missing.
namespace zyga::solid {

/// Skull, jaw, girdles, limbs and feet, in the bone's frame. Right bones are asked for as their left mirror image by
/// the caller, so this sees left and midline bones only.
Shape appendicularShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone);

using anatomy::Bone;
using anatomy::Specimen;

Shape skullShape(const Bone& skull);
/// The jaw closes against the skull's teeth, so it needs the skull as well.
Shape jawShape(const Bone& jaw, const Bone& skull);

/// Shoulder blade with the coracoid grown onto it.
Shape scapulaShape(const Bone& scapula, const Bone& coracoid);
Shape sternalShape(const Bone& plate);
Shape humerusShape(const Bone& humerus);
Shape ulnaShape(const Bone& ulna);
Shape radiusShape(const Bone& radius);
Shape carpalShape(const Bone& carpal);

/// The socket is shaped for this femur; the front lobe of the blade flares outward by so many degrees.
Shape iliumShape(const Bone& ilium, const Bone& femur, double flareInDegrees);
Shape pubisShape(const Bone& pubis, const Bone& femur);
Shape ischiumShape(const Bone& ischium, const Bone& femur);
/// The face of the knee rises inward by so many degrees.
Shape femurShape(const Bone& femur, double bevelInDegrees);
Shape tibiaShape(const Bone& tibia);
Shape fibulaShape(const Bone& fibula);
Shape astragalusShape(const Bone& astragalus);

/// Ends in a knuckle where fingers follow, otherwise rounded.
Shape metacarpalShape(const Bone& metacarpal, bool fingers);
Shape metatarsalShape(const Bone& metatarsal);
/// A finger or toe bone that is no claw; the last of its digit ends in a nub.
Shape phalanxShape(const Bone& phalanx, bool last);
Shape clawShape(const Bone& claw);

}  // namespace zyga::solid
