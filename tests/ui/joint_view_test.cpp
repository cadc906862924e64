#include "ui/panels/joint/joint_view.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QImage>
#include <QLabel>
#include <QMouseEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QTest>
#include <QtMath>

#include "tests/ui/document_sample.h"
#include "ui/panels/joint/angle_field.h"
#include "ui/panels/joint/facet_drawing.h"
#include "ui/panels/joint/supported_map_view.h"
#include "ui/theme/theme.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/range_words.h"

namespace zyga::ui {
namespace {

class JointViewTest : public testing::Test {
 protected:
  void SetUp() override {
    ThemeSwitch::instance().apply(*qApp, Scheme::Light);
    open(sampleProject());
  }
  void open(files::Project project) {
    document_.open(std::move(project), {});
    view_.resize(320, 760);
    view_.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&view_));
  }

  JointIndex joint(const char* id) const { return document_.specimen().findJoint(id).value(); }
  void select(const char* id) {
    document_.selectJoint(joint(id));
    QApplication::processEvents();
  }
  void setAngles(const char* id, const Eigen::Vector3d& angles) {
    kinematics::Pose pose = document_.pose();
    pose[joint(id)] = angles;
    document_.setPose(pose);
  }
  QLabel* label(const char* name) const { return view_.findChild<QLabel*>(name); }
  std::string words(const char* name) const {
    return label(name)->isVisible() ? label(name)->text().toStdString() : std::string("(hidden)");
  }
  UnitSpinBox* field(int motion) const { return view_.findChild<UnitSpinBox*>(QString("angle%1").arg(motion)); }
  void type(int motion, const char* figures) {
    field(motion)->setFocus();
    field(motion)->selectAll();
    QTest::keyClicks(field(motion), figures);
    QTest::keyClick(field(motion), Qt::Key_Return);
  }

  /// Pixels of the facet drawing in this colour, give or take what smoothing does to thin lines.
  int pixelsOf(const QColor& colour) {
    const QImage image = drawing()->grab().toImage();
    int count = 0;
    for (int y = 0; y < image.height(); ++y)
      for (int x = 0; x < image.width(); ++x) count += isLike(image.pixelColor(x, y), colour);
    return count;
  }
  static bool isLike(const QColor& a, const QColor& b) {
    return std::max({std::abs(a.red() - b.red()), std::abs(a.green() - b.green()), std::abs(a.blue() - b.blue())}) < 40;
  }
  SupportedMapView* map() const { return view_.findChild<SupportedMapView*>(); }
  void mapMouse(QEvent::Type type, const QPointF& at) {
    const bool up = type == QEvent::MouseButtonRelease, move = type == QEvent::MouseMove;
    QMouseEvent event(type, at, map()->mapToGlobal(at), move ? Qt::NoButton : Qt::LeftButton,
                      up ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(map(), &event);
  }
  QWidget* drawing() const {
    for (auto* widget : view_.findChildren<QWidget*>())
      if (auto* found = dynamic_cast<FacetDrawing*>(widget)) return found;
    return nullptr;
  }

  Document document_;
  JointView view_{document_};
};

TEST_F(JointViewTest, WithoutAChoiceItSaysHowToChoose) {
  EXPECT_EQ(words("empty"), "Choose a joint on the animal or on the strip");
  select("C6-C7");
  EXPECT_EQ(words("empty"), "(hidden)");
  document_.selectJoint(std::nullopt);
  EXPECT_EQ(words("empty"), "Choose a joint on the animal or on the strip");
}

TEST_F(JointViewTest, ShowsTheJointAndItsAngles) {
  setAngles("C6-C7", {qDegreesToRadians(3.2), qDegreesToRadians(-1.5), 0});
  select("C6-C7");
  EXPECT_EQ(words("title"), "C6-C7");
  EXPECT_EQ(label("title")->toolTip().toStdString(), "Cervical vertebra 6 on cervical vertebra 7");
  EXPECT_EQ(field(0)->value(), 3.2);
  EXPECT_EQ(field(1)->value(), -1.5);
  EXPECT_EQ(field(2)->value(), 0);
  EXPECT_EQ(document_.undoStack().count(), 0) << "showing is not changing";
}

TEST_F(JointViewTest, SaysTheIntervalAndWhatEndsIt) {
  select("C6-C7");
  const range::MotionRange& band = document_.motionRange(joint("C6-C7"), 0);
  const QString expected = QString::fromUtf8("−%1° to +%2°")
                               .arg(-qRadiansToDegrees(band.min), 0, 'f', 1)
                               .arg(qRadiansToDegrees(band.max), 0, 'f', 1);
  EXPECT_EQ(words("interval0"), expected.toStdString());
  const QString stop = stopWords(document_.specimen(), joint("C6-C7"), band.maxStop);
  bool said = false;
  for (const auto* any : view_.findChildren<QLabel*>()) said = said || (any->isVisible() && any->text().contains(stop));
  EXPECT_TRUE(said) << stop.toStdString();
}

TEST_F(JointViewTest, IntervalsFollowTheOtherAngles) {
  select("C6-C7");
  const std::string before = words("interval0");
  setAngles("C6-C7", {0, 0.6 * document_.motionRange(joint("C6-C7"), 1).max, 0});
  EXPECT_NE(words("interval0"), before);
}

TEST_F(JointViewTest, TypingAnAngleTurnsTheJointAndIsUndone) {
  select("C6-C7");
  type(0, "4.5");
  EXPECT_NEAR(document_.pose()[joint("C6-C7")].x(), qDegreesToRadians(4.5), 1e-12);
  EXPECT_EQ(document_.undoStack().count(), 1);
  QTest::keyClick(field(0), Qt::Key_Up);
  QTest::keyClick(field(0), Qt::Key_Up);
  EXPECT_NEAR(document_.pose()[joint("C6-C7")].x(), qDegreesToRadians(5.5), 1e-12);
  EXPECT_EQ(document_.undoStack().count(), 1) << "typing and stepping one field is one step";
  type(1, "2");
  EXPECT_EQ(document_.undoStack().count(), 2);
  document_.undoStack().undo();
  document_.undoStack().undo();
  EXPECT_EQ(document_.pose()[joint("C6-C7")], Eigen::Vector3d::Zero());
  EXPECT_EQ(field(0)->value(), 0);
}

TEST_F(JointViewTest, KeepsTheHiddenDecimalsOfAnglesThatAreNotEdited) {
  setAngles("C6-C7", {0.0123456, 0.0234567, 0});
  select("C6-C7");
  type(0, "1.5");
  EXPECT_EQ(document_.pose()[joint("C6-C7")].y(), 0.0234567);
}

TEST_F(JointViewTest, NumbersAreThoseOfTheAssessment) {
  setAngles("C6-C7", {qDegreesToRadians(5.0), qDegreesToRadians(2.0), 0});
  select("C6-C7");
  const range::JointVerdict* verdict = document_.assessment().find(joint("C6-C7"));
  ASSERT_TRUE(verdict && verdict->left && verdict->right);
  const auto percent = [](double share) { return QString::number(share * 100, 'f', 0).toStdString() + "\u00A0%"; };
  EXPECT_EQ(words("overlapLengthLeft"), percent(verdict->left->overlapLength));
  EXPECT_EQ(words("overlapLengthRight"), percent(verdict->right->overlapLength));
  EXPECT_NEAR(label("centrumGap")->text().toDouble(), verdict->centrumGap * 1000, 0.05);
}

TEST_F(JointViewTest, BeyondIsSaidInWordsAndHatchedInItsColour) {
  select("C6-C7");
  EXPECT_EQ(words("complaint"), "(hidden)");
  EXPECT_GT(pixelsOf(theme().supported), 40);
  EXPECT_EQ(pixelsOf(theme().beyond), 0);
  type(0, "14");
  ASSERT_EQ(document_.assessment().find(joint("C6-C7"))->level, range::Level::Beyond);
  EXPECT_NE(words("complaint").find("ygapophyseal overlap"), std::string::npos) << words("complaint");
  EXPECT_GT(pixelsOf(theme().beyond), 20);
  EXPECT_EQ(pixelsOf(theme().supported), 0);
}

TEST_F(JointViewTest, TheMapTurnsTheJointWhileItsMarkIsDragged) {
  select("C6-C7");
  const JointIndex j = joint("C6-C7");
  const QPointF from = map()->markPlace(), to = map()->placeOf(0.05, -0.03);
  mapMouse(QEvent::MouseButtonPress, from);
  mapMouse(QEvent::MouseMove, (from + to) / 2);
  EXPECT_TRUE(document_.previewing());
  EXPECT_NE(document_.pose()[j], Eigen::Vector3d::Zero()) << "it turns while the mark is down";
  EXPECT_EQ(document_.project().pose[j], Eigen::Vector3d::Zero());
  const range::MotionRange down = document_.motionRange(j, 0);
  mapMouse(QEvent::MouseMove, to);
  EXPECT_NE(document_.motionRange(j, 0).max, down.max) << "the interval of one motion follows the other";
  mapMouse(QEvent::MouseButtonRelease, to);
  EXPECT_NEAR(document_.pose()[j].x(), 0.05, 1e-9);
  EXPECT_NEAR(document_.pose()[j].y(), -0.03, 1e-9);
  EXPECT_EQ(document_.undoStack().count(), 1);
  EXPECT_NEAR(field(0)->value(), qRadiansToDegrees(0.05), 0.05);
  document_.undoStack().undo();
  EXPECT_EQ(document_.pose()[j], Eigen::Vector3d::Zero());
}

TEST_F(JointViewTest, EscapeTakesTheMarkBack) {
  select("C6-C7");
  mapMouse(QEvent::MouseButtonPress, map()->markPlace());
  mapMouse(QEvent::MouseMove, map()->placeOf(0.05, 0.02));
  QTest::keyClick(map(), Qt::Key_Escape);
  EXPECT_FALSE(document_.previewing());
  mapMouse(QEvent::MouseMove, map()->placeOf(0.02, 0.02));
  mapMouse(QEvent::MouseButtonRelease, map()->placeOf(0.02, 0.02));
  EXPECT_EQ(document_.pose()[joint("C6-C7")], Eigen::Vector3d::Zero());
  EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(JointViewTest, ArrowsMoveTheMarkAndMergeIntoOneStep) {
  select("C6-C7");
  map()->setFocus();
  for (const Qt::Key key : {Qt::Key_Up, Qt::Key_Up, Qt::Key_Left}) QTest::keyClick(map(), key);
  const Eigen::Vector3d& angles = document_.pose()[joint("C6-C7")];
  EXPECT_NEAR(angles.x(), qDegreesToRadians(1.0), 1e-12);
  EXPECT_NEAR(angles.y(), qDegreesToRadians(0.5), 1e-12) << "left is positive";
  EXPECT_EQ(document_.undoStack().count(), 1);
}

TEST_F(JointViewTest, TheMapIsInkedWhereTheBonesSupport) {
  range::Assumptions wideMargin = document_.assumptions();
  wideMargin.nearMargin = 0.4;
  document_.changeAssumptions(wideMargin, "Near margin");
  select("C6-C7");
  const JointIndex j = joint("C6-C7");
  const range::MotionRange up = document_.motionRange(j, 0);
  const QImage picture = map()->grab().toImage();
  const auto green = [&](double dorsiflexion, double lateral) {
    const QColor c = picture.pixelColor(map()->placeOf(dorsiflexion, lateral).toPoint());
    return c.green() - c.red();
  };
  EXPECT_GT(green(0.3 * up.max, 0.02), 20);
  EXPECT_LT(green(1.2 * up.max, 0.02), 10);
  const double near = green(0.8 * up.max, 0.02), firm = green(0.3 * up.max, 0.02);
  EXPECT_LT(near, firm) << "softer near the edge";
}

TEST_F(JointViewTest, NeutralIsNamedWithItsResidual) {
  select("C6-C7");
  EXPECT_EQ(words("neutralBy"), "Neutral: facets centred") << "less than half a millimetre goes without saying";
  EXPECT_EQ(words("articulation"), "(hidden)");
  EXPECT_NE(label("caution")->toolTip().indexOf("Kuznetsov"), -1);
  select("knee.L");
  EXPECT_EQ(words("neutralBy"), "(hidden)");
}

TEST_F(JointViewTest, FacetsThatDoNotMeetSayHowFarTheirCentresAreApart) {
  files::Project project = sampleProject();
  anatomy::Specimen specimen = project.specimen();
  for (anatomy::Facet& facet : specimen.bones[specimen.findBone("C6").value().value].facets)
    if (facet.role == anatomy::FacetRole::PostzygLeft) facet.centre.y() += 0.008;
  project.setSpecimen(std::move(specimen));
  open(project);
  select("C6-C7");
  EXPECT_NE(words("neutralBy").find("Neutral: facets centred (facet centres "), std::string::npos)
      << words("neutralBy");
  EXPECT_NE(words("neutralBy").find("\u00A0mm apart)"), std::string::npos) << words("neutralBy");
}

TEST_F(JointViewTest, AJointThatCannotBeArticulatedSaysWhy) {
  files::Project project = sampleProject();
  anatomy::Specimen specimen = project.specimen();
  auto& facets = specimen.bones[specimen.findBone("C6").value().value].facets;
  std::erase_if(facets, [](const anatomy::Facet& f) { return f.role == anatomy::FacetRole::PostzygLeft; });
  project.setSpecimen(std::move(specimen));
  open(project);
  select("C6-C7");
  EXPECT_EQ(words("articulation"), "C6-C7 cannot be articulated: C6 has no left postzygapophyseal facet");
}

TEST_F(JointViewTest, FitsWithoutScrollingInASmallWindow) {
  view_.resize(328, 420);
  select("C6-C7");
  EXPECT_EQ(view_.findChild<QScrollArea*>()->verticalScrollBar()->maximum(), 0);
}

TEST_F(JointViewTest, TypedLimitsNameTheirSource) {
  select("knee.L");
  EXPECT_NE(words("grounds").find("program default, no source"), std::string::npos) << words("grounds");
  EXPECT_FALSE(drawing()->isVisible());
  EXPECT_NE(words("interval0").find(" to "), std::string::npos);
}

TEST_F(JointViewTest, AJointThatNothingJudgesSaysWhy) {
  files::Project project = sampleProject();
  anatomy::Specimen specimen = project.specimen();
  specimen.joints[joint("skull-C1").value].typed.reset();
  project.setSpecimen(std::move(specimen));
  open(project);
  select("skull-C1");
  EXPECT_NE(words("grounds").find("nobody has typed limits"), std::string::npos) << words("grounds");
  EXPECT_EQ(words("interval0"), "no limits known");
  type(0, "10");
  EXPECT_NEAR(document_.pose()[joint("skull-C1")].x(), qDegreesToRadians(10.0), 1e-12) << "it can still be posed";
}

TEST_F(JointViewTest, BonesThatHaveGrownTogetherHaveNoFields) {
  select("S1-S2");
  EXPECT_EQ(words("grounds"), "These bones do not move against each other.");
  for (int motion = 0; motion < 3; ++motion) EXPECT_FALSE(field(motion)->isVisible());
}

TEST(RoundLength, IsTheLargestRoundLengthThatFits) {
  EXPECT_DOUBLE_EQ(roundLength(0.0205), 0.020);
  EXPECT_DOUBLE_EQ(roundLength(0.0199), 0.010);
  EXPECT_DOUBLE_EQ(roundLength(0.050), 0.050);
  EXPECT_DOUBLE_EQ(roundLength(0.999), 0.500);
  EXPECT_DOUBLE_EQ(roundLength(0.0004), 0.001) << "never less than a millimetre";
}

}  // namespace
}  // namespace zyga::ui
