#pragma once

#include <QDialog>

#include "core/files/export/sculpting_base.h"

class QCheckBox;
class QComboBox;
class QFormLayout;
class QLabel;
class QRadioButton;
class QSpinBox;

namespace zyga::ui {

class GuideFields;
class UnitSpinBox;

/// What is there to be exported.
struct ExportFacts {
  Eigen::Vector3d size = Eigen::Vector3d::Zero();  ///< of the skeleton as posed, m
  std::size_t bones = 0, triangles = 0;            ///< with meshes; in them
  double naturalVoxel = 0, smallestVoxel = 0;      ///< m
  solid::GuideThickness guide;
};

/// How the posed skeleton is to be written as meshes: bones, or one closed surface to sculpt on, with or without an
/// envelope. Size and triangles are told before anything is written.
class ExportDialog : public QDialog {
  Q_OBJECT
 public:
  explicit ExportDialog(const ExportFacts& facts, QWidget* parent = nullptr);

  /// "glb", "obj"...
  QString ending() const;
  files::ExportOptions options() const;
  files::SculptingBase base() const;
  solid::GuideThickness guide() const;

 private:
  QWidget* fileSide();
  QWidget* guideSide();
  void addSurfaceRows(QFormLayout& form);
  void fitToFormat();
  void fitToChoice();
  void tellSize();

  const ExportFacts facts_;
  QComboBox *format_, *unit_, *up_;
  QRadioButton *single_, *joined_, *watertight_;
  UnitSpinBox* voxel_;
  QSpinBox* triangles_;
  QCheckBox *fillJoints_, *bodyGuide_;
  GuideFields* guide_;
  QLabel *note_, *size_;
};

}  // namespace zyga::ui
