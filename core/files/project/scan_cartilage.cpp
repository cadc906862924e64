#include "core/files/project/scan_cartilage.h"

#include <algorithm>
#include <cmath>

namespace zyga::files {
namespace {

using anatomy::Region;

constexpr std::array kParts{Region::Cervical, Region::Dorsal, Region::Caudal};

double middleOf(std::vector<double>& values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

}  // namespace

std::vector<ShownCartilage> shownCartilage(const anatomy::Specimen& animal, std::span<const solid::FoundJoint> joints) {
  std::vector<ShownCartilage> shown;
  for (const Region part : kParts) {
    std::vector<double> percents;
    for (const solid::FoundJoint& found : joints) {
      const auto joint = found.found ? animal.findJoint(found.id) : std::nullopt;
      if (!joint || animal[*joint].region != part || animal[*joint].centrumLength <= 0) continue;
      percents.push_back(100 * std::max(0.0, found.disc) / animal[*joint].centrumLength);
    }
    if (percents.empty()) continue;
    const auto [least, most] = std::minmax_element(percents.begin(), percents.end());
    ShownCartilage of{part, 0, *least, *most, static_cast<int>(percents.size())};
    of.percent = middleOf(percents);
    shown.push_back(of);
  }
  return shown;
}

void assume(range::Assumptions& assumptions, std::span<const ShownCartilage> shown) {
  for (const ShownCartilage& of : shown) {
    range::Cartilage& cartilage = of.region == Region::Cervical ? assumptions.neck
                                  : of.region == Region::Dorsal ? assumptions.trunk
                                                                : assumptions.tail;
    cartilage = {range::Cartilage::In::PercentOfCentrum, std::round(10 * of.percent) / 10};
  }
}

}  // namespace zyga::files
