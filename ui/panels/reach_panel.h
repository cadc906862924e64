#pragma once

#include <QWidget>

#include "ui/document/document.h"
#include "ui/drag/reach_settings.h"

class QCheckBox;
class QLabel;
class QPushButton;
class QRadioButton;

namespace zyga::ui {

/// How drags reach: the style of the bend, whether the ranges hold and the gaze stays, where the bend begins, and which
/// joints are locked.
class ReachPanel : public QWidget {
  Q_OBJECT
 public:
  ReachPanel(Document& document, ReachSettings& settings, QWidget* parent = nullptr);

  /// "past the ranges, 2 locked": for the title of the folded panel.
  QString inShort() const;

 signals:
  void shortChanged(const QString& words);

 private:
  QLayout* createStyles();
  QLayout* createJoints();
  void beginHere();
  void refresh();

  Document& document_;
  ReachSettings& settings_;
  QRadioButton *even_ = nullptr, *base_ = nullptr;
  QCheckBox *past_ = nullptr, *gaze_ = nullptr;
  QLabel *locked_ = nullptr, *begins_ = nullptr;
  QPushButton *lock_ = nullptr, *unlockAll_ = nullptr, *begin_ = nullptr;
};

}  // namespace zyga::ui
