#pragma once

#include <QString>

#include "core/range/assumptions.h"

namespace zyga::ui {

/// "facets centred", "facets centred, centrum faces parallel".
QString neutralName(range::NeutralBy by);
/// The definition in full, with where it is published.
QString neutralSources(range::NeutralBy by);

/// What must be said beside every limit, and where it is published.
QString bareBoneCaution();
QString bareBoneSources();

}  // namespace zyga::ui
