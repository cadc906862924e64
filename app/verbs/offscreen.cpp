#include "app/verbs/offscreen.h"

namespace zyga::app {

Offscreen::Offscreen() : application_(count_, words_) {}

}  // namespace zyga::app
