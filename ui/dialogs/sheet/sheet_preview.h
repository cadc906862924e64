#pragma once

#include <QWidget>
#include <optional>

#include "ui/sheets/page.h"

namespace zyga::ui {

/// A page as it will be printed, as large as the room allows.
class SheetPreview : public QWidget {
  Q_OBJECT
 public:
  explicit SheetPreview(QWidget* parent = nullptr);

  void setPage(Page page);
  /// Says in words why there is no page; empty: there will be one soon.
  void setFault(const QString& fault);
  bool shows() const { return page_.has_value() && fault_.isEmpty(); }
  QSize sizeHint() const override { return {760, 560}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  std::optional<Page> page_;
  QString fault_;
};

}  // namespace zyga::ui
