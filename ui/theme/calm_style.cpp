#include "ui/theme/calm_style.h"

#include <QStyleFactory>

#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {
constexpr int kIconSize = 20;
constexpr int kTipDelay = 400;  // ms
}  // namespace

CalmStyle::CalmStyle() : QProxyStyle(QStyleFactory::create(QStringLiteral("Fusion"))) {}

int CalmStyle::pixelMetric(PixelMetric metric, const QStyleOption* option, const QWidget* widget) const {
  switch (metric) {
    case PM_LayoutHorizontalSpacing:
    case PM_LayoutVerticalSpacing:
      return kGap;
    case PM_LayoutLeftMargin:
    case PM_LayoutRightMargin:
    case PM_LayoutTopMargin:
    case PM_LayoutBottomMargin:
      return kWideGap;
    case PM_ToolBarIconSize:
    case PM_ButtonIconSize:
      return kIconSize;
    default:
      return QProxyStyle::pixelMetric(metric, option, widget);
  }
}

int CalmStyle::styleHint(StyleHint hint, const QStyleOption* option, const QWidget* widget,
                         QStyleHintReturn* result) const {
  if (hint == SH_ToolTip_WakeUpDelay) return kTipDelay;
  if (hint == SH_EtchDisabledText || hint == SH_DialogButtonBox_ButtonsHaveIcons) return 0;
  return QProxyStyle::styleHint(hint, option, widget, result);
}

QSize CalmStyle::sizeFromContents(ContentsType type, const QStyleOption* option, const QSize& size,
                                  const QWidget* widget) const {
  QSize result = QProxyStyle::sizeFromContents(type, option, size, widget);
  if (type == CT_ItemViewItem) result.rheight() += kGap;
  return result;
}

}  // namespace zyga::ui
