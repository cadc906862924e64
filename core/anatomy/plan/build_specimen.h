#pragma once

#include "core/anatomy/specimen.h"
#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {

/// Turns a filled table into bones with landmarks and facets, and joints. Pure and deterministic. Throws
/// reason::Failure naming bone and measure when the table has not been filled.
Specimen buildSpecimen(const MeasurementTable& filled);

/// The animal `factor` times as large: every length, angles kept. What was found has then been scaled from another
/// specimen, and its source says by how much ("× 1.25"). Throws reason::Failure unless the factor is more than 0.
MeasurementTable scaledTable(MeasurementTable table, double factor);

// The pieces buildSpecimen is made of: each appends bones and joints to a specimen whose earlier bones are there.

/// Where the pelvis hangs on the sacrum: the bone that carries it, and how far before the middle of that bone the hips
/// lie, m, so that it is the middle of the sacrum. Throws reason::Failure when there is no such bone.
struct SacrumMiddle {
  BoneIndex bone;
  double forward = 0;
};
SacrumMiddle sacrumMiddle(const Specimen& specimen);

/// Appends a bone for the table's row. Throws reason::Failure when the row is missing.
BoneIndex addBone(Specimen& specimen, const MeasurementTable& filled, const BoneName& name);

/// The joint axes of a limb that hangs along -z: flexion + swings the distal end cranially, abduction + swings it away
/// from the mid-plane, rotation + turns its cranial face towards the mid-plane.
std::array<Eigen::Vector3d, 3> limbAxes(Side side);

/// Limits in rad, source kProgramDefault: those of limbs, girdles, head, atlas, jaw and rods of the tail are program
/// defaults, no source.
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
