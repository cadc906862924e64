#include "ui/words/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>
#include <cstring>
#include <memory>

namespace zyga::ui {
namespace {

/// Every sentence is translated once, wherever it stands. A number chooses the form of a noun only where the sentence
/// says it; the other sentences have one form.
class BySentence : public QTranslator {
 public:
  QString translate(const char*, const char* sentence, const char*, int n) const override {
    return QTranslator::translate("words", sentence, nullptr, std::strstr(sentence, "%n") ? n : -1);
  }
};

/// The words of the language, those of the toolkit's dialogs where the system has them, and below both English, whose
/// nouns have two forms.
struct Words {
  QString code;
  BySentence english, ours;
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
    QCoreApplication::removeTranslator(&spoken()->english);
  }
  spoken().reset();
  const QString wanted = code.isEmpty() ? QLocale::system().name() : code;
  auto words = std::make_unique<Words>();
  words->code = "en";
  // The last one installed is asked first.
  if (words->english.load(":/translations/zygapose_en.qm")) QCoreApplication::installTranslator(&words->english);
  if (wanted != "en" && words->ours.load(":/translations/zygapose_" + wanted + ".qm")) {
    words->code = wanted;
    if (words->toolkit.load("qtbase_" + wanted, QLibraryInfo::path(QLibraryInfo::TranslationsPath)))
      QCoreApplication::installTranslator(&words->toolkit);
    QCoreApplication::installTranslator(&words->ours);
  }
  spoken() = std::move(words);
}

}  // namespace zyga::ui
