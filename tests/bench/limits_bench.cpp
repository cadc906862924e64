// How far joints go: all six directions of the neck, without and with contact of its bones, and of the column; a step
// of the cartilage slider (articulation and limits of the neck), the map of one joint, the extremes of neck and tail.
// Figure to reach: the neck under 100 ms.
#include <benchmark/benchmark.h>

#include <fstream>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/standing.h"
#include "core/range/contact/contact.h"
#include "core/range/neutral.h"
#include "core/range/supported_map.h"
#include "core/solid/levelset/level_set.h"
#include "core/study/reach/extremes.h"

namespace zyga::range {
namespace {

struct Animal {
  anatomy::Specimen specimen;
  Assumptions assumptions;
  kinematics::Articulation articulation;
};

Assumptions withCartilage(double percent) {
  Assumptions assumptions;
  assumptions.neck.amount = assumptions.trunk.amount = assumptions.tail.amount = percent;
  return assumptions;
}

const Animal& animal() {
  static const Animal read = [] {
    std::stringstream text;
    text << std::ifstream(ZYGAPOSE_SOURCE_DIR "/samples/high_browser.csv").rdbuf();
    const anatomy::MeasurementTable table = anatomy::readMeasurementTable(text.str(), "high_browser.csv").table;
    Animal animal{anatomy::buildSpecimen(anatomy::fillBlanks(table)), withCartilage(4.5), {}};
    animal.articulation = articulate(animal.specimen, animal.assumptions);
    return animal;
  }();
  return read;
}

/// Joints with facets; of the neck or of the whole column. Counters say how many.
std::vector<kinematics::JointIndex> joints(bool neckOnly) {
  std::vector<kinematics::JointIndex> out;
  for (std::size_t j = 0; j < animal().specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = animal().specimen.joints[j];
    const bool neck = joint.region == anatomy::Region::Cervical;
    const bool moves = joint.hasFacets() || (neck && joint.kind == anatomy::JointKind::Typed);
    if (moves && (neck || !neckOnly)) out.push_back({j});
  }
  return out;
}

/// The shapes of the neck, the head and the first dorsal, sculpted here: that takes some seconds.
const ContactModel& neckShapes() {
  static const ContactModel model = [] {
    const anatomy::Specimen& specimen = animal().specimen;
    std::vector<std::shared_ptr<const solid::BoneMesh>> meshes(specimen.bones.size());
    std::vector<bool> wanted(specimen.bones.size());
    for (std::size_t i = 0; i < specimen.bones.size(); ++i) {
      const anatomy::Bone& bone = specimen.bones[i];
      const bool neck = bone.name.kind == anatomy::BoneKind::Cervical || bone.name.kind == anatomy::BoneKind::Skull;
      wanted[i] = (neck || bone.id == "D1") && !bone.fusedInto;
      if (wanted[i]) meshes[i] = std::make_shared<solid::BoneMesh>(solid::sculptBone(specimen, {i}, 12000));
    }
    return ContactModel(specimen, solid::levelSets(meshes, wanted));
  }();
  return model;
}

void sixDirections(benchmark::State& state, bool neckOnly, const NeighbourContact* contact = nullptr) {
  const auto chosen = joints(neckOnly);
  const Eigen::Vector3d angles = Eigen::Vector3d(1, 0.5, 0.2) * 0.01745;
  for (auto _ : state) {
    for (const auto joint : chosen) {
      benchmark::DoNotOptimize(
          limits(animal().specimen, animal().articulation, animal().assumptions, joint, angles, contact));
    }
  }
  state.counters["joints"] = static_cast<double>(chosen.size());
}
void neckInSixDirections(benchmark::State& state) { sixDirections(state, true); }
BENCHMARK(neckInSixDirections)->Unit(benchmark::kMillisecond);
void neckInSixDirectionsWithContact(benchmark::State& state) { sixDirections(state, true, &neckShapes()); }
BENCHMARK(neckInSixDirectionsWithContact)->Unit(benchmark::kMillisecond);
void columnInSixDirections(benchmark::State& state) { sixDirections(state, false); }
BENCHMARK(columnInSixDirections)->Unit(benchmark::kMillisecond);

void cartilageSliderStep(benchmark::State& state) {
  const auto neck = joints(true);
  double percent = 4.5;
  for (auto _ : state) {
    percent = percent > 10 ? 4.5 : percent + 0.1;
    const Assumptions assumptions = withCartilage(percent);
    const auto articulation = articulate(animal().specimen, assumptions);
    for (const auto joint : neck) {
      benchmark::DoNotOptimize(limits(animal().specimen, articulation, assumptions, joint, Eigen::Vector3d::Zero()));
    }
  }
}
BENCHMARK(cartilageSliderStep)->Unit(benchmark::kMillisecond);

void supportedMapOfAJoint(benchmark::State& state) {
  const auto joint = *animal().specimen.findJoint("C6-C7");
  for (auto _ : state) {
    benchmark::DoNotOptimize(supportedMap(animal().specimen, animal().articulation, animal().assumptions, joint,
                                          Eigen::Vector3d(0, 0, 0.01), 48));
  }
}
BENCHMARK(supportedMapOfAJoint)->Unit(benchmark::kMillisecond);

void extremesOfNeckAndTail(benchmark::State& state) {
  const auto standing =
      kinematics::stand(animal().specimen, animal().articulation, kinematics::Pose::neutral(animal().specimen));
  for (auto _ : state) {
    benchmark::DoNotOptimize(study::extremes(animal().specimen, animal().articulation, animal().assumptions, standing));
  }
}
BENCHMARK(extremesOfNeckAndTail)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace zyga::range

BENCHMARK_MAIN();
