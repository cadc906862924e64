#include "core/anatomy/tables/landmark_table.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "core/anatomy/tables/csv.h"

namespace zyga::anatomy {
namespace {

constexpr double kFarthest = 1000;  // m from the origin of a scan
constexpr std::array<std::string_view, 5> kColumns{"bone", "landmark", "x", "y", "z"};

std::string lowered(std::string text) {
  for (char& c : text)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c + 32);
  return text;
}

/// "x (mm)" -> "x" and "mm".
std::pair<std::string, std::string> titleAndUnit(const std::string& header) {
  const auto open = header.find('('), close = header.rfind(')');
  if (open == std::string::npos || close == std::string::npos || close < open) return {lowered(trimmed(header)), ""};
  return {lowered(trimmed(header.substr(0, open))), lowered(trimmed(header.substr(open + 1, close - open - 1)))};
}

double metresIn(const std::string& unit) {
  if (unit == "mm") return 1e-3;
  if (unit == "cm") return 1e-2;
  return unit == "m" ? 1 : 0;
}

class Reader {
 public:
  explicit Reader(std::string_view file) : file_(file) {}

  LandmarkReading read(std::string_view text) {
    for (const CsvLine& line : splitCsv(text)) {
      if (line.comment) continue;
      if (!headed_)
        header(line);
      else
        row(line);
    }
    if (!headed_) fault(1, 0, "there is no header", "write bone,landmark,x (mm),y (mm),z (mm) in the first line");
    return std::move(out_);
  }

 private:
  void fault(int line, std::size_t column, std::string cause, std::string mend) {
    out_.messages.push_back({TableMessage::Severity::Error, std::string(file_), line, static_cast<int>(column),
                             std::move(cause), std::move(mend)});
  }

  void header(const CsvLine& line) {
    headed_ = true;
    place_.fill(0);
    for (std::size_t i = 0; i < line.fields.size(); ++i) {
      const auto [title, unit] = titleAndUnit(line.fields[i]);
      const auto found = std::find(kColumns.begin(), kColumns.end(), title);
      if (found == kColumns.end()) continue;  // further columns are nobody's business
      const auto column = static_cast<std::size_t>(found - kColumns.begin());
      place_[column] = i + 1;
      if (column < 2) continue;
      unit_[column - 2] = metresIn(unit);
      if (unit_[column - 2] == 0)
        fault(line.number, i + 1, "'" + line.fields[i] + "' has no unit", "write " + title + " (mm), (cm) or (m)");
    }
    for (std::size_t column = 0; column < kColumns.size(); ++column)
      if (place_[column] == 0)
        fault(line.number, 0, "there is no column '" + std::string(kColumns[column]) + "'",
              "write bone,landmark,x (mm),y (mm),z (mm) in the first line");
  }

  const std::string& field(const CsvLine& line, std::size_t column) const {
    static const std::string kNothing;
    const std::size_t place = place_[column];
    return place == 0 || place > line.fields.size() ? kNothing : line.fields[place - 1];
  }

  void row(const CsvLine& line) {
    const std::string& id = field(line, 0);
    const std::string& landmark = field(line, 1);
    const auto bone = parseBoneId(id);
    if (!bone) fault(line.number, place_[0], "there is no bone '" + id + "'", "write an id such as C5 or femur.L");
    if (landmark.empty()) fault(line.number, place_[1], "the landmark has no name", "write one, such as cranialRim");
    Eigen::Vector3d point = Eigen::Vector3d::Zero();
    bool good = bone && !landmark.empty();
    for (std::size_t i = 0; i < 3; ++i) {
      const std::string& written = field(line, 2 + i);
      double value = 0;
      if (!parseNumber(written, value)) {
        fault(line.number, place_[2 + i], "'" + written + "' is not a number", "write a coordinate");
        good = false;
      } else if (std::abs(value * unit_[i]) > kFarthest) {
        fault(line.number, place_[2 + i], "'" + written + "' is more than a kilometre away", "check the unit");
        good = false;
      } else {
        point(static_cast<Eigen::Index>(i)) = value * unit_[i];
      }
    }
    if (!good) return;
    if (!out_.table.points[*bone].emplace(landmark, point).second)
      fault(line.number, place_[1], id + " has '" + landmark + "' twice", "leave one of them out");
  }

  std::string_view file_;
  LandmarkReading out_;
  bool headed_ = false;
  std::array<std::size_t, kColumns.size()> place_{};  ///< 1 for the first field; 0 when missing
  std::array<double, 3> unit_{};
};

/// Millimetres to a nanometre: more than a scan knows.
std::string millimetres(double value) {
  std::array<char, 64> text{};
  const double mm = std::round(value * 1e9) / 1e6;
  return {text.data(), std::to_chars(text.data(), text.data() + text.size(), mm == 0 ? 0.0 : mm).ptr};
}

}  // namespace

bool LandmarkReading::usable() const {
  return std::none_of(messages.begin(), messages.end(),
                      [](const TableMessage& m) { return m.severity == TableMessage::Severity::Error; });
}

LandmarkReading readLandmarkTable(std::string_view text, std::string_view fileName) {
  return Reader(fileName).read(text);
}

std::string writeLandmarkTable(const LandmarkTable& table) {
  std::string out = "bone,landmark,x (mm),y (mm),z (mm)\n";
  for (const auto& [bone, points] : table.points)
    for (const auto& [name, p] : points)
      out += toId(bone) + "," + quotedCsv(name) + "," + millimetres(p.x()) + "," + millimetres(p.y()) + "," +
             millimetres(p.z()) + "\n";
  return out;
}

}  // namespace zyga::anatomy
