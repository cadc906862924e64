// Verdicts on the whole animal. Figures to reach: all joints of the column under 0.5 ms; the limits of the neck in all
// six directions under 100 ms, with the articulation that a change of cartilage asks for.
#include <benchmark/benchmark.h>

#include <fstream>
#include <sstream>

#include "core/anatomy/build_specimen.h"
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

/// Argument: tenths of a degree at every joint. Counters tell how many joints it leaves supported.
void findings(benchmark::State& state) {
  const kinematics::Pose pose = bent(0.1 * static_cast<double>(state.range(0)));
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
BENCHMARK(findings)->Arg(0)->Arg(10)->Arg(30)->Arg(80)->Unit(benchmark::kMicrosecond);

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
  const auto X = kinematics::placeDistal(animal().specimen[joint], animal().articulation[joint], {0.03, 0.02, 0});
  for (auto _ : state) {
    benchmark::DoNotOptimize(
        meet(*caudal.facet(anatomy::FacetRole::PrezygLeft), *cranial.facet(anatomy::FacetRole::PostzygLeft), X));
  }
}
BENCHMARK(facetPair)->Unit(benchmark::kNanosecond);

void limitsOf(benchmark::State& state, bool neckOnly) {
  const Eigen::Vector3d angles = Eigen::Vector3d::Zero();
  for (auto _ : state) {
    for (std::size_t j = 0; j < animal().specimen.joints.size(); ++j) {
      const anatomy::Joint& joint = animal().specimen.joints[j];
      if (!joint.hasFacets() || (neckOnly && joint.region != anatomy::Region::Cervical)) continue;
      for (int motion = 0; motion < 3; ++motion) {
        benchmark::DoNotOptimize(
            band(animal().specimen, animal().articulation, animal().assumptions, {j}, angles, motion));
      }
    }
  }
}
void limitsOfTheNeck(benchmark::State& state) { limitsOf(state, true); }
BENCHMARK(limitsOfTheNeck)->Unit(benchmark::kMillisecond);
void limitsOfTheColumn(benchmark::State& state) { limitsOf(state, false); }
BENCHMARK(limitsOfTheColumn)->Unit(benchmark::kMillisecond);

void articulateAll(benchmark::State& state) {
  for (auto _ : state) benchmark::DoNotOptimize(articulate(animal().specimen, animal().assumptions));
}
BENCHMARK(articulateAll)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace zyga::range

BENCHMARK_MAIN();
