#include <gtest/gtest.h>

#include <QAbstractButton>
#include <QComboBox>
#include <QDoubleSpinBox>
#include <QTest>

#include "tests/ui/document_sample.h"
#include "ui/panels/assumptions_panel.h"
#include "ui/panels/cartilage_field.h"
#include "ui/panels/readouts.h"

namespace zyga::ui {
namespace {

class AssumptionsTest : public testing::Test {
 protected:
  void SetUp() override {
    document_.open(sampleProject(), {});
    panel_.resize(340, 500);
    panel_.show();
  }
  QDoubleSpinBox* box(const char* name) { return panel_.findChild<QDoubleSpinBox*>(name); }

  Document document_;
  AssumptionsPanel panel_{document_};
};

TEST_F(AssumptionsTest, FieldsShowTheDocument) {
  EXPECT_DOUBLE_EQ(box("leastOverlap")->value(), document_.assumptions().leastOverlap * 100);
  EXPECT_DOUBLE_EQ(box("nearMargin")->value(), document_.assumptions().nearMargin * 100);
  EXPECT_EQ(panel_.findChild<CartilageField*>("neckCartilage")->value(), document_.assumptions().neck);
}

TEST_F(AssumptionsTest, PresetActsAtOnceAndCanBeUndone) {
  const auto joint = document_.specimen().findJoint("C6-C7").value();
  const double half = document_.band(joint, 0).most;
  QTest::mouseClick(panel_.findChild<QAbstractButton*>("overlap25"), Qt::LeftButton);
  EXPECT_DOUBLE_EQ(document_.assumptions().leastOverlap, 0.25);
  EXPECT_GT(document_.band(joint, 0).most, half);
  document_.undoStack().undo();
  EXPECT_DOUBLE_EQ(box("leastOverlap")->value(), 50);
  EXPECT_DOUBLE_EQ(document_.band(joint, 0).most, half);
}

TEST_F(AssumptionsTest, TurningOneDialIsOneStep) {
  box("leastOverlap")->stepBy(-1);
  box("leastOverlap")->stepBy(-1);
  EXPECT_DOUBLE_EQ(document_.assumptions().leastOverlap, 0.4);
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

TEST_F(AssumptionsTest, OverlapByAreaIsSaid) {
  auto* by = panel_.findChild<QComboBox*>("overlapBy");
  by->setFocus();
  QTest::keyClick(by, Qt::Key_Down);
  EXPECT_EQ(document_.assumptions().overlapBy, range::OverlapBy::Area);
  EXPECT_TRUE(assumptionsInShort(document_.assumptions()).contains("by area"));
}

}  // namespace
}  // namespace zyga::ui
