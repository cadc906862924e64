#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/anatomy/tables/measurement_table.h"

/// What no cell of a measurement table may hold, whether it is read from a file or typed: nearly always a slip.
namespace zyga::anatomy {

/// Why a value is refused, and what to do about it.
struct CellFault {
  reason::Reason cause, mend;
  std::optional<Measure> measure = {};  ///< the cell that is meant; none: the row
};

/// A value (m or rad) that a measure cannot have; `typed` and `unit` as they were written.
std::optional<CellFault> valueFault(Measure measure, double value, std::string_view typed, std::string_view unit);

/// Measured cells of one bone that cannot be together: shorter with condyle than without, a centrum of an impossible
/// shape, a facet on which nothing could lie.
std::vector<CellFault> rowFaults(const TableRow& row);

}  // namespace zyga::anatomy
