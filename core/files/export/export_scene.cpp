#include "core/files/export/export_scene.h"

#include <assimp/material.h>

#include <algorithm>
#include <map>

#include "core/files/export/bone_tone.h"

namespace zyga::files {
namespace {

constexpr float kBoneRoughness = 0.8F;

aiVector3D toAssimp(const Eigen::Vector3d& v) {
  return {static_cast<ai_real>(v.x()), static_cast<ai_real>(v.y()), static_cast<ai_real>(v.z())};
}

aiMatrix4x4 toAssimp(const Eigen::Isometry3d& X) {
  aiMatrix4x4 m;
  for (int row = 0; row < 3; ++row) {
    for (int col = 0; col < 4; ++col) {
      m[static_cast<unsigned>(row)][col] = static_cast<ai_real>(X.matrix()(row, col));
    }
  }
  return m;
}

/// glTF asks for unit normals; a vertex of slivers may have none of its own.
Eigen::Vector3d unitOrUp(const Eigen::Vector3d& v) {
  const double length = v.norm();
  return length > 1e-12 ? Eigen::Vector3d(v / length) : Eigen::Vector3d::UnitZ();
}

const solid::TriangleMesh* finest(const BoneMeshes& meshes, std::size_t bone) {
  if (bone >= meshes.size() || !meshes[bone] || meshes[bone]->levels.empty()) return nullptr;
  const auto& level = meshes[bone]->levels.front();
  return level.empty() ? nullptr : &level;
}

/// The mesh with its vertices taken into another frame (and scaled), normals added where they are missing.
solid::TriangleMesh moved(const solid::TriangleMesh& mesh, const Eigen::Isometry3d& X_FB, double perMetre) {
  solid::TriangleMesh out = mesh;
  if (out.normals.size() != out.positions.size()) solid::computeNormals(out);
  for (auto& p : out.positions) {
    const Eigen::Vector3d p_F = X_FB.linear() * p.cast<double>() * perMetre + X_FB.translation();
    p = p_F.cast<float>();
  }
  for (auto& n : out.normals) n = unitOrUp(X_FB.linear() * n.cast<double>()).cast<float>();
  return out;
}

std::unique_ptr<aiMesh> toAssimp(const solid::TriangleMesh& mesh, const std::string& name, unsigned material) {
  auto out = std::make_unique<aiMesh>();
  out->mName.Set(name);
  out->mMaterialIndex = material;
  out->mPrimitiveTypes = aiPrimitiveType_TRIANGLE;
  out->mNumVertices = static_cast<unsigned>(mesh.positions.size());
  out->mVertices = new aiVector3D[mesh.positions.size()];
  out->mNormals = new aiVector3D[mesh.positions.size()];
  for (std::size_t i = 0; i < mesh.positions.size(); ++i) {
    out->mVertices[i] = toAssimp(mesh.positions[i].cast<double>());
    out->mNormals[i] = toAssimp(mesh.normals[i].cast<double>());
  }
  out->mNumFaces = static_cast<unsigned>(mesh.triangles.size());
  out->mFaces = new aiFace[mesh.triangles.size()];
  for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
    out->mFaces[i].mNumIndices = 3;
    out->mFaces[i].mIndices = new unsigned[3];
    std::copy(mesh.triangles[i].begin(), mesh.triangles[i].end(), out->mFaces[i].mIndices);
  }
  return out;
}

std::unique_ptr<aiMaterial> boneMaterial(const std::string& name, const std::array<float, 3>& srgb) {
  auto material = std::make_unique<aiMaterial>();
  const aiString title(name);
  material->AddProperty(&title, AI_MATKEY_NAME);
  const aiColor3D diffuse(srgb[0], srgb[1], srgb[2]);
  material->AddProperty(&diffuse, 1, AI_MATKEY_COLOR_DIFFUSE);
  const aiColor4D base(linearFromSrgb(srgb[0]), linearFromSrgb(srgb[1]), linearFromSrgb(srgb[2]), 1);
  material->AddProperty(&base, 1, AI_MATKEY_BASE_COLOR);
  const float metallic = 0;
  material->AddProperty(&metallic, 1, AI_MATKEY_METALLIC_FACTOR);
  material->AddProperty(&kBoneRoughness, 1, AI_MATKEY_ROUGHNESS_FACTOR);
  return material;
}

/// Collects meshes and materials and hands them to a scene at the end.
class SceneParts {
 public:
  unsigned addMesh(const solid::TriangleMesh& mesh, const std::string& name, anatomy::Evidence evidence) {
    return addMesh(mesh, name, "bone " + std::string(toText(evidence)), boneTone(evidence));
  }
  unsigned addMesh(const solid::TriangleMesh& mesh, const std::string& name, const std::string& material,
                   const std::array<float, 3>& tone) {
    meshes_.push_back(toAssimp(mesh, name, materialFor(material, tone)));
    return static_cast<unsigned>(meshes_.size() - 1);
  }

  std::unique_ptr<aiScene> finish(std::unique_ptr<aiNode> root) {
    auto scene = std::make_unique<aiScene>();
    scene->mRootNode = root.release();
    // Vertices are shared between faces; without this flag the library takes them for one vertex a corner.
    scene->mFlags = AI_SCENE_FLAGS_NON_VERBOSE_FORMAT;
    scene->mNumMeshes = static_cast<unsigned>(meshes_.size());
    scene->mMeshes = release(meshes_);
    scene->mNumMaterials = static_cast<unsigned>(materials_.size());
    scene->mMaterials = release(materials_);
    return scene;
  }

 private:
  unsigned materialFor(const std::string& name, const std::array<float, 3>& tone) {
    const auto [entry, isNew] = materialByTone_.try_emplace(tone, static_cast<unsigned>(materials_.size()));
    if (isNew) materials_.push_back(boneMaterial(name, tone));
    return entry->second;
  }

  template <class T>
  static T** release(std::vector<std::unique_ptr<T>>& owners) {
    auto** raw = new T*[owners.size()];
    std::transform(owners.begin(), owners.end(), raw, [](auto& owner) { return owner.release(); });
    return raw;
  }

  std::vector<std::unique_ptr<aiMesh>> meshes_;
  std::vector<std::unique_ptr<aiMaterial>> materials_;
  std::map<std::array<float, 3>, unsigned> materialByTone_;
};

std::unique_ptr<aiNode> node(const std::string& name) { return std::make_unique<aiNode>(name); }

void giveMesh(aiNode& node, unsigned mesh) {
  node.mNumMeshes = 1;
  node.mMeshes = new unsigned[1]{mesh};
}

void hang(aiNode& parent, std::unique_ptr<aiNode> child) {
  aiNode* raw = child.release();
  parent.addChildren(1, &raw);
}

std::string rootName(const anatomy::Specimen& specimen) { return specimen.name.empty() ? "animal" : specimen.name; }

/// What is not bone has a tone of its own, sRGB.
constexpr std::array<float, 3> kSurfaceTone{0.74F, 0.72F, 0.68F};

void hangSurfaces(const ExportInput& input, SceneParts& parts, aiNode& root) {
  for (const NamedSurface& surface : input.surfaces) {
    auto child = node(surface.name);
    const auto baked = moved(surface.mesh, input.frame.toFile(Eigen::Isometry3d::Identity()), input.frame.perMetre);
    giveMesh(*child, parts.addMesh(baked, surface.name, "surface", kSurfaceTone));
    hang(root, std::move(child));
  }
}

constexpr std::size_t kNoParent = static_cast<std::size_t>(-1);

/// The proximal bone of each bone.
std::vector<std::size_t> parents(const anatomy::Specimen& specimen) {
  std::vector<std::size_t> parent(specimen.bones.size(), kNoParent);
  for (const auto& joint : specimen.joints) parent[joint.distal.value] = joint.proximal.value;
  return parent;
}

/// Bones that have a mesh or carry one further out. Joints run from the root outwards, so one pass back is enough.
std::vector<bool> neededNodes(const ExportInput& input) {
  std::vector<bool> needed(input.specimen.bones.size());
  for (std::size_t i = 0; i < needed.size(); ++i) needed[i] = finest(input.meshes, i) != nullptr;
  const auto& joints = input.specimen.joints;
  for (auto joint = joints.rbegin(); joint != joints.rend(); ++joint) {
    if (needed[joint->distal.value]) needed[joint->proximal.value] = true;
  }
  return needed;
}

/// All bones as one mesh in the file's frame, with normals.
solid::TriangleMesh joinedMesh(const ExportInput& input) {
  solid::TriangleMesh all;
  for (std::size_t i = 0; i < input.specimen.bones.size(); ++i) {
    const auto* mesh = finest(input.meshes, i);
    if (!mesh) continue;
    const auto baked = moved(*mesh, input.frame.toFile(input.X_WB[i]), input.frame.perMetre);
    const auto first = static_cast<std::uint32_t>(all.positions.size());
    all.positions.insert(all.positions.end(), baked.positions.begin(), baked.positions.end());
    all.normals.insert(all.normals.end(), baked.normals.begin(), baked.normals.end());
    for (const auto& t : baked.triangles) all.triangles.push_back({t[0] + first, t[1] + first, t[2] + first});
  }
  return all;
}

}  // namespace

Eigen::Isometry3d ExportFrame::toFile(const Eigen::Isometry3d& X_WB) const {
  Eigen::Isometry3d X_FB = Eigen::Isometry3d::Identity();
  X_FB.linear() = R_FW * X_WB.linear();
  X_FB.translation() = perMetre * (R_FW * X_WB.translation());
  return X_FB;
}

ExportFrame exportFrame(LengthUnit unit, UpAxis up) {
  ExportFrame frame;
  frame.perMetre = unit == LengthUnit::Metre ? 1 : unit == LengthUnit::Centimetre ? 100 : 1000;
  if (up == UpAxis::Y) frame.R_FW << 0, 1, 0, 0, 0, 1, 1, 0, 0;
  return frame;
}

std::unique_ptr<aiScene> nestedScene(const ExportInput& input) {
  const auto& bones = input.specimen.bones;
  const auto parent = parents(input.specimen);
  const auto needed = neededNodes(input);
  SceneParts parts;
  auto root = node(rootName(input.specimen));
  std::vector<std::unique_ptr<aiNode>> owned(bones.size());
  std::vector<aiNode*> nodes(bones.size(), nullptr);
  for (std::size_t i = 0; i < bones.size(); ++i) {
    if (!needed[i]) continue;
    owned[i] = node(bones[i].id);
    nodes[i] = owned[i].get();
    const Eigen::Isometry3d X_FB = input.frame.toFile(input.X_WB[i]);
    owned[i]->mTransformation =
        toAssimp(parent[i] == kNoParent ? X_FB : input.frame.toFile(input.X_WB[parent[i]]).inverse() * X_FB);
    if (const auto* mesh = finest(input.meshes, i)) {
      const auto scaled = moved(*mesh, Eigen::Isometry3d::Identity(), input.frame.perMetre);
      giveMesh(*owned[i], parts.addMesh(scaled, bones[i].id, bones[i].evidence));
    }
  }
  for (std::size_t i = 0; i < bones.size(); ++i) {
    if (nodes[i]) hang(parent[i] == kNoParent ? *root : *nodes[parent[i]], std::move(owned[i]));
  }
  hangSurfaces(input, parts, *root);
  return parts.finish(std::move(root));
}

std::unique_ptr<aiScene> bakedScene(const ExportInput& input) {
  SceneParts parts;
  auto root = node(rootName(input.specimen));
  for (std::size_t i = 0; i < input.specimen.bones.size(); ++i) {
    const auto* mesh = finest(input.meshes, i);
    if (!mesh) continue;
    const auto& bone = input.specimen.bones[i];
    auto child = node(bone.id);
    const auto baked = moved(*mesh, input.frame.toFile(input.X_WB[i]), input.frame.perMetre);
    giveMesh(*child, parts.addMesh(baked, bone.id, bone.evidence));
    hang(*root, std::move(child));
  }
  hangSurfaces(input, parts, *root);
  return parts.finish(std::move(root));
}

std::unique_ptr<aiScene> joinedScene(const ExportInput& input) {
  SceneParts parts;
  auto root = node(rootName(input.specimen));
  if (auto mesh = joinedMesh(input); !mesh.empty()) {
    auto child = node("skeleton");
    giveMesh(*child, parts.addMesh(mesh, "skeleton", anatomy::Evidence::Found));
    hang(*root, std::move(child));
  }
  hangSurfaces(input, parts, *root);
  return parts.finish(std::move(root));
}

}  // namespace zyga::files
