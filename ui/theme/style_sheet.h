#pragma once

#include <QString>

namespace zyga::ui {

struct Theme;

/// The application's style sheet. Widgets choose a role by the dynamic property `role`:
///   QLabel[role="title"]     title of a panel
///   QLabel[role="muted"]     secondary text, units
///   QFrame[role="hairline"]  the one line between panels (a frame of height or width 1)
///   QWidget[role="panel"]    a surface on the window (needs Qt::WA_StyledBackground)
QString styleSheet(const Theme& theme);

}  // namespace zyga::ui
