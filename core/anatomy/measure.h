#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "core/anatomy/bone_name.h"

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

/// What tables and project files call it: "length with condyle". Not for people: ui/words has its own names.
std::string_view toText(Measure measure);
std::optional<Measure> measureFromText(std::string_view text);
/// "measure.length-with-condyle"; ui/words says it.
reason::Term termOf(Measure measure);

/// Where the value in a cell comes from.
enum class CellOrigin { Unknown, Measured, BetweenNeighbours, Mirrored, ByProportion };

/// By which rule a blank cell was filled.
enum class FillBy {
  Nothing,        ///< it was not: the cell is measured, or unknown
  Mirrored,       ///< from the bone of the other side, `from`
  Between,        ///< its neighbours along the column, `from` and `to`
  Nearest,        ///< by proportion to the nearest bone along the column, `from`
  MeasuredBones,  ///< by proportion to all measured bones, the median of so many, `count`
  PlanSize,       ///< by the body plan's own size: nothing has been measured
  LessCondyle,    ///< the length with condyle less a condyle by proportion
  OwnLength,      ///< by proportion to the bone's length
  PlanAngle,      ///< by the body plan's angle
  SameLimb,       ///< by proportion to the measured bones of the limb
  OtherLimb,      ///< by proportion to the other limb
  NoFacet,        ///< the table says that the bone has no facet
  Other           ///< as an older file words it, `words`
};

struct FillRule {
  FillBy by = FillBy::Nothing;
  BoneName from = {}, to = {};
  int count = 0;
  std::optional<Region> fittedTo = {};  ///< the region whose measured total length the value was then fitted to
  std::string words = {};

  bool empty() const { return by == FillBy::Nothing; }
  bool operator==(const FillRule&) const = default;
};

/// What project files call a rule: "between C4 C7", "measured-bones 12, fitted-to neck".
std::string toText(const FillRule& rule);
/// The reverse of toText. Sentences of older files ("between C4 and C7 along the column") become their rules; whatever
/// else a file holds is kept as FillBy::Other.
FillRule fillRuleFromText(std::string_view text);

struct Cell {
  double value = 0;  ///< m or rad
  CellOrigin origin = CellOrigin::Unknown;
  FillRule rule = {};  ///< empty when measured

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
