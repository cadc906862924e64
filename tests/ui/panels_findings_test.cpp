#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QLabel>
#include <QListView>
#include <QSignalSpy>
#include <QTest>

#include "core/range/limit_search.h"
#include "tests/ui/document_sample.h"
#include "tests/ui/patience.h"
#include "ui/panels/findings_model.h"
#include "ui/panels/findings_panel.h"
#include "ui/panels/readouts.h"

namespace zyga::ui {
namespace {

class FindingsTest : public testing::Test {
 protected:
  void SetUp() override { document_.open(sampleProject(), {}); }
  JointIndex joint(const char* id) const { return document_.specimen().findJoint(id).value(); }
  void bend(const char* id, double dorsiflexion) {
    kinematics::Pose pose = document_.pose();
    pose[joint(id)].x() = dorsiflexion;
    document_.changePose(pose, "bend");
  }
  /// `share` of what the bones support, rad.
  double past(const char* id, double share) const { return document_.motionRange(joint(id), 0).max * share; }

  Document document_;
};

TEST_F(FindingsTest, ModelKeepsTheRulesOfItsKind) {
  FindingsModel model(document_);
  const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal);
  bend("C6-C7", 0.6);
  model.setShowAll(true);
  document_.undoStack().undo();
  model.setShowAll(false);
}

TEST_F(FindingsTest, NeutralPoseHasNothingToSay) {
  const FindingsModel model(document_);
  EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(FindingsTest, WorstComesFirst) {
  const FindingsModel model(document_);
  bend("C5-C6", past("C5-C6", 0.97));
  bend("C6-C7", past("C6-C7", 1.2));
  bend("C7-C8", past("C7-C8", 1.6));
  ASSERT_EQ(model.rowCount(), 3);
  EXPECT_TRUE(model.index(0).data().toString().startsWith("C7-C8 out of range: "));
  EXPECT_TRUE(model.index(1).data().toString().startsWith("C6-C7 out of range: "));
  EXPECT_TRUE(model.index(2).data().toString().startsWith("C5-C6 near limit: "));
  EXPECT_EQ(model.jointAt(model.index(0)), joint("C7-C8"));
  EXPECT_EQ(model.indexOf(joint("C5-C6")).row(), 2);
}

TEST_F(FindingsTest, ShowingAllListsEveryJointOnce) {
  FindingsModel model(document_);
  model.setShowAll(true);
  EXPECT_EQ(static_cast<std::size_t>(model.rowCount()), document_.assessment().joints.size());
}

TEST_F(FindingsTest, ChoosingASentenceSelectsAndFramesItsJoint) {
  bend("C6-C7", 0.6);
  FindingsPanel panel(document_);
  panel.resize(320, 300);
  panel.show();
  auto* list = panel.findChild<QListView*>("findingsList");
  ASSERT_TRUE(list->isVisible());
  QSignalSpy framed(&panel, &FindingsPanel::frameJoint);
  QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(list->model()->index(0, 0)).center());
  EXPECT_EQ(document_.selectedJoint(), joint("C6-C7"));
  ASSERT_EQ(framed.size(), 1);
  EXPECT_EQ(framed[0][0].value<JointIndex>(), joint("C6-C7"));
}

TEST_F(FindingsTest, CountFollowsThePose) {
  FindingsPanel panel(document_);
  const auto* count = panel.findChild<QLabel*>("findingsCount");
  const auto all = document_.assessment().joints.size();
  bend("C6-C7", 0.6);
  EXPECT_TRUE(count->text().startsWith(QString("1 out of range of %1 joints").arg(all))) << count->text().toStdString();
  document_.undoStack().undo();
  EXPECT_FALSE(count->text().contains("out of range"));
}

TEST_F(FindingsTest, CountIsProvisionalWhileContactIsExpected) {
  FindingsPanel panel(document_);
  const auto* count = panel.findChild<QLabel*>("findingsCount");
  const QString plain = count->text();
  document_.expectContact(true);
  EXPECT_TRUE(document_.contactPending());
  EXPECT_EQ(count->text(), "provisional: " + plain);
  document_.expectContact(false);  // making the shapes has failed, which is told elsewhere
  EXPECT_EQ(count->text(), plain);
  document_.expectContact(true);
  document_.setContact(std::make_shared<const range::ContactModel>(
      document_.specimen(),
      std::vector<std::shared_ptr<const anatomy::SignedDistance>>(document_.specimen().bones.size())));
  EXPECT_FALSE(document_.contactPending());
  EXPECT_EQ(count->text(), plain);
}

TEST_F(FindingsTest, SentencesWrapToTheListsWidth) {
  bend("C6-C7", 0.6);
  FindingsPanel panel(document_);
  auto* list = panel.findChild<QListView*>("findingsList");
  panel.show();
  panel.resize(900, 300);
  const auto height = [&] {
    QCoreApplication::processEvents();
    return list->visualRect(list->model()->index(0, 0)).height();
  };
  const int wide = height();
  panel.resize(200, 300);
  EXPECT_TRUE(QTest::qWaitFor([&] { return height() > wide; }, kPatience));
}

// What the drag of a neck bone costs: explanations are searched for only where they are read.
TEST_F(FindingsTest, ADragSearchesForTheRowsInSightAlone) {
  FindingsPanel panel(document_);
  panel.resize(320, 240);
  panel.show();
  ASSERT_TRUE(QTest::qWaitForWindowExposed(&panel));
  auto* list = panel.findChild<QListView*>("findingsList");
  std::vector<JointIndex> neck;
  for (std::size_t j = 0; j < document_.specimen().joints.size(); ++j)
    if (document_.specimen().joints[j].region == anatomy::Region::Cervical) neck.push_back({j});
  const auto dragTo = [&](double angle) {
    kinematics::Pose pose = document_.project().pose;
    for (const JointIndex j : neck) pose[j].x() = angle;
    document_.previewPose(pose);
    QCoreApplication::processEvents();
  };
  const auto searchesOf = [&](double angle) {
    const std::uint64_t before = range::limitSearches();
    dragTo(angle);
    list->viewport()->repaint();
    return range::limitSearches() - before;
  };
  EXPECT_EQ(searchesOf(0.001), 0u) << "nothing is near its limit, so no row is shown";
  dragTo(0.6);
  ASSERT_GE(list->model()->rowCount(), 10);
  // No joint takes more than one motion to explain here, and its ends once.
  const std::uint64_t searched = searchesOf(0.61);
  std::uint64_t inSight = 0;
  for (int row = 0; row < list->model()->rowCount(); ++row)
    inSight += list->visualRect(list->model()->index(row, 0)).intersects(list->viewport()->rect());
  ASSERT_LT(inSight, static_cast<std::uint64_t>(list->model()->rowCount())) << "some are hidden";
  EXPECT_GT(searched, 0u);
  EXPECT_LE(searched, inSight);
  panel.hide();  // the list alone would be shown again with the next pose
  EXPECT_EQ(searchesOf(0.62), 0u) << "no list, no search";
}

TEST_F(FindingsTest, LengthsAreThoseOfTheAnimal) {
  const LengthsReadout lengths(document_);
  EXPECT_TRUE(lengths.text().startsWith("neck 4.99 · trunk 2.99")) << lengths.text().toStdString();
}

}  // namespace
}  // namespace zyga::ui
