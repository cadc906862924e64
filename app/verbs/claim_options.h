#pragma once

#include <optional>

#include "app/verbs/arguments.h"
#include "core/study/claims/claim.h"

namespace zyga::app {

/// The options by which a claim is given on the command line, one for each kind.
std::vector<OptionSpec> claimOptions();

/// The claim that was given; none when no option names one. Throws BadInput for values that make no sense and for more
/// than one claim.
std::optional<study::Claim> claimFrom(const Arguments& arguments);

}  // namespace zyga::app
