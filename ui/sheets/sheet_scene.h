#pragma once

#include <memory>
#include <string>
#include <vector>

#include "core/anatomy/note.h"
#include "core/files/project/sheet.h"
#include "core/files/scan/bone_meshes.h"
#include "core/range/scenario.h"
#include "core/solid/flesh/guide_thickness.h"
#include "core/task/task.h"

namespace zyga::ui {

/// What a sheet is drawn from, as values: the document may change meanwhile.
struct SheetScene {
  range::Scenario scenario;
  files::BoneMeshes meshes;
  std::string poseName;  ///< as somebody typed it; empty for the present pose
  std::vector<anatomy::Note> notes;
  solid::GuideThickness guide = {};  ///< of the body around the bones, where it is drawn
  std::shared_ptr<const solid::TriangleMesh> body =
      {};  ///< in the world, m; what bodyAround gives; drawSheet makes what is missing
};

/// How finely a sheet is drawn, and whether it is still wanted.
struct SheetWork {
  double dotsPerInch = 300;   ///< of shaded pictures
  int samples = 9;            ///< a pixel of shaded pictures
  double lineSpacing = 0.12;  ///< mm on paper between samples of drawn lines
  task::Task task;
};

}  // namespace zyga::ui
