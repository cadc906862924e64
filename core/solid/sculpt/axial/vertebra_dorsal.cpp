#include <algorithm>
#include <cmath>

#include "core/anatomy/characters.h"
#include "core/solid/sculpt/axial/axial.h"
#include "core/solid/sculpt/axial/vertebra.h"

namespace zyga::solid {

using anatomy::Facet;

namespace {

/// Places that several parts of a dorsal share; left side, bone's frame.
struct DorsalForm {
  double L, H, W;
  double sheet;  ///< full thickness of laminae
  double canal;  ///< radius
  double roof;   ///< z of the arch's roof
  double top;    ///< z of the spine's summit
  double lean;   ///< x of the spine's summit
  double split;  ///< depth of the cleft, 0 for a whole spine
  double notch;  ///< depth of a shallow notch in a whole spine

  explicit DorsalForm(const Vertebra& v) : L(v.length), H(v.height), W(v.width) {
    sheet = 0.052 * H;
    canal = 0.10 * H;
    roof = v.canal.z() + canal + 0.12 * H;
    top = v.spineTop.z();
    lean = v.spineTop.x();
    split = v.split() ? v.fork : 0;
    notch = v.split() ? 0 : v.fork;
  }
  /// Of a split spine: the share of its height where it parts, and how far its halves lie off the mid-plane at the top.
  double foot() const { return std::clamp(1 - split / (top - roof), 0.05, 0.95); }
  double apart() const { return std::min(0.45 * split, 0.32 * H); }
  /// A point on the spine's axis, `share` of the way from the roof to the summit.
  Point onSpine(double share) const { return {-0.06 * L + (lean + 0.06 * L) * share, 0, roof + (top - roof) * share}; }
};

/// Tall pedicels beside the canal, closed above.
Shape arch(const DorsalForm& f) {
  const double half = 0.31 * f.W;
  return loft(frameAlong(Point(0, 0, 0.22 * f.H), Point(0, 0, 1), Point::UnitX()),
              {{0, half, 0.43 * f.L, 0, 0.0, 0.4},
               {0.26 * f.H, 0.82 * half, 0.37 * f.L, 0, 0.0, 0.4},
               {0.55 * f.H, 0.72 * half, 0.30 * f.L, 0, -0.03 * f.L, 0.35},
               {f.roof - 0.16 * f.H, 0.62 * half, 0.26 * f.L, 0, -0.06 * f.L, 0.2}},
              0.05 * f.H);
}

/// Cross-shaped core with ridges in front and behind, and a broad summit whose sides stand out as small flanges.
Shape wholeSpine(const DorsalForm& f) {
  const Point a = f.onSpine(-0.10), b = f.onSpine(0.45), c = f.onSpine(0.80), d = f.onSpine(0.96);
  const Shape core = tube({{a, {0.12 * f.H, 0.20 * f.L}},
                           {b, {0.11 * f.H, 0.16 * f.L}},
                           {c, {0.20 * f.H, 0.14 * f.L}},
                           {d, {0.165 * f.H, 0.11 * f.L}}},
                          Point::UnitY());
  const Shape front = web({f.onSpine(0.05) + Point(0.22 * f.L, 0, 0), f.onSpine(0.5) + Point(0.22 * f.L, 0, 0),
                           f.onSpine(0.93) + Point(0.18 * f.L, 0, 0), f.onSpine(0.9), f.onSpine(0.1)},
                          1.1 * f.sheet, 0.7 * f.sheet);
  const Shape back = web({f.onSpine(0.10) - Point(0.26 * f.L, 0, 0), f.onSpine(0.5) - Point(0.25 * f.L, 0, 0),
                          f.onSpine(0.93) - Point(0.19 * f.L, 0, 0), f.onSpine(0.9), f.onSpine(0.1)},
                         1.1 * f.sheet, 0.7 * f.sheet);
  const Point flange = f.onSpine(0.83);
  const Shape flanges = symmetric(tube({{flange, {0.13 * f.L, 0.07 * f.H}},
                                        {flange + Point(0, 0.19 * f.H, 0.0), {0.10 * f.L, 0.05 * f.H}},
                                        {flange + Point(0, 0.28 * f.H, -0.06 * f.H), {0.06 * f.L, 0.035 * f.H}}},
                                       Point::UnitX()),
                                  0.02 * f.H);
  const Shape whole = smoothUnion({core, front, back, flanges}, 0.10 * f.H);
  return f.notch > 0.02 * f.H ? smoothCut(whole, bluntNotch(f.onSpine(1), f.notch, f.L, f.H), 0.03 * f.H) : whole;
}

/// A spine in two: a plate each side that leaves a trough between.
Shape splitSpine(const DorsalForm& f) {
  const double foot = f.foot(), apart = f.apart();
  const Shape base =
      tube({{f.onSpine(-0.1), {0.13 * f.H, 0.17 * f.L}}, {f.onSpine(foot), {0.13 * f.H, 0.12 * f.L}}}, Point::UnitY());
  const Shape half = tube({{f.onSpine(0.5 * foot) + Point(0, 0.05 * f.H, 0), {0.14 * f.L, 0.06 * f.H}},
                           {f.onSpine(0.5 * (1 + foot)) + Point(0, 0.65 * apart, 0), {0.13 * f.L, 0.05 * f.H}},
                           {f.onSpine(0.96) + Point(0, apart, 0), {0.11 * f.L, 0.06 * f.H}}},
                          Point::UnitX());
  return smoothUnion(base, symmetric(half, 0.04 * f.H), 0.10 * f.H);
}

/// Where the laminae of one side leave the spine.
Point spineSide(const DorsalForm& f, double share) {
  const Point p = f.onSpine(share);
  if (f.split <= 0) return p + Point(0, 0.07 * f.H, 0);
  const double foot = f.foot(), apart = f.apart();
  return p + Point(0, 0.05 * f.H + apart * std::clamp((share - 0.5 * foot) / (1 - 0.5 * foot), 0.0, 1.0), 0);
}

Shape prezyg(const DorsalForm& f, const Facet& facet) {
  const double depth = padDepth(facet);
  const Point end = under(facet, 0.5 * depth);
  const Point root(0.12 * f.L, 0.16 * f.W, f.roof - 0.12 * f.H);
  const Shape ramus = tube({{root, {0.15 * f.H, 0.09 * f.H}},
                            {0.5 * (root + end) - Point(0, 0, 0.03 * f.H), {0.12 * f.H, 0.08 * f.H}},
                            {end, {0.36 * facet.width(), 0.7 * depth}}},
                           Point::UnitZ());
  const Shape toCentrum = tube({{under(facet, 0.7 * depth), {0.10 * f.L, 0.5 * f.sheet}},
                                {Point(0.30 * f.L, 0.24 * f.W, 0.70 * f.H), {0.08 * f.L, 0.45 * f.sheet}},
                                {Point(0.34 * f.L, 0.28 * f.W, 0.36 * f.H), {0.08 * f.L, 0.6 * f.sheet}}},
                               Point::UnitX());
  const Point top = spineSide(f, 0.72) + Point(0.09 * f.L, 0, 0);
  const Point low = end - 0.55 * facet.length() * facet.slide + Point(0, 0, 0.3 * depth);
  const Shape toSpine = web({low, 0.5 * (low + top) + Point(-0.03 * f.L, 0.0, -0.08 * f.H), top, spineSide(f, 0.35),
                             Point(-0.02 * f.L, 0.06 * f.H, f.roof - 0.05 * f.H)},
                            0.9 * f.sheet, 0.7 * f.sheet);
  return smoothUnion({ramus, toCentrum, toSpine}, 0.08 * f.H);
}

Shape postzyg(const DorsalForm& f, const Facet& facet) {
  const double depth = padDepth(facet);
  const Point end = under(facet, 0.5 * depth);
  const Point root = f.onSpine(0.05) + Point(-0.08 * f.L, 0.08 * f.W, 0);
  const Shape ramus =
      tube({{root, {0.15 * f.H, 0.09 * f.H}}, {end, {0.36 * facet.width(), 0.7 * depth}}}, Point::UnitZ());
  const Point top = spineSide(f, 0.78) - Point(0.09 * f.L, 0, 0);
  const Point low = end + Point(0, 0, 0.5 * depth) - 0.15 * facet.length() * facet.slide;
  const Shape toSpine = web({low, 0.5 * (low + top) + Point(0.03 * f.L, 0.02 * f.H, -0.05 * f.H), top,
                             spineSide(f, 0.3), Point(-0.1 * f.L, 0.08 * f.H, f.roof)},
                            0.9 * f.sheet, 0.7 * f.sheet);
  return smoothUnion({ramus, toSpine}, 0.08 * f.H);
}

/// The facet for the rib's tuberculum looks out and down, flat.
Shape ribFacet(const Point& at) { return halfSpace(at, Point(0, 0.87, -0.5)); }

/// The process itself: a plate that narrows outwards, level, over a sheet that stands under it down to the centrum's
/// hind half, so that its section is a T.
Shape processPlate(const DorsalForm& f, const Point& root, const Point& tip) {
  const Point mid = 0.5 * (root + tip) + Point(0, 0, 0.03 * f.H);
  const Shape level = tube({{root, {0.31 * f.L, 0.075 * f.H}},
                            {mid, {0.19 * f.L, 0.045 * f.H}},
                            {0.2 * root + 0.8 * tip, {0.15 * f.L, 0.05 * f.H}},
                            {tip + Point(0, 0.05 * f.H, -0.02 * f.H), {0.13 * f.L, 0.085 * f.H}}},
                           Point::UnitX());
  const Point outer = 0.14 * root + 0.86 * tip, foot(-0.19 * f.L, 0.25 * f.W, 0.36 * f.H);
  const Shape keel = web({outer - Point(0, 0, 0.10 * f.H), outer, root, Point(-0.10 * f.L, 0.16 * f.W, f.roof), foot,
                          0.5 * (outer + foot) - Point(0, 0.05 * f.W, -0.04 * f.H)},
                         1.2 * f.sheet, 0.8 * f.sheet);
  return intersect(smoothUnion(level, keel, 0.09 * f.H), ribFacet(tip), 0.015 * f.H);
}

/// The stalk of the rib's lower joint, its end flat, and the lamina from it up to the process.
Shape parapophysis(const DorsalForm& f, const Point& head, const Point& mid) {
  const Point root(0.6 * head.x(), std::min(0.45 * head.y(), 0.22 * f.W), head.z());
  const Shape stalk = loft(frameAlong(root, head, Point::UnitZ()),
                           {{0, 0.15 * f.L, 0.15 * f.H},
                            {0.6 * (head - root).norm(), 0.11 * f.L, 0.10 * f.H},
                            {(head - root).norm(), 0.10 * f.L, 0.105 * f.H}},
                           0.02 * f.H);
  if ((mid - head).norm() < 0.15 * f.H) return stalk;
  const Point start = head - Point(0, 0.06 * f.H, 0);
  const Shape lamina = tube({{start, {0.07 * f.H, 0.5 * f.sheet}},
                             {0.5 * (mid + start) - Point(0, 0.04 * f.W, 0), {0.06 * f.H, 0.42 * f.sheet}},
                             {mid, {0.08 * f.H, 0.5 * f.sheet}}},
                            Point::UnitX());
  return smoothUnion(stalk, lamina, 0.05 * f.H);
}

/// The wing out to the rib, with its laminae to centrum, spine, facets and the rib's lower joint.
Shape transverseProcess(const DorsalForm& f, const VertebraSide& side) {
  const Point tip = side.diapophysis;
  const Point root(-0.04 * f.L, 0.14 * f.W, f.roof + 0.02 * f.H);
  const Point mid = 0.45 * root + 0.55 * tip + Point(0, 0, 0.02 * f.H);
  std::vector<Shape> parts{processPlate(f, root, tip)};
  if (side.parapophysis != side.diapophysis) parts.push_back(parapophysis(f, side.parapophysis, mid));
  const auto sheet = [&](std::vector<Point> outline) { parts.push_back(web(outline, 0.9 * f.sheet, 0.7 * f.sheet)); };
  const Point outer = 0.22 * root + 0.78 * tip;
  sheet({outer + Point(0, 0, 0.03 * f.H), 0.6 * mid + 0.4 * spineSide(f, 0.55) - Point(0, 0.03 * f.W, 0.05 * f.H),
         spineSide(f, 0.72), spineSide(f, 0.1), root});
  if (side.prezyg)
    sheet({under(*side.prezyg, 0.3 * side.prezyg->length()),
           0.55 * mid + 0.45 * under(*side.prezyg, 0.3 * side.prezyg->length()) - Point(0.04 * f.L, 0, 0),
           outer + Point(0.06 * f.L, 0, 0), root, Point(0.10 * f.L, 0.15 * f.W, f.roof)});
  if (side.postzyg)
    sheet({under(*side.postzyg, 0.3 * side.postzyg->length()),
           0.55 * mid + 0.45 * under(*side.postzyg, 0.3 * side.postzyg->length()) + Point(0.04 * f.L, 0, 0),
           outer - Point(0.06 * f.L, 0, 0), root, Point(-0.14 * f.L, 0.12 * f.W, f.roof)});
  return smoothUnion(parts, 0.09 * f.H);
}

/// Hollow of the side: an eye that ends acute behind, wider within than its opening.
Shape pleurocoel(const Vertebra& v, const DorsalForm& f, double share) {
  const Span span = hollowSpan(v, 0.04 * f.L, share * f.L);
  const double x = span.middle(), half = span.half(), high = std::min(0.6 * half, 0.15 * f.H);
  const auto eye = [&](double y, double deep, double scale) {
    return tube({{Point(x + 0.72 * half, y, 0.15 * f.H), {0.55 * scale * high, deep}},
                 {Point(x + 0.30 * half, y, 0.16 * f.H), {scale * high, deep}},
                 {Point(x - 0.30 * half, y, 0.17 * f.H), {0.62 * scale * high, 0.9 * deep}},
                 {Point(x - half, y, 0.18 * f.H), {0.24 * scale * high, 0.6 * deep}}},
                Point::UnitZ());
  };
  const Shape opening = eye(0.38 * f.W, 0.16 * f.W, 1.0), chamber = eye(0.20 * f.W, 0.12 * f.W, 1.08);
  return cut(smoothUnion(opening, chamber, 0.05 * f.H), cotyleWall(v));
}

}  // namespace

Shape dorsalShape(const anatomy::Specimen& specimen, anatomy::BoneIndex bone) {
  const Vertebra v = describeVertebra(specimen, bone);
  const DorsalForm f(v);
  const double hollow = anatomy::charactersOf(specimen.plan).column.dorsalHollow;
  Shape out = smoothUnion(centrum(v, 0.74, 0.05), arch(f), 0.16 * f.H);
  out = smoothCut(out, symmetric(pleurocoel(v, f, hollow)), 0.05 * f.H);
  const Shape processes = bothSides(
      v,
      [&](const VertebraSide& side) {
        std::vector<Shape> parts{transverseProcess(f, side)};
        if (side.prezyg) parts.push_back(prezyg(f, *side.prezyg));
        if (side.postzyg) parts.push_back(postzyg(f, *side.postzyg));
        return smoothUnion(parts, 0.09 * f.H);
      },
      0.05 * f.H);
  out = smoothUnion({out, processes, f.split > 0 ? splitSpine(f) : wholeSpine(f), hypantrumWalls(v)}, 0.10 * f.H);
  out = smoothUnion(out, hyposphene(v, f.onSpine(0.03)), 0.04 * f.H);
  out = smoothCut(out, canalTool(v, f.canal), 0.04 * f.H);
  return cutHypantrum(freeHyposphene(layFacets(hollowCotyle(out, v), v), v), v);
}

}  // namespace zyga::solid
