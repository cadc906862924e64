#include <QCoreApplication>

#include "ui/words/wordings.h"

namespace zyga::ui {

Wordings studyWordings() {
  static constexpr Wording kWordings[] = {
      {"study.none", QT_TRANSLATE_NOOP("words", "none")},
  };
  return kWordings;
}

}  // namespace zyga::ui
