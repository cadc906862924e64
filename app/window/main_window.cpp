#include "app/window/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QMimeData>
#include <QPainter>
#include <QSettings>
#include <QStatusBar>
#include <QVBoxLayout>
#include <utility>

#include "app/window/controllers/animal_from_scans.h"
#include "app/window/controllers/file_controller.h"
#include "app/window/controllers/output_controller.h"
#include "app/window/controllers/report_controller.h"
#include "app/window/controllers/scan_controller.h"
#include "app/window/controllers/table_controller.h"
#include "app/window/docks/docks.h"
#include "app/window/recent_files.h"
#include "app/window/samples.h"
#include "app/window/window_layout.h"
#include "ui/dialogs/first_steps.h"
#include "ui/dialogs/preferences_dialog.h"
#include "ui/help/help_window.h"
#include "ui/panels/assumptions_panel.h"
#include "ui/panels/bones_panel.h"
#include "ui/panels/findings_panel.h"
#include "ui/panels/joint/joint_view.h"
#include "ui/panels/poses_panel.h"
#include "ui/panels/readouts.h"
#include "ui/parts/elided_label.h"
#include "ui/parts/message_bar.h"
#include "ui/parts/panel_parts.h"
#include "ui/settings/preferences.h"
#include "ui/strip/range_strip.h"
#include "ui/theme/theme.h"
#include "ui/theme/typography.h"
#include "ui/viewport/viewport.h"
#include "ui/words/language.h"

namespace zyga::ui {
namespace {

constexpr char kLastKey[] = "files/last";
constexpr double kContactSurroundings = 0.35;  // m, shown around a contact that is framed
QString droppedFile(const QMimeData& data) {
  for (const QUrl& url : data.urls()) {
    const QString file = url.toLocalFile();
    const QString ending = QFileInfo(file).suffix().toLower();
    if (ending == "zyga" || ending == "zygazip" || ending == "csv") return file;
  }
  return {};
}

}  // namespace

MainWindow::MainWindow(Document& document, const WindowFolders& folders, QWidget* parent)
    : QMainWindow(parent),
      document_(document),
      sculpt_(document, folders.bones),
      contact_(document, folders.bones),
      autosave_(document, folders.recovery, this),
      recent_(new RecentFiles(this)) {
  setObjectName("mainWindow");
  setAcceptDrops(true);
  setDockNestingEnabled(true);
  setCorner(Qt::BottomLeftCorner, Qt::BottomDockWidgetArea);
  setCorner(Qt::BottomRightCorner, Qt::BottomDockWidgetArea);
  createCentre();
  createDocks();
  files_ = new FileController(document_, *messages_, *recent_, *this, folders.recovery);
  output_ = new OutputController(document_, *viewport_, *messages_, *this);
  scans_ = new ScanController(document_, *messages_, *this);
  animals_ = new AnimalFromScans(*files_, *messages_, *this);
  connect(animals_, &AnimalFromScans::marksAsked, scans_, [this] { scans_->openLandmarks({}); });
  connect(scans_, &ScanController::animalAsked, animals_, &AnimalFromScans::ask);
  connect(scans_, &ScanController::resized, viewport_, &Viewport::frameAll);
  tables_ = new TableController(document_, *this);
  connect(scans_, &ScanController::helpAsked, this, &MainWindow::openHelp);
  report_ = new ReportController(document_, studies_->answers(), *messages_, *this);
  createStatusBar();
  createMenus();
  createToolBar();
  connectParts();
  layout_->restoreSize();
  updateTitle();
  updateActions();
  offerLeftovers();
  takeOpenDocument();
}

MainWindow::~MainWindow() = default;

void MainWindow::createCentre() {
  auto* centre = new QWidget;
  messages_ = new MessageBar;
  viewport_ = new Viewport(document_);
  viewport_->setObjectName("viewport");
  viewport_->setMinimumSize(320, 240);
  auto* layout = new QVBoxLayout(centre);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->setSpacing(0);
  layout->addWidget(messages_);
  layout->addWidget(viewport_, 1);
  if (Preferences::read().hints) layout->addWidget(createFirstSteps());
  setCentralWidget(centre);
  panes_ += viewport_;
}

void MainWindow::createDocks() {
  auto* bones = new BonesPanel(document_);
  poses_ = new PosesPanel(document_);
  auto* joint = new JointView(document_);
  auto* assumptions = new AssumptionsPanel(document_);
  auto* findings = new FindingsPanel(document_);
  strip_ = new RangeStrip(document_);
  strip_->setObjectName("rangeStrip");
  const std::pair<QWidget*, const char*> pages[] = {
      {bones, "evidence"}, {joint, "overlap"}, {assumptions, "judged"}, {findings, "judged"}, {strip_, "range"}};
  for (const auto& [panel, page] : pages) panel->setProperty("helpPage", page);
  ground_ = new GroundDock(document_, *viewport_);
  studies_ = new StudiesDock(document_, *viewport_, *messages_);
  claims_ = new ClaimsDock(document_, *messages_);
  notes_ = new NotesDock(document_, *viewport_);
  reach_ = new ReachDock(document_, *viewport_);
  layout_ = std::make_unique<WindowLayout>(
      *this,
      WindowLayout::Docks{new PanelDock("bonesDock", tr("Bones"), bones, Qt::LeftDockWidgetArea),
                          new PanelDock("posesDock", tr("Poses"), poses_, Qt::LeftDockWidgetArea),
                          new PanelDock("jointDock", tr("Joint"), joint, Qt::RightDockWidgetArea),
                          new PanelDock("assumptionsDock", tr("Assumptions"), assumptions, Qt::RightDockWidgetArea),
                          new PanelDock("findingsDock", tr("Findings"), findings, Qt::RightDockWidgetArea),
                          {ground_, new StandDock(document_), reach_, studies_, claims_, notes_},
                          new PanelDock("stripDock", tr("Range strip"), strip_, Qt::BottomDockWidgetArea)});
  for (PanelDock* dock : layout_->docks()) {
    connect(dock, &PanelDock::helpAsked, this, &MainWindow::openHelp);
    panes_ += &dock->content();
  }
  connect(bones, &BonesPanel::frameBone, viewport_, &Viewport::frameBone);
  connect(bones, &BonesPanel::tableAsked, this, [this] { tables_->show(); });
  connect(findings, &FindingsPanel::frameJoint, this,
          [this](JointIndex joint) { viewport_->frameBone(document_.specimen()[joint].distal); });
  connect(findings, &FindingsPanel::frameContact, this,
          [this](const range::ContactFinding& contact) { viewport_->framePlace(contact.p_W, kContactSurroundings); });
  connect(assumptions, &AssumptionsPanel::hint, this, [this](const QString& text) { hint_->setText(text); });
}

void MainWindow::createStatusBar() {
  pointer_ = new ElidedLabel(false);
  pointer_->setObjectName("pointerText");
  hint_ = new ElidedLabel(true);
  hint_->setObjectName("hintText");
  auto* row = new QWidget;
  auto* rows = new QVBoxLayout(row);
  rows->setContentsMargins(kWideGap, 0, kWideGap, 0);
  rows->setSpacing(0);
  auto* layout = new QHBoxLayout;
  layout->setSpacing(kWideGap);
  rows->addLayout(layout);
  layout->addWidget(pointer_);
  layout->addWidget(hint_, 1);
  layout->addWidget(output_->exportReadout());
  layout->addWidget(output_->pictureReadout());
  layout->addWidget(report_->readout());
  layout->addWidget(scans_->readout());
  layout->addWidget(animals_->readout());
  auto* lengths = new LengthsReadout(document_);
  textIsLarge() ? rows->addWidget(lengths) : layout->addWidget(lengths);
  layout->addWidget(new VerdictReadout(document_));
  statusBar()->setSizeGripEnabled(false);
  statusBar()->addWidget(row, 1);
}

void MainWindow::connectParts() {
  connect(viewport_, &Viewport::hint, hint_, &ElidedLabel::setText);
  connect(viewport_, &Viewport::hovered, pointer_, &ElidedLabel::setText);
  connect(viewport_, &Viewport::graphicsRestarted, messages_, [this] {
    messages_->warn(tr("The graphics driver was reset. The picture was started anew; your work was not touched."));
  });
  connect(strip_, &RangeStrip::hint, hint_, &ElidedLabel::setText);
  connect(&sculpt_, &SculptJob::progress, viewport_, &Viewport::setSculptProgress);
  connect(&sculpt_, &SculptJob::busyChanged, viewport_, [this](bool busy) {
    if (!busy) viewport_->setSculptProgress(1);
  });
  connect(&sculpt_, &SculptJob::failed, messages_, [this](const QString& text) { messages_->warn(text); });
  connect(&sculpt_, &SculptJob::failed, &contact_, &ContactJob::giveUp);
  connect(&contact_, &ContactJob::failed, messages_, [this](const QString& text) { messages_->warn(text); });
  connect(&contact_, &ContactJob::judged, messages_, [this](const QString& text) { messages_->tell(text + '.'); });
  connect(&autosave_, &Autosave::failed, messages_, [this](const QString& text) { messages_->warn(text); });
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & Change::Meshes) updateActions();
    if (what & Change::Assumptions) layout_->assumptions().setSummary(assumptionsInShort(document_.assumptions()));
  });
  connect(&document_.undoStack(), &QUndoStack::cleanChanged, this, &MainWindow::updateTitle);
  connect(files_, &FileController::opened, this, [this] {
    updateTitle();
    viewport_->frameAll();
  });
  connect(files_, &FileController::saved, this, [this](const QString& place) {
    updateTitle();
    hint_->setText(place);
  });
  connect(recent_, &RecentFiles::chosen, files_, &FileController::open);
  connect(recent_, &RecentFiles::changed, this, [this] {
    const QStringList files = recent_->files();
    QSettings().setValue(kLastKey, files.isEmpty() ? QString() : files.first());
  });
}

void MainWindow::open(const QString& file) { files_->open(file); }

void MainWindow::openUsual() {
  const QString last = QSettings().value(kLastKey).toString();
  if (!last.isEmpty() && QFileInfo::exists(last)) return files_->open(last);
  const QStringList samples = sampleFiles();
  if (!samples.isEmpty()) return files_->openQuietly(samples.first());
  messages_->tell(tr("Open a project or a measurement table, or drop one here."));
}

bool MainWindow::frame(const QString& boneId) {
  const auto bone = document_.hasProject() ? document_.specimen().findBone(boneId.toStdString()) : std::nullopt;
  if (!bone) return false;
  document_.selectBone(bone);
  viewport_->frameBone(*bone);
  return true;
}

QPixmap MainWindow::picture() {
  QPixmap whole = grab();
  QPainter painter(&whole);
  const QImage animal = viewport_->grabPicture();
  painter.drawImage(QRect(viewport_->mapTo(this, QPoint(0, 0)), viewport_->size()), animal);
  return whole;
}

bool MainWindow::settled() const {
  return document_.hasProject() && !files_->busy() && !sculpt_.busy() && !contact_.busy() && !output_->busy() &&
         !claims_->answering() && !report_->busy() && viewport_->ready();
}

/// Sizes of docks hold only once the window has its own.
void MainWindow::showEvent(QShowEvent* event) {
  QMainWindow::showEvent(event);
  if (!std::exchange(laidOut_, true)) layout_->arrange();
}

void MainWindow::offerLeftovers() {
  for (const Leftover& leftover : autosave_.leftovers()) {
    const QString when = QLocale(languageSpoken()).toString(leftover.written, tr("d MMM hh:mm"));
    messages_->tell(tr("Work from %1 on “%2” was not saved.").arg(when, leftover.name),
                    {{tr("Recover"), [this, leftover] { files_->recover(leftover, autosave_); }},
                     {tr("Discard"), [leftover] { Autosave::discard(leftover); }}});
  }
}

void MainWindow::updateTitle() {
  QString name = document_.hasProject() ? QString::fromStdString(document_.specimen().name) : QString();
  if (!document_.path().empty()) name = QString::fromStdString(document_.path().filename().string());
  setWindowTitle(name.isEmpty() ? tr("Zygapose") : tr("%1[*] — Zygapose").arg(name));
  setWindowModified(document_.hasUnsavedWork());
}

void MainWindow::updateActions() {
  const bool open = document_.hasProject();
  for (QAction* action : needProject_) action->setEnabled(open);
  for (QAction* action : {export_, picture_}) action->setEnabled(open && !document_.meshes().empty());
}

void MainWindow::closeEvent(QCloseEvent* event) {
  if (document_.hasUnsavedWork()) {
    event->ignore();
    return files_->whenSafe([this] { close(); });
  }
  layout_->keep();
  autosave_.discard();
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const QMimeData& data = *event->mimeData();
  if (!droppedFile(data).isEmpty() || !ScanController::meshFiles(data).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  event->acceptProposedAction();
  if (const QStringList bones = ScanController::meshFiles(*event->mimeData()); !bones.isEmpty())
    return scans_->bringIn(bones);
  const QString file = droppedFile(*event->mimeData());
  if (!ground_->takeTrackway(file)) open(file);
}

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
  layout_->keep();
  autosave_.discard();
}

/// A document that an earlier window has opened: everything that shows it starts from it.
void MainWindow::takeOpenDocument() {
  if (!document_.hasProject()) return;
  emit document_.changed(Change::Everything);
  files_->guardFile();
  files_->tellScansAmiss();
  autosave_.write();
  updateTitle();
  updateActions();
}

}  // namespace zyga::ui
