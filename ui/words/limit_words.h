#pragma once

#include <QString>
#include <string>

#include "core/range/limits.h"

namespace zyga::ui {

// What motions are called, what ends their ranges, what bones touch, and how joints articulate, in words.

/// "dorsiflexion", "left lateral flexion", "axial rotation (left side up)"; limbs: "flexion", "abduction".
QString motionWords(range::Motion motion);
/// "dorsal", "left", "left side up": a column of a table.
QString directionWords(range::Direction direction);

/// Where a typed limit comes from: what a person has typed, or "program default, no source".
QString limitSourceWords(const std::string& source);

/// "spines of C6 and C7", "rib of C5 and centrum of C6", "rib.D4.L and scapula.L".
QString partsWords(const anatomy::Specimen& specimen, const range::TouchingParts& parts);

/// What ends a range: "left zygapophyseal overlap 50 %", "zygapophyseal overlap 50 % on both sides",
/// "limit 40.0° (program default, no source)", "bones collide: spines of C6 and C7, 5.0 mm".
QString stopWords(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const range::Stop& stop);
/// The same, and where only a program's tolerance ends the range that: "... (program default, no source)".
QString sourcedStopWords(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const range::Stop& stop);
/// How a stop of facets is told of, where the words have to fit both directions of a motion.
enum class StopSide { Own, Unsaid, Same, Other };
/// The same with another side: "zygapophyseal overlap 50 %", "... on that side", "... on the other side".
QString stopWords(const anatomy::Specimen& specimen, kinematics::JointIndex joint, const range::Stop& stop,
                  StopSide side);
/// "C12-C13 dorsiflexion 7.1°: zygapophyseal overlap 50 % on both sides".
QString stopWords(const anatomy::Specimen& specimen, const range::JointStop& stop);

/// What goes along with the end of a lateral motion: "with axial rotation (left side up) 3.2°"; empty where it would
/// read zero.
QString alongWords(const anatomy::Joint& joint, double axial);

/// "C6-C7: poor articulation, facet centres 9.0 mm apart", "C6-C7 cannot be articulated: C6 has no left
/// postzygapophyseal facet"; empty where the bones articulate well.
QString articulationWords(const anatomy::Specimen& specimen, kinematics::JointIndex joint,
                          const range::ArticulationNote& note);

}  // namespace zyga::ui
