#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>
#include <tuple>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/inference_errors.h"
#include "core/anatomy/plan/odd_facets.h"
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

/// Of an even number the mean of the two in the middle.
double middleOf(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  const std::size_t n = values.size();
  return n % 2 == 1 ? values[n / 2] : 0.5 * (values[n / 2 - 1] + values[n / 2]);
}

constexpr double kRadPerDegree = std::numbers::pi / 180;

/// Measures of the prezygs in which one odd value must not speak for its neighbours, and by how much they may differ.
/// Sizes count as the logarithm of their ratio to the plan, angles as the difference from it in rad, offsets as a share
/// of the centrum's length.
struct OddBounds {
  Measure measure;
  double usual;  ///< a deviation is at least this, however well the neighbours agree
  double alone;  ///< farther from the plan than this is odd where there are no neighbours
};
// Program defaults, no source; three deviations of a logarithm of 0.2 are a factor of 1.8, 1.5 is one of 4.5.
constexpr std::array<OddBounds, 8> kOddBounds{{{Measure::FacetLength, 0.2, 1.5},
                                               {Measure::FacetWidth, 0.2, 1.5},
                                               {Measure::FacetHeight, 0.2, 1.5},
                                               {Measure::FacetSpread, 0.2, 1.5},
                                               {Measure::FacetTilt, 10 * kRadPerDegree, 45 * kRadPerDegree},
                                               {Measure::FacetTurn, 5 * kRadPerDegree, 45 * kRadPerDegree},
                                               {Measure::FacetPitch, 10 * kRadPerDegree, 60 * kRadPerDegree},
                                               {Measure::FacetOffset, 0.08, 0.5}}};
constexpr double kOddDeviations = 3;
/// The standard deviation of a normal distribution over the median of the deviations from its median.
constexpr double kDeviationOverMedian = 1.4826;

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
    listMeetings();
    for (const Meeting& meeting : meetings_) prezygsFromPostzygs(meeting);
    for (const OddBounds& bounds : kOddBounds)
      if (bounds.measure != Measure::FacetPitch)
        for (auto& [key, series] : series_) findOdd(series, bounds);
    for (auto& [key, series] : series_) fillSeriesRest(series);
    for (std::size_t i = 0; i < table_.rows.size(); ++i) {
      if (!isSeries(table_.rows[i].name.kind)) fillSingle(i);
    }
    for (auto& [key, series] : series_) fillOffsets(series);
    for (auto& [key, series] : series_) fillPitches(series);
    for (const Meeting& meeting : meetings_) postzygsFromPrezygs(meeting);
    stateErrors();
    return std::move(table_);
  }

  /// After fill().
  const std::vector<OddFacet>& odd() const { return odd_; }

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
        const Cell& source = twin.measures[measure];
        cell(i, measure) = {source.value, CellOrigin::Mirrored, {FillBy::Mirrored, other}, source.standardError};
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

  /// The vertebrae of a total; loins are of the trunk.
  Series regionRows(const std::string& total) const {
    Series rows;
    for (const auto& [key, series] : series_)
      if (isVertebra(key.first) && regionOf({key.first, 1}) == regionNamed(total))
        rows.insert(rows.end(), series.begin(), series.end());
    return rows;
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

  static bool ofFacet(Measure measure) { return mateOf(measure).has_value(); }

  /// Whether a cell speaks for its neighbours: that one bone has no facet says nothing of theirs, and neither does an
  /// odd value.
  bool speaks(std::size_t i, Measure measure) const {
    const Cell& c = cell(i, measure);
    if (!c.known() || oddCells_.contains({i, measure})) return false;
    if (!ofFacet(measure)) return true;
    return !withoutFacet(i) && (isAngle(measure) || c.value != 0);
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
      if (speaks(series[k], measure) && asked > 0) known[k] = c.value / asked;
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
      if (speaks(series[k], measure)) known[k] = c.value - plan(series[k], measure);
    }
    for (std::size_t k = 0; k < series.size(); ++k) {
      Cell& c = cell(series[k], measure);
      if (c.known()) continue;
      const Guess guess =
          alongSeries(series, known, k).value_or(Guess{0, CellOrigin::ByProportion, {FillBy::PlanAngle}});
      c = {plan(series[k], measure) + guess.value, guess.origin, guess.rule};
    }
  }

  /// A joint of the column whose bones may have facets, by the rows of its bones.
  struct Meeting {
    std::size_t cranial, caudal;
  };

  void listMeetings() {
    std::optional<std::size_t> before;
    for (const BoneKind kind : kColumnKinds) {
      for (const std::size_t i : series_[{kind, Side::Midline}]) {
        const bool headJoint = kind == BoneKind::Cervical && table_.rows[i].name.number <= 2;
        const bool fused = kind == BoneKind::Sacral && table_.rows[i].name.number > 1;
        if (before && !headJoint && !fused) {
          meetings_.push_back({*before, i});
          before_[i] = *before;
        }
        before = i;
      }
    }
  }

  Cell filledFrom(double value, FillBy by, std::size_t from) const {
    return {value, CellOrigin::ByProportion, {by, table_.rows[from].name}};
  }

  /// What is blank of the prezygs follows the postzygs that were measured on the bone in front. The pitch waits for the
  /// turn of the joint.
  void prezygsFromPostzygs(const Meeting& meeting) {
    if (withoutFacet(meeting.caudal)) return;
    for (const auto& [prezyg, postzyg] : kFacetMates) {
      const Cell& source = cell(meeting.cranial, postzyg);
      if (prezyg == Measure::FacetPitch || cell(meeting.caudal, prezyg).known() || !source.measured()) continue;
      if (isAngle(prezyg) || source.value != 0)
        cell(meeting.caudal, prezyg) = filledFrom(source.value, FillBy::MatesWith, meeting.cranial);
    }
  }

  bool hasPrezygs(std::size_t i) const {
    const Cell& length = cell(i, Measure::FacetLength);
    return before_.contains(i) && !withoutFacet(i) && length.known() && length.value > 0;
  }

  /// A measure on the scale on which odd values are looked for.
  std::optional<double> scaled(std::size_t i, Measure measure) const {
    if (!speaks(i, measure)) return std::nullopt;
    const double value = cell(i, measure).value;
    if (isAngle(measure)) return measure == Measure::FacetPitch ? value : value - plan(i, measure);
    if (measure == Measure::FacetOffset) return value / cell(i, Measure::Length).value;
    const double asked = byLength(i, measure).value;
    return asked > 0 && value > 0 ? std::optional(std::log(value / asked)) : std::nullopt;
  }

  double unscaled(std::size_t i, Measure measure, double x) const {
    if (isAngle(measure)) return measure == Measure::FacetPitch ? x : x + plan(i, measure);
    if (measure == Measure::FacetOffset) return x * cell(i, Measure::Length).value;
    return std::exp(x) * byLength(i, measure).value;
  }

  /// A value more than three robust deviations from the middle of itself, the two measured bones on either side and the
  /// plan is odd.
  void findOdd(const Series& series, const OddBounds& bounds) {
    if (series.empty() || !isVertebra(table_.rows[series.front()].name.kind)) return;
    std::vector<std::pair<std::size_t, double>> known;
    for (const std::size_t i : series)
      if (const auto x = scaled(i, bounds.measure)) known.emplace_back(i, *x);
    const bool alone = known.size() == 1;
    std::vector<std::pair<std::size_t, double>> found;
    for (std::size_t k = 0; k < known.size(); ++k) {
      std::vector<double> around{0};
      for (std::size_t n = k < 2 ? 0 : k - 2; n < std::min(known.size(), k + 3); ++n) around.push_back(known[n].second);
      const double middle = alone ? 0 : middleOf(around);
      for (double& x : around) x = std::abs(x - middle);
      const double deviation = std::max(bounds.usual, kDeviationOverMedian * middleOf(std::move(around)));
      if (std::abs(known[k].second - middle) > (alone ? bounds.alone : kOddDeviations * deviation))
        found.emplace_back(known[k].first, middle);
    }
    for (const auto& [i, middle] : found) tellOdd(i, bounds.measure, unscaled(i, bounds.measure, middle));
  }

  /// The cell itself, or the one of the postzyg that it was filled from.
  void tellOdd(std::size_t i, Measure measure, double expected) {
    oddCells_.insert({i, measure});
    const Cell& c = cell(i, measure);
    if (c.measured()) odd_.push_back({table_.rows[i].name, measure, c.value, expected});
    if (c.rule.by == FillBy::MatesWith && before_.contains(i))
      odd_.push_back({table_.rows[before_.at(i)].name, *mateOf(measure), c.value, expected});
  }

  /// Offsets of the prezygs: carried along the column as a share of the centrum's length, else none.
  void fillOffsets(const Series& series) {
    std::vector<std::optional<double>> known(series.size());
    for (std::size_t k = 0; k < series.size(); ++k) {
      const double length = cell(series[k], Measure::Length).value;
      if (speaks(series[k], Measure::FacetOffset) && length > 0)
        known[k] = cell(series[k], Measure::FacetOffset).value / length;
    }
    for (std::size_t k = 0; k < series.size(); ++k) {
      Cell& c = cell(series[k], Measure::FacetOffset);
      if (c.known() || !hasPrezygs(series[k])) continue;
      const Guess guess = alongSeries(series, known, k).value_or(Guess{0, CellOrigin::ByProportion, {FillBy::OnArc}});
      c = {guess.value * cell(series[k], Measure::Length).value, guess.origin, guess.rule};
    }
  }

  double turnAt(std::size_t caudal) const {
    return turnOfFacets(table_.rows[before_.at(caudal)].measures, table_.rows[caudal].measures);
  }

  void pitchesFromPostzygs(const Series& series) {
    for (const std::size_t i : series) {
      if (!hasPrezygs(i)) continue;
      Cell& c = cell(i, Measure::FacetPitch);
      const Cell& meets = cell(before_.at(i), Measure::PostzygPitch);
      if (!c.known() && meets.measured()) c = filledFrom(meets.value + turnAt(i), FillBy::MatesWith, before_.at(i));
    }
  }

  /// Pitch of the prezygs: from a measured postzyg, along the column over half of the joint's turn, or that half.
  void fillPitches(const Series& series) {
    pitchesFromPostzygs(series);
    findOdd(series, *std::find_if(kOddBounds.begin(), kOddBounds.end(),
                                  [](const OddBounds& bounds) { return bounds.measure == Measure::FacetPitch; }));
    std::vector<std::optional<double>> known(series.size());
    for (std::size_t k = 0; k < series.size(); ++k) {
      const Cell& c = cell(series[k], Measure::FacetPitch);
      if (hasPrezygs(series[k]) && speaks(series[k], Measure::FacetPitch) && c.rule.by != FillBy::FacetTurn)
        known[k] = c.value - 0.5 * turnAt(series[k]);
    }
    for (std::size_t k = 0; k < series.size(); ++k) {
      Cell& c = cell(series[k], Measure::FacetPitch);
      if (c.known() || !hasPrezygs(series[k])) continue;
      const Guess guess =
          alongSeries(series, known, k).value_or(Guess{0, CellOrigin::ByProportion, {FillBy::FacetTurn}});
      c = {0.5 * turnAt(series[k]) + guess.value, guess.origin, guess.rule};
    }
  }

  void postzygsFromPrezygs(const Meeting& meeting) {
    if (!hasPrezygs(meeting.caudal)) return;
    for (const auto& [prezyg, postzyg] : kFacetMates) {
      const Cell& source = cell(meeting.caudal, prezyg);
      Cell& c = cell(meeting.cranial, postzyg);
      if (c.known() || !source.known()) continue;
      // Of a radius nothing is known until one is measured.
      if (prezyg == Measure::FacetRadius && source.value == 0) continue;
      const double turn = prezyg == Measure::FacetPitch ? turnAt(meeting.caudal) : 0;
      if (source.rule.by == FillBy::FacetTurn)
        c = {-0.5 * turn, CellOrigin::ByProportion, {FillBy::FacetTurn}};
      else
        c = filledFrom(source.value - turn, FillBy::MatesWith, meeting.caudal);
    }
  }

  /// Every filled cell says how far it may be off.
  void stateErrors() {
    // Those that follow their mate come last.
    for (const bool mates : {false, true}) {
      for (TableRow& row : table_.rows) {
        for (int m = 0; m < kMeasureCount; ++m) {
          const auto measure = static_cast<Measure>(m);
          Cell& c = row.measures[measure];
          const bool blank = c.known() && !c.measured() && c.standardError == 0;
          if (blank && (c.rule.by == FillBy::MatesWith) == mates)
            c.standardError = statedError(measure, errorOf(row, measure, c), c);
        }
      }
    }
  }

  /// In as many digits as it is known to, mm and degrees; of a mirrored cell the other side's to the last.
  static double statedError(Measure measure, double error, const Cell& c) {
    if (c.origin == CellOrigin::Mirrored) return error;
    return isAngle(measure) ? kRadPerDegree * roundedError(error / kRadPerDegree) : roundedError(error);
  }

  double errorOf(const TableRow& row, Measure measure, const Cell& c) const {
    const double length = row.measures.valueOr(Measure::Length, 0);
    if (c.rule.by == FillBy::MatesWith) {
      const auto source = index_.find(c.rule.from);
      return source == index_.end() ? 0 : standardErrorOfMate(measure, cell(source->second, *mateOf(measure)), length);
    }
    if (c.origin == CellOrigin::Mirrored) return isAngle(measure) ? kMeasuredAngle : kMeasuredShare * std::abs(c.value);
    if (c.rule.by == FillBy::NoFacet) return 0;
    if (isVertebra(row.name.kind) && ofFacet(measure)) {
      // The only postzyg measure that is filled by another rule than its mate's.
      const bool postzyg = measure == Measure::PostzygPitch;
      if (!postzyg && row.measures.valueOr(Measure::FacetLength, 0) == 0) return 0;  // no facet, no error
      return facetStandardError(postzyg ? Measure::FacetPitch : measure, c, length, row.name.number);
    }
    return isAngle(measure) ? kInferredAngle : kInferredShare * std::abs(c.value);
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
  std::vector<Meeting> meetings_;
  std::map<std::size_t, std::size_t> before_;  ///< by the row of a bone, that of the bone whose postzygs it meets
  std::set<std::pair<std::size_t, Measure>> oddCells_;
  std::vector<OddFacet> odd_;
  double scale_ = 1;
  FillRule scaleRule_;
};

double measuredOrFilled(const MeasurementTable& table, BoneKind kind) {
  const TableRow* row = table.find({kind, 0, 0, Side::Left});
  return row ? row->measures.valueOr(Measure::Length, 0) : 0;
}

void warnOutside(std::vector<TableMessage>& messages, reason::Id what, BoneKind bone, double ratio, double least,
                 double most) {
  using reason::Quantity;
  if (ratio >= least && ratio <= most) return;
  messages.push_back({TableMessage::Severity::Warning,
                      {},
                      0,
                      0,
                      {what, {Quantity{ratio}, Quantity{least}, Quantity{most}}},
                      {table::kCheckTwoLengths},
                      BoneName{bone, 0, 0, Side::Left},
                      Measure::Length});
}

}  // namespace

MeasurementTable fillBlanks(const MeasurementTable& measured) { return Filler(measured).fill(); }

std::vector<OddFacet> oddFacets(const MeasurementTable& measured) {
  Filler filler(measured);
  filler.fill();
  return filler.odd();
}

std::vector<TableMessage> proportionWarnings(const MeasurementTable& filled) {
  // Ranges over 40 and more sauropods: Paramo 2025 data set and Taylor's data, as listed in tests/published.
  std::vector<TableMessage> messages;
  const double femur = measuredOrFilled(filled, BoneKind::Femur);
  if (femur <= 0) return messages;
  const auto toFemur = [&](BoneKind kind) { return measuredOrFilled(filled, kind) / femur; };
  warnOutside(messages, table::kHumerusToFemur, BoneKind::Humerus, toFemur(BoneKind::Humerus), 0.57, 1.09);
  warnOutside(messages, table::kTibiaToFemur, BoneKind::Tibia, toFemur(BoneKind::Tibia), 0.52, 0.97);
  return messages;
}

MeasurementTable fillAnew(MeasurementTable filled) {
  for (TableRow& row : filled.rows)
    for (int m = 0; m < kMeasureCount; ++m)
      if (Cell& cell = row.measures[static_cast<Measure>(m)]; !cell.measured()) cell = {};
  return fillBlanks(filled);
}

}  // namespace zyga::anatomy
