#pragma once

#include <QColor>

#include "core/anatomy/specimen.h"
#include "core/range/findings.h"

namespace zyga::ui {

/// Of a verdict on a light ground: the palette of Okabe & Ito 2008, "Color Universal Design", safe for colour-blind
/// eyes; grey for what is not assessed. A shape goes with each, so that no meaning hangs on colour alone.
QColor verdictColour(range::Level level);
/// Of bones that collide, from the same palette.
QColor contactColour();

/// Of a bone, by how it is known: the one that pictures and exported materials have (files::boneTone).
QColor boneColour(anatomy::Evidence evidence);

}  // namespace zyga::ui
