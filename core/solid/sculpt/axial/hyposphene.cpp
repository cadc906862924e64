#include <algorithm>
#include <cmath>

#include "core/solid/sculpt/axial/vertebra.h"

namespace zyga::solid {

using anatomy::Bone;
using anatomy::BoneKind;
using anatomy::Facet;
using anatomy::FacetRole;
using anatomy::Measure;

namespace {

constexpr int kFirstHyposphene = 3;

/// Half the width that the facets, with the room cleared over them (roomOver), leave for a wedge between them, m.
double roomBetween(const Facet& facet) {
  const double inner = std::abs(facet.centre.y());
  return std::max(0.88 * (inner - 0.9 * facet.width()), 0.55 * (inner - 0.5 * facet.width()));
}

Point upward(const WedgeJoint& wedge) { return {-wedge.slide.z(), 0, wedge.slide.x()}; }

/// The wedge, wider below than above, grown by `play` on every side; its top lies `rise` over the facets.
Shape wedgeSolid(const WedgeJoint& wedge, double play, double rise, double round) {
  const Point up = upward(wedge), low = wedge.middle - (wedge.deep + play) * up;
  const double tall = wedge.deep + play + rise, along = 0.5 * (wedge.fore + wedge.back) + play;
  const double off = 0.5 * (wedge.fore - wedge.back);
  const double lowHalf = 1.14 * wedge.half + play, topHalf = 0.86 * wedge.half + play;
  return loft(frameAlong(low, low + up, wedge.slide),
              {{0, lowHalf, 0.92 * along, 0, off, 0.8}, {tall, topHalf, along, 0, off, 0.8}}, round);
}

/// The wedge as the bone has it, inside the room of wedgeSolid: its hind and lower edges rounded away.
Shape roundedWedge(const WedgeJoint& wedge, double rise, double height) {
  const Point up = upward(wedge), low = wedge.middle - wedge.deep * up;
  const double tall = wedge.deep + rise, along = 0.5 * (wedge.fore + wedge.back), off = 0.5 * (wedge.fore - wedge.back);
  return loft(frameAlong(low, low + up, wedge.slide),
              {{0, 0.62 * wedge.half, 0.50 * along, 0, off + 0.22 * along, 0.3},
               {0.22 * tall, 1.08 * wedge.half, 0.74 * along, 0, off + 0.12 * along, 0.4},
               {0.62 * tall, 0.96 * wedge.half, 0.92 * along, 0, off + 0.02 * along, 0.4},
               {tall, 0.86 * wedge.half, 0.98 * along, 0, off, 0.4}},
              0.03 * height);
}

}  // namespace

std::optional<WedgeJoint> wedgeBetween(const Bone& cranial, const Bone& caudal, bool inCaudal) {
  if (cranial.name.kind != BoneKind::Dorsal || cranial.name.number < kFirstHyposphene) return std::nullopt;
  const Facet* post = cranial.facet(FacetRole::PostzygLeft);
  const Facet* pre = caudal.facet(FacetRole::PrezygLeft);
  if (!post || !pre) return std::nullopt;
  const double H = cranial.measures.value(Measure::CotyleHeight), L = caudal.measures.value(Measure::Length);
  const Point canal = caudal.landmark("canal");
  WedgeJoint wedge;
  wedge.half = std::min({roomBetween(*post), roomBetween(*pre), 0.13 * H});
  const double overCanal = std::min(pre->centre.z() - canal.z(), post->centre.z() - cranial.landmark("canal").z());
  wedge.deep = std::min(0.24 * H, overCanal - 0.15 * H);
  if (wedge.half < 0.04 * H || wedge.deep < 0.08 * H) return std::nullopt;
  wedge.fore = 0.14 * L;
  wedge.back = 0.24 * L;
  wedge.play = 0.05 * H;
  const Facet& facet = inCaudal ? *pre : *post;
  wedge.middle = facet.centre.cwiseProduct(Point(1, 0, 1));
  wedge.slide = facet.slide.cwiseProduct(Point(1, 0, 1)).normalized();
  return wedge;
}

Shape hyposphene(const Vertebra& v, const Point& spineFoot) {
  if (!v.wedgeBehind) return {};
  WedgeJoint wedge = *v.wedgeBehind;
  wedge.back -= 0.06 * v.length;  // it ends before the slot does
  const double H = v.height;
  const Point top = wedge.middle + 0.06 * H * upward(wedge);
  const Shape stem = tube({{spineFoot, {0.12 * H, 0.09 * H}},
                           {0.5 * (spineFoot + top) + Point(0, 0, 0.03 * H), {0.11 * H, 1.1 * wedge.half}},
                           {top - 0.5 * wedge.back * wedge.slide, {0.05 * H, 1.0 * wedge.half}}},
                          Point::UnitZ());
  // Sheets from its shoulders to the hind facets, over their planes, so that the three are one table.
  Shape table;
  if (v.left.postzyg) {
    const Facet& facet = *v.left.postzyg;
    const Point end = under(facet, 0.7 * padDepth(facet)), begin = top - 0.15 * wedge.back * wedge.slide;
    table =
        symmetric(tube({{begin, {0.32 * wedge.back, 0.045 * H}}, {end, {0.42 * facet.length(), 0.6 * padDepth(facet)}}},
                       Point::UnitX()));
  }
  return smoothUnion({roundedWedge(wedge, 0.07 * H, H), stem, table}, 0.05 * H);
}

Shape freeHyposphene(const Shape& bone, const Vertebra& v) {
  if (!v.wedgeBehind) return bone;
  WedgeJoint beside = *v.wedgeBehind;
  const Shape wedge = roundedWedge(beside, 0.07 * v.height, v.height);
  beside.half += 0.16 * v.height;
  beside.fore = 0;  // in front of the facets' middle the bone's own arch begins
  const Shape room = wedgeSolid(beside, 0.02 * v.height, -0.015 * v.height, 0);
  return smoothCut(bone, cut(room, wedge), 0.01 * v.height);
}

Shape hypantrumWalls(const Vertebra& v) {
  if (!v.wedgeBefore) return {};
  const WedgeJoint& wedge = *v.wedgeBefore;
  // Behind the facets' middle, as before it lies the arch of the other bone.
  const double H = v.height, thick = 0.055 * H, along = 0.78 * wedge.fore;
  const Point up = upward(wedge), low = wedge.middle - 0.98 * wedge.deep * up;
  const double y = 1.0 * wedge.half + thick, off = -0.25 * wedge.back;
  return symmetric(loft(frameAlong(low, low + up, wedge.slide),
                        {{0, thick, along, -y - 0.14 * wedge.half, off - 0.04 * v.length, 0.5},
                         {0.92 * wedge.deep, 1.1 * thick, along, -y, off, 0.5}},
                        0.02 * H));
}

Shape cutHypantrum(const Shape& bone, const Vertebra& v) {
  if (!v.wedgeBefore) return bone;
  WedgeJoint slot = *v.wedgeBefore;
  slot.fore += 0.35 * v.length;
  return smoothCut(bone, wedgeSolid(slot, slot.play, 0.22 * v.height, 0.01 * v.height), 0.012 * v.height);
}

}  // namespace zyga::solid
