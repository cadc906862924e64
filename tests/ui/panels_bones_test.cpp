#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>
#include <QTreeView>

#include "tests/ui/document_sample.h"
#include "ui/panels/bones_model.h"
#include "ui/panels/bones_panel.h"
#include "ui/panels/measures_model.h"

namespace zyga::ui {
namespace {

class BonesTest : public testing::Test {
 protected:
  void SetUp() override { document_.open(sampleProject(), {}); }
  BoneIndex bone(const char* id) const { return document_.specimen().findBone(id).value(); }

  Document document_;
};

QStringList shownBones(const QAbstractItemModel& model) {
  QStringList ids;
  for (int region = 0; region < model.rowCount(); ++region) {
    const QModelIndex parent = model.index(region, 0);
    for (int row = 0; row < model.rowCount(parent); ++row)
      ids += model.index(row, 0, parent).data(BonesModel::kIdRole).toString();
  }
  return ids;
}

TEST_F(BonesTest, ModelKeepsTheRulesOfItsKind) {
  BonesModel model(document_);
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  document_.open(sampleProject(), {});
  document_.setBoneRecord(bone("C7"), anatomy::Evidence::Found, "page 3");
}

TEST_F(BonesTest, EveryBoneHangsUnderItsRegionOnce) {
  const BonesModel model(document_);
  const QStringList ids = shownBones(model);
  EXPECT_EQ(static_cast<std::size_t>(ids.size()), document_.specimen().bones.size());
  EXPECT_EQ(QSet<QString>(ids.begin(), ids.end()).size(), ids.size());
  for (std::size_t i = 0; i < document_.specimen().bones.size(); ++i) {
    const QModelIndex index = model.indexOf({i});
    EXPECT_EQ(model.boneAt(index), BoneIndex{i});
    EXPECT_EQ(index.data(BonesModel::kIdRole).toString().toStdString(), document_.specimen().bones[i].id);
  }
}

TEST_F(BonesTest, IndexesOutsideAreInvalid) {
  const BonesModel model(document_);
  EXPECT_FALSE(model.index(model.rowCount(), 0).isValid());
  EXPECT_FALSE(model.index(-1, 0).isValid());
  EXPECT_FALSE(model.index(0, BonesModel::kColumnCount).isValid());
  const QModelIndex region = model.index(0, 0);
  EXPECT_FALSE(model.index(model.rowCount(region), 0, region).isValid());
  EXPECT_EQ(model.rowCount(model.index(0, 0, region)), 0);
}

TEST_F(BonesTest, EditingEvidenceIsAStepThatCanBeUndone) {
  BonesModel model(document_);
  const QModelIndex cell = model.indexOf(bone("C7")).siblingAtColumn(BonesModel::kEvidence);
  EXPECT_EQ(cell.data().toString(), "inferred");
  EXPECT_TRUE(model.setData(cell, static_cast<int>(anatomy::Evidence::Found)));
  EXPECT_EQ(cell.data().toString(), "preserved");
  document_.undoStack().undo();
  EXPECT_EQ(cell.data().toString(), "inferred");
  EXPECT_FALSE(model.setData(model.index(0, BonesModel::kEvidence), 0)) << "a region has no evidence of its own";
}

TEST_F(BonesTest, SettingWhatIsThereIsNoStep) {
  BonesModel model(document_);
  const QModelIndex cell = model.indexOf(bone("C7")).siblingAtColumn(BonesModel::kEvidence);
  model.setData(cell, cell.data(Qt::EditRole));
  EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(BonesTest, SearchLeavesWhatFits) {
  BonesPanel panel(document_);
  auto* search = panel.findChild<QLineEdit*>("boneSearch");
  auto* tree = panel.findChild<QTreeView*>("boneTree");
  QTest::keyClicks(search, "femur");
  EXPECT_THAT(shownBones(*tree->model()), testing::UnorderedElementsAre("femur.L", "femur.R"));
  search->clear();
  EXPECT_EQ(static_cast<std::size_t>(shownBones(*tree->model()).size()), document_.specimen().bones.size());
  QTest::keyClicks(search, "[");
  EXPECT_TRUE(shownBones(*tree->model()).isEmpty()) << "signs are taken as they are written";
}

TEST_F(BonesTest, ClickChoosesAndDoubleClickFrames) {
  BonesPanel panel(document_);
  panel.resize(300, 700);
  panel.show();
  auto* tree = panel.findChild<QTreeView*>("boneTree");
  tree->expandAll();
  const QModelIndexList found = tree->model()->match(tree->model()->index(0, 0), BonesModel::kIdRole, "C7", 1,
                                                     Qt::MatchExactly | Qt::MatchRecursive);
  ASSERT_EQ(found.size(), 1);
  tree->scrollTo(found[0]);
  QSignalSpy framed(&panel, &BonesPanel::frameBone);
  QTest::mouseClick(tree->viewport(), Qt::LeftButton, {}, tree->visualRect(found[0]).center());
  EXPECT_EQ(document_.selectedBone(), bone("C7"));
  EXPECT_TRUE(framed.isEmpty());
  QTest::mouseDClick(tree->viewport(), Qt::LeftButton, {}, tree->visualRect(found[0]).center());
  ASSERT_EQ(framed.size(), 1);
  EXPECT_EQ(framed[0][0].value<BoneIndex>(), bone("C7"));
}

TEST_F(BonesTest, MeasuresSayWhereTheyComeFrom) {
  MeasuresModel model(document_);
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  EXPECT_EQ(model.rowCount(), 0);
  document_.selectBone(bone("C7"));
  ASSERT_GT(model.rowCount(), 3);
  EXPECT_EQ(model.index(0, MeasuresModel::kMeasure).data().toString(), "length");
  EXPECT_TRUE(model.index(0, MeasuresModel::kValue).data().toString().endsWith("\u00A0mm"));
  EXPECT_TRUE(model.index(0, MeasuresModel::kOrigin).data().toString().startsWith("inferred: "));
  EXPECT_TRUE(model.index(0, MeasuresModel::kOrigin).data().toString().contains("; ± ")) << "with its standard error";
}

TEST_F(BonesTest, MeasuresOfAFacetStandTogether) {
  MeasuresModel model(document_);
  document_.selectBone(bone("C7"));
  int known = 0;
  for (int m = 0; m < anatomy::kMeasureCount; ++m)
    known += document_.specimen()[bone("C7")].measures[static_cast<anatomy::Measure>(m)].known() ? 1 : 0;
  QStringList names, origins;
  for (int row = 0; row < model.rowCount(); ++row) {
    names << model.index(row, MeasuresModel::kMeasure).data().toString();
    origins << model.index(row, MeasuresModel::kOrigin).data().toString();
  }
  EXPECT_EQ(names.size(), known);
  EXPECT_EQ(QStringList(names).removeDuplicates(), 0);
  const qsizetype tilt = names.indexOf("facet tilt"), postzyg = names.indexOf("postzygapophyseal facet length");
  ASSERT_TRUE(tilt > 0 && postzyg > 0);
  EXPECT_EQ(names.mid(tilt + 1, 2), (QStringList{"facet offset", "facet pitch"}));
  EXPECT_EQ(names.indexOf("postzygapophyseal facet pitch"), postzyg + 6);
  EXPECT_TRUE(origins[postzyg].startsWith("inferred: meets C8; ± ")) << origins[postzyg].toStdString();
}

TEST_F(BonesTest, RecordOfTheChosenBoneIsEditedBelow) {
  BonesPanel panel(document_);
  panel.resize(300, 700);
  panel.show();
  document_.selectBone(bone("femur.L"));
  auto* source = panel.findChild<QLineEdit*>("boneSource");
  auto* evidence = panel.findChild<QComboBox*>("boneEvidence");
  EXPECT_EQ(evidence->currentText(), "inferred");
  source->setFocus();
  QTest::keyClicks(source, "plate 4");
  QTest::keyClick(source, Qt::Key_Return);
  EXPECT_EQ(document_.specimen()[bone("femur.L")].source, "plate 4");
  document_.undoStack().undo();
  EXPECT_EQ(source->text(), "");
}

}  // namespace
}  // namespace zyga::ui
