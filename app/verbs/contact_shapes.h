#pragma once

#include "core/files/project/project.h"
#include "core/range/contact/contact.h"

namespace zyga::app {

/// The shapes of a project's bones, ready to be asked which of them enter each other. Bones are sculpted or come from
/// the cache; takes some seconds.
range::ContactModel contactShapes(const files::Project& project);

}  // namespace zyga::app
