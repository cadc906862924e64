// Placement of the whole animal against Orocos KDL on the same tree, in one run. Figure to reach: five times KDL.
#include <benchmark/benchmark.h>

#include <array>
#include <cmath>
#include <fstream>
#include <functional>
#include <kdl/treefksolverpos_recursive.hpp>
#include <sstream>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/placement.h"
#include "tests/support/kdl_tree.h"

namespace zyga {
namespace {

struct Animal {
  anatomy::Specimen specimen;
  kinematics::Articulation articulation;
  /// Two poses in turn, as in a drag: KDL keeps the last sine and cosine of each joint.
  std::array<kinematics::Pose, 2> poses;
};

kinematics::Pose bent(const anatomy::Specimen& specimen, double amount) {
  kinematics::Pose pose = kinematics::Pose::neutral(specimen);
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    if (specimen.joints[j].kind == anatomy::JointKind::Fixed) continue;
    const double i = static_cast<double>(j);
    pose.angles[j] = amount * Eigen::Vector3d(std::sin(i), std::cos(i), 0.5 * std::sin(2 * i));
  }
  return pose;
}

Animal readAnimal() {
  const std::string path = ZYGAPOSE_SOURCE_DIR "/samples/high_browser.csv";
  std::stringstream text;
  text << std::ifstream(path).rdbuf();
  Animal animal;
  animal.specimen = anatomy::buildSpecimen(anatomy::fillBlanks(anatomy::readMeasurementTable(text.str(), path).table));
  animal.articulation = kinematics::restArticulation(animal.specimen);
  animal.poses = {bent(animal.specimen, 0.1), bent(animal.specimen, 0.11)};
  return animal;
}

const Animal& animal() {
  static const Animal value = readAnimal();
  return value;
}

void count(benchmark::State& state) {
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(animal().specimen.bones.size()));
}

void zygaposePlacement(benchmark::State& state) {
  kinematics::Placement X_WB;
  std::size_t turn = 0;
  for (auto _ : state) {
    kinematics::placeInto(animal().specimen, animal().articulation, animal().poses[++turn % 2], X_WB);
    benchmark::DoNotOptimize(X_WB.data());
    benchmark::ClobberMemory();
  }
  count(state);
}
BENCHMARK(zygaposePlacement);

/// KDL's segments walked once, parent before child, by this loop: the least work KDL's own pieces allow.
void kdlOnePass(benchmark::State& state) {
  const test::KdlTree kdl(animal().specimen, animal().articulation);
  struct Step {
    const KDL::Segment* segment;
    std::size_t parent;
    unsigned q;
  };
  std::vector<Step> steps;
  const std::function<void(KDL::SegmentMap::const_iterator, std::size_t)> walk = [&](auto at, std::size_t parent) {
    for (const auto& child : at->second.children) {
      steps.push_back({&child->second.segment, parent, child->second.q_nr});
      walk(child, steps.size());
    }
  };
  walk(kdl.tree.getRootSegment(), 0);
  const std::array<KDL::JntArray, 2> poses{kdl.positions(animal().poses[0]), kdl.positions(animal().poses[1])};
  std::size_t turn = 0;
  std::vector<KDL::Frame> frames(steps.size() + 1);
  for (auto _ : state) {
    const KDL::JntArray& q = poses[++turn % 2];
    for (std::size_t i = 0; i < steps.size(); ++i)
      frames[i + 1] = frames[steps[i].parent] * steps[i].segment->pose(q(steps[i].q));
    benchmark::DoNotOptimize(frames.data());
    benchmark::ClobberMemory();
  }
  count(state);
}
BENCHMARK(kdlOnePass);

/// KDL's solver asked for every bone, as its interface offers.
void kdlSolver(benchmark::State& state) {
  const test::KdlTree kdl(animal().specimen, animal().articulation);
  KDL::TreeFkSolverPos_recursive solver(kdl.tree);
  const std::array<KDL::JntArray, 2> poses{kdl.positions(animal().poses[0]), kdl.positions(animal().poses[1])};
  std::size_t turn = 0;
  std::vector<std::string> names;
  for (const auto& joint : animal().specimen.joints) names.push_back(std::to_string(joint.distal.value));
  std::vector<KDL::Frame> frames(names.size());
  for (auto _ : state) {
    const KDL::JntArray& q = poses[++turn % 2];
    for (std::size_t i = 0; i < names.size(); ++i) solver.JntToCart(q, frames[i], names[i]);
    benchmark::DoNotOptimize(frames.data());
    benchmark::ClobberMemory();
  }
  count(state);
}
BENCHMARK(kdlSolver);

}  // namespace
}  // namespace zyga

BENCHMARK_MAIN();
