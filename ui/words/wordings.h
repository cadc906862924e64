#pragma once

#include "ui/words/say.h"

namespace zyga::ui {

// One an area of core, each in a file of its name.
Wordings anatomyWordings();
Wordings fileWordings();
Wordings rangeWordings();
Wordings studyWordings();

}  // namespace zyga::ui
