#pragma once

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/anatomy/tables/csv.h"
#include "core/anatomy/tables/measurement_table.h"

/// What tables of points and facets have in common: titles with units, numbers as they are written.
namespace zyga::anatomy {

/// A length (m) in mm, to a nanometre: more than a scan knows.
std::string millimetresText(double length);
/// Part of a unit vector, a share: to 1e-9.
std::string shareText(double share);

/// A column of a table of marks.
struct MarkColumn {
  std::string_view title;
  bool length = false;  ///< its title names a unit of length
  bool needed = false;
};

/// Reads a table of marks: finds the columns by their titles, wherever they stand and whatever stands beside them, and
/// keeps what is wrong with line and column. Lines that start with # are remarks.
class MarkTableReader {
 protected:
  enum class SecondColumn { Counts, IsAFault };
  /// `columns` must outlive this; `writeHeader` is how a header that is missing or lacks a column is mended.
  MarkTableReader(std::string_view file, std::span<const MarkColumn> columns, const reason::Id& writeHeader,
                  SecondColumn second);
  ~MarkTableReader() = default;
  /// The header, then `row` for every line behind it.
  void readLines(std::string_view csv, const std::function<void(const CsvLine&)>& row);
  void fault(int line, std::size_t place, reason::Reason cause, reason::Reason mend);
  /// What stands in a column; empty where the line or the table has none.
  const std::string& field(const CsvLine& line, std::size_t column) const;
  std::size_t placeOf(std::size_t column) const { return place_[column]; }  ///< 1 for the first field; 0 when missing
  double unitOf(std::size_t column) const { return unit_[column]; }         ///< m; 1 where the column is no length
  const std::string& unitName(std::size_t column) const { return unitName_[column]; }

  std::vector<TableMessage> messages_;

 private:
  void header(const CsvLine& line);

  std::string_view file_;
  std::span<const MarkColumn> columns_;
  reason::Id writeHeader_;
  SecondColumn second_;
  std::vector<std::size_t> place_;
  std::vector<double> unit_;
  std::vector<std::string> unitName_;
};

/// Farther from the origin than this no point of a scan lies, m.
inline constexpr double kFarthestPoint = 1000;

}  // namespace zyga::anatomy
