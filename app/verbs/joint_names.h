#pragma once

#include <string>

#include "core/anatomy/specimen.h"

namespace zyga::app {

/// The joint that `--joint ID` names. Throws BadInput where there is none, naming those whose ids come near: by few
/// letters, or because the text names one of their bones. Throws too where the joint does not move.
anatomy::JointIndex movableJoint(const anatomy::Specimen& specimen, const std::string& id);

}  // namespace zyga::app
