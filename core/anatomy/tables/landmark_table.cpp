#include "core/anatomy/tables/landmark_table.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/anatomy/tables/csv.h"
#include "core/anatomy/tables/table_fields.h"
#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

using reason::text;

constexpr std::array<MarkColumn, 5> kLandmarkColumns{
    {{"bone", false, true}, {"landmark", false, true}, {"x", true, true}, {"y", true, true}, {"z", true, true}}};

class LandmarkReader : private MarkTableReader {
 public:
  explicit LandmarkReader(std::string_view file)
      : MarkTableReader(file, kLandmarkColumns, landmark::kWriteHeader, SecondColumn::Counts) {}

  LandmarkReading read(std::string_view csv) {
    LandmarkReading out;
    readLines(csv, [&](const CsvLine& line) { row(line, out.table); });
    out.messages = std::move(messages_);
    return out;
  }

 private:
  void row(const CsvLine& line, LandmarkTable& table) {
    const std::string& id = field(line, 0);
    const std::string& name = field(line, 1);
    const auto bone = parseBoneId(id);
    if (!bone) fault(line.number, placeOf(0), {landmark::kUnknownBone, {text(id)}}, {landmark::kWriteBoneId});
    if (name.empty()) fault(line.number, placeOf(1), {landmark::kUnnamed}, {landmark::kWriteName});
    Eigen::Vector3d point = Eigen::Vector3d::Zero();
    bool good = bone && !name.empty();
    for (std::size_t i = 0; i < 3; ++i) {
      const std::string& written = field(line, 2 + i);
      double value = 0;
      if (!parseNumber(written, value)) {
        fault(line.number, placeOf(2 + i), {table::kNotANumber, {text(written)}}, {landmark::kWriteCoordinate});
        good = false;
      } else if (std::abs(value * unitOf(2 + i)) > kFarthestPoint) {
        fault(line.number, placeOf(2 + i), {landmark::kTooFar, {text(written)}}, {landmark::kCheckUnit});
        good = false;
      } else {
        point(static_cast<Eigen::Index>(i)) = value * unitOf(2 + i);
      }
    }
    if (!good) return;
    if (!table.points[*bone].emplace(name, point).second)
      fault(line.number, placeOf(1), {landmark::kTwice, {text(id), text(name)}}, {landmark::kLeaveOneOut});
  }
};

}  // namespace

bool LandmarkReading::usable() const { return noErrorAmong(messages); }

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
