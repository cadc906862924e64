#pragma once

#include <QPointF>
#include <QRectF>

#include "core/picture/picture.h"
#include "ui/sheets/page.h"
#include "ui/sheets/sheet_scene.h"

namespace zyga::ui {

/// Some bones seen from one side without perspective, in metres on the plane of the picture: x to the right, y up. A
/// point's place there is that of the world along the view's two axes, so views of one animal are in line.
struct SheetView {
  picture::StandardView side = picture::StandardView::Left;
  Eigen::Matrix3d R_WView = Eigen::Matrix3d::Identity();   ///< columns right, up, towards the viewer
  Eigen::Isometry3d X_PW = Eigen::Isometry3d::Identity();  ///< of a plate: the world in the axes of its first bone
  std::vector<std::size_t> bones;                          ///< those with a mesh
  Eigen::AlignedBox2d box;                                 ///< of their meshes

  Eigen::Vector2d onPlane(const Eigen::Vector3d& p_W) const { return (R_WView.transpose() * (X_PW * p_W)).head<2>(); }
};

SheetView viewOf(const SheetScene& scene, picture::StandardView side, const std::vector<std::size_t>& bones,
                 const Eigen::Isometry3d& X_PW = Eigen::Isometry3d::Identity());
/// Bones that have a mesh.
std::vector<std::size_t> allBones(const SheetScene& scene);
/// Skull, jaw, neck with its ribs, and the first two dorsals.
std::vector<std::size_t> neckBones(const SheetScene& scene);

/// Those of a plate that can be drawn.
std::vector<std::size_t> plateBones(const SheetScene& scene, const std::string& list);

/// A view on the page.
struct PlacedView {
  SheetView view;
  double perMetre = 20;  ///< mm of paper to a metre
  QPointF origin;        ///< where (0, 0) of the view's plane lies, mm

  QPointF at(const Eigen::Vector2d& p) const { return origin + QPointF(perMetre * p.x(), -perMetre * p.y()); }
  QPointF at(const Eigen::Vector3d& p_W) const { return at(view.onPlane(p_W)); }
  QRectF area() const {
    return QRectF(at(Eigen::Vector2d(view.box.min().x(), view.box.max().y())),
                  at(Eigen::Vector2d(view.box.max().x(), view.box.min().y())));
  }
};

/// The least of the round scales, N of 1:N, that is no less than `least`: 1, 1.25, 1.5, 2, 2.5, 3, 4, 5, 6, 7.5 and 8
/// times powers of ten, among them the scales that ISO 5455 recommends.
double roundScale(double least);
/// "1:50", "1:7.5"
QString scaleWords(double scale);

/// Measures and inks of a sheet, which grow a little with the paper: one size for text and one for titles, mm.
struct SheetStyle {
  explicit SheetStyle(files::SheetPaper paper);

  double text, title, margin;
  double hairline, line, edge, fold;  ///< widths: dividers and leaders, drawn lines, bones' edges, lines inside them
  QColor ink{0x22, 0x20, 0x1C}, muted{0x6B, 0x65, 0x5B}, pale{0xB9, 0xB2, 0xA5}, paper{0xFF, 0xFF, 0xFF};
  QColor person{0xC9, 0xC4, 0xBA};

  double leading() const { return 1.42 * text; }
  PageInk stroke(const QColor& colour, double width) const { return {QColor(), colour, width, {}}; }
  PageInk filled(const QColor& colour) const { return {colour, QColor(), 0, {}}; }
};

}  // namespace zyga::ui
