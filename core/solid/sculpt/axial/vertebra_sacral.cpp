#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/solid/sculpt/axial/axial.h"
#include "core/solid/sculpt/axial/vertebra.h"

namespace zyga::solid {

using anatomy::Facet;

namespace {

/// A centrum that has grown together with its neighbours: hardly waisted, its ends swollen where they meet.
Shape fusedCentrum(const Vertebra& v) {
  const double L = v.length, y = v.width / 2, z = v.height / 2, over = 0.015 * L;
  return loft(Frame::Identity(),
              {{-0.5 * L - over, 1.0 * y, 1.0 * z},
               {-0.30 * L, 0.90 * y, 0.93 * z, 0, 0.02 * v.height},
               {0, 0.80 * y, 0.84 * z, 0, 0.05 * v.height},
               {0.30 * L, 0.90 * y, 0.93 * z, 0, 0.02 * v.height},
               {0.5 * L + over, 1.0 * y, 1.0 * z}},
              0.02 * L);
}

/// Arch and spine: a blade that meets those before and behind only towards its top, where all share one rough crest; a
/// buttress runs up each side.
Shape spinePlate(const Vertebra& v) {
  const double L = v.length, H = v.height, top = v.spineTop.z(), low = 0.35 * H, tall = top - low;
  const double x = v.spineTop.x(), reach = 0.52 * L;
  const Shape blade = plate(Frame(Eigen::AngleAxisd(0.5 * std::numbers::pi, Point::UnitX())),
                            {{0.36 * L, low},
                             {0.27 * L, low + 0.34 * tall},
                             {0.30 * L, low + 0.58 * tall},
                             {reach, low + 0.76 * tall},
                             {reach, top - 0.03 * H},
                             {-reach, top - 0.03 * H},
                             {-reach, low + 0.76 * tall},
                             {-0.36 * L, low + 0.58 * tall},
                             {-0.33 * L, low + 0.34 * tall},
                             {-0.40 * L, low}},
                            {0.13 * H, 0.07 * H, 0.20 * L, 0, 0});
  const Shape crest = weathered(tube({{Point(-reach - 0.02 * L, 0, top - 0.07 * H), {0.105 * H, 0.075 * H}},
                                      {Point(0.5 * x, 0, top - 0.065 * H), {0.15 * H, 0.065 * H}},
                                      {Point(reach + 0.02 * L, 0, top - 0.07 * H), {0.105 * H, 0.075 * H}}},
                                     Point::UnitY()),
                                0.010 * H, 0.16 * H);
  const Shape arch = loft(frameAlong(Point(0, 0, 0.25 * H), Point(0, 0, 1), Point::UnitX()),
                          {{0, 0.30 * v.width, 0.42 * L, 0, 0, 0.4},
                           {0.4 * H, 0.25 * v.width, 0.36 * L, 0, 0, 0.4},
                           {0.75 * H, 0.14 * v.width, 0.30 * L}},
                          0.05 * H);
  const Shape buttress = tube({{Point(-0.03 * L, 0.06 * H, 0.95 * H), {0.15 * L, 0.13 * H}},
                               {Point(-0.05 * L, 0.05 * H, 0.55 * H + 0.45 * top), {0.075 * L, 0.085 * H}},
                               {Point(-0.06 * L, 0.09 * H, top - 0.14 * H), {0.12 * L, 0.11 * H}}},
                              Point::UnitX());
  return smoothUnion({blade, crest, arch, symmetric(buttress, 0.03 * H)}, 0.10 * H);
}

/// Along the sacrum from -1 (the first) to 1 (the last): this sacral's place, and half the way on to the next.
struct SacrumPlace {
  double along, half;
  SacrumPlace(int number, int count)
      : along(count > 1 ? 2.0 * (number - 1) / (count - 1) - 1 : 0), half(count > 1 ? 1.0 / (count - 1) : 0) {}
  /// How deep the yoke hangs there, 1 over the hip socket.
  double sag(double towardsFront) const {
    const double a = along - towardsFront * half;
    return 1 - a * a;
  }
};

/// The rib that has grown to the vertebra: waisted, fanned out towards the ilium, its end part of the yoke, a bar that
/// runs on into those of its neighbours in one curve, deepest over the hip socket.
Shape sacralRib(const Vertebra& v, const Point& end, const SacrumPlace& place) {
  const double L = v.length, H = v.height, W = v.width, deepest = 0.30 * H;
  // The ribs fan out: the first ones reach forward, the last ones back.
  const Point tip = end + Point(-0.10 * L * place.along, 0, 0.06 * H - deepest * place.sag(0));
  const Point root(0.10 * L, 0.30 * W, 0.02 * H), mid = 0.5 * (root + tip) + Point(0, 0, 0.04 * H);
  const Shape rib = tube({{root, {0.40 * H, 0.27 * L}},
                          {mid, {0.25 * H, 0.13 * L}},
                          {0.2 * mid + 0.8 * tip, {0.34 * H, 0.19 * L}},
                          {tip - Point(0, 0.06 * H, 0), {0.42 * H, 0.27 * L}}},
                         Point::UnitZ());
  const auto yokeAt = [&](double towardsFront) {
    return Point(0.54 * L * towardsFront + end.x(), end.y() - 0.10 * H,
                 end.z() - 0.04 * H - deepest * place.sag(1.08 * towardsFront));
  };
  // The first and the last end at their ribs.
  const double front = place.along <= -1 ? 0.3 : 1, back = place.along >= 1 ? -0.3 : -1;
  const Shape yoke = tube(
      {{yokeAt(back), {0.30 * H, 0.12 * H}}, {yokeAt(0), {0.36 * H, 0.13 * H}}, {yokeAt(front), {0.30 * H, 0.12 * H}}},
      Point::UnitZ());
  const Shape grown = smoothUnion(rib, yoke, 0.14 * H);
  return intersect(grown, halfSpace(end, Point::UnitY()), 0.02 * H);
}

/// The transverse process over the rib: a sheet from the arch out and down to the rib's upper edge.
Shape sacralProcess(const Vertebra& v, const VertebraSide& side, const Point& end) {
  const double L = v.length, H = v.height, W = v.width;
  const Point tip(-0.02 * L, std::min(side.diapophysis.y(), end.y()) - 0.05 * H, end.z() + 0.30 * H);
  const Point crest(-0.02 * L, 0.10 * W, 1.12 * H), root(0.0, 0.28 * W, 0.10 * H);
  const Shape wing = web({tip, 0.5 * (tip + crest) + Point(0, 0, 0.06 * H), crest + Point(0, 0, 0.12 * H),
                          crest - Point(0, 0.02 * W, 0.4 * H), root, 0.5 * (root + tip) - Point(0, 0, 0.22 * H),
                          tip - Point(0, 0, 0.22 * H)},
                         0.12 * H, 0.07 * H);
  const Shape edge = tube({{crest - Point(0, 0.02 * W, 0.02 * H), {0.10 * L, 0.07 * H}},
                           {0.5 * (tip + crest) + Point(0, 0, 0.04 * H), {0.075 * L, 0.05 * H}},
                           {tip, {0.11 * L, 0.07 * H}}},
                          Point::UnitX());
  return smoothUnion(wing, edge, 0.08 * H);
}

Shape zygapophysis(const Vertebra& v, const Facet& facet, double rootX) {
  const double depth = padDepth(facet);
  const Point end = facet.centre - 0.5 * depth * facet.normal;
  const Shape ramus = tube({{Point(rootX * v.length, 0.10 * v.width, end.z()), {0.13 * v.height, 0.08 * v.height}},
                            {end, {0.36 * facet.width(), 0.7 * depth}}},
                           Point::UnitZ());
  return ramus;
}

/// The summit and plate must not lie over the facets of the free neighbours.
Shape freeEnds(const Shape& spine, const Vertebra& v) {
  Shape out = spine;
  const auto trim = [&](double x, double sense) {
    out = intersect(out, halfSpace(Point(x, 0, 0), Point(sense, 0, 0)), 0.05 * v.height);
  };
  if (v.left.prezyg) trim(0.30 * v.length, 1);
  if (v.left.postzyg) trim(-0.34 * v.length, -1);
  return out;
}

}  // namespace

Shape sacralShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  const Vertebra v = describeVertebra(specimen, bone);
  const double H = v.height;
  const bool first = v.left.prezyg.has_value();
  const auto yoke = specimen[bone].landmarks.find("yoke.L");
  const Point end = yoke == specimen[bone].landmarks.end() ? v.left.diapophysis : yoke->second;
  const Shape body = first ? centrum(v, 0.84, 0.03) : fusedCentrum(v);
  const Shape processes = bothSides(
      v,
      [&](const VertebraSide& side) {
        std::vector<Shape> parts{sacralRib(v, end, SacrumPlace(v.number, specimen.counts.sacral)),
                                 sacralProcess(v, side, end)};
        if (side.prezyg) parts.push_back(zygapophysis(v, *side.prezyg, 0.10));
        if (side.postzyg) parts.push_back(zygapophysis(v, *side.postzyg, -0.12));
        return smoothUnion(parts, 0.09 * H);
      },
      0.05 * H);
  Shape out = smoothUnion({body, freeEnds(spinePlate(v), v), processes, hypantrumWalls(v)}, 0.10 * H);
  out = smoothCut(out, canalTool(v, 0.11 * H), 0.04 * H);
  if (v.left.postzyg) out = hollowCotyle(out, v);
  return cutHypantrum(layFacets(out, v, kHalfFacet), v);
}

}  // namespace zyga::solid
