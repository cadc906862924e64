#include "app/window/run_window.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QSettings>
#include <QTemporaryDir>
#include <QTimer>
#include <cstdio>

#include "app/window/main_window.h"
#include "ui/theme/theme.h"

namespace zyga::app {

using ui::Document, ui::MainWindow, ui::Scheme, ui::ThemeSwitch;

namespace {

const QString kDark = "dark", kLight = "light", kSize = "size", kFrame = "frame", kScreenshot = "screenshot";

void addOptions(QCommandLineParser& parser) {
  parser.setApplicationDescription("Poses a sauropod skeleton and judges each joint by its bones.");
  parser.addHelpOption();
  parser.addVersionOption();
  parser.addPositionalArgument("file", "Project (.zyga) or measurement table (.csv).", "[FILE]");
  parser.addOption({kDark, "Open in the dark theme."});
  parser.addOption({kLight, "Open in the light theme."});
  parser.addOption({kSize, "Size of the window.", "WxH"});
  parser.addOption({kFrame, "Show this bone close up.", "BONE"});
  parser.addOption({kScreenshot, "Write a picture of the window and close it.", "FILE.png"});
}

QSize sizeFrom(const QString& text) {
  const QStringList parts = text.split('x');
  return parts.size() == 2 ? QSize(parts[0].toInt(), parts[1].toInt()) : QSize();
}

bool startsDark(const QCommandLineParser& parser) {
  if (parser.isSet(kDark)) return true;
  return !parser.isSet(kLight) && QSettings().value("look/dark", false).toBool();
}

/// Waits for the bones and for the view to come to rest, then writes the picture and closes.
void screenshotWhenSettled(MainWindow& window, const QString& file, const QString& bone) {
  auto* wait = new QTimer(&window);
  constexpr int kStep = 100, kRest = 1500;  // ms
  QObject::connect(wait, &QTimer::timeout, &window, [&window, wait, file, bone] {
    if (!window.settled()) return;
    wait->stop();
    if (!bone.isEmpty()) window.frame(bone);
    QTimer::singleShot(kRest, &window, [&window, file] {
      if (!window.picture().save(file)) std::fprintf(stderr, "%s could not be written\n", qPrintable(file));
      window.close();
    });
  });
  wait->start(kStep);
}

}  // namespace

int runWindow(int argc, char** argv) {
  QApplication application(argc, argv);
  QCoreApplication::setOrganizationName("zygapose");
  QCoreApplication::setApplicationName("zygapose");
  QCoreApplication::setApplicationVersion(ZYGAPOSE_VERSION);
  QGuiApplication::setDesktopFileName("zygapose");
  QGuiApplication::setWindowIcon(QIcon(":/icons/zygapose.svg"));
  QCommandLineParser parser;
  addOptions(parser);
  parser.process(application);
  const QSize size = sizeFrom(parser.value(kSize));
  if (parser.positionalArguments().size() > 1 || (parser.isSet(kSize) && size.isEmpty())) {
    std::fputs("usage: zygapose [FILE] [--dark|--light] [--size WxH] [--frame BONE] [--screenshot FILE.png]\n", stderr);
    return 2;
  }
  // A picture of the window shows it as it first opens, and leaves the person's own arrangement alone.
  const QTemporaryDir ownSettings;
  if (parser.isSet(kScreenshot)) {
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, ownSettings.path());
  }
  ThemeSwitch::instance().apply(application, startsDark(parser) ? Scheme::Dark : Scheme::Light);
  Document document;
  MainWindow window(document);
  if (!size.isEmpty()) window.resize(size);
  window.show();
  if (parser.positionalArguments().isEmpty())
    window.openUsual();
  else
    window.open(parser.positionalArguments().first());
  if (parser.isSet(kScreenshot)) screenshotWhenSettled(window, parser.value(kScreenshot), parser.value(kFrame));
  return QApplication::exec();
}

}  // namespace zyga::app
