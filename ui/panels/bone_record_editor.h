#pragma once

#include <QWidget>

#include "ui/document/document.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace zyga::ui {

/// How the chosen bone is known, and where that is written; each edit is an undoable step.
class BoneRecordEditor : public QWidget {
  Q_OBJECT
 public:
  explicit BoneRecordEditor(Document& document, QWidget* parent = nullptr);

 private:
  void refresh();
  void takeEvidence();
  void takeSource();

  Document& document_;
  QComboBox* evidence_;
  QLineEdit* source_;
  QLabel* missing_;
};

}  // namespace zyga::ui
