#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QMouseEvent>
#include <QWheelEvent>
#include <cmath>

#include "core/kinematics/bend.h"
#include "tests/ui/patience.h"
#include "ui/theme/theme.h"
#include "ui/viewport/viewport.h"
#include "viewport_scene.h"

namespace zyga::ui {
namespace {

using picture::StandardView;

constexpr double kDegree = 3.14159265358979323846 / 180;

/// A real window with a real animal, its bones plain bars, seen exactly from the left.
class ViewportTest : public testing::Test {
 protected:
  void SetUp() override {
    if (!test::haveScreen()) GTEST_SKIP() << "no display: run under xvfb-run";
    document_.open(test::sampleProject("high_browser"), {});
    document_.setMeshes(test::barBones(document_.specimen()));
    viewport_ = std::make_unique<Viewport>(document_);
    viewport_->resize(1000, 640);
    viewport_->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(viewport_.get()));
    ASSERT_TRUE(QTest::qWaitFor([&] { return viewport_->ready(); }, kPatience));
    look(StandardView::Left);
  }

  void look(StandardView view) {
    Camera wanted = viewport_->camera();
    wanted.turnTo(view);
    viewport_->showView(view);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
          const Camera& c = viewport_->camera();
          return std::abs(c.azimuth - wanted.azimuth) < 1e-12 && std::abs(c.elevation - wanted.elevation) < 1e-12 &&
                 c.perspective == (view == StandardView::ThreeQuarter);
        },
        kPatience));
  }

  BoneIndex bone(const char* id) const { return document_.specimen().findBone(id).value(); }
  JointIndex joint(const char* id) const { return document_.specimen().findJoint(id).value(); }

  /// A pixel where the bone is in front: the middle of its centrum.
  QPoint on(const char* id) const {
    const auto at = viewport_->camera().project(document_.placement()[bone(id).value].translation());
    return QPointF(at->x(), at->y()).toPoint();
  }

  void send(QEvent::Type type, const QPoint& at, Qt::MouseButton button, Qt::MouseButtons buttons,
            Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    QMouseEvent event(type, at, viewport_->mapToGlobal(QPointF(at)), button, buttons, modifiers);
    QApplication::sendEvent(viewport_.get(), &event);
  }

  void press(const QPoint& at, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    send(QEvent::MouseButtonPress, at, Qt::LeftButton, Qt::LeftButton, modifiers);
  }
  void moveTo(const QPoint& from, const QPoint& to, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    constexpr int kSteps = 6;
    for (int i = 1; i <= kSteps; ++i)
      send(QEvent::MouseMove, from + (to - from) * i / kSteps, Qt::NoButton, Qt::LeftButton, modifiers);
  }
  void release(const QPoint& at, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    send(QEvent::MouseButtonRelease, at, Qt::LeftButton, Qt::NoButton, modifiers);
  }
  void drag(const QPoint& from, const QPoint& travel, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
    press(from, modifiers);
    moveTo(from, from + travel, modifiers);
    release(from + travel, modifiers);
  }

  /// Largest change of one motion over the joints, degrees.
  double change(const kinematics::Pose& before, int motion) const {
    double most = 0;
    for (std::size_t j = 0; j < before.angles.size(); ++j)
      most = std::max(most, std::abs(document_.pose().angles[j][motion] - before.angles[j][motion]));
    return most / kDegree;
  }

  /// Where the bone would move on screen if its chain were bent by so many degrees: a travel it can follow.
  QPoint reachable(const char* id, int motion, double degrees) const {
    const auto& specimen = document_.specimen();
    const auto chain = kinematics::dragChain(specimen, bone(id));
    const std::vector<double> even(chain.size(), 1.0 / static_cast<double>(chain.size()));
    Eigen::Vector3d turn = Eigen::Vector3d::Zero();
    turn[motion] = degrees * kDegree;
    const auto bent = kinematics::spreadTurn(specimen, document_.articulation(), document_.pose(), chain, even, turn);
    const auto X_WB = kinematics::forwardKinematics(specimen, document_.articulation(), bent);
    const auto at = viewport_->camera().project(X_WB[bone(id).value].translation());
    return QPointF(at->x(), at->y()).toPoint() - on(id);
  }

  Document document_;
  std::unique_ptr<Viewport> viewport_;
};

/// Pixels whose hue is that of `colour` and which are as full of colour.
int pixelsOf(const QImage& picture, const QColor& colour) {
  int count = 0;
  for (int y = 0; y < picture.height(); ++y)
    for (int x = 0; x < picture.width(); ++x) {
      const QColor p = picture.pixelColor(x, y);
      const int turn = std::abs(p.hsvHue() - colour.hsvHue());
      count += p.hsvHue() >= 0 && std::min(turn, 360 - turn) < 8 && p.hsvSaturation() > 150;
    }
  return count;
}

TEST_F(ViewportTest, ThePointerNamesTheBoneUnderIt) {
  QSignalSpy names(viewport_.get(), &Viewport::hovered);
  QSignalSpy hints(viewport_.get(), &Viewport::hint);
  QTest::mouseMove(viewport_.get(), on("C7"));
  ASSERT_TRUE(QTest::qWaitFor([&] { return !names.empty() && !hints.empty(); }, kPatience));
  EXPECT_TRUE(names.last().first().toString().startsWith("C7")) << names.last().first().toString().toStdString();
  EXPECT_EQ(document_.hoveredBone(), bone("C7"));
  EXPECT_THAT(hints.last().first().toString().toStdString(), testing::HasSubstr("bend the neck from C13-D1"));
  QTest::mouseMove(viewport_.get(), QPoint(4, 4));
  ASSERT_TRUE(QTest::qWaitFor([&] { return names.last().first().toString().isEmpty(); }, kPatience));
  EXPECT_EQ(document_.hoveredBone(), std::nullopt);
}

TEST_F(ViewportTest, DraggingANeckBoneUpRaisesItUnderThePointer) {
  const auto before = document_.pose();
  const QImage pictureBefore = viewport_->grabPicture();
  const QPoint from = on("C4"), skullFrom = on("skull");
  const QPoint travel = reachable("C4", 0, 25);
  drag(from, travel);
  EXPECT_EQ(document_.undoStack().count(), 1);
  EXPECT_EQ(document_.undoStack().undoText(), "Bend neck at C4");
  EXPECT_FALSE(document_.previewing());
  // The grabbed point has followed the pointer.
  EXPECT_LT((on("C4") - (from + travel)).manhattanLength(), 8);
  EXPECT_GT(change(before, 0), 0.5);
  // What hangs on other parts of the column stays.
  EXPECT_EQ(document_.pose()[joint("Ca5-Ca6")], before[joint("Ca5-Ca6")]);
  EXPECT_EQ(document_.pose()[joint("D4-D5")], before[joint("D4-D5")]);
  // A person sees it: the head has left its place.
  const QImage pictureAfter = viewport_->grabPicture();
  EXPECT_GT(test::differing(pictureBefore, pictureAfter, QRect(skullFrom - QPoint(15, 15), QSize(30, 30))), 40);
  document_.undoStack().undo();
  EXPECT_EQ(document_.pose(), before);
  document_.undoStack().redo();
  EXPECT_GT(change(before, 0), 0.5);
}

TEST_F(ViewportTest, ASideViewBendsInTheMidPlaneOnly) {
  const auto before = document_.pose();
  drag(on("C4"), {35, -40});
  EXPECT_EQ(change(before, 1), 0);
  EXPECT_EQ(change(before, 2), 0);
  drag(on("Ca15"), {0, -30});
  EXPECT_EQ(change(before, 1), 0);
  EXPECT_EQ(change(before, 2), 0);
  EXPECT_EQ(document_.undoStack().undoText(), "Bend tail at Ca15");
}

TEST_F(ViewportTest, ATopViewSwingsSidewaysOnly) {
  look(StandardView::Dorsal);
  const auto before = document_.pose();
  const Eigen::Vector3d headBefore = document_.placement()[bone("skull").value].translation();
  drag(on("skull"), reachable("skull", 1, 30));
  EXPECT_EQ(change(before, 0), 0);
  EXPECT_GT(change(before, 1), 0.5);
  // Down on this picture is the animal's left, and lateral flexion to the left is positive (design, section 3).
  EXPECT_GT(document_.placement()[bone("skull").value].translation().y(), headBefore.y() + 0.2);
  EXPECT_GT(document_.pose()[joint("C6-C7")][1], before[joint("C6-C7")][1]);
}

TEST_F(ViewportTest, ADragOutOfReachStretchesTheNeckAndHoldsStill) {
  const QPoint from = on("C2"), out = (from - on("D1")) / 2;
  press(from);
  moveTo(from, from + out);
  double largest = 0;
  kinematics::Pose last = document_.pose();
  for (int i = 1; i <= 10; ++i) {
    send(QEvent::MouseMove, from + out + QPoint(0, 2 * i), Qt::NoButton, Qt::LeftButton);
    largest = std::max(largest, change(last, 0));
    last = document_.pose();
  }
  EXPECT_LT(largest, 3) << "degrees a joint may turn while the pointer travels two pixels";
  release(from + out + QPoint(0, 20));
}

TEST_F(ViewportTest, ADragStaysInsideTheRangesAndTellsWhatItLacks) {
  look(StandardView::Left);
  const auto chain = kinematics::neckChain(document_.specimen());
  QSignalSpy hints(viewport_.get(), &Viewport::hint);
  const QPoint from = on("skull"), far(30, 30);  // a corner of the window, far beyond the neck
  press(from);
  moveTo(from, far);
  for (const JointIndex j : chain) {
    EXPECT_LT(document_.assessment().find(j)->level, range::Level::Beyond) << document_.specimen()[j].id;
  }
  ASSERT_FALSE(hints.empty());
  EXPECT_THAT(hints.last().first().toString().toStdString(),
              testing::AllOf(testing::HasSubstr(" short, stopped by "), testing::HasSubstr("Esc puts it back")));
  // The way that is missing is drawn to the pointer while the drag lasts, and gone after it.
  const QImage during = viewport_->grabPicture();
  release(far);
  EXPECT_EQ(document_.undoStack().count(), 1);
  const QImage after = viewport_->grabPicture();
  EXPECT_GT(test::differing(during, after, QRect(far - QPoint(10, 10), QSize(20, 20))), 15);
}

TEST_F(ViewportTest, PastTheRangesTheBoneFollowsAndWhatBreaksIsTold) {
  viewport_->reachSettings().setPastRanges(true);
  QSignalSpy hints(viewport_.get(), &Viewport::hint);
  const QPoint from = on("C4");
  const QPoint travel = reachable("C4", 0, 100);
  press(from);
  moveTo(from, from + travel);
  EXPECT_EQ(document_.assessment().level, range::Level::Beyond);
  EXPECT_THAT(hints.last().first().toString().toStdString(), testing::HasSubstr("past the range at "));
  release(from + travel);
  EXPECT_LT((on("C4") - (from + travel)).manhattanLength(), 8);
}

TEST_F(ViewportTest, LockedJointsStayAndAnotherAnimalUnlocksThem) {
  document_.setLockedJoints({joint("C8-C9")});
  const auto before = document_.pose();
  drag(on("C4"), reachable("C4", 0, 15));
  EXPECT_EQ(document_.pose()[joint("C8-C9")], before[joint("C8-C9")]);
  EXPECT_NE(document_.pose()[joint("C10-C11")], before[joint("C10-C11")]);
  drag(on("C4"), {20, 0}, Qt::AltModifier);
  EXPECT_EQ(document_.pose()[joint("C8-C9")], before[joint("C8-C9")]);
  document_.open(test::sampleProject("low_browser"), {});
  EXPECT_FALSE(document_.isLocked(joint("C8-C9")));
}

TEST_F(ViewportTest, ADraggedHeadKeepsItsGazeWhenAsked) {
  const auto gaze = [&]() -> Eigen::Vector3d { return document_.placement()[bone("skull").value].linear().col(0); };
  const Eigen::Vector3d before = gaze();
  const QPoint travel = reachable("skull", 0, 12);
  drag(on("skull"), travel);
  EXPECT_GT(std::acos(std::min(1.0, gaze().dot(before))), 1 * kDegree);
  document_.undoStack().undo();
  viewport_->reachSettings().setKeepsGaze(true);
  drag(on("skull"), travel);
  EXPECT_LT(std::acos(std::min(1.0, gaze().dot(before))), 0.5 * kDegree);
}

TEST_F(ViewportTest, ThreeQuarterDragFollowsThePointer) {
  look(StandardView::ThreeQuarter);
  const QPoint from = on("C3"), travel = reachable("C3", 1, 20);
  drag(from, travel);
  ASSERT_EQ(document_.undoStack().count(), 1);
  EXPECT_LT((on("C3") - (from + travel)).manhattanLength(), 10);
}

TEST_F(ViewportTest, ShiftSwingsAndAltTwists) {
  const auto before = document_.pose();
  drag(on("C4"), {0, 60}, Qt::ShiftModifier);
  EXPECT_EQ(change(before, 0), 0);
  EXPECT_GT(change(before, 1), 0.5);
  EXPECT_EQ(document_.undoStack().undoText(), "Swing neck at C4");
  // Pulled down on a view from the left, the neck comes towards the viewer: to the left.
  EXPECT_GT(document_.pose()[joint("C6-C7")][1], before[joint("C6-C7")][1]);
  document_.undoStack().undo();
  for (const auto modifier : {Qt::AltModifier, Qt::ControlModifier}) {
    drag(on("C4"), {60, 0}, modifier);
    EXPECT_EQ(change(before, 0), 0);
    EXPECT_EQ(change(before, 1), 0);
    EXPECT_GT(change(before, 2), 0.5);
    document_.undoStack().undo();
  }
}

TEST_F(ViewportTest, EscapePutsThePoseBackAndLeavesNoStep) {
  const auto before = document_.pose();
  const QPoint from = on("C4");
  press(from);
  moveTo(from, from + QPoint(0, -60));
  EXPECT_TRUE(document_.previewing());
  EXPECT_GT(change(before, 0), 0.5);
  QTest::keyClick(viewport_.get(), Qt::Key_Escape);
  EXPECT_EQ(document_.pose(), before);
  release(from + QPoint(0, -60));
  EXPECT_EQ(document_.pose(), before);
  EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(ViewportTest, ComingBackToTheStartOfADragChangesNothing) {
  const auto before = document_.pose();
  const QPoint from = on("C4");
  press(from);
  moveTo(from, from + QPoint(40, -60));
  moveTo(from + QPoint(40, -60), from);
  EXPECT_LT(change(before, 0), 1e-2);
  QTest::keyClick(viewport_.get(), Qt::Key_Escape);
}

TEST_F(ViewportTest, AClickChoosesAndAClickBesideLetsGo) {
  QTest::mouseClick(viewport_.get(), Qt::LeftButton, {}, on("C9"));
  EXPECT_EQ(document_.selectedBone(), bone("C9"));
  EXPECT_EQ(document_.undoStack().count(), 0);
  QTest::mouseClick(viewport_.get(), Qt::LeftButton, {}, QPoint(5, 5));
  EXPECT_EQ(document_.selectedBone(), std::nullopt);
}

TEST_F(ViewportTest, ADoubleClickMakesTheJointTheBaseOfTheBend) {
  QTest::mouseDClick(viewport_.get(), Qt::LeftButton, {}, on("C8"));
  EXPECT_EQ(document_.bendBase(), joint("C8-C9"));
  const auto before = document_.pose();
  drag(on("C4"), reachable("C4", 0, 15));
  EXPECT_EQ(document_.pose()[joint("C10-C11")], before[joint("C10-C11")]);
  EXPECT_NE(document_.pose()[joint("C8-C9")], before[joint("C8-C9")]);
  QTest::mouseDClick(viewport_.get(), Qt::LeftButton, {}, on("C8"));
  EXPECT_EQ(document_.bendBase(), std::nullopt) << "the same again takes it away";
}

TEST_F(ViewportTest, ARibStandsForItsVertebraAndTheJawOpensAlone) {
  DragTool tool(document_);
  EXPECT_EQ(tool.chainOf(bone("rib.D4.L")), tool.chainOf(bone("D4")));
  EXPECT_EQ(tool.jointOf(bone("rib.D4.L")), joint("D4-D5"));
  EXPECT_EQ(tool.chainOf(bone("jaw")), std::vector{joint("jaw")});
  EXPECT_TRUE(tool.chainOf(bone("S2")).empty());
  EXPECT_EQ(tool.jointOf(bone("S2")), std::nullopt);
}

TEST_F(ViewportTest, ArrowKeysNudgeTheChosenJointAndMergeIntoOneStep) {
  document_.selectJoint(joint("C6-C7"));
  viewport_->setFocus();
  const Eigen::Vector3d before = document_.pose()[joint("C6-C7")];
  QTest::keyClick(viewport_.get(), Qt::Key_Up);
  QTest::keyClick(viewport_.get(), Qt::Key_Up);
  EXPECT_NEAR(document_.pose()[joint("C6-C7")][0] - before[0], 1.0 * kDegree, 1e-12);
  EXPECT_EQ(document_.undoStack().count(), 1);
  QTest::keyClick(viewport_.get(), Qt::Key_Left, Qt::ShiftModifier);
  EXPECT_NEAR(document_.pose()[joint("C6-C7")][1] - before[1], 5.0 * kDegree, 1e-12);
  EXPECT_EQ(document_.undoStack().count(), 2);
  document_.undoStack().undo();
  document_.undoStack().undo();
  EXPECT_EQ(document_.pose()[joint("C6-C7")], before);
}

TEST_F(ViewportTest, AJointBeyondItsRangeIsMarkedOnTheBone) {
  kinematics::Pose neutral = document_.pose();
  for (const char* id : {"C5-C6", "C6-C7", "C7-C8"}) neutral[joint(id)].setZero();
  document_.changePose(neutral, "neutral");
  const QImage before = viewport_->grabPicture();
  kinematics::Pose bent = neutral;
  bent[joint("C6-C7")] = {70 * kDegree, 0, 0};
  document_.changePose(bent, "bend");
  ASSERT_EQ(document_.assessment().find(joint("C6-C7"))->level, range::Level::Beyond);
  const QImage after = viewport_->grabPicture();
  EXPECT_GT(pixelsOf(after, theme().beyond), pixelsOf(before, theme().beyond) + 60);
}

TEST_F(ViewportTest, TheViewTurnsMovesAndMagnifiesWithoutTouchingTheDocument) {
  const auto before = document_.pose();
  const Camera start = viewport_->camera();
  QTest::mousePress(viewport_.get(), Qt::RightButton, {}, QPoint(500, 100));
  send(QEvent::MouseMove, {560, 130}, Qt::NoButton, Qt::RightButton);
  QTest::mouseRelease(viewport_.get(), Qt::RightButton, {}, QPoint(560, 130));
  EXPECT_NE(viewport_->camera().azimuth, start.azimuth);
  EXPECT_GT(viewport_->camera().elevation, start.elevation);
  const Eigen::Vector3d target = viewport_->camera().target;
  QTest::mousePress(viewport_.get(), Qt::MiddleButton, {}, QPoint(500, 100));
  send(QEvent::MouseMove, {540, 100}, Qt::NoButton, Qt::MiddleButton);
  QTest::mouseRelease(viewport_.get(), Qt::MiddleButton, {}, QPoint(540, 100));
  EXPECT_GT((viewport_->camera().target - target).norm(), 0.01);
  const double height = viewport_->camera().viewHeight;
  QWheelEvent wheel(QPointF(200, 200), viewport_->mapToGlobal(QPointF(200, 200)), {}, {0, 240}, Qt::NoButton, {},
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(viewport_.get(), &wheel);
  EXPECT_LT(viewport_->camera().viewHeight, height);
  EXPECT_EQ(document_.pose(), before);
  EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(ViewportTest, FramingABoneBringsItToTheMiddle) {
  viewport_->frameBone(bone("Ca20"));
  const QPointF middle(500, 320);
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {
        const QPointF away = *viewport_->placeOf(bone("Ca20")) - middle;
        return std::hypot(away.x(), away.y()) < 250 && viewport_->camera().viewHeight < 3;
      },
      kPatience));
  viewport_->frameAll();
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {
        const QRect window = viewport_->rect();
        return window.contains(on("skull")) && window.contains(on("Ca52"));
      },
      kPatience));
}

TEST_F(ViewportTest, UntilBonesAreSculptedTheyAreDrawnAsSticksAndCanBeBent) {
  document_.open(test::sampleProject("high_browser"), {});
  look(StandardView::Left);
  ASSERT_FALSE(viewport_->ready());
  QSignalSpy names(viewport_.get(), &Viewport::hovered);
  send(QEvent::MouseMove, on("C7"), Qt::NoButton, Qt::NoButton);
  ASSERT_FALSE(names.empty());
  EXPECT_TRUE(names.last().first().toString().startsWith("C7"));
  const QImage picture = viewport_->grabPicture();
  const QRect around(on("C7") - QPoint(6, 6), QSize(12, 12));
  QImage bare(picture.size(), picture.format());
  bare.fill(picture.pixelColor(on("C7") - QPoint(0, 120)));
  EXPECT_GT(test::differing(picture, bare, around), 8);
  const auto before = document_.pose();
  drag(on("C4"), {0, -40});
  EXPECT_GT(change(before, 0), 0.5);
}

}  // namespace
}  // namespace zyga::ui
