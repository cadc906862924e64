#include "core/files/export/bone_tone.h"

#include <cmath>

namespace zyga::files {
namespace {

constexpr std::array<float, 3> fromHex(unsigned rgb) {
  return {static_cast<float>(rgb >> 16 & 255) / 255, static_cast<float>(rgb >> 8 & 255) / 255,
          static_cast<float>(rgb & 255) / 255};
}

}  // namespace

std::array<float, 3> boneTone(anatomy::Evidence evidence) {
  switch (evidence) {
    case anatomy::Evidence::Found:
    case anatomy::Evidence::FoundDeformed:
      return fromHex(0xD9CDB4);
    case anatomy::Evidence::Mirrored:
    case anatomy::Evidence::Scaled:
      return fromHex(0xCBBFA9);
    case anatomy::Evidence::Inferred:
      break;
  }
  return fromHex(0xC3C7CC);
}

float linearFromSrgb(float channel) {
  return channel <= 0.04045F ? channel / 12.92F : std::pow((channel + 0.055F) / 1.055F, 2.4F);
}

}  // namespace zyga::files
