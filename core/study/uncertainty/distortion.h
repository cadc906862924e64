#pragma once

#include "core/anatomy/specimen.h"
#include "core/study/uncertainty/draws.h"

namespace zyga::study {

/// How far the shape of a fossil may differ from that of the living bone, beside the errors of measuring it: standard
/// deviations of a stretch along each axis of the bone (a share) and of a shear in each of its planes (rad), by class
/// of evidence. Bones that are marked "found, deformed" were pressed or sheared by an unknown amount; how much is a
/// program default, no source.
struct DistortionErrors {
  double deformedStretch = 0.05;
  double deformedShear = 0.05235987755982989;  ///< three degrees
  /// Of a scan that is not marked as deformed, instead of the errors of a table's cells: its landmarks are read off as
  /// well as a table's lengths are.
  double scannedStretch = 0.02;
  double scannedShear = 0.017453292519943295;  ///< one degree
  bool operator==(const DistortionErrors&) const = default;
};

/// The specimen with every bone that may be distorted put through a linear map of its own about its origin: facets,
/// landmarks and the joints' centres and long axes on it. Each bone errs by itself; errors beyond three deviations are
/// cut off there. Bones that are neither deformed nor scanned stay as they are.
anatomy::Specimen distorted(anatomy::Specimen specimen, const DistortionErrors& errors, const Draw& draw);

}  // namespace zyga::study
