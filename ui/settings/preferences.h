#pragma once

#include <QString>

#include "ui/theme/theme.h"

namespace zyga::ui {

/// What a person has set for themselves, whatever the project.
struct Preferences {
  QString language;  ///< "en", "zh_CN"; empty: that of the desktop
  Look look;
  bool hints = true;  ///< first steps are shown

  static Preferences read();
  void write() const;
  bool operator==(const Preferences&) const = default;
};

}  // namespace zyga::ui
