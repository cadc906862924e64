#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <QApplication>
#include <QLocale>
#include <QStandardPaths>

/// Settings and caches of the tests are kept apart from the user's. Without a display the offscreen platform serves
/// everything but OpenGL; the tests of the window itself want a display (Xvfb will do).
int main(int argc, char** argv) {
  testing::InitGoogleMock(&argc, argv);
  if (GTEST_FLAG_GET(list_tests)) return RUN_ALL_TESTS();
  if (!qEnvironmentVariableIsSet("DISPLAY") && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
    qputenv("QT_QPA_PLATFORM", "offscreen");
  QStandardPaths::setTestModeEnabled(true);
  QLocale::setDefault(QLocale::c());
  QApplication application(argc, argv);
  QCoreApplication::setOrganizationName("zygapose-tests");
  QCoreApplication::setApplicationName("zygapose");
  return RUN_ALL_TESTS();
}
