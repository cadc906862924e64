#include <algorithm>
#include <cmath>

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

using anatomy::Facet;

namespace {

struct CaudalForm {
  double L, H, W;
  double canal;
  double roof;     ///< z of the arch's roof
  double process;  ///< how far the transverse process stands out of the centrum, share of W; 0 for none
  bool arched;     ///< false for the rods at the end of the tail

  explicit CaudalForm(const Vertebra& v) : L(v.length), H(v.height), W(v.width) {
    canal = 0.09 * H;
    roof = std::min(v.canal.z() + canal + 0.09 * H, v.spineTop.z());
    process = std::max(0.0, (v.left.diapophysis.y() - 0.56 * W) / W);
    arched = v.spineTop.z() > 0.74 * H;
  }
};

/// The last bones: spools that thicken at both ends, with no more than a hint of an arch.
Shape rod(const Vertebra& v) {
  const Shape spool = centrum(v, 0.72, 0.0);
  const double rise = v.spineTop.z() - 0.46 * v.height;
  if (rise < 0.10 * v.height) return spool;
  const Shape ridge = tube({{v.at(-0.30, 0, 0.30), {0.08 * v.height, 0.05 * v.height}},
                            {v.at(-0.05, 0, 0.36) + Point(0, 0, 0.4 * rise), {0.12 * v.height, 0.12 * v.height}},
                            {v.at(0.30, 0, 0.30), {0.08 * v.height, 0.05 * v.height}}},
                           Point::UnitZ());
  return smoothUnion(spool, ridge, 0.15 * v.height);
}

/// Arch set towards the front half.
Shape arch(const CaudalForm& f) {
  return loft(frameAlong(Point(0.03 * f.L, 0, 0.22 * f.H), Point(0.03 * f.L, 0, 1), Point::UnitX()),
              {{0, 0.24 * f.W, 0.36 * f.L, 0, 0, 0.4},
               {0.3 * f.H, 0.20 * f.W, 0.30 * f.L, 0, 0, 0.4},
               {f.roof - 0.22 * f.H, 0.13 * f.W, 0.27 * f.L, 0, -0.02 * f.L, 0.2}},
              0.05 * f.H);
}

/// Blade that leans back, broad seen from the side, its summit swollen where the spine is tall.
Shape spine(const Vertebra& v, const CaudalForm& f) {
  const double tall = std::clamp((v.spineTop.z() - f.roof) / f.H, 0.0, 1.2) / 1.2;
  const double top = v.spineTop.z(), x = v.spineTop.x(), low = f.roof - 0.12 * f.H;
  const double front = std::lerp(0.02, 0.19, tall) * f.L, back = std::lerp(0.34, 0.23, tall) * f.L;
  const Shape blade = web({{0.27 * f.L, 0, low},
                           {0.20 * f.L, 0, low + 0.25 * (top - low)},
                           {x + front + 0.02 * f.L, 0, low + 0.70 * (top - low)},
                           {x + 0.9 * front, 0, top - 0.02 * f.H},
                           {x - 0.9 * back, 0, top - 0.05 * f.H},
                           {x - back, 0, low + 0.72 * (top - low)},
                           {0.5 * x - back - 0.02 * f.L, 0, low + 0.35 * (top - low)},
                           {-0.34 * f.L, 0, low}},
                          std::lerp(0.12, 0.16, tall) * f.H, 0.09 * f.H);
  const double swell = std::lerp(0.05, 0.10, tall) * f.H;
  const Shape summit = tube({{{x + 0.65 * front, 0, top - 0.07 * f.H}, {0.8 * swell, 0.055 * f.H}},
                             {{x - 0.1 * f.L, 0, top - 0.075 * f.H}, {swell, 0.07 * f.H}},
                             {{x - 0.75 * back, 0, top - 0.10 * f.H}, {0.75 * swell, 0.055 * f.H}}},
                            Point::UnitY());
  const Shape flank =
      tube({{{-0.02 * f.L, 0, low}, {0.15 * f.H, 0.13 * f.L}},
            {{0.5 * x - 0.03 * f.L, 0, 0.55 * low + 0.45 * top}, {std::lerp(0.05, 0.085, tall) * f.H, 0.10 * f.L}},
            {{x - 0.06 * f.L, 0, top - 0.14 * f.H}, {0.9 * swell, 0.10 * f.L}}},
           Point::UnitY());
  return smoothUnion({blade, summit, flank}, 0.12 * f.H);
}

Shape prezyg(const CaudalForm& f, const Facet& facet) {
  const double depth = padDepth(facet);
  const Point end = under(facet, 0.6 * depth);
  const Shape ramus =
      tube({{Point(0.10 * f.L, 0.12 * f.W, f.roof - 0.12 * f.H), {0.14 * f.H, 0.07 * f.H}},
            {0.5 * (Point(0.14 * f.L, 0.13 * f.W, f.roof - 0.10 * f.H) + end), {0.10 * f.H, 0.06 * f.H}},
            {end + 0.25 * facet.length() * facet.slide, {0.46 * facet.width(), 0.8 * depth}}},
           Point::UnitZ());
  return ramus;
}

/// The hind facets look outward from the sides of the spine's foot.
Shape postzyg(const CaudalForm& f, const Facet& facet) {
  const double depth = padDepth(facet);
  const Point end = under(facet, 0.75 * depth);
  const Shape ramus = tube({{Point(-0.12 * f.L, 0.04 * f.W, f.roof + 0.02 * f.H), {0.14 * f.H, 0.06 * f.H}},
                            {end, {0.55 * facet.width(), 0.8 * depth}}},
                           Point::UnitZ());
  return ramus;
}

/// A tall fan at the root of the tail, a spike behind it, nothing farther back.
Shape transverseProcess(const Vertebra& v, const CaudalForm& f, const VertebraSide& side) {
  const Point tip = side.diapophysis;
  const double fan = std::clamp((8.5 - v.number) / 4.0, 0.0, 1.0) * std::clamp(2.5 * f.process, 0.0, 1.0);
  const Point root(0.02 * f.L, 0.36 * f.W, 0.14 * f.H);
  const Shape spike = tube({{root, {0.20 * f.L, 0.13 * f.H}},
                            {0.5 * (root + tip), {0.13 * f.L, 0.075 * f.H}},
                            {tip, {0.09 * f.L, 0.045 * f.H}}},
                           Point::UnitX());
  if (fan <= 0) return spike;
  const double tall = 0.50 * f.H * fan;
  const Shape wing = web(
      {Point(0.06 * f.L, 0.16 * f.W, 0.34 * f.H + tall), Point(0.03 * f.L, 0.40 * f.W, 0.30 * f.H + 0.80 * tall),
       0.35 * root + 0.65 * tip + Point(0, 0, 0.08 * f.H + 0.50 * tall), tip + Point(0, 0, 0.02 * f.H + 0.16 * tall),
       tip - Point(0, 0, 0.08 * f.H), 0.5 * (root + tip) - Point(0, 0, 0.20 * f.H),
       Point(0.02 * f.L, 0.34 * f.W, -0.16 * f.H), Point(0.02 * f.L, 0.20 * f.W, 0.1 * f.H)},
      0.30 * f.L, 0.12 * f.L);
  return smoothUnion(spike, wing, 0.08 * f.H);
}

/// Low knobs under the hind rim that carry the chevron.
Shape chevronSeat(const CaudalForm& f) {
  const Point seat(-0.45 * f.L, 0.20 * f.W, -0.42 * f.H);
  return ellipsoid(seat, Point(0.10 * f.L, 0.09 * f.W, 0.09 * f.H));
}

/// Both faces are dished; the front one less.
Shape dishFront(const Shape& bone, const Vertebra& v) {
  if (!v.condyle.flat()) return bone;
  const double deep = 0.045 * v.height, rim = 0.36 * v.height, ball = (rim * rim + deep * deep) / (2 * deep);
  const BallPart dish{v.cranialRim + Point(ball - deep, 0, 0), ball, v.width / v.height};
  return smoothCut(bone, dish.solid(), 0.06 * v.height);
}

}  // namespace

Shape caudalShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  const Vertebra v = describeVertebra(specimen, bone);
  const CaudalForm f(v);
  if (!f.arched) return dishFront(hollowCotyle(rod(v), v), v);
  const double stout = std::clamp(f.H / f.L, 0.6, 1.4);
  Shape out = smoothUnion({centrum(v, 0.66 + 0.10 * stout, 0.03), arch(f)}, 0.14 * f.H);
  const Shape processes = bothSides(
      v,
      [&](const VertebraSide& side) {
        std::vector<Shape> parts{chevronSeat(f)};
        if (f.process > 0) parts.push_back(transverseProcess(v, f, side));
        if (side.prezyg) parts.push_back(prezyg(f, *side.prezyg));
        if (side.postzyg) parts.push_back(postzyg(f, *side.postzyg));
        return smoothUnion(parts, 0.07 * f.H);
      },
      0.03 * f.H);
  out = smoothUnion({out, processes, spine(v, f)}, 0.10 * f.H);
  out = smoothCut(out, canalTool(v, f.canal), 0.03 * f.H);
  return layFacets(dishFront(hollowCotyle(out, v), v), v, kHalfFacet);
}

}  // namespace zyga::solid
