#include <QMessageBox>
#include <QPushButton>

#include "app/window/controllers/file_controller.h"
#include "ui/parts/message_bar.h"

/// What happens to the open file outside this window, and what a person can do about it.
namespace zyga::ui {
namespace {

QString nameOf(const Document& document) { return QString::fromStdString(document.path().filename().string()); }

}  // namespace

void FileController::guardFile() {
  guard_.take(document_.path());
  if (!guard_.heldElsewhere()) return;
  messages_.warn(tr("%1 is open in another window too. Of two savings the later one stays; save this one under another "
                    "name to keep both.")
                     .arg(nameOf(document_)),
                 {{tr("Save as…"), [this] { saveAs(); }}}, MessageBar::Stays::WithProject);
}

void FileController::tellStrayed(FileGuard::State state) {
  // No file holds any longer what this window shows, so it counts as unsaved.
  const bool hadUnsaved = document_.hasUnsavedWork();
  document_.undoStack().resetClean();
  if (state == FileGuard::State::Missing)
    return messages_.warn(
        tr("%1 was moved or deleted. What is open here is still whole: save it to write the file anew.")
            .arg(nameOf(document_)),
        {{tr("Save"), [this] { save(); }}, {tr("Save as…"), [this] { saveAs(); }}}, MessageBar::Stays::WithProject);
  const QString file = QString::fromStdString(document_.path().string());
  const auto readAnew = [this, file, hadUnsaved] {
    if (!hadUnsaved) document_.undoStack().setClean();  // nothing of one's own would be lost
    open(file);
  };
  messages_.warn(tr("%1 was changed by another program or window. This window still shows what it had read.")
                     .arg(nameOf(document_)),
                 {{tr("Read it anew"), readAnew}, {tr("Save as…"), [this] { saveAs(); }}},
                 MessageBar::Stays::WithProject);
}

void FileController::askBeforeReplacing(const std::function<void()>& then) {
  auto* box = new QMessageBox(
      QMessageBox::NoIcon, tr("Changed elsewhere"),
      tr("“%1” was changed by another program or window since it was opened here.").arg(nameOf(document_)),
      QMessageBox::NoButton, &window_);
  box->setObjectName("changedElsewhere");
  box->setAttribute(Qt::WA_DeleteOnClose);
  box->setInformativeText(tr("Saving here replaces what was written there. Another name keeps both."));
  QPushButton* other = box->addButton(tr("Save as…"), QMessageBox::AcceptRole);
  QPushButton* replace = box->addButton(tr("Replace it"), QMessageBox::DestructiveRole);
  QPushButton* stay = box->addButton(tr("Go back"), QMessageBox::RejectRole);
  box->setDefaultButton(other);
  box->setEscapeButton(stay);
  connect(other, &QPushButton::clicked, this, [this, then] { saveAs(then); });
  connect(replace, &QPushButton::clicked, this,
          [this, then] { writeTo(QString::fromStdString(document_.path().string()), document_.form(), then); });
  box->open();
}

}  // namespace zyga::ui
