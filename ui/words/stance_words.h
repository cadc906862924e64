#pragma once

#include <QString>

#include "core/study/reach/extremes.h"
#include "core/study/stances/compare_poses.h"
#include "core/study/stances/stances.h"

/// Ways of carrying the animal.
namespace zyga::ui {

/// "Standing alert"
QString stanceName(study::Stance stance);
/// One sentence on what it is.
QString stanceMeaning(study::Stance stance);

/// "snout over the ground", "trunk, rising forwards"
QString readingName(study::Reading reading);

/// "Neck, maximum dorsiflexion": a chain with every joint at its limit of one motion.
QString extremeName(study::Chain chain, range::Direction direction);
/// Where head or tail tip is then: "snout at 8.21 m, 1.20 m ahead of the base; sum of joint angles 143.2° (joints:
/// 13)". Says so when part of the chain would be in the ground, or when some of its joints are not assessed.
QString extremeWords(const study::Extreme& extreme);

}  // namespace zyga::ui
