#pragma once

#include <QString>

#include "ui/document/document.h"

namespace zyga::ui {

/// "Dorsiflexion", "Lateral flexion", "Torsion"; in limbs "Flexion", "Abduction", "Rotation".
QString motionTitleOf(const anatomy::Joint& joint, int motion);

/// Which way is positive, where the title does not say it: "left +".
QString positiveWay(const anatomy::Joint& joint, int motion);

/// "cervical vertebra 6 on cervical vertebra 7".
QString bonesOf(const anatomy::Specimen& specimen, JointIndex joint);

/// "−12.3° to +12.3°", or why there is no interval.
QString intervalWords(const range::Band& band);
/// What stops the motion, a line for each end: "+ right facets share 50 %". Typed limits stop nothing but themselves
/// and give no words.
QString stopWords(const anatomy::Joint& joint, const range::Band& band);
/// The same in full, a line for each direction: "dorsiflexion to +12.3°: both facets share 50 %".
QString stopSentences(const anatomy::Joint& joint, int motion, const range::Band& band);

/// Where the limits come from, or why the joint is not judged; empty for joints that their facets judge.
QString groundsWords(const anatomy::Joint& joint, const range::JointVerdict* verdict);
/// The findings without the joint's name: what is wrong, worst first.
QString complaintWords(const range::JointVerdict& verdict);

}  // namespace zyga::ui
