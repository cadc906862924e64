#pragma once

#include <QString>

#include "core/anatomy/tables/measurement_table.h"

namespace zyga::ui {

/// "neck.csv:4, column 3: 'abc' is not a number; write a number in mm, ...", of tables of measurements, landmarks and
/// footprints alike.
QString say(const anatomy::TableMessage& message);
/// One line a message.
QString say(const std::vector<anatomy::TableMessage>& messages);

}  // namespace zyga::ui
