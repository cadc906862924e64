#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QComboBox>
#include <QFileDialog>
#include <QJsonDocument>
#include <QJsonObject>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QProgressBar>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>
#include <QToolButton>
#include <fstream>
#include <sstream>

#include "core/kinematics/bend.h"
#include "tests/ui/document_sample.h"
#include "tests/ui/patience.h"
#include "ui/panels/studies/plot_view.h"
#include "ui/panels/studies/save_study.h"
#include "ui/panels/studies/studies_panel.h"
#include "ui/theme/unit_spin_box.h"

namespace zyga::ui {
namespace {

class StudiesPanelTest : public testing::Test {
 protected:
  void SetUp() override {
    QSettings().clear();
    document_.open(sampleProject(), {});
    panel_ = std::make_unique<StudiesPanel>(document_);
    panel_->resize(330, 900);
    panel_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(panel_.get()));
  }
  template <class Widget>
  Widget* part(const char* name) const {
    return panel_->findChild<Widget*>(name);
  }
  QString words(const char* name) const { return part<QLabel>(name)->text(); }
  void click(const char* name) { QTest::mouseClick(part<QPushButton>(name), Qt::LeftButton); }
  void choose(StudyKind kind) {
    auto* box = part<QComboBox>("studyKind");
    box->setFocus();
    while (panel_->kind() != kind) QTest::keyClick(box, panel_->kind() < kind ? Qt::Key_Down : Qt::Key_Up);
  }
  bool waitFor(StudyKind kind) {
    return QTest::qWaitFor([&] { return panel_->job().result(kind) && !panel_->job().outOfDate(kind); }, kPatience);
  }
  /// The envelope without the space, which takes longest.
  void runOutline() {
    choose(StudyKind::Envelope);
    part<QCheckBox>("envelopeSpace")->setChecked(false);
    click("studyRun");
    ASSERT_TRUE(waitFor(StudyKind::Envelope));
  }
  void raiseNeck() {
    kinematics::Pose pose = document_.pose();
    for (const auto joint : kinematics::neckChain(document_.specimen())) pose[joint][0] += 0.02;
    document_.changePose(pose, "raise");
  }

  Document document_;
  std::unique_ptr<StudiesPanel> panel_;
};

TEST_F(StudiesPanelTest, WhatIsQuickIsThereByItselfAndFollowsThePose) {
  ASSERT_TRUE(waitFor(StudyKind::Elevation));
  EXPECT_FALSE(part<QPushButton>("studyRun")->isVisible());
  EXPECT_TRUE(part<PlotView>("plotView")->isVisible());
  EXPECT_TRUE(words("studyWords").contains("Highest: snout"));
  const QString before = words("studyWords");
  raiseNeck();
  ASSERT_TRUE(QTest::qWaitFor([&] { return words("studyWords") != before; }, kPatience));
  choose(StudyKind::Pressure);
  ASSERT_TRUE(waitFor(StudyKind::Pressure));
  EXPECT_TRUE(words("studyCautions").contains("siphon"));
  EXPECT_TRUE(words("studyCautions").contains("700 mmHg"));
}

TEST_F(StudiesPanelTest, HeartMovedHigherLowersThePressure) {
  choose(StudyKind::Pressure);
  ASSERT_TRUE(waitFor(StudyKind::Pressure));
  const auto highest = [&] {
    return std::get<study::Pressure>(*panel_->job().result(StudyKind::Pressure)).rows[0].pressure;
  };
  const double before = highest();
  auto* heart = part<UnitSpinBox>("heartPlace");
  heart->setFocus();
  QTest::keyClick(heart, Qt::Key_A, Qt::ControlModifier);
  QTest::keyClicks(heart, "80");
  QTest::keyClick(heart, Qt::Key_Return);
  ASSERT_TRUE(QTest::qWaitFor([&] { return highest() < before - 1; }, kPatience));
}

TEST_F(StudiesPanelTest, StressFollowsTensionAndDensities) {
  choose(StudyKind::Stress);
  ASSERT_TRUE(waitFor(StudyKind::Stress));
  EXPECT_TRUE(part<PlotView>("plotView")->isVisible());
  EXPECT_TRUE(words("studyWords").contains("coefficient of variation"));
  EXPECT_TRUE(words("studyCautions").contains("Christian & Heinrich 1998"));
  EXPECT_TRUE(words("studyCautions").contains("common criticism, no source"));
  const auto base = [&] {
    const auto& found = std::get<study::JointStress>(*panel_->job().result(StudyKind::Stress));
    return found[study::NeckCarriage::Neutral].joints[0].stress;
  };
  const double before = base();
  auto* tension = part<UnitSpinBox>("tensionPlace");
  tension->setFocus();
  QTest::keyClick(tension, Qt::Key_A, Qt::ControlModifier);
  QTest::keyClicks(tension, "50");
  QTest::keyClick(tension, Qt::Key_Return);
  ASSERT_TRUE(QTest::qWaitFor([&] { return base() > 1.5 * before; }, kPatience)) << "half the lever";
  const double light = base();
  study::Densities heavy = document_.project().densities;
  heavy[study::BodyPart::Neck] *= 1.5;
  document_.setDensities(heavy);
  ASSERT_TRUE(QTest::qWaitFor([&] { return base() > 1.1 * light; }, kPatience)) << "a heavier neck presses harder";
}

TEST_F(StudiesPanelTest, EnvelopeIsWorkedOutShownAndGoesOutOfDate) {
  QSignalSpy drawn(panel_.get(), &StudiesPanel::envelopeChanged);
  runOutline();
  ASSERT_FALSE(drawn.isEmpty());
  EXPECT_TRUE(drawn.last()[0].value<std::shared_ptr<const study::Envelope>>());
  EXPECT_FALSE(part<QLabel>("studyStale")->isVisible());
  EXPECT_TRUE(words("studyWords").contains("Bending up and down only"));
  raiseNeck();
  EXPECT_TRUE(part<QLabel>("studyStale")->isVisible());
  EXPECT_TRUE(drawn.last()[1].toBool()) << "the view marks it too";
  EXPECT_TRUE(panel_->inShort().endsWith("out of date"));
  click("studyRun");
  ASSERT_TRUE(waitFor(StudyKind::Envelope));
  EXPECT_FALSE(part<QLabel>("studyStale")->isVisible());
}

TEST_F(StudiesPanelTest, DrawingInTheViewIsSwitchedOffAndRemembered) {
  runOutline();
  QSignalSpy drawn(panel_.get(), &StudiesPanel::envelopeChanged);
  QTest::mouseClick(part<QCheckBox>("envelopeDrawn"), Qt::LeftButton, {}, QPoint(8, 8));
  ASSERT_FALSE(drawn.isEmpty());
  EXPECT_FALSE(drawn.last()[0].value<std::shared_ptr<const study::Envelope>>());
  StudiesPanel other(document_);
  EXPECT_FALSE(other.drawsEnvelope());
}

TEST_F(StudiesPanelTest, LongStudyShowsProgressAndStops) {
  choose(StudyKind::Spread);
  part<UnitSpinBox>("spreadDraws")->setValue(20000);
  click("studyRun");
  ASSERT_TRUE(QTest::qWaitFor([&] { return part<QProgressBar>("studyProgress")->value() > 0; }, kPatience));
  EXPECT_FALSE(part<QPushButton>("studyRun")->isVisible());
  QTest::mouseClick(part<QToolButton>("studyStop"), Qt::LeftButton);
  ASSERT_TRUE(QTest::qWaitFor([&] { return !panel_->job().busy(); }, kPatience));
  EXPECT_TRUE(part<QPushButton>("studyRun")->isVisible());
  EXPECT_FALSE(panel_->job().result(StudyKind::Spread));
}

TEST_F(StudiesPanelTest, SpreadTakesItsSettings) {
  choose(StudyKind::Spread);
  part<UnitSpinBox>("spreadDraws")->setValue(20);
  part<UnitSpinBox>("spreadSeed")->setValue(7);
  part<UnitSpinBox>("cartilageFrom")->setValue(4);
  part<UnitSpinBox>("cartilageTo")->setValue(2);  // the wrong way round does no harm
  click("studyRun");
  ASSERT_TRUE(waitFor(StudyKind::Spread));
  const auto& found = std::get<study::SpreadStudy>(*panel_->job().result(StudyKind::Spread));
  EXPECT_EQ(found.options.seed, 7u);
  EXPECT_EQ(found.draws.size(), 20u);
  EXPECT_EQ(found.options.cartilagePercent, (study::Between{2, 4}));
}

TEST_F(StudiesPanelTest, AnotherAnimalDropsTheAnswers) {
  runOutline();
  document_.open(sampleProject(), {});
  EXPECT_FALSE(panel_->job().result(StudyKind::Envelope));
  EXPECT_FALSE(part<PlotView>("plotView")->isVisible());
}

TEST_F(StudiesPanelTest, AStudyThatCannotBeMadeSaysWhy) {
  files::Project project = sampleProject();
  anatomy::Specimen headless = project.specimen();
  headless.bones[headless.findBone("skull")->value].id = "lost";
  project.setSpecimen(std::move(headless));
  document_.open(std::move(project), {});
  choose(StudyKind::Envelope);
  click("studyRun");
  ASSERT_TRUE(QTest::qWaitFor([&] { return part<QLabel>("studyFailure")->isVisible(); }, kPatience));
  EXPECT_TRUE(words("studyFailure").contains("no skull"));
  EXPECT_FALSE(panel_->job().result(StudyKind::Envelope));
  EXPECT_FALSE(part<PlotView>("plotView")->isVisible());
}

TEST_F(StudiesPanelTest, CopiesWordsAndPicture) {
  ASSERT_TRUE(waitFor(StudyKind::Elevation));
  click("studyCopy");
  const QMimeData* data = QApplication::clipboard()->mimeData();
  ASSERT_TRUE(data);
  EXPECT_TRUE(data->text().contains("Highest: snout"));
  EXPECT_TRUE(data->hasImage());
}

TEST_F(StudiesPanelTest, SavesWhatTheEndingSays) {
  ASSERT_TRUE(waitFor(StudyKind::Elevation));
  const auto result = panel_->job().result(StudyKind::Elevation);
  QTemporaryDir folder;
  const auto bytes = [&](const char* ending) {
    const QString file = folder.path() + "/study." + ending;
    saveStudy(document_, *result, file);
    std::stringstream text;
    text << std::ifstream(file.toStdString(), std::ios::binary).rdbuf();
    return QByteArray::fromStdString(text.str());
  };
  EXPECT_TRUE(bytes("svg").contains("<svg"));
  EXPECT_TRUE(bytes("pdf").startsWith("%PDF"));
  EXPECT_FALSE(QImage::fromData(bytes("png")).isNull());
  const QJsonObject json = QJsonDocument::fromJson(bytes("json")).object();
  EXPECT_EQ(json["study"].toObject()["kind"].toString(), "elevation");
  EXPECT_THROW(saveStudy(document_, *result, folder.path() + "/study.xyz"), files::FileError);
  EXPECT_THROW(saveStudy(document_, *result, "/nowhere/at/all/study.svg"), files::FileError);
}

TEST_F(StudiesPanelTest, ClickShowsTheFigureLarge) {
  ASSERT_TRUE(waitFor(StudyKind::Elevation));
  QTest::mouseClick(part<PlotView>("plotView"), Qt::LeftButton);
  auto* large = panel_->window()->findChild<QDialog*>("plotWindow");
  ASSERT_TRUE(large);
  EXPECT_TRUE(large->isVisible());
  QTest::keyClick(large, Qt::Key_Escape);
  EXPECT_FALSE(large->isVisible());
}

TEST(StudiesPanel, WithoutAnAnimalSaysWhatToDo) {
  QSettings().clear();
  Document document;
  StudiesPanel panel(document);
  panel.show();
  EXPECT_FALSE(panel.findChild<QPushButton*>("studyRun")->isEnabled());
  EXPECT_TRUE(panel.findChild<QLabel*>("studyStale")->text().startsWith("Open an animal"));
}

}  // namespace
}  // namespace zyga::ui
