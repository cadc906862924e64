#include <QCoreApplication>

#include "ui/words/wordings.h"

namespace zyga::ui {

Wordings fileWordings() {
  static constexpr Wording kWordings[] = {
      {"file.none", QT_TRANSLATE_NOOP("words", "none")},
  };
  return kWordings;
}

}  // namespace zyga::ui
