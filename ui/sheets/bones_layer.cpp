#include "ui/sheets/bones_layer.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "core/picture/line_drawing.h"

namespace zyga::ui {
namespace {

using Eigen::Vector2d;

/// Shorter lines inside a bone read as dirt, mm on paper.
constexpr double kLeastFold = 1.2;

std::array<float, 3> srgb(const QColor& colour) {
  return {static_cast<float>(colour.redF()), static_cast<float>(colour.greenF()), static_cast<float>(colour.blueF())};
}

std::vector<picture::Instance> instancesOf(const SheetScene& scene, const SheetView& view, const EvidenceKey& key) {
  std::vector<picture::Instance> instances;
  for (const std::size_t bone : view.bones) {
    const auto& owner = scene.meshes[bone];
    // The finest level lives as long as the bone that owns it.
    instances.push_back(
        {{owner, &owner->levels.front()}, view.X_PW * scene.scenario.placement()[bone], srgb(key.shadedColour(bone))});
  }
  return instances;
}

/// Looks at the view's plane around (x, y) of it.
picture::Camera cameraAt(const SheetView& view, const Vector2d& middle) {
  picture::Camera camera;
  camera.X_WCamera.linear() = view.R_WView;
  camera.X_WCamera.translation() = view.R_WView * Eigen::Vector3d(middle.x(), middle.y(), 0);
  return camera;
}

bool drawShaded(Page& page, const SheetScene& scene, const files::Sheet& sheet, const PlacedView& placed,
                const EvidenceKey& key, const SheetWork& work) {
  constexpr double kRoom = 2, kShadowRoom = 18;  // mm around the bones, and below them for soft shadow
  const SheetView& view = placed.view;
  const QRectF wanted = placed.area().adjusted(-kRoom, -kRoom, kRoom, sheet.ground ? kShadowRoom : kRoom);
  const double dots = work.dotsPerInch / 25.4;  // a mm
  picture::PictureOptions options;
  options.width = std::max(1, static_cast<int>(std::ceil(wanted.width() * dots)));
  options.height = std::max(1, static_cast<int>(std::ceil(wanted.height() * dots)));
  // Whole pixels, so that a metre stays as long across as it is high.
  const QRectF area(wanted.topLeft(), QSizeF(options.width / dots, options.height / dots));
  const QPointF away = (area.center() - placed.origin) / placed.perMetre;
  picture::Camera camera = cameraAt(view, {away.x(), -away.y()});
  std::vector<picture::Instance> instances = instancesOf(scene, view, key);
  if (view.side == picture::StandardView::Ventral) {
    // Light comes from above; what is figured from below is turned over to lie in it.
    const Eigen::Isometry3d over(Eigen::AngleAxisd(std::numbers::pi, Eigen::Vector3d::UnitX()));
    for (picture::Instance& instance : instances) instance.X_WB = over * instance.X_WB;
    camera.X_WCamera = over * camera.X_WCamera;
  }
  camera.viewHeight = area.height() / placed.perMetre;
  options.transparentGround = true;
  options.ground =
      sheet.ground && sheet.layout != files::SheetLayout::Plate && view.side != picture::StandardView::Dorsal;
  options.outlineWidth = std::max(1.0, 0.16 * dots);
  options.samplesPerPixel = work.samples;
  options.occlusionRays = work.samples < 4 ? 4 : 12;
  options.shadowRays = work.samples < 4 ? 1 : 4;
  options.task = work.task;
  const picture::Image image = picture::trace(instances, camera, options);
  if (image.width == 0) return false;
  const QImage seen(image.rgba.data(), image.width, image.height, image.width * 4, QImage::Format_RGBA8888);
  page.picture(area, seen.copy());
  return true;
}

QPainterPath pathOf(const picture::PlaneLine& line, const PlacedView& placed, bool closed) {
  QPainterPath path(placed.at(line.front()));
  for (std::size_t i = 1; i < line.size(); ++i) path.lineTo(placed.at(line[i]));
  if (closed) path.closeSubpath();
  return path;
}

bool drawOutlines(Page& page, const SheetScene& scene, const files::Sheet& sheet, const PlacedView& placed,
                  const EvidenceKey& key, const SheetStyle& style, const SheetWork& work) {
  const bool solid = sheet.bones == files::SheetBones::Silhouette, inBody = sheet.bones == files::SheetBones::InBody;
  picture::DrawingOptions options;
  options.spacing = work.lineSpacing / placed.perMetre;
  options.asOne = solid;
  options.folds = !solid;
  options.task = work.task;
  const auto drawn = picture::drawLines(instancesOf(scene, placed.view, key), cameraAt(placed.view, {0, 0}), options);
  if (work.task.cancelled()) return false;
  for (const picture::BoneLines& bone : drawn) {
    const std::size_t index = placed.view.bones[bone.instance];
    page.begin(solid ? QStringLiteral("silhouette")
                     : QString::fromStdString(scene.scenario.specimen().bones[index].id));
    QPainterPath edges;
    for (const auto& line : bone.edges) edges.addPath(pathOf(line, placed, true));
    page.shape(edges,
               solid ? style.filled(style.ink)
                     : PageInk{inBody ? key.inBodyColour(index) : key.outlineColour(index), style.ink, style.edge, {}});
    for (const auto& line : bone.folds) {
      const QPainterPath path = pathOf(line, placed, false);
      if (path.length() > kLeastFold) page.shape(path, style.stroke(style.ink, style.fold));
    }
    page.end();
  }
  return true;
}

}  // namespace

bool drawBones(Page& page, const SheetScene& scene, const files::Sheet& sheet, const PlacedView& placed,
               const EvidenceKey& key, const SheetStyle& style, const SheetWork& work) {
  if (sheet.bones == files::SheetBones::Shaded) return drawShaded(page, scene, sheet, placed, key, work);
  return drawOutlines(page, scene, sheet, placed, key, style, work);
}

bool drawBody(Page& page, const std::shared_ptr<const solid::TriangleMesh>& body, const PlacedView& placed,
              const SheetStyle& style, const SheetWork& work) {
  picture::DrawingOptions options;
  options.spacing = 3 * work.lineSpacing / placed.perMetre;
  options.asOne = true;
  options.folds = false;
  options.task = work.task;
  const auto drawn = picture::drawLines({{body, placed.view.X_PW, {}}}, cameraAt(placed.view, {0, 0}), options);
  if (work.task.cancelled()) return false;
  page.begin("body");
  for (const picture::BoneLines& shape : drawn) {
    QPainterPath edges;
    for (const auto& line : shape.edges) edges.addPath(pathOf(line, placed, true));
    page.shape(edges, style.filled(style.ink));
  }
  page.end();
  return true;
}

}  // namespace zyga::ui
