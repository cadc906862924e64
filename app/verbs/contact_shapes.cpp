#include "app/verbs/contact_shapes.h"

#include "app/verbs/sculpting.h"
#include "core/solid/levelset/level_set.h"
#include "core/solid/mesh/mirrored_half.h"

namespace zyga::app {

range::ContactModel contactShapes(const files::Project& project) {
  const auto wanted = range::bonesInContactPairs(project.specimen);
  solid::LevelSetOptions options;
  options.mirrorsItself = solid::bonesThatMirrorThemselves(project.specimen);
  return {project.specimen, solid::levelSets(sculpt(project), wanted, options)};
}

}  // namespace zyga::app
