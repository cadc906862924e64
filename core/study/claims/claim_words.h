#pragma once

#include "core/study/claims/claim_answer.h"

namespace zyga::study {

/// An answer in sentences, each complete and with its units.
struct ClaimWords {
  std::string claim;               ///< "Head at least 8.5 m high"
  std::string verdict;             ///< "Not supported: the snout comes to 7.91 m at most, 0.59 m short."
  std::vector<std::string> stops;  ///< "C12-C13 dorsiflexion 7.1°: both facets share 50 %", worst first, no full stop
  std::vector<std::string> needs;  ///< what it would take: a sentence on overlap, one on cartilage
  std::vector<std::string> notes;  ///< joints near their edge, what is not judged or not as it should be
};
ClaimWords claimWords(const anatomy::Specimen& specimen, const range::Assumptions& assumptions, const Claim& claim,
                      const ClaimAnswer& answer);

/// What every answer takes for granted.
std::string claimBasis();

}  // namespace zyga::study
