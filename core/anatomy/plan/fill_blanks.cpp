#include <algorithm>
#include <cmath>
#include <numbers>
#include <tuple>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/tables/measurement_table.h"
#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

/// Bones that follow each other along the column: their measures run smoothly from one to the next.
using Series = std::vector<std::size_t>;  // rows of the table, in order

bool isSeries(BoneKind kind) {
  return isVertebra(kind) || kind == BoneKind::CervicalRib || kind == BoneKind::DorsalRib || kind == BoneKind::Chevron;
}

double median(std::vector<double> values) {
  std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2), values.end());
  return values[values.size() / 2];
}

/// Works on one table. A measure is known by its ratio to the body plan's value; ratios are what is carried along the
/// column, so that a blank between two measured neighbours follows the plan's own rhythm.
class Filler {
 public:
  explicit Filler(const MeasurementTable& measured) : table_(measured) {
    table_.rows.clear();
    for (const BoneName& name : allBones(table_.plan, table_.counts)) {
      const TableRow* row = measured.find(name);
      table_.rows.push_back(row ? *row : TableRow{name, {}, Evidence::Inferred, {}});
    }
    for (std::size_t i = 0; i < table_.rows.size(); ++i) {
      index_[table_.rows[i].name] = i;
      const BoneName& name = table_.rows[i].name;
      if (isSeries(name.kind)) series_[{name.kind, name.side}].push_back(i);
    }
  }

  MeasurementTable fill() {
    mirrorMeasured();
    settleScale();
    for (auto& [key, series] : series_) fillSeriesLengths(series);
    fitTotals();
    for (auto& [key, series] : series_) fillSeriesRest(series);
    for (std::size_t i = 0; i < table_.rows.size(); ++i) {
      if (!isSeries(table_.rows[i].name.kind)) fillSingle(i);
    }
    return std::move(table_);
  }

 private:
  double plan(std::size_t i, Measure measure) const {
    return planValue(table_.plan, table_.counts, table_.rows[i].name, measure);
  }
  Cell& cell(std::size_t i, Measure measure) { return table_.rows[i].measures[measure]; }
  const Cell& cell(std::size_t i, Measure measure) const { return table_.rows[i].measures[measure]; }

  /// A left bone for its right and the other way round.
  void mirrorMeasured() {
    const std::vector<TableRow> before = table_.rows;
    for (std::size_t i = 0; i < before.size(); ++i) {
      const BoneName other = mirrored(before[i].name);
      if (other == before[i].name) continue;
      const TableRow& twin = before[index_.at(other)];
      for (const Measure measure : measuresOf(other.kind)) {
        if (cell(i, measure).known() || !twin.measures[measure].measured()) continue;
        cell(i, measure) = {twin.measures[measure].value, CellOrigin::Mirrored, {FillBy::Mirrored, other}};
        if (!before[i].measures.anyMeasured()) table_.rows[i].evidence = Evidence::Mirrored;
      }
    }
  }

  /// Ratio of a row's length to the plan's, from either way of measuring it.
  std::optional<double> lengthRatio(std::size_t i) const {
    for (const Measure measure : {Measure::Length, Measure::LengthWithCondyle}) {
      if (measure == Measure::LengthWithCondyle && !isVertebra(table_.rows[i].name.kind)) continue;
      const Cell& c = cell(i, measure);
      const double planned = plan(i, measure);
      const bool given = c.origin == CellOrigin::Measured || c.origin == CellOrigin::Mirrored;
      if (given && planned > 0) return c.value / planned;
    }
    return std::nullopt;
  }

  /// How large the animal is against the plan, from all measured lengths and region totals.
  void settleScale() {
    std::vector<double> ratios;
    for (std::size_t i = 0; i < table_.rows.size(); ++i) {
      if (const auto ratio = lengthRatio(i)) ratios.push_back(*ratio);
    }
    for (const auto& [region, total] : table_.regionTotals) {
      double planned = 0;
      for (const std::size_t i : regionRows(region)) planned += plan(i, Measure::Length);
      if (planned > 0) ratios.push_back(total / planned);
    }
    if (ratios.empty()) {
      scaleRule_ = {FillBy::PlanSize};
      return;
    }
    scale_ = median(ratios);
    scaleRule_ = {FillBy::MeasuredBones, {}, {}, static_cast<int>(ratios.size())};
  }

  static Region regionNamed(const std::string& total) {
    if (total == "neck") return Region::Cervical;
    if (total == "trunk") return Region::Dorsal;
    return total == "sacrum" ? Region::Sacral : Region::Caudal;
  }

  const Series& regionRows(const std::string& total) {
    const Region region = regionNamed(total);
    const BoneKind kind = region == Region::Cervical ? BoneKind::Cervical
                          : region == Region::Dorsal ? BoneKind::Dorsal
                          : region == Region::Sacral ? BoneKind::Sacral
                                                     : BoneKind::Caudal;
    return series_[{kind, Side::Midline}];
  }

  struct Guess {
    double value = 1;
    CellOrigin origin = CellOrigin::ByProportion;
    FillRule rule = {};
  };

  /// Carries known ratios along the series: between two of them in a straight line, past the last one unchanged.
  std::optional<Guess> alongSeries(const Series& series, const std::vector<std::optional<double>>& known,
                                   std::size_t at) const {
    std::optional<std::size_t> before, after;
    for (std::size_t k = 0; k < series.size(); ++k) {
      if (!known[k]) continue;
      if (k < at) before = k;
      if (k > at && !after) after = k;
    }
    const auto name = [&](std::size_t k) { return table_.rows[series[k]].name; };
    if (before && after) {
      const double t = static_cast<double>(at - *before) / static_cast<double>(*after - *before);
      return Guess{std::lerp(*known[*before], *known[*after], t),
                   CellOrigin::BetweenNeighbours,
                   {FillBy::Between, name(*before), name(*after)}};
    }
    if (before || after) {
      const std::size_t nearest = before ? *before : *after;
      return Guess{*known[nearest], CellOrigin::ByProportion, {FillBy::Nearest, name(nearest)}};
    }
    return std::nullopt;
  }

  void fillSeriesLengths(const Series& series) {
    std::vector<std::optional<double>> known;
    for (const std::size_t i : series) known.push_back(lengthRatio(i));
    for (std::size_t k = 0; k < series.size(); ++k) {
      const std::size_t i = series[k];
      Cell& length = cell(i, Measure::Length);
      if (length.known()) continue;
      if (known[k]) {
        const Cell& whole = cell(i, Measure::LengthWithCondyle);
        length = {whole.value * plan(i, Measure::Length) / plan(i, Measure::LengthWithCondyle),
                  CellOrigin::ByProportion,
                  {FillBy::LessCondyle}};
        continue;
      }
      const Guess guess = alongSeries(series, known, k).value_or(Guess{scale_, CellOrigin::ByProportion, scaleRule_});
      length = {guess.value * plan(i, Measure::Length), guess.origin, guess.rule};
    }
  }

  /// A measured total of a region is shared among its unmeasured vertebrae.
  void fitTotals() {
    for (const auto& [region, total] : table_.regionTotals) {
      double measured = 0, inferred = 0;
      for (const std::size_t i : regionRows(region)) {
        (cell(i, Measure::Length).measured() ? measured : inferred) += cell(i, Measure::Length).value;
      }
      if (inferred <= 0 || total <= measured) continue;
      for (const std::size_t i : regionRows(region)) {
        Cell& length = cell(i, Measure::Length);
        if (length.measured()) continue;
        length.value *= (total - measured) / inferred;
        length.rule.fittedTo = regionNamed(region);
      }
    }
  }

  void fillSeriesRest(const Series& series) {
    if (series.empty()) return;
    for (const Measure measure : measuresOf(table_.rows[series.front()].name.kind)) {
      if (measure == Measure::Length) continue;
      isAngle(measure) ? fillSeriesAngles(series, measure) : fillSeriesMeasure(series, measure);
    }
  }

  /// What the plan says of a bone of this length.
  Guess byLength(std::size_t i, Measure measure) const {
    const double planned = plan(i, Measure::Length);
    const double ratio = planned > 0 ? cell(i, Measure::Length).value / planned : scale_;
    return {ratio * plan(i, measure), CellOrigin::ByProportion, {FillBy::OwnLength}};
  }

  static bool ofFacet(Measure measure) {
    return measure == Measure::FacetLength || measure == Measure::FacetWidth || measure == Measure::FacetHeight ||
           measure == Measure::FacetSpread;
  }

  /// A facet measured as 0 long or 0 high is none at all.
  bool withoutFacet(std::size_t i) const {
    const auto nothing = [](const Cell& c) { return c.measured() && c.value == 0; };
    return nothing(cell(i, Measure::FacetLength)) || nothing(cell(i, Measure::FacetHeight));
  }

  void fillSeriesMeasure(const Series& series, Measure measure) {
    // Carried along the column as a share of what the bone's length asks for.
    std::vector<std::optional<double>> known(series.size());
    for (std::size_t k = 0; k < series.size(); ++k) {
      const Cell& c = cell(series[k], measure);
      const double asked = byLength(series[k], measure).value;
      // That one bone has no facet says nothing of the facets of its neighbours.
      if (ofFacet(measure) && c.value == 0) continue;
      if (c.known() && asked > 0) known[k] = c.value / asked;
    }
    for (std::size_t k = 0; k < series.size(); ++k) {
      Cell& c = cell(series[k], measure);
      if (c.known()) continue;
      if (measure == Measure::FacetLength && withoutFacet(series[k])) {
        c = {0, CellOrigin::ByProportion, {FillBy::NoFacet}};
        continue;
      }
      Guess guess = byLength(series[k], measure);
      if (const auto along = alongSeries(series, known, k)) {
        guess = {guess.value * along->value, along->origin, along->rule};
      }
      c = {guess.value, guess.origin, guess.rule};
      if (measure == Measure::LengthWithCondyle) c.value = std::max(c.value, cell(series[k], Measure::Length).value);
    }
  }

  void fillSeriesAngles(const Series& series, Measure measure) {
    // Angles do not scale: what is carried along is the difference from the plan.
    std::vector<std::optional<double>> known(series.size());
    for (std::size_t k = 0; k < series.size(); ++k) {
      const Cell& c = cell(series[k], measure);
      if (c.known()) known[k] = c.value - plan(series[k], measure);
    }
    for (std::size_t k = 0; k < series.size(); ++k) {
      Cell& c = cell(series[k], measure);
      if (c.known()) continue;
      const Guess guess =
          alongSeries(series, known, k).value_or(Guess{0, CellOrigin::ByProportion, {FillBy::PlanAngle}});
      c = {plan(series[k], measure) + guess.value, guess.origin, guess.rule};
    }
  }

  /// Skull, girdles and limbs: by the bone's own length, that by the nearest relatives.
  void fillSingle(std::size_t i) {
    Cell& length = cell(i, Measure::Length);
    if (!length.known()) {
      const Guess guess = limbScale(i);
      length = {guess.value * plan(i, Measure::Length), guess.origin, guess.rule};
    }
    for (const Measure measure : measuresOf(table_.rows[i].name.kind)) {
      Cell& c = cell(i, measure);
      if (c.known()) continue;
      const Guess guess = byLength(i, measure);
      c = {guess.value, guess.origin, guess.rule};
    }
  }

  static bool isHind(const BoneName& name) {
    const Region region = regionOf(name);
    return region == Region::Hindlimb || region == Region::Pes || region == Region::HipGirdle;
  }
  static bool isFore(const BoneName& name) {
    const Region region = regionOf(name);
    return region == Region::Forelimb || region == Region::Manus || region == Region::ShoulderGirdle;
  }

  /// Scale of the limb a bone belongs to, else of all limbs, else of the animal.
  Guess limbScale(std::size_t i) const {
    const BoneName& name = table_.rows[i].name;
    const auto sameLimb = [&](const BoneName& n) { return isHind(name) ? isHind(n) : isFore(name) && isFore(n); };
    const auto anyLimb = [&](const BoneName& n) { return (isHind(name) || isFore(name)) && (isHind(n) || isFore(n)); };
    if (const auto ratio = medianRatio(sameLimb)) {
      return {*ratio, CellOrigin::ByProportion, {FillBy::SameLimb}};
    }
    if (const auto ratio = medianRatio(anyLimb)) {
      return {*ratio, CellOrigin::ByProportion, {FillBy::OtherLimb}};
    }
    return {scale_, CellOrigin::ByProportion, scaleRule_};
  }

  template <typename Predicate>
  std::optional<double> medianRatio(Predicate belongs) const {
    std::vector<double> ratios;
    for (std::size_t i = 0; i < table_.rows.size(); ++i) {
      if (!belongs(table_.rows[i].name)) continue;
      const Cell& c = cell(i, Measure::Length);
      if (c.measured() && plan(i, Measure::Length) > 0) ratios.push_back(c.value / plan(i, Measure::Length));
    }
    if (ratios.empty()) return std::nullopt;
    return median(std::move(ratios));
  }

  MeasurementTable table_;
  std::map<BoneName, std::size_t> index_;
  std::map<std::pair<BoneKind, Side>, Series> series_;
  double scale_ = 1;
  FillRule scaleRule_;
};

double measuredOrFilled(const MeasurementTable& table, BoneKind kind) {
  const TableRow* row = table.find({kind, 0, 0, Side::Left});
  return row ? row->measures.valueOr(Measure::Length, 0) : 0;
}

void warnOutside(std::vector<TableMessage>& messages, reason::Id what, double ratio, double least, double most) {
  using reason::Quantity;
  if (ratio >= least && ratio <= most) return;
  messages.push_back({TableMessage::Severity::Warning,
                      {},
                      0,
                      0,
                      {what, {Quantity{ratio}, Quantity{least}, Quantity{most}}},
                      {table::kCheckTwoLengths}});
}

}  // namespace

MeasurementTable fillBlanks(const MeasurementTable& measured) { return Filler(measured).fill(); }

std::vector<TableMessage> proportionWarnings(const MeasurementTable& filled) {
  // Ranges over 40 and more sauropods: Paramo 2025 data set and Taylor's data, as listed in tests/published.
  std::vector<TableMessage> messages;
  const double femur = measuredOrFilled(filled, BoneKind::Femur);
  if (femur <= 0) return messages;
  warnOutside(messages, table::kHumerusToFemur, measuredOrFilled(filled, BoneKind::Humerus) / femur, 0.57, 1.09);
  warnOutside(messages, table::kTibiaToFemur, measuredOrFilled(filled, BoneKind::Tibia) / femur, 0.52, 0.97);
  return messages;
}

MeasurementTable fillAnew(MeasurementTable filled) {
  for (TableRow& row : filled.rows)
    for (int m = 0; m < kMeasureCount; ++m)
      if (Cell& cell = row.measures[static_cast<Measure>(m)]; !cell.measured()) cell = {};
  return fillBlanks(filled);
}

}  // namespace zyga::anatomy
