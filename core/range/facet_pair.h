#pragma once

#include "core/range/overlap.h"

namespace zyga::range {

/// A prezyg facet and the postzyg facet that slides on it, with what does not change as they move. Refers to the
/// facets, which must outlive it.
class FacetPair {
 public:
  FacetPair(const anatomy::Facet& prezyg, const anatomy::Facet& postzyg);

  /// As range::facetOverlap, without the outlines and without allocating. `X_PrePost`: the postzyg bone's frame in the
  /// prezyg bone's frame.
  FacetMeasures measure(const Eigen::Isometry3d& X_PrePost) const;
  FacetMeeting overlap(const Eigen::Isometry3d& X_PrePost) const;

  /// Length of the shorter facet along its own direction of sliding, m.
  double shorterLength() const { return shorterLength_; }

 private:
  /// What the curvature of the facets adds to the gap between their planes, m, at a place along the slide from the
  /// prezyg's centre: each falls away from its plane by x^2 / 2R. Facets of one curvature so keep their gap as they
  /// slide by s and turn by s/R, within s^3 / 2R^2.
  double curvedBy(double x, double postzygCentre) const;

  const anatomy::Facet& prezyg_;
  const anatomy::Facet& postzyg_;
  double shorterLength_;
  double prezygLength_;
  double prezygWidth_;
  double smallerArea_;
  double prezygCurvature_, postzygCurvature_;  ///< 1/m, 0 when flat
};

}  // namespace zyga::range
