#include "app/window/main_window.h"
#include "ui/dialogs/sheet/sheet_dialog.h"
#include "ui/parts/message_bar.h"

namespace zyga::ui {

void MainWindow::designSheet() {
  if (!document_.hasProject()) return;
  if (document_.meshes().empty())
    return messages_->tell(tr("The bones are still being sculpted. Try again when they are on screen."));
  auto* dialog = new SheetDialog(document_, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  // As large as the window, so that the page can be judged.
  dialog->resize(size().boundedTo(QSize(1320, 820)) - QSize(40, 60));
  dialog->open();
}

}  // namespace zyga::ui
