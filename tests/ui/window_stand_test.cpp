#include <gmock/gmock.h>

#include <QCheckBox>
#include <QMenu>
#include <cmath>

#include "core/kinematics/stand_readings.h"
#include "core/kinematics/standing.h"
#include "tests/ui/window_fixture.h"
#include "ui/commands/stand_edits.h"
#include "ui/theme/unit_spin_box.h"
#include "ui/words/stance_words.h"

namespace zyga::ui {
namespace {

using kinematics::Foot;
using testing::ElementsAre;

/// Feet, trunk, blades and stances by the hands of a person in the whole window.
class StandTest : public WindowTest {
 protected:
  void SetUp() override {
    WindowTest::SetUp();
    QTest::keyClick(window_.get(), Qt::Key_1, Qt::ControlModifier);  // exactly from the left
    ASSERT_TRUE(QTest::qWaitFor([this] { return std::abs(viewport()->camera().elevation) < 1e-9; }, kPatience));
    settle();
  }

  double height(Foot foot) const {
    for (const auto& at : kinematics::footPlaces(document_->specimen(), document_->placement()))
      if (at.foot == foot) return at.height;
    return NAN;
  }
  kinematics::StandReadings readings() const {
    return kinematics::readStand(document_->specimen(), document_->placement());
  }
  /// Drags with a modifier key held, and looks at the picture on the way.
  void dragWith(Qt::KeyboardModifiers modifiers, QPointF from, QPointF to) {
    const auto send = [&](QEvent::Type type, QPointF at, Qt::MouseButton button, Qt::MouseButtons buttons) {
      QMouseEvent event(type, at, viewport()->mapToGlobal(at), button, buttons, modifiers);
      QApplication::sendEvent(viewport(), &event);
      QCoreApplication::processEvents();
    };
    send(QEvent::MouseButtonPress, from, Qt::LeftButton, Qt::LeftButton);
    for (int step = 1; step <= 8; ++step)
      send(QEvent::MouseMove, from + (to - from) * step / 8, Qt::NoButton, Qt::LeftButton);
    send(QEvent::MouseButtonRelease, to, Qt::LeftButton, Qt::NoButton);
  }
  double pixelsPerMetre() const {
    const auto& camera = viewport()->camera();
    const auto a = camera.project({0, 0, 0}), b = camera.project({0, 0, 1});
    return std::abs(a->y() - b->y());
  }
  QPointF on(const char* id) const { return viewport()->placeOf(bone(id)).value(); }
};

TEST_F(StandTest, AFootIsDraggedUpAndSnapsBackOntoTheGround) {
  const auto start = document_->pose();
  const QPointF at = on("metacarpal3.L");
  drag(viewport(), at, at + QPointF(0, -0.4 * pixelsPerMetre()));
  EXPECT_NEAR(height(Foot::LeftFore), 0.4, 0.03);
  EXPECT_NEAR(height(Foot::RightFore), 0, 1e-3) << "the others stand";
  EXPECT_EQ(document_->undoStack().count(), 1);
  EXPECT_EQ(document_->undoStack().undoText(), "Move the left fore foot");
  const QPointF up = on("metacarpal3.L");
  drag(viewport(), up, up + QPointF(0, 0.37 * pixelsPerMetre()));
  EXPECT_NEAR(height(Foot::LeftFore), 0, 1e-3) << "near the ground it stands on it";
  QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
  QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(document_->pose(), start);
}

TEST_F(StandTest, ADraggedPelvisMovesTheTrunkOverPlantedFeet) {
  const auto before = readings();
  std::vector<Eigen::Vector3d> soles;
  const auto solesNow = [&] {
    std::vector<Eigen::Vector3d> now;
    for (const auto& sole : kinematics::solePoints(document_->specimen()))
      now.push_back(document_->placement()[sole.bone.value] * sole.p_BSole);
    return now;
  };
  soles = solesNow();
  // Far enough on the screen to be a drag and no click.
  const QPointF at = on("S2");
  drag(viewport(), at, at + QPointF(0, 0.4 * pixelsPerMetre()));
  EXPECT_NEAR(readings().hipHeight, before.hipHeight - 0.4, 0.02);
  const auto after = solesNow();
  for (std::size_t i = 0; i < soles.size(); ++i) EXPECT_LT((after[i] - soles[i]).norm(), 1e-3);
  EXPECT_EQ(document_->undoStack().count(), 1);
  // Far up the feet hold the trunk back.
  const QPointF low = on("S2");
  drag(viewport(), low, low + QPointF(0, -2 * pixelsPerMetre()));
  EXPECT_LT(readings().hipHeight, before.hipHeight + 0.2);
  const auto last = solesNow();
  for (std::size_t i = 0; i < soles.size(); ++i) EXPECT_LT((last[i] - soles[i]).norm(), 2e-3);
}

TEST_F(StandTest, ShiftOnThePelvisTiltsTheTrunk) {
  const double before = readings().trunkSlope;
  QTest::keyClick(window_.get(), Qt::Key_PageDown, Qt::ControlModifier | Qt::AltModifier);
  for (int i = 0; i < 4; ++i) QTest::keyClick(window_.get(), Qt::Key_PageDown, Qt::ControlModifier | Qt::AltModifier);
  EXPECT_EQ(document_->undoStack().count(), 1) << "steps of a key become one";
  const QPointF at = on("S2");
  dragWith(Qt::ShiftModifier, at, at + QPointF(0, 20));
  EXPECT_LT(readings().trunkSlope, before - 0.01);
  for (const Foot foot : kinematics::kFeet) EXPECT_NEAR(height(foot), 0, 2e-3);
}

TEST_F(StandTest, EscapePutsAFootBack) {
  const auto start = document_->pose();
  const QPointF at = on("metatarsal3.L");
  QTest::mousePress(viewport(), Qt::LeftButton, {}, at.toPoint());
  QMouseEvent move(QEvent::MouseMove, at + QPointF(30, -60), viewport()->mapToGlobal(at + QPointF(30, -60)),
                   Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(viewport(), &move);
  EXPECT_TRUE(document_->previewing());
  EXPECT_GT(height(Foot::LeftHind), 0.1);
  QTest::keyClick(viewport(), Qt::Key_Escape);
  EXPECT_EQ(document_->pose(), start);
  EXPECT_EQ(document_->undoStack().count(), 0);
}

TEST_F(StandTest, FeetAreLiftedAndPlantedByKeyMenuAndButton) {
  QTest::keyClick(window_.get(), Qt::Key_2, Qt::ControlModifier | Qt::AltModifier);
  EXPECT_NEAR(height(Foot::RightFore), 0.25, 0.08);
  auto* button = part<QPushButton>("foot.right.fore.foot");
  ASSERT_NE(button, nullptr);
  EXPECT_EQ(button->text(), "Plant");
  button->click();
  EXPECT_NEAR(height(Foot::RightFore), 0, 1e-3);
  EXPECT_EQ(button->text(), "Lift");
  // A right click without travel on a foot.
  const QPoint at = on("metatarsal3.L").toPoint();
  QTest::mouseMove(viewport(), at);
  QTest::mousePress(viewport(), Qt::RightButton, {}, at);
  QTest::mouseRelease(viewport(), Qt::RightButton, {}, at);
  QMenu* menu = nullptr;
  ASSERT_TRUE(QTest::qWaitFor([&] { return (menu = part<QMenu>("boneMenu")) && menu->isVisible(); }, kPatience));
  ASSERT_FALSE(menu->actions().empty());
  EXPECT_EQ(menu->actions().front()->text().remove('&'), "Lift the left hind foot");
  QTest::keyClick(menu, Qt::Key_Down);
  QTest::keyClick(menu, Qt::Key_Return);
  EXPECT_GT(height(Foot::LeftHind), 0.1);
  QTest::keyClick(window_.get(), Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
  for (const Foot foot : kinematics::kFeet) EXPECT_NEAR(height(foot), 0, 1e-3);
}

TEST_F(StandTest, EveryStanceIsOneStepAndIsTold) {
  const auto start = document_->pose();
  int number = 1;
  for (const study::Stance stance : study::kStances) {
    QTest::keyClick(window_.get(), static_cast<Qt::Key>(Qt::Key_0 + number), Qt::AltModifier);
    EXPECT_EQ(document_->undoStack().count(), number) << idOf(stance);
    ASSERT_TRUE(QTest::qWaitFor([&] { return messages().size() == 1; }, kPatience)) << idOf(stance);
    EXPECT_TRUE(messages().front().startsWith(stanceName(stance))) << messages().front().toStdString();
    EXPECT_FALSE(messages().front().contains("Out of range")) << messages().front().toStdString();
    ++number;
  }
  for (int i = 1; i < number; ++i) QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(document_->pose(), start);
}

TEST_F(StandTest, BladesAreTypedTogetherAndApartWithTheForefeetPlanted) {
  auto* slope = part<UnitSpinBox>("bladeSlopeLeft");
  const Eigen::Vector3d left = document_->placement()[bone("metacarpal3.L").value].translation();
  slope->setValue(64);
  EXPECT_NEAR(readings().bladeSlope[0] * 57.29577951, 64, 1e-6);
  EXPECT_NEAR(readings().bladeSlope[1] * 57.29577951, 64, 1e-6);
  EXPECT_LT((document_->placement()[bone("metacarpal3.L").value].translation() - left).norm(), 1e-3);
  part<QCheckBox>("bladesTogether")->click();
  part<UnitSpinBox>("bladeSlideRight")->setValue(30);
  EXPECT_NEAR(part<UnitSpinBox>("bladeSlideLeft")->value(), 0, 1e-9);
  slope->setValue(52);
  EXPECT_TRUE(part<QLabel>("bladeNote")->text().startsWith("Flatter than what is published"));
  EXPECT_TRUE(part<QLabel>("bladeNote")->text().contains("Schwarz, Frey & Meyer 2007"));
}

TEST_F(StandTest, ReadingsAreLiveWhileTheTrunkIsDragged) {
  auto* hip = part<QLabel>("hipHeight");
  const QString before = hip->text();
  const QPointF at = on("ilium.L");
  QTest::mousePress(viewport(), Qt::LeftButton, {}, at.toPoint());
  const QPointF to = at + QPointF(0, 25);
  QMouseEvent move(QEvent::MouseMove, to, viewport()->mapToGlobal(to), Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
  QApplication::sendEvent(viewport(), &move);
  EXPECT_TRUE(document_->previewing());
  EXPECT_NE(hip->text(), before);
  QTest::keyClick(viewport(), Qt::Key_Escape);
  EXPECT_EQ(hip->text(), before);
}

}  // namespace
}  // namespace zyga::ui
