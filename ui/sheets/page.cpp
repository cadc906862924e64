#include "ui/sheets/page.h"

#include <QFontDatabase>
#include <QFontMetricsF>
#include <QPainter>

namespace zyga::ui {
namespace {

/// Paints with a painter in page units.
struct MarkPainter {
  QPainter& painter;

  static QPointF scaled(const QPointF& mm) { return mm * kPageUnits; }

  void operator()(const PageShape& mark) const {
    const PageInk& ink = mark.ink;
    QPen pen(Qt::NoPen);
    if (ink.line.isValid()) {
      pen = QPen(ink.line, ink.width * kPageUnits, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
      if (!ink.dash.empty()) {
        QList<qreal> dash;  // a pen counts them in its own width
        for (const double mm : ink.dash) dash += mm / ink.width;
        pen.setDashPattern(dash);
      }
    }
    painter.setPen(pen);
    painter.setBrush(ink.fill.isValid() ? QBrush(ink.fill) : QBrush(Qt::NoBrush));
    painter.drawPath(QTransform::fromScale(kPageUnits, kPageUnits).map(mark.path));
  }

  void operator()(const PageWords& mark) const {
    painter.setFont(pageFont(mark.size, mark.bold));
    painter.setPen(mark.colour);
    const double width = widthOf(mark.words, mark.size, mark.bold);
    const double share = mark.anchor == Qt::AlignRight ? 1 : mark.anchor == Qt::AlignHCenter ? 0.5 : 0;
    painter.drawText(scaled(mark.at - QPointF(share * width, 0)), mark.words);
  }

  void operator()(const PagePicture& mark) const {
    painter.drawImage(QRectF(scaled(mark.area.topLeft()), mark.area.size() * kPageUnits), mark.image);
  }

  void operator()(const PageGroup&) const {}
  void operator()(const PageGroupEnd&) const {}
};

}  // namespace

void Page::line(const QPointF& from, const QPointF& to, const PageInk& ink) {
  QPainterPath path(from);
  path.lineTo(to);
  shape(path, ink);
}

double widthOf(const QString& words, double size, bool bold) {
  return QFontMetricsF(pageFont(size, bold)).horizontalAdvance(words) / kPageUnits;
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

QString pageFamily() {
  static const QString family = QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
  return family;
}

QFont pageFont(double size, bool bold) {
  QFont font(pageFamily());
  font.setPixelSize(static_cast<int>(size * kPageUnits + 0.5));
  font.setBold(bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

void paintPage(QPainter& painter, const Page& page, double unitsPerMm) {
  painter.save();
  painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform |
                         QPainter::LosslessImageRendering);
  painter.scale(unitsPerMm / kPageUnits, unitsPerMm / kPageUnits);
  if (page.paper.isValid()) painter.fillRect(QRectF(QPointF(), page.size * kPageUnits), page.paper);
  for (const PageMark& mark : page.marks) std::visit(MarkPainter{painter}, mark);
  painter.restore();
}

}  // namespace zyga::ui
