#pragma once

#include <QDialog>

#include "ui/settings/preferences.h"

class QCheckBox;
class QComboBox;

namespace zyga::ui {

/// Language, size of the text, theme, contrast and hints.
class PreferencesDialog : public QDialog {
  Q_OBJECT
 public:
  PreferencesDialog(const Preferences& now, QWidget* parent = nullptr);

  Preferences chosen() const;

 private:
  QComboBox *language_ = nullptr, *text_ = nullptr, *scheme_ = nullptr;
  QCheckBox *contrast_ = nullptr, *hints_ = nullptr;
};

}  // namespace zyga::ui
