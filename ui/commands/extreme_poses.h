#pragma once

#include <QString>

#include "core/study/reach/extremes.h"

namespace zyga::ui {

class Document;

/// "Neck at its dorsal limit".
QString extremeName(study::Chain chain, range::Direction direction);

/// Where head or tail tip is then: "snout at 8.21 m, 1.20 m ahead of the neck's base; 13 joints turn 143.2° together".
/// Says so when part of the chain would be in the ground, or when nothing vouches for some of its joints.
QString extremeWords(const study::Extreme& extreme);

/// Bends neck or tail to its limit in one undoable step and tells where it ends.
study::Extreme takeExtreme(Document& document, study::Chain chain, range::Direction direction);

/// Keeps neck and tail at their dorsal, ventral, left and right limits as named poses, in one undoable step; poses that
/// have these names already are replaced. The present pose stays.
std::vector<study::Extreme> keepExtremes(Document& document);

}  // namespace zyga::ui
