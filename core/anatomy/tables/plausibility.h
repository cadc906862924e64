#pragma once

#include <vector>

#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {

/// What speaks loudest against a cell.
enum class Misfit {
  Neighbours,  ///< the same measure on the bones beside it: along the column, or of the other digits
  OtherSide,   ///< the same measure on the bone of the other side
  SameBone,    ///< the other measures of the bone, in the proportions of the body plan
  Animal,      ///< the size of the animal, or where nothing else is measured the plan's
  Column       ///< the facets around it along the column, and the body plan (odd_facets.h)
};

/// The slip of the pen that would explain a value.
enum class Slip {
  Unclear,
  TooLarge,       ///< by a power of ten: a decimal point or a unit
  TooSmall,       ///< the same
  DigitsSwapped,  ///< two digits have changed places
  NoFacet         ///< 0 says that there is no facet, where one must have been
};

/// A measured cell that is hard to believe. It is used all the same.
struct ImplausibleCell {
  BoneName bone;
  Measure measure = Measure::Length;
  double value = 0;     ///< m or rad
  double expected = 0;  ///< m or rad
  Misfit against = Misfit::Animal;
  Slip slip = Slip::Unclear;
  int times = 0;     ///< TooLarge, TooSmall: 10, 100, 1000
  double meant = 0;  ///< DigitsSwapped: the value with its digits in the other order, m or rad
};

/// The measured cells of a table, blanks filled or not, that are hard to believe, in skeleton order and table order.
///
/// A length is compared, as the logarithm x of its ratio to the body plan, with what the rest of the table lets expect:
/// the neighbours' x, the other side's, that of the bone's other measures, and that of the bones of its part of the
/// animal. Each of the four counts by how well it holds elsewhere in this very table (the median of the deviations,
/// never less than a few percent), and proportions that a region keeps all along are the animal's own, so that an
/// animal unlike the plan is not remarked on for being itself. A cell more
/// than five standard deviations and a third off what they say together is implausible; the worst is taken out before
/// the others are looked at again, so that the bones beside a slip are not blamed for it. Facets are judged by
/// oddFacets, from lengths that are believed; a wedge that differs from the plan's and the other wedges of its region
/// by more than 15 degrees is implausible. All thresholds are program defaults, no source.
std::vector<ImplausibleCell> implausibleCells(const MeasurementTable& table);

/// What is said of it: the bone, the measure, its value and what was expected from what.
reason::Reason causeOf(const ImplausibleCell& cell);
/// What to do about it: the slip it may be.
reason::Reason mendOf(const ImplausibleCell& cell);

}  // namespace zyga::anatomy
