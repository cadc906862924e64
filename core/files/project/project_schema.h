#pragma once

#include <array>
#include <cmath>
#include <optional>
#include <string>
#include <string_view>
#include <utility>

#include "core/anatomy/plan/plan_table.h"
#include "core/files/json/json.h"
#include "core/files/json/json_write.h"
#include "core/files/json/numeral.h"
#include "core/files/project/project.h"
#include "core/files/project/project_faults.h"

/// Words and units of the project file, shared by its reader and writer.
namespace zyga::files::schema {

inline constexpr std::string_view kName = "zygapose-project";

/// Of a pose: joints whose axial rotation was typed and stays when they are bent. Absent where there are none.
inline constexpr std::string_view kAxialTyped = "axial_typed";

// Decimal places between what core holds and what the file shows.
inline constexpr int kMillimetres = 3;  ///< m to mm
inline constexpr int kPercent = 2;      ///< share to %

/// Beside anatomy::kCountedRegions; of regions that a plan does not have the key is absent.
inline constexpr std::array<std::string_view, 5> kCountKeys{"cervical", "dorsal", "lumbar", "sacral", "caudal"};
static_assert(kCountKeys.size() == anatomy::kCountedRegions.size());

inline constexpr std::array<std::pair<std::string_view, double range::Assumptions::*>, 4> kShares{
    {{"least_overlap_percent", &range::Assumptions::minOverlap},
     {"facet_contact_tolerated_percent", &range::Assumptions::facetContactTolerated},
     {"facet_gap_tolerated_percent", &range::Assumptions::facetGapTolerated},
     {"near_margin_percent", &range::Assumptions::nearMargin}}};

inline constexpr std::array<std::pair<std::string_view, range::Cartilage range::Assumptions::*>, 3> kCartilages{
    {{"cartilage_neck", &range::Assumptions::neck},
     {"cartilage_trunk", &range::Assumptions::trunk},
     {"cartilage_tail", &range::Assumptions::tail}}};

/// Two bones' tolerated contact: of older files, and where it was typed, in mm for any bone; else % of the smaller
/// bone's mean extent. One of the two.
inline constexpr std::string_view kContactMillimetres = "contact_tolerated_mm";
inline constexpr std::string_view kContactPercent = "contact_tolerated_percent";

inline constexpr std::array<std::pair<std::string_view, range::Cartilage::In>, 2> kCartilageUnits{
    {{"% of centrum", range::Cartilage::In::PercentOfCentrum}, {"mm", range::Cartilage::In::Millimetres}}};

inline constexpr std::array<std::pair<std::string_view, range::OverlapBy>, 2> kOverlapBy{
    {{"length", range::OverlapBy::Length}, {"area", range::OverlapBy::Area}}};

inline constexpr std::array<std::pair<std::string_view, range::NeutralBy>, 2> kNeutralBy{
    {{"facets", range::NeutralBy::Facets}, {"facets and centra", range::NeutralBy::FacetsAndCentra}}};

inline constexpr std::array<std::pair<std::string_view, anatomy::HorizontalBy>, 4> kHorizontalBy{
    {{"neural canal", anatomy::HorizontalBy::CanalFloor},
     {"centrum axis", anatomy::HorizontalBy::CentrumAxis},
     {"centrum faces", anatomy::HorizontalBy::CentrumFaces},
     {"articulation", anatomy::HorizontalBy::Articulation}}};

inline constexpr std::array<std::pair<std::string_view, anatomy::CellOrigin>, 4> kOrigins{
    {{"measured", anatomy::CellOrigin::Measured},
     {"between neighbours", anatomy::CellOrigin::BetweenNeighbours},
     {"mirrored", anatomy::CellOrigin::Mirrored},
     {"by proportion", anatomy::CellOrigin::ByProportion}}};

template <class Value, std::size_t n>
std::string_view wordOf(const std::array<std::pair<std::string_view, Value>, n>& words, Value value) {
  for (const auto& [word, known] : words) {
    if (known == value) return word;
  }
  return "";
}

template <class Value, std::size_t n>
std::optional<Value> valueOf(const std::array<std::pair<std::string_view, Value>, n>& words, std::string_view text) {
  for (const auto& [word, value] : words) {
    if (word == text) return value;
  }
  return std::nullopt;
}

/// The value that the word at this place stands for.
template <class Value, std::size_t n>
Value readWord(const JsonPlace& place, const std::array<std::pair<std::string_view, Value>, n>& words) {
  if (const auto value = valueOf(words, place.string())) return *value;
  std::vector<std::string_view> known;
  for (const auto& [word, ignored] : words) known.push_back(word);
  place.fail({fault::kNotAmong, {shown(place.string()), shown(known)}});
}

/// Throws FileError for what is not finite; `what` names it: a Term, or a function that gives a reason::Value.
template <class What>
void checkFinite(double value, const What& what) {
  if (std::isfinite(value)) return;
  if constexpr (std::is_invocable_v<What>)
    throw FileError({fault::kNotFinite, {what()}});
  else
    throw FileError({fault::kNotFinite, {what}});
}

template <class What>
json::Value numeral(double value, int places, const What& what) {
  checkFinite(value, what);
  return json::Value::numeral(toNumeral(value, places));
}

template <class What>
json::Value degrees(double angle, const What& what) {
  checkFinite(angle, what);
  return json::Value::numeral(toDegrees(angle));
}

/// "length (mm)", "wedge (deg)".
inline std::string cellKey(anatomy::Measure measure) {
  return std::string(toText(measure)) + (isAngle(measure) ? " (deg)" : " (mm)");
}

}  // namespace zyga::files::schema
