#pragma once

#include <Eigen/Core>
#include <array>
#include <map>
#include <optional>
#include <vector>

#include "core/anatomy/characters.h"
#include "core/anatomy/tables/measurement_table.h"

/// What a body plan is made of: one table of numbers for each kind of animal, in plans/. Everything in them is invented
/// or common practice unless its file names a source; any measured cell overrides it, and it is never evidence.
namespace zyga::anatomy {

/// mm or degrees along a region, first vertebra first. Stretched over a region with another number of vertebrae.
using PlanRow = std::vector<double>;

/// A row by straight lines between (1-based position, value) knots.
PlanRow rowThrough(std::size_t count, const std::map<double, double>& knots);
/// Value of a row stretched over `count` vertebrae, at vertebra `number`.
double along(const PlanRow& row, int count, int number);

/// One region of the column. Empty rows stand for zeros.
struct RegionPlan {
  PlanRow length, height, spine, reach;  ///< of the centrum; height of the spine; across the transverse processes, mm
  PlanRow turn, fork;                    ///< dorsal turn of the living animal, degrees; depth of the spine's fork, mm
  Ends width{1, 1};                      ///< of the centrum, share of its height
  PlanRow condyle;                       ///< depth of the ball in front, share of the centrum's height
  double wedge = 0;                      ///< degrees
};

/// Facets of the neck: over the centre of rotation by a share of the length, and at least one of the height.
struct NeckFacetPlan {
  double heightOfLength = 0, leastOfHeight = 0.88, lengthOfLength = 0.17, spreadOfWidth = 0.50, spreadOfLength = 0.04;
  Ends tilt{46, 34};  ///< degrees
};

/// Facets of trunk, loins or sacrum, shares of the centrum's height. They have reached their last form after one part
/// in `settle` of the region.
struct TrunkFacetPlan {
  Ends height{0.95, 1.10}, length{0.27, 0.20}, spread{0.52, 0.24};
  Ends tilt{30, 14};  ///< degrees
  double settle = 4;
};

/// Facets of the tail: height and spread as shares of the centrum's height, length of its length. They have reached
/// their last form after one part in `…Settle` of the tail.
struct TailFacetPlan {
  Ends height{0.80, 0.68}, length{0.34, 0.20};
  double heightSettle = 3, lengthSettle = 2.2;
  double spread = 0.16;
  double tilt = 64;     ///< degrees
  double share = 0.62;  ///< of the tail whose vertebrae have zygapophyses
};

/// Ribs and chevrons.
struct RibPlan {
  PlanRow length, reach;       ///< of the ribs of the trunk, mm
  double cervicalShare = 0;    ///< length of a cervical rib over its centrum, middle of the neck
  double chevronShare = 0.66;  ///< of the tail that carries chevrons, from Ca2
  PlanRow breadth;             ///< of the ribs' shafts at their broadest, mm
};

/// The few lengths of an animal from which head, girdles, limbs and feet follow, m.
struct LimbPlan {
  double skull, skullHeight, skullWidth;
  double jawHeight;  ///< at its deepest, share of the skull's length
  double scapula, humerus, radius, ulna, metacarpal;
  double femur, tibia, fibula, metatarsal;
  double bladeTop;       ///< upper end of the shoulder blade, share of its length
  double shaftStrength;  ///< limb shafts against those of the high browser
};

/// Where things lie on a skull: along its length from the condyle (+ towards the snout), across its half width, and
/// over the condyle in skull heights.
struct SkullPlan {
  double tip = 0;  ///< how far the head is tipped down against the neck, degrees
  Eigen::Vector3d snout{0, 0, 0}, jawHinge{0, 0, 0}, eye{0, 0, 0}, nostril{0, 0, 0};
};

/// How many vertebrae a region may have.
struct CountBounds {
  int least = 0, most = 0;
};

/// One kind of animal.
struct PlanTable {
  RegionCounts counts;  ///< where a table does not say
  CountBounds cervicals, dorsals, lumbars, sacrals, caudals;
  RegionPlan neck, trunk, loins, sacrum, tail;
  NeckFacetPlan neckFacets;
  TrunkFacetPlan trunkFacets, loinFacets, sacrumFacets;
  TailFacetPlan tailFacets;
  std::optional<RibPlan> ribs;    ///< none: ribs and chevrons are no bones of this plan
  std::optional<LimbPlan> limbs;  ///< none: the column alone, without head, girdles and limbs
  SkullPlan skull;
  Characters characters;
};

const PlanTable& planTable(BodyPlan plan);

/// A region of the column: what counts its vertebrae, and where a plan says how many it may have; none where that is 0.
struct CountedRegion {
  BoneKind kind;
  int RegionCounts::*count;
  CountBounds PlanTable::*bounds;
};
/// In the order of kColumnKinds.
inline constexpr std::array kCountedRegions{
    CountedRegion{BoneKind::Cervical, &RegionCounts::cervical, &PlanTable::cervicals},
    CountedRegion{BoneKind::Dorsal, &RegionCounts::dorsal, &PlanTable::dorsals},
    CountedRegion{BoneKind::Lumbar, &RegionCounts::lumbar, &PlanTable::lumbars},
    CountedRegion{BoneKind::Sacral, &RegionCounts::sacral, &PlanTable::sacrals},
    CountedRegion{BoneKind::Caudal, &RegionCounts::caudal, &PlanTable::caudals}};

// The tables, each worked out once.
const PlanTable& highBrowserPlan();
const PlanTable& lowBrowserPlan();
const PlanTable& wideGaugePlan();
const PlanTable& mammalPlan();
const PlanTable& birdPlan();

}  // namespace zyga::anatomy
