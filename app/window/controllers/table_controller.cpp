#include "app/window/controllers/table_controller.h"

#include <QAction>
#include <QFileDialog>
#include <QFileInfo>
#include <QSettings>
#include <QStandardPaths>
#include <algorithm>

#include "app/window/controllers/menu_action.h"
#include "core/files/disk/atomic_file.h"
#include "ui/commands/table_edits.h"
#include "ui/dialogs/measurement_dialog.h"
#include "ui/dialogs/table_faults_dialog.h"
#include "ui/document/open_file.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/say.h"
#include "ui/words/table_words.h"

namespace zyga::ui {
namespace {

constexpr char kTableFolderKey[] = "files/folder";

QFileDialog* tableFileDialog(QWidget* parent, const QString& title, const QString& folder) {
  auto* dialog = new QFileDialog(parent, title, folder);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setNameFilters({TableController::tr("Measurement tables (*.csv)"), TableController::tr("All files (*)")});
  return dialog;
}

}  // namespace

TableController::TableController(Document& document, QWidget& window)
    : QObject(&window), document_(document), window_(window) {}

QAction* TableController::addTo(QMenu& menu) {
  QAction* action = addMenuAction(menu, this, tr("Measurement &table…"), QKeySequence("Ctrl+T"), [this] { show(); });
  action->setObjectName("openMeasurementTable");
  return action;
}

void TableController::show() {
  if (!document_.hasProject()) return;
  if (!dialog_) {
    dialog_ = new MeasurementDialog(document_, &window_);
    dialog_->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog_, &MeasurementDialog::openAsked, this, &TableController::chooseTable);
    connect(dialog_, &MeasurementDialog::saveAsked, this, &TableController::chooseWhereToSave);
    connect(dialog_, &MeasurementDialog::blankAsked, this, &TableController::chooseWhereToSaveBlank);
  }
  dialog_->show();
  dialog_->raise();
  dialog_->activateWindow();
  if (const auto bone = document_.selectedBone()) dialog_->showBone(document_.specimen()[*bone].name);
}

QString TableController::folder() const {
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  return QSettings().value(kTableFolderKey, documents).toString();
}

void TableController::chooseTable() {
  QFileDialog* dialog = tableFileDialog(dialog_, tr("Open a measurement table into this project"), folder());
  dialog->setFileMode(QFileDialog::ExistingFile);
  connect(dialog, &QFileDialog::fileSelected, this, &TableController::takeTable);
  dialog->open();
}

void TableController::takeTable(const QString& file) {
  QSettings().setValue(kTableFolderKey, QFileInfo(file).absolutePath());
  const QString name = QFileInfo(file).fileName();
  Opened opened = openFile(QFileInfo(file).absoluteFilePath().toStdString());
  if (!dialog_) return;
  const bool remarks = !opened.messages.empty();
  if (!opened.fromTable && opened.project) return dialog_->tell(tr("%1 is no measurement table.").arg(name));
  if (!opened.project && !remarks) return dialog_->tell(say(opened.fault));
  if (opened.project) {
    const Obstacle obstacle = replaceTable(document_, opened.project->table, tr("Table from %1").arg(name));
    if (obstacle.any())
      return dialog_->tell(
          filled(translated(QT_TRANSLATE_NOOP("words", "%1; %2")), {say(obstacle.cause), say(obstacle.mend)}));
  }
  if (!remarks) return;
  auto* faults = new TableFaultsDialog(name, opened.messages, dialog_);
  faults->setAttribute(Qt::WA_DeleteOnClose);
  faults->open();
}

void TableController::chooseWhereToSave() {
  QFileDialog* dialog = tableFileDialog(dialog_, tr("Save the measurement table"), folder());
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix("csv");
  QString name = QString::fromStdString(document_.specimen().name).simplified();
  for (QChar& c : name)
    if (QString("/\\:*?\"<>|").contains(c)) c = '-';
  dialog->selectFile((name.isEmpty() ? QString("skeleton") : name) + ".csv");
  connect(dialog, &QFileDialog::fileSelected, this,
          [this](const QString& file) { write(file, anatomy::writeMeasurementTable(document_.project().table)); });
  dialog->open();
}

void TableController::chooseWhereToSaveBlank() {
  QFileDialog* dialog = tableFileDialog(dialog_, tr("Save a blank measurement table"), folder());
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  dialog->setDefaultSuffix("csv");
  const anatomy::MeasurementTable& table = document_.project().table;
  dialog->selectFile(QString::fromUtf8(toText(table.plan).data()).replace(' ', '_') + "_blank.csv");
  connect(dialog, &QFileDialog::fileSelected, this, [this](const QString& file) {
    const anatomy::MeasurementTable& present = document_.project().table;
    write(file, blankTableText(present.plan, present.counts));
  });
  dialog->open();
}

void TableController::write(const QString& file, const std::string& text) {
  QSettings().setValue(kTableFolderKey, QFileInfo(file).absolutePath());
  try {
    files::writeWhole(QFileInfo(file).absoluteFilePath().toStdString(), text);
    if (dialog_) dialog_->tell({});
  } catch (const std::exception& error) {
    if (dialog_) dialog_->tell(sayFailure(error));
  }
}

}  // namespace zyga::ui
