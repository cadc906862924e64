#include <QCoreApplication>

#include "ui/words/wordings.h"

namespace zyga::ui {

Wordings pictureWordings() {
  static constexpr Wording kWordings[] = {
      {"picture.no-ray-tracer", QT_TRANSLATE_NOOP("words", "the ray tracer cannot start on this processor")},
      {"picture.too-many-pixels",
       QT_TRANSLATE_NOOP("words", "there is not enough memory for %1 x %2 pixels; choose a smaller width")},
      {"picture.no-memory-for-file",
       QT_TRANSLATE_NOOP("words", "there is not enough memory for %1; choose a smaller width or fewer passes")},
      {"picture.cannot-save", QT_TRANSLATE_NOOP("words", "cannot save %1: %2; make room or choose another folder")},
  };
  return kWordings;
}

}  // namespace zyga::ui
