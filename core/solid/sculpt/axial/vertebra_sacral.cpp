#include <algorithm>

#include "core/solid/sculpt/axial/axial.h"
#include "core/solid/sculpt/axial/parts.h"

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

/// Arch and spine: a plate in the mid-plane that meets the plates before and behind, with a thick summit and a ridge up
/// each side.
Shape spinePlate(const Vertebra& v) {
  const double L = v.length, H = v.height, top = v.spineTop.z(), low = 0.35 * H;
  const Shape plate = block(Frame(Eigen::Translation3d(0, 0, 0.5 * (low + top))),
                            Point(0.515 * L, 0.055 * H, 0.5 * (top - low)), 0.05 * H);
  const Shape summit =
      block(Frame(Eigen::Translation3d(0, 0, top - 0.07 * H)), Point(0.515 * L, 0.12 * H, 0.07 * H), 0.06 * H);
  const Shape arch = loft(frameAlong(Point(0, 0, 0.25 * H), Point(0, 0, 1), Point::UnitX()),
                          {{0, 0.30 * v.width, 0.42 * L, 0, 0, 0.4},
                           {0.4 * H, 0.25 * v.width, 0.36 * L, 0, 0, 0.4},
                           {0.75 * H, 0.14 * v.width, 0.30 * L}},
                          0.05 * H);
  const Shape buttress = tube({{Point(-0.03 * L, 0.05 * H, 0.95 * H), {0.14 * L, 0.13 * H}},
                               {Point(-0.06 * L, 0.06 * H, 0.55 * H + 0.45 * top), {0.10 * L, 0.09 * H}},
                               {Point(-0.08 * L, 0.09 * H, top - 0.12 * H), {0.11 * L, 0.10 * H}}},
                              Point::UnitX());
  return smoothUnion({plate, summit, arch, symmetric(buttress, 0.03 * H)}, 0.10 * H);
}

/// The bar out to the ilium, spread at its end to a yoke with its neighbours', and the sheet that rises from it to the
/// arch.
Shape sideBar(const Vertebra& v, const VertebraSide& side) {
  const double L = v.length, H = v.height, W = v.width;
  const Point tip = side.diapophysis - Point(0, 0.06 * H, 0);
  const Point root(0.06 * L, 0.34 * W, 0.02 * H);
  const Shape bar =
      tube({{root, {0.36 * H, 0.30 * L}}, {0.5 * (root + tip), {0.22 * H, 0.15 * L}}, {tip, {0.26 * H, 0.20 * L}}},
           Point::UnitZ());
  const Shape yoke = tube({{tip - Point(0.53 * L, 0, 0.02 * H), {0.22 * H, 0.07 * H}},
                           {tip, {0.25 * H, 0.085 * H}},
                           {tip + Point(0.53 * L, 0, -0.02 * H), {0.22 * H, 0.07 * H}}},
                          Point::UnitZ());
  const Point crest(-0.02 * L, 0.20 * W, 1.05 * H);
  const Shape wing =
      web({0.1 * crest + 0.9 * tip + Point(0, 0, 0.30 * H), 0.45 * crest + 0.55 * tip + Point(0, 0, 0.28 * H),
           crest + Point(0, 0, 0.10 * H), crest - Point(0, 0.06 * W, 0.3 * H), root + Point(0, 0, 0.2 * H), tip},
          0.09 * H, 0.05 * H);
  return smoothUnion({bar, yoke, wing}, 0.10 * H);
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
  const Shape body = first ? centrum(v, 0.84, 0.03) : fusedCentrum(v);
  const Shape processes = bothSides(
      v,
      [&](const VertebraSide& side) {
        std::vector<Shape> parts{sideBar(v, side)};
        if (side.prezyg) parts.push_back(zygapophysis(v, *side.prezyg, 0.10));
        if (side.postzyg) parts.push_back(zygapophysis(v, *side.postzyg, -0.12));
        return smoothUnion(parts, 0.09 * H);
      },
      0.05 * H);
  Shape out = smoothUnion({body, freeEnds(spinePlate(v), v), processes}, 0.10 * H);
  out = smoothCut(out, canalTool(v, 0.11 * H), 0.04 * H);
  if (v.left.postzyg) out = hollowCotyle(out, v);
  return layFacets(out, v, kHalfFacet);
}

}  // namespace zyga::solid
