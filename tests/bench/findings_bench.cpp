// Verdicts on the whole animal. Figure to reach: all joints of the column under 0.5 ms.
#include <benchmark/benchmark.h>

#include <fstream>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/range/limits.h"
#include "core/range/neutral.h"

namespace zyga::range {
namespace {

struct Animal {
  anatomy::Specimen specimen;
  Assumptions assumptions;
  kinematics::Articulation articulation;
};

Animal readAnimal() {
  std::stringstream text;
  text << std::ifstream(ZYGAPOSE_SOURCE_DIR "/samples/high_browser.csv").rdbuf();
  const anatomy::MeasurementTable table = anatomy::readMeasurementTable(text.str(), "high_browser.csv").table;
  Animal animal{anatomy::buildSpecimen(anatomy::fillBlanks(table)), {}, {}};
  animal.assumptions.neck.amount = animal.assumptions.trunk.amount = animal.assumptions.tail.amount = 4.5;
  animal.articulation = articulate(animal.specimen, animal.assumptions);
  return animal;
}

const Animal& animal() {
  static const Animal read = readAnimal();
  return read;
}

/// Every joint of the column turned by a part of a degree, so that the facets slide on each other.
kinematics::Pose bent(double degrees) {
  kinematics::Pose pose = kinematics::Pose::neutral(animal().specimen);
  for (std::size_t j = 0; j < pose.angles.size(); ++j) {
    if (animal().specimen.joints[j].hasFacets()) pose.angles[j] = Eigen::Vector3d(1, 0.5, 0) * degrees * 0.01745;
  }
  return pose;
}

/// Fifteen joints of neck and trunk past their dorsal end, the rest neutral; `lateral` is added as a share of what they
/// can bend to the left.
kinematics::Pose fifteenBeyond(double lateral) {
  const Animal& a = animal();
  kinematics::Pose pose = kinematics::Pose::neutral(a.specimen);
  int left = 15;
  for (const kinematics::JointIndex j : a.specimen.chainTo(*a.specimen.findBone("skull"))) {
    if (!a.specimen[j].hasFacets() || left-- <= 0) continue;
    const Eigen::Vector3d zero = Eigen::Vector3d::Zero();
    const auto most = [&](int motion) {
      return motionRange(a.specimen, a.articulation, a.assumptions, j, zero, motion).max;
    };
    pose[j] = {1.3 * most(0), lateral * most(1), 0};
  }
  return pose;
}

void findings(benchmark::State& state, const kinematics::Pose& pose) {
  for (auto _ : state) {
    benchmark::DoNotOptimize(assess(animal().specimen, animal().articulation, animal().assumptions, pose));
  }
  const Assessment result = assess(animal().specimen, animal().articulation, animal().assumptions, pose);
  const auto count = [&](Level level) {
    return static_cast<double>(
        std::count_if(result.joints.begin(), result.joints.end(), [=](const auto& v) { return v.level == level; }));
  };
  state.counters["joints"] = static_cast<double>(result.joints.size());
  state.counters["near"] = count(Level::Near);
  state.counters["beyond"] = count(Level::Beyond);
}

/// Argument: tenths of a degree at every joint. Counters tell how many joints it leaves near and beyond.
void findingsOfABend(benchmark::State& state) { findings(state, bent(0.1 * static_cast<double>(state.range(0)))); }
BENCHMARK(findingsOfABend)->Arg(0)->Arg(10)->Arg(30)->Arg(80)->Unit(benchmark::kMicrosecond);

/// Argument: lateral bend beside it, percent of what each joint has.
void findingsOfManyBeyond(benchmark::State& state) {
  findings(state, fifteenBeyond(0.01 * static_cast<double>(state.range(0))));
}
BENCHMARK(findingsOfManyBeyond)->Arg(0)->Arg(50)->Arg(150)->Unit(benchmark::kMicrosecond);

void levels(benchmark::State& state) {
  const kinematics::Pose pose = bent(1);
  for (auto _ : state) {
    for (std::size_t j = 0; j < pose.angles.size(); ++j) {
      benchmark::DoNotOptimize(
          levelAt(animal().specimen, animal().articulation, animal().assumptions, {j}, pose.angles[j]));
    }
  }
}
BENCHMARK(levels)->Unit(benchmark::kMicrosecond);

void facetPair(benchmark::State& state) {
  const auto joint = *animal().specimen.findJoint("C6-C7");
  const anatomy::Bone& caudal = animal().specimen[animal().specimen.caudalBone(joint)];
  const anatomy::Bone& cranial = animal().specimen[animal().specimen.cranialBone(joint)];
  const auto X = kinematics::jointTransform(animal().specimen[joint], animal().articulation[joint], {0.03, 0.02, 0});
  for (auto _ : state) {
    benchmark::DoNotOptimize(facetOverlap(*caudal.facet(anatomy::FacetRole::PrezygLeft),
                                          *cranial.facet(anatomy::FacetRole::PostzygLeft), X));
  }
}
BENCHMARK(facetPair)->Unit(benchmark::kNanosecond);

void articulateAll(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(articulate(animal().specimen, animal().assumptions));
}
BENCHMARK(articulateAll)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace zyga::range

BENCHMARK_MAIN();
