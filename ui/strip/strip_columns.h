#pragma once

#include <vector>

#include "core/anatomy/specimen.h"

namespace zyga::ui {

/// A bone of the column, or the sacrum as one block, drawn along the top of the strip.
struct StripStation {
  std::vector<anatomy::BoneIndex> bones;  ///< one, or all sacrals; cranial first
  double start = 0;                       ///< along the strip, in stations
  double width = 1;

  double end() const { return start + width; }
};

/// A joint of the column, between the stations of its two bones.
struct StripColumn {
  anatomy::JointIndex joint;
  anatomy::Region region = anatomy::Region::Cervical;  ///< Cervical (with the skull), Dorsal or Caudal
  double place = 0;                                    ///< along the strip, in stations: where the two stations meet
};

/// A stretch of the strip with a name. The sacrum has no columns.
struct StripRegion {
  anatomy::Region region = anatomy::Region::Cervical;
  double start = 0, end = 0;                 ///< in stations
  std::size_t firstColumn = 0, columns = 0;  ///< into StripColumns::columns
};

/// The column from snout to tail tip, laid out in units of one bone.
struct StripColumns {
  std::vector<StripStation> stations;
  std::vector<StripColumn> columns;
  std::vector<StripRegion> regions;
  double length = 0;  ///< in stations

  std::optional<std::size_t> columnOf(anatomy::JointIndex joint) const;
};

/// Joints that cannot move (the sacrum's) give no column. Bones that the specimen lacks are passed over.
StripColumns stripColumns(const anatomy::Specimen& specimen);

}  // namespace zyga::ui
