#include "ui/pictures/png_file.h"

#include <QFile>
#include <QImageWriter>
#include <QRgba64>

namespace zyga::ui {
namespace {

/// Refuses to be written on once the work is cancelled, so that packing a large picture ends early.
class StoppableFile : public QFile {
 public:
  StoppableFile(const QString& name, const task::Task& task) : QFile(name), task_(task) {}
  bool stopped() const { return task_.cancelled(); }

 protected:
  qint64 writeData(const char* data, qint64 size) override { return stopped() ? -1 : QFile::writeData(data, size); }

 private:
  const task::Task& task_;
};

bool write(const QImage& image, const std::string& name, const task::Task& task) {
  if (image.isNull()) throw reason::Failure({kNoMemoryForPicture, {reason::text(name)}});
  StoppableFile file(QFile::decodeName(name.c_str()), task);
  const auto fail = [&](const QString& cause) {
    throw reason::Failure({kCannotSavePicture, {reason::text(name), reason::text(cause.toStdString())}});
  };
  if (!file.open(QIODevice::WriteOnly)) fail(file.errorString());
  QImageWriter writer(&file, "PNG");
  const bool whole = writer.write(image) && file.flush();
  if (file.stopped()) return false;
  if (!whole) fail(file.error() == QFileDevice::NoError ? writer.errorString() : file.errorString());
  return true;
}

}  // namespace

bool writePng(const picture::Image& image, const std::string& file, const task::Task& task) {
  return write(QImage(image.rgba.data(), image.width, image.height, 4 * static_cast<qsizetype>(image.width),
                      QImage::Format_RGBA8888),
               file, task);
}

bool writePng(const picture::DepthImage& depth, const std::string& file, const task::Task& task) {
  QImage image(depth.width, depth.height, QImage::Format_RGBA64);
  for (int y = 0; y < image.height(); ++y) {
    auto* row = reinterpret_cast<QRgba64*>(image.scanLine(y));
    for (int x = 0; x < depth.width; ++x) {
      const std::size_t at = static_cast<std::size_t>(y) * depth.width + x;
      row[x] = qRgba64(depth.grey[at], depth.grey[at], depth.grey[at], depth.alpha[at]);
    }
  }
  image.setText("Depth",
                QString("white %1 m, black %2 m").arg(depth.nearest, 0, 'f', 3).arg(depth.farthest, 0, 'f', 3));
  return write(image, file, task);
}

}  // namespace zyga::ui
