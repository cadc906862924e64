#include <cmath>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <numbers>
#include <random>

#include "core/anatomy/plan/build_specimen.h"
#include "core/anatomy/tables/landmark_table.h"
#include "core/anatomy/marks/scan.h"
#include "core/files/disk/atomic_file.h"
#include "core/solid/sculpt/sculpt.h"

/// Makes the scan sample: four neck vertebrae of the high browser as a scanner and a quarry would leave them: in
/// millimetres, lying anyhow, rough, with holes, one of them sheared. The quarry is invented, and so is the animal.
/// `make_scans TABLE.csv FOLDER`
namespace {

using namespace zyga;
using Eigen::Vector3d;

constexpr std::size_t kTriangles = 9000;
constexpr double kRoughness = 0.0004;                  // m, standard deviation along the surface's normal
constexpr double kShear = 7 * std::numbers::pi / 180;  // of the third bone, left side slid up
constexpr int kHoles = 3;
constexpr double kHoleShare = 0.035;  // of the bone's length
constexpr double kClear = 1.6;        // facets and ends keep so many of their own sizes whole

struct Sample {
  const char* id;
  double turn;  ///< rad, how it lies
};
constexpr Sample kBones[] = {{"C5", 0.4}, {"C6", 2.1}, {"C7", -1.3}, {"C8", 0.9}};

/// From the bone's frame to where it lay under the scanner, m, the shear included.
Eigen::Affine3d laid(const Sample& sample) {
  Eigen::Affine3d X_SB = Eigen::Affine3d::Identity();
  X_SB.linear() = Eigen::AngleAxisd(sample.turn, Vector3d(0.3, 0.2, 1).normalized()).toRotationMatrix();
  X_SB.translation() = Vector3d(0.4 * sample.turn, 0.1, 0.25);
  if (std::string_view(sample.id) == "C7") {
    Eigen::Affine3d shear = Eigen::Affine3d::Identity();
    shear.linear()(2, 1) = std::tan(kShear);
    X_SB = X_SB * shear;
  }
  return X_SB;
}

bool mayBreak(const anatomy::Bone& bone, const Vector3d& p_B, double radius) {
  for (const anatomy::Facet& facet : bone.facets)
    if ((p_B - facet.centre).norm() < kClear * facet.length() + radius) return false;
  const double ends = 0.5 * bone.measures.value(anatomy::Measure::CotyleHeight);
  for (const char* end : {"condyleTip", "cranialRim", "caudalRim", "canal"})
    if ((p_B - bone.landmark(end)).norm() < kClear * ends + radius) return false;
  return (p_B - bone.landmark("spineTop")).norm() > radius + 0.03;
}

void roughen(solid::TriangleMesh& mesh, std::mt19937& random) {
  std::normal_distribution<float> off(0, static_cast<float>(kRoughness));
  for (std::size_t v = 0; v < mesh.positions.size(); ++v) mesh.positions[v] += off(random) * mesh.normals[v];
}

void breakHoles(solid::TriangleMesh& mesh, const anatomy::Bone& bone, std::mt19937& random) {
  const double radius = kHoleShare * bone.measures.value(anatomy::Measure::Length);
  std::uniform_int_distribution<std::size_t> any(0, mesh.positions.size() - 1);
  for (int hole = 0; hole < kHoles;) {
    const Vector3d at = mesh.positions[any(random)].cast<double>();
    if (!mayBreak(bone, at, radius)) continue;
    std::erase_if(mesh.triangles, [&](const auto& t) {
      const Eigen::Vector3f middle = (mesh.positions[t[0]] + mesh.positions[t[1]] + mesh.positions[t[2]]) / 3;
      return (middle.cast<double>() - at).norm() < radius;
    });
    ++hole;
  }
}

std::string plyOf(const solid::TriangleMesh& mesh, const Eigen::Affine3d& X_SB) {
  std::string bytes =
      "ply\nformat binary_little_endian 1.0\ncomment millimetres; invented animal, invented quarry\n"
      "element vertex " +
      std::to_string(mesh.positions.size()) + "\nproperty float x\nproperty float y\nproperty float z\nelement face " +
      std::to_string(mesh.triangles.size()) + "\nproperty list uchar int vertex_indices\nend_header\n";
  for (const auto& p : mesh.positions) {
    const Eigen::Vector3f out = (1000 * (X_SB * p.cast<double>())).cast<float>();
    bytes.append(reinterpret_cast<const char*>(out.data()), sizeof(float) * 3);
  }
  for (const auto& t : mesh.triangles) {
    bytes += '\3';
    bytes.append(reinterpret_cast<const char*>(t.data()), sizeof(std::uint32_t) * 3);
  }
  return bytes;
}

/// What a person would pick: the lie of the bone and what hangs on it. The facets are left to be brushed.
std::map<std::string, Vector3d, std::less<>> picked(const anatomy::Bone& bone, const Eigen::Affine3d& X_SB) {
  std::map<std::string, Vector3d, std::less<>> points;
  for (const char* name : {"cranialRim", "caudalRim", "cranial", "caudal", "spineTop", "diapophysis.L", "diapophysis.R",
                           "parapophysis.L", "parapophysis.R"})
    points[name] = X_SB * bone.landmark(name);
  const Vector3d half(0.3 * bone.measures.value(anatomy::Measure::Length), 0, 0);
  points[std::string(anatomy::kCanalCranial)] = X_SB * (bone.landmark("canal") + half);
  points[std::string(anatomy::kCanalCaudal)] = X_SB * (bone.landmark("canal") - half);
  return points;
}

int make(const std::filesystem::path& tableFile, const std::filesystem::path& folder) {
  const auto reading = anatomy::readMeasurementTable(files::readWhole(tableFile), tableFile.string());
  const anatomy::Specimen specimen = anatomy::buildSpecimen(anatomy::fillBlanks(reading.table));
  std::filesystem::create_directories(folder);
  std::mt19937 random(5);
  anatomy::LandmarkTable landmarks;
  for (const Sample& sample : kBones) {
    const auto index = *specimen.findBone(sample.id);
    solid::TriangleMesh mesh = solid::sculptBone(specimen, index, kTriangles).levels.front();
    roughen(mesh, random);
    breakHoles(mesh, specimen[index], random);
    files::writeWhole(folder / (std::string(sample.id) + ".ply"), plyOf(mesh, laid(sample)));
    landmarks.points[specimen[index].name] = picked(specimen[index], laid(sample));
  }
  files::writeWhole(folder / "landmarks.csv",
                    "# Points on the four scans beside this file; an invented animal from an invented quarry.\n" +
                        anatomy::writeLandmarkTable(landmarks));
  return 0;
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 3) {
    std::cerr << "usage: make_scans TABLE.csv FOLDER\n";
    return 2;
  }
  try {
    return make(argv[1], argv[2]);
  } catch (const std::exception& error) {
    std::cerr << error.what() << "\n";
    return 2;
  }
}
