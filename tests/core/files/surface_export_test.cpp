#include <assimp/scene.h>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <assimp/Importer.hpp>
#include <fstream>
#include <sstream>

#include "core/files/export/mesh_export.h"
#include "core/files/json/json.h"
#include "tests/core/files/example_skeleton.h"
#include "tests/core/solid/mesh_library.h"

namespace zyga::files {
namespace {

using testing::HasSubstr;
using testing::UnorderedElementsAre;

/// Two closed surfaces beside an example skeleton: an egg 2 m long, 1 m wide, 0.5 m high, and a ball.
class SurfaceExport : public testing::Test {
 protected:
  SurfaceExport() {
    Eigen::Affine3d egg = Eigen::Affine3d::Identity();
    egg.linear().diagonal() << 1, 0.5, 0.25;
    egg.translation() << 3, 0, 1;
    surfaces_ = {{"skeleton_watertight", "One closed surface.", solid::mapped(solid::sphereMesh(1, 20), egg)},
                 {"body_guide_not_anatomy", "Body guide: not anatomy & <no> \"bone\".", solid::sphereMesh(2, 12)}};
  }

  std::filesystem::path path(const std::string& name) const { return folder_.path().toStdString() + "/" + name; }
  std::filesystem::path write(const std::string& name, const ExportOptions& options = {}, bool bones = false) const {
    exportMeshes(beast_.specimen, beast_.X_WB, bones ? beast_.meshes : BoneMeshes(), path(name), options, surfaces_);
    return path(name);
  }
  static std::string bytes(const std::filesystem::path& path) {
    std::ostringstream out;
    out << std::ifstream(path, std::ios::binary).rdbuf();
    return out.str();
  }

  example::Skeleton beast_;
  std::vector<NamedSurface> surfaces_;
  QTemporaryDir folder_;
};

/// Extents by node as another program sees them; meshes that lie at the root without a turn of their own.
std::map<std::string, Eigen::AlignedBox3d> extents(const std::filesystem::path& path) {
  Assimp::Importer importer;
  const aiScene* scene = importer.ReadFile(path.string(), 0);
  std::map<std::string, Eigen::AlignedBox3d> boxes;
  if (!scene) {
    ADD_FAILURE() << path << ": " << importer.GetErrorString();
    return boxes;
  }
  const std::function<void(const aiNode&, const aiMatrix4x4&)> walk = [&](const aiNode& node, const aiMatrix4x4& X) {
    const aiMatrix4x4 here = X * node.mTransformation;
    for (unsigned m = 0; m < node.mNumMeshes; ++m) {
      const aiMesh& mesh = *scene->mMeshes[node.mMeshes[m]];
      for (unsigned i = 0; i < mesh.mNumVertices; ++i) {
        const aiVector3D p = here * mesh.mVertices[i];
        boxes[node.mName.C_Str()].extend(Eigen::Vector3d(p.x, p.y, p.z));
      }
    }
    for (unsigned i = 0; i < node.mNumChildren; ++i) walk(*node.mChildren[i], here);
  };
  walk(*scene->mRootNode, aiMatrix4x4());
  return boxes;
}

TEST_F(SurfaceExport, KeepsSizeUpAxisAndNamesInFormatsWithObjects) {
  for (const char* name : {"egg.glb", "egg.gltf", "egg.obj"}) {
    ExportOptions options;
    const bool gltf = std::string(name).find("gl") != std::string::npos;
    if (!gltf) options.unit = LengthUnit::Millimetre;
    const auto boxes = extents(write(name, options));
    ASSERT_EQ(boxes.size(), 2U) << name;
    ASSERT_TRUE(boxes.contains("skeleton_watertight")) << name;
    ASSERT_TRUE(boxes.contains("body_guide_not_anatomy")) << name;
    const Eigen::Vector3d size = boxes.at("skeleton_watertight").sizes();
    // glTF: Y up, Z forward (section 3.4). OBJ as asked: Z up, X forward, mm.
    const Eigen::Vector3d expected = gltf ? Eigen::Vector3d(1, 0.5, 2) : Eigen::Vector3d(2000, 1000, 500);
    EXPECT_LT((size - expected).norm(), 0.005 * expected.norm()) << name << ": " << size.transpose();
  }
}

TEST_F(SurfaceExport, BonesKeepTheirNamesBesideASurface) {
  const auto boxes = extents(write("both.glb", {}, true));
  for (std::size_t i = 0; i < beast_.meshes.size(); ++i) {
    if (beast_.meshes[i]) {
      EXPECT_TRUE(boxes.contains(beast_.specimen.bones[i].id)) << beast_.specimen.bones[i].id;
    }
  }
  EXPECT_TRUE(boxes.contains("body_guide_not_anatomy"));
}

TEST_F(SurfaceExport, SingleMeshFormatsPutTheGuideIntoAFileOfItsOwn) {
  for (const std::string ending : {".stl", ".ply"}) {
    write("egg" + ending);
    const auto beside = path("egg.body_guide_not_anatomy" + ending);
    EXPECT_EQ(companionPath(path("egg" + ending), "body_guide_not_anatomy"), beside);
    ASSERT_TRUE(std::filesystem::exists(beside));
    const auto first = extents(path("egg" + ending)), second = extents(beside);
    ASSERT_EQ(first.size(), 1U);
    EXPECT_NEAR(first.begin()->second.sizes().x(), 2, 0.01);
    ASSERT_EQ(second.size(), 1U);
    EXPECT_NEAR(second.begin()->second.sizes().z(), 4, 0.01);
  }
  EXPECT_TRUE(holdsSingleMesh("a.ply"));
  EXPECT_FALSE(holdsSingleMesh("a.glb"));
}

TEST_F(SurfaceExport, EveryFormatSaysWhatTheSurfaceIs) {
  EXPECT_THAT(bytes(write("a.obj")), HasSubstr("# One closed surface. Body guide: not anatomy"));
  EXPECT_THAT(bytes(write("a.dae")), HasSubstr("<comments>One closed surface. Body guide: not anatomy &amp; &lt;no>"));
  EXPECT_THAT(bytes(write("a.glb")), HasSubstr("\"extras\": {\"note\": \"One closed surface. Body guide"));
  const std::string ply = bytes(write("a.ply"));
  EXPECT_THAT(ply, HasSubstr("comment One closed surface.\n"));
  EXPECT_LT(ply.find("comment One"), ply.find("end_header"));
  EXPECT_EQ(bytes(write("a.stl")).substr(0, 19), "One closed surface.");
  EXPECT_THAT(bytes(path("a.body_guide_not_anatomy.stl")).substr(0, 80), HasSubstr("not anatomy"));
  // The text form is JSON that a strict reader takes.
  const std::string text = bytes(write("a.gltf"));
  const JsonDocument document = parseJson(text, "a.gltf");
  EXPECT_THAT(JsonPlace(document)["asset"]["extras"]["note"].string(), HasSubstr("\"bone\""));
}

// glTF 2.0, section 4.4: the header tells the whole length, chunks are multiples of four bytes.
TEST_F(SurfaceExport, GlbLengthsStayRight) {
  const std::string glb = bytes(write("a.glb"));
  const auto number = [&](std::size_t at) {
    std::uint32_t value = 0;
    std::memcpy(&value, glb.data() + at, 4);
    return value;
  };
  EXPECT_EQ(number(8), glb.size());
  EXPECT_EQ(number(12) % 4, 0U);
  EXPECT_EQ(glb.substr(20 + number(12) + 4, 3), "BIN");
  EXPECT_EQ(20 + number(12) + 8 + number(20 + number(12)), glb.size());
}

TEST_F(SurfaceExport, NothingAtAllIsRefused) {
  surfaces_.clear();
  EXPECT_THROW(write("a.glb"), FileError);
}

}  // namespace
}  // namespace zyga::files
