#include <QFileInfo>
#include <QLocale>
#include <QMessageBox>
#include <QPushButton>

#include "app/window/controllers/output_controller.h"
#include "app/window/job_readout.h"
#include "ui/dialogs/picture/picture_dialog.h"
#include "ui/parts/message_bar.h"
#include "ui/viewport/viewport.h"

/// Pictures out.
namespace zyga::ui {
namespace {

/// Files of the set that are there already, but for the one that was picked, about which the file dialog has asked.
QStringList inTheWay(const PictureSet& set, const QString& file, const QString& picked) {
  QStringList names;
  for (const auto& made : pictureFiles(file.toStdString(), set)) {
    const QFileInfo info(QString::fromStdString(made));
    if (info.exists() && info != QFileInfo(picked)) names += info.fileName();
  }
  return names;
}

QString depthTold(const WrittenPictures& written, bool perspective) {
  const QLocale locale;
  const auto metres = [&](double length) { return locale.toString(length, 'f', 2); };
  const auto [nearest, farthest] = *written.depth;
  if (!perspective) return OutputController::tr("Depth: %1 m from white to black.").arg(metres(farthest - nearest));
  return OutputController::tr("Depth: white is %1 m from the eye, black %2 m.").arg(metres(nearest), metres(farthest));
}

}  // namespace

void OutputController::savePicture() {
  if (!bonesReady()) return;
  const auto scene = std::make_shared<const PictureScene>(pictureScene(document_, viewport_.camera()));
  auto* dialog = new PictureDialog(scene, &window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog, scene] {
    const auto set = std::make_shared<const PictureSet>(pictureSet(*scene, dialog->choice()));
    askFile(tr("Save picture"), "png", [this, set](const QString& file) { placePictures(set, file); });
  });
  dialog->open();
}

void OutputController::placePictures(const std::shared_ptr<const PictureSet>& set, const QString& picked) {
  const bool png = picked.endsWith(".png", Qt::CaseInsensitive);
  const QString file = png ? picked : picked + ".png";
  const QStringList there = inTheWay(*set, file, picked);
  if (there.isEmpty()) return startPictures(set, file);
  auto* box = new QMessageBox(QMessageBox::NoIcon, tr("Save picture"), tr("Some of the pictures are there already."),
                              QMessageBox::NoButton, &window_);
  box->setObjectName("picturesThere");
  box->setAttribute(Qt::WA_DeleteOnClose);
  box->setInformativeText(there.join('\n'));
  QPushButton* replace = box->addButton(tr("Replace them"), QMessageBox::DestructiveRole);
  QPushButton* other = box->addButton(tr("Another name…"), QMessageBox::AcceptRole);
  QPushButton* stay = box->addButton(tr("Go back"), QMessageBox::RejectRole);
  box->setDefaultButton(other);
  box->setEscapeButton(stay);
  connect(replace, &QPushButton::clicked, this, [this, set, file] { startPictures(set, file); });
  connect(other, &QPushButton::clicked, this, [this, set] {
    askFile(tr("Save picture"), "png", [this, set](const QString& name) { placePictures(set, name); });
  });
  box->open();
}

void OutputController::startPictures(const std::shared_ptr<const PictureSet>& set, const QString& file) {
  pictureReadout_->setTask(tr("Tracing %1").arg(QFileInfo(file).fileName()));
  const auto work = [this, set, file](const Worker::Control& control) -> Worker::Delivery {
    PictureSet wanted = *set;
    wanted.options.task = control.task;
    const auto written = writePictures(file.toStdString(), wanted);
    if (!written) return {};
    return [this, written = *written, perspective = set->camera.perspective] {
      QStringList told;
      const int more = static_cast<int>(written.files.size()) - 1;
      if (more > 0) told += tr("Further files beside it: %1.").arg(more);
      if (written.depth) told += depthTold(written, perspective);
      tellWritten(QString::fromStdString(written.files.front()), told);
    };
  };
  painter_.start(work, [this, file](const QString& cause) { tellFailed(file, cause); });
}

}  // namespace zyga::ui
