#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QSettings>
#include <QStandardPaths>
#include <QToolButton>
#include <numbers>

#include "core/anatomy/marks/straighten.h"
#include "core/anatomy/tables/landmark_table.h"
#include "core/files/disk/atomic_file.h"
#include "ui/commands/scan_edits.h"
#include "ui/scans/landmark_editor.h"
#include "ui/scans/scan_choices.h"
#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/table_words.h"

namespace zyga::ui {
namespace {

constexpr char kFolderKey[] = "files/scanFolder";

using anatomy::DeformedBy;

/// A button that opens a menu made anew every time.
QToolButton* menuButton(const QString& text, const char* name) {
  auto* button = new QToolButton;
  button->setObjectName(name);
  button->setText(text);
  button->setPopupMode(QToolButton::InstantPopup);
  button->setFocusPolicy(Qt::TabFocus);
  button->setMenu(new QMenu(button));
  return button;
}

}  // namespace

QToolButton* LandmarkEditor::createStraighten() {
  QToolButton* straighten = menuButton(tr("Straighten"), "straighten");
  straighten->setToolTip(tr("Undoes what bent the bone after death, going by its paired marks; the original is kept"));
  connect(straighten->menu(), &QMenu::aboutToShow, this, [this, straighten] { fillStraighten(*straighten->menu()); });
  return straighten;
}

QToolButton* LandmarkEditor::createMeasures() {
  QToolButton* measures = menuButton(tr("Measures"), "landmarkMeasures");
  measures->setToolTip(
      tr("Puts what the marks measure into the table, so that bones around this one that were not found follow it"));
  connect(measures->menu(), &QMenu::aboutToShow, this, [this, measures] { fillMeasures(*measures->menu()); });
  return measures;
}

/// "Length 412 mm (table: 398 mm, inferred)", one a measure, and all of them in one step.
void LandmarkEditor::fillMeasures(QMenu& menu) {
  menu.clear();
  const auto measures = anatomy::measuresOf(marks_.scan());
  const QString id = QString::fromStdString(toId(bone_));
  if (measures.empty()) {
    menu.addAction(tr("Nothing to measure yet: mark both rims, or both ends"))->setEnabled(false);
    return;
  }
  const auto enter = [this](std::vector<anatomy::MarkedMeasure> which, const QString& words) {
    enterMeasures(document_, bone_, which, words);
    if (marks_.hasScan()) view_->setPlace(boneFromScan(marks_.scan()));
  };
  menu.addAction(tr("Enter all in the table"), this,
                 [=] { enter(measures, tr("Measures of %1 into the table").arg(id)); });
  menu.addSeparator();
  for (const auto& measured : measures) {
    const anatomy::Cell& cell = marks_.sculpted().measures[measured.measure];
    const QString name = capital(measureName(measured.measure));
    const QString form = !cell.known()     ? tr("%1 %2 (table: blank)")
                         : cell.measured() ? tr("%1 %2 (table: %3)")
                                           : tr("%1 %2 (table: %3, inferred)");
    menu.addAction(filled(form, {name, measureValue(measured.measure, measured.value),
                                 measureValue(measured.measure, cell.value)}),
                   this, [=] { enter({measured}, tr("%1 of %2 into the table").arg(name, id)); });
  }
}

void LandmarkEditor::fillStraighten(QMenu& menu) {
  menu.clear();
  const auto add = [&](const QString& words, const Eigen::Matrix3d& map) {
    menu.addAction(words, this, [this, map, words] {
      changeScan(document_, anatomy::straightened(marks_.scan(), marks_.sculpted(), map),
                 tr("%1: %2").arg(QString::fromStdString(toId(bone_)), words));
      view_->setPlace(boneFromScan(marks_.scan()));
    });
  };
  try {
    const auto advised = anatomy::advisedStraightening(marks_.scan());
    QAction* advice = menu.addAction(advised.by ? tr("Advised: %1").arg(say(advised.why))
                                                : tr("Advised: leave it as it was found; %1").arg(say(advised.why)));
    advice->setObjectName("straightenAdvice");
    advice->setEnabled(false);
    for (const DeformedBy by : {DeformedBy::Shear, DeformedBy::Squash}) {
      const auto found = anatomy::straightening(marks_.scan(), by);
      const QString amount = by == DeformedBy::Shear ? tr("Undo shear of %1").arg(degrees(found.amount))
                                                     : tr("Undo compression of %1").arg(percent(found.amount, 1));
      const double scale = marks_.scan().scale;
      add(tr("%1 (pairs off by %2, then %3)")
              .arg(amount, millimetres(scale * found.before), millimetres(scale * found.asymmetry)),
          found.map);
      if (advised.by != by) continue;
      menu.actions().constLast()->setObjectName("straightenAdvised");
      menu.setDefaultAction(menu.actions().constLast());
    }
  } catch (const std::exception& error) {
    menu.addAction(capital(sayFailure(error)))->setEnabled(false);
  }
  menu.addSeparator();
  add(tr("As it was found"), Eigen::Matrix3d::Identity());
  menu.actions().last()->setEnabled(!marks_.scan().straighten.isIdentity(1e-12));
}

void LandmarkEditor::ask(bool save) {
  const QString folder =
      QSettings().value(kFolderKey, QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)).toString();
  auto* chooser = new QFileDialog(this, save ? tr("Export landmarks") : tr("Import landmarks"), folder,
                                  tr("Landmark tables (*.csv)"));
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
void LandmarkEditor::readMarks(const QString& file) {
  try {
    const std::string path = file.toStdString();
    const auto reading = anatomy::readLandmarkTable(files::readWhole(path), path);
    if (!reading.usable()) return tellFault(*this, say(reading.messages));
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
      return tellFault(*this, tr("%1 has no landmark of a bone that was imported.").arg(QFileInfo(file).fileName()));
    changeScans(document_, std::move(scans), tr("Landmarks from %1").arg(QFileInfo(file).fileName()));
    if (marks_.hasScan()) view_->setPlace(boneFromScan(marks_.scan()));
  } catch (const std::exception& error) {
    tellFault(*this, sayFailure(error));
  }
}

void LandmarkEditor::writeMarks(const QString& file) {
  anatomy::LandmarkTable table;
  for (const auto& kept : document_.project().scans)
    if (!kept.scan.landmarks.empty()) table.points[kept.scan.bone] = kept.scan.landmarks;
  try {
    files::writeWhole(file.toStdString(), anatomy::writeLandmarkTable(table));
  } catch (const std::exception& error) {
    tellFault(*this, sayFailure(error));
  }
}

}  // namespace zyga::ui
