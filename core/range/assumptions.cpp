#include "core/range/assumptions.h"

#include "core/range/presets.h"

namespace zyga::range {
double Cartilage::thickness(const anatomy::Joint& joint) const {
  // Joints without centra (jaw, limbs) have no length to take a share of, and no disc between faces.
  if (joint.centrumLength <= 0 || joint.kind == anatomy::JointKind::Fixed) return 0;
  return in == In::Millimetres ? amount * 1e-3 : amount * 1e-2 * joint.centrumLength;
}

Cartilage Assumptions::cartilageOf(anatomy::Region region) const {
  switch (region) {
    case anatomy::Region::Skull:
    case anatomy::Region::Cervical:
      return neck;
    case anatomy::Region::Dorsal:
    case anatomy::Region::Sacral:
      return trunk;
    case anatomy::Region::Caudal:
      return tail;
    default:
      return {};
  }
}

namespace {

using Age = CartilagePreset::Age;

constexpr reason::Term kCartilageSource{"source.taylor-wedel-2013"};
constexpr reason::Term kSecondHand{"source.taylor-wedel-2013-second-hand"};
constexpr reason::Term kRule{"source.stevens-parrish-1999"};
constexpr reason::Term kLiving{"source.kambic-2017"};
constexpr reason::Term kNone{"source.program-default"};

}  // namespace

const std::array<CartilagePreset, 9> kCartilagePresets{
    {{{"cartilage.rhea"}, 2.59, kCartilageSource, Age::Grown},
     {{"cartilage.sauroposeidon"}, kGrownCartilage, kCartilageSource, Age::Grown},
     {{"cartilage.turkey"}, 4.56, kCartilageSource, Age::Grown},
     {{"cartilage.ostrich"}, 6.3, kSecondHand, Age::Grown},
     {{"cartilage.horse"}, 6.9, kSecondHand, Age::Grown},
     {{"cartilage.alligator"}, 14.9, kSecondHand, Age::NotTold},
     {{"cartilage.juvenile-apatosaurus-low"}, kYoungCartilage, kCartilageSource, Age::Young},
     {{"cartilage.juvenile-apatosaurus-high"}, 20, kCartilageSource, Age::Young},
     {{"cartilage.juvenile-giraffe"}, 24, kCartilageSource, Age::Young}}};

const std::array<OverlapPreset, 3> kOverlapPresets{{{0.50, {"overlap.published-rule"}, kRule},
                                                    {0.25, {"overlap.half-the-rule"}, kNone},
                                                    {0.00, {"overlap.facets-all-but-part"}, kLiving}}};

}  // namespace zyga::range
