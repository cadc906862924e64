#include <assimp/scene.h>

#include <QImage>
#include <assimp/Importer.hpp>
#include <set>

#include "tests/app/program.h"

namespace zyga::app {
namespace {

using testing::HasSubstr;

/// Sculpted bones are kept from one test to the next.
class MeshVerbs : public Program {
 protected:
  MeshVerbs() { setCache(ZYGAPOSE_TEST_CACHE); }

  /// Height and length of what a file holds, in its own unit, up along axis `up`, forward along `forward`.
  struct Extent {
    double up = 0, forward = 0, lowest = 0;
    unsigned meshes = 0;
  };
  Extent extentOf(const std::string& name, unsigned up, unsigned forward) const {
    Assimp::Importer importer;
    const aiScene* scene = importer.ReadFile(path(name).string(), 0);
    if (!scene) {
      ADD_FAILURE() << importer.GetErrorString();
      return {};
    }
    aiVector3D least(1e9F), most(-1e9F);
    grow(*scene, *scene->mRootNode, aiMatrix4x4(), least, most);
    return {most[up] - least[up], most[forward] - least[forward], least[up], scene->mNumMeshes};
  }

 private:
  static void grow(const aiScene& scene, const aiNode& node, aiMatrix4x4 X, aiVector3D& least, aiVector3D& most) {
    X = X * node.mTransformation;
    for (unsigned m = 0; m < node.mNumMeshes; ++m) {
      const aiMesh& mesh = *scene.mMeshes[node.mMeshes[m]];
      for (unsigned i = 0; i < mesh.mNumVertices; ++i) {
        const aiVector3D p = X * mesh.mVertices[i];
        for (unsigned k = 0; k < 3; ++k) {
          least[k] = std::min(least[k], p[k]);
          most[k] = std::max(most[k], p[k]);
        }
      }
    }
    for (unsigned i = 0; i < node.mNumChildren; ++i) grow(scene, *node.mChildren[i], X, least, most);
  }
};

TEST_F(MeshVerbs, ExportHasTheSameAnimalInEveryFormat) {
  smallAnimal();
  const auto exportTo = [&](const std::string& name, std::vector<std::string> more) {
    more.insert(more.begin(), {"export", "small.zyga", "--out", name, "--triangles", "600"});
    const auto ended = run(more);
    EXPECT_EQ(ended.exit, 0) << ended.err;
  };
  exportTo("a.glb", {});
  exportTo("a.obj", {"--unit", "mm", "--up", "y"});
  exportTo("a.stl", {"--unit", "cm"});
  exportTo("joined.glb", {"--joined"});
  const auto glb = extentOf("a.glb", 1, 2), obj = extentOf("a.obj", 1, 2), stl = extentOf("a.stl", 2, 0);
  EXPECT_GT(glb.forward, 2);
  EXPECT_GT(glb.meshes, 100U);
  EXPECT_EQ(extentOf("joined.glb", 1, 2).meshes, 1U);
  EXPECT_NEAR(obj.up, glb.up * 1000, 1);
  EXPECT_NEAR(obj.forward, glb.forward * 1000, 1);
  EXPECT_NEAR(stl.up, glb.up * 100, 0.1);
  EXPECT_NEAR(stl.forward, glb.forward * 100, 0.1);
}

TEST_F(MeshVerbs, ExportTellsBadOptionsBeforeAnyWork) {
  smallAnimal();
  EXPECT_THAT(run({"export", "small.zyga", "--out", "a.fbx"}).err, HasSubstr("the ending must be"));
  EXPECT_THAT(run({"export", "small.zyga", "--out", "no/a.glb"}).err, HasSubstr("there is no folder"));
  EXPECT_THAT(run({"export", "small.zyga", "--out", "a.obj", "--unit", "ft"}).err,
              HasSubstr("'ft' is not among m, cm, mm"));
  EXPECT_THAT(run({"export", "small.zyga", "--out", "a.obj", "--up", "x"}).err, HasSubstr("'x' is not among z, y"));
  EXPECT_EQ(run({"export", "small.zyga", "--out", "a.fbx"}).exit, 2);
}

TEST_F(MeshVerbs, WatertightIsOneSurfaceOfTheSameSize) {
  smallAnimal();
  ASSERT_EQ(run({"export", "small.zyga", "--out", "bones.glb"}).exit, 0);
  const auto ended = run({"export", "small.zyga", "--out", "one.glb", "--watertight", "--voxel-mm", "15", "--triangles",
                          "40000", "--body-guide", "--fill-joints"});
  ASSERT_EQ(ended.exit, 0) << ended.err;
  EXPECT_THAT(ended.out, HasSubstr("One closed surface: "));
  EXPECT_THAT(ended.out, HasSubstr("voxel 15.0\u00A0mm"));
  EXPECT_THAT(ended.out, HasSubstr("A guide, not anatomy."));
  EXPECT_THAT(ended.out, HasSubstr("Not an engineering document; local codes and licensed practice decide."));
  const auto bones = extentOf("bones.glb", 1, 2), one = extentOf("one.glb", 1, 2);
  EXPECT_EQ(one.meshes, 2U);
  EXPECT_GT(one.forward, bones.forward);  // the guide stands off the bones
  ASSERT_EQ(run({"export", "small.zyga", "--out", "one.stl", "--watertight", "--voxel-mm", "15"}).exit, 0);
  const auto stl = extentOf("one.stl", 2, 0);
  EXPECT_EQ(stl.meshes, 1U);
  EXPECT_NEAR(stl.forward, bones.forward, 0.06);  // the tail's last bones are thinner than a voxel
  EXPECT_NEAR(stl.up, bones.up, 0.02);
  EXPECT_NEAR(stl.lowest, bones.lowest, 0.02);
}

TEST_F(MeshVerbs, WatertightTellsWhatCannotBe) {
  smallAnimal();
  EXPECT_THAT(run({"export", "small.zyga", "--out", "a.glb", "--voxel-mm", "5"}).err, HasSubstr("needs --watertight"));
  const auto fine = run({"export", "small.zyga", "--out", "a.glb", "--watertight", "--voxel-mm", "0.2"});
  EXPECT_EQ(fine.exit, 2);
  EXPECT_THAT(fine.err, HasSubstr("of memory; the smallest that fits in"));
  EXPECT_FALSE(std::filesystem::exists(path("a.glb")));
}

TEST_F(MeshVerbs, PictureIsTheSameBytesEveryTime) {
  smallAnimal();
  ASSERT_EQ(run({"picture", "small.zyga", "--view", "left", "--out", "a.png", "--width", "240"}).exit, 0);
  ASSERT_EQ(run({"picture", "small.zyga", "--view", "left", "--out", "b.png", "--width", "240"}).exit, 0);
  EXPECT_EQ(bytes("a.png"), bytes("b.png"));
  const QImage picture(QString::fromStdString(path("a.png").string()));
  EXPECT_EQ(picture.width(), 240);
  std::set<QRgb> colours;
  for (int x = 0; x < picture.width(); ++x) colours.insert(picture.pixel(x, picture.height() / 2));
  EXPECT_GT(colours.size(), 10U);  // bones, not only the ground behind them
}

TEST_F(MeshVerbs, PictureTellsBadOptions) {
  smallAnimal();
  EXPECT_THAT(run({"picture", "small.zyga", "--out", "a.png"}).err, HasSubstr("--view is missing"));
  EXPECT_THAT(run({"picture", "small.zyga", "--view", "below", "--out", "a.png"}).err, HasSubstr("three-quarter"));
  EXPECT_THAT(run({"picture", "small.zyga", "--view", "left", "--out", "a.jpg"}).err, HasSubstr("must end in .png"));
  EXPECT_THAT(run({"picture", "small.zyga", "--view", "left", "--out", "a.png", "--width", "0"}).err,
              HasSubstr("write pixels from 64 to 16384"));
}

}  // namespace
}  // namespace zyga::app
