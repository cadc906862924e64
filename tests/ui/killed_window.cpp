// A window that somebody works in until it is killed: opens TABLE, turns a joint, tells when the work has been kept in
// RECOVERY, and goes on until the end comes from outside.
#include <QApplication>
#include <QStandardPaths>
#include <cstdio>

#include "app/window/main_window.h"

using namespace zyga::ui;

int main(int argc, char** argv) {
  QStandardPaths::setTestModeEnabled(true);
  QApplication application(argc, argv);
  QCoreApplication::setOrganizationName("zygapose-tests");
  QCoreApplication::setApplicationName("killed");
  const QStringList words = QCoreApplication::arguments();
  if (words.size() != 3) return 2;
  Document document;
  MainWindow window(document, {std::filesystem::path(ZYGAPOSE_TEST_CACHE) / "zygapose", words[2].toStdString()});
  auto* autosave = window.findChild<Autosave*>();
  autosave->setInterval(50);
  QObject::connect(autosave, &Autosave::written, [] {
    std::puts("kept");
    std::fflush(stdout);
  });
  QObject::connect(&document, &Document::changed, &document, [&document](Changes what) {
    if (!(what & Change::Specimen)) return;
    zyga::kinematics::Pose pose = document.pose();
    pose[document.specimen().findJoint("C6-C7").value()].x() = 0.05;
    document.changePose(pose, "Bend");
  });
  window.show();
  window.open(words[1]);
  return QApplication::exec();
}
