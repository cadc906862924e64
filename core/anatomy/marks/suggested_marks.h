#pragma once

#include <Eigen/Geometry>
#include <span>

#include "core/anatomy/marks/scan.h"
#include "core/anatomy/tables/facet_table.h"
#include "core/anatomy/tables/landmark_table.h"
#include "core/reason/reason.h"

namespace zyga::anatomy {

/// What is suggested for one scan, in the scan's axes, m: for somebody to take or leave.
struct SuggestedMarks {
  struct Landmark {
    std::string name;  ///< as landmarks.h and scan.h have it
    Eigen::Vector3d place = Eigen::Vector3d::Zero();
    double confidence = 0;  ///< 0 to 1
  };
  struct MarkedFacet {
    ScanFacet marked;
    double area = 0;        ///< of the surface that it was found on, m^2
    double confidence = 0;  ///< 0 to 1
  };

  BoneName bone;
  std::vector<Landmark> landmarks;
  std::vector<MarkedFacet> facets;
  std::vector<reason::Reason> leftOut;  ///< what was not found, and why

  const Landmark* landmark(std::string_view name) const;
  const MarkedFacet* facet(FacetRole role) const;
};

/// Less sure suggestions are shown but not taken over by themselves. See
/// solid::Confidence for what was met.
inline constexpr double kSureEnough = 0.5;
/// No suggestion is surer than this, however well it fits: nobody has looked at it. Program default, no source.
inline constexpr double kMostSure = 0.95;

/// Puts the suggestions on the scan that are at least so sure, where nothing is marked yet and where the bone has such
/// a mark at all; they are noted in Scan::suggested. What was marked before stays.
void takeOver(Scan& scan, const Bone& sculpted, const SuggestedMarks& suggested, double leastConfidence = kSureEnough);

/// Marks from tables, over whatever there was: rows of other bones are nobody's business here. A facet whose direction
/// of sliding the table does not tell slides as the sculpted one.
void putMarks(Scan& scan, const Bone& sculpted, const LandmarkTable& landmarks, const FacetTable& facets);

/// What is marked on scans, as tables. The middle of the canal follows from its ends and is left out then. Confidences
/// are those of the suggestions, and of the table that was `given`, which still stand as they were.
LandmarkTable landmarkTableOf(std::span<const Scan> scans);
FacetTable facetTableOf(std::span<const Scan> scans, std::span<const SuggestedMarks> suggested = {},
                        const FacetTable& given = {});

/// What is wrong with tables of marks against the meshes that they are of. Bones, marks and factors are Text.
namespace marks {

/// Bone, mark, distance from the mesh; where a factor would bring all marks onto it, that as well.
inline constexpr reason::Id kBeside{"marks.beside-mesh", 3}, kBesideFits{"marks.beside-mesh-fits", 4};
/// Bone; and the factor that would spread the marks over it.
inline constexpr reason::Id kInOneSpot{"marks.in-one-spot", 1}, kInOneSpotFits{"marks.in-one-spot-fits", 2};

}  // namespace marks

/// A table whose lengths cannot be of this mesh.
struct MisfitMarks {
  std::string mark;   ///< the first that lies off
  double off = 0;     ///< m from the mesh's box; 0 when all lie together in one spot of it
  double factor = 0;  ///< a power of ten by which all would fit; 0 when none does
};

/// Marks farther from the box around the mesh (m, the scan's axes) than half its diagonal; or three and more that all
/// lie within a fiftieth of it, as those of a table in metres do that is read as millimetres.
std::optional<MisfitMarks> misfit(const Eigen::AlignedBox3d& box, const BoneName& bone, const LandmarkTable& landmarks,
                                  const FacetTable& facets);

reason::Reason reasonOf(const BoneName& bone, const MisfitMarks& misfit);

/// Two bones that were scanned and meet at a joint with facets.
struct MetAt {
  JointIndex joint;
  std::size_t cranial = 0, caudal = 0;  ///< places in the list of bones
};
/// All such pairs among some bones, in the order of the animal's joints. Bones that are not there part the row: C3 and
/// C5 do not meet.
std::vector<MetAt> jointsAmong(const Specimen& specimen, std::span<const BoneName> bones);

}  // namespace zyga::anatomy
