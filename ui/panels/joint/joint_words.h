#pragma once

#include <QString>

#include "ui/document/document.h"

namespace zyga::ui {

/// "Dorsiflexion", "Lateral flexion", "Torsion"; in limbs "Flexion", "Abduction", "Rotation": what a positive angle is,
/// or the plane of both ways.
QString motionTitleOf(const anatomy::Joint& joint, int motion);

/// "cervical vertebra 6 on cervical vertebra 7".
QString bonesOf(const anatomy::Specimen& specimen, JointIndex joint);

/// "−12.3° to +12.3°", or why there is no interval.
QString intervalWords(const range::Band& band);
/// "ventriflexion until both facets share 50 %", one line for each end.
QString stopWords(const anatomy::Joint& joint, int motion, const range::Band& band);

/// Where the limits come from, or why the joint is not judged; empty for joints that their facets judge.
QString groundsWords(const anatomy::Joint& joint, const range::JointVerdict* verdict);
/// The findings without the joint's name: what is wrong, worst first.
QString complaintWords(const range::JointVerdict& verdict);

}  // namespace zyga::ui
