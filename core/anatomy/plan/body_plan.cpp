#include "core/anatomy/plan/body_plan.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <stdexcept>

#include "core/anatomy/cartilage.h"

namespace zyga::anatomy {
namespace {

using Row = std::vector<double>;

/// The column of one invented animal, mm and degrees, first vertebra of each region first. Turns are those of the
/// living animal, with the cartilage of a grown one between its bones.
struct ColumnPlan {
  Row cervicalLength, cervicalHeight, cervicalSpine, cervicalWidth, cervicalTurn, cervicalFork;
  Row dorsalLength, dorsalHeight, dorsalSpine, dorsalWidth, dorsalTurn, dorsalFork;
  Row sacralLength, sacralHeight, sacralSpine, sacralWidth;
  double sacralWedge;
  Row caudalLength, caudalHeight, caudalSpine, caudalWidth, caudalTurn;
  double caudalFacetShare;  ///< share of the tail whose vertebrae have zygapophyses
  Row ribLength, ribReach;
  double cervicalRibShare;  ///< length of a cervical rib over its centrum, middle of the neck
  double neckFacetHeight;   ///< of the facets over the centre of rotation, share of centrum length
};

/// Straight lines between (1-based position, value) knots.
Row knots(std::size_t count, const std::map<double, double>& points) {
  Row row;
  for (std::size_t i = 0; i < count; ++i) {
    const double x = static_cast<double>(i + 1);
    auto right = points.lower_bound(x);
    if (right == points.end()) right = std::prev(points.end());
    if (right == points.begin()) {
      row.push_back(right->second);
      continue;
    }
    const auto left = std::prev(right);
    row.push_back(std::lerp(left->second, right->second, (x - left->first) / (right->first - left->first)));
  }
  return row;
}

ColumnPlan highBrowser() {
  ColumnPlan p;
  p.cervicalLength = {60, 170, 240, 300, 360, 420, 460, 500, 520, 530, 520, 480, 430};
  p.cervicalHeight = {72, 86, 95, 107, 119, 131, 144, 159, 177, 197, 218, 238, 255};
  p.cervicalSpine = {75, 135, 145, 163, 182, 204, 228, 258, 296, 340, 392, 440, 480};
  p.cervicalWidth = {70, 115, 150, 180, 210, 240, 275, 315, 360, 410, 450, 485, 505};
  p.cervicalTurn = {0, 0, -2, -1.5, -1, 0, 0.5, 1.5, 2.5, 3.5, 4.5, 5, 5};
  p.cervicalFork = Row(13, 0);
  p.dorsalLength = {350, 300, 275, 265, 260, 258, 256, 255, 255, 258, 262};
  p.dorsalHeight = {264, 268, 271, 274, 276, 278, 281, 284, 287, 290, 294};
  p.dorsalSpine = {525, 560, 595, 625, 648, 664, 674, 681, 686, 690, 694};
  p.dorsalWidth = {525, 560, 580, 588, 592, 592, 588, 582, 576, 568, 560};
  p.dorsalTurn = {4, 3, 2, 1, 0.5, 0, 0, 0, 0.5, 0.5, 0.5};
  p.dorsalFork = Row(11, 0);
  p.sacralLength = {230, 235, 240, 235, 230};
  p.sacralHeight = {296, 296, 294, 294, 296};
  p.sacralSpine = {695, 690, 682, 670, 655};
  p.sacralWidth = {600, 620, 630, 630, 620};
  p.sacralWedge = 3;
  p.caudalLength = knots(52, {{1, 210}, {10, 201}, {20, 218}, {30, 180}, {40, 116}, {52, 40}});
  p.caudalHeight = knots(52, {{1, 300}, {5, 268}, {10, 216}, {15, 177}, {20, 147}, {30, 94}, {40, 54}, {52, 17}});
  p.caudalSpine = knots(52, {{1, 625}, {5, 520}, {8, 420}, {12, 300}, {20, 180}, {30, 95}, {36, 52}, {52, 11}});
  p.caudalWidth = knots(52, {{1, 640}, {4, 540}, {7, 400}, {10, 285}, {14, 195}, {17, 0}});
  p.caudalTurn = knots(52, {{1, -0.8}, {12, -0.8}, {22, 0.2}, {30, 0.5}, {52, 0.3}});
  p.caudalFacetShare = 0.62;
  p.ribLength = {960, 1330, 1620, 1780, 1820, 1800, 1690, 1500, 1250, 960, 640};
  p.ribReach = {430, 490, 540, 575, 590, 590, 575, 550, 510, 465, 420};
  p.cervicalRibShare = 1.9;
  p.neckFacetHeight = 0.40;
  return p;
}

ColumnPlan lowBrowser() {
  ColumnPlan p;
  p.cervicalLength = {55, 190, 260, 320, 380, 430, 480, 520, 550, 570, 580, 580, 560, 520, 470};
  p.cervicalHeight = {66, 76, 84, 93, 102, 112, 123, 135, 149, 165, 184, 206, 228, 248, 262};
  p.cervicalSpine = {70, 118, 128, 142, 158, 176, 198, 224, 256, 294, 340, 392, 444, 492, 530};
  p.cervicalWidth = {64, 100, 130, 158, 186, 214, 244, 278, 316, 358, 402, 446, 484, 512, 530};
  p.cervicalTurn = {0, 0, -2, -1.5, -1, -0.5, 0, 0, 0.5, 0.5, 0.5, 1, 1, 1, 1};
  p.cervicalFork = {0, 0, 0, 0, 0, 0, 0, 0, 20, 50, 85, 120, 150, 175, 190};
  p.dorsalLength = {410, 370, 330, 300, 285, 275, 270, 265, 262, 260};
  p.dorsalHeight = {262, 264, 266, 268, 271, 274, 278, 282, 286, 290};
  p.dorsalSpine = {570, 610, 650, 690, 722, 748, 768, 782, 792, 798};
  p.dorsalWidth = {530, 545, 555, 560, 560, 556, 550, 542, 534, 526};
  p.dorsalTurn = {1.5, 1.5, 1, 1, 1, 1, 0.5, 0.5, 0.5, 0.5};
  p.dorsalFork = {185, 160, 120, 80, 40, 15, 0, 0, 0, 0};
  p.sacralLength = {220, 230, 235, 230, 225};
  p.sacralHeight = {292, 294, 296, 298, 300};
  p.sacralSpine = {805, 808, 806, 798, 784};
  p.sacralWidth = {560, 580, 590, 590, 580};
  p.sacralWedge = 2.6;
  p.caudalLength = knots(80, {{1, 165}, {8, 190}, {20, 275}, {30, 285}, {40, 240}, {50, 165}, {58, 115}, {80, 60}});
  p.caudalHeight =
      knots(80, {{1, 304}, {5, 270}, {10, 226}, {20, 160}, {30, 110}, {40, 70}, {50, 38}, {60, 24}, {80, 9}});
  p.caudalSpine = knots(
      80, {{1, 745}, {5, 610}, {10, 440}, {15, 310}, {20, 220}, {30, 120}, {40, 66}, {50, 26}, {60, 14}, {80, 5}});
  p.caudalWidth = knots(80, {{1, 640}, {5, 520}, {9, 370}, {13, 250}, {17, 185}, {20, 0}});
  p.caudalTurn = knots(80, {{1, -1.7}, {10, -1.3}, {20, -0.3}, {30, 0.4}, {50, 0.3}, {80, 0.1}});
  p.caudalFacetShare = 0.62;
  p.ribLength = {980, 1340, 1640, 1800, 1830, 1770, 1600, 1340, 1040, 700};
  p.ribReach = {420, 480, 535, 570, 580, 575, 550, 515, 470, 420};
  p.cervicalRibShare = 0.95;
  p.neckFacetHeight = 0.32;
  return p;
}

const ColumnPlan& columnPlan(BodyPlan plan) {
  static const ColumnPlan high = highBrowser();
  static const ColumnPlan low = lowBrowser();
  return plan == BodyPlan::HighBrowser ? high : low;
}

/// Value of a row stretched over `count` vertebrae, at vertebra `number`.
double sample(const Row& row, int count, int number) {
  if (row.size() == 1 || count <= 1) return row.front();
  const double u = std::clamp((number - 1.0) / (count - 1.0), 0.0, 1.0) * static_cast<double>(row.size() - 1);
  const auto i = std::min(static_cast<std::size_t>(u), row.size() - 2);
  return std::lerp(row[i], row[i + 1], u - static_cast<double>(i));
}

/// What a vertebra's measures derive from.
struct VertebraPlan {
  double length, height, width, spine, fork, reach, turn, wedge, condyle;
  double facetLength, facetHeight, facetSpread, facetTilt;
};

VertebraPlan cervical(const ColumnPlan& p, int n, int k) {
  VertebraPlan v{};
  v.length = sample(p.cervicalLength, n, k);
  v.height = sample(p.cervicalHeight, n, k);
  const double back = n > 1 ? (k - 1.0) / (n - 1.0) : 0;  // 0 at the head, 1 at the trunk
  v.width = v.height * std::lerp(1.0, 1.18, back);
  v.spine = sample(p.cervicalSpine, n, k);
  v.fork = sample(p.cervicalFork, n, k);
  v.reach = sample(p.cervicalWidth, n, k);
  v.turn = sample(p.cervicalTurn, n, k);
  v.condyle = k == 1 ? 0 : 0.40 * v.height;
  if (k <= 2) return v;  // atlas and axis are held by typed limits
  v.facetHeight = std::max(p.neckFacetHeight * v.length, 0.88 * v.height);
  v.facetLength = 0.17 * v.length;
  v.facetSpread = 0.50 * v.width + 0.04 * v.length;
  v.facetTilt = std::lerp(46, 34, back);
  return v;
}

VertebraPlan dorsal(const ColumnPlan& p, int n, int k) {
  VertebraPlan v{};
  v.length = sample(p.dorsalLength, n, k);
  v.height = sample(p.dorsalHeight, n, k);
  v.width = v.height * 1.1;
  v.spine = sample(p.dorsalSpine, n, k);
  v.fork = sample(p.dorsalFork, n, k);
  v.reach = sample(p.dorsalWidth, n, k);
  v.turn = sample(p.dorsalTurn, n, k);
  v.condyle = 0.30 * v.height;
  const double back = (k - 1.0) / (n - 1.0);
  const double settled = std::min(1.0, back * 4);  // the arch has its trunk shape from about the third on
  v.facetHeight = v.height * std::lerp(0.95, 1.10, settled);
  v.facetLength = v.height * std::lerp(0.27, 0.20, settled);
  v.facetSpread = v.height * std::lerp(0.52, 0.24, settled);
  v.facetTilt = std::lerp(30, 14, settled);
  return v;
}

VertebraPlan sacral(const ColumnPlan& p, int n, int k) {
  VertebraPlan v{};
  v.length = sample(p.sacralLength, n, k);
  v.height = sample(p.sacralHeight, n, k);
  v.width = v.height * 1.08;
  v.spine = sample(p.sacralSpine, n, k);
  v.reach = sample(p.sacralWidth, n, k);
  v.wedge = p.sacralWedge;
  if (k > 1) return v;  // only the first meets a free vertebra in front
  v.facetHeight = 1.10 * v.height;
  v.facetLength = 0.20 * v.height;
  v.facetSpread = 0.22 * v.height;
  v.facetTilt = 16;
  return v;
}

VertebraPlan caudal(const ColumnPlan& p, int n, int k) {
  VertebraPlan v{};
  v.length = sample(p.caudalLength, n, k);
  v.height = sample(p.caudalHeight, n, k);
  v.width = v.height * 1.04;
  v.spine = std::max(sample(p.caudalSpine, n, k), 0.52 * v.height);
  v.reach = std::max(sample(p.caudalWidth, n, k), v.width);
  v.turn = sample(p.caudalTurn, n, k);
  if (k > std::lround(p.caudalFacetShare * n)) return v;  // rods without zygapophyses
  const double back = (k - 1.0) / (n - 1.0);
  v.facetHeight = v.height * std::lerp(0.80, 0.68, std::min(1.0, back * 3));
  v.facetLength = std::lerp(0.34 * v.length, 0.20 * v.length, std::min(1.0, back * 2.2));
  v.facetSpread = 0.16 * v.height;
  v.facetTilt = 64;
  return v;
}

VertebraPlan vertebraPlan(const ColumnPlan& p, const RegionCounts& counts, const BoneName& name) {
  switch (name.kind) {
    case BoneKind::Cervical:
      return cervical(p, counts.cervical, name.number);
    case BoneKind::Dorsal:
      return dorsal(p, counts.dorsal, name.number);
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

/// mm.
double ribValue(const ColumnPlan& p, const RegionCounts& counts, const BoneName& name, Measure measure) {
  if (name.kind == BoneKind::DorsalRib) {
    if (measure == Measure::Length) return sample(p.ribLength, counts.dorsal, name.number);
    if (measure == Measure::Width) return sample(p.ribReach, counts.dorsal, name.number);
    return 0.040 * sample(p.ribLength, counts.dorsal, name.number) + 8;  // breadth of the shaft
  }
  if (name.kind == BoneKind::CervicalRib) {
    const VertebraPlan v = cervical(p, counts.cervical, name.number);
    const double u = counts.cervical > 1 ? (name.number - 1.0) / (counts.cervical - 1.0) : 0;
    // Longest in the middle of the neck; the first ones and those of the neck's root stay short.
    const double share = 0.55 + (p.cervicalRibShare - 0.55) * std::sin(std::numbers::pi * std::clamp(u, 0.0, 1.0));
    return measure == Measure::Length ? share * v.length : 0.10 * v.height;
  }
  const VertebraPlan v = caudal(p, counts.caudal, name.number);
  const double u = (name.number - 1.0) / (counts.caudal - 1.0);
  return std::lerp(1.25, 0.55, std::min(1.0, u / 0.66)) * v.height;
}

}  // namespace

std::vector<BoneName> allBones(BodyPlan plan, const RegionCounts& counts) {
  std::vector<BoneName> names = headBones();
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
  vertebrae(BoneKind::Sacral, counts.sacral);
  vertebrae(BoneKind::Caudal, counts.caudal);
  ribs(BoneKind::CervicalRib, 2, counts.cervical);
  ribs(BoneKind::DorsalRib, 1, counts.dorsal);
  const int lastChevron = static_cast<int>(std::lround(counts.caudal * 0.66));
  for (int k = 2; k <= lastChevron; ++k) names.push_back({BoneKind::Chevron, k, 0, Side::Midline});
  const std::vector<BoneName> limbs = limbBones(plan);
  names.insert(names.end(), limbs.begin(), limbs.end());
  return names;
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
  const ColumnPlan& column = columnPlan(plan);
  const double toSi = isAngle(measure) ? std::numbers::pi / 180 : 1e-3;
  if (isVertebra(name.kind)) return toSi * vertebraValue(vertebraPlan(column, counts, name), measure);
  switch (name.kind) {
    case BoneKind::CervicalRib:
    case BoneKind::DorsalRib:
    case BoneKind::Chevron:
      return toSi * ribValue(column, counts, name, measure);
    default:
      return limbPlanValue(plan, name, measure);
  }
}

}  // namespace zyga::anatomy
