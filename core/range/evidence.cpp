#include "core/range/evidence.h"

#include <algorithm>
#include <array>

#include "core/range/column_joint.h"

namespace zyga::range {
namespace {

using anatomy::Bone;
using anatomy::Evidence;
using anatomy::Measure;

/// How many cells a bone's facets are built from, and how many of them were measured on this very bone.
struct CellCount {
  int known = 0, measured = 0;
};

CellCount facetCells(const Bone& bone, bool prezygs) {
  CellCount count;
  const bool own = bone.evidence == Evidence::Found || bone.evidence == Evidence::FoundDeformed;
  if (bone.scanned) return own ? CellCount{1, 1} : CellCount{1, 0};
  for (const anatomy::FacetMates& mates : anatomy::kFacetMates) {
    if (mates.prezyg == Measure::FacetRadius) continue;  // flat where nobody measured it
    const anatomy::Cell& cell = bone.measures[prezygs ? mates.prezyg : mates.postzyg];
    if (!cell.known()) continue;
    ++count.known;
    count.measured += own && cell.measured();
  }
  return count;
}

EvidenceClass facetEvidence(const anatomy::Specimen& specimen, anatomy::JointIndex joint) {
  const CellCount caudal = facetCells(specimen[specimen.caudalBone(joint)], true);
  const CellCount cranial = facetCells(specimen[specimen.cranialBone(joint)], false);
  const auto whole = [](const CellCount& count) { return count.known > 0 && count.measured == count.known; };
  if (whole(caudal) && whole(cranial)) return EvidenceClass::Measured;
  return caudal.measured + cranial.measured > 0 ? EvidenceClass::PartlyMeasured : EvidenceClass::Inferred;
}

}  // namespace

std::string_view toText(EvidenceClass evidence) {
  static constexpr std::array<std::string_view, 4> kEvidenceIds{"measured", "partly", "inferred", "default"};
  return kEvidenceIds[static_cast<std::size_t>(evidence)];
}

std::optional<EvidenceClass> evidenceOf(const anatomy::Specimen& specimen, anatomy::JointIndex joint) {
  std::optional<EvidenceClass> evidence;
  const auto sides = facetsOf(specimen, joint);
  if (sides[0] && sides[1]) evidence = facetEvidence(specimen, joint);
  if (const auto& typed = specimen[joint].typed) {
    const bool cited = !typed->source.empty() && typed->source != anatomy::kProgramDefault;
    evidence =
        std::max(evidence.value_or(EvidenceClass::Measured), cited ? EvidenceClass::Measured : EvidenceClass::Default);
  }
  return evidence;
}

void EvidenceTally::add(EvidenceClass evidence) {
  ++(evidence == EvidenceClass::Measured         ? measured
     : evidence == EvidenceClass::PartlyMeasured ? partly
     : evidence == EvidenceClass::Inferred       ? inferred
                                                 : byDefault);
}

EvidenceTally tallyOf(const anatomy::Specimen& specimen, const std::vector<anatomy::JointIndex>& joints) {
  EvidenceTally tally;
  for (const anatomy::JointIndex joint : joints)
    if (const auto evidence = evidenceOf(specimen, joint)) tally.add(*evidence);
  return tally;
}

}  // namespace zyga::range
