#pragma once

#include <QString>
#include <QStringList>

#include "core/study/claims/claim_answer.h"
#include "core/study/claims/claim_probability.h"

/// Claims and their answers, for panel, verb and report alike.
namespace zyga::ui {

/// "Minimum head height", "Neck inclination": a kind in a list.
QString claimKindName(study::ClaimKind kind);
/// What exactly is measured, one sentence.
QString claimKindMeaning(study::ClaimKind kind);
/// "at least", "at most"
QString boundWord(study::Bound bound);

/// "Minimum head height 8.50 m", "Neck inclination at least 40.0°": a claim without its source.
QString claimName(const study::Claim& claim);
/// The same with its source in brackets, where it has one.
QString claimWithSource(const study::Claim& claim);

/// "within range", "out of range", "not answered".
QString claimState(const study::ClaimAnswer& answer);

/// "C12-C13 dorsiflexion 7.1°: zygapophyseal overlap 50 % on both sides".
QString claimStopWords(const range::Scenario& scenario, const study::ClaimStop& stop);

/// An answer in sentences, each complete and with its units.
struct ClaimWords {
  QString claim;       ///< claimName
  QString verdict;     ///< "Out of range: the snout reaches 7.91 m at most, 0.59 m short."
  QStringList stops;   ///< claimStopWords, worst first, no full stop
  QStringList needs;   ///< what it would take: a sentence on overlap, one on cartilage, one on all ranges
  QStringList notes;   ///< joints near their limit, what is not assessed or not as it should be
  QString tally = {};  ///< what the joints that bend rest on; empty where there are none
  /// What stands beside the answer: with the foremost dorsals, in the postures published as habitual.
  QStringList beside = {};
};
/// `scenario` is the one that was asked.
ClaimWords claimWords(const range::Scenario& scenario, const study::Claim& claim, const study::ClaimAnswer& answer);

/// What every answer takes for granted.
QString claimBasis();
/// What speaks against each of the two readings of a habitual posture, and how the extended neck is posed.
QString habitBasis();

/// "very likely", in the words of the guideline.
QString likelihoodName(study::Likelihood likelihood);
/// "Very likely: within range in 94 % of 1000 samples.", with as many figures as the number of samples deserves.
/// Samples that gave no answer are left out of the share; probabilityNotes tells of them.
QString probabilityWords(const study::ClaimProbability& probability);
/// Samples that gave no answer; empty where all did.
QStringList probabilityNotes(const study::ClaimProbability& probability);
/// What the samples vary and what they do not, and whose words tell the likelihood.
QString probabilityBasis(const study::ClaimProbability& probability);

/// "3 measured, 8 partly measured, 1 inferred, 2 limits set by the program".
QString tallyWords(const range::EvidenceTally& tally);
/// "partly measured": what one joint rests on.
QString evidenceWords(range::EvidenceClass evidence);

}  // namespace zyga::ui
