#pragma once

#include <QString>

#include "ui/document/document.h"

namespace zyga::ui {

/// "Dorsiflexion", "Lateral flexion", "Axial rotation"; in limbs "Flexion", "Abduction", "Rotation".
QString motionTitleOf(const anatomy::Joint& joint, int motion);

/// Which way is positive, where the title does not say it: "left +".
QString positiveWay(const anatomy::Joint& joint, int motion);

/// "cervical vertebra 6 on cervical vertebra 7".
QString bonesOf(const anatomy::Specimen& specimen, JointIndex joint);

/// "−12.3° to +12.3°", or why there is no interval.
QString intervalWords(const range::MotionRange& band);
/// What stops the motion, a line for each end: "+ right zygapophyseal overlap 50 %". Typed limits stop nothing but
/// themselves and give no words.
QString bandStopWords(const anatomy::Specimen& specimen, JointIndex joint, const range::MotionRange& band);
/// The same in full, a line for each direction: "Dorsiflexion to +12.3°: zygapophyseal overlap 50 % on both sides".
QString stopSentences(const anatomy::Specimen& specimen, JointIndex joint, int motion, const range::MotionRange& band);

/// Where the limits come from, or why the joint is not assessed; empty for joints that their facets judge.
QString groundsWords(const anatomy::Joint& joint, const range::JointVerdict* verdict);

}  // namespace zyga::ui
