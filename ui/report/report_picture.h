#pragma once

#include <QImage>
#include <atomic>
#include <functional>

#include "core/files/export/mesh_export.h"

namespace zyga::ui {

/// The skeleton as posed, traced from its left side on white paper, `width` pixels wide. Null when cancelled or without
/// meshes.
QImage posePicture(const anatomy::Specimen& specimen, const files::BoneMeshes& meshes,
                   const kinematics::Placement& X_WB, int width, const std::function<void(double share)>& progress = {},
                   const std::atomic<bool>* cancel = nullptr);

}  // namespace zyga::ui
