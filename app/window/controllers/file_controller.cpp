#include "app/window/controllers/file_controller.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QGuiApplication>
#include <QMessageBox>
#include <QPushButton>
#include <QScopeGuard>
#include <QSettings>
#include <QStandardPaths>

#include "app/window/controllers/scans_amiss.h"
#include "app/window/recent_files.h"
#include "ui/dialogs/table_faults_dialog.h"
#include "ui/document/autosave.h"
#include "ui/parts/message_bar.h"
#include "ui/words/say.h"
#include "ui/words/scan_words.h"

namespace zyga::ui {
namespace {

constexpr char kFolderKey[] = "files/folder";

QString toQString(const std::filesystem::path& path) { return QString::fromStdString(path.string()); }

/// Letters that a file's name may hold everywhere.
QString fileNameFor(const std::string& specimen) {
  QString name = QString::fromStdString(specimen).simplified();
  for (QChar& c : name)
    if (QString("/\\:*?\"<>|").contains(c)) c = '-';
  return name.isEmpty() ? QString("skeleton") : name;
}

}  // namespace

FileController::FileController(Document& document, MessageBar& messages, RecentFiles& recent, QWidget& window,
                               const std::filesystem::path& signs)
    : QObject(&window),
      document_(document),
      messages_(messages),
      recent_(recent),
      window_(window),
      guard_(signs),
      amiss_(new ScansAmiss(document, messages, window)) {
  connect(&guard_, &FileGuard::strayed, this, &FileController::tellStrayed);
}

QString FileController::startFolder() const {
  const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
  return QSettings().value(kFolderKey, documents).toString();
}

void FileController::chooseTable() {
  auto* dialog = new QFileDialog(&window_, tr("New from a measurement table"), startFolder());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::ExistingFile);
  dialog->setNameFilters({tr("Measurement tables (*.csv)"), tr("All files (*)")});
  connect(dialog, &QFileDialog::fileSelected, this, &FileController::open);
  dialog->open();
}

void FileController::chooseProject() {
  auto* dialog = new QFileDialog(&window_, tr("Open"), startFolder());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setFileMode(QFileDialog::ExistingFile);
  dialog->setNameFilters({tr("Zygapose projects and tables (*.zyga *.zygazip *.csv)"), tr("All files (*)")});
  connect(dialog, &QFileDialog::fileSelected, this, &FileController::open);
  dialog->open();
}

void FileController::open(const QString& file) { read(file, true); }

void FileController::openQuietly(const QString& file) { read(file, false); }

void FileController::read(const QString& file, bool remember) {
  if (remember) QSettings().setValue(kFolderKey, QFileInfo(file).absolutePath());
  const std::filesystem::path path = QFileInfo(file).absoluteFilePath().toStdString();
  reader_.start([this, path, remember](const Worker::Control&) -> Worker::Delivery {
    auto opened = std::make_shared<Opened>(openFile(path));
    return [this, opened, remember] { receive(*opened, remember); };
  });
}

void FileController::receive(const Opened& opened, bool remember) {
  if (opened.project) return whenSafe([this, opened, remember] { adopt(opened, remember); });
  const QString name = toQString(opened.file.filename());
  recent_.remove(toQString(opened.file));
  if (opened.messages.empty()) return messages_.warn(say(opened.fault));
  auto* dialog = new TableFaultsDialog(name, opened.messages, &window_);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->open();
}

void FileController::adopt(Opened opened, bool remember) {
  messages_.clearPassing();
  document_.open(std::move(*opened.project), opened.fromTable ? std::filesystem::path() : opened.file);
  guardFile();
  if (remember) recent_.add(toQString(opened.file));
  if (!opened.messages.empty()) {
    const QString name = toQString(opened.file.filename());
    messages_.tell(tr("%1 was opened; remarks on the table: %2.").arg(name).arg(opened.messages.size()),
                   {{tr("Show"),
                     [this, name, messages = opened.messages] {
                       auto* dialog = new TableFaultsDialog(name, messages, &window_);
                       dialog->setAttribute(Qt::WA_DeleteOnClose);
                       dialog->open();
                     }}},
                   MessageBar::Stays::WithProject);
  }
  toldPlace_.clear();
  amiss_->tell();
  emit this->opened();
}

void FileController::openUnsaved(files::Project project) {
  messages_.clearPassing();
  document_.open(std::move(project), {});
  document_.undoStack().resetClean();
  guardFile();
  toldPlace_.clear();
  amiss_->tell();
  emit opened();
}

void FileController::recover(const Leftover& leftover, Autosave& autosave) {
  reader_.start([this, leftover, &autosave](const Worker::Control&) -> Worker::Delivery {
    auto read = std::make_shared<Opened>(openFile(leftover.file));
    // Autosave could keep no mesh that was not there: it may be back beside the file the work came from.
    if (read->project && !leftover.original.empty()) files::takeScansOf(*read->project, leftover.original);
    return [this, leftover, &autosave, read] {
      if (!read->project) return messages_.warn(say(read->fault));
      whenSafe([this, leftover, &autosave, read] {
        messages_.clearPassing();
        document_.open(std::move(*read->project), leftover.original);
        document_.undoStack().resetClean();
        autosave.takeOver(leftover);
        guardFile();
        toldPlace_.clear();
        amiss_->tell();
        emit opened();
      });
    };
  });
}

void FileController::save(std::function<void()> then) {
  if (!document_.hasProject()) return;
  if (document_.path().empty()) return saveAs(std::move(then));
  if (guard_.look() == FileGuard::State::Changed) return askBeforeReplacing(then);
  writeTo(toQString(document_.path()), document_.form(), then);
}

void FileController::saveAs(std::function<void()> then) {
  if (!document_.hasProject()) return;
  auto* dialog = new QFileDialog(&window_, tr("Save as"), startFolder());
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->setAcceptMode(QFileDialog::AcceptSave);
  const QString beside = tr("Zygapose project, scans in a folder beside it (*.zyga)");
  const QString oneFile = tr("Zygapose project as one file, scans inside (*.zygazip)");
  dialog->setNameFilters({beside, oneFile});
  connect(dialog, &QFileDialog::filterSelected, dialog, [dialog, oneFile](const QString& filter) {
    const QString ending = filter == oneFile ? "zygazip" : "zyga";
    dialog->setDefaultSuffix(ending);
    // The name follows the kind that was chosen, as the ending is what counts.
    const QFileInfo named(dialog->selectedFiles().value(0));
    if (!named.completeBaseName().isEmpty() && named.suffix() != ending)
      dialog->selectFile(named.completeBaseName() + '.' + ending);
  });
  const bool inOne = document_.form() == files::ProjectForm::OneFile;
  dialog->selectNameFilter(inOne ? oneFile : beside);
  dialog->setDefaultSuffix(inOne ? "zygazip" : "zyga");
  dialog->selectFile(document_.path().empty() ? fileNameFor(document_.specimen().name) + ".zyga"
                                              : toQString(document_.path()));
  connect(dialog, &QFileDialog::fileSelected, this,
          [this, dialog, oneFile, then = std::move(then)](const QString& file) {
            QSettings().setValue(kFolderKey, QFileInfo(file).absolutePath());
            // The ending says it, and where it is another one the kind that was chosen.
            const QString ending = QFileInfo(file).suffix();
            const bool asOne = ending == "zygazip" || (ending != "zyga" && dialog->selectedNameFilter() == oneFile);
            writeTo(file, asOne ? files::ProjectForm::OneFile : files::ProjectForm::Beside, then);
          });
  dialog->open();
}

void FileController::writeTo(const QString& file, files::ProjectForm form, const std::function<void()>& then) {
  const std::filesystem::path path = QFileInfo(file).absoluteFilePath().toStdString();
  QString place;
  try {
    QGuiApplication::setOverrideCursor(Qt::WaitCursor);
    const auto restore = qScopeGuard([] { QGuiApplication::restoreOverrideCursor(); });
    place = scansSavedSaid(files::saveProject(document_.project(), path, form)).join(' ');
  } catch (const std::exception& error) {
    return messages_.warn(sayFailure(error), {{tr("Save as…"), [this] { saveAs(); }}}, MessageBar::Stays::WithProject);
  }
  document_.setSavedAs(path);
  guardFile();
  recent_.add(toQString(path));
  // Every saving says it in passing, the first to a place so that it stays.
  if (!place.isEmpty() && place != toldPlace_) messages_.tell(place, {}, MessageBar::Stays::WithProject);
  toldPlace_ = place;
  emit saved(place.isEmpty() ? tr("Saved as %1").arg(toQString(path)) : place);
  if (then) then();
}

void FileController::tellScansAmiss() { amiss_->tell(); }

bool FileController::busy() const { return reader_.busy() || amiss_->busy(); }

void FileController::whenSafe(std::function<void()> then) {
  if (!document_.hasUnsavedWork()) return then();
  auto* box =
      new QMessageBox(QMessageBox::NoIcon, tr("Unsaved work"),
                      tr("“%1” has changes that no file holds.").arg(QString::fromStdString(document_.specimen().name)),
                      QMessageBox::NoButton, &window_);
  box->setObjectName("unsavedWork");
  box->setAttribute(Qt::WA_DeleteOnClose);
  box->setInformativeText(tr("Save them first, or give them up."));
  QPushButton* keep = box->addButton(tr("Save"), QMessageBox::AcceptRole);
  QPushButton* drop = box->addButton(tr("Give them up"), QMessageBox::DestructiveRole);
  QPushButton* stay = box->addButton(tr("Go back"), QMessageBox::RejectRole);
  box->setDefaultButton(keep);
  box->setEscapeButton(stay);
  connect(keep, &QPushButton::clicked, this, [this, then] { save(then); });
  connect(drop, &QPushButton::clicked, this, [this, then] {
    document_.undoStack().setClean();  // given up: nothing is left to be asked about
    then();
  });
  box->open();
}

}  // namespace zyga::ui
