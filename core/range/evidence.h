#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/anatomy/specimen.h"

namespace zyga::range {

/// What the verdict on a joint rests on. Best first, so that the larger one is the weaker.
///
/// A bone's facets of the joint (prezygs of the caudal, postzygs of the cranial bone) are measured where the bone is a
/// marked scan or where every cell of the table that they are built from is measured (their radius of curvature may be
/// blank: they are flat then); partly measured where some are.
/// What was measured on another bone (mirrored, scaled from another specimen) is no measurement of this one and counts
/// as inferred.
enum class EvidenceClass {
  Measured,        ///< the facets of both bones; or typed limits with a citation
  PartlyMeasured,  ///< some of them
  Inferred,        ///< none: every value was filled by a rule or borrowed
  Default          ///< typed limits that are the program's own, or nobody's
};
/// Its id in files and for machines: "measured", "partly", "inferred", "default".
std::string_view toText(EvidenceClass evidence);

/// None for a joint that nothing judges. A joint with facets and typed limits rests on the weaker of the two.
std::optional<EvidenceClass> evidenceOf(const anatomy::Specimen& specimen, anatomy::JointIndex joint);

/// How many joints rest on what.
struct EvidenceTally {
  int measured = 0, partly = 0, inferred = 0, byDefault = 0;
  int all() const { return measured + partly + inferred + byDefault; }
  void add(EvidenceClass evidence);
  bool operator==(const EvidenceTally&) const = default;
};
/// Of the joints that something judges.
EvidenceTally tallyOf(const anatomy::Specimen& specimen, const std::vector<anatomy::JointIndex>& joints);

}  // namespace zyga::range
