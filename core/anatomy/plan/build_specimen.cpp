#include "core/anatomy/plan/build_specimen.h"

#include <stdexcept>

#include "core/anatomy/plan/body_plan.h"
#include "core/anatomy/plan/skeleton_parts.h"

namespace zyga::anatomy {

BoneIndex addBone(Specimen& specimen, const MeasurementTable& filled, const BoneName& name) {
  const TableRow* row = filled.find(name);
  if (!row) throw std::invalid_argument("the table has no row for " + toId(name));
  for (const Measure measure : measuresOf(name.kind)) {
    if (row->measures[measure].known()) continue;
    throw std::invalid_argument(toId(name) + ": '" + std::string(title(measure)) + "' has not been filled");
  }
  Bone bone;
  bone.name = name;
  bone.id = toId(name);
  bone.evidence = row->evidence;
  bone.source = row->source;
  bone.measures = row->measures;
  specimen.bones.push_back(std::move(bone));
  return BoneIndex{specimen.bones.size() - 1};
}

Specimen buildSpecimen(const MeasurementTable& filled) {
  Specimen specimen;
  specimen.name = filled.name;
  specimen.counts = filled.counts;
  addColumn(specimen, filled);
  addHead(specimen, filled);
  addLimbs(specimen, filled);
  return specimen;
}

}  // namespace zyga::anatomy
