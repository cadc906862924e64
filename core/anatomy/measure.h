#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace zyga::anatomy {

/// The columns of a measurement table. Lengths are held in metres and angles in radians; tables and people see
/// millimetres and degrees.
enum class Measure {
  Length,             ///< greatest length; of a vertebra the functional length, without condyle
  LengthWithCondyle,  ///< of a centrum, condyle included
  CotyleHeight,
  CotyleWidth,
  SpineHeight,       ///< top of the neural spine over the axis of the centrum
  SpineFork,         ///< depth of the notch of a split neural spine
  DiapophysisWidth,  ///< across both transverse processes
  FacetLength,       ///< prezygapophyseal facet along its direction of sliding
  FacetWidth,        ///< prezygapophyseal facet across that direction
  FacetHeight,       ///< centre of the prezygapophyseal facets over the centre of rotation
  FacetSpread,       ///< centre of a prezygapophyseal facet from the mid-plane
  FacetTilt,         ///< of the facets from horizontal in end view (angle)
  PostzygLength,     ///< postzygapophyseal facet along its direction of sliding
  FacetTurn,         ///< dorsal turn of the neck-ward bone that the facets of the cranial joint ask for (angle)
  Wedge,             ///< cranial against caudal face of the centrum; + turns what lies cranial dorsally (angle)
  Height,
  Width,
  ProximalWidth,
  ShaftWidth,
  DistalWidth,
  Circumference  ///< least circumference of the shaft
};
inline constexpr int kMeasureCount = static_cast<int>(Measure::Circumference) + 1;

bool isAngle(Measure measure);

/// Column title without its unit: "length with condyle".
std::string_view title(Measure measure);
std::optional<Measure> measureFromTitle(std::string_view title);

/// Where the value in a cell comes from.
enum class CellOrigin { Unknown, Measured, BetweenNeighbours, Mirrored, ByProportion };

struct Cell {
  double value = 0;  ///< m or rad
  CellOrigin origin = CellOrigin::Unknown;
  std::string rule;  ///< for people: "between C4 and C7 along the column"; empty when measured

  bool known() const { return origin != CellOrigin::Unknown; }
  bool measured() const { return origin == CellOrigin::Measured; }
  bool operator==(const Cell&) const = default;
};

/// One row of a filled table.
class Measures {
 public:
  const Cell& operator[](Measure measure) const { return cells_[static_cast<std::size_t>(measure)]; }
  Cell& operator[](Measure measure) { return cells_[static_cast<std::size_t>(measure)]; }

  /// Value in m or rad, or `fallback` when unknown.
  double valueOr(Measure measure, double fallback) const;
  /// Value in m or rad. Throws std::out_of_range naming the measure when unknown.
  double value(Measure measure) const;
  bool anyMeasured() const;
  bool operator==(const Measures&) const = default;

 private:
  std::array<Cell, kMeasureCount> cells_;
};

}  // namespace zyga::anatomy
