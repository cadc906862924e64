#include "viewport_scene.h"

#include <cmath>
#include <fstream>
#include <sstream>
#include <stdexcept>

#include "ui/viewport/scene.h"

namespace zyga::ui::test {
namespace {

constexpr int kSides = 8;

// A closed bar: a ring at each end and a point on either cap.
void addBar(solid::TriangleMesh& mesh, const Eigen::Vector3d& from, const Eigen::Vector3d& to, double radius) {
  const Eigen::Vector3d along = (to - from).normalized();
  const Eigen::Vector3d u = along.unitOrthogonal(), v = along.cross(u);
  const auto first = static_cast<std::uint32_t>(mesh.positions.size());
  for (const Eigen::Vector3d& end : {from, to})
    for (int i = 0; i < kSides; ++i) {
      const double a = 2 * M_PI * i / kSides;
      mesh.positions.push_back((end + radius * (std::cos(a) * u + std::sin(a) * v)).cast<float>());
    }
  mesh.positions.push_back((from - 0.5 * radius * along).cast<float>());
  mesh.positions.push_back((to + 0.5 * radius * along).cast<float>());
  const std::uint32_t tail = first + 2 * kSides, head = tail + 1;
  for (std::uint32_t i = 0; i < kSides; ++i) {
    const std::uint32_t a = first + i, b = first + (i + 1) % kSides, c = a + kSides, d = b + kSides;
    mesh.triangles.push_back({a, b, d});
    mesh.triangles.push_back({a, d, c});
    mesh.triangles.push_back({tail, b, a});
    mesh.triangles.push_back({head, c, d});
  }
}

}  // namespace

files::BoneMeshes barBones(const anatomy::Specimen& specimen) {
  files::BoneMeshes meshes;
  for (const auto& bone : specimen.bones) {
    solid::TriangleMesh mesh;
    for (const auto& [from, to] : sticksOf(bone))
      if ((to - from).norm() > 1e-6) addBar(mesh, from, to, std::max(0.01, 0.12 * (to - from).norm()));
    solid::computeNormals(mesh);
    auto levels = std::make_shared<solid::BoneMesh>();
    levels->levels.push_back(std::move(mesh));
    meshes.push_back(levels->levels.front().empty() || bone.fusedInto ? nullptr : levels);
  }
  return meshes;
}

files::Project sampleProject(const char* name) {
  const std::string path = std::string(ZYGAPOSE_SOURCE_DIR) + "/samples/" + name + ".csv";
  std::ifstream file(path);
  std::stringstream text;
  text << file.rdbuf();
  const auto reading = anatomy::readMeasurementTable(text.str(), path);
  if (!file || !reading.usable()) throw std::runtime_error("cannot use " + path);
  return files::projectFromTable(reading.table);
}

bool haveScreen() { return qApp != nullptr && QGuiApplication::platformName() == "xcb"; }

files::BoneMeshes inTwoLevels(files::BoneMeshes meshes) {
  for (auto& bone : meshes) {
    if (!bone) continue;
    auto finer = std::make_shared<solid::BoneMesh>(*bone);
    finer->levels.insert(finer->levels.begin(), bone->levels.front());
    bone = std::move(finer);
  }
  return meshes;
}

int differing(const QImage& a, const QImage& b, const QRect& area) {
  int count = 0;
  for (int y = area.top(); y <= area.bottom(); ++y)
    for (int x = area.left(); x <= area.right(); ++x) {
      if (!a.rect().contains(x, y)) continue;
      const QColor p = a.pixelColor(x, y), q = b.pixelColor(x, y);
      count += std::abs(p.red() - q.red()) + std::abs(p.green() - q.green()) + std::abs(p.blue() - q.blue()) > 60;
    }
  return count;
}

}  // namespace zyga::ui::test
