#pragma once

#include <vector>

#include "app/window/picture_dialog.h"
#include "ui/document/document.h"
#include "ui/viewport/camera.h"

namespace zyga::ui {

/// All that a traced picture needs, as values: the document may change while it is traced.
struct PictureScene {
  std::vector<picture::Instance> instances;
  picture::Camera camera;
  picture::PictureOptions options;
};

/// The present pose in the colours of the theme; `onScreen` is used where the choice names no standard view.
PictureScene pictureScene(const Document& document, const Camera& onScreen, const PictureChoice& choice);

}  // namespace zyga::ui
