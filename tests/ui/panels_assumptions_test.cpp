#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QApplication>
#include <QCheckBox>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QMenu>
#include <QMouseEvent>
#include <QSettings>
#include <QTest>
#include <QToolButton>
#include <algorithm>

#include "tests/ui/document_sample.h"
#include "ui/panels/assumptions_panel.h"
#include "ui/panels/cartilage_field.h"
#include "ui/panels/readouts.h"
#include "ui/theme/drag_slider.h"

namespace zyga::ui {
namespace {

class AssumptionsTest : public testing::Test {
 protected:
  void SetUp() override {
    QSettings().remove("assumptions/keepInSpace");
    document_.setKeepsInSpace(false);
    document_.open(sampleProject(), {});
    panel_.resize(340, 500);
    panel_.show();
  }
  QDoubleSpinBox* box(const char* name) { return panel_.findChild<QDoubleSpinBox*>(name); }

  DragSlider* neckSlider() { return panel_.findChild<CartilageField*>("neckCartilage")->findChild<DragSlider*>(); }
  static void mouse(QWidget* widget, QEvent::Type type, const QPointF& at) {
    const bool up = type == QEvent::MouseButtonRelease, move = type == QEvent::MouseMove;
    QMouseEvent event(type, at, widget->mapToGlobal(at), move ? Qt::NoButton : Qt::LeftButton,
                      up ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(widget, &event);
  }

  Document document_;
  AssumptionsPanel panel_{document_};
};

TEST_F(AssumptionsTest, FieldsShowTheDocument) {
  EXPECT_DOUBLE_EQ(box("leastOverlap")->value(), document_.assumptions().minOverlap * 100);
  EXPECT_DOUBLE_EQ(box("nearMargin")->value(), document_.assumptions().nearMargin * 100);
  EXPECT_EQ(panel_.findChild<CartilageField*>("neckCartilage")->value(), document_.assumptions().neck);
}

TEST_F(AssumptionsTest, PresetActsAtOnceAndCanBeUndone) {
  const auto joint = document_.specimen().findJoint("C6-C7").value();
  const double half = document_.motionRange(joint, 0).max;
  QTest::mouseClick(panel_.findChild<QAbstractButton*>("overlap25"), Qt::LeftButton);
  EXPECT_DOUBLE_EQ(document_.assumptions().minOverlap, 0.25);
  EXPECT_GT(document_.motionRange(joint, 0).max, half);
  document_.undoStack().undo();
  EXPECT_DOUBLE_EQ(box("leastOverlap")->value(), 50);
  EXPECT_DOUBLE_EQ(document_.motionRange(joint, 0).max, half);
}

TEST_F(AssumptionsTest, TurningOneDialIsOneStep) {
  box("leastOverlap")->stepBy(-1);
  box("leastOverlap")->stepBy(-1);
  EXPECT_DOUBLE_EQ(document_.assumptions().minOverlap, 0.4);
  EXPECT_EQ(document_.undoStack().count(), 1);
  box("nearMargin")->stepBy(1);
  EXPECT_EQ(document_.undoStack().count(), 2);
}

TEST_F(AssumptionsTest, CartilageCanBeInMillimetres) {
  auto* neck = panel_.findChild<CartilageField*>("neckCartilage");
  auto* unit = neck->findChild<QComboBox*>();
  unit->setFocus();
  QTest::keyClick(unit, Qt::Key_Down);
  auto* amount = neck->findChild<QDoubleSpinBox*>();
  amount->setValue(12);
  EXPECT_EQ(document_.assumptions().neck, (range::Cartilage{range::Cartilage::In::Millimetres, 12}));
  document_.undoStack().setIndex(0);
  EXPECT_EQ(neck->value(), sampleProject().assumptions.neck);
}

TEST_F(AssumptionsTest, TheSliderActsWhileItIsHeldAndIsOneStep) {
  const auto joint = document_.specimen().findJoint("C6-C7").value();
  const auto skull = document_.specimen().findBone("skull").value();
  const range::MotionRange before = document_.motionRange(joint, 0);
  const Eigen::Vector3d head = document_.placement()[skull.value].translation();
  DragSlider* slider = neckSlider();
  const QPointF from(slider->placeOf(slider->value()), slider->height() / 2.0);
  const QPointF to(slider->placeOf(200), from.y());
  mouse(slider, QEvent::MouseButtonPress, from);
  mouse(slider, QEvent::MouseMove, (from + to) / 2);
  EXPECT_TRUE(document_.previewing());
  const range::MotionRange halfway = document_.motionRange(joint, 0);
  EXPECT_NE(halfway.max, before.max) << "the band moves while the slider is down";
  EXPECT_GT((document_.placement()[skull.value].translation() - head).norm(), 0.01) << "and so does the animal";
  EXPECT_EQ(document_.undoStack().count(), 0);
  mouse(slider, QEvent::MouseMove, to);
  EXPECT_NE(document_.motionRange(joint, 0).max, halfway.max);
  mouse(slider, QEvent::MouseButtonRelease, to);
  EXPECT_NEAR(document_.project().assumptions.neck.amount, 20, 0.6);
  EXPECT_EQ(document_.undoStack().count(), 1);
  document_.undoStack().undo();
  EXPECT_DOUBLE_EQ(document_.motionRange(joint, 0).max, before.max);
  EXPECT_EQ(panel_.findChild<CartilageField*>("neckCartilage")->value(), sampleProject().assumptions.neck);
}

TEST_F(AssumptionsTest, EscapeTakesTheSliderBack) {
  DragSlider* slider = neckSlider();
  const int start = slider->value();
  const QPointF to(slider->placeOf(200), slider->height() / 2.0);
  mouse(slider, QEvent::MouseButtonPress, to);
  EXPECT_TRUE(document_.previewing()) << "a press beside the handle takes it there";
  QTest::keyClick(slider, Qt::Key_Escape);
  EXPECT_FALSE(document_.previewing());
  EXPECT_EQ(slider->value(), start);
  mouse(slider, QEvent::MouseMove, to + QPointF(9, 0));
  mouse(slider, QEvent::MouseButtonRelease, to);
  EXPECT_EQ(slider->value(), start);
  EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(AssumptionsTest, ArrowKeysOnASliderAreOneStep) {
  auto* slider = panel_.findChild<DragSlider*>("leastOverlapSlider");
  slider->setFocus();
  QTest::keyClick(slider, Qt::Key_Left);
  QTest::keyClick(slider, Qt::Key_Left);
  EXPECT_DOUBLE_EQ(document_.assumptions().minOverlap, 0.4);
  EXPECT_EQ(document_.undoStack().count(), 1);
}

TEST_F(AssumptionsTest, TheDefinitionOfNeutralIsChosenByNameAndHasItsSources) {
  auto* by = panel_.findChild<QComboBox*>("neutralBy");
  EXPECT_EQ(by->currentText(), "facets centred");
  EXPECT_TRUE(by->toolTip().contains("Taylor, Wedel & Naish 2009"));
  by->setFocus();
  QTest::keyClick(by, Qt::Key_Down);
  EXPECT_EQ(document_.assumptions().neutralBy, range::NeutralBy::FacetsAndCentra);
  EXPECT_EQ(by->currentText(), "facets centred, centrum faces parallel");
  EXPECT_TRUE(by->toolTip().contains("Mallison 2010"));
  EXPECT_TRUE(document_.undoStack().undoText().endsWith("deflections kept"));
}

TEST_F(AssumptionsTest, WhatTheSlopeOfAVertebraIsMeasuredByIsChosenByName) {
  auto* by = panel_.findChild<QComboBox*>("horizontalBy");
  EXPECT_EQ(by->currentText(), "floor of the neural canal");
  EXPECT_EQ(by->count(), 4);
  by->setFocus();
  QTest::keyClick(by, Qt::Key_End);
  EXPECT_EQ(document_.assumptions().horizontalBy, anatomy::HorizontalBy::Articulation);
  EXPECT_EQ(by->currentText(), "similarity in articulation");
  EXPECT_TRUE(by->toolTip().contains("Taylor & Wedel 2022"));
  document_.undoStack().undo();
  EXPECT_EQ(by->currentText(), "floor of the neural canal");
}

TEST_F(AssumptionsTest, BonesStayInSpaceOnRequestAndTheHabitIsKept) {
  auto* stays = panel_.findChild<QComboBox*>("whatStays");
  stays->setFocus();
  QTest::keyClick(stays, Qt::Key_Down);
  auto* neck = panel_.findChild<CartilageField*>("neckCartilage");
  neck->findChild<QDoubleSpinBox*>()->stepBy(4);
  EXPECT_TRUE(document_.undoStack().undoText().endsWith("bones kept in space"));
  EXPECT_NE(document_.pose()[document_.specimen().findJoint("C6-C7").value()], Eigen::Vector3d::Zero());
  Document other;
  const AssumptionsPanel again(other);
  EXPECT_TRUE(other.keepsInSpace());
}

TEST_F(AssumptionsTest, PresetsNameTheirSource) {
  auto* button = panel_.findChild<QToolButton*>("cartilagePresets");
  QAction* turkey = nullptr;
  for (QAction* action : button->menu()->actions())
    if (action->text().startsWith("Turkey")) turkey = action;
  ASSERT_NE(turkey, nullptr);
  EXPECT_TRUE(turkey->toolTip().contains("Taylor & Wedel 2013"));
  turkey->trigger();
  EXPECT_EQ(document_.assumptions().neck, (range::Cartilage{range::Cartilage::In::PercentOfCentrum, 4.56}));
}

TEST_F(AssumptionsTest, CartilageOfAGrownOrAYoungAnimalGoesToTheWholeColumnInOneStep) {
  const QList<QAction*> actions = panel_.findChild<QToolButton*>("cartilagePresets")->menu()->actions();
  const auto choose = [&](const char* start) {
    const auto found =
        std::find_if(actions.begin(), actions.end(), [&](QAction* action) { return action->text().startsWith(start); });
    ASSERT_NE(found, actions.end()) << start;
    (*found)->trigger();
  };
  const range::Assumptions before = document_.assumptions();
  choose("Grown sauropod: 4.5");
  for (const range::Cartilage& cartilage :
       {document_.assumptions().neck, document_.assumptions().trunk, document_.assumptions().tail})
    EXPECT_EQ(cartilage, (range::Cartilage{range::Cartilage::In::PercentOfCentrum, 4.5}));
  document_.undoStack().undo();
  EXPECT_EQ(document_.assumptions(), before) << "one step";
  choose("Young sauropod: 15");
  EXPECT_EQ(document_.assumptions().tail.amount, 15);
}

TEST_F(AssumptionsTest, TheHintSaysWhatAStepHasDone) {
  QString said;
  QObject::connect(&panel_, &AssumptionsPanel::hint, [&](const QString& text) { said = text; });
  panel_.findChild<CartilageField*>("boneContact")->findChild<QDoubleSpinBox*>()->stepBy(1);
  EXPECT_EQ(document_.assumptions().contactTolerated,
            (range::ContactTolerance{range::ContactTolerance::In::PercentOfBone, 1.4}));
  EXPECT_TRUE(said.startsWith("Tolerated bone interpenetration")) << said.toStdString();
}

TEST_F(AssumptionsTest, BoneContactCanBeTypedInMillimetres) {
  auto* field = panel_.findChild<CartilageField*>("boneContact");
  auto* unit = field->findChild<QComboBox*>();
  unit->setFocus();
  QTest::keyClick(unit, Qt::Key_Down);
  field->findChild<QDoubleSpinBox*>()->stepBy(4);
  EXPECT_EQ(document_.assumptions().contactTolerated,
            (range::ContactTolerance{range::ContactTolerance::In::Millimetres, 5.3}));
  document_.undoStack().undo();
  EXPECT_EQ(field->value().in, range::Cartilage::In::PercentOfCentrum) << "one step, as for cartilage";
}

TEST_F(AssumptionsTest, ScansMayBeJudgedAgainstInferredNeighbours) {
  auto* box = panel_.findChild<QCheckBox*>("inferredNeighbours");
  ASSERT_FALSE(box->isChecked());
  box->click();
  EXPECT_TRUE(document_.assumptions().inferredNeighbours);
  document_.undoStack().undo();
  EXPECT_FALSE(box->isChecked());
}

TEST_F(AssumptionsTest, OverlapByAreaIsSaid) {
  auto* by = panel_.findChild<QComboBox*>("overlapBy");
  by->setFocus();
  QTest::keyClick(by, Qt::Key_Down);
  EXPECT_EQ(document_.assumptions().overlapBy, range::OverlapBy::Area);
  EXPECT_TRUE(assumptionsInShort(document_.assumptions()).contains("by area"));
}

}  // namespace
}  // namespace zyga::ui
