#include "app/window/flows/report_flow.h"

#include <QDesktopServices>
#include <QFileDialog>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>
#include <QUrl>

#include "app/window/flows/report_dialog.h"
#include "app/window/job_readout.h"
#include "core/files/disk/atomic_file.h"
#include "core/files/disk/staged_output.h"
#include "core/report/numbers.h"
#include "ui/parts/message_bar.h"
#include "ui/report/report_picture.h"
#include "ui/report/write_report.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

constexpr char kFolderKey[] = "files/outputFolder";
constexpr int kPictureWidth = 1800;  ///< pixels
constexpr double kGathered = 0.6;    ///< share of the work when the numbers are there

/// All that the report is made of, safe from what happens in the window meanwhile.
struct ReportMatter {
  files::Project project;
  kinematics::Pose pose;
  kinematics::Placement X_WB;
  files::BoneMeshes meshes;
  QString poseName;
};

/// The named pose that the animal is in, if there is one.
QString nameOf(const files::Project& project, const kinematics::Pose& pose) {
  for (const auto& named : project.poses)
    if (named.pose == pose) return QString::fromStdString(named.name);
  return "present pose";
}

/// False when it was cancelled.
bool write(const ReportMatter& matter, const ReportChoice& choice, const std::filesystem::path& path,
           const Worker::Control& control) {
  const auto tell = [&control](double share) { control.report(static_cast<std::size_t>(share * 1000), 1000); };
  report::Options options;
  options.claimsOnly = choice.claimsOnly;
  options.studies = choice.studies;
  options.cancel = &control.cancelled;
  options.progress = [&](double share) { tell(kGathered * share); };
  const auto gathered = report::gather(matter.project, matter.poseName.toStdString(), matter.pose, options);
  if (!gathered) return false;
  QImage picture;
  if (!choice.claimsOnly)
    picture = posePicture(
        matter.project.specimen, matter.meshes, matter.X_WB, kPictureWidth,
        [&](double share) { tell(kGathered + (1 - kGathered) * share); }, &control.cancelled);
  if (control.cancelled) return false;
  files::writeWhole(path, reportBytes(choice.ending, *gathered, picture));
  if (choice.numbers) {
    auto beside = path;
    files::writeWhole(beside.replace_extension(".csv"), report::numbersCsv(gathered->report));
  }
  return true;
}

}  // namespace

ReportFlow::ReportFlow(Document& document, MessageBar& messages, QWidget& window)
    : QObject(&window), document_(document), messages_(messages), window_(window), readout_(new JobReadout(writer_)) {}

QWidget* ReportFlow::readout() const { return readout_; }

void ReportFlow::writeReport() {
  if (!document_.hasProject()) return;
  auto* dialog = new ReportDialog(!document_.project().claims.empty(), &window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog] { askFile(dialog->choice()); });
  dialog->open();
}

void ReportFlow::askFile(const ReportChoice& choice) {
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  auto* dialog = new QFileDialog(&window_, tr("Report"), QSettings().value(kFolderKey, documents).toString());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setNameFilter("*." + choice.ending);
  dialog->setDefaultSuffix(choice.ending);
  const QString stem = document_.path().empty() ? QString::fromStdString(document_.specimen().name)
                                                : QString::fromStdString(document_.path().stem().string());
  dialog->selectFile(QString(stem).replace('/', '-') + '.' + choice.ending);
  connect(dialog, &QFileDialog::fileSelected, this, [this, choice](const QString& file) {
    QSettings().setValue(kFolderKey, QFileInfo(file).absolutePath());
    start(choice, file);
  });
  dialog->open();
}

void ReportFlow::start(const ReportChoice& choice, const QString& file) {
  readout_->setTask(tr("Writing %1").arg(QFileInfo(file).fileName()));
  auto matter = std::make_shared<ReportMatter>();
  matter->project = document_.project();
  matter->project.assumptions = document_.assumptions();
  matter->pose = document_.pose();
  matter->X_WB = document_.placement();
  matter->meshes = document_.meshes();
  matter->poseName = nameOf(document_.project(), document_.pose());
  const auto work = [this, matter, choice, file](const Worker::Control& control) -> Worker::Delivery {
    const files::StagedOutput staged(file.toStdString());
    if (!write(*matter, choice, staged.path(), control)) return {};
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
    messages_.warn(tr("%1 was not written: %2").arg(QFileInfo(file).fileName(), faultText(cause)));
  });
}

}  // namespace zyga::ui
