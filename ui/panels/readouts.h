#pragma once

#include <QLabel>

#include "ui/document/document.h"
#include "ui/words/assumption_words.h"

namespace zyga::ui {

/// Height of the snout's tip over the ground in the present pose, m.
double headHeight(const Document& document);

/// The verdict on the whole pose: its shape and the count.
class VerdictReadout : public QWidget {
  Q_OBJECT
 public:
  explicit VerdictReadout(Document& document, QWidget* parent = nullptr);
  QString text() const { return text_; }
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void refresh(Changes what);

  Document& document_;
  QString text_;
};

/// Neck, trunk, tail and total length along the column, and the head's height.
class LengthsReadout : public QLabel {
  Q_OBJECT
 public:
  explicit LengthsReadout(Document& document, QWidget* parent = nullptr);

 private:
  void refresh(Changes what);

  Document& document_;
};

}  // namespace zyga::ui
