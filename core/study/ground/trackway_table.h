#pragma once

#include <string_view>
#include <vector>

#include "core/anatomy/tables/measurement_table.h"
#include "core/study/ground/trackway.h"

namespace zyga::study {

struct TrackwayReading {
  Trackway trackway;
  std::vector<anatomy::TableMessage> messages;
  /// True when no message is an error; otherwise the trackway must not be used.
  bool usable() const;
};

/// Reads a table of footprints: UTF-8 text, comma or semicolon separated, one row a print in the order in which they
/// were made, a header line with `foot,pace_cm,next_pace_cm,stride_cm,length_cm` in any order and any of `width_cm`,
/// `gauge_cm`, `ahead_cm`; the unit may be mm, cm or m. A blank cell is unknown. Columns with other titles are left
/// out with a warning. Reports everything that is wrong, not only the first fault; never throws on bad text.
TrackwayReading readTrackwayTable(std::string_view text, std::string_view fileName);

/// Whether a table is one of footprints rather than of bones, by its titles.
bool isTrackwayTable(std::string_view text);

/// The same in cm, with all columns that hold something.
std::string writeTrackwayTable(const Trackway& trackway);

}  // namespace zyga::study
