// Contact of neighbouring bones beside FCL on the same meshes and poses, all of each bone in question on both sides.
// Figures to reach: depth or clearance with its place at least 10 times as fast as FCL's distance, the yes/no part no
// slower than FCL's collide, no disagreement beyond one voxel. Takes the meshes from the cache that
// ZYGAPOSE_BENCH_CACHE names.
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <optional>
#include <random>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/range/contact/contact.h"
#include "core/range/neutral.h"
#include "core/solid/levelset/level_set.h"
#include "tests/support/fcl_bone.h"

namespace zyga::range {
namespace {

double processorSeconds() {
  timespec time{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
  return static_cast<double>(time.tv_sec) + 1e-9 * static_cast<double>(time.tv_nsec);
}

/// Of this thread's processor, so that what else the machine does counts less; least of five runs, s.
template <class Work>
double seconds(const Work& work) {
  double least = 1e9;
  for (int run = 0; run < 5; ++run) {
    const double start = processorSeconds();
    work();
    least = std::min(least, processorSeconds() - start);
  }
  return least;
}

struct Case {
  std::size_t a, b;
  Eigen::Isometry3f X_AB;
};

/// Sums over both animals.
struct Measured {
  std::size_t questions = 0, touching = 0;
  double meet = 0, touch = 0, distance = 0, collide = 0;  ///< s
  double levelSets = 0, judging = 0;                      ///< s, the slower animal
  double voxelsOff = 0;
  int disagree = 0;
};

anatomy::Specimen read(const char* sample) {
  std::stringstream text;
  text << std::ifstream(std::string(ZYGAPOSE_SOURCE_DIR "/samples/") + sample).rdbuf();
  return anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::readMeasurementTable(text.str(), sample).table));
}

/// Neutral, and four times every joint turned by up to five degrees.
std::vector<Case> casesOf(const anatomy::Specimen& specimen, const ContactModel& model) {
  const auto articulation = articulate(specimen, Assumptions{});
  std::mt19937 random(20);
  std::uniform_real_distribution<double> angle(-0.0873, 0.0873);
  std::vector<Case> cases;
  for (int turn = 0; turn < 5; ++turn) {
    kinematics::Pose pose = kinematics::Pose::neutral(specimen);
    for (std::size_t j = 0; turn > 0 && j < pose.angles.size(); ++j) {
      if (specimen.joints[j].kind == anatomy::JointKind::Fixed) continue;
      pose.angles[j] = {angle(random), angle(random), angle(random)};
    }
    const auto X_WB = kinematics::forwardKinematics(specimen, articulation, pose);
    for (const ContactPair& pair : model.pairs()) {
      const std::size_t a = pair.a.value, b = pair.b.value;
      cases.push_back({a, b, (X_WB[a].inverse() * X_WB[b]).cast<float>()});
    }
  }
  return cases;
}

class Bench {
 public:
  explicit Bench(const char* sample) : sample_(sample), specimen_(read(sample)) {
    solid::SculptOptions options;
    if (const char* folder = std::getenv("ZYGAPOSE_BENCH_CACHE")) options.cacheFolder = folder;
    meshes_ = solid::sculptAll(specimen_, options);
  }

  void run(Measured& sum) {
    makeLevelSets(sum);
    const ContactModel model(specimen_, fields_);
    judge(model, sum);
    for (std::size_t i = 0; i < fields_.size(); ++i) {
      shapes_.push_back(fields_[i] ? ContactShape(fields_[i]) : ContactShape());
      reference_.emplace_back();
      if (fields_[i]) reference_.back().emplace(solid::sampledLevel(*meshes_[i]));
    }
    cases_ = casesOf(specimen_, model);
    ask(sum);
  }

 private:
  void makeLevelSets(Measured& sum) {
    solid::LevelSetOptions onOneCore;
    onOneCore.task = task::Task().withThreads(1);
    const auto wanted = bonesInContactPairs(specimen_);
    const double making = seconds([&] { fields_ = solid::levelSets(meshes_, wanted, onOneCore); });
    sum.levelSets = std::max(sum.levelSets, making);
    std::size_t bytes = 0, points = 0, bones = 0;
    for (const auto& field : fields_) {
      if (!field) continue;
      bytes += static_cast<const solid::LevelSet&>(*field).bytes();
      points += field->surfacePoints().size();
      ++bones;
    }
    std::printf("%s: level sets of %zu bones %.2f s, %.0f MB, %zu points\n", sample_, bones, making,
                1e-6 * static_cast<double>(bytes), points);
  }

  void judge(const ContactModel& model, Measured& sum) const {
    const auto X_WB = kinematics::forwardKinematics(specimen_, articulate(specimen_, Assumptions{}),
                                                    kinematics::Pose::neutral(specimen_));
    const double judging = seconds([&] { model.contacts(X_WB, Assumptions{}); });
    sum.judging = std::max(sum.judging, judging);
    std::printf("  contacts of the whole animal, %zu pairs: %.2f ms\n", model.pairs().size(), judging * 1e3);
  }

  /// The same questions four times over: both of ours, both of FCL's.
  void ask(Measured& sum) const {
    std::vector<float> ours(cases_.size()), theirs(cases_.size());
    std::vector<char> oursTouch(cases_.size()), theirsTouch(cases_.size());
    const auto each = [&](const auto& work) {
      return seconds([&] {
        for (std::size_t i = 0; i < cases_.size(); ++i) work(i, cases_[i]);
      });
    };
    sum.meet += each(
        [&](std::size_t i, const Case& c) { ours[i] = contactDepth(shapes_[c.a], shapes_[c.b], c.X_AB).distance; });
    sum.distance +=
        each([&](std::size_t i, const Case& c) { theirs[i] = reference_[c.a]->distance(*reference_[c.b], c.X_AB); });
    sum.touch += each([&](std::size_t i, const Case& c) { oursTouch[i] = touch(shapes_[c.a], shapes_[c.b], c.X_AB); });
    sum.collide += each(
        [&](std::size_t i, const Case& c) { theirsTouch[i] = reference_[c.a]->collides(*reference_[c.b], c.X_AB); });
    sum.questions += cases_.size();
    for (std::size_t i = 0; i < cases_.size(); ++i) {
      const float voxel = std::max(fields_[cases_[i].a]->resolution(), fields_[cases_[i].b]->resolution());
      sum.touching += theirsTouch[i];
      if (!theirsTouch[i]) sum.voxelsOff = std::max<double>(sum.voxelsOff, std::abs(ours[i] - theirs[i]) / voxel);
      if (oursTouch[i] != theirsTouch[i] && std::abs(ours[i]) > voxel) ++sum.disagree;
    }
  }

  const char* sample_;
  anatomy::Specimen specimen_;
  std::vector<std::shared_ptr<const solid::BoneMesh>> meshes_;
  solid::SignedDistances fields_;
  std::vector<ContactShape> shapes_;
  std::vector<std::optional<test::FclBone>> reference_;
  std::vector<Case> cases_;
};

/// For tests/bench/run and for people.
void report(const Measured& m) {
  const double each = 1e6 / static_cast<double>(m.questions);
  std::printf("%zu questions, %zu of them touch\n", m.questions, m.touching);
  std::printf("@ contactMeet %.2f us\n@ fclDistance %.2f us\n", m.meet * each, m.distance * each);
  std::printf("@ contactTouch %.2f us\n@ fclCollide %.2f us\n", m.touch * each, m.collide * each);
  std::printf("depth or clearance and place %.1f times as fast, yes or no %.1f times\n", m.distance / m.meet,
              m.collide / m.touch);
  std::printf("@ contactVoxelsOff %.2f\n@ contactDisagree %d\n", m.voxelsOff, m.disagree);
  std::printf("@ contactLevelSets %.2f s\n@ contactOfTheAnimal %.2f ms\n", m.levelSets, m.judging * 1e3);
}

}  // namespace
}  // namespace zyga::range

int main() {
  zyga::range::Measured sum;
  for (const char* sample : {"high_browser.csv", "low_browser.csv"}) zyga::range::Bench(sample).run(sum);
  zyga::range::report(sum);
}
