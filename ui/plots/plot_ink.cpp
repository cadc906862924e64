#include "ui/plots/plot_ink.h"

#include <QFontDatabase>
#include <QTransform>
#include <algorithm>
#include <cmath>
#include <vector>

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

QList<QLineF> hatchingIn(const QList<QPolygonF>& polygons, qreal spacing, qreal angle) {
  // Turned so that the hatching runs level.
  QTransform level, back;
  level.rotate(angle);
  back.rotate(-angle);
  QList<QPolygonF> turned;
  QRectF box;
  for (const QPolygonF& polygon : polygons) {
    turned << level.map(polygon);
    box = box.united(turned.back().boundingRect());
  }
  QList<QLineF> lines;
  if (!(spacing > 0)) return lines;
  for (qreal i = std::ceil(box.top() / spacing); i * spacing < box.bottom(); ++i) {
    const qreal y = i * spacing;
    std::vector<qreal> at;
    for (const QPolygonF& polygon : turned) {
      for (qsizetype k = 0; k < polygon.size(); ++k) {
        const QPointF& a = polygon[k];
        const QPointF& b = polygon[(k + 1) % polygon.size()];
        if ((a.y() < y) != (b.y() < y)) at.push_back(a.x() + (y - a.y()) / (b.y() - a.y()) * (b.x() - a.x()));
      }
    }
    std::sort(at.begin(), at.end());
    for (std::size_t k = 0; k + 1 < at.size(); k += 2) lines << back.map(QLineF(at[k], y, at[k + 1], y));
  }
  return lines;
}

}  // namespace zyga::ui
