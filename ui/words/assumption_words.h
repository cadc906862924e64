#pragma once

#include <QString>

#include "core/range/findings.h"
#include "core/range/presets.h"

namespace zyga::ui {

// What verdicts take for granted, in words, and how many of them there are of each kind.

/// "at least 50 % overlap (by length), 4.5 % cartilage": the assumptions in one line.
QString assumptionsInShort(const range::Assumptions& assumptions);
/// "assuming zygapophyseal overlap of at least 50 % (by length), near limit within 10 % of it; cartilage 4.5 % of the
/// centrum; neutral articulation: facets centred".
QString assumptionsInFull(const range::Assumptions& assumptions);
/// "4.5 %" of the centrum's length, or "12 mm".
QString cartilageWords(const range::Cartilage& cartilage);

/// "1.3 % of the smaller bone's mean extent", or "5 mm".
QString contactToleranceWords(const range::ContactTolerance& tolerance);
/// Why cervical ribs that were sculpted never stop a joint, with the source.
QString bendingRibsWords();

/// "facets centred", "facets centred, centrum faces parallel".
QString neutralName(range::NeutralBy by);
/// The definition in full, with where it is published.
QString neutralSources(range::NeutralBy by);

/// "neural canal", "long axis of the centrum": by what a vertebra counts as horizontal.
QString horizontalName(anatomy::HorizontalBy by);
/// The definition in full, with where it is published and what it takes from the bones.
QString horizontalSources(anatomy::HorizontalBy by);

/// "Turkey: 4.56 %".
QString presetWords(const range::CartilagePreset& preset);
/// "published rule".
QString presetWords(const range::OverlapPreset& preset);

/// `words` of a verdict, marked as provisional while contact is pending: "provisional: 3 out of range of 118 joints".
QString provisionally(const QString& words, bool pending);
/// Why it is.
QString provisionalReason();
/// "Contact has been judged: 2 joints more are out of range", from the assessments before and after; empty where
/// contact changes no level of a joint and no two bones collide.
QString contactArrivedWords(const range::Assessment& before, const range::Assessment& after);

/// What must be said beside every limit, and where it is published.
QString bareBoneCaution();
QString bareBoneSources();

/// "3 out of range, 2 near limit of 118 joints", "all 118 joints within range"; joints that nothing judges and contacts
/// are counted apart.
QString verdictCount(const range::Assessment& assessment);

}  // namespace zyga::ui
