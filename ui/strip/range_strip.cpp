#include "ui/strip/range_strip.h"

#include <QAccessible>
#include <QFontMetricsF>
#include <QHelpEvent>
#include <QPainter>
#include <QToolTip>
#include <algorithm>

#include "ui/strip/strip_side.h"
#include "ui/strip/strip_words.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {

RangeStrip::RangeStrip(Document& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      choice_(new MotionChoice(this)),
      key_(new StripKey(this)),
      bands_(document) {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("Range strip"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
  connect(choice_, &MotionChoice::chosen, this, &RangeStrip::setMotion);
  connect(&document_, &Document::changed, this, &RangeStrip::documentChanged);
  connect(&bands_, &ShownBands::changed, this, [this] {
    // The scale stands still while something is dragged.
    if (bands_.complete() && !document_.previewing()) fitScale();
    update();
  });
  connect(&ThemeSwitch::instance(), &ThemeSwitch::changed, this, qOverload<>(&QWidget::update));
  rebuild();
}

QSize RangeStrip::sizeHint() const { return {1000, std::max(184, fontMetrics().height() * (textIsLarge() ? 9 : 12))}; }

QSize RangeStrip::minimumSizeHint() const {
  return {560, std::max(152, fontMetrics().height() * (textIsLarge() ? 8 : 11))};
}

void RangeStrip::setMotion(int motion) {
  if (motion == motion_) return;
  cancelGesture();
  motion_ = motion;
  choice_->setMotion(motion);
  bands_.reset(columns_, motion_);
  fitScale();
}

void RangeStrip::setSpan(std::optional<ColumnSpan> span) {
  span_ = span;
  if (!span) spanAnchor_.reset();
  update();
}

std::optional<anatomy::Region> RangeStrip::zoomedRegion() const {
  return zoom_ ? std::optional(columns_.regions[*zoom_].region) : std::nullopt;
}

void RangeStrip::zoomTo(std::optional<anatomy::Region> region) {
  zoom_.reset();
  for (std::size_t i = 0; i < columns_.regions.size(); ++i)
    if (columns_.regions[i].region == region && columns_.regions[i].columns > 0) zoom_ = i;
  fitScale();
}

QPointF RangeStrip::markPlace(std::size_t column) const { return zyga::ui::markPlace(scene(), column); }

void RangeStrip::documentChanged(Changes what) {
  if (what & Change::Specimen) return rebuild();
  if (what & (Changes(Change::Assumptions) | Change::Contact)) bands_.assumptionsChanged();
  if (what & Change::Pose) {
    bands_.poseChanged();
    // The scale stands still while something is dragged.
    if (!document_.previewing()) fitScale();
  }
  update();
}

void RangeStrip::rebuild() {
  press_ = {};
  span_.reset();
  spanAnchor_.reset();
  zoom_.reset();
  hovered_.reset();
  hoveredLabel_.reset();
  columns_ = document_.hasProject() ? stripColumns(document_.specimen()) : StripColumns{};
  bands_.reset(columns_, motion_);
  choice_->setEnabled(document_.hasProject());
  fitScale();
}

int RangeStrip::placeSide() {
  const QSize choice = choice_->sizeHint();
  const int left = width() - choice.width() - kWideGap;
  choice_->setGeometry(left, kGap, choice.width(), choice.height());
  key_->setFont(smallFont(font()));
  const QSize key = key_->sizeHint();
  const int top = height() - kGap - key.height();
  key_->setGeometry(left + kGap, top, key.width(), key.height());
  key_->setVisible(top >= kGap + choice.height() + kGap);
  return left;
}

void RangeStrip::layOut() {
  const QFontMetricsF metrics(smallFont(font()));
  const QRectF area = QRectF(rect()).adjusted(0, kGridStep, placeSide() - width() - kWideGap, -kGridStep);
  qreal words = metrics.horizontalAdvance(QStringLiteral("\u221222.5\u00B0"));
  for (int motion = 0; motion < 3; ++motion) {
    const auto [positive, negative] = motionEnds(motion);
    words = std::max({words, metrics.horizontalAdvance(positive), metrics.horizontalAdvance(negative)});
  }
  const qreal axis = words + kWideGap + kGap;
  layout_ = StripLayout(columns_, area, metrics.height(), axis, zoom_, scale_);
  update();
}

void RangeStrip::fitScale() {
  layOut();
  std::vector<double> extents;
  double largestMark = 0;
  if (!columns_.columns.empty())
    for (std::size_t i = layout_.visible().first; i <= layout_.visible().last; ++i) {
      const auto& shown = bands_[i];
      largestMark = std::max(largestMark, std::abs(document_.pose()[columns_.columns[i].joint][motion_]));
      if (shown && shown->band.judged && !shown->band.empty)
        extents.push_back(std::max(std::abs(shown->band.min), std::abs(shown->band.max)));
    }
  scale_ = scaleFor(std::move(extents), largestMark);
  layOut();
}

StripScene RangeStrip::scene() const {
  return {document_, columns_,      layout_,           bands_,     motion_,          selectedColumn(), hovered_,
          span_,     hoveredLabel_, zoom_.has_value(), hasFocus(), smallFont(font())};
}

void RangeStrip::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), theme().panel);
  if (columns_.columns.empty()) {
    painter.setPen(theme().muted);
    painter.drawText(layout_.plot(), Qt::AlignCenter,
                     tr("The joints of the column appear here, from snout to tail tip"));
    return;
  }
  const StripScene shown = scene();
  paintGround(painter, shown);
  paintBones(painter, shown);
  paintBands(painter, shown);
  paintMarks(painter, shown);
  paintWords(painter, shown);
}

void RangeStrip::resizeEvent(QResizeEvent*) { layOut(); }

void RangeStrip::changeEvent(QEvent* event) {
  QWidget::changeEvent(event);
  if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) layOut();
}

bool RangeStrip::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto column = layout_.columnAt(help->pos());
    if (column && layout_.plot().contains(help->pos()))
      QToolTip::showText(help->globalPos(), wordsAt(*column), this);
    else
      QToolTip::hideText();
    return true;
  }
  // The strip takes these from shortcuts of the window while it has the focus.
  if (event->type() == QEvent::ShortcutOverride) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Escape && (press_.gesture != Gesture::None || span_ || zoom_)) event->accept();
    if (key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down) event->accept();
  }
  return QWidget::event(event);
}

std::optional<std::size_t> RangeStrip::selectedColumn() const {
  const auto joint = document_.selectedJoint();
  return joint ? columns_.columnOf(*joint) : std::nullopt;
}

void RangeStrip::select(std::size_t column) {
  document_.selectJoint(columns_.columns[column].joint);
  const QString words = wordsAt(column);
  setAccessibleDescription(words);
  QAccessibleEvent said(this, QAccessible::DescriptionChanged);
  QAccessible::updateAccessibility(&said);
  tell(words);
}

QString RangeStrip::wordsAt(std::size_t column) {
  return jointWords(document_, columns_.columns[column].joint, motion_, bands_.upToDate(column).band);
}

QString RangeStrip::bendName(const ColumnSpan& bent) const {
  if (bent.first == bent.last)
    return QString::fromStdString(document_.specimen()[columns_.columns[bent.first].joint].id);
  return spanName(document_, columns_, bent.first, bent.last);
}

void RangeStrip::tell(const QString& words) { emit hint(words); }

}  // namespace zyga::ui
