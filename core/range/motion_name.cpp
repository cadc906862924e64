#include <array>

#include "core/range/findings.h"

namespace zyga::range {
namespace {

using Words = std::array<std::array<const char*, 2>, 3>;  // by motion, then for + and -

constexpr Words kColumn{
    {{"dorsiflexion", "ventriflexion"}, {"left bend", "right bend"}, {"left-up torsion", "right-up torsion"}}};
constexpr Words kJaw{{{"closing", "opening"}, {"left swing", "right swing"}, {"left-up torsion", "right-up torsion"}}};
constexpr Words kLimb{{{"flexion", "extension"}, {"abduction", "adduction"}, {"inward rotation", "outward rotation"}}};
// + swings the distal end forwards, which closes hip and elbow but opens knee, wrist and toes.
constexpr Words kOpensForwards{
    {{"extension", "flexion"}, {"abduction", "adduction"}, {"inward rotation", "outward rotation"}}};

bool isColumn(anatomy::Region region) { return region <= anatomy::Region::Caudal; }

bool opensForwards(const anatomy::Joint& joint) {
  if (joint.region == anatomy::Region::Manus || joint.region == anatomy::Region::Pes) {
    return joint.id.rfind("ankle", 0) != 0;
  }
  return joint.id.rfind("knee", 0) == 0 || joint.id.rfind("wrist", 0) == 0;
}

const Words& wordsOf(const anatomy::Joint& joint) {
  if (joint.id == "jaw") return kJaw;
  if (isColumn(joint.region)) return kColumn;
  return opensForwards(joint) ? kOpensForwards : kLimb;
}

}  // namespace

std::string motionName(const anatomy::Joint& joint, int motion, double sign) {
  return wordsOf(joint)[static_cast<std::size_t>(motion)][sign < 0 ? 1 : 0];
}

}  // namespace zyga::range
