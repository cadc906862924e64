#pragma once

#include "ui/words/say.h"

namespace zyga::ui {

// One an area of core, each in a file of its name.
Wordings anatomyWordings();
Wordings tableWordings();
Wordings fileWordings();
Wordings pictureWordings();
Wordings rangeWordings();
Wordings scanWordings();
Wordings studyWordings();
Wordings verbWordings();

}  // namespace zyga::ui
