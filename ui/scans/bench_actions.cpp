#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QSettings>
#include <QStandardPaths>
#include <QToolButton>
#include <numbers>

#include "core/anatomy/landmark_table.h"
#include "core/anatomy/straighten_scan.h"
#include "core/files/atomic_file.h"
#include "ui/commands/scan_edits.h"
#include "ui/scans/bench_window.h"
#include "ui/scans/scan_words.h"
#include "ui/theme/figures.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

constexpr char kFolderKey[] = "files/scanFolder";

using anatomy::DeformedBy;

}  // namespace

QToolButton* BenchWindow::createStraighten() {
  auto* straighten = new QToolButton;
  straighten->setObjectName("straighten");
  straighten->setText(tr("Straighten"));
  straighten->setToolTip(tr("Undoes what bent the bone after death, going by its paired marks; the original is kept"));
  straighten->setPopupMode(QToolButton::InstantPopup);
  straighten->setFocusPolicy(Qt::TabFocus);
  auto* menu = new QMenu(straighten);
  connect(menu, &QMenu::aboutToShow, this, [this, menu] { fillStraighten(*menu); });
  straighten->setMenu(menu);
  return straighten;
}

void BenchWindow::fillStraighten(QMenu& menu) {
  menu.clear();
  const auto add = [&](const QString& words, const Eigen::Matrix3d& map) {
    menu.addAction(words, this, [this, map, words] {
      changeScan(document_, anatomy::straightened(marks_.scan(), marks_.sculpted(), map),
                 tr("%1: %2").arg(QString::fromStdString(toId(bone_)), words));
      view_->setPlace(boneFromScan(marks_.scan()));
    });
  };
  try {
    for (const DeformedBy by : {DeformedBy::Shear, DeformedBy::Squash}) {
      const auto found = anatomy::straightening(marks_.scan(), by);
      const QString amount = by == DeformedBy::Shear ? tr("Undo a shear of %1").arg(plainDegrees(found.amount))
                                                     : tr("Undo a squash of %1 %").arg(100 * found.amount, 0, 'f', 1);
      const double scale = marks_.scan().scale;
      add(tr("%1 (pairs off by %2, then %3)")
              .arg(amount, millimetres(scale * found.before), millimetres(scale * found.asymmetry)),
          found.map);
    }
  } catch (const std::exception& error) {
    menu.addAction(capital(QString::fromUtf8(error.what())))->setEnabled(false);
  }
  menu.addSeparator();
  add(tr("As it was found"), Eigen::Matrix3d::Identity());
  menu.actions().last()->setEnabled(!marks_.scan().straighten.isIdentity(1e-12));
}

void BenchWindow::ask(bool save) {
  const QString folder =
      QSettings().value(kFolderKey, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)).toString();
  auto* chooser =
      new QFileDialog(this, save ? tr("Landmarks out") : tr("Landmarks in"), folder, tr("Landmark tables (*.csv)"));
  chooser->setAttribute(Qt::WA_DeleteOnClose);
  chooser->setAcceptMode(save ? QFileDialog::AcceptSave : QFileDialog::AcceptOpen);
  chooser->setDefaultSuffix("csv");
  if (save) chooser->selectFile("landmarks.csv");
  connect(chooser, &QFileDialog::fileSelected, this, [this, save](const QString& file) {
    QSettings().setValue(kFolderKey, QFileInfo(file).absolutePath());
    save ? writeMarks(file) : readMarks(file);
  });
  chooser->open();
}

/// For every bone of the project that the table speaks of; one step.
void BenchWindow::readMarks(const QString& file) {
  try {
    const std::string path = file.toStdString();
    const auto reading = anatomy::readLandmarkTable(files::readWhole(path), path);
    if (!reading.usable()) return tellFault(*this, messagesInWords(reading.messages));
    auto scans = document_.project().scans;
    int bones = 0;
    const auto sculpted = files::specimenOf(document_.project().table, {});
    for (auto& kept : scans) {
      const auto points = reading.table.points.find(kept.scan.bone);
      if (points == reading.table.points.end()) continue;
      for (const auto& [name, p] : points->second)
        setLandmark(kept.scan, sculpted[*sculpted.findBone(toId(kept.scan.bone))], name, p);
      ++bones;
    }
    if (bones == 0)
      return tellFault(*this, tr("%1 has no landmark of a bone that was brought in.").arg(QFileInfo(file).fileName()));
    changeScans(document_, std::move(scans), tr("Landmarks from %1").arg(QFileInfo(file).fileName()));
    if (marks_.hasScan()) view_->setPlace(boneFromScan(marks_.scan()));
  } catch (const std::exception& error) {
    tellFault(*this, QString::fromUtf8(error.what()));
  }
}

void BenchWindow::writeMarks(const QString& file) {
  anatomy::LandmarkTable table;
  for (const auto& kept : document_.project().scans)
    if (!kept.scan.landmarks.empty()) table.points[kept.scan.bone] = kept.scan.landmarks;
  try {
    files::writeWhole(file.toStdString(), anatomy::writeLandmarkTable(table));
  } catch (const std::exception& error) {
    tellFault(*this, QString::fromUtf8(error.what()));
  }
}

}  // namespace zyga::ui
