#pragma once

#include <string_view>

#include "app/arguments/arguments.h"
#include "core/anatomy/specimen.h"

namespace zyga::app {

/// The bones that an option names, by bone: ids and parts of the skeleton with commas between them, such as
/// "C5,C6,manus.L". Empty when the option was not given. Throws BadInput naming what is no bone of this animal.
std::vector<bool> bonesListed(const Arguments& arguments, std::string_view option, const anatomy::Specimen& specimen);

}  // namespace zyga::app
