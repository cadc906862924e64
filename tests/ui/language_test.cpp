#include "ui/words/language.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QTranslator>

#include "ui/words/say.h"

namespace zyga::ui {
namespace {

class LanguageTest : public testing::Test {
 protected:
  void TearDown() override { speak("en"); }
  static QString said(const char* sentence, int n = -1) {
    return QCoreApplication::translate("words", sentence, nullptr, n);
  }
};

TEST_F(LanguageTest, EnglishCountsFromItsOwnList) {
  speak("en");
  EXPECT_EQ(said("%n pinned", 1), "1 pinned");
  EXPECT_EQ(said("%n pinned", 3), "3 pinned");
  EXPECT_EQ(languageSpoken(), "en");
}

TEST_F(LanguageTest, ALanguageTranslatesWhereverTheSentenceStands) {
  speak("zh_CN");
  EXPECT_EQ(languageSpoken(), "zh_CN");
  const QString count = said("%n pinned", 3);
  EXPECT_TRUE(count.contains("3")) << count.toStdString();
  EXPECT_FALSE(count.contains("pinned")) << count.toStdString();
  EXPECT_EQ(QCoreApplication::translate("AnyClass", "%n pinned", nullptr, 3), count);
}

TEST_F(LanguageTest, ANumberChoosesNoFormWhereTheSentenceDoesNotSayIt) {
  speak("zh_CN");
  const QString once = said("%1, %2");
  EXPECT_EQ(said("%1, %2", 0), once);
  EXPECT_EQ(said("%1, %2", 2), once);
}

/// Tells one byte from several, and nothing else.
class Bytes : public QTranslator {
 public:
  bool isEmpty() const override { return false; }
  QString translate(const char*, const char* sentence, const char*, int n) const override {
    if (qstrcmp(sentence, "%n bytes") != 0) return {};
    return n == 1 ? QStringLiteral("%n byte") : QStringLiteral("%n bytes");
  }
};

TEST_F(LanguageTest, EveryCountOfAReasonChoosesItsOwnForm) {
  Bytes bytes;
  QCoreApplication::installTranslator(&bytes);
  const auto said = [](long long each, long long left) {
    return say(reason::Reason({"scan.declares-too-many", 4}, {reason::Count{9}, reason::Term{"scan.faces"},
                                                              reason::Count{each}, reason::Count{left}}));
  };
  EXPECT_EQ(
      said(1, 7),
      "it declares 9 faces, which need at least 1 byte each, but it has only 7 bytes left for them: it is damaged "
      "or cut short");
  EXPECT_TRUE(said(12, 1).contains("at least 12 bytes each, but it has only 1 byte left"));
  QCoreApplication::removeTranslator(&bytes);
}

TEST_F(LanguageTest, ALanguageThatIsNotOfferedIsEnglish) {
  speak("tlh");
  EXPECT_EQ(languageSpoken(), "en");
  EXPECT_EQ(said("%n pinned", 2), "2 pinned");
}

TEST_F(LanguageTest, EveryLanguageThatIsOfferedIsThere) {
  for (const Language& language : languagesOffered()) {
    speak(language.code);
    EXPECT_EQ(languageSpoken(), language.code);
    EXPECT_FALSE(language.ownName.isEmpty());
  }
}

}  // namespace
}  // namespace zyga::ui
