#include "core/range/assumptions.h"

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

}  // namespace zyga::range
