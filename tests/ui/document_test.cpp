#include "ui/document/document.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QSignalSpy>

#include "core/range/neutral.h"
#include "tests/ui/document_sample.h"
#include "ui/commands/pose_edits.h"
#include "ui/commands/project_edits.h"

namespace zyga::ui {
namespace {

class DocumentTest : public testing::Test {
 protected:
  void SetUp() override { document_.open(sampleProject(), {}); }

  JointIndex joint(const char* id) const { return document_.specimen().findJoint(id).value(); }
  BoneIndex bone(const char* id) const { return document_.specimen().findBone(id).value(); }
  kinematics::Pose turned(const char* id, double dorsiflexion) const {
    kinematics::Pose pose = document_.pose();
    pose[joint(id)].x() += dorsiflexion;
    return pose;
  }
  range::Assumptions thickNeck(double percent) const {
    range::Assumptions changed = document_.project().assumptions;
    changed.neck = {range::Cartilage::In::PercentOfCentrum, percent};
    return changed;
  }
  QString snapshot() const { return QString::fromStdString(files::writeProjectText(document_.project())); }

  /// Does what `edit` pushes, then walks back and forth and compares the whole project as text.
  void expectUndoable(const std::function<void()>& edit) {
    const QString before = snapshot();
    edit();
    const QString after = snapshot();
    EXPECT_NE(before, after);
    document_.undoStack().undo();
    EXPECT_EQ(snapshot(), before);
    document_.undoStack().redo();
    EXPECT_EQ(snapshot(), after);
  }

  Document document_;
};

TEST(EmptyDocument, HasNoProjectAndNothingToSave) {
  const Document document;
  EXPECT_FALSE(document.hasProject());
  EXPECT_FALSE(document.hasUnsavedWork());
}

TEST_F(DocumentTest, PoseStepsAreUndoable) {
  expectUndoable([this] { document_.changePose(turned("C6-C7", 0.1), "bend"); });
}

TEST_F(DocumentTest, AssumptionsAreUndoable) {
  range::Assumptions changed = document_.assumptions();
  changed.minOverlap = 0.25;
  changed.neck.amount = 7;
  expectUndoable([&] { document_.changeAssumptions(changed, "assume"); });
}

TEST_F(DocumentTest, NamedPosesAreUndoable) {
  expectUndoable([this] { addNamedPose(document_, "Alert"); });
  expectUndoable([this] { EXPECT_TRUE(renameNamedPose(document_, 0, "Watchful")); });
  document_.changePose(turned("C6-C7", 0.1), "bend");
  const std::size_t last = document_.project().poses.size() - 1;
  expectUndoable([&] { replaceNamedPose(document_, last); });
  expectUndoable([&] { deleteNamedPose(document_, last); });
}

TEST_F(DocumentTest, NamesOfPosesStayApart) {
  addNamedPose(document_, " Alert ");
  addNamedPose(document_, "Alert");
  const auto& poses = document_.project().poses;
  const std::size_t last = poses.size() - 1;
  EXPECT_EQ(poses[last - 1].name, "Alert");
  EXPECT_EQ(poses[last].name, "Alert 2");
  EXPECT_FALSE(renameNamedPose(document_, last, "Alert"));
  EXPECT_FALSE(renameNamedPose(document_, last, "  "));
  EXPECT_EQ(document_.project().poses[last].name, "Alert 2");
}

TEST_F(DocumentTest, BoneRecordsAreUndoableAndReachTheTable) {
  expectUndoable([this] {
    document_.undoStack().push(
        new SetBoneRecord(document_, bone("C7"), {anatomy::Evidence::Found, "field notes"}, "record"));
  });
  EXPECT_EQ(document_.project().table.find({anatomy::BoneKind::Cervical, 7})->source, "field notes");
}

TEST_F(DocumentTest, DerivedStateFollowsThePose) {
  const kinematics::Pose pose = turned("C6-C7", 0.6);
  document_.changePose(pose, "bend");
  const auto fresh =
      range::assess(document_.specimen(), document_.articulation(), document_.assumptions(), document_.pose());
  ASSERT_EQ(document_.assessment().joints.size(), fresh.joints.size());
  EXPECT_EQ(document_.assessment().level, fresh.level);
  EXPECT_EQ(document_.assessment().find(joint("C6-C7"))->level, fresh.find(joint("C6-C7"))->level);
  const auto& findings = document_.assessment().find(joint("C6-C7"))->findings;
  const auto& freshFindings = fresh.find(joint("C6-C7"))->findings;
  ASSERT_EQ(findings.size(), freshFindings.size());
  for (std::size_t i = 0; i < findings.size(); ++i) {
    EXPECT_EQ(findings[i].kind, freshFindings[i].kind);
    EXPECT_EQ(findings[i].side, freshFindings[i].side);
    EXPECT_EQ(findings[i].measured, freshFindings[i].measured);
  }
  const auto placed = kinematics::forwardKinematics(document_.specimen(), document_.articulation(), pose);
  EXPECT_TRUE(document_.placement()[bone("skull").value].isApprox(placed[bone("skull").value]));
}

TEST_F(DocumentTest, BandsFollowTheOtherAnglesAndTheAssumptions) {
  const JointIndex j = joint("C6-C7");
  const double straight = document_.motionRange(j, 0).max;
  kinematics::Pose pose = document_.pose();
  pose[j].y() += 0.05;
  document_.changePose(pose, "bend");
  const auto expected = range::motionRange(document_.specimen(), document_.articulation(), document_.assumptions(), j,
                                           document_.pose()[j], 0);
  EXPECT_DOUBLE_EQ(document_.motionRange(j, 0).max, expected.max);
  document_.undoStack().undo();
  EXPECT_DOUBLE_EQ(document_.motionRange(j, 0).max, straight);

  range::Assumptions lenient = document_.assumptions();
  lenient.minOverlap = 0.25;
  document_.setAssumptions(lenient, document_.pose());
  EXPECT_GT(document_.motionRange(j, 0).max, straight);
}

TEST_F(DocumentTest, DragIsOneStepAndCancelGoesBack) {
  const QString before = snapshot();
  document_.previewPose(turned("C6-C7", 0.05));
  document_.previewPose(turned("C6-C7", 0.05));
  EXPECT_TRUE(document_.previewing());
  EXPECT_EQ(snapshot(), before);
  document_.commitPreview("bend the neck");
  EXPECT_FALSE(document_.previewing());
  EXPECT_EQ(document_.undoStack().count(), 1);
  EXPECT_EQ(document_.undoStack().undoText(), "bend the neck");
  document_.undoStack().undo();
  EXPECT_EQ(snapshot(), before);

  document_.previewPose(turned("C6-C7", 0.05));
  document_.cancelPreview();
  EXPECT_FALSE(document_.previewing());
  EXPECT_EQ(document_.pose(), document_.project().pose);
}

TEST_F(DocumentTest, DragThatEndsWhereItBeganIsNoStep) {
  const kinematics::Pose start = document_.pose();
  document_.previewPose(turned("C6-C7", 0.05));
  document_.previewPose(start);
  document_.commitPreview("nothing");
  EXPECT_FALSE(document_.previewing());
  EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(DocumentTest, AssumptionsArePreviewedAndCommittedAsOneStep) {
  const QString before = snapshot();
  const JointIndex j = joint("C6-C7");
  const double straight = document_.motionRange(j, 0).max;
  const Eigen::Isometry3d head = document_.placement()[bone("skull").value];
  for (const double percent : {6.0, 9.0, 12.0}) document_.previewAssumptions(thickNeck(percent));
  EXPECT_TRUE(document_.previewing());
  EXPECT_EQ(snapshot(), before) << "the project waits for the release";
  EXPECT_EQ(document_.assumptions().neck.amount, 12);
  EXPECT_NE(document_.motionRange(j, 0).max, straight);
  EXPECT_FALSE(document_.placement()[bone("skull").value].isApprox(head)) << "the neck is articulated anew";
  const kinematics::Articulation expected = range::articulate(document_.specimen(), document_.assumptions());
  document_.commitPreview("Cartilage of the neck");
  EXPECT_FALSE(document_.previewing());
  EXPECT_EQ(document_.undoStack().count(), 1);
  EXPECT_EQ(document_.undoStack().undoText(), "Cartilage of the neck, deflections kept");
  EXPECT_EQ(document_.articulation(), expected);
  document_.undoStack().undo();
  EXPECT_EQ(snapshot(), before);
  EXPECT_DOUBLE_EQ(document_.motionRange(j, 0).max, straight);
}

TEST_F(DocumentTest, CancelledAssumptionsLeaveNothingBehind) {
  const kinematics::Articulation settled = document_.articulation();
  document_.previewAssumptions(thickNeck(12));
  document_.cancelPreview();
  EXPECT_FALSE(document_.previewing());
  EXPECT_EQ(document_.articulation(), settled);
  EXPECT_EQ(document_.assumptions(), document_.project().assumptions);
  EXPECT_EQ(document_.undoStack().count(), 0);
}

TEST_F(DocumentTest, BonesCanStayInSpaceWhenNeutralMoves) {
  document_.changePose(turned("C6-C7", 0.05), "bend");
  const kinematics::Placement before = document_.placement();
  const kinematics::Pose posed = document_.pose();
  document_.setKeepsInSpace(true);
  document_.previewAssumptions(thickNeck(6));
  document_.previewAssumptions(thickNeck(12));
  EXPECT_FALSE(document_.pose() == posed) << "the deflections follow";
  for (std::size_t b = 0; b < before.size(); ++b)
    EXPECT_TRUE(document_.placement()[b].linear().isApprox(before[b].linear(), 1e-9))
        << document_.specimen().bones[b].id;
  const kinematics::Pose previewed = document_.pose();
  document_.commitPreview("Cartilage of the neck");
  EXPECT_EQ(document_.undoStack().undoText(), "Cartilage of the neck, bones kept in space");
  EXPECT_EQ(document_.project().pose, previewed);
  document_.undoStack().undo();
  EXPECT_EQ(document_.pose(), posed);
  EXPECT_TRUE(document_.placement()[bone("skull").value].isApprox(before[bone("skull").value], 1e-12));
}

TEST_F(DocumentTest, StepsThatMoveNoNeutralSayNothingAboutIt) {
  range::Assumptions lenient = document_.assumptions();
  lenient.minOverlap = 0.25;
  document_.previewAssumptions(lenient);
  document_.commitPreview("Least overlap");
  EXPECT_EQ(document_.undoStack().undoText(), "Least overlap");
}

TEST_F(DocumentTest, StepsWithOneKeyMergeAndVanishAtTheirStart) {
  document_.changePose(turned("C6-C7", 0.05), "nudge", 7);
  document_.changePose(turned("C6-C7", 0.05), "nudge", 7);
  EXPECT_EQ(document_.undoStack().count(), 1);
  document_.changePose(turned("C6-C7", 0.05), "nudge", 8);
  EXPECT_EQ(document_.undoStack().count(), 2);
  document_.undoStack().undo();
  document_.changePose(turned("C6-C7", -0.1), "nudge", 7);
  EXPECT_NEAR(document_.pose()[joint("C6-C7")].x(), sampleProject().pose[joint("C6-C7")].x(), 1e-12);
}

TEST_F(DocumentTest, SelectingGoesBothWays) {
  document_.selectJoint(joint("C6-C7"));
  EXPECT_EQ(document_.selectedBone(), bone("C6"));
  document_.selectBone(bone("skull"));
  EXPECT_EQ(document_.selectedJoint(), document_.specimen().jointAbove(bone("skull")));
  document_.selectBone(bone("S1"));
  EXPECT_EQ(document_.selectedJoint(), std::nullopt);
  document_.selectBone(std::nullopt);
  EXPECT_EQ(document_.selectedBone(), std::nullopt);
}

TEST_F(DocumentTest, ViewsAreToldOnce) {
  Changes told;
  int times = 0;
  QObject::connect(&document_, &Document::changed, [&](Changes what) {
    told = what;
    ++times;
  });
  document_.selectBone(bone("C7"));
  document_.selectBone(bone("C7"));
  EXPECT_EQ(told, Changes(Change::Selection));
  EXPECT_EQ(times, 1);
  document_.hoverBone(bone("C7"));
  document_.hoverBone(bone("C7"));
  EXPECT_EQ(told, Changes(Change::Hover));
  EXPECT_EQ(times, 2);
}

TEST_F(DocumentTest, GhostFollowsItsPoseThroughEdits) {
  while (!document_.project().poses.empty()) deleteNamedPose(document_, 0);
  addNamedPose(document_, "One");
  addNamedPose(document_, "Two");
  document_.comparePose(1);
  deleteNamedPose(document_, 0);
  EXPECT_EQ(document_.comparedPose(), 0u);
  renameNamedPose(document_, 0, "Second");
  EXPECT_EQ(document_.comparedPose(), 0u);
  deleteNamedPose(document_, 0);
  EXPECT_EQ(document_.comparedPose(), std::nullopt);
  document_.comparePose(5);
  EXPECT_EQ(document_.comparedPose(), std::nullopt);
}

TEST_F(DocumentTest, OpeningAnotherAnimalForgetsEverything) {
  document_.changePose(turned("C6-C7", 0.1), "bend");
  document_.selectBone(bone("C7"));
  document_.setMeshes(files::BoneMeshes(document_.specimen().bones.size()));
  document_.open(sampleProject(), "elsewhere.zyga");
  EXPECT_EQ(document_.undoStack().count(), 0);
  EXPECT_EQ(document_.selectedBone(), std::nullopt);
  EXPECT_TRUE(document_.meshes().empty());
  EXPECT_FALSE(document_.hasUnsavedWork());
  EXPECT_EQ(document_.path(), "elsewhere.zyga");
}

TEST_F(DocumentTest, SavingMakesItClean) {
  document_.changePose(turned("C6-C7", 0.1), "bend");
  EXPECT_TRUE(document_.hasUnsavedWork());
  document_.setSavedAs("saved.zyga");
  EXPECT_FALSE(document_.hasUnsavedWork());
  document_.undoStack().undo();
  EXPECT_TRUE(document_.hasUnsavedWork());
}

}  // namespace
}  // namespace zyga::ui
