#pragma once

#include "core/anatomy/tables/measurement_table.h"

namespace zyga::anatomy {

/// Points on bones as a table: a header `bone,landmark,x (mm),y (mm),z (mm)`, the unit mm, cm or m, one row a point, in
/// the axes of the bone's scan. Lines that start with # are remarks.
struct LandmarkTable {
  /// m, by bone and name of the landmark.
  std::map<BoneName, std::map<std::string, Eigen::Vector3d, std::less<>>> points;
};

struct LandmarkReading {
  LandmarkTable table;
  std::vector<TableMessage> messages;
  bool usable() const;  ///< no message is an error
};

/// Reports everything that is wrong with line and column; never throws on bad text.
LandmarkReading readLandmarkTable(std::string_view text, std::string_view fileName);

/// In mm, bones and names in order, in the form readLandmarkTable takes.
std::string writeLandmarkTable(const LandmarkTable& table);

}  // namespace zyga::anatomy
