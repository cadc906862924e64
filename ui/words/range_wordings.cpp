#include <QCoreApplication>

#include "ui/words/wordings.h"

namespace zyga::ui {

Wordings rangeWordings() {
  static constexpr Wording kWordings[] = {
      {"range.none", QT_TRANSLATE_NOOP("words", "none")},
  };
  return kWordings;
}

}  // namespace zyga::ui
