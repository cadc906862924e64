#include <algorithm>

#include "core/solid/sculpt/axial/axial.h"
#include "core/solid/sculpt/axial/vertebra.h"

namespace zyga::solid {

namespace {

/// Body and arch of a ring: a stout crescent below, two arms above that meet over the canal.
Shape ringOfBone(const Vertebra& v) {
  const double L = v.length, H = v.height, W = v.width;
  const Shape body =
      loft(Frame(Eigen::Translation3d(0, 0, -0.08 * H)),
           {{-0.5 * L, 0.47 * W, 0.40 * H}, {0, 0.42 * W, 0.36 * H}, {0.5 * L, 0.49 * W, 0.42 * H}}, 0.10 * L);
  const Shape arms = symmetric(tube({{Point(0.02 * L, 0.34 * W, 0.10 * H), {0.40 * L, 0.10 * W}},
                                     {Point(-0.02 * L, 0.42 * W, 0.45 * H), {0.34 * L, 0.075 * W}},
                                     {Point(-0.10 * L, 0.30 * W, 0.80 * H), {0.34 * L, 0.065 * W}},
                                     {Point(-0.12 * L, 0.03 * W, v.spineTop.z() - 0.07 * H), {0.30 * L, 0.06 * W}}},
                                    Point::UnitX()),
                               0.05 * H);
  const Shape wings = symmetric(tube({{Point(-0.10 * L, 0.36 * W, 0.66 * H), {0.12 * H, 0.06 * W}},
                                      {Point(-0.62 * L, 0.44 * W, 0.60 * H), {0.10 * H, 0.05 * W}},
                                      {Point(-0.95 * L, 0.44 * W, 0.52 * H), {0.05 * H, 0.035 * W}}},
                                     Point::UnitZ()));
  const Shape spurs = symmetric(tube({{Point(-0.20 * L, 0.30 * W, -0.30 * H), {0.10 * H, 0.07 * W}},
                                      {Point(-0.75 * L, 0.40 * W, -0.42 * H), {0.05 * H, 0.04 * W}}},
                                     Point::UnitZ()));
  return smoothUnion({body, arms, wings, spurs}, 0.10 * H);
}

}  // namespace

Shape atlasShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  const Vertebra v = describeVertebra(specimen, bone);
  const double L = v.length, H = v.height, W = v.width;
  Shape out = ringOfBone(v);
  // The cup for the occipital condyle, and behind it the bed of the peg of the axis.
  out = smoothCut(out, ellipsoid(Point(0.62 * L, 0, 0.02 * H), Point(0.62 * L, 0.36 * W, 0.34 * H)), 0.04 * H);
  out = smoothCut(out, ellipsoid(Point(-0.55 * L, 0, 0.20 * H), Point(0.75 * L, 0.25 * W, 0.20 * H)), 0.05 * H);
  const Shape canal =
      loft(Frame(Eigen::Translation3d(0, 0, 0.52 * H)), {{-2 * L, 0.24 * W, 0.24 * H}, {2 * L, 0.24 * W, 0.24 * H}}, 0);
  out = smoothCut(out, canal, 0.05 * H);
  return layFacets(out, v);
}

using anatomy::Facet;

namespace {

/// The odontoid peg over the half-round front face.
Shape peg(const Vertebra& v) {
  const double L = v.length, H = v.height, W = v.width;
  return tube({{Point(0.40 * L, 0, 0.12 * H), {0.27 * W, 0.22 * H}},
               {Point(0.5 * L + 0.25 * H, 0, 0.17 * H), {0.20 * W, 0.16 * H}},
               {Point(0.5 * L + 0.52 * H, 0, 0.20 * H), {0.13 * W, 0.09 * H}}},
              Point::UnitY());
}

/// Front face for the crescent of the atlas: a low swelling, not a full ball.
Shape frontFace(const Vertebra& v) {
  const double L = v.length, H = v.height, W = v.width;
  return ellipsoid(Point(0.46 * L, 0, -0.03 * H), Point(0.30 * H, 0.46 * W, 0.45 * H));
}

/// Long low blade that rises backwards.
Shape spineBlade(const Vertebra& v) {
  const double L = v.length, H = v.height, top = v.spineTop.z(), low = 0.55 * H;
  const Shape blade = web(
      {Point(0.40 * L, 0, low), Point(0.42 * L, 0, low + 0.28 * (top - low)),
       Point(0.10 * L, 0, low + 0.72 * (top - low)), Point(-0.22 * L, 0, top - 0.02 * H),
       Point(-0.36 * L, 0, top - 0.03 * H), Point(-0.38 * L, 0, low + 0.45 * (top - low)), Point(-0.32 * L, 0, low)},
      0.12 * H, 0.07 * H);
  const Shape crest = tube({{Point(0.38 * L, 0, low + 0.26 * (top - low)), {0.045 * H, 0.04 * H}},
                            {Point(0.0, 0, low + 0.78 * (top - low)), {0.06 * H, 0.05 * H}},
                            {Point(-0.34 * L, 0, top - 0.06 * H), {0.10 * H, 0.06 * H}}},
                           Point::UnitY());
  return smoothUnion(blade, crest, 0.10 * H);
}

Shape arch(const Vertebra& v) {
  const double L = v.length, H = v.height;
  return loft(Frame(Eigen::Translation3d(0, 0, 0.46 * H)),
              {{-0.36 * L, 0.20 * v.width, 0.36 * H, 0, 0, 0.4},
               {0, 0.19 * v.width, 0.34 * H, 0, 0, 0.4},
               {0.40 * L, 0.23 * v.width, 0.36 * H, 0, 0, 0.4}},
              0.06 * L);
}

Shape postzyg(const Vertebra& v, const Facet& facet) {
  const double H = v.height, depth = padDepth(facet);
  const Point end = facet.centre - 0.55 * depth * facet.normal;
  const Shape ramus = tube({{Point(-0.12 * v.length, 0.10 * v.width, 0.82 * H), {0.16 * H, 0.06 * H}},
                            {end, {0.42 * facet.width(), 0.8 * depth}}},
                           Point::UnitZ());
  const Shape sheet =
      web({end, Point(-0.34 * v.length, 0.02 * H, v.spineTop.z() - 0.10 * H),
           Point(-0.10 * v.length, 0.03 * H, 1.05 * H), Point(-0.14 * v.length, 0.10 * v.width, 0.85 * H)},
          0.08 * H, 0.06 * H);
  const Point knob = facet.centre - 1.1 * depth * facet.normal - 0.2 * facet.length() * facet.slide;
  return smoothUnion({ramus, sheet, ellipsoid(knob, Point(0.10 * v.length, 0.06 * H, 0.07 * H))}, 0.08 * H);
}

/// Low processes for the slender first rib, where there is one.
Shape sideProcess(const Vertebra& v, const VertebraSide& side) {
  const double L = v.length, H = v.height, W = v.width;
  const Shape knob =
      tube({{Point(0.20 * L, 0.30 * W, -0.06 * H), {0.10 * L, 0.09 * H}}, {side.diapophysis, {0.055 * L, 0.05 * H}}},
           Point::UnitX());
  if (!side.ribTip) return knob;
  const Point head = side.parapophysis, tip = *side.ribTip;
  const Shape stub = tube({{Point(0.28 * L, 0.28 * W, -0.26 * H), {0.08 * L, 0.08 * H}}, {head, {0.05 * L, 0.06 * H}}},
                          Point::UnitX());
  const Point root(head.x(), 0.5 * (head.y() + side.diapophysis.y()), head.z() - 0.08 * H);
  const Shape shaft = tube({{root + Point(0.10 * L, 0, 0), {0.03 * H, 0.03 * H}},
                            {root, {0.075 * H, 0.045 * H}},
                            {0.5 * (root + tip), {0.05 * H, 0.035 * H}},
                            {tip, {0.025 * H, 0.022 * H}}},
                           Point::UnitZ());
  const Shape neck = tube({{side.diapophysis, {0.05 * L, 0.045 * H}}, {root, {0.05 * L, 0.045 * H}}}, Point::UnitX());
  return smoothUnion({knob, stub, shaft, neck}, 0.07 * H);
}

Shape hollow(const Vertebra& v) {
  return ellipsoid(v.at(-0.04, 0.33, 0.0), Point(0.27 * v.length, 0.20 * v.width, 0.15 * v.height));
}

}  // namespace

Shape axisShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  Vertebra v = describeVertebra(specimen, bone);
  const double H = v.height;
  Vertebra spool = v;
  spool.condyle.radius = 0;
  Shape out = smoothUnion({centrum(spool, 0.66, 0.04, 0.86), frontFace(v), peg(v), arch(v)}, 0.12 * H);
  out = smoothCut(out, symmetric(hollow(v)), 0.05 * H);
  const Shape processes = bothSides(
      v,
      [&](const VertebraSide& side) {
        std::vector<Shape> parts{sideProcess(v, side)};
        if (side.postzyg) parts.push_back(postzyg(v, *side.postzyg));
        return smoothUnion(parts, 0.08 * H);
      },
      0.04 * H);
  out = smoothUnion({out, processes, spineBlade(v)}, 0.12 * H);
  out = smoothCut(out, canalTool(v, 0.10 * H), 0.04 * H);
  return layFacets(hollowCotyle(out, v), v);
}

}  // namespace zyga::solid
