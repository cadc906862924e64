#pragma once

#include <QString>

#include "ui/document/document.h"
#include "ui/strip/shown_bands.h"

namespace zyga::ui {

/// What the two directions of a motion of the column are called at the ends of the strip's axis.
struct MotionEnds {
  QString positive, negative;
};
MotionEnds motionEnds(int motion);
/// "Dorsal / ventral", "Left / right", "Axial rotation".
QString motionTitle(int motion);

/// "C6-C7  dorsiflexion 3.2° (limit 7.1°) · within range", with the worst finding where there is one, or why it is not
/// assessed.
QString jointWords(const Document& document, JointIndex joint, int motion, const range::MotionRange& band);

/// "C2–C13": from the first to the last bone of the joints, snout first.
QString spanName(const Document& document, const StripColumns& columns, std::size_t first, std::size_t last);

/// Why nothing can be said about a joint: "not assessed: no facets and no typed limits".
QString notJudgedWords(const anatomy::Specimen& specimen, JointIndex joint);

}  // namespace zyga::ui
