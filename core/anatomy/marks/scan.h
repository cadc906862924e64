#pragma once

#include <span>

#include "core/anatomy/marks/scan_guess.h"
#include "core/anatomy/specimen.h"

namespace zyga::anatomy {

/// A facet marked on a scan, in the scan's axes, m.
struct ScanFacet {
  Facet facet;
  double residual = 0;  ///< rms distance of the brushed surface from the facet's plane, m
  /// False of a facet that was mirrored from the other side while nobody has looked at the surface on this one: the
  /// residual then says nothing.
  bool measured = true;
};

/// How well the ball or ring that a landmark is the centre of goes through what was brushed or clicked, m.
struct MarkFit {
  double radius = 0;
  double residual = 0;     ///< rms distance of the places from it
  double centreError = 0;  ///< of a ball: standard error of its centre along the worst direction

  bool operator==(const MarkFit&) const = default;
};

/// A real bone that stands in the place of a sculpted one: where its mesh is kept, how it lies in the bone's frame, and
/// what was marked on it. Landmarks and facets stay as they were picked, so that nothing is lost when frame, scale or
/// straightening change.
struct Scan {
  BoneName bone;
  std::string file;                 ///< our copy of the mesh, relative to the project, in the scan's axes and metres
  std::string checksum;             ///< of that file
  ScanUnit unit = ScanUnit::Metre;  ///< what the original was taken to be in
  Evidence evidence = Evidence::Found;
  std::string source;  ///< for people: collection number, original file

  /// From the scan's axes into the bone's frame: mirrored across y = 0, if so, what X_BoneScan makes of
  /// scale * straighten * p_Scan.
  Eigen::Isometry3d X_BoneScan = Eigen::Isometry3d::Identity();
  bool placed = false;  ///< X_BoneScan follows from landmarks; otherwise it is a guess
  double scale = 1;
  bool mirror = false;
  Eigen::Matrix3d straighten = Eigen::Matrix3d::Identity();

  std::map<std::string, Eigen::Vector3d, std::less<>> landmarks;  ///< names as landmarks.h, and those of scanHelpers()
  std::vector<ScanFacet> facets;
  /// Landmarks and facets (by the words of their roles) that were taken over from a suggestion and that nobody has
  /// accepted or made anew since, with how sure the suggestion was, 0 to 1.
  std::map<std::string, double, std::less<>> suggested;
  /// Of landmarks that are centres of something that was fitted, by their names; those from tables have none.
  std::map<std::string, MarkFit, std::less<>> fits;
};

/// Landmarks that only help to place a vertebra: "canalCranial" and "canalCaudal", the ends of the neural canal's axis.
inline constexpr std::string_view kCanalCranial = "canalCranial", kCanalCaudal = "canalCaudal";

/// Greatest extent of what is known of a bone, m: what a scan's size is held against.
double extentOf(const Bone& bone);

/// The affine map from the scan's axes (m) to the bone's frame (m).
Eigen::Affine3d boneFromScan(const Scan& scan);
/// A facet under an affine map; its plane, outline and direction of sliding follow.
Facet mapped(const Facet& facet, const Eigen::Affine3d& map);
/// Landmarks and facets in the bone's frame; a mirrored scan's left is the bone's right.
std::map<std::string, Eigen::Vector3d, std::less<>> landmarksInBone(const Scan& scan);
std::vector<Facet> facetsInBone(const Scan& scan);

/// Sets X_BoneScan from the landmarks. A vertebra lies by its canal (or the line between its rims), the middle between
/// the rims, and whatever is paired or dorsal; any other bone by least squares on the landmarks it shares with the
/// sculpted bone (Umeyama 1991, IEEE Trans. PAMI 13:376); for a mirrored scan, the bone of the side it was found on.
/// False, and nothing changed, when the landmarks do not suffice.
bool placeByLandmarks(Scan& scan, const Bone& sculpted);

/// The specimen with its scanned bones in place of the sculpted ones: evidence, source, landmarks, and only the facets
/// that were marked. Joints stay; a centre of rotation that lay on a landmark follows it. Throws reason::Failure for a
/// bone the specimen does not have or that has grown into another.
Specimen withScans(Specimen sculpted, std::span<const Scan> scans);

/// What a joint between scanned bones still lacks before its bones can judge it, one reason a thing (scan::kLacks...):
/// the left postzygapophyseal facet of C5. Empty when nothing, or when both bones are sculpted.
std::vector<reason::Reason> missingInputs(const Specimen& specimen, JointIndex joint, std::span<const Scan> scans);

/// The bone of the other side from this one: evidence "mirrored", the bone it was mirrored from first in its source.
Scan mirroredScan(const Scan& scan);
/// The scan `factor` times as large, as from another specimen: evidence "scaled from another". Throws reason::Failure
/// unless the factor is more than 0.
Scan scaledScan(Scan scan, double factor);

}  // namespace zyga::anatomy
