#pragma once

#include <QString>

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/note.h"
#include "core/anatomy/tables/measurement_table.h"

namespace zyga::ui {

// What core/anatomy holds as values, said in the language chosen. Everything in lower case but regions, which head
// lists: capital() where a sentence begins.

/// "left humerus", "cervical vertebra 7", "left finger 2, phalanx 1", "atlas".
QString boneName(const anatomy::BoneName& name);
/// With its capital letter and id: "Cervical vertebra 7 (C7)".
QString boneNameAndId(const anatomy::BoneName& name);
/// "Neck".
QString regionName(anatomy::Region region);
/// "length with condyle".
QString measureName(anatomy::Measure measure);
/// A measure's value (m or rad): "412.0 mm", "31.0°".
QString measureValue(anatomy::Measure measure, double value);
/// "preserved, deformed".
QString evidenceName(anatomy::Evidence evidence);
/// "the bone shows it".
QString noteBasisName(anatomy::NoteBasis basis);
/// "high browser".
QString planName(anatomy::BodyPlan plan);
/// "left diapophysis", "condyle"; a landmark that has no word is told by its own name.
QString markName(const anatomy::WantedMark& mark);
/// Where a cell's value comes from: "measured", or "inferred: between C4 and C7 along the column".
QString originOf(const anatomy::Cell& cell);
/// The same with the standard error where it is known: "inferred: meets C7; ± 12.0 mm".
QString originOf(anatomy::Measure measure, const anatomy::Cell& cell);

}  // namespace zyga::ui
