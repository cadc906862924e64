#include <gtest/gtest.h>

#include <functional>
#include <map>
#include <random>

#include "tests/ui/document_sample.h"
#include "ui/commands/pose_edits.h"
#include "ui/commands/project_edits.h"
#include "ui/commands/stand_edits.h"

namespace zyga::ui {
namespace {

constexpr int kEdits = 10'000;
constexpr int kBetweenLooks = 250;  // edits between two comparisons of the whole project

/// Somebody who edits at random, as fast as they can; every edit goes through the commands that the window uses.
class RestlessPerson {
 public:
  explicit RestlessPerson(Document& document) : document_(document) {}

  /// False for an edit that a following one may melt into.
  bool edit() {
    const unsigned what = random_() % 100;
    if (what < 45) return bend(0), true;
    if (what < 55) return bend(77), false;
    if (what < 59) return assume(), true;
    if (what < 67) return namePoses(), true;
    if (what < 77) return record(), true;
    if (what < 84) return print(), true;
    if (what < 88) return weigh(), true;
    if (what < 95) return lock(), true;
    if (what < 97) return document_.changePose(mirrored(document_.specimen(), document_.pose()), "mirror"), true;
    return step(), true;
  }

 private:
  double between(double least, double most) { return std::uniform_real_distribution<double>(least, most)(random_); }
  std::size_t below(std::size_t count) { return random_() % count; }

  void bend(int key) {
    kinematics::Pose pose = document_.pose();
    for (int i = 0; i < 3; ++i) pose.angles[below(pose.angles.size())][below(3)] = between(-0.3, 0.3);
    document_.changePose(pose, "bend", key);
  }
  void assume() {
    range::Assumptions a = document_.assumptions();
    if (below(2) == 0) a.neck = {range::Cartilage::In::PercentOfCentrum, between(0, 20)};
    if (below(2) == 0) a.minOverlap = between(0.2, 0.8);
    document_.setKeepsInSpace(below(2) == 0);
    document_.changeAssumptions(a, "assume");
  }
  void namePoses() {
    const std::size_t count = document_.project().poses.size();
    if (count < 2) return addNamedPose(document_, "Pose");
    const std::size_t index = below(count);
    if (count > 4 || below(4) == 0) return deleteNamedPose(document_, index);
    if (below(2) == 0) return replaceNamedPose(document_, index);
    renameNamedPose(document_, index, QString("Pose \u201c%1\u201d").arg(below(1000)));
  }
  void record() {
    const BoneIndex bone{below(document_.specimen().bones.size())};
    const BoneRecord known{static_cast<anatomy::Evidence>(below(5)), "box " + std::to_string(below(100))};
    document_.undoStack().push(new SetBoneRecord(document_, bone, known, "record"));
  }
  void print() {
    study::Trackway trackway = document_.project().trackway;
    if (trackway.prints.size() > 6) trackway.prints.clear();
    study::Footprint print;
    print.foot = below(2) == 0 ? "left" : "right";
    print.pace = between(0.5, 2);
    trackway.prints.push_back(print);
    trackway.heading = between(-1, 1);
    changeTrackway(document_, trackway, "prints");
  }
  void weigh() {
    study::Densities densities = document_.project().densities;
    densities[study::BodyPart::Trunk] = between(600, 1000);
    changeDensities(document_, densities, "densities");
  }
  void lock() {
    if (below(20) == 0) return unlockAllJoints(document_);
    lockOrUnlock(document_, {below(document_.specimen().joints.size())});
  }
  void step() { liftOrPlant(document_, static_cast<kinematics::Foot>(below(4))); }

  Document& document_;
  std::mt19937 random_{20'261'128};
};

class Soak : public testing::Test {
 protected:
  std::string bytes() const { return files::writeProjectText(document_.project()); }
  int at() { return document_.undoStack().index(); }

  void walkBack() {
    while (document_.undoStack().canUndo()) {
      document_.undoStack().undo();
      compare();
    }
  }
  void walkForth() {
    while (document_.undoStack().canRedo()) {
      document_.undoStack().redo();
      compare();
    }
  }
  void compare() {
    const auto seen = seen_.find(at());
    if (seen == seen_.end()) return;
    ++compared_;
    ASSERT_EQ(bytes(), seen->second) << "after " << at() << " steps";
  }

  Document document_;
  std::map<int, std::string> seen_;  ///< the project's text by the number of steps that led there
  int compared_ = 0;
};

TEST_F(Soak, TenThousandEditsUndoneAreTheStartToTheByte) {
  document_.open(sampleProject(), {});
  seen_[0] = bytes();
  RestlessPerson person(document_);
  for (int i = 1; i <= kEdits; ++i)
    if (person.edit() && i % kBetweenLooks == 0) seen_[at()] = bytes();
  const std::string end = bytes();
  ASSERT_GT(at(), kEdits / 2) << "most edits are steps of their own";
  ASSERT_GT(seen_.size(), 20u);
  ASSERT_NE(end, seen_[0]);
  ASSERT_NO_FATAL_FAILURE(walkBack());
  EXPECT_TRUE(bytes() == seen_[0]);
  EXPECT_FALSE(document_.hasUnsavedWork());
  ASSERT_NO_FATAL_FAILURE(walkForth());
  EXPECT_TRUE(bytes() == end);
  EXPECT_GE(compared_, 2 * static_cast<int>(seen_.size() - 1));
  // A file in between loses nothing either.
  const auto read = files::parseProject(end, "soak.zyga");
  EXPECT_TRUE(files::writeProjectText(read) == end);
}

}  // namespace
}  // namespace zyga::ui
