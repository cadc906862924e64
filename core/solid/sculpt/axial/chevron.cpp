#include <algorithm>

#include "core/solid/sculpt/axial/axial.h"

namespace zyga::solid {

using anatomy::Measure;

namespace {

/// Half the distance between the two heads: they sit under the rim of the vertebra that carries the chevron.
double halfSpread(const anatomy::Specimen& specimen, anatomy::BoneIndex bone, double length) {
  const auto joint = specimen.jointAbove(bone);
  if (!joint) return 0.18 * length;
  const anatomy::Bone& carrier = specimen[specimen[*joint].proximal];
  return 0.21 * carrier.measures.valueOr(Measure::CotyleWidth, 0.8 * length);
}

}  // namespace

/// Y from in front: two arms that meet under the canal, then a blade flattened from side to side, sloping back.
Shape chevronShape(const anatomy::Specimen& specimen, anatomy::BoneIndex index) {
  const anatomy::Bone& bone = specimen[index];
  const Point tip = bone.landmark("tip");
  const double length = tip.norm(), apart = halfSpread(specimen, index, length);
  const double thick = std::max(0.045 * length, 0.16 * apart);
  const Point fork = 0.40 * tip + Point(0.02 * length, 0, 0);
  const Shape arm = tube({{Point(0.01 * length, apart, -0.2 * thick), {1.75 * thick, 1.05 * thick}},
                          {Point(0, 0.93 * apart, 0) + 0.10 * tip, {1.45 * thick, 0.9 * thick}},
                          {Point(0, 0.50 * apart, 0) + 0.28 * tip, {1.3 * thick, 0.8 * thick}},
                          {Point(0, 0.05 * thick, 0) + fork, {1.5 * thick, 0.75 * thick}}},
                         Point::UnitX());
  const Shape bridge = tube({{Point(0.01 * length, apart, -0.4 * thick), {1.1 * thick, 0.55 * thick}},
                             {Point(0.01 * length, 0, -0.9 * thick), {0.9 * thick, 0.5 * thick}}},
                            Point::UnitX());
  const Shape blade = tube({{fork, {1.5 * thick, 0.85 * thick}},
                            {0.68 * tip + Point(0.01 * length, 0, 0), {1.75 * thick, 0.62 * thick}},
                            {0.92 * tip, {1.9 * thick, 0.6 * thick}},
                            {tip - 0.02 * length * tip.normalized(), {1.3 * thick, 0.5 * thick}}},
                           Point::UnitX());
  const Shape whole = smoothUnion({symmetric(smoothUnion(arm, bridge, 1.2 * thick), 0.8 * thick), blade}, 1.0 * thick);
  // The heads end flat against the vertebrae: one face forward and up, one back and up.
  const Point up = Point(0.35, 0, 1).normalized(), back = Point(-0.55, 0, 1).normalized();
  const Shape faces = intersect(halfSpace(0.45 * thick * up, up), halfSpace(0.45 * thick * back, back), 0.3 * thick);
  return intersect(whole, faces, 0.4 * thick);
}

}  // namespace zyga::solid
