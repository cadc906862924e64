#include "app/verbs/contact_shapes.h"

#include "app/verbs/sculpting.h"
#include "core/solid/level_set.h"

namespace zyga::app {

range::ContactModel contactShapes(const files::Project& project) {
  const auto wanted = range::bonesInContactPairs(project.specimen);
  return {project.specimen, solid::levelSets(sculpt(project), wanted)};
}

}  // namespace zyga::app
