#include "core/anatomy/tables/landmark_table.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/anatomy/tables/csv.h"
#include "core/anatomy/tables/table_fields.h"
#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

using reason::Reason;
using reason::text;

constexpr std::array<std::string_view, 5> kLandmarkColumns{"bone", "landmark", "x", "y", "z"};

class LandmarkReader {
 public:
  explicit LandmarkReader(std::string_view file) : file_(file) {}

  LandmarkReading read(std::string_view csv) {
    for (const CsvLine& line : splitCsv(csv)) {
      if (line.comment) continue;
      if (!headed_)
        header(line);
      else
        row(line);
    }
    if (!headed_) fault(1, 0, {landmark::kNoHeader}, {landmark::kWriteHeader});
    return std::move(out_);
  }

 private:
  void fault(int line, std::size_t column, Reason cause, Reason mend) {
    out_.messages.push_back({TableMessage::Severity::Error, std::string(file_), line, static_cast<int>(column),
                             std::move(cause), std::move(mend)});
  }

  void header(const CsvLine& line) {
    headed_ = true;
    place_.fill(0);
    for (std::size_t i = 0; i < line.fields.size(); ++i) {
      const auto [title, unit] = titleAndUnit(line.fields[i]);
      const auto found = std::find(kLandmarkColumns.begin(), kLandmarkColumns.end(), title);
      if (found == kLandmarkColumns.end()) continue;  // further columns are nobody's business
      const auto column = static_cast<std::size_t>(found - kLandmarkColumns.begin());
      place_[column] = i + 1;
      if (column < 2) continue;
      unit_[column - 2] = metresIn(unit);
      if (unit_[column - 2] == 0)
        fault(line.number, i + 1, {table::kNoUnit, {text(line.fields[i])}}, {table::kWriteLengthUnit, {text(title)}});
    }
    for (std::size_t column = 0; column < kLandmarkColumns.size(); ++column)
      if (place_[column] == 0)
        fault(line.number, 0, {table::kNoColumn, {text(kLandmarkColumns[column])}}, {landmark::kWriteHeader});
  }

  const std::string& field(const CsvLine& line, std::size_t column) const {
    static const std::string kNothing;
    const std::size_t place = place_[column];
    return place == 0 || place > line.fields.size() ? kNothing : line.fields[place - 1];
  }

  void row(const CsvLine& line) {
    const std::string& id = field(line, 0);
    const std::string& name = field(line, 1);
    const auto bone = parseBoneId(id);
    if (!bone) fault(line.number, place_[0], {landmark::kUnknownBone, {text(id)}}, {landmark::kWriteBoneId});
    if (name.empty()) fault(line.number, place_[1], {landmark::kUnnamed}, {landmark::kWriteName});
    Eigen::Vector3d point = Eigen::Vector3d::Zero();
    bool good = bone && !name.empty();
    for (std::size_t i = 0; i < 3; ++i) {
      const std::string& written = field(line, 2 + i);
      double value = 0;
      if (!parseNumber(written, value)) {
        fault(line.number, place_[2 + i], {table::kNotANumber, {text(written)}}, {landmark::kWriteCoordinate});
        good = false;
      } else if (std::abs(value * unit_[i]) > kFarthestPoint) {
        fault(line.number, place_[2 + i], {landmark::kTooFar, {text(written)}}, {landmark::kCheckUnit});
        good = false;
      } else {
        point(static_cast<Eigen::Index>(i)) = value * unit_[i];
      }
    }
    if (!good) return;
    if (!out_.table.points[*bone].emplace(name, point).second)
      fault(line.number, place_[1], {landmark::kTwice, {text(id), text(name)}}, {landmark::kLeaveOneOut});
  }

  std::string_view file_;
  LandmarkReading out_;
  bool headed_ = false;
  std::array<std::size_t, kLandmarkColumns.size()> place_{};  ///< 1 for the first field; 0 when missing
  std::array<double, 3> unit_{};
};

}  // namespace

bool LandmarkReading::usable() const {
  return std::none_of(messages.begin(), messages.end(),
                      [](const TableMessage& m) { return m.severity == TableMessage::Severity::Error; });
}

LandmarkReading readLandmarkTable(std::string_view text, std::string_view fileName) {
  return LandmarkReader(fileName).read(text);
}

std::string writeLandmarkTable(const LandmarkTable& table) {
  std::string out = "bone,landmark,x (mm),y (mm),z (mm)\n";
  for (const auto& [bone, points] : table.points)
    for (const auto& [name, p] : points)
      out += toId(bone) + "," + quotedCsv(name) + "," + millimetresText(p.x()) + "," + millimetresText(p.y()) + "," +
             millimetresText(p.z()) + "\n";
  return out;
}

}  // namespace zyga::anatomy
