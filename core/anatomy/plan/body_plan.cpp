#include "core/anatomy/plan/body_plan.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <stdexcept>

#include "core/anatomy/cartilage.h"
#include "core/anatomy/plan/plan_table.h"

namespace zyga::anatomy {
namespace {

/// What a vertebra's measures derive from.
struct VertebraPlan {
  double length, height, width, spine, fork, reach, turn, wedge, condyle;
  double facetLength, facetHeight, facetSpread, facetTilt;
};

/// How far along its region a vertebra lies: 0 the first, 1 the last.
double shareAlong(int count, int number) { return count > 1 ? (number - 1.0) / (count - 1.0) : 0; }

double between(const Ends& ends, double share) { return std::lerp(ends.first, ends.last, share); }

/// What every region says alike.
VertebraPlan centrum(const RegionPlan& region, int count, int number) {
  VertebraPlan v{};
  v.length = along(region.length, count, number);
  v.height = along(region.height, count, number);
  v.width = v.height * between(region.width, shareAlong(count, number));
  v.spine = along(region.spine, count, number);
  v.fork = along(region.fork, count, number);
  v.reach = along(region.reach, count, number);
  v.turn = along(region.turn, count, number);
  v.wedge = region.wedge;
  v.condyle = along(region.condyle, count, number) * v.height;
  return v;
}

VertebraPlan cervical(const PlanTable& p, int n, int k) {
  VertebraPlan v = centrum(p.neck, n, k);
  if (k == 1) v.condyle = 0;
  if (k <= 2) return v;  // atlas and axis are held by typed limits
  const NeckFacetPlan& facets = p.neckFacets;
  v.facetHeight = std::max(facets.heightOfLength * v.length, facets.leastOfHeight * v.height);
  v.facetLength = facets.lengthOfLength * v.length;
  v.facetSpread = facets.spreadOfWidth * v.width + facets.spreadOfLength * v.length;
  v.facetTilt = between(facets.tilt, shareAlong(n, k));
  return v;
}

void giveFacets(VertebraPlan& v, const TrunkFacetPlan& facets, int n, int k) {
  const double settled = std::min(1.0, shareAlong(n, k) * facets.settle);
  v.facetHeight = v.height * between(facets.height, settled);
  v.facetLength = v.height * between(facets.length, settled);
  v.facetSpread = v.height * between(facets.spread, settled);
  v.facetTilt = between(facets.tilt, settled);
}

VertebraPlan trunkVertebra(const RegionPlan& region, const TrunkFacetPlan& facets, int n, int k) {
  VertebraPlan v = centrum(region, n, k);
  giveFacets(v, facets, n, k);
  return v;
}

VertebraPlan sacral(const PlanTable& p, int n, int k) {
  VertebraPlan v = centrum(p.sacrum, n, k);
  if (k == 1) giveFacets(v, p.sacrumFacets, n, k);  // only the first meets a free vertebra in front
  return v;
}

VertebraPlan caudal(const PlanTable& p, int n, int k) {
  VertebraPlan v = centrum(p.tail, n, k);
  v.spine = std::max(v.spine, 0.52 * v.height);
  v.reach = std::max(v.reach, v.width);
  const TailFacetPlan& facets = p.tailFacets;
  if (k > std::lround(facets.share * n)) return v;  // rods without zygapophyses
  const double back = shareAlong(n, k);
  v.facetHeight = v.height * between(facets.height, std::min(1.0, back * facets.heightSettle));
  v.facetLength = std::lerp(facets.length.first * v.length, facets.length.last * v.length,
                            std::min(1.0, back * facets.lengthSettle));
  v.facetSpread = facets.spread * v.height;
  v.facetTilt = facets.tilt;
  return v;
}

VertebraPlan vertebraPlan(const PlanTable& p, const RegionCounts& counts, const BoneName& name) {
  switch (name.kind) {
    case BoneKind::Cervical:
      return cervical(p, counts.cervical, name.number);
    case BoneKind::Dorsal:
      return trunkVertebra(p.trunk, p.trunkFacets, counts.dorsal, name.number);
    case BoneKind::Lumbar:
      return trunkVertebra(p.loins, p.loinFacets, counts.lumbar, name.number);
    case BoneKind::Sacral:
      return sacral(p, counts.sacral, name.number);
    default:
      return caudal(p, counts.caudal, name.number);
  }
}

/// Degrees by which the facets of a vertebra's cranial joint ask for less dorsal turn than the living animal is drawn
/// with: its cartilage, of thickness t between the centra, turns the joint up by t over the facets' height (Taylor
/// 2014, PeerJ 2:e712).
double raisedByCartilage(const VertebraPlan& v) {
  if (v.facetHeight == 0) return 0;
  return kGrownCartilage * 1e-2 * v.length / v.facetHeight * 180 / std::numbers::pi;
}

/// mm or degrees.
double vertebraValue(const VertebraPlan& v, Measure measure) {
  switch (measure) {
    case Measure::Length:
      return v.length;
    case Measure::LengthWithCondyle:
      return v.length + v.condyle;
    case Measure::CotyleHeight:
      return v.height;
    case Measure::CotyleWidth:
      return v.width;
    case Measure::SpineHeight:
      return v.spine;
    case Measure::SpineFork:
      return v.fork;
    case Measure::DiapophysisWidth:
      return v.reach;
    case Measure::FacetLength:
      return v.facetLength;
    case Measure::FacetWidth:
      return 0.72 * v.facetLength;
    case Measure::FacetHeight:
      return v.facetHeight;
    case Measure::FacetSpread:
      return v.facetSpread;
    case Measure::FacetTilt:
      return v.facetTilt;
    case Measure::FacetTurn:
      return v.turn - raisedByCartilage(v);
    case Measure::Wedge:
      return v.wedge;
    default:
      return 0;
  }
}

/// mm; 0 where the plan has no ribs.
double ribValue(const PlanTable& p, const RegionCounts& counts, const BoneName& name, Measure measure) {
  if (!p.ribs) return 0;
  if (name.kind == BoneKind::DorsalRib) {
    const double length = along(p.ribs->length, counts.dorsal, name.number);
    if (measure == Measure::Length) return length;
    if (measure == Measure::Width) return along(p.ribs->reach, counts.dorsal, name.number);
    return along(p.ribs->breadth, counts.dorsal, name.number);
  }
  if (name.kind == BoneKind::CervicalRib) {
    const VertebraPlan v = cervical(p, counts.cervical, name.number);
    const double u = shareAlong(counts.cervical, name.number);
    // Longest in the middle of the neck; the first ones and those of the neck's root stay short.
    const double share = 0.55 + (p.ribs->cervicalShare - 0.55) * std::sin(std::numbers::pi * std::clamp(u, 0.0, 1.0));
    return measure == Measure::Length ? share * v.length : 0.10 * v.height;
  }
  const VertebraPlan v = caudal(p, counts.caudal, name.number);
  const double u = shareAlong(counts.caudal, name.number);
  return std::lerp(1.25, 0.55, std::min(1.0, u / 0.66)) * v.height;
}

}  // namespace

PlanRow rowThrough(std::size_t count, const std::map<double, double>& knots) {
  PlanRow row;
  for (std::size_t i = 0; i < count; ++i) {
    const double x = static_cast<double>(i + 1);
    auto right = knots.lower_bound(x);
    if (right == knots.end()) right = std::prev(knots.end());
    if (right == knots.begin()) {
      row.push_back(right->second);
      continue;
    }
    const auto left = std::prev(right);
    row.push_back(std::lerp(left->second, right->second, (x - left->first) / (right->first - left->first)));
  }
  return row;
}

double along(const PlanRow& row, int count, int number) {
  if (row.empty()) return 0;
  if (row.size() == 1 || count <= 1) return row.front();
  const double u = std::clamp((number - 1.0) / (count - 1.0), 0.0, 1.0) * static_cast<double>(row.size() - 1);
  const auto i = std::min(static_cast<std::size_t>(u), row.size() - 2);
  return std::lerp(row[i], row[i + 1], u - static_cast<double>(i));
}

const PlanTable& planTable(BodyPlan plan) {
  switch (plan) {
    case BodyPlan::LowBrowser:
      return lowBrowserPlan();
    case BodyPlan::WideGauge:
      return wideGaugePlan();
    case BodyPlan::Mammal:
      return mammalPlan();
    case BodyPlan::Bird:
      return birdPlan();
    case BodyPlan::HighBrowser:
      break;
  }
  return highBrowserPlan();
}

const Characters& charactersOf(BodyPlan plan) { return planTable(plan).characters; }

std::vector<BoneName> allBones(BodyPlan plan, const RegionCounts& counts) {
  const PlanTable& table = planTable(plan);
  std::vector<BoneName> names = table.limbs ? headBones() : std::vector<BoneName>();
  const auto vertebrae = [&names](BoneKind kind, int count) {
    for (int k = 1; k <= count; ++k) names.push_back({kind, k, 0, Side::Midline});
  };
  const auto ribs = [&names](BoneKind kind, int first, int last) {
    for (int k = first; k <= last; ++k) {
      names.push_back({kind, k, 0, Side::Left});
      names.push_back({kind, k, 0, Side::Right});
    }
  };
  vertebrae(BoneKind::Cervical, counts.cervical);
  vertebrae(BoneKind::Dorsal, counts.dorsal);
  vertebrae(BoneKind::Lumbar, counts.lumbar);
  vertebrae(BoneKind::Sacral, counts.sacral);
  vertebrae(BoneKind::Caudal, counts.caudal);
  if (table.ribs) {
    ribs(BoneKind::CervicalRib, 2, counts.cervical);
    ribs(BoneKind::DorsalRib, 1, counts.dorsal);
    const int lastChevron = static_cast<int>(std::lround(counts.caudal * table.ribs->chevronShare));
    for (int k = 2; k <= lastChevron; ++k) names.push_back({BoneKind::Chevron, k, 0, Side::Midline});
  }
  if (table.limbs) {
    const std::vector<BoneName> limbs = limbBones(table.characters.limbs.fingerBones > 0);
    names.insert(names.end(), limbs.begin(), limbs.end());
  }
  return names;
}

RegionCounts countsFrom(BodyPlan plan, std::span<const BoneName> known) {
  const PlanTable& table = planTable(plan);
  RegionCounts counts = table.counts;
  const auto has = [&](BoneKind kind, int number) {
    return std::find(known.begin(), known.end(), BoneName{kind, number}) != known.end();
  };
  for (std::size_t i = 0; i < kCountedRegions.size(); ++i) {
    const auto& [kind, count, bounds] = kCountedRegions[i];
    const CountBounds possible = table.*bounds;
    if (possible.most == 0) continue;
    int last = 0;
    for (const BoneName& name : known)
      if (name.kind == kind && name.number <= possible.most) last = std::max(last, name.number);
    std::size_t next = i + 1;
    while (next < kCountedRegions.size() && (table.*kCountedRegions[next].bounds).most == 0) ++next;
    const bool ends = next < kCountedRegions.size() && has(kCountedRegions[next].kind, 1);
    if (ends && last >= possible.least)
      counts.*count = last;
    else
      counts.*count = std::max(counts.*count, last);
  }
  return counts;
}

const std::vector<Measure>& measuresOf(BoneKind kind) {
  using enum Measure;
  static const std::vector<Measure> vertebra{Length,      LengthWithCondyle, CotyleHeight, CotyleWidth, SpineHeight,
                                             SpineFork,   DiapophysisWidth,  FacetLength,  FacetWidth,  FacetHeight,
                                             FacetSpread, FacetTilt,         FacetTurn,    Wedge};
  static const std::vector<Measure> dorsalRib{Length, Width, ShaftWidth};
  static const std::vector<Measure> cervicalRib{Length, ShaftWidth};
  static const std::vector<Measure> chevron{Length};
  if (isVertebra(kind)) return vertebra;
  if (kind == BoneKind::DorsalRib) return dorsalRib;
  if (kind == BoneKind::CervicalRib) return cervicalRib;
  if (kind == BoneKind::Chevron) return chevron;
  return limbMeasuresOf(kind);
}

const std::vector<Measure>& furtherMeasuresOf(BoneKind kind) {
  using enum Measure;
  static const std::vector<Measure> vertebra{FacetOffset,   FacetPitch,    FacetRadius,   PostzygLength,
                                             PostzygWidth,  PostzygHeight, PostzygSpread, PostzygTilt,
                                             PostzygOffset, PostzygPitch,  PostzygRadius, Circumference};
  static const std::vector<Measure> other{PostzygLength, Circumference};
  return isVertebra(kind) ? vertebra : other;
}

double planValue(BodyPlan plan, const RegionCounts& counts, const BoneName& name, Measure measure) {
  const PlanTable& table = planTable(plan);
  const double toSi = isAngle(measure) ? std::numbers::pi / 180 : 1e-3;
  if (isVertebra(name.kind)) return toSi * vertebraValue(vertebraPlan(table, counts, name), measure);
  switch (name.kind) {
    case BoneKind::CervicalRib:
    case BoneKind::DorsalRib:
    case BoneKind::Chevron:
      return toSi * ribValue(table, counts, name, measure);
    default:
      return table.limbs ? limbPlanValue(*table.limbs, name, measure) : 0;
  }
}

}  // namespace zyga::anatomy
