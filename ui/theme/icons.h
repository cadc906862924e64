#pragma once

#include <QIcon>
#include <QString>

namespace zyga::ui {

/// An icon of resources/icons by its file name without ending. It is drawn in the colours of the theme in use at the
/// moment of painting, so nothing needs to be done when the theme changes. An unknown name gives a null icon.
QIcon icon(const QString& name);

}  // namespace zyga::ui
