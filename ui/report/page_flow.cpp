#include "ui/report/page_flow.h"

#include <QFontMetricsF>
#include <QPdfWriter>
#include <QTextLayout>
#include <algorithm>
#include <numeric>

namespace zyga::ui {
namespace {

constexpr qreal kPageWidth = 595, kPageHeight = 842;  // A4 in points
constexpr qreal kSide = 57, kTop = 57, kBottom = 62;
constexpr qreal kGutter = 14, kRowGap = 2.5;
constexpr qreal kFigureGap = 6;
constexpr qreal kShortTable = 260;
constexpr std::size_t kRowsKept = 3;

const QColor kInk(26, 26, 26), kMuted(90, 90, 90), kHair(200, 200, 200);

/// Lines of a paragraph in a column; calls `place` for each with its height before it is drawn.
qreal layOut(QTextLayout& layout, qreal width) {
  qreal height = 0;
  layout.beginLayout();
  for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine()) {
    line.setLineWidth(width);
    line.setPosition({0, height});
    height += 1.22 * line.height();
  }
  layout.endLayout();
  return height;
}

void setTextOption(QTextLayout& layout, Qt::Alignment alignment) {
  QTextOption option(alignment);
  option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
  layout.setTextOption(option);
}

}  // namespace

PageFlow::PageFlow(QPdfWriter& writer, const QString& foot) : writer_(writer), painter_(&writer), foot_(foot) {
  const qreal scale = writer.resolution() / 72.0;
  painter_.scale(scale, scale);
  y_ = kTop;
}

PageFlow::~PageFlow() {
  paintFoot();
  painter_.end();
}

qreal PageFlow::left() const { return kSide; }
qreal PageFlow::bottom() const { return kPageHeight - kBottom; }
qreal PageFlow::width() const { return kPageWidth - 2 * kSide; }

QFont PageFlow::fontOf(Style style) const {
  QFont font;
  font.setHintingPreference(QFont::PreferNoHinting);
  switch (style) {
    case Style::Title:
      font.setPixelSize(19);
      font.setWeight(QFont::DemiBold);
      break;
    case Style::Heading:
      font.setPixelSize(12);
      font.setWeight(QFont::DemiBold);
      break;
    case Style::Small:
      font.setPixelSize(8);
      break;
    case Style::Subtitle:
    case Style::Body:
      font.setPixelSize(9);
      break;
  }
  return font;
}

QColor PageFlow::inkOf(Style style) const { return style == Style::Small || style == Style::Subtitle ? kMuted : kInk; }

void PageFlow::paintFoot() {
  painter_.setFont(fontOf(Style::Small));
  painter_.setPen(kMuted);
  const QRectF area(left(), kPageHeight - kBottom + 18, width(), 14);
  painter_.drawText(area, Qt::AlignLeft | Qt::AlignVCenter, foot_);
  painter_.drawText(area, Qt::AlignRight | Qt::AlignVCenter, QString::number(page_));
}

void PageFlow::newPage() {
  paintFoot();
  writer_.newPage();
  ++page_;
  y_ = kTop;
}

void PageFlow::keepTogether(qreal height) {
  if (y_ + height > bottom() && y_ > kTop) newPage();
}

void PageFlow::space(qreal height) {
  if (y_ > kTop) y_ += height;
}

void PageFlow::rule(qreal width) {
  painter_.setPen(QPen(kInk, width));
  painter_.drawLine(QPointF(left(), y_), QPointF(left() + this->width(), y_));
  y_ += width;
}

qreal PageFlow::heightOf(const QString& words, Style style, qreal width) const {
  QTextLayout layout(words, fontOf(style));
  setTextOption(layout, Qt::AlignLeft);
  return layOut(layout, width);
}

void PageFlow::text(const QString& words, Style style, qreal indent) {
  QTextLayout layout(words, fontOf(style));
  setTextOption(layout, Qt::AlignLeft);
  layOut(layout, width() - indent);
  painter_.setPen(inkOf(style));
  for (int i = 0; i < layout.lineCount(); ++i) {
    const QTextLine line = layout.lineAt(i);
    const qreal height = 1.22 * line.height();
    keepTogether(height);
    line.draw(&painter_, QPointF(left() + indent, y_) - line.position());
    y_ += height;
  }
}

void PageFlow::figure(qreal height, const std::function<void(QPainter&, const QRectF&)>& paint) {
  keepTogether(height + kFigureGap);
  painter_.save();
  paint(painter_, QRectF(left(), y_, width(), height));
  painter_.restore();
  y_ += height + kFigureGap;
}

/// Numbers get what they need; words share the rest by the length of what they say.
void PageFlow::shareWidths(std::vector<Column>& columns, const std::vector<QStringList>& rows) const {
  const QFontMetricsF metrics(fontOf(Style::Body));
  std::vector<qreal> natural;
  for (std::size_t c = 0; c < columns.size(); ++c) {
    qreal widest = QFontMetricsF(fontOf(Style::Small)).horizontalAdvance(columns[c].head);
    for (const auto& row : rows)
      if (static_cast<int>(c) < row.size())
        widest = std::max(widest, metrics.horizontalAdvance(row[static_cast<int>(c)]));
    natural.push_back(widest + 1);
  }
  const qreal gutters = kGutter * static_cast<qreal>(columns.size() - 1);
  const qreal all = std::accumulate(natural.begin(), natural.end(), 0.0) + gutters;
  for (std::size_t c = 0; c < columns.size(); ++c) columns[c].width = natural[c];
  if (all <= width()) return;
  // The widest column of words gives way.
  const auto widest = std::max_element(natural.begin(), natural.end()) - natural.begin();
  columns[static_cast<std::size_t>(widest)].width =
      std::max(natural[static_cast<std::size_t>(widest)] - (all - width()), 60.0);
}

qreal PageFlow::rowHeight(const std::vector<Column>& columns, const QStringList& cells, bool head) const {
  qreal height = 0;
  for (std::size_t c = 0; c < columns.size() && static_cast<int>(c) < cells.size(); ++c)
    height =
        std::max(height, heightOf(cells[static_cast<int>(c)], head ? Style::Small : Style::Body, columns[c].width));
  return height + 2 * kRowGap;
}

void PageFlow::row(const std::vector<Column>& columns, const QStringList& cells, bool head) {
  const qreal height = rowHeight(columns, cells, head);
  qreal x = left();
  for (std::size_t c = 0; c < columns.size() && static_cast<int>(c) < cells.size(); ++c) {
    QTextLayout layout(cells[static_cast<int>(c)], fontOf(head ? Style::Small : Style::Body));
    setTextOption(layout, columns[c].words ? Qt::AlignLeft : Qt::AlignRight);
    layOut(layout, columns[c].width);
    painter_.setPen(head ? kMuted : kInk);
    layout.draw(&painter_, QPointF(x, y_ + kRowGap));
    x += columns[c].width + kGutter;
  }
  y_ += height;
  painter_.setPen(QPen(head ? kInk : kHair, head ? 0.7 : 0.4));
  painter_.drawLine(QPointF(left(), y_), QPointF(x - kGutter, y_));
}

/// A short table stays whole; of a long one the first rows stay with its head.
qreal PageFlow::heightToKeep(const std::vector<Column>& columns, const std::vector<QStringList>& rows) const {
  qreal height = 0, firstRows = 0;
  for (std::size_t i = 0; i < rows.size(); ++i) {
    height += rowHeight(columns, rows[i], false);
    if (i < kRowsKept) firstRows = height;
    if (height > kShortTable) return firstRows;
  }
  return height;
}

qreal PageFlow::tableHeight(std::vector<Column> columns, const std::vector<QStringList>& rows) const {
  shareWidths(columns, rows);
  QStringList heads;
  for (const Column& column : columns) heads << column.head;
  return rowHeight(columns, heads, true) + heightToKeep(columns, rows);
}

void PageFlow::table(std::vector<Column> columns, const std::vector<QStringList>& rows) {
  if (columns.empty()) return;
  shareWidths(columns, rows);
  QStringList heads;
  for (const Column& column : columns) heads << column.head;
  const qreal headHeight = rowHeight(columns, heads, true);
  keepTogether(headHeight + heightToKeep(columns, rows));
  row(columns, heads, true);
  for (const QStringList& cells : rows) {
    if (y_ + rowHeight(columns, cells, false) > bottom()) {
      newPage();
      row(columns, heads, true);
    }
    row(columns, cells, false);
  }
}

}  // namespace zyga::ui
