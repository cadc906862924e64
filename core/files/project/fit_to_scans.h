#pragma once

#include "core/files/project/project.h"

/// The size of an animal and that of the real bones in it.
namespace zyga::files {

/// How many times as large as the bones of the animal around them the scans are: the median of all scans. Of a scan,
/// it is the median of the lengths that its marks measure over those of the sculpted bone; of one that is not marked,
/// its greatest extent over that of what is known of the sculpted bone. Cells of the table that a scan measures do not
/// count as the animal's. 0 without scans. `table` is filled.
double sizeOfScans(const anatomy::MeasurementTable& table, const std::vector<ProjectScan>& scans);

/// Below this difference (as a share; of angles in rad) sizes are the same: nothing is scaled, and where the table has
/// all that the scans measure, nothing changes. Program default, no source.
inline constexpr double kSameSize = 0.005;

struct FittedAnimal {
  anatomy::MeasurementTable table;  ///< filled
  std::vector<ProjectScan> scans;   ///< of the size they had, laid on the bones of the new size
};

/// The animal around scans that keep their size: what their marks measure goes into the table, every other measured
/// length and region total becomes `factor` times what it is (anatomy::scaledTable), and what was not measured is
/// inferred anew. Throws reason::Failure unless the factor is more than 0. `table` is filled; scans of bones that it
/// does not have stay as they are.
FittedAnimal fittedToScans(const anatomy::MeasurementTable& table, std::vector<ProjectScan> scans, double factor);

}  // namespace zyga::files
