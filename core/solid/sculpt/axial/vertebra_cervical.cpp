#include <algorithm>
#include <cmath>

#include "core/solid/sculpt/axial/axial.h"
#include "core/solid/sculpt/axial/vertebra.h"

namespace zyga::solid {

using anatomy::Facet;

namespace {

/// Places that several parts of a cervical share; left side, bone's frame.
struct CervicalForm {
  double L, H, W;
  double sheet;                 ///< full thickness of laminae
  double canal;                 ///< radius
  double roof;                  ///< z of the arch's roof
  double archHalf;              ///< half width of the arch over the canal
  Point spineFront, spineBack;  ///< ends of the summit; off the mid-plane where the spine is split
  double notch;                 ///< depth of a shallow notch in the summit, where a series of split spines begins
  double summit;                ///< half width of the spine's summit
  double foot;                  ///< z where a split spine parts; its summit when it is whole

  explicit CervicalForm(const Vertebra& v) : L(v.length), H(v.height), W(v.width) {
    sheet = std::max(0.03 * L, 0.075 * H);
    canal = 0.09 * H;
    roof = v.canal.z() + canal + 0.10 * H;
    archHalf = std::max(0.17 * W, canal + 0.08 * H);
    notch = v.split() ? 0 : v.fork;
    summit = 0.09 * H + 0.30 * notch;
    const double apart = v.split() ? std::min(0.42 * v.fork, 0.34 * H) : 0;
    foot = v.spineTop.z() - (apart > 0 ? v.fork : 0);
    spineFront = v.spineTop + Point(0.09 * L, apart, -0.05 * H);
    spineBack = v.spineTop + Point(-0.12 * L, apart, -0.03 * H);
  }
};

Shape arch(const CervicalForm& f) {
  const double middle = 0.5 * (f.roof + 0.1 * f.H), half = 0.5 * (f.roof - 0.1 * f.H);
  return loft(Frame(Eigen::Translation3d(0, 0, middle)),
              {{-0.37 * f.L, 0.95 * f.archHalf, 0.94 * half, 0, 0, 0.4},
               {-0.05 * f.L, 0.86 * f.archHalf, half, 0, 0, 0.4},
               {0.35 * f.L, 1.05 * f.archHalf, 0.94 * half, 0, 0, 0.4}},
              std::min(0.07 * f.L, 0.6 * half));
}

/// The spine: a blade in the mid-plane that carries a thickened summit. Its edges run down to the roof of the arch.
Shape spine(const Vertebra& v, const CervicalForm& f) {
  const double low = f.roof - 0.12 * f.H;
  const Shape blade = web({{-0.33 * f.L, 0, low},
                           {-0.27 * f.L, 0, 0.45 * (low + f.spineBack.z()) + 0.05 * f.H},
                           f.spineBack + Point(-0.01 * f.L, 0, 0),
                           f.spineFront,
                           {0.24 * f.L, 0, 0.5 * (low + f.spineFront.z())},
                           {0.31 * f.L, 0, low}},
                          1.3 * f.sheet, 0.8 * f.sheet);
  const Shape top = tube({{f.spineBack - Point(0, 0, 0.03 * f.H), {0.8 * f.summit, 0.055 * f.H}},
                          {v.spineTop - Point(0, 0, 0.05 * f.H), {f.summit, 0.06 * f.H}},
                          {f.spineFront - Point(0, 0, 0.04 * f.H), {0.7 * f.summit, 0.05 * f.H}}},
                         Point::UnitY());
  const Shape whole = smoothUnion(blade, top, 0.12 * f.H);
  return f.notch > 0 ? smoothCut(whole, bluntNotch(v.spineTop, f.notch, f.L, f.H), 0.03 * f.H) : whole;
}

/// A spine in two: a low blade, and over it a plate each side that leaves a trough between.
Shape splitSpine(const CervicalForm& f) {
  const double low = f.roof - 0.12 * f.H, foot = std::max(f.foot, low + 0.08 * f.H);
  const Shape blade = web({{-0.33 * f.L, 0, low},
                           {-0.24 * f.L, 0, 0.5 * (low + foot)},
                           {-0.14 * f.L, 0, foot},
                           {0.14 * f.L, 0, foot},
                           {0.24 * f.L, 0, 0.5 * (low + foot)},
                           {0.31 * f.L, 0, low}},
                          1.5 * f.sheet, 0.9 * f.sheet);
  const Point middle = 0.5 * (f.spineFront + f.spineBack);
  const Shape half =
      tube({{Point(0.02 * f.L, 0.02 * f.H, foot - 0.08 * f.H), {0.17 * f.L, 0.9 * f.sheet}},
            {Point(0.5 * middle.x(), 0.45 * middle.y(), 0.55 * foot + 0.45 * middle.z()), {0.14 * f.L, 0.75 * f.sheet}},
            {middle - Point(0, 0, 0.03 * f.H), {0.10 * f.L, 0.9 * f.sheet}}},
           Point::UnitX());
  return smoothUnion(blade, symmetric(half, 0.05 * f.H), 0.10 * f.H);
}

/// Stalk of the front facet and the laminae that hold it to centrum and spine.
Shape prezyg(const CervicalForm& f, const Facet& facet) {
  const double depth = padDepth(facet);
  const Point end = under(facet, 0.55 * depth);
  const Point root(0.20 * f.L, 0.75 * f.archHalf, 0.86 * f.roof);
  const Shape ramus =
      tube({{root, {0.11 * f.L, 0.8 * f.sheet}},
            {0.45 * root + 0.55 * end - Point(0.02 * f.L, 0, 0.05 * f.H), {0.075 * f.L, 0.85 * f.sheet}},
            {end - 0.1 * facet.length() * facet.slide, {0.40 * facet.width(), 0.75 * depth}}},
           Point(0, 0.35, 1));
  const Point knee(0.41 * f.L, 0.26 * f.W, 0.36 * f.H);
  const Shape fromCentrum =
      tube({{knee, {0.055 * f.L, 0.5 * f.sheet}},
            {0.5 * (knee + end) + Point(-0.03 * f.L, -0.02 * f.W, 0), {0.045 * f.L, 0.42 * f.sheet}},
            {end - Point(0.02 * f.L, 0, 0.02 * f.H), {0.06 * f.L, 0.5 * f.sheet}}},
           Point::UnitX());
  return smoothUnion({ramus, fromCentrum}, 0.08 * f.H);
}

/// Sheet between the spine's front edge and the front facet's stalk, its free edge hollow.
Shape spineToPrezyg(const CervicalForm& f, const Facet& facet) {
  const Point end = under(facet, 0.1 * facet.length()) - 0.62 * facet.length() * facet.slide;
  const Point top = f.spineFront - Point(0.01 * f.L, 0, 0.05 * f.H);
  const Point root(0.10 * f.L, 0.5 * f.archHalf, f.roof - 0.05 * f.H);
  const Point hollow = 0.5 * (end + top) - Point(0.015 * f.L, 0, 0.10 * f.H);
  return web({end, hollow, top, 0.5 * (top + root), root, 0.55 * end + 0.45 * root - Point(0, 0, 0.06 * f.H)},
             0.8 * f.sheet, 0.7 * f.sheet);
}

Shape postzyg(const CervicalForm& f, const Facet& facet) {
  const double depth = padDepth(facet);
  const Point end = under(facet, 0.6 * depth);
  const Point root(-0.16 * f.L, 0.6 * f.archHalf, f.roof - 0.02 * f.H);
  const Shape ramus = tube({{root, {0.10 * f.L, 0.8 * f.sheet}},
                            {0.5 * (root + end) + Point(0, 0, 0.06 * f.H), {0.075 * f.L, 0.8 * f.sheet}},
                            {end, {0.38 * facet.width(), 0.8 * depth}}},
                           Point(0, -0.4, 1));
  const Point knob = under(facet, 1.1 * depth) - 0.10 * facet.length() * facet.slide;
  const Shape epipophysis = ellipsoid(knob, Point(0.42 * facet.length(), 0.18 * facet.width(), 0.22 * facet.width()),
                                      frameAlong(knob, knob + facet.slide, -facet.normal).linear());
  const Point knee(-0.40 * f.L, 0.24 * f.W, 0.40 * f.H);
  const Shape fromCentrum = tube({{knee, {0.05 * f.L, 0.45 * f.sheet}},
                                  {0.5 * (knee + end) + Point(0.04 * f.L, -0.03 * f.W, 0), {0.04 * f.L, 0.4 * f.sheet}},
                                  {end + 0.25 * facet.length() * facet.slide, {0.05 * f.L, 0.5 * f.sheet}}},
                                 Point::UnitX());
  return smoothUnion({ramus, epipophysis, fromCentrum}, 0.08 * f.H);
}

Shape spineToPostzyg(const CervicalForm& f, const Facet& facet) {
  const Point end = under(facet, 0.32 * facet.length()) + 0.05 * facet.length() * facet.slide;
  const Point top = f.spineBack - Point(-0.01 * f.L, 0, 0.05 * f.H);
  const Point root(-0.06 * f.L, 0.5 * f.archHalf, f.roof - 0.05 * f.H);
  const Point hollow = 0.5 * (end + top) + Point(0.02 * f.L, 0, -0.09 * f.H);
  return web({end, hollow, top, 0.5 * (top + root), root, 0.5 * (end + root) - Point(0, 0, 0.05 * f.H)}, 0.8 * f.sheet,
             0.7 * f.sheet);
}

/// A lamina with a rounded edge: a sheet back to the wall of the arch, and a ridge along its free border.
Shape shelf(const CervicalForm& f, const Point& from, const Point& to, const Point& wallTo, const Point& wallFrom) {
  const Point sag = 0.5 * (from + to) + 0.10 * (0.5 * (wallFrom + wallTo) - 0.5 * (from + to));
  const Shape edge = tube({{from, {0.85 * f.sheet, 0.62 * f.sheet}},
                           {sag, {0.62 * f.sheet, 0.45 * f.sheet}},
                           {to, {0.85 * f.sheet, 0.62 * f.sheet}}},
                          Point::UnitZ());
  const Shape sheet = web({from, sag, to, wallTo, 0.5 * (wallFrom + wallTo), wallFrom}, 0.85 * f.sheet, 0.6 * f.sheet);
  return smoothUnion(edge, sheet, 0.8 * f.sheet);
}

/// The transverse process: a wing from arch and centrum out and down to the rib, and the laminae that run from it to
/// both facets and to both ends of the centrum.
Shape transverseProcess(const CervicalForm& f, const VertebraSide& side) {
  const Point tip = side.diapophysis;
  const Point root(0.06 * f.L, 0.8 * f.archHalf, 0.66 * f.H);
  const Point mid = 0.5 * (root + tip) + Point(0, 0.07 * f.W, 0.10 * f.H);
  const Shape wing = tube({{root, {0.17 * f.L, 0.75 * f.sheet}},
                           {mid, {0.095 * f.L, 0.62 * f.sheet}},
                           {tip, {0.062 * f.L, 0.68 * f.sheet}}},
                          Point::UnitX());
  std::vector<Shape> parts{wing};
  const Point start = 0.75 * mid + 0.25 * tip;
  parts.push_back(shelf(f, start - Point(0.03 * f.L, 0, 0), Point(-0.33 * f.L, 0.33 * f.W, 0.14 * f.H),
                        Point(-0.30 * f.L, 0.16 * f.W, 0.34 * f.H), Point(0.0, 0.8 * f.archHalf, 0.45 * f.H)));
  parts.push_back(shelf(f, start + Point(0.03 * f.L, 0, 0), Point(0.38 * f.L, 0.36 * f.W, 0.10 * f.H),
                        Point(0.36 * f.L, 0.18 * f.W, 0.30 * f.H), Point(0.12 * f.L, 0.8 * f.archHalf, 0.45 * f.H)));
  if (side.prezyg) {
    const Facet& facet = *side.prezyg;
    const Point end = under(facet, 0.20 * facet.length()) - 0.2 * facet.length() * facet.slide +
                      0.30 * facet.width() * facet.across();
    parts.push_back(shelf(f, start + Point(0.02 * f.L, 0, 0.02 * f.H), end,
                          Point(0.27 * f.L, 0.8 * f.archHalf, 0.92 * f.roof), root));
  }
  if (side.postzyg) {
    const Facet& facet = *side.postzyg;
    const Point end = under(facet, 0.26 * facet.length()) + 0.35 * facet.length() * facet.slide;
    parts.push_back(shelf(f, start + Point(-0.02 * f.L, 0, 0.02 * f.H), end,
                          Point(-0.24 * f.L, 0.8 * f.archHalf, 0.95 * f.roof), root));
  }
  return smoothUnion(parts, 0.09 * f.H);
}

/// The rib that has grown onto both joints: a short spur in front, a long thin shaft behind.
Shape cervicalRib(const CervicalForm& f, const VertebraSide& side) {
  const Point head = side.parapophysis;
  const Shape stub =
      tube({{Point(0.26 * f.L, 0.30 * f.W, -0.24 * f.H), {0.085 * f.L, 0.10 * f.H}}, {head, {0.05 * f.L, 0.075 * f.H}}},
           Point::UnitX());
  if (!side.ribTip) return stub;
  const Point root(head.x(), 0.5 * (head.y() + side.diapophysis.y()), head.z() - 0.08 * f.H);
  const Point tip = *side.ribTip;
  const double thick = std::max(0.019 * f.L, 0.05 * f.H), length = root.x() - tip.x();
  const Shape shaft = tube({{root + Point(0.17 * f.L, -0.03 * f.W, -0.02 * f.H), {0.35 * thick, 0.3 * thick}},
                            {root + Point(0.07 * f.L, 0, 0), {1.7 * thick, 0.9 * thick}},
                            {root - Point(0.06 * f.L, 0, 0), {2.0 * thick, 1.0 * thick}},
                            {root - Point(0.22 * length, 0, 0.01 * length), {1.15 * thick, 0.8 * thick}},
                            {0.4 * root + 0.6 * tip + Point(0, 0, -0.01 * length), {0.85 * thick, 0.72 * thick}},
                            {tip, {0.5 * thick, 0.45 * thick}}},
                           Point::UnitZ());
  const Shape neck = tube({{side.diapophysis + Point(0, 0.0, 0.02 * f.H), {0.055 * f.L, 0.6 * f.sheet}},
                           {0.5 * (side.diapophysis + root) + Point(0, 0.03 * f.W, 0), {0.042 * f.L, 0.45 * f.sheet}},
                           {root, {0.06 * f.L, 0.9 * thick}}},
                          Point::UnitX());
  const Shape capitulum = tube({{head, {0.05 * f.L, 0.07 * f.H}}, {root, {0.06 * f.L, 0.9 * thick}}}, Point::UnitX());
  return smoothUnion({stub, capitulum, neck, shaft}, 0.07 * f.H);
}

/// Hollow of the side, in two chambers with an oblique strut between them. It ends where the cotyle's wall begins.
Shape pleurocoel(const Vertebra& v, const CervicalForm& f) {
  const double septum = 0.045 * f.W, deep = 0.26 * f.W;
  const Span span = hollowSpan(v, -0.02 * f.L, 0.68 * f.L);
  const double x = span.middle(), reach = span.half() / 0.34;
  const Shape hollow = ellipsoid(Point(x, septum + deep, 0.02 * f.H), Point(span.half(), deep, 0.20 * f.H));
  const Shape strut = tube({{Point(x - 0.06 * reach, 0.34 * f.W, -0.28 * f.H), {0.04 * reach, 0.14 * f.W}},
                            {Point(x + 0.01 * reach, 0.22 * f.W, 0.0), {0.026 * reach, 0.17 * f.W}},
                            {Point(x + 0.09 * reach, 0.34 * f.W, 0.28 * f.H), {0.04 * reach, 0.14 * f.W}}},
                           Point::UnitX());
  return cut(smoothCut(hollow, strut, 0.05 * f.H), cotyleWall(v));
}

}  // namespace

Shape cervicalShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  const Vertebra v = describeVertebra(specimen, bone);
  const CervicalForm f(v);
  const Shape body = smoothUnion({centrum(v, 0.64, 0.05), arch(f)}, 0.16 * f.H);
  const Shape processes = bothSides(
      v,
      [&](const VertebraSide& side) {
        std::vector<Shape> parts{transverseProcess(f, side), cervicalRib(f, side)};
        if (side.prezyg) parts.push_back(prezyg(f, *side.prezyg)), parts.push_back(spineToPrezyg(f, *side.prezyg));
        if (side.postzyg) parts.push_back(postzyg(f, *side.postzyg)), parts.push_back(spineToPostzyg(f, *side.postzyg));
        return smoothUnion(parts, 0.09 * f.H);
      },
      0.05 * f.H);
  Shape out = smoothCut(body, symmetric(pleurocoel(v, f)), 0.05 * f.H);
  out = smoothUnion({out, processes, f.spineFront.y() > 0 ? splitSpine(f) : spine(v, f)}, 0.12 * f.H);
  out = smoothCut(out, canalTool(v, f.canal), 0.04 * f.H);
  out = hollowCotyle(out, v);
  return layFacets(out, v);
}

}  // namespace zyga::solid
