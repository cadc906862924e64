#pragma once

#include "app/arguments/arguments.h"
#include "core/range/assumptions.h"

namespace zyga::app {

/// The options by which a verb takes other assumptions than the project's, for one run: --overlap, --overlap-by,
/// --cartilage-percent, --settling-percent, --contact-percent, --contact-mm, --inferred-neighbours, --neutral-by,
/// --horizontal-by.
std::vector<OptionSpec> assumptionOptions();

/// `options` and after them the assumption options, for a verb's list.
std::vector<OptionSpec> withAssumptionOptions(std::vector<OptionSpec> options);

/// The project's assumptions with those changed that were given. Throws BadInput naming the option and saying what to
/// write.
range::Assumptions assumptionsFrom(const Arguments& arguments, const range::Assumptions& ofProject);

}  // namespace zyga::app
