#include "ui/words/report_words.h"

#include <QCoreApplication>

#include "ui/words/assumption_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {

QString poseWord(const std::string& name) {
  return name.empty() ? translated(QT_TRANSLATE_NOOP("words", "present pose")) : QString::fromStdString(name);
}

QString cartilageInFull(const range::Cartilage& cartilage) {
  const QString amount = cartilageWords(cartilage);
  if (cartilage.in == range::Cartilage::In::Millimetres) return amount;
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 of the centrum's length")), {amount});
}

QString massAndMiddle(const study::MassRange& mass) {
  const bool light = mass.mass < 1000;  // kg
  const auto whole = [&](double value) { return light ? kilograms(value) : tonnes(value); };
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 to %2, middle %3")),
                {light ? plainKilograms(mass.low) : plain(mass.low / 1000, 1), whole(mass.high), whole(mass.mass)});
}

QString completenessWords(const anatomy::Completeness& known) {
  return filled(
      translated(QT_TRANSLATE_NOOP("words", "%1 of %2 bones preserved: %3; counting mirrored counterparts %4: %5")),
      {QString::number(known.found), QString::number(known.bones), percent(known.share(), 1),
       QString::number(known.withMirrored), percent(known.shareWithMirrored(), 1)});
}

QString notEngineering() {
  return translated(
      QT_TRANSLATE_NOOP("words", "Not an engineering document; local codes and licensed practice decide."));
}

}  // namespace zyga::ui
