#pragma once

#include "core/anatomy/plan/build_specimen.h"

/// The pieces buildSpecimen is made of: each appends bones and joints to a specimen whose earlier bones are there.
namespace zyga::anatomy {

/// Appends a bone for the table's row. Throws std::invalid_argument when the row is missing.
BoneIndex addBone(Specimen& specimen, const MeasurementTable& filled, const BoneName& name);

/// The joint axes of a limb that hangs along -z: flexion + swings the distal end cranially, abduction + swings it away
/// from the mid-plane, rotation + turns its cranial face towards the mid-plane.
std::array<Eigen::Vector3d, 3> limbAxes(Side side);

/// Limits in rad, source "author's choice".
TypedLimits typedLimits(AngleLimits first, AngleLimits second, AngleLimits third);

/// Sacrum, trunk, neck, tail with fused cervical ribs: bone 0 is S1. Ribs and chevrons hang on their vertebrae.
void addColumn(Specimen& specimen, const MeasurementTable& filled);

/// Skull and jaw on the atlas.
void addHead(Specimen& specimen, const MeasurementTable& filled);

/// Shoulder girdle and forelimbs on the trunk, pelvis and hindlimbs on the sacrum.
void addLimbs(Specimen& specimen, const MeasurementTable& filled);

/// A standing animal's limb angles by joint id, rad; joints that are not named stay at zero. At zero the limbs hang
/// straight down from a level trunk, the feet at their natural slope. Common practice, no source.
std::map<std::string, Eigen::Vector3d> standingAngles(const Specimen& specimen);

}  // namespace zyga::anatomy
