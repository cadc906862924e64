#include "app/window/run_window.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QIcon>
#include <QOpenGLContext>
#include <QOpenGLFunctions>
#include <QSettings>
#include <QTemporaryDir>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <memory>
#include <utility>

#include "app/window/main_window.h"
#include "core/task/memory.h"
#include "ui/settings/preferences.h"
#include "ui/theme/theme.h"
#include "ui/viewport/viewport.h"
#include "ui/words/language.h"

namespace zyga::app {

using ui::Document, ui::MainWindow, ui::Preferences, ui::Scheme, ui::ThemeSwitch;

namespace {

const QString kDark = "dark", kLight = "light", kContrast = "contrast", kText = "text", kLanguage = "language",
              kSize = "size", kFrame = "frame", kScreenshot = "screenshot", kTellStart = "tell-start";

void addOptions(QCommandLineParser& parser) {
  parser.setApplicationDescription("Poses a sauropod skeleton and judges each joint by its bones.");
  parser.addHelpOption();
  parser.addVersionOption();
  parser.addPositionalArgument("file", "Project (.zyga) or measurement table (.csv).", "[FILE]");
  parser.addOption({kDark, "Open in the dark theme."});
  parser.addOption({kLight, "Open in the light theme."});
  parser.addOption({kContrast, "Open in high contrast."});
  parser.addOption({kText, "Size of the text, 100 to 200 per cent of the usual.", "PERCENT"});
  parser.addOption({kLanguage, "Language of the window: en or zh_CN.", "CODE"});
  parser.addOption({kSize, "Size of the window.", "WxH"});
  parser.addOption({kFrame, "Show this bone close up.", "BONE"});
  parser.addOption({kScreenshot, "Write a picture of the window and close it.", "FILE.png"});
  parser.addOption({kTellStart, "Say when the window and when all bones are drawn, and close it."});
}

QSize sizeFrom(const QString& text) {
  const QStringList parts = text.split('x');
  return parts.size() == 2 ? QSize(parts[0].toInt(), parts[1].toInt()) : QSize();
}

/// What the person has set, and for this time what the command line says.
Preferences preferences(const QCommandLineParser& parser) {
  Preferences p = Preferences::read();
  if (parser.isSet(kDark)) p.look.scheme = Scheme::Dark;
  if (parser.isSet(kLight)) p.look.scheme = Scheme::Light;
  if (parser.isSet(kContrast)) p.look.highContrast = true;
  if (parser.isSet(kText))
    p.look.textPercent = std::clamp(parser.value(kText).toInt(), ui::Look::kLeastText, ui::Look::kMostText);
  if (parser.isSet(kLanguage)) p.language = parser.value(kLanguage);
  return p;
}

/// The window, and the one that takes its place when language or size of the text are changed. The document stays.
class WindowOnScreen : public QObject {
 public:
  WindowOnScreen(QApplication& application, Document& document, const Preferences& wanted)
      : application_(application), document_(document) {
    open(wanted);
  }
  MainWindow& window() { return *window_; }

 private:
  void open(const Preferences& wanted) {
    ui::speak(wanted.language);
    ThemeSwitch::instance().apply(application_, wanted.look);
    window_ = std::make_unique<MainWindow>(document_);
    connect(window_.get(), &MainWindow::anotherWindowAsked, this, &WindowOnScreen::openAnother, Qt::QueuedConnection);
  }
  void openAnother() {
    const bool quits = QGuiApplication::quitOnLastWindowClosed();
    QGuiApplication::setQuitOnLastWindowClosed(false);
    window_->putAway();
    window_.reset();
    open(Preferences::read());
    window_->show();
    QGuiApplication::setQuitOnLastWindowClosed(quits);
  }

  QApplication& application_;
  Document& document_;
  std::unique_ptr<MainWindow> window_;
};

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

/// For measuring the start, as lines on standard output: what draws ("renderer NAME"), "window" once the first picture
/// is on screen, "likeness" once all bones are in it, rough ones too, "bones" once they are in full detail. Then the
/// window closes.
void tellStart(MainWindow& window) {
  const auto say = [](const QByteArray& line) {
    std::puts(line.constData());
    std::fflush(stdout);
  };
  auto* view = window.findChild<ui::Viewport*>();
  QObject::connect(view, &QOpenGLWidget::frameSwapped, &window,
                   [&window, view, say, told = false, shown = false]() mutable {
                     if (!std::exchange(told, true)) {
                       say("window");
                       view->makeCurrent();
                       const auto* name = view->context()->functions()->glGetString(GL_RENDERER);
                       say(QByteArray("renderer ") + reinterpret_cast<const char*>(name));
                       view->doneCurrent();
                     }
                     if (!shown && view->showsBones()) {
                       shown = true;
                       say("likeness");
                     }
                     if (!view->inFullDetail()) return;
                     QObject::disconnect(view, &QOpenGLWidget::frameSwapped, &window, nullptr);
                     say("bones");
                     QTimer::singleShot(0, &window, &QWidget::close);
                   });
}

}  // namespace

int runWindow(int argc, char** argv) {
  task::keepFreedMemory();
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
    std::fputs(
        "usage: zygapose [FILE] [--dark|--light] [--contrast] [--text PERCENT] [--language CODE] [--size WxH] [--frame "
        "BONE] "
        "[--screenshot FILE.png] [--tell-start]\n",
        stderr);
    return 2;
  }
  // A picture of the window shows it as it first opens, and leaves the person's own arrangement alone.
  const QTemporaryDir ownSettings;
  if (parser.isSet(kScreenshot)) {
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, ownSettings.path());
    Preferences plain;
    plain.hints = false;
    plain.write();
  }
  Document document;
  WindowOnScreen screen(application, document, preferences(parser));
  MainWindow& window = screen.window();
  if (!size.isEmpty()) window.resize(size);
  window.show();
  if (parser.positionalArguments().isEmpty())
    window.openUsual();
  else
    window.open(parser.positionalArguments().first());
  if (parser.isSet(kTellStart)) tellStart(window);
  if (parser.isSet(kScreenshot)) screenshotWhenSettled(window, parser.value(kScreenshot), parser.value(kFrame));
  return QApplication::exec();
}

}  // namespace zyga::app
