#include "ui/sheets/plate_file.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>
#include <stdexcept>

#include "ui/sheets/plate_font.h"
#include "ui/sheets/plate_paint.h"
#include "ui/sheets/plate_svg.h"
#include "ui/sheets/repeatable_pdf.h"

namespace zyga::ui {
namespace {

constexpr double kInch = 25.4;  // mm

QByteArray pdfBytes(const Plate& plate) {
  const SteadyHashes steady;
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  QPdfWriter pdf(&buffer);
  pdf.setTitle(plate.title);
  pdf.setCreator("Zygapose");
  pdf.setResolution(static_cast<int>(kInch * kPlateUnits));
  pdf.setPageSize(QPageSize(plate.size, QPageSize::Millimeter, {}, QPageSize::ExactMatch));
  pdf.setPageMargins(QMarginsF());
  QPainter painter;
  if (!painter.begin(&pdf)) throw std::runtime_error("the page could not be made");
  paintPlate(painter, plate, kPlateUnits);
  painter.end();
  return withoutClock(bytes);
}

QByteArray pngBytes(const Plate& plate, int width) {
  const double unitsPerMm = width / plate.size.width();
  const QSize size(width, qRound(plate.size.height() * unitsPerMm));
  QImage image(size, QImage::Format_RGBA8888_Premultiplied);
  if (image.isNull())
    throw std::runtime_error("there is not enough memory for " + std::to_string(size.width()) + " x " +
                             std::to_string(size.height()) + " pixels; choose a smaller width");
  image.fill(Qt::transparent);
  image.setDotsPerMeterX(qRound(unitsPerMm * 1000));
  image.setDotsPerMeterY(qRound(unitsPerMm * 1000));
  QPainter painter(&image);
  paintPlate(painter, plate, unitsPerMm);
  painter.end();
  QByteArray bytes;
  QBuffer buffer(&bytes);
  buffer.open(QIODevice::WriteOnly);
  if (!image.save(&buffer, "PNG")) throw std::runtime_error("the page could not be written as PNG");
  return bytes;
}

}  // namespace

const QStringList& plateEndings() {
  static const QStringList endings{"pdf", "svg", "png"};
  return endings;
}

QByteArray plateBytes(const Plate& plate, const QString& ending, int pngWidth) {
  if (ending == "pdf") return pdfBytes(plate);
  if (ending == "svg") return plateSvg(plate);
  if (ending == "png") return pngBytes(plate, pngWidth);
  throw std::runtime_error("a sheet ends in .pdf, .svg or .png");
}

}  // namespace zyga::ui
