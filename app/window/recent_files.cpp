#include "app/window/recent_files.h"

#include <QDir>
#include <QFileInfo>
#include <QMenu>
#include <QSettings>

namespace zyga::ui {
namespace {

constexpr int kMost = 8;
constexpr char kKey[] = "files/recent";

/// "Name (folder)" with the home folder as ~; an ampersand is no mnemonic here.
QString label(const QString& file) {
  const QFileInfo info(file);
  QString folder = info.absolutePath();
  if (folder.startsWith(QDir::homePath())) folder.replace(0, QDir::homePath().size(), "~");
  return QString("%1  (%2)").arg(info.fileName(), folder).replace('&', "&&");
}

}  // namespace

RecentFiles::RecentFiles(QObject* parent) : QObject(parent) {}

QStringList RecentFiles::files() const { return QSettings().value(kKey).toStringList(); }

void RecentFiles::keep(const QStringList& files) {
  QSettings().setValue(kKey, files);
  emit changed();
}

void RecentFiles::add(const QString& file) {
  QStringList list = files();
  const QString whole = QFileInfo(file).absoluteFilePath();
  list.removeAll(whole);
  list.prepend(whole);
  keep(list.mid(0, kMost));
}

void RecentFiles::remove(const QString& file) {
  QStringList list = files();
  list.removeAll(file);
  keep(list);
}

void RecentFiles::clear() { keep({}); }

void RecentFiles::fill(QMenu& menu) {
  const auto refill = [this, &menu] {
    menu.clear();
    for (const QString& file : files()) menu.addAction(label(file), this, [this, file] { emit chosen(file); });
    menu.setEnabled(!menu.isEmpty());
    if (menu.isEmpty()) return;
    menu.addSeparator();
    menu.addAction(tr("Forget these"), this, &RecentFiles::clear);
  };
  connect(this, &RecentFiles::changed, &menu, refill);
  refill();
}

}  // namespace zyga::ui
