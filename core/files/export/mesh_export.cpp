#include "core/files/export/mesh_export.h"

#include <assimp/config.h>

#include <QString>
#include <QUrl>
#include <algorithm>
#include <assimp/Exporter.hpp>

#include "core/files/disk/atomic_file.h"
#include "core/files/export/export_scene.h"
#include "core/files/export/export_touch_up.h"
#include "core/solid/watertight/watertight.h"

namespace zyga::files {
namespace {

struct Format {
  const char* ending;
  const char* exporter;  ///< id in the mesh library
  bool nested;           ///< holds named nodes with transforms
  bool objects;          ///< holds more than one mesh
};

// "glb" in the library is glTF 1; "glb2" is the standard in force. PLY and STL are written binary.
constexpr Format kFormats[] = {{".glb", "glb2", true, true},    {".gltf", "gltf2", true, true},
                               {".dae", "collada", true, true}, {".obj", "obj", false, true},
                               {".stl", "stlb", false, false},  {".ply", "plyb", false, false}};

[[noreturn]] void failToExport(const std::filesystem::path& path, reason::Reason cause) {
  throw FileError({fault::kCannotExport, {pathText(path), reason::inner(std::move(cause))}});
}

const Format& formatOf(const std::filesystem::path& path) {
  const QString ending = QString::fromStdString(path.extension().string()).toLower();
  for (const auto& format : kFormats) {
    if (ending == format.ending) return format;
  }
  failToExport(path, fault::kUnknownMeshEnding);
}

bool isGltf(const Format& format) { return std::string_view(format.ending).starts_with(".gl"); }

ExportFrame frameOf(const Format& format, const ExportOptions& options) {
  return isGltf(format) ? exportFrame(LengthUnit::Metre, UpAxis::Y) : exportFrame(options.unit, options.up);
}

std::unique_ptr<aiScene> sceneFor(const Format& format, const ExportInput& input, bool joined) {
  if (joined || !format.objects) return joinedScene(input);
  return format.nested ? nestedScene(input) : bakedScene(input);
}

/// The name by which files that belong together (glTF and its buffer, OBJ and its materials) know each other. glTF
/// wants an escaped URI there; the OBJ writer cuts an ending off.
std::string blobName(const Format& format, const std::filesystem::path& path) {
  const auto stem = path.stem().string();
  return isGltf(format) ? QUrl::toPercentEncoding(QString::fromStdString(stem)).toStdString() : stem + format.ending;
}

std::string_view bytesOf(const aiExportDataBlob& blob) { return {static_cast<const char*>(blob.data), blob.size}; }

std::string touchedUp(const Format& format, std::string_view bytes, const ExportOptions& options) {
  if (isGltf(format)) return withoutExtensions(bytes);
  if (std::string_view(format.ending) == ".dae") return withColladaHeader(bytes, options.unit, options.up);
  return std::string(bytes);
}

std::string noteOf(const std::vector<NamedSurface>& surfaces) {
  std::string note;
  for (const auto& surface : surfaces) note += (note.empty() ? "" : " ") + surface.note;
  return note;
}

/// Companions first: when the file itself is there, everything it names is there too.
void writeBlobs(const Format& format, const aiExportDataBlob& first, const std::filesystem::path& path,
                const ExportOptions& options, const std::string& note) {
  for (const aiExportDataBlob* blob = first.next; blob; blob = blob->next) {
    auto companion = path;
    companion.replace_extension(std::filesystem::path(blob->name.C_Str()).extension());
    writeWhole(companion, bytesOf(*blob));
  }
  writeWhole(path, withNote(touchedUp(format, bytesOf(first), options), format.ending, note));
}

void writeScene(const Format& format, const ExportInput& input, const std::filesystem::path& path,
                const ExportOptions& options) {
  const auto scene = sceneFor(format, input, options.joined);
  Assimp::Exporter exporter;
  Assimp::ExportProperties properties;
  properties.SetPropertyString(AI_CONFIG_EXPORT_BLOB_NAME, blobName(format, path));
  properties.SetPropertyBool("GLTF2_NODE_IN_TRS", true);
  const aiExportDataBlob* blob = exporter.ExportToBlob(scene.get(), format.exporter, 0, &properties);
  if (!blob) failToExport(path, {fault::kInItsWords, {reason::text(exporter.GetErrorString())}});
  writeBlobs(format, *blob, path, options, noteOf(input.surfaces));
}

bool anyBone(const BoneMeshes& meshes) {
  return std::any_of(meshes.begin(), meshes.end(), [](const auto& mesh) { return mesh != nullptr; });
}

}  // namespace

void checkExport(const std::filesystem::path& path) {
  formatOf(path);
  checkPlace(path);
}

std::filesystem::path companionPath(const std::filesystem::path& path, const std::string& name) {
  return path.parent_path() / (path.stem().string() + "." + name + path.extension().string());
}

bool holdsSingleMesh(const std::filesystem::path& path) { return !formatOf(path).objects; }

void exportMeshes(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB, const BoneMeshes& meshes,
                  const std::filesystem::path& path, const ExportOptions& options,
                  const std::vector<NamedSurface>& surfaces) {
  const Format& format = formatOf(path);
  const bool bones = anyBone(meshes);
  if (!bones && surfaces.empty()) failToExport(path, solid::fault::kNoBoneMeshes);
  const ExportFrame frame = frameOf(format, options);
  if (format.objects) return writeScene(format, {specimen, X_WB, meshes, frame, surfaces}, path, options);
  if (bones) writeScene(format, {specimen, X_WB, meshes, frame, {}}, path, options);
  for (std::size_t i = 0; i < surfaces.size(); ++i) {
    const std::vector<NamedSurface> alone{surfaces[i]};
    const bool first = i == 0 && !bones;
    writeScene(format, {specimen, X_WB, {}, frame, alone}, first ? path : companionPath(path, surfaces[i].name),
               options);
  }
}

}  // namespace zyga::files
