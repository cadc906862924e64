#pragma once

#include <QImage>

#include "core/files/scan/bone_meshes.h"
#include "core/range/scenario.h"
#include "core/task/task.h"

namespace zyga::ui {

/// The skeleton as posed, traced from its left side on white paper, `width` pixels wide. Null when cancelled or without
/// meshes.
QImage posePicture(const range::Scenario& scenario, const files::BoneMeshes& meshes, int width,
                   const task::Task& task = {});

}  // namespace zyga::ui
