#include "app/window/samples.h"

#include <QCoreApplication>
#include <QDir>

namespace zyga::ui {

QStringList sampleFiles() {
  const QString program = QCoreApplication::applicationDirPath();
  for (const QString& place :
       {program + "/samples", program + "/../share/zygapose/samples", QString::fromUtf8(ZYGAPOSE_SAMPLES_DIR)}) {
    const QDir folder(place);
    QStringList files;
    for (const QString& name : folder.entryList({"*.zyga", "*.csv"}, QDir::Files, QDir::Name))
      files += folder.absoluteFilePath(name);
    if (!files.isEmpty()) return files;
  }
  return {};
}

}  // namespace zyga::ui
