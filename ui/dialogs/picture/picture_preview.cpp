#include "ui/dialogs/picture/picture_preview.h"

#include <QPainter>

#include "core/task/parallel.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"

namespace zyga::ui {
namespace {

constexpr int kSquare = 8;  // px, of the squares that stand for nothing

/// Light and dark squares: here the picture is transparent.
void paintNothing(QPainter& painter, const QRect& place) {
  painter.fillRect(place, mixed(theme().viewportTop, theme().viewportGround, 0.5));
  const QColor other = mixed(theme().viewportGround, theme().text, 0.12);
  for (int y = 0; y * kSquare < place.height(); ++y)
    for (int x = y % 2; x * kSquare < place.width(); x += 2)
      painter.fillRect(QRect(place.left() + x * kSquare, place.top() + y * kSquare, kSquare, kSquare) & place, other);
}

}  // namespace

PicturePreview::PicturePreview(std::shared_ptr<const PictureScene> scene, QWidget* parent)
    : QWidget(parent), scene_(std::move(scene)) {
  setObjectName("picturePreview");
  setMinimumSize(300, 200);
  setAccessibleName(tr("Preview of the picture"));
}

void PicturePreview::setChoice(const PictureChoice& choice) {
  choice_ = choice;
  framing_ = framingOf(*scene_, choice);
  retrace(false);
}

QRect PicturePreview::place() const {
  const QSize room = (size() - QSize(2, 2)).expandedTo({1, 1});
  const QSize wanted(room.width(), picture::heightOf(room.width(), framing_.aspect));
  const QSize fitting = wanted.height() <= room.height()
                            ? wanted
                            : QSize(std::max(1, qRound(room.height() * framing_.aspect)), room.height());
  return {QPoint((width() - fitting.width()) / 2, (height() - fitting.height()) / 2), fitting};
}

void PicturePreview::retrace(bool fine) {
  const double sharpness = fine ? devicePixelRatioF() : 0.5;
  const int width = std::max(1, qRound(place().width() * sharpness));
  picture::PictureOptions options = pictureOptions(*scene_, choice_, framing_, width);
  options.samplesPerPixel = fine ? 4 : 1;
  options.occlusionRays = fine ? 4 : 2;
  options.shadowRays = 1;
  options.outline = fine;
  const auto work = [this, scene = scene_, camera = framing_.camera, options,
                     fine](const Worker::Control& control) mutable -> Worker::Delivery {
    // A core is left to the dialog.
    options.task = control.task.quiet().withThreads(std::max(1u, task::cores() - 1));
    const picture::Image image = picture::trace(scene->light, camera, options);
    if (image.width == 0) return {};
    const QImage shown = QImage(image.rgba.data(), image.width, image.height, QImage::Format_RGBA8888).copy();
    return [this, shown, fine] {
      picture_ = shown;
      fault_.clear();
      update();
      if (!fine) retrace(true);
    };
  };
  worker_.start(work, [this](const QString& cause) {
    fault_ = cause;
    update();
  });
}

void PicturePreview::resizeEvent(QResizeEvent*) { retrace(false); }

void PicturePreview::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const QRect at = place();
  if (choice_.transparentGround)
    paintNothing(painter, at);
  else
    painter.fillRect(at, theme().viewportGround);
  painter.setRenderHint(QPainter::SmoothPixmapTransform);
  if (!picture_.isNull()) painter.drawImage(at, picture_);
  if (!fault_.isEmpty()) {
    painter.setPen(theme().text);
    painter.drawText(at.adjusted(kWideGap, kWideGap, -kWideGap, -kWideGap), Qt::AlignCenter | Qt::TextWordWrap, fault_);
  }
  painter.setPen(theme().line);
  painter.drawRect(at.adjusted(-1, -1, 0, 0));
}

}  // namespace zyga::ui
