#pragma once

#include <QString>
#include <vector>

namespace zyga::ui {

struct Language {
  QString code;     ///< "en", "zh_CN"
  QString ownName;  ///< in the language itself
};

/// English, in which the program is written, and what it has been translated to.
std::vector<Language> languagesOffered();

/// The code of the language that is spoken now.
QString languageSpoken();

/// Says everything in this language from now on, and English nouns in the form of their number; windows that are open
/// keep their words. Needs a QCoreApplication, no more, so that batch verbs speak as the window does. An empty code
/// means the language of the desktop; one that is not offered is English.
void speak(const QString& code);

}  // namespace zyga::ui
