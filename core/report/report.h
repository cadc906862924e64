#pragma once

#include <string>
#include <vector>

/// A report as plain values: what is said, apart from how it is set on paper or screen.
namespace zyga::report {

struct Table {
  std::string caption;
  std::vector<std::string> columns;
  std::vector<bool> words;  ///< by column: words stand left, numbers right
  std::vector<std::vector<std::string>> rows;
};

/// Figures that whoever renders the report draws; None for a section without one.
enum class Figure { None, Pose, Elevation, Envelope, RangeChart, Pressure };

struct Section {
  std::string heading;
  std::vector<std::string> sentences;
  Figure figure = Figure::None;
  std::string figureCaption;
  std::vector<Table> tables;
  std::vector<std::string> cautions;  ///< set smaller
};

/// A number that stands somewhere in the report, for machines: "stand.hip_height", 3.02, "m".
struct Number {
  std::string key;
  double value = 0;
  std::string unit;  ///< empty for counts and shares
};

struct Report {
  std::string title;     ///< the specimen
  std::string subtitle;  ///< what was looked at: pose and kind of report
  std::vector<Section> sections;
  std::vector<Number> numbers;
};

}  // namespace zyga::report
