#include "core/anatomy/tables/plausibility.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <optional>
#include <set>
#include <string>
#include <tuple>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/odd_facets.h"
#include "core/anatomy/tables/table_reasons.h"

namespace zyga::anatomy {
namespace {

// Program defaults, no source. Logarithms of ratios: 0.1 is about 10 %.
constexpr double kImplausibleDeviations = 5;
constexpr double kLeastDeviation = 0.3;     ///< a third, below which nothing is remarked on
constexpr double kLeastTogether = 0.07;     ///< standard deviation of all voices together
constexpr double kSameSides = 0.12;         ///< between left and right of one animal
constexpr double kAlone = 0.5;              ///< of an animal's size against the plan's
constexpr std::size_t kEnough = 5;          ///< residuals from which a spread can be taken
constexpr double kMostOwnProportion = 0.6;  ///< that an animal may have all along a region
constexpr int kMostRounds = 60;             ///< cells that are taken out one by one; a table with more is no table
constexpr double kSlipWithin = 0.4;         ///< of a power of ten, as a logarithm
constexpr double kSwapWithin = 0.12;        ///< of what was expected, as a logarithm
constexpr double kOddWedge = 15 * std::numbers::pi / 180;

/// How far a voice is off as a rule: the least and the most that is believed of it, and what is taken where too few
/// residuals tell.
struct VoiceSpread {
  double least, most, usual;
};
constexpr VoiceSpread kByNeighbours{0.07, 0.3, 0.25};
constexpr VoiceSpread kByBone{0.13, 0.45, 0.4};
constexpr VoiceSpread kByAnimal{0.15, 0.6, 0.5};

double middleValue(std::vector<double> values) {
  const std::size_t n = values.size();
  std::sort(values.begin(), values.end());
  return n % 2 == 1 ? values[n / 2] : 0.5 * (values[n / 2 - 1] + values[n / 2]);
}

/// Standard deviation from the median of the residuals' sizes, where there are enough of them.
double spreadOf(std::vector<double> residuals, const VoiceSpread& spread) {
  if (residuals.size() < kEnough) return spread.usual;
  for (double& r : residuals) r = std::abs(r);
  constexpr double kDeviationPerMedian = 1.4826;  // of a normal distribution
  return std::clamp(kDeviationPerMedian * middleValue(std::move(residuals)), spread.least, spread.most);
}

/// Parts of the animal whose bones tell each other's size.
int partOf(const BoneName& name) {
  switch (regionOf(name)) {
    case Region::ShoulderGirdle:
    case Region::Forelimb:
    case Region::Manus:
      return 100;
    case Region::HipGirdle:
    case Region::Hindlimb:
    case Region::Pes:
      return 101;
    default:
      return static_cast<int>(regionOf(name));
  }
}

/// Sizes alone: positive, in proportion to the animal, and none of a facet, of which oddFacets knows more.
bool comparable(Measure measure) { return !isSigned(measure) && !mateOf(measure); }

struct SizeCell {
  BoneName bone;
  Measure measure;
  double value = 0, planned = 0, x = 0;
  bool out = false;  ///< implausible: no voice any more
};

/// What one of the four lets expect.
struct Voice {
  Misfit who;
  double x = 0, spread = 1;
};

struct Verdict {
  double score = 0, expected = 0;
  Misfit against = Misfit::Animal;
};

/// The sizes of a table, each against the others.
class SizeComparison {
 public:
  explicit SizeComparison(const MeasurementTable& table) {
    for (const TableRow& row : table.rows) {
      for (int m = 0; m < kMeasureCount; ++m) {
        const auto measure = static_cast<Measure>(m);
        const Cell& cell = row.measures[measure];
        if (!cell.measured() || !comparable(measure) || !(cell.value > 0)) continue;
        const double planned = planValue(table.plan, table.counts, row.name, measure);
        if (planned > 0) cells_.push_back({row.name, measure, cell.value, planned, std::log(cell.value / planned)});
      }
    }
    for (std::size_t i = 0; i < cells_.size(); ++i) {
      const SizeCell& cell = cells_[i];
      ofBone_[cell.bone].push_back(i);
      series_[{cell.bone.kind, cell.measure}].push_back(i);
    }
    for (auto& [key, series] : series_)
      std::sort(series.begin(), series.end(), [this](std::size_t a, std::size_t b) { return placeOf(a) < placeOf(b); });
  }

  /// Takes the worst out until all that are left can be believed.
  std::vector<ImplausibleCell> implausible() {
    std::vector<ImplausibleCell> found;
    for (int round = 0; round <= kMostRounds; ++round) {
      takeStock();
      std::vector<std::pair<std::size_t, Verdict>> doubted;
      for (std::size_t i = 0; i < cells_.size(); ++i)
        if (!cells_[i].out)
          if (const Verdict verdict = judged(i); verdict.score > 1) doubted.emplace_back(i, verdict);
      if (doubted.empty()) break;
      const auto worst = std::max_element(doubted.begin(), doubted.end(),
                                          [](const auto& a, const auto& b) { return a.second.score < b.second.score; });
      if (round < kMostRounds) doubted = {*worst};
      for (const auto& [i, verdict] : doubted) {
        SizeCell& cell = cells_[i];
        cell.out = true;
        found.push_back({cell.bone, cell.measure, cell.value, verdict.expected, verdict.against});
      }
    }
    return found;
  }

 private:
  std::tuple<int, int> placeOf(std::size_t i) const { return {cells_[i].bone.number, cells_[i].bone.phalanx}; }

  /// The x of each bone, of each part, and how well the voices hold.
  void takeStock() {
    boneX_.clear();
    std::map<int, std::vector<double>> parts;
    std::vector<double> all;
    learnProportions();
    for (const auto& [bone, members] : ofBone_) {
      std::vector<double> xs;
      for (const std::size_t i : members)
        if (!cells_[i].out) xs.push_back(cells_[i].x - ownProportion(i));
      if (xs.empty()) continue;
      boneX_[bone] = middleValue(std::move(xs));
      parts[partOf(bone)].push_back(boneX_[bone]);
      all.push_back(boneX_[bone]);
    }
    allX_ = all.empty() ? 0 : middleValue(std::move(all));
    partX_.clear();
    std::vector<double> fromAnimal;
    for (auto& [part, xs] : parts) {
      const std::size_t n = xs.size();
      partX_[part] = {middleValue(xs), n};
      if (n > 2)
        for (const double x : xs) fromAnimal.push_back(x - partX_[part].first);
    }
    byAnimal_ = spreadOf(std::move(fromAnimal), kByAnimal);
    std::vector<double> fromBone;
    for (std::size_t i = 0; i < cells_.size(); ++i)
      if (!cells_[i].out)
        if (const auto others = othersOf(i)) fromBone.push_back(cells_[i].x - others->first);
    byBone_ = spreadOf(std::move(fromBone), kByBone);
    bySeries_.clear();
    for (const auto& [key, series] : series_) {
      std::vector<double> residuals;
      for (const std::size_t i : series)
        if (!cells_[i].out)
          if (const auto beside = besideOf(i, series); beside && beside->bothSides)
            residuals.push_back(cells_[i].x - beside->x);
      bySeries_[key] = spreadOf(std::move(residuals), kByNeighbours);
    }
  }

  /// By how much a measure of this kind of bone is larger in this animal than the plan's proportions say, as a
  /// logarithm: an animal may have low spines all along. Never so much that a whole column ten times too large would
  /// pass.
  void learnProportions() {
    proportions_.clear();
    std::map<std::pair<BoneKind, Measure>, std::vector<double>> differences;
    for (std::size_t i = 0; i < cells_.size(); ++i) {
      if (cells_[i].out) continue;
      std::vector<double> others;
      for (const std::size_t other : ofBone_.at(cells_[i].bone))
        if (other != i && !cells_[other].out) others.push_back(cells_[other].x);
      if (!others.empty())
        differences[{cells_[i].bone.kind, cells_[i].measure}].push_back(cells_[i].x - middleValue(std::move(others)));
    }
    for (auto& [key, values] : differences)
      if (values.size() >= kEnough)
        proportions_[key] = std::clamp(middleValue(std::move(values)), -kMostOwnProportion, kMostOwnProportion);
  }

  double ownProportion(std::size_t i) const {
    const auto found = proportions_.find({cells_[i].bone.kind, cells_[i].measure});
    return found == proportions_.end() ? 0 : found->second;
  }

  /// What the bone's other measures say of this one's x, by their median, and their number.
  std::optional<std::pair<double, std::size_t>> othersOf(std::size_t i) const {
    std::vector<double> xs;
    for (const std::size_t other : ofBone_.at(cells_[i].bone))
      if (other != i && !cells_[other].out) xs.push_back(cells_[other].x - ownProportion(other));
    if (xs.empty()) return std::nullopt;
    const std::size_t n = xs.size();
    return std::pair(middleValue(std::move(xs)) + ownProportion(i), n);
  }

  struct Beside {
    double x = 0;
    std::size_t count = 0;
    bool bothSides = false;
  };

  /// Median x of the two nearest on either side.
  std::optional<Beside> besideOf(std::size_t i, const std::vector<std::size_t>& series) const {
    const auto place = placeOf(i);
    const auto own = std::lower_bound(series.begin(), series.end(), place,
                                      [this](std::size_t a, const auto& at) { return placeOf(a) < at; });
    std::vector<double> before, after;
    for (auto k = own; k != series.begin() && before.size() < 2;)
      if (--k; !cells_[*k].out) before.push_back(cells_[*k].x);
    for (auto k = own; k != series.end() && after.size() < 2; ++k)
      if (placeOf(*k) != place && !cells_[*k].out) after.push_back(cells_[*k].x);
    std::vector<double> xs = before;
    xs.insert(xs.end(), after.begin(), after.end());
    if (xs.empty()) return std::nullopt;
    const std::size_t n = xs.size();
    return Beside{middleValue(std::move(xs)), n, !before.empty() && !after.empty()};
  }

  std::vector<Voice> voicesOn(std::size_t i) const {
    const SizeCell& cell = cells_[i];
    std::vector<Voice> voices;
    const std::pair key{cell.bone.kind, cell.measure};
    if (const auto beside = besideOf(i, series_.at(key))) {
      double spread = bySeries_.at(key);
      if (!beside->bothSides) spread *= 2;  // carried on past the last
      if (beside->count == 1) spread = std::max(spread, kByNeighbours.most);
      voices.push_back({Misfit::Neighbours, beside->x, spread});
    }
    const BoneName twin = mirrored(cell.bone);
    if (const auto side = ofBone_.find(twin); twin != cell.bone && side != ofBone_.end())
      for (const std::size_t other : side->second)
        if (cells_[other].measure == cell.measure && !cells_[other].out)
          voices.push_back({Misfit::OtherSide, cells_[other].x, kSameSides});
    if (const auto others = othersOf(i))
      voices.push_back({Misfit::SameBone, others->first, others->second == 1 ? 1.4 * byBone_ : byBone_});
    Voice animal = animalOn(cell);
    animal.x += ownProportion(i);
    voices.push_back(animal);
    return voices;
  }

  Voice animalOn(const SizeCell& cell) const {
    const auto part = partX_.find(partOf(cell.bone));
    if (part != partX_.end() && part->second.second > 3) return {Misfit::Animal, part->second.first, byAnimal_};
    // Nothing but the bone itself and its twin: the plan's own size.
    const auto own = [this](const BoneName& name) { return boneX_.contains(name) ? 1u : 0u; };
    const std::size_t kin = own(cell.bone) + (mirrored(cell.bone) == cell.bone ? 0u : own(mirrored(cell.bone)));
    if (boneX_.size() <= kin) return {Misfit::Animal, 0, kAlone};
    return {Misfit::Animal, allX_, std::max(byAnimal_, kByNeighbours.most)};
  }

  /// A score above 1 cannot be believed.
  Verdict judged(std::size_t i) const {
    const SizeCell& cell = cells_[i];
    const std::vector<Voice> voices = voicesOn(i);
    double weights = 0, sum = 0, loudest = 0;
    Verdict verdict;
    for (const Voice& voice : voices) {
      const double weight = 1 / (voice.spread * voice.spread);
      weights += weight;
      sum += weight * voice.x;
      const double against = std::abs(cell.x - voice.x) / voice.spread;
      if (against <= loudest) continue;
      loudest = against;
      verdict.against = voice.who;
    }
    const double expected = sum / weights;
    const double spread = std::max(kLeastTogether, 1 / std::sqrt(weights));
    verdict.score = std::abs(cell.x - expected) / std::max(kLeastDeviation, kImplausibleDeviations * spread);
    verdict.expected = cell.planned * std::exp(expected);
    return verdict;
  }

  std::vector<SizeCell> cells_;
  std::map<BoneName, std::vector<std::size_t>> ofBone_;
  std::map<std::pair<BoneKind, Measure>, std::vector<std::size_t>> series_;  ///< in order, both sides
  std::map<std::pair<BoneKind, Measure>, double> proportions_;
  std::map<BoneName, double> boneX_;
  std::map<int, std::pair<double, std::size_t>> partX_;
  double allX_ = 0, byBone_ = 1, byAnimal_ = 1;
  std::map<std::pair<BoneKind, Measure>, double> bySeries_;
};

/// As read: the animal's own bones and their measured cells.
MeasurementTable measuredAlone(const MeasurementTable& table) {
  MeasurementTable out = table;
  const std::vector<BoneName> all = allBones(table.plan, table.counts);
  const std::set<BoneName> known(all.begin(), all.end());
  std::erase_if(out.rows, [&](const TableRow& row) { return !known.contains(row.name); });
  for (TableRow& row : out.rows)
    for (int m = 0; m < kMeasureCount; ++m)
      if (Cell& cell = row.measures[static_cast<Measure>(m)]; !cell.measured()) cell = {};
  return out;
}

void addZeroFacets(const MeasurementTable& table, std::vector<ImplausibleCell>& found) {
  for (const TableRow& row : table.rows) {
    // Tails end in rods that have none; where they begin is for the table to say.
    if (!isVertebra(row.name.kind) || row.name.kind == BoneKind::Caudal) continue;
    const Cell& facet = row.measures[Measure::FacetLength];
    const double planned = planValue(table.plan, table.counts, row.name, Measure::FacetLength);
    if (!facet.measured() || facet.value != 0 || planned == 0) continue;
    const double plannedLength = planValue(table.plan, table.counts, row.name, Measure::Length);
    const double scale = row.measures.valueOr(Measure::Length, plannedLength) / plannedLength;
    found.push_back({row.name, Measure::FacetLength, 0, scale * planned, Misfit::SameBone, Slip::NoFacet});
  }
}

void addOddWedges(const MeasurementTable& table, std::vector<ImplausibleCell>& found) {
  std::map<BoneKind, std::vector<double>> wedges;
  for (const TableRow& row : table.rows)
    if (row.measures[Measure::Wedge].measured()) wedges[row.name.kind].push_back(row.measures.value(Measure::Wedge));
  for (const TableRow& row : table.rows) {
    const Cell& wedge = row.measures[Measure::Wedge];
    if (!wedge.measured() || !isVertebra(row.name.kind)) continue;
    const double planned = planValue(table.plan, table.counts, row.name, Measure::Wedge);
    const std::vector<double>& region = wedges[row.name.kind];
    const bool told = region.size() >= kEnough;
    const double expected = told ? middleValue(region) : planned;
    if (std::min(std::abs(wedge.value - expected), std::abs(wedge.value - planned)) <= kOddWedge) continue;
    found.push_back(
        {row.name, Measure::Wedge, wedge.value, expected, told ? Misfit::Neighbours : Misfit::SameBone, {}});
  }
}

/// Two digits of what was written, in mm or degrees, that have changed places.
std::optional<double> swappedDigits(double written, double expected) {
  const double sign = written < 0 ? -1 : 1;
  const long long tenths = std::llround(std::abs(written) * 10);
  if (tenths < 100 || tenths > 99'999'999) return std::nullopt;
  const std::string digits = std::to_string(tenths % 10 == 0 ? tenths / 10 : tenths);
  const double unit = tenths % 10 == 0 ? 1 : 0.1;
  std::optional<double> best;
  for (std::size_t a = 0; a < digits.size(); ++a) {
    for (std::size_t b = a + 1; b < digits.size(); ++b) {
      std::string other = digits;
      std::swap(other[a], other[b]);
      const double value = sign * unit * static_cast<double>(std::stoll(other));
      if (other == digits || !(value * expected > 0)) continue;
      if (std::abs(std::log(value / expected)) > kSwapWithin) continue;
      if (!best || std::abs(value - expected) < std::abs(*best - expected)) best = value;
    }
  }
  return best;
}

/// The slip that would explain the value.
void explain(ImplausibleCell& cell) {
  if (cell.slip != Slip::Unclear || cell.value == 0 || !(cell.value * cell.expected > 0)) return;
  const double scale = isAngle(cell.measure) ? 180 / std::numbers::pi : 1e3;
  const double ratio = std::log10(cell.value / cell.expected);
  const double power = std::round(ratio);
  if (power != 0 && std::abs(power) <= 3 && std::abs(ratio - power) * std::numbers::ln10 < kSlipWithin) {
    cell.slip = power > 0 ? Slip::TooLarge : Slip::TooSmall;
    cell.times = static_cast<int>(std::lround(std::pow(10, std::abs(power))));
  } else if (const auto meant = swappedDigits(cell.value * scale, cell.expected * scale)) {
    cell.slip = Slip::DigitsSwapped;
    cell.meant = *meant / scale;
  }
}

reason::Id saidAgainst(Misfit misfit) {
  switch (misfit) {
    case Misfit::Neighbours:
      return table::kByNeighbours;
    case Misfit::OtherSide:
      return table::kByOtherSide;
    case Misfit::SameBone:
      return table::kBySameBone;
    default:
      return table::kByAnimal;
  }
}

reason::Quantity quantityOf(Measure measure, double value) {
  return {value, isAngle(measure) ? reason::Unit::Angle : reason::Unit::Length};
}

reason::Reason slipOf(const ImplausibleCell& cell) {
  switch (cell.slip) {
    case Slip::TooLarge:
      return {table::kTimesTooLarge, {reason::Count{cell.times}}};
    case Slip::TooSmall:
      return {table::kTimesTooSmall, {reason::Count{cell.times}}};
    case Slip::DigitsSwapped:
      return {table::kDigitsSwapped, {quantityOf(cell.measure, cell.meant)}};
    case Slip::NoFacet:
      return {table::kZeroMeansNone};
    default:
      return {table::kCheckCell};
  }
}

}  // namespace

std::vector<ImplausibleCell> implausibleCells(const MeasurementTable& table) {
  MeasurementTable measured = measuredAlone(table);
  std::vector<ImplausibleCell> found = SizeComparison(measured).implausible();
  for (const ImplausibleCell& cell : found) measured.find(cell.bone)->measures[cell.measure] = {};
  addZeroFacets(measured, found);
  addOddWedges(measured, found);
  for (const OddFacet& odd : oddFacets(measured))
    found.push_back({odd.bone, odd.measure, odd.value, odd.expected, Misfit::Column});
  for (ImplausibleCell& cell : found) explain(cell);
  std::map<BoneName, std::size_t> places;
  for (const BoneName& name : allBones(table.plan, table.counts)) places.emplace(name, places.size());
  std::sort(found.begin(), found.end(), [&places](const ImplausibleCell& a, const ImplausibleCell& b) {
    return std::pair(places[a.bone], a.measure) < std::pair(places[b.bone], b.measure);
  });
  const auto same = [](const ImplausibleCell& a, const ImplausibleCell& b) {
    return a.bone == b.bone && a.measure == b.measure;
  };
  found.erase(std::unique(found.begin(), found.end(), same), found.end());
  return found;
}

reason::Reason causeOf(const ImplausibleCell& cell) {
  const reason::Value bone = reason::text(toId(cell.bone));
  const reason::Quantity value = quantityOf(cell.measure, cell.value);
  const reason::Quantity expected = quantityOf(cell.measure, cell.expected);
  if (cell.against == Misfit::Column) return {table::kOddFacet, {bone, termOf(cell.measure), value, expected}};
  return {table::kImplausible,
          {bone, termOf(cell.measure), value, expected, reason::inner({saidAgainst(cell.against)})}};
}

reason::Reason mendOf(const ImplausibleCell& cell) {
  if (cell.against == Misfit::Column) {
    const reason::Reason slip = slipOf(cell);
    if (slip.id == table::kCheckCell) return {table::kNotCarried};
    return {table::kSlipNotCarried, {reason::inner(slip)}};
  }
  return slipOf(cell);
}

}  // namespace zyga::anatomy
