#include <gtest/gtest.h>
#include <sys/wait.h>

#include <QTemporaryDir>
#include <array>
#include <cstdio>
#include <memory>
#include <string>

#include "tests/core/files/example_skeleton.h"
#include "tests/core/solid/mesh_library.h"

namespace zyga::files {
namespace {

struct Outcome {
  int exit = -1;
  std::string output;
};

Outcome run(const std::string& command) {
  Outcome outcome;
  FILE* pipe = popen((command + " 2>&1").c_str(), "r");
  if (!pipe) return outcome;
  std::array<char, 512> part{};
  while (const auto n = std::fread(part.data(), 1, part.size(), pipe)) outcome.output.append(part.data(), n);
  outcome.exit = WEXITSTATUS(pclose(pipe));
  return outcome;
}

// The glTF validator of the Khronos Group, which keeps the standard: no errors, warnings or infos.
TEST(GltfValidator, FindsNothingToSayAboutOurFiles) {
  const std::string source = ZYGAPOSE_SOURCE_DIR, validator = ZYGAPOSE_VALIDATOR_FOLDER;
  const auto fetched = run("bash '" + source + "/tests/support/fetch_gltf_validator.sh' '" + validator + "'");
  if (fetched.exit == 3) GTEST_SKIP() << fetched.output;
  ASSERT_EQ(fetched.exit, 0) << "cannot fetch gltf-validator: " << fetched.output;

  const example::Skeleton beast;
  QTemporaryDir folder;
  std::string files;
  for (const auto* name : {"beast.glb", "a beast.gltf", "joined.glb"}) {
    const auto path = folder.path().toStdString() + "/" + name;
    ExportOptions options;
    options.joined = std::string(name) == "joined.glb";
    exportMeshes(beast.specimen, beast.X_WB, beast.meshes, path, options);
    files += " '" + path + "'";
  }
  const auto surface = folder.path().toStdString() + "/surface.glb";
  const std::vector<NamedSurface> surfaces{{"skeleton_watertight", "One closed surface.", solid::sphereMesh(1, 10)},
                                           {"body_guide_not_anatomy", "Not anatomy.", solid::sphereMesh(2, 10)}};
  exportMeshes(beast.specimen, beast.X_WB, {}, surface, {}, surfaces);
  files += " '" + surface + "'";
  const auto report = run("node '" + source + "/tests/core/files/validate_gltf.mjs' '" + validator + "'" + files);
  EXPECT_EQ(report.exit, 0) << report.output;
}

}  // namespace
}  // namespace zyga::files
