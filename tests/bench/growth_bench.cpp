// How the work grows with the bones and with the triangles of a bone, and what memory it takes. Prints a point a line
// ("point WORK SIZE SECONDS", drawn by growth.py) and, as rows, the exponent that fits each work best ("@ NAME VALUE"):
// 1 is in proportion. Figures to reach: near linear; the sample under 600 MB; 150 scans of 200,000 triangles open and
// posed under 4 GB.
#include <chrono>
#include <cmath>
#include <cstdio>
#include <functional>
#include <string>
#include <vector>

#include "core/anatomy/plan/build_specimen.h"
#include "core/files/scan/bone_meshes.h"
#include "core/kinematics/placement.h"
#include "core/range/findings.h"
#include "core/range/neutral.h"
#include "core/solid/mesh/repair.h"
#include "core/solid/mesh/simplify.h"
#include "tests/bench/lumpy_ball.h"
#include "tests/bench/process_memory.h"
#include "tests/bench/sample_project.h"
#include "tests/support/random_tree.h"

namespace zyga {
namespace {

using Clock = std::chrono::steady_clock;

struct Point {
  double size, seconds;
};

/// The least time of one run, s; repeated for a tenth of a second, three times at least.
double leastTime(const std::function<void()>& run) {
  double least = 1e9, spent = 0;
  for (int i = 0; i < 3 || spent < 0.1; ++i) {
    const auto start = Clock::now();
    run();
    const double taken = std::chrono::duration<double>(Clock::now() - start).count();
    least = std::min(least, taken);
    spent += taken;
  }
  return least;
}

/// Slope of the straight line through the logarithms, by least squares.
double exponent(const std::vector<Point>& points) {
  double n = 0, x = 0, y = 0, xx = 0, xy = 0;
  for (const auto& [size, seconds] : points) {
    const double u = std::log(size), v = std::log(seconds);
    n += 1, x += u, y += v, xx += u * u, xy += u * v;
  }
  return (n * xy - x * y) / (n * xx - x * x);
}

void tell(const std::string& work, const std::vector<Point>& points) {
  for (const auto& [size, seconds] : points) std::printf("point %s %.0f %.9g\n", work.c_str(), size, seconds);
  std::printf("@ %sGrowth %.3f\n", work.c_str(), exponent(points));
  std::fflush(stdout);
}

void placement() {
  std::vector<Point> points;
  for (const std::size_t bones : {50u, 100u, 200u, 400u}) {
    test::Chance chance(7);
    const test::RandomTree tree(chance, bones);
    kinematics::Placement X_WB;
    const double thousand = leastTime([&] {
      for (int i = 0; i < 1000; ++i) kinematics::placeInto(tree.specimen, tree.articulation, tree.pose, X_WB);
    });
    points.push_back({static_cast<double>(bones), thousand / 1000});
  }
  tell("placement", points);
}

/// Animals of the same plan with ever more vertebrae.
void findings() {
  std::vector<Point> points;
  for (const anatomy::RegionCounts& counts :
       {anatomy::RegionCounts{5, 9, 4, 10}, {9, 10, 5, 30}, {13, 11, 5, 52}, {19, 14, 6, 90}}) {
    anatomy::MeasurementTable table;
    table.name = "growing";
    table.counts = counts;
    const anatomy::Specimen specimen = anatomy::buildSpecimen(anatomy::fillBlanks(table));
    const range::Assumptions assumptions;
    const auto articulation = range::articulate(specimen, assumptions);
    kinematics::Pose pose = kinematics::Pose::neutral(specimen);
    double judged = 0;
    for (std::size_t j = 0; j < pose.angles.size(); ++j) {
      if (!specimen.joints[j].hasFacets()) continue;
      pose.angles[j] = {0.05, 0.025, 0};
      judged += 1;
    }
    points.push_back({judged, leastTime([&] { range::assess(specimen, articulation, assumptions, pose); })});
  }
  tell("findings", points);
}

void triangles() {
  std::vector<Point> points;
  for (const int n : {71, 141, 283, 566, 1225}) {  // 10 k, 40 k, 160 k, 640 k and 3 M triangles
    const solid::TriangleMesh mesh = bench::lumpyBall(n);
    const auto start = Clock::now();
    const auto levels = solid::displayLevels(solid::repair(mesh).mesh).levels.size();
    const double taken = std::chrono::duration<double>(Clock::now() - start).count();
    if (levels > 0) points.push_back({static_cast<double>(mesh.triangles.size()), taken});
  }
  tell("scanReady", points);
}

void memoryOfTheSample() {
  const auto project = bench::sampleProject();
  const auto meshes = files::boneMeshes(project, {});
  std::printf("@ sampleMegabytes %.0f\n", bench::mostMegabytes());
  std::fflush(stdout);
}

/// 150 vertebrae whose scans have 200,000 triangles each, made ready for display and posed.
void memoryOfScans() {
  anatomy::MeasurementTable table;
  table.name = "scanned";
  auto project = files::projectFromTable(table);
  for (const anatomy::Bone& bone : project.specimen().bones) {
    if (project.scans.size() == 150) break;
    files::ProjectScan scan;
    scan.scan.bone = bone.name;
    scan.mesh = std::make_shared<solid::TriangleMesh>(bench::lumpyBall(316));
    project.scans.push_back(std::move(scan));
  }
  const auto meshes = files::boneMeshes(project, {});
  const auto articulation = range::articulate(project.specimen(), project.assumptions);
  kinematics::Placement X_WB;
  kinematics::placeInto(project.specimen(), articulation, project.pose, X_WB);
  std::size_t shown = 0;
  for (const auto& mesh : meshes) shown += mesh && !mesh->levels.empty() ? mesh->levels.front().triangles.size() : 0;
  std::printf("@ scannedTriangles %zu\n@ scansMegabytes %.0f\n", shown, bench::mostMegabytes());
}

}  // namespace
}  // namespace zyga

int main() {
  zyga::memoryOfTheSample();
  zyga::placement();
  zyga::findings();
  zyga::triangles();
  zyga::memoryOfScans();
}
