#pragma once

#include "core/anatomy/specimen.h"

namespace zyga::ui {

class Document;

/// Locks an unlocked joint and unlocks a locked one, in one undoable step: drags leave a locked joint as it is.
void lockOrUnlock(Document& document, anatomy::JointIndex joint);
/// No step when none is locked.
void unlockAllJoints(Document& document);

}  // namespace zyga::ui
