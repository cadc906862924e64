#pragma once

#include "core/files/project/project.h"

namespace zyga::ui {

/// The whole animal that an empty table of the high browser's plan gives: every value by proportion.
inline files::Project sampleProject() {
  anatomy::MeasurementTable table;
  table.name = "Test animal";
  return files::projectFromTable(table);
}

}  // namespace zyga::ui
