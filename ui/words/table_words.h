#pragma once

#include <QString>

#include "core/anatomy/tables/measurement_table.h"

namespace zyga::ui {

/// "C5, length".
QString cellName(const anatomy::BoneName& bone, anatomy::Measure measure);
/// The same of the cell that a message speaks of; "C5" where it is the row, empty where no bone is known.
QString cellOf(const anatomy::TableMessage& message);
/// "neck.csv:4, column 3 (C5, length): 'abc' is not a number; write a number in mm, ...", of tables of measurements,
/// landmarks and footprints alike.
QString say(const anatomy::TableMessage& message);
/// One line a message.
QString say(const std::vector<anatomy::TableMessage>& messages);

/// A blank table with its explanation in the language chosen, for a file.
std::string blankTableText(anatomy::BodyPlan plan, const anatomy::RegionCounts& counts);

}  // namespace zyga::ui
