#include "ui/report/report_picture.h"

#include <algorithm>
#include <cmath>

#include "core/files/export/bone_tone.h"
#include "core/picture/picture.h"

namespace zyga::ui {

QImage posePicture(const range::Scenario& scenario, const files::BoneMeshes& meshes, int width,
                   const task::Task& task) {
  const anatomy::Specimen& specimen = scenario.specimen();
  const kinematics::Placement& X_WB = scenario.placement();
  std::vector<picture::Instance> instances;
  Eigen::AlignedBox3d box;
  for (std::size_t i = 0; i < meshes.size(); ++i) {
    if (!meshes[i] || meshes[i]->levels.empty()) continue;
    // The finest level lives as long as the bone that owns it.
    const std::shared_ptr<const solid::TriangleMesh> finest(meshes[i], &meshes[i]->levels.front());
    instances.push_back({finest, X_WB[i], files::boneTone(specimen.bones[i].evidence)});
    for (const Eigen::Vector3f& p : finest->positions) box.extend(X_WB[i] * p.cast<double>());
  }
  if (instances.empty()) return {};
  const double aspect = std::clamp(box.sizes().x() / box.sizes().z(), 0.8, 3.2);
  picture::PictureOptions options;
  options.width = width;
  options.height = static_cast<int>(std::lround(width / aspect));
  options.top = options.bottom = {1, 1, 1};
  options.task = task;
  const picture::Image traced =
      picture::trace(instances, picture::frame(picture::StandardView::Left, box, aspect), options);
  if (traced.width == 0) return {};
  return QImage(traced.rgba.data(), traced.width, traced.height, traced.width * 4, QImage::Format_RGBA8888)
      .convertToFormat(QImage::Format_RGB888);
}

}  // namespace zyga::ui
