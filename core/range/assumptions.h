#pragma once

#include <algorithm>
#include <array>
#include <string>

#include "core/anatomy/horizontal.h"

namespace zyga::range {

enum class OverlapBy { Length, Area };

/// What the neutral articulation asks for. Two definitions are in use: facets in greatest contact, and beside that
/// the faces of the centra parallel (Taylor, Wedel & Naish 2009, Acta Palaeontol. Pol. 54:213; Mallison 2010, Swiss J.
/// Geosci. 103:211). They agree where no centrum is wedged.
enum class NeutralBy { Facets, FacetsAndCentra };

/// Thickness of the cartilage between two centra.
struct Cartilage {
  enum class In { PercentOfCentrum, Millimetres };
  In in = In::PercentOfCentrum;
  double amount = 0;  ///< % of the caudal bone's functional length, or mm

  /// Thickness in m for a joint.
  double thickness(const anatomy::Joint& joint) const;
  bool operator==(const Cartilage&) const = default;
};

/// How deep bones may enter each other away from their joint before it counts as contact.
struct ContactTolerance {
  enum class In { PercentOfBone, Millimetres };
  In in = In::PercentOfBone;
  /// % of the mean extent of the smaller of the two bones, or mm. A bone's mean extent is the cube root of the volume
  /// of the box about its surface along its own axes, the shafts of cervical ribs that bend left out: it goes with the
  /// bone's size in every direction, so that a thin bone is granted less than a stout one of its length. The default
  /// grants the middle of a large neck about 5 mm. Program default, no source.
  double amount = 1.3;

  /// In percent no bones are granted less than their shapes can tell: each is known to about the spacing of the grid it
  /// is held on, and the errors of two add as squares, so sqrt(2) spacings; grids coarser than this (m), the finest in
  /// use for bones, count as this. Program default, no source.
  static constexpr double kFinestGrid = 0.003;

  /// In m, for a smaller bone of this mean extent (m); `resolution`: of the coarser shape, m.
  double depth(double meanExtent, double resolution = 0) const {
    if (in == In::Millimetres) return amount * 1e-3;
    constexpr double kTwoShapes = 1.4142135623730951;
    return std::max(amount * 1e-2 * meanExtent, kTwoShapes * std::min(resolution, kFinestGrid));
  }
  bool operator==(const ContactTolerance&) const = default;
};

/// What the artist takes for granted. Saved with the project and printed with every result.
struct Assumptions {
  /// Least share of the facet that must stay covered. Half of facet length is the common published rule: Stevens &
  /// Parrish 1999, Science 284:798 (quoted in full second hand: facets slid "to the point where the margin of one facet
  /// reaches roughly the midpoint of the other", on data of theirs that are not published). Cobley, Rayfield & Barrett
  /// 2013, PLoS ONE 8(8):e72187 (abstract read) tested it on ostriches: it does not convey their flexibility.
  double minOverlap = 0.5;
  OverlapBy overlapBy = OverlapBy::Length;
  NeutralBy neutralBy = NeutralBy::Facets;
  /// When a vertebra counts as horizontal: what its slope is measured by.
  anatomy::HorizontalBy horizontalBy = anatomy::kUsualHorizontal;
  Cartilage neck;   ///< skull to the first dorsal
  Cartilage trunk;  ///< dorsals to the sacrum
  Cartilage tail;
  /// Bones that turn against each other settle by up to this share of the cartilage's thickness, so that their facets
  /// fit best. The bones of living human necks shift by 3 to 5 mm while they bend (open kinematic records, derived).
  /// None by default (program default, no source): that a search for a target out of reach ends in one pose with it,
  /// from wherever it starts, has not been shown.
  double settling = 0;
  /// Facets may press into each other by this share of their length before it counts as contact: they are gently
  /// curved and carry their own cartilage. Program default, no source.
  double facetContactTolerated = 0.10;
  /// Facets may gape by this share of their length. Program default, no source.
  double facetGapTolerated = 0.25;
  /// A bone's shape is seldom known better than this.
  ContactTolerance contactTolerated;
  /// How close to a limit is "near the edge": share of the overlap, and share of a typed or tolerated range.
  /// Program default, no source.
  double nearMargin = 0.10;
  /// A joint between a marked scan and a bone whose facets are inferred is judged against the inferred ones. Off: such
  /// a joint is not assessed until both of its bones are scanned and marked.
  bool inferredNeighbours = false;

  /// Presets by percentage of centrum length, see checks in tests/published.
  Cartilage cartilageOf(anatomy::Region region) const;
  bool operator==(const Assumptions&) const = default;
};

}  // namespace zyga::range
