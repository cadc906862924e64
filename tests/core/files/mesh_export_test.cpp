#include "core/files/export/mesh_export.h"

#include <assimp/postprocess.h>
#include <assimp/scene.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <assimp/Importer.hpp>
#include <fstream>
#include <set>
#include <sstream>

#include "core/files/export/bone_tone.h"
#include "tests/core/files/example_skeleton.h"
#include "ui/words/say.h"

namespace zyga::files {
namespace {

namespace fs = std::filesystem;
using testing::HasSubstr;

Eigen::Matrix4d toEigen(const aiMatrix4x4& m) {
  Eigen::Matrix4d out;
  for (unsigned row = 0; row < 4; ++row) {
    for (unsigned col = 0; col < 4; ++col) out(row, col) = m[row][col];
  }
  return out;
}

Eigen::Vector3d toEigen(const aiVector3D& v) { return {v.x, v.y, v.z}; }

/// A file as another program sees it: vertices and triangles in its own frame.
struct Seen {
  std::vector<Eigen::Vector3d> positions, normals;
  std::vector<std::array<Eigen::Vector3d, 3>> triangles;
  std::vector<std::array<Eigen::Vector3d, 3>> cornerNormals;  ///< beside triangles
  std::map<std::string, std::string> parents;                 ///< by node name
  std::map<std::string, Eigen::Matrix4d> X_FNode;             ///< by node name
  std::map<std::string, std::size_t> meshVertices;            ///< by node name

  Eigen::AlignedBox3d bounds() const {
    Eigen::AlignedBox3d box;
    for (const auto& p : positions) box.extend(p);
    return box;
  }
  double volume() const {
    double sum = 0;
    for (const auto& [a, b, c] : triangles) sum += a.dot(b.cross(c)) / 6;
    return sum;
  }
  /// Positions that differ.
  std::size_t welded() const {
    std::set<std::array<long, 3>> cells;
    const double step = 1e-5 * bounds().diagonal().norm();
    for (const auto& p : positions)
      cells.insert({std::lround(p.x() / step), std::lround(p.y() / step), std::lround(p.z() / step)});
    return cells.size();
  }
};

void walk(const aiScene& scene, const aiNode& node, const Eigen::Matrix4d& X_FParent, Seen& seen) {
  const Eigen::Matrix4d X = X_FParent * toEigen(node.mTransformation);
  const std::string name = node.mName.C_Str();
  seen.parents[name] = node.mParent ? node.mParent->mName.C_Str() : "";
  seen.X_FNode[name] = X;
  for (unsigned m = 0; m < node.mNumMeshes; ++m) {
    const aiMesh& mesh = *scene.mMeshes[node.mMeshes[m]];
    const auto at = [&](unsigned i) -> Eigen::Vector3d {
      return (X * toEigen(mesh.mVertices[i]).homogeneous()).head<3>();
    };
    const auto turned = [&](unsigned i) -> Eigen::Vector3d {
      return X.topLeftCorner<3, 3>() * toEigen(mesh.mNormals[i]);
    };
    seen.meshVertices[name] += mesh.mNumVertices;
    for (unsigned i = 0; i < mesh.mNumVertices; ++i) {
      seen.positions.push_back(at(i));
      if (mesh.mNormals) seen.normals.push_back(turned(i));
    }
    for (unsigned f = 0; f < mesh.mNumFaces; ++f) {
      const unsigned* index = mesh.mFaces[f].mIndices;
      seen.triangles.push_back({at(index[0]), at(index[1]), at(index[2])});
      if (mesh.mNormals) seen.cornerNormals.push_back({turned(index[0]), turned(index[1]), turned(index[2])});
    }
  }
  for (unsigned i = 0; i < node.mNumChildren; ++i) walk(scene, *node.mChildren[i], X, seen);
}

Seen look(const fs::path& path) {
  Assimp::Importer importer;
  const aiScene* scene = importer.ReadFile(path.string(), aiProcess_ValidateDataStructure);
  Seen seen;
  if (!scene) {
    ADD_FAILURE() << path << ": " << importer.GetErrorString();
    return seen;
  }
  walk(*scene, *scene->mRootNode, Eigen::Matrix4d::Identity(), seen);
  return seen;
}

class MeshExport : public testing::Test {
 protected:
  fs::path file(const std::string& name) const { return fs::path(folder_.path().toStdString()) / name; }
  fs::path write(const std::string& name, const ExportOptions& options = {}) const {
    exportMeshes(beast_.specimen, beast_.X_WB, beast_.meshes, file(name), options);
    return file(name);
  }
  static std::string text(const fs::path& path) {
    std::ostringstream out;
    out << std::ifstream(path, std::ios::binary).rdbuf();
    return out.str();
  }

  example::Skeleton beast_;

 private:
  QTemporaryDir folder_;
};

/// How the axes of a file, as its reader hands them on, lie in the world: as they are; Y up and Z forward; or Z up
/// turned into Y up about x, which is what the mesh library makes of a COLLADA file that declares Z up.
enum class Axes { World, YUp, TurnedUp };

Eigen::Vector3d inFile(const Eigen::Vector3d& p_W, Axes axes, double perMetre = 1) {
  if (axes == Axes::YUp) return perMetre * Eigen::Vector3d(p_W.y(), p_W.z(), p_W.x());
  if (axes == Axes::TurnedUp) return perMetre * Eigen::Vector3d(p_W.x(), p_W.z(), -p_W.y());
  return perMetre * p_W;
}

struct Case {
  const char* ending;
  LengthUnit unit;
  UpAxis up;
  bool joined;
  // COLLADA declares its unit and axis, and the reader turns it into metres with Y up; glTF is always so.
  double perMetreSeen;
  Axes axesSeen;
};

std::string caseName(const testing::TestParamInfo<Case>& info) {
  const auto& c = info.param;
  const char* unit = c.unit == LengthUnit::Metre ? "M" : c.unit == LengthUnit::Centimetre ? "Cm" : "Mm";
  return std::string(c.ending) + unit + (c.up == UpAxis::Y ? "Y" : "Z") + (c.joined ? "Joined" : "");
}

class EveryFormat : public MeshExport, public testing::WithParamInterface<Case> {
 protected:
  Seen seen() const {
    const auto& c = GetParam();
    return look(write("beast." + std::string(c.ending), {c.joined, c.unit, c.up}));
  }
};

TEST_P(EveryFormat, HasTheBonesWhereTheyStand) {
  const auto& c = GetParam();
  const auto box = seen().bounds();
  Eigen::AlignedBox3d expected;
  const auto world = beast_.bounds();
  expected.extend(inFile(world.min(), c.axesSeen, c.perMetreSeen));
  expected.extend(inFile(world.max(), c.axesSeen, c.perMetreSeen));
  EXPECT_LT((box.min() - expected.min()).norm(), 2e-6 * c.perMetreSeen * world.diagonal().norm());
  EXPECT_LT((box.max() - expected.max()).norm(), 2e-6 * c.perMetreSeen * world.diagonal().norm());
}

TEST_P(EveryFormat, HasEveryVertexAndTriangleOnce) {
  const auto s = seen();
  EXPECT_EQ(s.triangles.size(), beast_.triangles());
  EXPECT_EQ(s.welded(), beast_.vertices());
}

TEST_P(EveryFormat, IsClosedFacingOutwardsWithItsVolume) {
  const auto& c = GetParam();
  const double expected = beast_.volume() * std::pow(c.perMetreSeen, 3);
  EXPECT_NEAR(seen().volume(), expected, 1e-5 * expected);
}

TEST_P(EveryFormat, HasNormalsThatPointOutwards) {
  const auto s = seen();
  ASSERT_EQ(s.cornerNormals.size(), s.triangles.size());
  for (std::size_t i = 0; i < s.triangles.size(); ++i) {
    const auto& [a, b, c] = s.triangles[i];
    const Eigen::Vector3d facing = (b - a).cross(c - a).normalized();
    for (const auto& n : s.cornerNormals[i]) ASSERT_GT(n.normalized().dot(facing), 0.5);
  }
}

INSTANTIATE_TEST_SUITE_P(All, EveryFormat,
                         testing::Values(Case{"glb", LengthUnit::Metre, UpAxis::Z, false, 1, Axes::YUp},
                                         Case{"glb", LengthUnit::Millimetre, UpAxis::Z, true, 1, Axes::YUp},
                                         Case{"gltf", LengthUnit::Metre, UpAxis::Y, false, 1, Axes::YUp},
                                         Case{"obj", LengthUnit::Metre, UpAxis::Z, false, 1, Axes::World},
                                         Case{"obj", LengthUnit::Centimetre, UpAxis::Y, false, 100, Axes::YUp},
                                         Case{"obj", LengthUnit::Millimetre, UpAxis::Z, true, 1000, Axes::World},
                                         Case{"ply", LengthUnit::Metre, UpAxis::Z, false, 1, Axes::World},
                                         Case{"ply", LengthUnit::Millimetre, UpAxis::Y, true, 1000, Axes::YUp},
                                         Case{"stl", LengthUnit::Millimetre, UpAxis::Z, false, 1000, Axes::World},
                                         Case{"stl", LengthUnit::Metre, UpAxis::Y, true, 1, Axes::YUp},
                                         Case{"dae", LengthUnit::Metre, UpAxis::Z, false, 1, Axes::TurnedUp},
                                         Case{"dae", LengthUnit::Centimetre, UpAxis::Z, false, 1, Axes::TurnedUp},
                                         Case{"dae", LengthUnit::Millimetre, UpAxis::Y, false, 1, Axes::YUp},
                                         Case{"dae", LengthUnit::Metre, UpAxis::Y, true, 1, Axes::YUp}),
                         caseName);

class NestedFormat : public MeshExport, public testing::WithParamInterface<const char*> {};

TEST_P(NestedFormat, NestsNamedNodesAsTheJointsAre) {
  const auto s = look(write("beast." + std::string(GetParam())));
  EXPECT_EQ(s.parents.at("D3"), "S1");
  EXPECT_EQ(s.parents.at("femur.L"), "S1");
  EXPECT_EQ(s.parents.at("tibia.L"), "femur.L");
  EXPECT_EQ(s.meshVertices.at("tibia.L") > 0, true);
  EXPECT_FALSE(s.meshVertices.contains("femur.L"));  // no mesh, but something hangs on it
  EXPECT_FALSE(s.parents.contains("rib.D3.L"));      // grown into D3, carries nothing
}

TEST_P(NestedFormat, KeepsTheBonesOwnFrames) {
  const auto axes = std::string(GetParam()).starts_with("gl") ? Axes::YUp : Axes::TurnedUp;
  const auto s = look(write("beast." + std::string(GetParam())));
  const std::vector<std::string> names{"S1", "D3", "", "femur.L", "tibia.L"};
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (names[i].empty()) continue;
    const auto expected = inFile(beast_.X_WB[i].translation(), axes);
    EXPECT_LT((s.X_FNode.at(names[i]).topRightCorner<3, 1>() - expected).norm(), 1e-5) << names[i];
    const Eigen::Vector3d up_F = s.X_FNode.at(names[i]).topLeftCorner<3, 3>() * Eigen::Vector3d::UnitZ();
    const auto upExpected = inFile(beast_.X_WB[i].linear().col(2), axes);
    EXPECT_LT((up_F - upExpected).norm(), 1e-5) << names[i];
  }
}

INSTANTIATE_TEST_SUITE_P(All, NestedFormat, testing::Values("glb", "gltf", "dae"));

TEST_F(MeshExport, ObjNamesEachBone) {
  const auto s = look(write("beast.obj"));
  EXPECT_TRUE(s.meshVertices.contains("S1") && s.meshVertices.contains("D3") && s.meshVertices.contains("tibia.L"));
}

TEST_F(MeshExport, SharesVerticesBetweenTriangles) {
  EXPECT_EQ(look(write("beast.ply")).positions.size(), beast_.vertices());
  EXPECT_EQ(look(write("beast.glb")).positions.size(), beast_.vertices());
}

TEST_F(MeshExport, ColladaSaysUnitAndAxis) {
  EXPECT_THAT(
      text(write("a.dae", {false, LengthUnit::Centimetre, UpAxis::Z})),
      testing::AllOf(HasSubstr("<unit name=\"centimeter\" meter=\"0.01\" />"), HasSubstr("<up_axis>Z_UP</up_axis>")));
  EXPECT_THAT(
      text(write("b.dae", {false, LengthUnit::Millimetre, UpAxis::Y})),
      testing::AllOf(HasSubstr("<unit name=\"millimeter\" meter=\"0.001\" />"), HasSubstr("<up_axis>Y_UP</up_axis>")));
}

TEST_F(MeshExport, CompanionsCarryTheNameAndAreFound) {
  const auto obj = write("my beast.v2.obj");
  EXPECT_TRUE(fs::exists(file("my beast.v2.mtl")));
  EXPECT_THAT(text(obj), HasSubstr("mtllib my beast.v2.mtl"));
  const auto gltf = write("my beast.v2.gltf");
  EXPECT_TRUE(fs::exists(file("my beast.v2.bin")));
  EXPECT_THAT(text(gltf), HasSubstr("my%20beast.v2.bin"));
}

TEST_F(MeshExport, MaterialsTellTheEvidence) {
  Assimp::Importer importer;
  const aiScene* scene = importer.ReadFile(write("beast.glb").string(), 0);
  ASSERT_TRUE(scene);
  for (unsigned i = 0; i < scene->mNumMeshes; ++i) {
    const aiMesh& mesh = *scene->mMeshes[i];
    const auto evidence =
        std::string(mesh.mName.C_Str()) == "D3" ? anatomy::Evidence::Inferred : anatomy::Evidence::Found;
    aiColor4D base;
    ASSERT_EQ(scene->mMaterials[mesh.mMaterialIndex]->Get(AI_MATKEY_BASE_COLOR, base), aiReturn_SUCCESS);
    for (unsigned k = 0; k < 3; ++k) EXPECT_NEAR(base[k], linearFromSrgb(boneTone(evidence)[k]), 1e-6);
  }
}

TEST(BoneTone, LinearLightOfSrgb) {
  // IEC 61966-2-1: 0 and 1 stay, mid grey 0.5 is 0.2140 of the light.
  EXPECT_EQ(linearFromSrgb(0), 0);
  EXPECT_NEAR(linearFromSrgb(1), 1, 1e-6);
  EXPECT_NEAR(linearFromSrgb(0.5F), 0.21404F, 1e-5);
}

TEST_F(MeshExport, ZeroNormalsDoNotReachTheFile) {
  auto mesh = std::make_shared<solid::BoneMesh>(*beast_.meshes[0]);
  mesh->levels[0].normals[0].setZero();
  beast_.meshes[0] = mesh;
  for (const auto& n : look(write("beast.glb")).normals) EXPECT_NEAR(n.norm(), 1, 1e-5);
}

TEST_F(MeshExport, MissingNormalsAreMade) {
  auto mesh = std::make_shared<solid::BoneMesh>(*beast_.meshes[0]);
  mesh->levels[0].normals.clear();
  beast_.meshes[0] = mesh;
  EXPECT_EQ(look(write("beast.glb")).normals.size(), beast_.vertices());
}

TEST_F(MeshExport, RefusesWhatItCannotWrite) {
  const auto errorOf = [&](const std::string& name) {
    try {
      write(name);
    } catch (const FileError& error) {
      return ui::sayFailure(error).toStdString();
    }
    return std::string();
  };
  EXPECT_THAT(errorOf("beast.fbx"), HasSubstr("the ending must be .glb, .gltf, .obj, .ply, .stl or .dae"));
  EXPECT_THAT(errorOf("no/beast.glb"), HasSubstr("there is no folder"));
  beast_.meshes.clear();
  EXPECT_THAT(errorOf("beast.glb"), HasSubstr("no bone meshes"));
}

}  // namespace
}  // namespace zyga::files
