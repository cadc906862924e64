#pragma once

#include <string>
#include <vector>

#include "app/verbs/arguments.h"
#include "app/verbs/posed_bones.h"
#include "core/picture/passes.h"

namespace zyga::app {

/// The passes that `--passes a,b,...` names; throws BadInput listing them.
std::vector<picture::Pass> passesFrom(const std::string& words);

/// Traces the passes and writes each beside `out`: "A.png" becomes "A-shaded.png"... The depth's nearest and farthest
/// and, for the flat colours, a table of the bones' colours are told on standard output and in "A-bones.csv".
/// `horizon`: row of a line to draw in a picture of its own, "A-horizon.png", as a share of the height; none outside
/// [0, 1].
void writePasses(const std::string& out, const files::Project& project, const PosedBones& posed,
                 const picture::Camera& camera, const picture::PictureOptions& options,
                 const std::vector<picture::Pass>& passes, double horizon);

std::string pngBytes(const picture::Image& image);

}  // namespace zyga::app
