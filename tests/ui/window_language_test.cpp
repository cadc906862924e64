#include <gmock/gmock.h>

#include <QMenu>
#include <QRegularExpression>

#include "core/anatomy/tables/landmark_table.h"
#include "core/anatomy/tables/measurement_table.h"
#include "core/anatomy/tables/table_reasons.h"
#include "core/study/ground/trackway_table.h"
#include "tests/ui/widgets_seen.h"
#include "tests/ui/window_fixture.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/language.h"
#include "ui/words/say.h"
#include "ui/words/table_words.h"

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
  EXPECT_FALSE(said.filter(QString::fromUtf8("超出范围：")).isEmpty()) << said.join('\n').toStdString();
}

TEST_F(WindowInChinese, MenusAreInChinese) {
  QStringList left;
  for (const QMenu* menu : window_->findChildren<QMenu*>())
    for (const QAction* action : menu->actions())
      if (!english(action->text()).isEmpty()) left += action->text();
  // Samples are called by their files, recent ones by their places.
  left.removeIf([](const QString& words) { return words.contains("/samples"); });
  left.removeAll("High browser");
  for (const char* sample : {"Low browser", "Wide gauge"}) left.removeAll(sample);
  EXPECT_EQ(left.join('\n').toStdString(), "");
}

TEST(Words, OfCoreAreKnownByTheirForm) {
  speak("zh_CN");
  EXPECT_EQ(boneName(*anatomy::parseBoneId("manus2.1.L")), QString::fromUtf8("左第 2 指，第 1 指节"));
  speak("en");
  EXPECT_EQ(boneName(*anatomy::parseBoneId("manus2.1.L")), "left finger 2, phalanx 1");
}

/// Nothing is left in English but what stands in quotes and the names of files, columns and bones.
void expectSaid(const std::vector<anatomy::TableMessage>& messages, std::size_t least) {
  EXPECT_GE(messages.size(), least);
  for (const anatomy::TableMessage& message : messages) {
    for (const reason::Reason& reason : {message.cause, message.mend}) {
      const QString said = say(reason);
      EXPECT_TRUE(said.contains(QRegularExpression("\\p{Han}{2}"))) << said.toStdString();
    }
    EXPECT_TRUE(say(message).startsWith(QString::fromStdString(message.file)));
  }
}

// Invented tables; a message that is not translated stays English and fails.
TEST(Words, OfFaultsInTablesAreKnown) {
  speak("zh_CN");
  expectSaid(anatomy::readMeasurementTable("", "t.csv").messages, 1);
  expectSaid(anatomy::readMeasurementTable("length (mm)\n", "t.csv").messages, 1);
  expectSaid(anatomy::readMeasurementTable("# plan: crawler\n# cervicals: many\n# dorsals: 12\n"
                                           "bone,centrum length (mm),length,length (mm),length (mm),width (stone),"
                                           "mood,cotyle height (mm),wedge (deg),evidence\n"
                                           "C2,,,abc,,,,,,\nC3,,,-4,,,,,,\nC4,,,90000,,,,,,\nC5,,,5,,,,500,,\n"
                                           "C5,,,300,,,,,,\nD14,,,300,,,,,,\nQ9,,,1,,,,,,\nC6,,,300,,,,,120,\n"
                                           "C7,,,300,,,,,,guessed\n,,,300,,,,,,\nC8,1,2,3,4,5,6,7,8,found,10,11\n"
                                           "neck,,,,,,,,,\nneck,,,300,,,,,,\nneck,,,300,,,,,,\n",
                                           "t.csv")
                 .messages,
             14);
  expectSaid(anatomy::readLandmarkTable("bone,mark,x,y (mm),z (mm)\n", "m.csv").messages, 2);
  expectSaid(anatomy::readLandmarkTable("bone,landmark,x (mm),y (mm),z (mm)\nQ9,cranialRim,1,2,3\nC5,,1,2,3\n"
                                        "C5,cranialRim,a,2,3\nC5,caudalRim,1e9,2,3\nC5,top,1,2,3\nC5,top,1,2,3\n",
                                        "m.csv")
                 .messages,
             5);
  expectSaid(study::readTrackwayTable("", "w.csv").messages, 1);
  expectSaid(study::readTrackwayTable("foot,pace,mood\nLP1,1,2\n", "w.csv").messages, 2);
  expectSaid(study::readTrackwayTable("foot,pace_cm,next_pace_cm,stride_cm,length_cm,pace_cm,mood\n"
                                      "LP1,120,130,400,60,,\nRP1,abc,120,190,-5,,\nRP2,110,120,190,60,,\n"
                                      ",100,,,,,\nLP2,9000,,,,,\nLP3,1,2,3,4,5,6,7,8\n",
                                      "w.csv")
                 .messages,
             7);
  EXPECT_EQ(say(reason::Reason(anatomy::table::kNoUnit, {reason::text("length")})),
            QString::fromUtf8("“length”没有单位"));
  speak("en");
}

}  // namespace
}  // namespace zyga::ui
