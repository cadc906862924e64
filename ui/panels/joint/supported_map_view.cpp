#include "ui/panels/joint/supported_map_view.h"

#include <QFontMetricsF>
#include <QImage>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QtMath>
#include <algorithm>

#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"

namespace zyga::ui {
namespace {

using range::Level;

constexpr int kLinesHigh = 10, kLeastLines = 6, kMostLines = 14;
constexpr qreal kMark = 10;
constexpr double kStep = 0.5, kLargeStep = 5;  // degrees

/// As strong as the strip's bands: soft where near, firm inside.
QColor inkOf(Level level) {
  const bool light = theme().scheme == Scheme::Light;
  if (level == Level::Supported) return withAlpha(theme().supported, light ? 0.40 : 0.46);
  if (level == Level::Near) return withAlpha(theme().supported, light ? 0.18 : 0.22);
  return withAlpha(theme().supported, 0);
}

/// One pixel a cell, dorsal at the top and left at the left.
QImage pictureOf(const range::SupportedMap& map) {
  QImage image(map.size, map.size, QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::transparent);
  for (int row = 0; row < map.size; ++row)
    for (int column = 0; column < map.size; ++column)
      image.setPixelColor(map.size - 1 - column, map.size - 1 - row, inkOf(map.at(row, column)));
  return image;
}

/// The edge of what is supported, in cells from the picture's upper left corner: between the middles of four cells that
/// are not all alike it runs from one side's middle to the next (marching squares).
std::vector<QLineF> outlineOf(const range::SupportedMap& map) {
  const auto in = [&](int x, int y) {
    if (x < 0 || y < 0 || x >= map.size || y >= map.size) return false;
    return map.at(map.size - 1 - y, map.size - 1 - x) != Level::Beyond;
  };
  std::vector<QLineF> lines;
  for (int y = -1; y < map.size; ++y)
    for (int x = -1; x < map.size; ++x) {
      const bool corners[] = {in(x, y), in(x + 1, y), in(x + 1, y + 1), in(x, y + 1)};
      const QPointF sides[] = {{x + 1.0, y + 0.5}, {x + 1.5, y + 1.0}, {x + 1.0, y + 1.5}, {x + 0.5, y + 1.0}};
      QPolygonF ends;
      for (int k = 0; k < 4; ++k)
        if (corners[k] != corners[(k + 1) % 4]) ends << sides[k];
      for (int k = 0; k + 1 < ends.size(); k += 2) lines.emplace_back(ends[k], ends[k + 1]);
    }
  return lines;
}

}  // namespace

SupportedMapView::SupportedMapView(QWidget* parent) : QWidget(parent) {
  setObjectName("supportedMap");
  setAccessibleName(tr("Range of dorsiflexion and lateral flexion together"));
  setToolTip(
      tr("What is within range when this joint is raised or lowered (up, down) and bent to a side (left, right), "
         "its axial rotation as it is. Drag the mark to turn the joint; arrow keys do the same."));
  setFocusPolicy(Qt::StrongFocus);
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
  setMaximumHeight(fontMetrics().height() * kMostLines);
  setCursor(Qt::SizeAllCursor);
}

QSize SupportedMapView::sizeHint() const { return {140, fontMetrics().height() * kLinesHigh}; }

QSize SupportedMapView::minimumSizeHint() const { return {120, fontMetrics().height() * kLeastLines}; }

void SupportedMapView::show(const range::SupportedMap& map, double dorsiflexion, double lateral, Level level) {
  map_ = map;
  dorsiflexion_ = dorsiflexion;
  lateral_ = lateral;
  level_ = level;
  setAccessibleDescription(tr("dorsiflexion %1, lateral flexion %2, %3")
                               .arg(signedDegrees(dorsiflexion), signedDegrees(lateral), levelWords(level)));
  update();
}

/// Fills the room: the two motions have scales of their own.
QRectF SupportedMapView::plot() const {
  const qreal text = QFontMetricsF(smallFont(font())).height() + 1;
  return QRectF(rect()).adjusted(1, text, -1, -text);
}

QPointF SupportedMapView::placeOf(double dorsiflexion, double lateral) const {
  const QRectF area = plot();
  return {area.left() + (map_.left - lateral) / (map_.left - map_.right) * area.width(),
          area.top() + (map_.dorsal - dorsiflexion) / (map_.dorsal - map_.ventral) * area.height()};
}

QPointF SupportedMapView::markPlace() const {
  const QRectF room = plot().adjusted(kMark / 2, kMark / 2, -kMark / 2, -kMark / 2);
  const QPointF place = placeOf(dorsiflexion_, lateral_);
  return {std::clamp(place.x(), room.left(), std::max(room.left(), room.right())),
          std::clamp(place.y(), room.top(), std::max(room.top(), room.bottom()))};
}

void SupportedMapView::paintRegion(QPainter& painter) {
  const QRectF area = plot();
  painter.fillRect(area, withAlpha(theme().text, 0.035));
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  painter.drawImage(area, pictureOf(map_));
  painter.save();
  painter.setClipRect(area.adjusted(-1, -1, 1, 1));
  painter.setPen(QPen(theme().supported, 1.25, Qt::SolidLine, Qt::RoundCap));
  const qreal across = area.width() / map_.size, down = area.height() / map_.size;
  for (const QLineF& line : outlineOf(map_))
    painter.drawLine(area.topLeft() + QPointF(line.x1() * across, line.y1() * down),
                     area.topLeft() + QPointF(line.x2() * across, line.y2() * down));
  painter.restore();
}

void SupportedMapView::paintAxes(QPainter& painter) {
  const QRectF area = plot();
  const QPointF zero = placeOf(0, 0);
  painter.setPen(QPen(mixed(theme().line, theme().muted, 0.45), 1));
  painter.drawLine(QPointF(area.left(), zero.y()), QPointF(area.right(), zero.y()));
  painter.drawLine(QPointF(zero.x(), area.top()), QPointF(zero.x(), area.bottom()));
  painter.setFont(smallFont(font()));
  painter.setPen(theme().muted);
  const qreal text = QFontMetricsF(painter.font()).height();
  const auto words = [](const QString& name, double angle) { return QString("%1 %2").arg(name, signedDegrees(angle)); };
  painter.drawText(QRectF(0, area.top() - text - 1, width(), text), Qt::AlignCenter, words(tr("dorsal"), map_.dorsal));
  painter.drawText(QRectF(0, area.bottom() + 1, width(), text), Qt::AlignCenter, words(tr("ventral"), map_.ventral));
  // In the lower corners, which a supported region seldom fills.
  const QRectF row(area.left() + 3, area.bottom() - text - 1, area.width() - 6, text);
  painter.drawText(row, Qt::AlignLeft | Qt::AlignVCenter, tr("left %1").arg(degrees(map_.left)));
  painter.drawText(row, Qt::AlignRight | Qt::AlignVCenter, tr("right %1").arg(degrees(-map_.right)));
}

void SupportedMapView::paintMark(QPainter& painter) {
  const QPointF place = markPlace();
  painter.setPen(Qt::NoPen);
  painter.setBrush(theme().panel);
  painter.drawEllipse(place, kMark / 2 + 1.5, kMark / 2 + 1.5);
  paintVerdict(painter, place, kMark, level_);
}

void SupportedMapView::paintEvent(QPaintEvent*) {
  if (map_.size == 0) return;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  paintRegion(painter);
  paintAxes(painter);
  paintMark(painter);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(hasFocus() ? theme().choice : theme().line, hasFocus() ? 2 : 1));
  painter.drawRect(plot());
}

void SupportedMapView::mousePressEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || map_.size == 0) return event->ignore();
  held_ = true;
  const QPointF off = event->position() - markPlace();
  const bool onMark = std::hypot(off.x(), off.y()) <= kMark;
  // A mark that stands at the edge because its angles lie outside the map comes to the pointer.
  grip_ = onMark ? event->position() - placeOf(dorsiflexion_, lateral_) : QPointF();
  if (std::hypot(grip_.x(), grip_.y()) > kMark) grip_ = {};
  if (!onMark) dragTo(event->position());
}

void SupportedMapView::mouseMoveEvent(QMouseEvent* event) {
  if (held_) dragTo(event->position() - grip_);
}

/// The angles at a place, as far out as the map goes.
void SupportedMapView::dragTo(const QPointF& place) {
  const QRectF area = plot();
  const double down = (place.y() - area.top()) / area.height(), right = (place.x() - area.left()) / area.width();
  emit dragged(std::clamp(map_.dorsal - down * (map_.dorsal - map_.ventral), map_.ventral, map_.dorsal),
               std::clamp(map_.left - right * (map_.left - map_.right), map_.right, map_.left));
}

void SupportedMapView::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || !held_) return;
  held_ = false;
  emit released();
}

/// Arrows and Escape are the map's own before they are shortcuts.
bool SupportedMapView::event(QEvent* event) {
  if (event->type() == QEvent::ShortcutOverride) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    const bool arrow = key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
    if (arrow || (held_ && key == Qt::Key_Escape)) event->accept();
  }
  return QWidget::event(event);
}

void SupportedMapView::keyPressEvent(QKeyEvent* event) {
  if (held_) {
    if (event->key() != Qt::Key_Escape) return;
    held_ = false;
    return emit cancelled();
  }
  const double step = qDegreesToRadians(event->modifiers() & Qt::ShiftModifier ? kLargeStep : kStep);
  switch (event->key()) {
    case Qt::Key_Up:
      return emit stepped(step, 0);
    case Qt::Key_Down:
      return emit stepped(-step, 0);
    case Qt::Key_Left:
      return emit stepped(0, step);
    case Qt::Key_Right:
      return emit stepped(0, -step);
    default:
      QWidget::keyPressEvent(event);
  }
}

}  // namespace zyga::ui
