#include "core/files/export/sculpting_base.h"

#include "core/files/json/numeral.h"
#include "core/files/project/project_body_guide.h"
#include "core/solid/flesh/body_guide.h"

namespace zyga::files {
namespace {

constexpr std::size_t kGuideShare = 4;

/// "299,998".
std::string grouped(std::size_t count) {
  std::string digits = std::to_string(count);
  for (auto at = static_cast<std::ptrdiff_t>(digits.size()) - 3; at > 0; at -= 3)
    digits.insert(static_cast<std::size_t>(at), ",");
  return digits;
}

std::string rounded(double value, int decimals) {
  char text[48];
  std::snprintf(text, sizeof text, "%.*f", decimals, value);
  return text;
}

template <class Index>
std::string ids(const std::vector<Index>& indices, const anatomy::Specimen& specimen) {
  std::string out;
  for (const Index i : indices) out += (out.empty() ? "" : ", ") + specimen[i].id;
  return out;
}

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
  return grouped(count) + " " + (count == 1 ? one : many);
}

void tell(const solid::Watertight& made, const anatomy::Specimen& specimen, std::vector<std::string>& told) {
  told.push_back("One closed surface: " + counted(made.mesh.triangles.size(), "triangle", "triangles") + ", " +
                 counted(made.pieces, "piece", "separate pieces") + ", " + rounded(made.volume, 3) + " m3, voxel " +
                 rounded(made.voxel * 1000, 1) + " mm.");
  if (made.hollows > 0) told.push_back(counted(made.hollows, "closed hollow was", "closed hollows were") + " filled.");
  if (made.specks > 0) told.push_back(counted(made.specks, "speck", "specks") + " smaller than eight voxels left out.");
  if (made.holesClosed > 0)
    told.push_back("Holes in " + counted(made.holesClosed, "bone", "bones") + " were closed over.");
  if (!made.leftOut.empty())
    told.push_back("Left out because their surfaces enclose nothing: " + ids(made.leftOut, specimen) + ".");
  if (!made.unfilled.empty())
    told.push_back("Joints left open because the bones stand too far apart: " + ids(made.unfilled, specimen) + ".");
}

class Maker {
 public:
  Maker(const solid::PosedSkeleton& skeleton, const SculptingBase& wanted, const solid::GuideThickness& thickness,
        const std::function<void(double)>& progress, const std::atomic<bool>* cancel)
      : skeleton_(skeleton), wanted_(wanted), thickness_(thickness), progress_(progress), cancel_(cancel) {}

  SculptedSurfaces run() {
    if (wanted_.watertight) addWatertight();
    if (wanted_.bodyGuide && !cancelled()) addGuide();
    return cancelled() ? SculptedSurfaces() : std::move(out_);
  }

 private:
  bool cancelled() const { return cancel_ && *cancel_; }

  std::function<void(double)> shareFrom(double from, double to) const {
    return [this, from, to](double share) {
      if (progress_) progress_(from + (to - from) * share);
    };
  }

  void addWatertight() {
    solid::WatertightOptions options;
    options.voxel = wanted_.voxel;
    options.triangles = wanted_.triangles;
    options.fillJoints = wanted_.fillJoints;
    options.progress = shareFrom(0, wanted_.bodyGuide ? 0.75 : 1);
    options.cancel = cancel_;
    solid::Watertight made = solid::watertight(skeleton_, options);
    if (cancelled()) return;
    tell(made, skeleton_.specimen, out_.told);
    out_.surfaces.push_back({"skeleton_watertight",
                             "Posed skeleton of " + skeleton_.specimen.name + " as one closed surface, voxel " +
                                 rounded(made.voxel * 1000, 1) + " mm. " + std::string(kFabricationCaution),
                             std::move(made.mesh)});
  }

  void addGuide() {
    solid::BodyGuideOptions options;
    options.thickness = thickness_;
    options.triangles = wanted_.triangles / kGuideShare;
    options.progress = shareFrom(wanted_.watertight ? 0.75 : 0, 1);
    options.cancel = cancel_;
    solid::TriangleMesh mesh = solid::bodyGuide(skeleton_, options);
    if (cancelled()) return;
    out_.told.push_back("Body guide: " + counted(mesh.triangles.size(), "triangle", "triangles") + ", " +
                        rounded(solid::volume(mesh), 2) + " m3. A guide, not anatomy.");
    out_.surfaces.push_back(
        {std::string(solid::kGuideName),
         "Body guide: an envelope of chosen thickness, not anatomy. " + thicknessInWords(thickness_) + ".",
         std::move(mesh)});
  }

  const solid::PosedSkeleton& skeleton_;
  const SculptingBase& wanted_;
  const solid::GuideThickness& thickness_;
  const std::function<void(double)>& progress_;
  const std::atomic<bool>* cancel_;
  SculptedSurfaces out_;
};

}  // namespace

std::string thicknessInWords(const solid::GuideThickness& thickness) {
  std::string out;
  for (const auto& part : kGuideParts)
    out += (out.empty() ? "" : ", ") + std::string(part.words) + " " + rounded(thickness.*part.field * 1000, 0);
  return out + " mm; tail " + toNumeral(thickness.tailWidth) + " x bone width, " + toNumeral(thickness.tailHeight) +
         " x bone height";
}

SculptedSurfaces sculptingBase(const anatomy::Specimen& specimen, const kinematics::Placement& X_WB,
                               const BoneMeshes& meshes, const SculptingBase& wanted,
                               const solid::GuideThickness& thickness,
                               const std::function<void(double share)>& progress, const std::atomic<bool>* cancel) {
  const solid::PosedSkeleton skeleton{specimen, meshes, X_WB};
  return Maker(skeleton, wanted, thickness, progress, cancel).run();
}

}  // namespace zyga::files
