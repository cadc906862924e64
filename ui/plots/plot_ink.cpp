#include "ui/plots/plot_ink.h"

#include <QFontDatabase>

namespace zyga::ui {

QPen PlotInk::pen(const QColor& colour, qreal hairlines, Qt::PenStyle style) const {
  return QPen(colour, hairlines * size() / 12, style, Qt::FlatCap, Qt::RoundJoin);
}

QFont PlotInk::small() const {
  QFont smaller = font;
  smaller.setPixelSize(qRound(size() * 0.88));
  return smaller;
}

QFont PlotInk::bold() const {
  QFont heavy = font;
  heavy.setWeight(QFont::DemiBold);
  return heavy;
}

PlotInk printInk(int size) {
  PlotInk ink;
  ink.paper = Qt::white;
  ink.ink = Qt::black;
  ink.muted = QColor(0x55, 0x55, 0x55);
  ink.line = QColor(0xC8, 0xC8, 0xC8);
  ink.accent = Qt::black;
  const QStringList installed = QFontDatabase::families();
  for (const char* family : {"Noto Sans", "Source Sans 3", "Liberation Sans", "DejaVu Sans"}) {
    ink.font.setFamily(QString::fromLatin1(family));
    if (installed.contains(ink.font.family())) break;
  }
  ink.font.setPixelSize(size);
  return ink;
}

}  // namespace zyga::ui
