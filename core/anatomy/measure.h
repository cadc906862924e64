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
  FacetHeight,       ///< centre of the prezygapophyseal facets over the centre of rotation, square to the facet's pitch
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
  Circumference,  ///< least circumference of the shaft

  // Facets, in side view. A bone's pitch is the angle between its facets and the axis of its centrum, + where their
  // cranial margin lies higher. Offset and height are the centre of the facets as seen from the centre of rotation,
  // along that pitch and square to it: at an offset of 0 the facet lies tangent to the arc on which it slides.
  FacetOffset,  ///< prezygapophyseal facets before the centre of rotation of the cranial joint, + cranially
  FacetPitch,   ///< of the prezygapophyseal facets (angle)
  FacetRadius,  ///< their radius of curvature along the slide, + with its centre on the side of the centra; 0: flat
  // The same of the postzygapophyseal facets, from the centre of rotation of the caudal joint.
  PostzygWidth,
  PostzygHeight,
  PostzygSpread,
  PostzygTilt,
  PostzygOffset,
  PostzygPitch,
  PostzygRadius
};
inline constexpr int kMeasureCount = static_cast<int>(Measure::PostzygRadius) + 1;

bool isAngle(Measure measure);
/// Offsets, radii of curvature and angles may be below zero.
bool isSigned(Measure measure);

/// What a facet measures, and what the facet that meets it measures: prezyg of the caudal and postzyg of the cranial
/// bone of a joint.
struct FacetMates {
  Measure prezyg, postzyg;
};
inline constexpr std::array<FacetMates, 8> kFacetMates{{{Measure::FacetLength, Measure::PostzygLength},
                                                        {Measure::FacetWidth, Measure::PostzygWidth},
                                                        {Measure::FacetHeight, Measure::PostzygHeight},
                                                        {Measure::FacetSpread, Measure::PostzygSpread},
                                                        {Measure::FacetTilt, Measure::PostzygTilt},
                                                        {Measure::FacetOffset, Measure::PostzygOffset},
                                                        {Measure::FacetPitch, Measure::PostzygPitch},
                                                        {Measure::FacetRadius, Measure::PostzygRadius}}};
/// The measure of the facet that meets this one; none where the measure is not a facet's.
std::optional<Measure> mateOf(Measure measure);

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
  MatesWith,      ///< from the facet that it meets, on the bone `from`
  FacetTurn,      ///< a pitch: half of the turn that the facets of the joint ask for in neutral
  OnArc,          ///< an offset: the facet lies tangent to the arc on which it slides
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
  FillRule rule = {};        ///< empty when measured
  double standardError = 0;  ///< of the value, m or rad; 0: not known

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

/// How far the pitch of the caudal bone's prezygs lies over that of the cranial bone's postzygs, rad: the turn of the
/// joint at which its facets lie on each other, where they say nothing of it themselves. Facet turn, and the faces of
/// the centra by their wedges.
double turnOfFacets(const Measures& cranial, const Measures& caudal);

}  // namespace zyga::anatomy
