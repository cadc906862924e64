#include "core/range/presets.h"

namespace zyga::range {
namespace {

constexpr const char* kCartilageSource = "Taylor & Wedel 2013, PLoS ONE 8(10):e78214";
constexpr const char* kRule = "Cobley, Rayfield & Barrett 2013, PLoS ONE 8(8):e72187";
constexpr const char* kLiving = "Kambic et al. 2017, Front. Zool. 14:37";

}  // namespace

const std::array<CartilagePreset, 6> kCartilagePresets{{{"Rhea", 2.59, kCartilageSource},
                                                        {"Sauroposeidon", 4.5, kCartilageSource},
                                                        {"Turkey", 4.56, kCartilageSource},
                                                        {"Juvenile Apatosaurus, low", 15, kCartilageSource},
                                                        {"Juvenile Apatosaurus, high", 20, kCartilageSource},
                                                        {"Juvenile giraffe", 24, kCartilageSource}}};

const std::array<OverlapPreset, 3> kOverlapPresets{
    {{0.50, "published rule", kRule},
     {0.25, "seen in living animals", kLiving},
     {0.00, "facets may all but part, seen in living animals", kLiving}}};

}  // namespace zyga::range
