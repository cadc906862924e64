#pragma once

#include "core/kinematics/limb_reach.h"
#include "core/kinematics/shoulder_blade.h"
#include "core/study/stances/stances.h"
#include "ui/document/document.h"
#include "ui/words/ground_words.h"

/// Feet, trunk, shoulder blades and stances: each function makes one undoable step and tells how it went.
namespace zyga::ui {

/// The feet that stand on the ground in the pose on screen.
std::vector<kinematics::Foot> plantedFeet(const Document& document);

/// Off the ground by a hand's breadth or three, the toes hanging.
kinematics::FeetAnswer liftFoot(Document& document, kinematics::Foot foot);
/// Flat on the ground below where they are.
kinematics::FeetAnswer plantFeet(Document& document, const std::vector<kinematics::Foot>& feet);
/// Plants a foot that is off the ground and lifts one that stands on it.
kinematics::FeetAnswer liftOrPlant(Document& document, kinematics::Foot foot);

/// The pose with the trunk moved by `move` (in the world) as far as the planted feet hold.
kinematics::FeetAnswer movedTrunk(const Document& document, const kinematics::Pose& start,
                                  const Eigen::Isometry3d& move);
/// The same as a step; steps in a row with the same `mergeKey` become one.
kinematics::FeetAnswer moveTrunk(Document& document, const Eigen::Isometry3d& move, const QString& text, int mergeKey);
/// A turn of the trunk by `angle` rad about an axis through the middle of the hips.
Eigen::Isometry3d turnAboutHips(const Document& document, const kinematics::Pose& pose, const Eigen::Vector3d& axis_W,
                                double angle);

/// Places these blades; planted forefeet stay where they are.
kinematics::FeetAnswer placeBlades(Document& document, const std::vector<anatomy::Side>& sides,
                                   const kinematics::BladePlace& wanted, int mergeKey);

study::StanceAnswer takeStance(Document& document, study::Stance stance);

/// What does not fit, in words: "left fore foot 32 mm from its place, stopped by elbow.L"; empty when all feet hold.
QString missWords(const Document& document, const std::vector<kinematics::LegFit>& fits);

}  // namespace zyga::ui
