#include <QCoreApplication>

#include "ui/words/wordings.h"

namespace zyga::ui {

Wordings anatomyWordings() {
  static constexpr Wording kWordings[] = {
      {"anatomy.none", QT_TRANSLATE_NOOP("words", "none")},
  };
  return kWordings;
}

}  // namespace zyga::ui
