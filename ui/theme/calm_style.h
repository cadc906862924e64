#pragma once

#include <QProxyStyle>

namespace zyga::ui {

/// Sizes and habits that a style sheet cannot set: layouts on the 4 px grid, 20 px icons, airy rows in lists.
class CalmStyle : public QProxyStyle {
 public:
  CalmStyle();
  int pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const override;
  int styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                QStyleHintReturn* result) const override;
  QSize sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                         const QWidget* widget) const override;
};

}  // namespace zyga::ui
