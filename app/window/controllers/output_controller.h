#pragma once

#include <QObject>
#include <functional>
#include <memory>

#include "core/files/export/sculpting_base.h"
#include "ui/document/document.h"
#include "ui/document/worker.h"

namespace zyga::ui {

class JobReadout;
class MessageBar;
class Viewport;
struct PictureSet;

/// Meshes and pictures out: asks how and where, then works beside the window with progress, and says when it is done.
class OutputController : public QObject {
  Q_OBJECT
 public:
  OutputController(Document& document, Viewport& viewport, MessageBar& messages, QWidget& window);

  /// For the status bar.
  QWidget* exportReadout() const;
  QWidget* pictureReadout() const;
  bool busy() const { return exporter_.busy() || painter_.busy(); }

 public slots:
  void exportMeshes();
  void savePicture();

 signals:
  /// A file is complete.
  void written(const QString& file);

 private:
  bool bonesReady();
  void askFile(const QString& title, const QString& ending, const std::function<void(const QString&)>& then);
  void startExport(const files::ExportOptions& options, const files::SculptingBase& base, const QString& file);
  /// Asks once more when files beside the one chosen would be replaced.
  void placePictures(const std::shared_ptr<const PictureSet>& set, const QString& picked);
  void startPictures(const std::shared_ptr<const PictureSet>& set, const QString& file);
  /// `told`: further sentences on what came out.
  void tellWritten(const QString& file, const QStringList& told = {});
  void tellFailed(const QString& file, const QString& cause);

  Document& document_;
  Viewport& viewport_;
  MessageBar& messages_;
  QWidget& window_;
  Worker exporter_, painter_;
  JobReadout *exportReadout_, *pictureReadout_;
};

}  // namespace zyga::ui
