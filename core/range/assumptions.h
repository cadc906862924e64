#pragma once

#include <array>
#include <string>

#include "core/anatomy/specimen.h"

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

/// What the artist takes for granted. Saved with the project and printed with every result.
struct Assumptions {
  /// Least share of the facet that must stay covered. 50 % of facet length is the common published rule
  /// (Cobley, Rayfield & Barrett 2013, PLoS ONE 8(8):e72187).
  double leastOverlap = 0.5;
  OverlapBy overlapBy = OverlapBy::Length;
  NeutralBy neutralBy = NeutralBy::Facets;
  Cartilage neck;   ///< skull to the first dorsal
  Cartilage trunk;  ///< dorsals to the sacrum
  Cartilage tail;
  /// Facets may press into each other by this share of their length before it counts as contact: they are gently
  /// curved and carry their own cartilage. Author's choice.
  double facetContactTolerated = 0.10;
  /// Facets may gape by this share of their length. Author's choice.
  double facetGapTolerated = 0.25;
  /// Bones may enter each other by this depth (m) away from their joint before it counts as contact: a bone's shape is
  /// seldom known better. Author's choice.
  double contactTolerated = 0.005;
  /// How close to a limit is "near the edge": share of the overlap, and share of a typed or tolerated range.
  double nearMargin = 0.10;

  /// Presets by percentage of centrum length, see checks in tests/published.
  Cartilage cartilageOf(anatomy::Region region) const;
  bool operator==(const Assumptions&) const = default;
};

}  // namespace zyga::range
