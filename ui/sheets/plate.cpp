#include "ui/sheets/plate.h"

#include <QFontMetricsF>

#include "ui/sheets/plate_font.h"

namespace zyga::ui {

void Plate::line(const QPointF& from, const QPointF& to, const PlateInk& ink) {
  QPainterPath path(from);
  path.lineTo(to);
  shape(path, ink);
}

double widthOf(const QString& words, double size, bool bold) {
  return QFontMetricsF(plateFont(size, bold)).horizontalAdvance(words) / kPlateUnits;
}

QStringList brokenWords(const QString& words, double size, double width) {
  QStringList lines;
  QString line;
  for (const QString& word : words.split(' ', Qt::SkipEmptyParts)) {
    const QString longer = line.isEmpty() ? word : line + ' ' + word;
    if (!line.isEmpty() && widthOf(longer, size) > width) {
      lines += line;
      line = word;
    } else {
      line = longer;
    }
  }
  if (!line.isEmpty()) lines += line;
  return lines;
}

}  // namespace zyga::ui
