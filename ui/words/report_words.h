#pragma once

#include <QString>

#include "core/anatomy/summary.h"
#include "core/range/assumptions.h"
#include "core/study/mass/mass.h"

/// What reports and sheets say alike.
namespace zyga::ui {

/// What somebody typed, or "present pose" for the pose that has no name.
QString poseWord(const std::string& name);
/// "4.56 % of the centrum's length", "12.3 mm"
QString cartilageInFull(const range::Cartilage& cartilage);
/// "18.2 to 27.4 t, middle 22.8 t": an estimate of an animal's mass with its middle; in kg
/// below a tonne.
QString massAndMiddle(const study::MassRange& mass);
/// "12 of 256 bones are preserved: 4.7 %; counting mirrored counterparts 15: 5.9 %": bones present, and as if each bone
/// of one side stood for its counterpart too (the two counts of Lacovara et al. 2014, Sci. Rep. 4:6196).
QString completenessWords(const anatomy::Completeness& known);
/// On everything that is printed.
QString notEngineering();

}  // namespace zyga::ui
