#pragma once

#include <QStringList>

namespace zyga::ui {

/// The invented animals that come with the program, the first one first: beside the executable, in share/, or in the
/// source tree.
QStringList sampleFiles();

}  // namespace zyga::ui
