#include "core/study/mass/densities.h"

namespace zyga::study {

std::string_view title(BodyPart part) {
  constexpr std::array<std::string_view, kBodyParts> kTitles{"head", "neck",       "trunk",
                                                             "tail", "fore limbs", "hind limbs"};
  return kTitles.at(static_cast<std::size_t>(part));
}

}  // namespace zyga::study
