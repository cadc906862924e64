#include <QCoreApplication>

#include "ui/words/wordings.h"

namespace zyga::ui {

/// What verbs of the command line say of their arguments.
Wordings verbWordings() {
  static constexpr Wording kWordings[] = {
      {"arguments.said", "%1"},
      {"arguments.both", "%1\n%2"},
      {"arguments.unknown-option", QT_TRANSLATE_NOOP("words", "unknown option %1; %2 knows %3")},
      {"arguments.takes-no-value", QT_TRANSLATE_NOOP("words", "%1 takes no value")},
      {"arguments.needs-value", QT_TRANSLATE_NOOP("words", "%1 needs a value: %1 %2")},
      {"arguments.option-missing", QT_TRANSLATE_NOOP("words", "%1 is missing: %1 %2")},
      {"arguments.file-missing", QT_TRANSLATE_NOOP("words", "the %1 is missing")},
      {"arguments.one-file-too-many", QT_TRANSLATE_NOOP("words", "'%1' is one file too many; %2 takes one %3")},
      {"arguments.not-a-number", QT_TRANSLATE_NOOP("words", "%1: '%2' is not a number; write %3 from %4 to %5")},
      {"arguments.too-far", QT_TRANSLATE_NOOP("words", "%1: %2 is too far; write %3 from %4 to %5")},
      {"arguments.not-among", QT_TRANSLATE_NOOP("words", "%1: '%2' is not among %3")},
  };
  return kWordings;
}

}  // namespace zyga::ui
