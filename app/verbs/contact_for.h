#pragma once

#include "app/arguments/arguments.h"
#include "core/files/export/mesh_export.h"
#include "core/files/project/project.h"

namespace zyga::app {

/// `options` and after them --no-contact and --contact, for the list of a verb that judges contact of the bones. The
/// second is how contact was asked for before it counted by itself: it is accepted and changes nothing.
std::vector<OptionSpec> withContactOptions(std::vector<OptionSpec> options);

/// The shapes of a project's bones for contact, sculpted first where the cache has none, with progress on stderr; null
/// with --no-contact. `meshes`: where they are at hand. Throws BadInput where both options are given.
std::shared_ptr<const range::ContactModel> contactFor(const files::Project& project, const Arguments& arguments);
std::shared_ptr<const range::ContactModel> contactFor(const files::Project& project, const Arguments& arguments,
                                                      const files::BoneMeshes& meshes);

/// "bones that collide count too", or that they were not assessed and why, in a line of its own.
std::string contactText(bool judged);

}  // namespace zyga::app
