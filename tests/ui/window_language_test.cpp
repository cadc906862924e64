#include <gmock/gmock.h>

#include <QMenu>
#include <QRegularExpression>

#include "app/window/language.h"
#include "tests/ui/widgets_seen.h"
#include "tests/ui/window_fixture.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

/// Words of English, in a text without the names of bones and joints ("C6-C7", "chevron.Ca3") and of keys.
QString english(QString words) {
  static const QRegularExpression names(
      R"(\b\S*[A-Za-z]+\d+\S*|\b(skull|jaw)\S*|\b\w+\.[LR]\b|Zygapose|Shift|Esc|Ctrl|Alt|\bCSV\b|\bmmHg\b)");
  words.remove(names);
  static const QRegularExpression lower("[a-z]{3,}");
  return lower.match(words).captured();
}

class WindowInChinese : public WindowTest {
 protected:
  void SetUp() override {
    speak("zh_CN");
    WindowTest::SetUp();
  }
  void TearDown() override {
    WindowTest::TearDown();
    speak("en");
  }
};

TEST_F(WindowInChinese, FindingsAreSaidInChinese) {
  kinematics::Pose pose = document_->pose();
  pose[joint("C6-C7")] = {0.4, 0.2, 0};
  pose[joint("C8-C9")].x() = -0.35;
  pose[joint("knee.L")].x() = -2;
  document_->changePose(pose, "bend");
  const QStringList said = findings();
  ASSERT_GE(said.size(), 3);
  for (const QString& sentence : said) EXPECT_EQ(english(sentence), "") << sentence.toStdString();
  EXPECT_FALSE(said.filter(QString::fromUtf8("超出：")).isEmpty()) << said.join('\n').toStdString();
}

TEST_F(WindowInChinese, MenusAreInChinese) {
  QStringList left;
  for (const QMenu* menu : window_->findChildren<QMenu*>())
    for (const QAction* action : menu->actions())
      if (!english(action->text()).isEmpty()) left += action->text();
  // Samples are called by their files, recent ones by their places.
  left.removeIf([](const QString& words) { return words.contains("/samples"); });
  left.removeAll("High browser");
  left.removeAll("Low browser");
  EXPECT_EQ(left.join('\n').toStdString(), "");
}

TEST(Words, OfCoreAreKnownByTheirForm) {
  speak("zh_CN");
  EXPECT_EQ(text("C6-C7 beyond: facets share 38 % left, 37 % right (least 50 %), dorsiflexion 7.1° of 5°"),
            QString::fromUtf8("C6-C7 超出：关节面共有左 38 %、右 37 %（至少 50 %），背屈 7.1°，限度 5°"));
  EXPECT_EQ(text("rib of C6 enters C7 by 8 mm (tolerated 5 mm)"),
            QString::fromUtf8("C6 的肋骨进入C7，深 8 mm（容许 5 mm）"));
  EXPECT_EQ(text("left finger 2, phalanx 1"), QString::fromUtf8("左第 2 指，第 1 指节"));
  EXPECT_EQ(text("what nobody has ever said"), "what nobody has ever said");
  speak("en");
  EXPECT_EQ(text("C6-C7 beyond: facets share 38 %"), "C6-C7 beyond: facets share 38 %");
}

}  // namespace
}  // namespace zyga::ui
