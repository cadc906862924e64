#include "core/study/uncertainty/measurement_error.h"

#include <algorithm>
#include <cmath>

namespace zyga::study {
namespace {

using anatomy::BoneKind;
using anatomy::BoneName;
using anatomy::Cell;
using anatomy::CellOrigin;
using anatomy::FillBy;
using anatomy::Measure;
using anatomy::MeasurementTable;
using Row = anatomy::TableRow;

// Program defaults, no source.
constexpr double kFarthest = 3;  // deviations
constexpr double kLeastShare = 0.2;

/// One number for what errs together. Streams below 2^16 are the caller's own.
std::uint64_t streamOf(const BoneName& name, Measure measure, CellOrigin origin) {
  const bool rule = origin == CellOrigin::BetweenNeighbours || origin == CellOrigin::ByProportion;
  const BoneName whose = rule                             ? BoneName{name.kind, 0, 0, anatomy::Side::Midline}
                         : origin == CellOrigin::Mirrored ? anatomy::mirrored(name)
                                                          : name;
  const Measure what = measure == Measure::LengthWithCondyle ? Measure::Length : measure;
  std::uint64_t stream = rule ? 2 : 1;
  for (const int part : {static_cast<int>(whose.kind), whose.number, whose.phalanx, static_cast<int>(whose.side),
                         static_cast<int>(what)}) {
    stream = stream * 256 + static_cast<std::uint64_t>(part);
  }
  return stream;
}

/// A standard error of one deviation, m or rad: the cell's own where it states one, as much of it as of the usual
/// errors.
double errorOf(Measure measure, const Cell& cell, const CellErrors& errors) {
  constexpr CellErrors kUsual;
  const bool given = cell.measured() || cell.origin == CellOrigin::Mirrored;
  const bool angle = isAngle(measure);
  const double error =
      angle ? (given ? errors.measuredAngle : errors.inferredAngle) : (given ? errors.measured : errors.inferred);
  const double usual =
      angle ? (given ? kUsual.measuredAngle : kUsual.inferredAngle) : (given ? kUsual.measured : kUsual.inferred);
  if (cell.standardError > 0) return cell.standardError * (error / usual);
  return angle ? error : error * std::abs(cell.value);
}

double erring(const BoneName& name, Measure measure, const Cell& cell, const CellErrors& errors, const Draw& draw) {
  const double z = std::clamp(draw.normal(streamOf(name, measure, cell.origin)), -kFarthest, kFarthest);
  const double value = cell.value + z * errorOf(measure, cell, errors);
  return isSigned(measure) ? value : std::max(kLeastShare * cell.value, value);
}

bool followsMate(const Cell& cell) { return cell.rule.by == FillBy::MatesWith; }

/// The row of a neighbour: filled tables hold the column in order.
Row* neighbour(MeasurementTable& table, std::size_t of, const BoneName& name) {
  for (const std::size_t i : {of - 1, of + 1})
    if (i < table.rows.size() && table.rows[i].name == name) return &table.rows[i];
  return table.find(name);
}

/// The bone whose postzygs meet this one's prezygs.
Row* boneInFront(MeasurementTable& table, std::size_t of) {
  const auto front = anatomy::vertebraBefore(table.counts, table.rows[of].name);
  return front ? neighbour(table, of, *front) : nullptr;
}

/// A facet turned about its own centre in side view: its place along its new pitch and square to it.
void turnFacet(Row& row, Measure offset, Measure height, double by) {
  Cell& e = row.measures[offset];
  Cell& h = row.measures[height];
  // What follows the mate follows its turn as well.
  if (!h.known() || followsMate(h) || !e.known() || followsMate(e)) return;
  const double along = e.value, across = h.value;
  e.value = std::cos(by) * along + std::sin(by) * across;
  h.value = std::cos(by) * across - std::sin(by) * along;
}

/// Facets whose pitch nobody measured may stand off the arc on which they slide: those that meet by as much, so that
/// the turn at which they lie on each other stays what the other cells say.
void pitchOffArc(MeasurementTable& other, std::size_t caudal, const CellErrors& errors, const Draw& draw) {
  Row& row = other.rows[caudal];
  Cell& prezyg = row.measures[Measure::FacetPitch];
  if (prezyg.rule.by != FillBy::FacetTurn) return;
  Row* front = boneInFront(other, caudal);
  if (!front) return;
  const double z =
      std::clamp(draw.normal(streamOf(row.name, Measure::FacetPitch, prezyg.origin)), -kFarthest, kFarthest);
  const double off = z * errorOf(Measure::FacetPitch, prezyg, errors);
  if (off == 0) return;
  const double turn = turnOfFacets(front->measures, row.measures);
  // From here on a pitch of its own, no longer half of the turn.
  prezyg.value = 0.5 * turn + off;
  prezyg.rule = {};
  turnFacet(row, Measure::FacetOffset, Measure::FacetHeight, off);
  Cell& postzyg = front->measures[Measure::PostzygPitch];
  if (postzyg.rule.by != FillBy::FacetTurn) return;
  postzyg.value = -0.5 * turn + off;
  postzyg.rule = {};
  turnFacet(*front, Measure::PostzygOffset, Measure::PostzygHeight, off);
}

}  // namespace

MeasurementTable withErrors(const MeasurementTable& filled, const CellErrors& errors, const Draw& draw) {
  MeasurementTable other = filled;
  for (Row& row : other.rows) {
    // A length with condyle goes by the length beside it, whichever of the two was measured.
    const double length = row.measures[Measure::Length].value;
    for (int i = 0; i < anatomy::kMeasureCount; ++i) {
      const auto measure = static_cast<Measure>(i);
      Cell& cell = row.measures[measure];
      if (!cell.known() || measure == Measure::LengthWithCondyle || followsMate(cell)) continue;
      if (cell.rule.by == FillBy::FacetTurn) continue;  // once the turn has erred
      cell.value = erring(row.name, measure, cell, errors, draw);
    }
    Cell& whole = row.measures[Measure::LengthWithCondyle];
    if (!whole.known()) continue;
    whole.value = row.measures[Measure::Length].known() && length > 0
                      ? whole.value * row.measures[Measure::Length].value / length
                      : erring(row.name, Measure::Length, whole, errors, draw);
  }
  for (std::size_t i = 0; i < other.rows.size(); ++i) pitchOffArc(other, i, errors, draw);
  // Facets that were inferred from one another err as one.
  for (std::size_t i = 0; i < other.rows.size(); ++i) {
    for (const auto& mates : anatomy::kFacetMates) {
      for (const Measure measure : {mates.prezyg, mates.postzyg}) {
        Cell& cell = other.rows[i].measures[measure];
        if (!followsMate(cell)) continue;
        const Row* mate = neighbour(other, i, cell.rule.from);
        if (!mate) continue;
        const Row& before = filled.rows[static_cast<std::size_t>(mate - other.rows.data())];
        const Measure its = *mateOf(measure);
        cell.value += mate->measures[its].value - before.measures[its].value;
      }
    }
  }
  return other;
}

}  // namespace zyga::study
