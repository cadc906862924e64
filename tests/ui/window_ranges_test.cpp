#include <gmock/gmock.h>

#include <QSignalSpy>
#include <algorithm>
#include <cmath>
#include <utility>

#include "core/kinematics/bend.h"
#include "core/range/reach_ranges.h"
#include "core/study/reach/extremes.h"
#include "tests/ui/window_fixture.h"
#include "ui/panels/cartilage_field.h"
#include "ui/panels/readouts.h"
#include "ui/parts/elided_label.h"
#include "ui/theme/drag_slider.h"
#include "ui/words/range_words.h"

namespace zyga::ui {
namespace {

using range::Direction;
using study::Chain;

/// Ranges that come from the bones, in the whole window.
class RangesTest : public WindowTest {
 protected:
  void mouse(QWidget* widget, QEvent::Type type, const QPointF& at) {
    const bool up = type == QEvent::MouseButtonRelease, move = type == QEvent::MouseMove;
    QMouseEvent event(type, at, widget->mapToGlobal(at), move ? Qt::NoButton : Qt::LeftButton,
                      up ? Qt::NoButton : Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(widget, &event);
    QCoreApplication::processEvents();
  }
  void settleStrip() {
    ASSERT_TRUE(QTest::qWaitFor([this] { return strip()->settled(); }, kPatience));
  }
  /// Green of the strip between neutral and the plot's upper edge in one lane, px: how high the band stands.
  int bandHeight(const char* id) const {
    const QImage picture = strip()->grab().toImage();
    const auto column = strip()->columns().columnOf(joint(id)).value();
    const StripLayout& layout = strip()->stripLayout();
    const int x = static_cast<int>(layout.xOfColumn(column)) - 4;
    int high = 0;
    for (int y = static_cast<int>(layout.plot().top()); y < layout.yOf(0) - 8; ++y) {
      const QColor c = picture.pixelColor(x, y);
      high += c.green() - c.red() > 12;
    }
    return high;
  }
  QString hint() const { return part<ElidedLabel>("hintText")->text(); }
};

TEST_F(RangesTest, CartilageMovesBandsAndAnimalWhileTheSliderIsHeld) {
  settleStrip();
  auto* slider = part<CartilageField>("neckCartilage")->findChild<DragSlider*>();
  const int before = bandHeight("C6-C7");
  const QPointF snout = viewport()->placeOf(bone("skull")).value();
  const double height = slider->height() / 2.0;
  mouse(slider, QEvent::MouseButtonPress, {1.0 * slider->placeOf(slider->value()), height});
  mouse(slider, QEvent::MouseMove, {1.0 * slider->placeOf(slider->maximum() / 2), height});
  ASSERT_TRUE(document_->previewing());
  settleStrip();
  EXPECT_NE(bandHeight("C6-C7"), before) << "the strip answers while the finger moves";
  EXPECT_GT((viewport()->placeOf(bone("skull")).value() - snout).manhattanLength(), 4);
  EXPECT_FALSE(window_->isWindowModified());
  mouse(slider, QEvent::MouseButtonRelease, {1.0 * slider->placeOf(slider->maximum() / 2), height});
  EXPECT_EQ(document_->undoStack().count(), 1);
  EXPECT_TRUE(hint().startsWith("Cartilage of the neck, deflections kept")) << hint().toStdString();
  QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
  settleStrip();
  EXPECT_EQ(bandHeight("C6-C7"), before);
}

TEST_F(RangesTest, NeckGoesToItsDorsalLimitByOneActionAndIsTold) {
  const auto start = document_->pose();
  const double low = document_->placement()[bone("skull").value].translation().z();
  QTest::keyClick(window_.get(), Qt::Key_Up, Qt::ControlModifier | Qt::AltModifier);
  EXPECT_EQ(document_->undoStack().count(), 1);
  EXPECT_GT(document_->placement()[bone("skull").value].translation().z(), low + 0.3);
  for (const JointIndex j : study::jointsOf(document_->specimen(), Chain::Neck)) {
    if (!document_->specimen()[j].hasFacets()) continue;
    EXPECT_NEAR(document_->pose()[j].x(), document_->motionRange(j, 0).max, 2e-3) << document_->specimen()[j].id;
  }
  ASSERT_TRUE(QTest::qWaitFor([&] { return messages().size() == 1; }, kPatience));
  EXPECT_TRUE(messages().front().startsWith("Neck, maximum dorsiflexion: snout at "))
      << messages().front().toStdString();
  EXPECT_TRUE(messages().front().contains("Assuming at least 50\u00A0% overlap (by length)"))
      << "under which assumptions";
  QTest::keyClick(window_.get(), Qt::Key_Z, Qt::ControlModifier);
  EXPECT_EQ(document_->pose(), start);
}

TEST_F(RangesTest, AllLimitsBecomeNamedPosesInOneStep) {
  const std::size_t before = document_->project().poses.size();
  const auto posed = document_->pose();
  action("Keep all limits")->trigger();
  EXPECT_EQ(document_->project().poses.size(), before + 8);
  EXPECT_EQ(document_->pose(), posed);
  action("Keep all limits")->trigger();
  EXPECT_EQ(document_->project().poses.size(), before + 8) << "the same names are replaced";
  document_->undoStack().undo();
  document_->undoStack().undo();
  EXPECT_EQ(document_->project().poses.size(), before);
}

TEST_F(RangesTest, NeckTailAndAllGoToNeutralByKeys) {
  kinematics::Pose pose = document_->pose();
  pose[joint("C6-C7")].x() = pose[joint("Ca6-Ca7")].x() = 0.05;
  document_->changePose(pose, "Bend");
  const auto all = Qt::ControlModifier | Qt::ShiftModifier;
  QTest::keyClick(window_.get(), Qt::Key_N, all);
  EXPECT_EQ(document_->pose()[joint("C6-C7")].x(), 0);
  EXPECT_EQ(document_->pose()[joint("Ca6-Ca7")].x(), 0.05);
  QTest::keyClick(window_.get(), Qt::Key_T, all);
  EXPECT_EQ(document_->pose()[joint("Ca6-Ca7")].x(), 0);
  document_->undoStack().undo();
  QTest::keyClick(window_.get(), Qt::Key_A, all);
  EXPECT_EQ(document_->pose()[joint("Ca6-Ca7")].x(), 0);
}

// Shapes that are still being made: everything says that it is provisional, and what contact then changes is told.
TEST_F(RangesTest, VerdictsAreProvisionalUntilContactIsJudged) {
  const auto* readout = part<VerdictReadout>("verdict");
  const auto* count = part<QLabel>("findingsCount");
  ASSERT_FALSE(document_->contactPending());
  ASSERT_FALSE(readout->text().startsWith("provisional")) << readout->text().toStdString();
  // A joint that only contact stops, a little past its end: under a loose rule for facets there is one.
  range::Assumptions loose = document_->assumptions();
  loose.minOverlap = 0.1;
  loose.contactTolerated = {range::ContactTolerance::In::Millimetres, 4};
  document_->changeAssumptions(loose, "Loose");
  kinematics::Pose pose = document_->pose();
  std::optional<JointIndex> collides;
  const range::Scenario bare = document_->scenario().withContact(nullptr);
  for (std::size_t j = 0; j < pose.angles.size() && !collides; ++j) {
    if (!document_->specimen().joints[j].hasFacets()) continue;
    const range::MotionRange& with = document_->motionRange({j}, 0);
    const double past = with.max + 0.02;
    if (with.maxStop.kind != range::FindingKind::BoneContact || bare.motionRange({j}, 0).max < past + 0.01) continue;
    pose[JointIndex{j}] = {past, 0, 0};
    collides = JointIndex{j};
  }
  ASSERT_TRUE(collides.has_value());
  document_->setContact(nullptr);
  document_->changePose(pose, "Bend");
  EXPECT_TRUE(document_->contactPending());
  EXPECT_NE(document_->assessment().find(*collides)->level, range::Level::Beyond);
  EXPECT_TRUE(readout->text().startsWith("provisional: ")) << readout->text().toStdString();
  EXPECT_TRUE(count->text().startsWith("provisional: ")) << count->text().toStdString();
  ASSERT_TRUE(messages().isEmpty());
  document_->setMeshes(document_->meshes());  // as if they had just been sculpted
  ASSERT_TRUE(QTest::qWaitFor([this] { return document_->contact() != nullptr; }, kPatience));
  EXPECT_FALSE(document_->contactPending());
  EXPECT_EQ(document_->assessment().find(*collides)->level, range::Level::Beyond);
  EXPECT_FALSE(readout->text().startsWith("provisional"));
  ASSERT_TRUE(QTest::qWaitFor([this] { return messages().size() == 1; }, kPatience));
  EXPECT_TRUE(messages().front().startsWith("Collisions have been assessed: 1 joint"))
      << messages().front().toStdString();
}

TEST_F(RangesTest, BonesThatEnterEachOtherAreMarkedListedAndFramed) {
  ASSERT_TRUE(document_->assessment().contactJudged);
  EXPECT_TRUE(document_->assessment().contacts.empty()) << "neutral is free of contact";
  kinematics::Pose pose = document_->pose();
  for (const JointIndex j : study::jointsOf(document_->specimen(), Chain::Neck)) pose[j].x() = 0.5;
  document_->changePose(pose, "Bend");
  const auto& contacts = document_->assessment().contacts;
  ASSERT_FALSE(contacts.empty());
  const double whole = viewport()->camera().viewHeight;
  const auto* list = part<QListView>("findingsList");
  const QString told = contactWords(document_->specimen(), contacts[0]);
  int row = 0;
  while (row < list->model()->rowCount() && list->model()->index(row, 0).data().toString() != told) ++row;
  ASSERT_LT(row, list->model()->rowCount()) << told.toStdString();
  const_cast<QListView*>(list)->scrollTo(list->model()->index(row, 0));
  QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(list->model()->index(row, 0)).center());
  EXPECT_EQ(document_->selectedBone(), contacts[0].bone);
  double seen = 0;
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {  // the view has come to rest, near by
        const double before = std::exchange(seen, viewport()->camera().viewHeight);
        return before == seen && seen < whole / 2;
      },
      kPatience))
      << "it is framed";
  const auto at = viewport()->camera().project(contacts[0].p_W);
  ASSERT_TRUE(at.has_value());
  const QImage picture = viewport()->grabPicture();
  EXPECT_EQ(picture.pixelColor(QPointF(at->x(), at->y()).toPoint()), theme().contact) << "a cross at the place";
}

// A person pulls the head straight up until the bones at the base of the neck would enter each other.
TEST_F(RangesTest, ADragOfTheHeadStopsWhereBonesMeetAndIsOneStep) {
  ASSERT_TRUE(QTest::qWaitFor([this] { return document_->contact() != nullptr; }, kPatience));
  Camera side = viewport()->camera();
  side.turnTo(picture::StandardView::Left);
  viewport()->showView(picture::StandardView::Left);
  ASSERT_TRUE(QTest::qWaitFor(
      [&] {
        const Camera& now = viewport()->camera();
        return std::abs(now.azimuth - side.azimuth) < 1e-12 && std::abs(now.elevation - side.elevation) < 1e-12 &&
               !now.perspective;
      },
      kPatience));
  // With so little overlap asked, it is the bones that stop the neck.
  range::Assumptions lenient = document_->assumptions();
  lenient.minOverlap = 0.2;
  document_->setAssumptions(lenient, document_->pose());
  ASSERT_TRUE(QTest::qWaitFor([this] { return document_->contact() != nullptr; }, kPatience));
  const kinematics::Pose before = document_->pose();
  const range::Scenario start = document_->scenario();
  const int steps = document_->undoStack().count();
  const QPointF from = viewport()->placeOf(bone("skull")).value(), to(from.x(), 4);
  mouse(viewport(), QEvent::MouseMove, from);
  ASSERT_TRUE(QTest::qWaitFor([this] { return document_->hoveredBone() == bone("skull"); }, kPatience));
  QSignalSpy hints(viewport(), &Viewport::hint);
  mouse(viewport(), QEvent::MouseButtonPress, from);
  constexpr int kFrames = 12;
  const auto beyond = [&] {
    const auto& contacts = document_->assessment().contacts;
    return std::count_if(contacts.begin(), contacts.end(),
                         [](const auto& contact) { return contact.level == range::Level::Beyond; });
  };
  for (int frame = 1; frame <= kFrames; ++frame) {
    mouse(viewport(), QEvent::MouseMove, from + (to - from) * frame / kFrames);
    EXPECT_EQ(beyond(), 0) << "frame " << frame;
  }
  ASSERT_TRUE(document_->previewing());
  ASSERT_FALSE(hints.empty());
  // What is told names the joint and both of the bones that meet, in the words of the findings.
  const QString told = hints.last().first().toString();
  const auto& contacts = document_->assessment().contacts;
  ASSERT_FALSE(contacts.empty()) << "in the last part of the way to a contact";
  EXPECT_TRUE(told.contains(", stopped by ")) << told.toStdString();
  const auto names = [&](anatomy::BoneIndex bone) {
    return told.contains(QString::fromStdString(document_->specimen()[bone].id));
  };
  // Others may meet too; the one that is told is one of them.
  EXPECT_TRUE(std::any_of(contacts.begin(), contacts.end(), [&](const auto& contact) {
    return names(contact.bone) && names(contact.other);
  })) << told.toStdString();
  mouse(viewport(), QEvent::MouseButtonRelease, to);
  EXPECT_EQ(beyond(), 0);
  EXPECT_FALSE(document_->previewing());
  EXPECT_NE(document_->pose(), before);
  // Without contact such pulls would have gone on into it.
  const kinematics::Pose held = document_->pose();
  range::ReachRanges ranges(start.specimen(), start.articulation(), start.assumptions());
  kinematics::IkGoal goal;
  goal.bone = bone("skull");
  goal.joints = kinematics::dragChain(start.specimen(), goal.bone);
  goal.motions = {true, false, false};
  int meeting = 0;
  for (const double up : {2.0, 3.0, 4.0}) {  // m; the top of the view is about so far
    goal.p_WTarget = start.placement()[goal.bone.value].translation() + Eigen::Vector3d(0, 0, up);
    const auto through = kinematics::reach(start.specimen(), start.articulation(), ranges, start.pose(), goal);
    const range::Scenario past = start.withPose(through.pose);
    meeting += std::any_of(past.assessment().contacts.begin(), past.assessment().contacts.end(),
                           [](const auto& contact) { return contact.level == range::Level::Beyond; });
  }
  EXPECT_GT(meeting, 0);
  EXPECT_EQ(document_->undoStack().count(), steps + 1);
  document_->undoStack().undo();
  EXPECT_EQ(document_->pose(), before);
  document_->undoStack().redo();
  EXPECT_EQ(document_->pose(), held);
}

}  // namespace
}  // namespace zyga::ui
