#include "core/files/scan/scan_import.h"

#include <assimp/DefaultIOSystem.h>
#include <assimp/config.h>
#include <assimp/postprocess.h>
#include <assimp/scene.h>

#include <algorithm>
#include <assimp/Importer.hpp>
#include <assimp/ProgressHandler.hpp>
#include <limits>

#include "core/files/scan/scan_faults.h"
#include "core/files/scan/scan_wire.h"

namespace zyga::files {
namespace {

/// Lets the library open what lies beside the scan or below, for reading, and nothing else: a file may name any path.
class ScanFolder : public Assimp::DefaultIOSystem {
 public:
  ScanFolder(const std::filesystem::path& scan, std::uint64_t largestFile)
      : folder_(std::filesystem::canonical(scan).parent_path()), largestFile_(largestFile) {}

  bool Exists(const char* file) const override { return allowed(file); }
  Assimp::IOStream* Open(const char* file, const char* mode) override {
    if (!mode || mode[0] != 'r' || !allowed(file)) return nullptr;
    return DefaultIOSystem::Open(file, mode);
  }

 private:
  bool allowed(const char* file) const {
    std::error_code failed;
    const auto path = std::filesystem::canonical(file, failed);
    if (failed || !std::filesystem::is_regular_file(path, failed)) return false;
    const auto size = std::filesystem::file_size(path, failed);
    if (failed || size > largestFile_) return false;
    return std::mismatch(folder_.begin(), folder_.end(), path.begin(), path.end()).first == folder_.end();
  }

  std::filesystem::path folder_;
  std::uint64_t largestFile_;
};

class Progress : public Assimp::ProgressHandler {
 public:
  explicit Progress(const task::Task& task) : task_(task) {}
  bool Update(float share) override {
    if (share >= 0) task_.tell(std::min(1.0, static_cast<double>(share)));
    return true;
  }

 private:
  task::Task task_;
};

struct Placed {
  const aiNode* node;
  aiMatrix4x4 X_WorldNode;
};

/// Puts all meshes of the scene, each as often as nodes name it, into one.
class Gatherer {
 public:
  Gatherer(const aiScene& scene, RawScan& out) : scene_(scene), out_(out) {}

  void gather() {
    std::vector<Placed> waiting{{scene_.mRootNode, scene_.mRootNode->mTransformation}};
    while (!waiting.empty()) {
      const Placed placed = waiting.back();
      waiting.pop_back();
      const std::size_t before = out_.mesh.triangles.size();
      for (unsigned i = 0; i < placed.node->mNumMeshes; ++i)
        add(*scene_.mMeshes[placed.node->mMeshes[i]], placed.X_WorldNode);
      const std::size_t own = out_.mesh.triangles.size() - before;
      if (own > 0) out_.parts.push_back({nameOf(*placed.node), own});
      for (unsigned i = 0; i < placed.node->mNumChildren; ++i) {
        const aiNode* child = placed.node->mChildren[i];
        waiting.push_back({child, placed.X_WorldNode * child->mTransformation});
      }
    }
  }

 private:
  std::string nameOf(const aiNode& node) const {
    const aiString& name = node.mName.length > 0 ? node.mName : scene_.mMeshes[node.mMeshes[0]]->mName;
    return std::string(name.C_Str()).substr(0, kLongestPartName);
  }

  void add(const aiMesh& mesh, const aiMatrix4x4& X) {
    auto& positions = out_.mesh.positions;
    const std::size_t first = positions.size();
    if (first + mesh.mNumVertices > std::numeric_limits<std::uint32_t>::max()) throw FileError(fault::kTooManyVertices);
    positions.reserve(first + mesh.mNumVertices);
    const bool plain = X.IsIdentity();
    for (unsigned i = 0; i < mesh.mNumVertices; ++i) {
      const aiVector3D p = plain ? mesh.mVertices[i] : X * mesh.mVertices[i];
      positions.emplace_back(p.x, p.y, p.z);
    }
    // A mirror image among the nodes turns the triangles' sense.
    const bool mirrored = !plain && X.Determinant() < 0;
    out_.mesh.triangles.reserve(out_.mesh.triangles.size() + mesh.mNumFaces);
    for (unsigned i = 0; i < mesh.mNumFaces; ++i) add(mesh.mFaces[i], mesh.mNumVertices, first, mirrored);
  }

  void add(const aiFace& face, unsigned vertices, std::size_t first, bool mirrored) {
    if (face.mNumIndices < 3) {
      ++out_.pointsAndLines;
      return;
    }
    const unsigned* index = face.mIndices;
    if (index[0] >= vertices || index[1] >= vertices || index[2] >= vertices) {
      ++out_.badFaces;
      return;
    }
    std::array<std::uint32_t, 3> t;
    for (std::size_t i = 0; i < 3; ++i) t[i] = static_cast<std::uint32_t>(first + index[i]);
    if (mirrored) std::swap(t[1], t[2]);
    out_.mesh.triangles.push_back(t);
  }

  const aiScene& scene_;
  RawScan& out_;
};

std::uint64_t faces(const aiScene& scene) {
  std::uint64_t count = 0;
  for (unsigned i = 0; i < scene.mNumMeshes; ++i) count += scene.mMeshes[i]->mNumFaces;
  return count;
}

bool hasPolygons(const aiScene& scene) {
  for (unsigned i = 0; i < scene.mNumMeshes; ++i) {
    const aiMesh& mesh = *scene.mMeshes[i];
    for (unsigned f = 0; f < mesh.mNumFaces; ++f)
      if (mesh.mFaces[f].mNumIndices > 3) return true;
  }
  return false;
}

bool hasBadIndices(const aiScene& scene) {
  for (unsigned i = 0; i < scene.mNumMeshes; ++i) {
    const aiMesh& mesh = *scene.mMeshes[i];
    for (unsigned f = 0; f < mesh.mNumFaces; ++f)
      for (unsigned k = 0; k < mesh.mFaces[f].mNumIndices; ++k)
        if (mesh.mFaces[f].mIndices[k] >= mesh.mNumVertices) return true;
  }
  return false;
}

/// The library's word for a failure in ours, where its own would mislead.
reason::Reason causeOf(const std::string& error) {
  if (error.find("No suitable reader") != std::string::npos) return fault::kNoMeshFormat;
  for (const char* sign : {"vector::", "basic_string::", "bad_alloc", "bad_array"})
    if (error.find(sign) != std::string::npos) return fault::kCountsBeyondMeasure;
  if (error.empty()) return fault::kUnreadable;
  return {fault::kInItsWords, {reason::text(error)}};
}

const aiScene& read(Assimp::Importer& importer, const std::filesystem::path& path) {
  const aiScene* scene = importer.ReadFile(path.string(), 0);
  if (!scene || !scene->mRootNode) throw FileError(causeOf(importer.GetErrorString()));
  return *scene;
}

bool hasTexture(const aiMaterial& material) {
  for (unsigned type = aiTextureType_NONE; type <= AI_TEXTURE_TYPE_MAX; ++type)
    if (material.GetTextureCount(static_cast<aiTextureType>(type)) > 0) return true;
  return false;
}

/// What the file has and a scan does not keep.
void tellLooks(const aiScene& scene, const ScanHead& head, RawScan::Looks& looks) {
  looks.faceColours = head.faceColours;
  looks.vertexColours = head.vertexColours;
  for (unsigned i = 0; i < scene.mNumMeshes; ++i) {
    const aiMesh& mesh = *scene.mMeshes[i];
    looks.vertexColours |= mesh.HasVertexColors(0);
    if (mesh.mMaterialIndex < scene.mNumMaterials) looks.textures |= hasTexture(*scene.mMaterials[mesh.mMaterialIndex]);
  }
}

}  // namespace

RawScan importScan(const std::filesystem::path& path, const ScanHead& head, std::uint64_t largestFile,
                   const task::Task& task) {
  Assimp::Importer importer;
  importer.SetIOHandler(new ScanFolder(path, largestFile));  // the importer owns both handlers
  importer.SetProgressHandler(new Progress(task));
  importer.SetPropertyBool(AI_CONFIG_IMPORT_NO_SKELETON_MESHES, true);
  const aiScene* scene = &read(importer, path);
  RawScan out;
  out.facesDeclared = head.facesDeclared;
  out.facesRead = faces(*scene);
  tellLooks(*scene, head, out.looks);
  if (hasPolygons(*scene) && !hasBadIndices(*scene)) scene = importer.ApplyPostProcessing(aiProcess_Triangulate);
  if (!scene) throw FileError(causeOf(importer.GetErrorString()));
  Gatherer(*scene, out).gather();
  if (out.mesh.triangles.empty()) throw FileError(fault::kNoSurface);
  if (head.gltf) out.unit = 1.0;  // glTF 2.0, 3.4: all linear distances are in metres, +Y is up
  out.yUp = head.gltf;
  return out;
}

}  // namespace zyga::files
