#pragma once

#include <QLabel>

#include "ui/document/document.h"

namespace zyga::ui {

/// "3 beyond, 2 near of 118 joints", "all 118 joints supported"; joints that nothing judges are counted apart.
QString verdictCount(const range::Assessment& assessment);
/// "50 % by length, 4.5 % cartilage": the assumptions in one line.
QString assumptionsInShort(const range::Assumptions& assumptions);
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
