#pragma once

#include <QByteArray>

namespace zyga::ui {

/// A PDF as Qt writes it without what changes from one run to the next, in place, so that nothing else moves: its dates
/// are put to the first day of 2000, and its identifier is taken from its content.
QByteArray withoutClock(QByteArray pdf);

}  // namespace zyga::ui
