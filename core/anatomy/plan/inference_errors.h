#pragma once

#include "core/anatomy/measure.h"

namespace zyga::anatomy {

// Standard errors of what a rule fills in where nothing better is known; those of measured cells beside them. Program
// defaults, no source.
inline constexpr double kMeasuredShare = 0.02, kInferredShare = 0.10;  ///< of a length
inline constexpr double kMeasuredAngle = 0.017453292519943295;         ///< rad, one degree
inline constexpr double kInferredAngle = 0.026179938779914943;  ///< rad, one and a half, which adds up along a neck

/// How facets differ between animals and along a column, from open landmark sets of ostrich, alligator, Plateosaurus
/// (LucyEmmaRoberts/VertebralEvolution), an alligator (MCZ 81457), Apatosaurus (CM 3018, implied by Taylor 2014, PeerJ
/// 2:e712) and the cervicals of a dog. Standard deviations.
struct FacetSpreads {
  double height = 0;      ///< of the logarithm of height over length between long-necked animals, a share
  double separation = 0;  ///< the same of the distance from the mid-plane
  double pitch = 0;       ///< rad, of the pitch about the mean of the animal
  double tilt = 0;        ///< rad, of the tilt along one column
  double offset = 0;      ///< of the offset about none, share of the centrum's length
  // What a step of one bone along the column adds: squares add up.
  double heightStep = 0;
  double separationStep = 0;
  double pitchStep = 0;  ///< rad
  double tiltStep = 0;   ///< rad
};
/// Worked out once from the values in the source file.
const FacetSpreads& facetSpreads();

/// Standard error (m or rad, 0 where there is none) of a cell of a vertebra's facets that was filled by its rule, which
/// must not be MatesWith. `length`: of the centrum, m; `number` of the vertebra. What was carried along the column is
/// surer the nearer it was measured, and never less sure than the plan: between two bones a and b steps away the
/// variance of a step counts ab / (a + b) times. Lengths and widths of facets: kInferredShare.
double facetStandardError(Measure prezyg, const Cell& cell, double length, int number);
/// Of a cell that was filled from the facet that it meets: the error of that one, and how far facets that meet differ
/// (kInferredShare of a length, kInferredAngle, 2 % of the centrum's length for offsets: program defaults, no source).
double standardErrorOfMate(Measure measure, const Cell& source, double length);

/// Two significant digits: a standard error knows no more. 0 for what is no error.
double roundedError(double error);

}  // namespace zyga::anatomy
