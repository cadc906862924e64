#include "ui/settings/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <memory>

namespace zyga::ui {
namespace {

/// Every sentence is translated once, wherever it stands.
class BySentence : public QTranslator {
 public:
  QString translate(const char*, const char* sentence, const char*, int) const override {
    return QTranslator::translate("words", sentence);
  }
};

/// Our own words, and those of the toolkit's dialogs where the system has them.
struct Words {
  QString code;
  BySentence ours;
  QTranslator toolkit;
};

std::unique_ptr<Words>& spoken() {
  static std::unique_ptr<Words> words;
  return words;
}

}  // namespace

std::vector<Language> languagesOffered() {
  return {{"en", "English"}, {"zh_CN", QString::fromUtf8("\xE7\xAE\x80\xE4\xBD\x93\xE4\xB8\xAD\xE6\x96\x87")}};
}

QString languageSpoken() { return spoken() ? spoken()->code : QString("en"); }

void speak(const QString& code) {
  if (spoken()) {
    QCoreApplication::removeTranslator(&spoken()->ours);
    QCoreApplication::removeTranslator(&spoken()->toolkit);
  }
  spoken().reset();
  const QString wanted = code.isEmpty() ? QLocale::system().name() : code;
  auto words = std::make_unique<Words>();
  words->code = wanted;
  if (!words->ours.load(":/translations/zygapose_" + wanted + ".qm")) return;
  if (words->toolkit.load("qtbase_" + wanted, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
    QCoreApplication::installTranslator(&words->toolkit);
  QCoreApplication::installTranslator(&words->ours);
  spoken() = std::move(words);
}

}  // namespace zyga::ui
