#pragma once

#include <QWidget>

#include "ui/document/document.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPlainTextEdit;
class QToolButton;

namespace zyga::ui {

/// Notes pinned to bones: the numbered list, and the chosen note's words, what it rests on and its source.
class NotesPanel : public QWidget {
  Q_OBJECT
 public:
  explicit NotesPanel(Document& document, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {280, 320}; }

  /// Puts the keyboard into the words of the chosen note.
  void write();

 signals:
  /// For the panel's folded title.
  void shortChanged(const QString& text);
  void frameBone(zyga::ui::BoneIndex bone);

 private:
  void refresh(Changes what);
  void fillList();
  void fillFields();
  void keep(const QString& text);
  bool eventFilter(QObject* watched, QEvent* event) override;

  Document& document_;
  QListWidget* list_;
  QLabel* empty_;
  QWidget* fields_;
  QPlainTextEdit* words_;
  QComboBox* basis_;
  QLineEdit* source_;
  QToolButton* remove_;
  bool filling_ = false;
};

}  // namespace zyga::ui
