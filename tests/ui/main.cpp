#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "core/task/memory.h"
#include "ui/words/language.h"

#ifdef ZYGAPOSE_READS_SCANS
#include <string_view>

#include "core/files/scan/scan_process.h"
#endif

/// Settings and caches of the tests are kept apart from the user's. Without a display the offscreen platform serves
/// everything but OpenGL; the tests of the window itself want a display (Xvfb will do).
int main(int argc, char** argv) {
#ifdef ZYGAPOSE_READS_SCANS
  // Reading of scans starts this program again, as it does the real one.
  if (argc > 1 && argv[1] == zyga::files::protocol::kVerb) return zyga::files::readScanProcess(argc - 1, argv + 1);
#endif
  zyga::task::keepFreedMemory();
  testing::InitGoogleMock(&argc, argv);
  if (GTEST_FLAG_GET(list_tests)) return RUN_ALL_TESTS();
#if defined(ZYGAPOSE_DISPLAY) && ZYGAPOSE_DISPLAY == 2
  if (qEnvironmentVariableIsSet("ZYGAPOSE_DISPLAY_2")) {
    qputenv("DISPLAY", qgetenv("ZYGAPOSE_DISPLAY_2"));
    qputenv("XAUTHORITY", qgetenv("ZYGAPOSE_XAUTHORITY_2"));
  }
#endif
  if (!qEnvironmentVariableIsSet("DISPLAY") && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
    qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);
  // Tests run beside each other; one that clears the settings must not clear those of a window that is open elsewhere.
  const QTemporaryDir settings;
  QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
  QLocale::setDefault(QLocale::c());
  QApplication application(argc, argv);
  QCoreApplication::setOrganizationName("zygapose-tests");
  QCoreApplication::setApplicationName("zygapose");
  zyga::ui::speak("en");
  return RUN_ALL_TESTS();
}
