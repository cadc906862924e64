#pragma once

#include <QObject>
#include <QPointer>
#include <QThread>
#include <memory>
#include <optional>

#include "core/picture/picker.h"
#include "ui/document/document.h"
#include "ui/viewport/camera.h"
#include "ui/viewport/scene.h"

namespace zyga::ui {

/// A bone under the pointer and the place on it.
struct FoundBone {
  BoneIndex bone;
  Eigen::Vector3d p_W = Eigen::Vector3d::Zero();  ///< m
};

/// Finds the bone under the pointer: exactly by its surface, or by its sticks until the surfaces have been made ready,
/// which is done beside the window.
class BoneFinder : public QObject {
  Q_OBJECT
 public:
  explicit BoneFinder(QObject* parent = nullptr);
  ~BoneFinder() override;

  void setSpecimen(const anatomy::Specimen& specimen);
  void setMeshes(const files::BoneMeshes& meshes);
  bool exact() const { return picker_ != nullptr; }

  /// `pixel` in the camera's window. A bone a few pixels beside the pointer counts when none is under it, so that thin
  /// bones are easy to grasp.
  std::optional<FoundBone> find(const Camera& camera, const Eigen::Vector2d& pixel, const kinematics::Placement& X_WB);

 signals:
  void becameExact();

 private:
  struct Build;
  std::optional<FoundBone> onSurface(const Ray& ray) const;
  std::optional<FoundBone> onSticks(const Camera& camera, const Eigen::Vector2d& pixel,
                                    const kinematics::Placement& X_WB) const;
  void adopt(const std::shared_ptr<Build>& build);
  void moveTo(const kinematics::Placement& X_WB);

  std::vector<Sticks> sticks_;
  std::shared_ptr<Build> build_;  // the one under way; a newer one makes it moot
  std::vector<QPointer<QThread>> threads_;
  std::unique_ptr<picture::Picker> picker_;
  std::vector<BoneIndex> bones_;  // by instance of the picker
  kinematics::Placement moved_;   // where the picker's bones are
};

}  // namespace zyga::ui
