#include "ui/words/scan_size_words.h"

#include <QCoreApplication>

#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {

QString sizeFactorText(double factor) { return plain(factor, factor < 0.2 ? 3 : factor < 10 ? 2 : 1); }

QString unitText(anatomy::ScanUnit unit) { return QString::fromUtf8(toText(unit).data()); }

QString unitOfSetSaid(const anatomy::SetUnitGuess& unit, files::UnitBy by) {
  if (unit.bones == 0) return {};
  const QString factor = sizeFactorText(unit.factor);
  const bool guessed = by == files::UnitBy::Size;
  if (unit.bones == 1) {
    const char* form = !guessed    ? QT_TRANSLATE_NOOP("words", "unit %1: the bone is %2 times the animal's")
                       : unit.sure ? QT_TRANSLATE_NOOP("words",
                                                       "unit guessed %1, in which the bone is %2 times the animal's; "
                                                       "no other unit comes near")
                                   : QT_TRANSLATE_NOOP("words",
                                                       "unit guessed %1, in which the bone is %2 times the animal's; "
                                                       "not sure");
    return filled(translated(form), {unitText(unit.unit), factor});
  }
  const char* form =
      !guessed    ? QT_TRANSLATE_NOOP("words", "unit %1: the middle one of %2 bones is %3 times the animal's")
      : unit.sure ? QT_TRANSLATE_NOOP("words",
                                      "unit of all guessed %1, in which the middle one of %2 bones is %3 times "
                                      "the animal's; no other unit comes near")
                  : QT_TRANSLATE_NOOP("words",
                                      "unit of all guessed %1, in which the middle one of %2 bones is %3 times "
                                      "the animal's; not sure");
  return filled(translated(form), {unitText(unit.unit), QString::number(unit.bones), factor});
}

QString sizeOfSetSaid(double factor) {
  const char* form = factor > 1 ? QT_TRANSLATE_NOOP("words", "these bones are about %1 times as large as the animal's")
                                : QT_TRANSLATE_NOOP("words", "the animal's bones are about %1 times as large as these");
  return filled(translated(form), {plain(factor > 1 ? factor : 1 / factor, 1)});
}

QString oddSizeSaid(double factor) {
  const char* form =
      factor > 1
          ? QT_TRANSLATE_NOOP("words", "beside the others about %1 times too large: another unit, or another bone?")
          : QT_TRANSLATE_NOOP("words", "beside the others about %1 times too small: another unit, or another bone?");
  return filled(translated(form), {plain(factor > 1 ? factor : 1 / factor, 1)});
}

}  // namespace zyga::ui
