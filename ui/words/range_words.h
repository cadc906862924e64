#pragma once

#include <QString>

#include "core/range/explain.h"
#include "core/range/scenario.h"
#include "ui/words/limit_words.h"

namespace zyga::ui {

// What the bones say, in words. Numbers carry their units; where a measured value stands beside a limit both have as
// many decimals as it takes to tell them apart.

/// "within range", "near limit", "out of range", "not assessed".
QString levelWords(range::Level level);
/// The same of a joint; "bones collide" where nothing but contact takes it out of its range.
QString stateWords(const range::JointVerdict& verdict);

/// "dorsiflexion 3.2°": an angle (rad) of a joint with the name of its direction.
QString turnWords(const anatomy::Joint& joint, int motion, double angle);
/// "right zygapophyseal overlap 38 % (minimum 50 %)", "flexion 52.0° (limit 40.0°, program default, no source)".
QString findingWords(const anatomy::Specimen& specimen, const range::Assumptions& assumptions,
                     kinematics::JointIndex joint, const range::Finding& finding);
/// "spines of D3 and D4 interpenetrate by 12.0 mm (tolerated 5.0 mm)".
QString contactWords(const anatomy::Specimen& specimen, const range::ContactFinding& contact);
/// What a verdict rests on, worst first: findings, then the motions of the explanation.
QString reasonWords(const anatomy::Specimen& specimen, const range::Assumptions& assumptions,
                    const range::JointVerdict& verdict, const range::Explanation& explanation);
/// "C6-C7 out of range: right zygapophyseal overlap 38 % (minimum 50 %), dorsiflexion 9.4° (limit 7.1°)".
QString verdictSentence(const anatomy::Specimen& specimen, const range::Assumptions& assumptions,
                        const range::JointVerdict& verdict, const range::Explanation& explanation);
/// The same two, searched for: only for what is shown.
QString reasonWords(const range::Scenario& scenario, const range::JointVerdict& verdict);
QString verdictSentence(const range::Scenario& scenario, const range::JointVerdict& verdict);

/// Why nothing can be said about a joint: "no facets and no typed limits".
QString notAssessedWords(const anatomy::Joint& joint, const range::JointVerdict& verdict);

}  // namespace zyga::ui
