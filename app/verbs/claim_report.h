#pragma once

#include "core/files/project/project.h"
#include "core/study/claims/claim_answer.h"

namespace zyga::app {

/// An answer for people, several lines, and as a JSON object.
std::string claimText(const files::Project& project, const study::Claim& claim, const study::ClaimAnswer& answer);
std::string claimJson(const files::Project& project, const study::Claim& claim, const study::ClaimAnswer& answer);

}  // namespace zyga::app
