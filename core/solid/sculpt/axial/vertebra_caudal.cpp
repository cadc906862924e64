#include <algorithm>
#include <cmath>

#include "core/anatomy/characters.h"
#include "core/solid/sculpt/axial/axial.h"
#include "core/solid/sculpt/axial/vertebra.h"

namespace zyga::solid {

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

/// A compressed blade that leans back, its front and hind edges drawn out to laminae, with a low ridge up each flank;
/// its top swells to `tops` where the spine is tall.
Shape spine(const Vertebra& v, const CaudalForm& f, double tops) {
  const double tall = std::clamp((v.spineTop.z() - f.roof) / f.H, 0.0, 1.2) / 1.2;
  const double top = v.spineTop.z(), x = v.spineTop.x(), low = f.roof - 0.12 * f.H;
  const double front = std::lerp(0.10, 0.22, tall) * f.L, back = std::lerp(0.30, 0.24, tall) * f.L;
  // The axis of the spine rises from the middle of the arch and leans back.
  const auto on = [&](double share, double dx) {
    return Point(std::lerp(-0.04 * f.L, x, share) + dx, 0, std::lerp(low, top, share));
  };
  const Shape blade = web({on(0, 0.32 * f.L), on(0.22, 0.24 * f.L), on(0.6, 0.9 * front), on(0.9, front),
                           on(1, 0.6 * front) - Point(0, 0, 0.02 * f.H), on(1, -0.6 * back) - Point(0, 0, 0.04 * f.H),
                           on(0.9, -back), on(0.6, -0.95 * back), on(0.22, -0.28 * f.L), on(0, -0.34 * f.L)},
                          std::lerp(0.10, 0.13, tall) * f.H, 0.055 * f.H);
  const double swell = std::lerp(0.05, std::max(tops, 0.06), tall) * f.H;
  const Shape summit = tube({{on(0.93, 0.75 * front), {0.55 * swell, 0.05 * f.H}},
                             {on(0.93, 0), {swell, 0.065 * f.H}},
                             {on(0.92, -0.75 * back), {0.55 * swell, 0.05 * f.H}}},
                            Point::UnitY());
  const Shape flank = tube({{on(0, 0), {0.16 * f.H, 0.12 * f.L}},
                            {on(0.3, 0), {std::lerp(0.05, 0.085, tall) * f.H, 0.07 * f.L}},
                            {on(0.65, 0), {std::lerp(0.04, 0.075, tall) * f.H, 0.06 * f.L}},
                            {on(0.93, -0.02 * f.L), {0.9 * swell, 0.08 * f.L}}},
                           Point::UnitY());
  return smoothUnion({blade, summit, flank}, 0.07 * f.H);
}

/// Sheets from the edges of the spine down to the zygapophyses; in front they end on the root of the ramus, where no
/// facet slides.
Shape spineLaminae(const Vertebra& v, const CaudalForm& f, const VertebraSide& side) {
  std::vector<Shape> parts;
  const double rise = v.spineTop.z() - f.roof;
  const auto lamina = [&](const Point& end, double sense) {
    const Point high(0.55 * v.spineTop.x() + sense * 0.15 * f.L, 0.02 * f.H, f.roof + 0.55 * rise);
    parts.push_back(
        tube({{end, {0.06 * f.H, 0.035 * f.H}},
              {0.55 * end + 0.45 * high - Point(sense * 0.04 * f.L, 0, 0.02 * f.H), {0.06 * f.H, 0.028 * f.H}},
              {high, {0.05 * f.H, 0.025 * f.H}}},
             Point::UnitX()));
  };
  if (rise <= 0.6 * f.H) return {};
  if (side.prezyg) lamina(Point(0.17 * f.L, 0.13 * f.W, f.roof - 0.08 * f.H), 1);
  if (side.postzyg)
    lamina(under(*side.postzyg, 0.8 * padDepth(*side.postzyg)) + 0.3 * side.postzyg->length() * side.postzyg->slide,
           -1);
  return smoothUnion(parts, 0.04 * f.H);
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

/// A wing at the root of the tail, `wing` from 1 (tall, drawn up to the arch) to 0; a flattened spike behind it,
/// nothing farther back.
Shape transverseProcess(const CaudalForm& f, const VertebraSide& side, double wing) {
  const Point tip = side.diapophysis;
  const Point root(0.02 * f.L, 0.36 * f.W, 0.14 * f.H);
  const Shape spike = tube({{root, {0.22 * f.L, 0.11 * f.H}},
                            {0.5 * (root + tip), {0.14 * f.L, 0.06 * f.H}},
                            {tip, {0.10 * f.L, 0.04 * f.H}}},
                           Point::UnitX());
  if (wing <= 0) return spike;
  const double tall = 0.62 * f.H * wing;
  const Shape fan = web(
      {Point(0.05 * f.L, 0.14 * f.W, 0.40 * f.H + tall), Point(0.02 * f.L, 0.42 * f.W, 0.36 * f.H + 0.86 * tall),
       0.35 * root + 0.65 * tip + Point(0, 0, 0.14 * f.H + 0.62 * tall), tip + Point(0, 0, 0.04 * f.H + 0.22 * tall),
       tip - Point(0, 0, 0.08 * f.H), 0.5 * (root + tip) - Point(0, 0, 0.18 * f.H),
       Point(0.02 * f.L, 0.36 * f.W, -0.18 * f.H), Point(0.02 * f.L, 0.20 * f.W, 0.1 * f.H)},
      0.20 * f.L, 0.08 * f.L);
  // Ridges along its upper and lower borders.
  const Shape border = tube({{Point(0.05 * f.L, 0.20 * f.W, 0.36 * f.H + tall), {0.10 * f.L, 0.05 * f.H}},
                             {0.5 * (root + tip) + Point(0, 0, 0.20 * f.H + 0.62 * tall), {0.085 * f.L, 0.045 * f.H}},
                             {tip + Point(0, -0.02 * f.H, 0.03 * f.H + 0.18 * tall), {0.11 * f.L, 0.05 * f.H}}},
                            Point::UnitX());
  return smoothUnion({spike, fan, border}, 0.07 * f.H);
}

/// Lens-shaped hollow in the side of the centrum, under the transverse process.
Shape lateralHollow(const Vertebra& v, const CaudalForm& f) {
  const Span span = hollowSpan(v, 0, 0.62 * f.L);
  return ellipsoid(Point(span.middle(), 0.50 * f.W, -0.08 * f.H), Point(span.half(), 0.19 * f.W, 0.17 * f.H));
}

/// Low knobs under the hind rim that carry the chevron.
Shape chevronSeat(const CaudalForm& f, bool underBall) {
  const Point seat((underBall ? -0.40 : -0.45) * f.L, 0.20 * f.W, -0.42 * f.H);
  return ellipsoid(seat, Point(0.10 * f.L, 0.09 * f.W, 0.09 * f.H));
}

/// Both faces are dished where they are flat; the one that could carry a ball less.
Shape dishOther(const Shape& bone, const Vertebra& v) {
  if (!v.condyle.flat()) return bone;
  const double deep = 0.045 * v.height, rim = 0.36 * v.height, ball = (rim * rim + deep * deep) / (2 * deep);
  const Point out(ball - deep, 0, 0);
  const BallPart dish{v.ballBehind ? Point(v.caudalRim - out) : Point(v.cranialRim + out), ball, v.width / v.height};
  return smoothCut(bone, dish.solid(), 0.06 * v.height);
}

}  // namespace

Shape caudalShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  const Vertebra v = describeVertebra(specimen, bone);
  const CaudalForm f(v);
  if (!f.arched) return dishOther(hollowCotyle(rod(v), v), v);
  const anatomy::ColumnCharacters& kind = anatomy::charactersOf(specimen.plan).column;
  const double share = (v.number - 1.0) / std::max(1, specimen.counts.caudal - 1);
  // The last winged process is half a wing, and half as many bones on there are spikes.
  const double wing =
      std::clamp(1.5 - share / std::max(kind.caudalWings, 1e-6), 0.0, 1.0) * std::clamp(2.5 * f.process, 0.0, 1.0);
  const double stout = std::clamp(f.H / f.L, 0.6, 1.4);
  Shape out = smoothUnion({centrum(v, 0.66 + 0.10 * stout, 0.03), arch(f)}, 0.14 * f.H);
  if (share < kind.caudalHollows) out = smoothCut(out, symmetric(lateralHollow(v, f)), 0.05 * f.H);
  const Shape processes = bothSides(
      v,
      [&](const VertebraSide& side) {
        std::vector<Shape> parts{chevronSeat(f, v.ballBehind && !v.condyle.flat())};
        if (f.process > 0) parts.push_back(transverseProcess(f, side, wing));
        parts.push_back(spineLaminae(v, f, side));
        if (side.prezyg) parts.push_back(prezyg(f, *side.prezyg));
        if (side.postzyg) parts.push_back(postzyg(f, *side.postzyg));
        return smoothUnion(parts, 0.07 * f.H);
      },
      0.03 * f.H);
  out = smoothUnion({out, processes, spine(v, f, kind.caudalTops)}, 0.08 * f.H);
  out = smoothCut(out, canalTool(v, f.canal), 0.03 * f.H);
  return layFacets(dishOther(hollowCotyle(out, v), v), v, kHalfFacet);
}

}  // namespace zyga::solid
