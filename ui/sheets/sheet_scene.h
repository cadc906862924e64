#pragma once

#include <atomic>
#include <functional>
#include <memory>
#include <string>
#include <vector>

#include "core/files/project/sheet.h"
#include "core/files/scan/bone_meshes.h"
#include "core/kinematics/placement.h"
#include "core/range/findings.h"

namespace zyga::ui {

/// What a sheet is drawn from, as values: the document may change meanwhile.
struct SheetScene {
  std::shared_ptr<const anatomy::Specimen> specimen;
  kinematics::Placement X_WB;
  files::BoneMeshes meshes;
  kinematics::Pose pose;
  std::string poseName;
  range::Assumptions assumptions;
  range::Assessment assessment;  ///< of the pose
  std::vector<anatomy::Note> notes;
};

/// How finely a sheet is drawn, and whether it is still wanted.
struct SheetWork {
  double dotsPerInch = 300;                    ///< of shaded pictures
  int samples = 9;                             ///< a pixel of shaded pictures
  double lineSpacing = 0.12;                   ///< mm on paper between samples of drawn lines
  std::function<void(double share)> progress;  ///< 0 to 1; called from worker threads
  const std::atomic<bool>* cancel = nullptr;

  bool cancelled() const { return cancel && cancel->load(); }
};

}  // namespace zyga::ui
