#include "app/window/controllers/output_controller.h"

#include <QDesktopServices>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>
#include <QUrl>

#include "app/window/job_readout.h"
#include "core/files/disk/staged_output.h"
#include "core/solid/watertight/watertight.h"
#include "ui/commands/project_edits.h"
#include "ui/dialogs/export_dialog.h"
#include "ui/parts/message_bar.h"
#include "ui/words/scan_words.h"

namespace zyga::ui {
namespace {

constexpr char kOutputFolderKey[] = "files/outputFolder";

ExportFacts exportFacts(const Document& document) {
  const solid::PosedSkeleton skeleton{document.specimen(), document.meshes(), document.placement()};
  ExportFacts facts;
  facts.size = solid::boundsOf(skeleton).sizes();
  for (const auto& bone : document.meshes()) {
    if (!bone || bone->levels.empty()) continue;
    ++facts.bones;
    facts.triangles += bone->levels.front().triangles.size();
  }
  facts.naturalVoxel = solid::naturalVoxel(skeleton);
  facts.smallestVoxel = solid::smallestVoxel(skeleton, solid::WatertightOptions().memory);
  facts.guide = document.project().guide;
  return facts;
}

}  // namespace

OutputController::OutputController(Document& document, Viewport& viewport, MessageBar& messages, QWidget& window)
    : QObject(&window),
      document_(document),
      viewport_(viewport),
      messages_(messages),
      window_(window),
      exportReadout_(new JobReadout(exporter_)),
      pictureReadout_(new JobReadout(painter_)) {}

QWidget* OutputController::exportReadout() const { return exportReadout_; }

QWidget* OutputController::pictureReadout() const { return pictureReadout_; }

bool OutputController::bonesReady() {
  if (!document_.hasProject()) return false;
  if (!document_.meshes().empty()) return true;
  messages_.tell(tr("The bones are still being sculpted. Try again when they are on screen."));
  return false;
}

void OutputController::askFile(const QString& title, const QString& ending,
                               const std::function<void(const QString&)>& then) {
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  auto* dialog = new QFileDialog(&window_, title, QSettings().value(kOutputFolderKey, documents).toString());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setNameFilter(QString("*.%1").arg(ending));
  dialog->setDefaultSuffix(ending);
  const QString stem = document_.path().empty() ? QString::fromStdString(document_.specimen().name)
                                                : QString::fromStdString(document_.path().stem().string());
  dialog->selectFile(QString(stem).replace('/', '-') + '.' + ending);
  connect(dialog, &QFileDialog::fileSelected, this, [then](const QString& file) {
    QSettings().setValue(kOutputFolderKey, QFileInfo(file).absolutePath());
    then(file);
  });
  dialog->open();
}

void OutputController::exportMeshes() {
  if (!bonesReady()) return;
  auto* dialog = new ExportDialog(exportFacts(document_), &window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog] {
    if (dialog->base().bodyGuide) changeGuideThickness(document_, dialog->guide());
    askFile(tr("Export meshes"), dialog->ending(),
            [this, options = dialog->options(), base = dialog->base()](const QString& file) {
              startExport(options, base, file);
            });
  });
  dialog->open();
}

void OutputController::startExport(const files::ExportOptions& options, const files::SculptingBase& base,
                                   const QString& file) {
  exportReadout_->setTask(tr("Exporting %1").arg(QFileInfo(file).fileName()));
  const auto specimen = std::make_shared<const anatomy::Specimen>(document_.specimen());
  const auto work = [this, specimen, placement = document_.placement(), meshes = document_.meshes(), options, base,
                     guide = document_.project().guide, file](const Worker::Control& control) -> Worker::Delivery {
    files::StagedOutput staged(file.toStdString());
    auto made = base.any() ? files::sculptingBase(*specimen, placement, meshes, base, guide, control.task)
                           : files::SculptedSurfaces();
    noteSurfaces(made, *specimen, guide);
    if (control.task.cancelled()) return {};
    files::exportMeshes(*specimen, placement, base.watertight ? files::BoneMeshes() : meshes, staged.path(), options,
                        made.surfaces);
    if (control.task.cancelled()) return {};
    staged.moveIntoPlace();
    return [this, file, told = surfacesSaid(made, *specimen)] { tellWritten(file, told); };
  };
  exporter_.start(work, [this, file](const QString& cause) { tellFailed(file, cause); });
}

void OutputController::tellWritten(const QString& file, const QStringList& told) {
  const QFileInfo info(file);
  messages_.tell((QStringList(tr("%1 is written.").arg(info.fileName())) + told).join(' '),
                 {{tr("Show folder"),
                   [folder = info.absolutePath()] { QDesktopServices::openUrl(QUrl::fromLocalFile(folder)); }}});
  emit written(file);
}

void OutputController::tellFailed(const QString& file, const QString& cause) {
  messages_.warn(tr("%1 was not written: %2").arg(QFileInfo(file).fileName(), cause));
}

}  // namespace zyga::ui
