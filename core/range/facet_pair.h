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
  const anatomy::Facet& prezyg_;
  const anatomy::Facet& postzyg_;
  double shorterLength_;
  double prezygLength_;
  double prezygWidth_;
  double smallerArea_;
};

}  // namespace zyga::range
