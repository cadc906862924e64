#include "ui/plots/plot_file.h"

#include <QBuffer>
#include <QImage>
#include <QPageLayout>
#include <QPageSize>
#include <QPdfWriter>
#include <QSvgGenerator>

namespace zyga::ui {
namespace {

constexpr double kPixelsAPoint = 4;
constexpr int kPdfResolution = 1200;

QByteArray svgBytes(const QSizeF& size, const PlotPainter& paint) {
  QBuffer buffer;
  QSvgGenerator svg;
  svg.setOutputDevice(&buffer);
  svg.setResolution(72);
  svg.setSize(size.toSize());
  svg.setViewBox(QRectF(QPointF(), size));
  QPainter painter(&svg);
  paint(painter, QRectF(QPointF(), size));
  painter.end();
  return buffer.data();
}

QByteArray pdfBytes(const QSizeF& size, const PlotPainter& paint) {
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter pdf(&buffer);
  pdf.setResolution(kPdfResolution);
  pdf.setPageSize(QPageSize(size, QPageSize::Point, {}, QPageSize::ExactMatch));
  pdf.setPageMargins(QMarginsF());
  QPainter painter(&pdf);
  painter.scale(kPdfResolution / 72.0, kPdfResolution / 72.0);
  paint(painter, QRectF(QPointF(), size));
  painter.end();
  return bytes;
}

QByteArray pngBytes(const QSizeF& size, const PlotPainter& paint) {
  QImage image((size * kPixelsAPoint).toSize(), QImage::Format_ARGB32_Premultiplied);
  image.fill(Qt::transparent);
  QPainter painter(&image);
  painter.scale(kPixelsAPoint, kPixelsAPoint);
  paint(painter, QRectF(QPointF(), size));
  painter.end();
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  image.save(&buffer, "PNG");
  return bytes;
}

}  // namespace

const QStringList& plotEndings() {
  static const QStringList endings{"svg", "pdf", "png"};
  return endings;
}

QByteArray plotBytes(const QString& ending, const QSizeF& size, const PlotPainter& paint) {
  if (ending == "svg") return svgBytes(size, paint);
  if (ending == "pdf") return pdfBytes(size, paint);
  if (ending == "png") return pngBytes(size, paint);
  return {};
}

}  // namespace zyga::ui
