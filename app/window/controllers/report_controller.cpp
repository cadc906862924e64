#include "app/window/controllers/report_controller.h"

#include <QDesktopServices>
#include <QFileDialog>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>
#include <QUrl>

#include "app/window/controllers/report_dialog.h"
#include "app/window/job_readout.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/disk/staged_output.h"
#include "ui/parts/message_bar.h"
#include "ui/report/report_pages.h"
#include "ui/report/report_picture.h"

namespace zyga::ui {
namespace {

constexpr char kReportFolderKey[] = "files/outputFolder";
constexpr int kPictureWidth = 1800;  ///< pixels
constexpr double kBuilt = 0.6;       ///< share of the work when the numbers are there

/// The named pose that the animal is in; empty where there is none.
std::string nameOf(const files::Project& project, const kinematics::Pose& pose) {
  for (const auto& named : project.poses)
    if (named.pose == pose) return named.name;
  return {};
}

}  // namespace

ReportController::ReportController(Document& document, std::shared_ptr<study::StudyAnswers> answers,
                                   MessageBar& messages, QWidget& window)
    : QObject(&window),
      document_(document),
      answers_(std::move(answers)),
      messages_(messages),
      window_(window),
      readout_(new JobReadout(writer_)) {}

QWidget* ReportController::readout() const { return readout_; }

void ReportController::writeReport() {
  if (!document_.hasProject()) return;
  auto* dialog = new ReportDialog(!document_.project().claims.empty(), &window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog] { askFile(dialog->choice()); });
  dialog->open();
}

void ReportController::askFile(const ReportChoice& choice) {
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  auto* dialog = new QFileDialog(&window_, tr("Report"), QSettings().value(kReportFolderKey, documents).toString());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setNameFilter("*." + choice.ending);
  dialog->setDefaultSuffix(choice.ending);
  const QString stem = document_.path().empty() ? QString::fromStdString(document_.specimen().name)
                                                : QString::fromStdString(document_.path().stem().string());
  dialog->selectFile(QString(stem).replace('/', '-') + '.' + choice.ending);
  connect(dialog, &QFileDialog::fileSelected, this, [this, choice](const QString& file) {
    QSettings().setValue(kReportFolderKey, QFileInfo(file).absolutePath());
    start(choice, file);
  });
  dialog->open();
}

void ReportController::start(const ReportChoice& choice, const QString& file) {
  readout_->setTask(tr("Writing %1").arg(QFileInfo(file).fileName()));
  const auto work = [this, choice, file, scenario = document_.scenario(), project = document_.project(),
                     meshes = document_.meshes(), name = nameOf(document_.project(), document_.pose()),
                     answers = answers_](const Worker::Control& control) -> Worker::Delivery {
    const task::Task& task = control.task;
    const report::ReportOptions options{choice.studies, choice.claimsOnly, answers.get()};
    const auto data = report::buildReport(scenario, project, name, options, task.part(0, kBuilt));
    if (!data) return {};
    QImage picture;
    if (!choice.claimsOnly) picture = posePicture(scenario, meshes, kPictureWidth, task.part(kBuilt, 1));
    if (task.cancelled()) return {};
    const files::StagedOutput staged(file.toStdString());
    files::writeWhole(staged.path(), reportBytes(choice.ending, *data, picture));
    if (choice.numbers) {
      auto beside = staged.path();
      files::writeWhole(beside.replace_extension(".csv"), numbersBytes("csv", *data));
    }
    staged.moveIntoPlace();
    return [this, file] {
      const QFileInfo info(file);
      const QUrl url = QUrl::fromLocalFile(file);
      messages_.tell(tr("%1 is written.").arg(info.fileName()),
                     {{tr("Open it"), [url] { QDesktopServices::openUrl(url); }}});
      emit written(file);
    };
  };
  writer_.start(work, [this, file](const QString& cause) {
    messages_.warn(tr("%1 was not written: %2").arg(QFileInfo(file).fileName(), cause));
  });
}

}  // namespace zyga::ui
