#include "core/files/export/sculpting_base.h"

#include "core/solid/flesh/body_guide.h"

namespace zyga::files {
namespace {

constexpr std::size_t kGuideShare = 4;
constexpr double kSkeletonDone = 0.75;  ///< share of the work, where both surfaces are made

class Maker {
 public:
  Maker(const solid::PosedSkeleton& skeleton, const SculptingBase& wanted, const solid::GuideThickness& thickness,
        const task::Task& task)
      : skeleton_(skeleton), wanted_(wanted), thickness_(thickness), task_(task) {}

  SculptedSurfaces run() {
    if (wanted_.watertight) addWatertight(task_.part(0, wanted_.bodyGuide ? kSkeletonDone : 1));
    if (wanted_.bodyGuide && !task_.cancelled()) addGuide(task_.part(wanted_.watertight ? kSkeletonDone : 0, 1));
    return task_.cancelled() ? SculptedSurfaces() : std::move(out_);
  }

 private:
  void addWatertight(const task::Task& task) {
    solid::WatertightOptions options;
    options.voxel = wanted_.voxel;
    options.triangles = wanted_.triangles;
    options.fillJoints = wanted_.fillJoints;
    options.task = task;
    solid::Watertight made = solid::watertight(skeleton_, options);
    if (task.cancelled()) return;
    out_.skeletonTriangles = made.mesh.triangles.size();
    out_.surfaces.push_back({std::string(kWatertightName), "", std::exchange(made.mesh, {})});
    out_.skeleton = std::move(made);
  }

  void addGuide(const task::Task& task) {
    solid::BodyGuideOptions options;
    options.thickness = thickness_;
    options.triangles = wanted_.triangles / kGuideShare;
    options.task = task;
    solid::TriangleMesh mesh = solid::bodyGuide(skeleton_, options);
    if (task.cancelled()) return;
    out_.guide = {mesh.triangles.size(), solid::volume(mesh)};
    out_.surfaces.push_back({std::string(solid::kGuideName), "", std::move(mesh)});
  }

  const solid::PosedSkeleton& skeleton_;
  const SculptingBase& wanted_;
  const solid::GuideThickness& thickness_;
  const task::Task& task_;
  SculptedSurfaces out_;
};

}  // namespace

SculptedSurfaces sculptingBase(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB,
                               const BoneMeshes& meshes, const SculptingBase& wanted,
                               const solid::GuideThickness& thickness, const task::Task& task) {
  const solid::PosedSkeleton skeleton{specimen, meshes, X_WB};
  return Maker(skeleton, wanted, thickness, task).run();
}

}  // namespace zyga::files
