#include "core/anatomy/tables/cell_checks.h"

#include <cmath>
#include <numbers>

#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

constexpr double kLongestLength = 20;  // m

/// A facet may be none, a spine need not fork.
bool mayBeZero(Measure measure) {
  return measure == Measure::SpineFork || measure == Measure::FacetLength || measure == Measure::FacetWidth ||
         measure == Measure::FacetHeight || measure == Measure::FacetSpread || measure == Measure::PostzygSpread;
}

bool isMeasuredZero(const TableRow& row, Measure measure) {
  return row.measures[measure].measured() && row.measures[measure].value == 0;
}

/// Ratios that no bone has: nearly always a slip of the decimal point or a wrong unit.
void checkLengths(const TableRow& row, std::vector<CellFault>& faults) {
  const Measures& m = row.measures;
  const auto both = [&m](Measure a, Measure b) { return m[a].measured() && m[b].measured(); };
  if (both(Measure::Length, Measure::LengthWithCondyle) &&
      m[Measure::LengthWithCondyle].value < m[Measure::Length].value)
    faults.push_back({{table::kShorterWithCondyle, {reason::text(toId(row.name))}}, {table::kSwapLengths}});
  if (!isVertebra(row.name.kind) || !both(Measure::Length, Measure::CotyleHeight)) return;
  const double ratio = m[Measure::Length].value / m[Measure::CotyleHeight].value;
  const double least = row.name.number <= 1 ? 0.02 : 0.1;
  if (ratio < least || ratio > 15)
    faults.push_back({{table::kImpossibleShape, {reason::text(toId(row.name)), reason::Quantity{ratio}}},
                      {table::kCheckDecimalPoint}});
}

/// A facet of no length is none (a rod of the tail), and may be written so; one of no width or height is a slip.
void checkFacetCells(const TableRow& row, std::vector<CellFault>& faults) {
  if (isMeasuredZero(row, Measure::FacetLength)) return;
  if (isMeasuredZero(row, Measure::FacetWidth))
    faults.push_back(
        {{table::kFacetWithoutWidth, {reason::text(toId(row.name))}}, {table::kWriteFacetWidth}, Measure::FacetWidth});
  if (isMeasuredZero(row, Measure::FacetHeight) && row.measures[Measure::FacetLength].measured())
    faults.push_back({{table::kFacetWithoutHeight, {reason::text(toId(row.name))}},
                      {table::kWriteFacetHeight},
                      Measure::FacetHeight});
}

}  // namespace

std::optional<CellFault> valueFault(Measure measure, double value, std::string_view typed, std::string_view unit) {
  using reason::text;
  if (!isSigned(measure) && (value < 0 || (value == 0 && !mayBeZero(measure))))
    return CellFault{{table::kNotALength, {text(typed), text(unit)}}, {table::kWriteLength}, measure};
  if (!isAngle(measure) && std::abs(value) > kLongestLength)
    return CellFault{{table::kTooLong, {text(typed), text(unit)}}, {table::kCheckHeaderUnit}, measure};
  if (isAngle(measure) && std::abs(value) > std::numbers::pi / 2)
    return CellFault{{table::kBeyondRightAngle, {text(typed)}}, {table::kCheckAngle}, measure};
  return std::nullopt;
}

std::vector<CellFault> rowFaults(const TableRow& row) {
  std::vector<CellFault> faults;
  checkLengths(row, faults);
  checkFacetCells(row, faults);
  return faults;
}

}  // namespace zyga::anatomy
