#include "core/solid/sculpt/axial/axial.h"
#include "core/solid/sculpt/axial/parts.h"

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

}  // namespace zyga::solid
