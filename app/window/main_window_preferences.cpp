#include <QApplication>
#include <QSettings>

#include "app/window/flows/file_flow.h"
#include "app/window/main_window.h"
#include "ui/dialogs/first_steps.h"
#include "ui/dialogs/preferences_dialog.h"
#include "ui/help/help_window.h"

/// What a person sets for themselves, and what explains the program to them.
namespace zyga::ui {

void MainWindow::setDark(bool dark) {
  Look look = ThemeSwitch::instance().look();
  look.scheme = dark ? Scheme::Dark : Scheme::Light;
  ThemeSwitch::instance().apply(*qApp, look);
  QSettings().setValue("look/dark", dark);
}

void MainWindow::askPreferences() {
  Preferences now = Preferences::read();
  now.look = ThemeSwitch::instance().look();
  auto* dialog = new PreferencesDialog(now, this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  connect(dialog, &QDialog::accepted, this, [this, dialog, now] {
    const Preferences chosen = dialog->chosen();
    chosen.write();
    if (chosen == now) return;
    if (chosen.language != now.language || chosen.look.textPercent != now.look.textPercent || chosen.hints != now.hints)
      return emit anotherWindowAsked();
    ThemeSwitch::instance().apply(*qApp, chosen.look);
    dark_->setChecked(chosen.look.scheme == Scheme::Dark);
  });
  dialog->open();
}

QWidget* MainWindow::createFirstSteps() {
  auto* steps = new FirstSteps;
  connect(steps, &FirstSteps::sentAway, this, [steps] {
    Preferences kept = Preferences::read();
    kept.hints = false;
    kept.write();
    steps->deleteLater();
  });
  return steps;
}

void MainWindow::openHelp(const QString& page) {
  const QString wanted = page.isEmpty() ? HelpWindow::pageFor(QApplication::focusWidget()) : page;
  auto* help = findChild<HelpWindow*>();
  if (!help) help = new HelpWindow(this);
  help->showPage(wanted);
  help->show();
  help->raise();
  help->activateWindow();
}

void MainWindow::putAway() {
  keepLayout();
  autosave_.discard();
}

/// A document that an earlier window has opened: everything that shows it starts from it.
void MainWindow::takeOpenDocument() {
  if (!document_.hasProject()) return;
  emit document_.changed(Change::Everything);
  files_->guardFile();
  autosave_.write();
  updateTitle();
  updateActions();
}

}  // namespace zyga::ui
