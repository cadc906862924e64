#pragma once

#include <QWidget>

namespace zyga::ui {

/// One line of text that gives way when room is short; the whole of it is in the tool tip.
class ElidedLabel : public QWidget {
  Q_OBJECT
 public:
  explicit ElidedLabel(bool muted, QWidget* parent = nullptr);

  QString text() const { return text_; }
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 public slots:
  void setText(const QString& text);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  QString text_;
  bool muted_;
};

}  // namespace zyga::ui
