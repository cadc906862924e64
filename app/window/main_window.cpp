#include "app/window/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDockWidget>
#include <QFileInfo>
#include <QMimeData>
#include <QPainter>
#include <QScreen>
#include <QScrollArea>
#include <QSettings>
#include <QStatusBar>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>
#include <utility>

#include "app/window/flows/file_flow.h"
#include "app/window/flows/output_flow.h"
#include "app/window/flows/report_flow.h"
#include "app/window/flows/scan_flow.h"
#include "app/window/recent_files.h"
#include "app/window/samples.h"
#include "ui/panels/assumptions_panel.h"
#include "ui/panels/bones_panel.h"
#include "ui/panels/claims/claims_panel.h"
#include "ui/panels/findings_panel.h"
#include "ui/panels/joint/joint_view.h"
#include "ui/panels/poses_panel.h"
#include "ui/panels/readouts.h"
#include "ui/parts/elided_label.h"
#include "ui/parts/message_bar.h"
#include "ui/parts/panel_parts.h"
#include "ui/parts/panel_title.h"
#include "ui/settings/language.h"
#include "ui/settings/preferences.h"
#include "ui/strip/range_strip.h"
#include "ui/theme/figures.h"
#include "ui/theme/theme.h"
#include "ui/viewport/viewport.h"

namespace zyga::ui {
namespace {

constexpr char kGeometryKey[] = "window/geometry";
constexpr char kStateKey[] = "window/state";
constexpr char kFoldedKey[] = "window/folded";
constexpr char kLastKey[] = "files/last";
/// Layouts of an older arrangement of docks are not restored.
constexpr int kStateVersion = 1;
constexpr double kContactSurroundings = 0.35;  // m, shown around a contact that is framed
/// From these heights on, px, the panels of the right and of the left side have room unfolded.
constexpr int kTallWindow = 1200, kHighestWindow = 1600;
constexpr int kLowWindow = 900;                     // px; below it the list of bones needs the room of the poses
constexpr int kWidestPanel = 620;                   // px; leaves as much to the animal in a small window
constexpr int kLeftWidth = 312, kRightWidth = 328;  // px, at least

enum Dock { kBones, kPoses, kJoint, kAssumptions, kFindings, kGround, kStand, kReach, kStudies, kClaims, kNotes };

/// Panels that stand behind each other are another arrangement.
int stateVersion() { return kStateVersion + (textIsLarge() ? 100 : 0); }

PanelTitle* title(const QDockWidget& dock) { return qobject_cast<PanelTitle*>(dock.titleBarWidget()); }

QString droppedFile(const QMimeData& data) {
  for (const QUrl& url : data.urls()) {
    const QString file = url.toLocalFile();
    const QString ending = QFileInfo(file).suffix().toLower();
    if (ending == "zyga" || ending == "csv") return file;
  }
  return {};
}

}  // namespace

MainWindow::MainWindow(Document& document, const WindowFolders& folders, QWidget* parent)
    : QMainWindow(parent),
      document_(document),
      sculpt_(document, folders.bones),
      contact_(document),
      autosave_(document, folders.recovery, this),
      recent_(new RecentFiles(this)) {
  setObjectName("mainWindow");
  setAcceptDrops(true);
  setDockNestingEnabled(true);
  setCorner(Qt::BottomLeftCorner, Qt::BottomDockWidgetArea);
  setCorner(Qt::BottomRightCorner, Qt::BottomDockWidgetArea);
  createCentre();
  createDocks();
  createGroundDock();
  createStandDock();
  createReachDock();
  createStudiesDock();
  createClaimsDock();
  createNotesDock();
  createStrip();
  files_ = new FileFlow(document_, *messages_, *recent_, *this, folders.recovery);
  output_ = new OutputFlow(document_, *viewport_, *messages_, *this);
  scans_ = new ScanFlow(document_, *messages_, *this);
  report_ = new ReportFlow(document_, *messages_, *this);
  createStatusBar();
  createMenus();
  createToolBar();
  connectParts();
  restoreSize();
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

QDockWidget* MainWindow::createDock(const QString& name, const QString& title, QWidget* content,
                                    Qt::DockWidgetArea area) {
  auto* dock = new QDockWidget(title, this);
  dock->setObjectName(name);
  content->setProperty("role", "panel");
  content->setAttribute(Qt::WA_StyledBackground);
  // Large text leaves no room for panels on both sides.
  if (textIsLarge() && area == Qt::LeftDockWidgetArea) area = Qt::RightDockWidgetArea;
  if (area == Qt::LeftDockWidgetArea) content->setMinimumWidth(scaledWithText(kLeftWidth));
  if (area == Qt::RightDockWidgetArea) content->setMinimumWidth(std::min(scaledWithText(kRightWidth), kWidestPanel));
  // A dock whose whole widget is hidden loses its width, so what folds away is one step further in.
  auto* body = new QWidget;
  auto* layout = new QVBoxLayout(body);
  layout->setContentsMargins(0, 0, 0, 0);
  // At large text a panel may be higher than the window.
  if (textIsLarge() && area == Qt::RightDockWidgetArea)
    layout->addWidget(scrolling(content));
  else
    layout->addWidget(content);
  dock->setWidget(body);
  auto* bar = new PanelTitle(*dock, *content);
  connect(bar, &PanelTitle::helpAsked, this, &MainWindow::openHelp);
  dock->setTitleBarWidget(bar);
  addDockWidget(area, dock);
  docks_ += dock;
  panes_ += content;
  return dock;
}

void MainWindow::createDocks() {
  auto* bones = new BonesPanel(document_);
  poses_ = new PosesPanel(document_);
  auto* joint = new JointView(document_);
  auto* assumptions = new AssumptionsPanel(document_);
  auto* findings = new FindingsPanel(document_);
  const std::pair<QWidget*, const char*> pages[] = {
      {bones, "evidence"}, {joint, "overlap"}, {assumptions, "judged"}, {findings, "judged"}};
  for (const auto& [panel, page] : pages) panel->setProperty("helpPage", page);
  createDock("bonesDock", tr("Bones"), bones, Qt::LeftDockWidgetArea);
  createDock("posesDock", tr("Poses"), poses_, Qt::LeftDockWidgetArea);
  createDock("jointDock", tr("Joint"), joint, Qt::RightDockWidgetArea);
  createDock("assumptionsDock", tr("Assumptions"), assumptions, Qt::RightDockWidgetArea);
  createDock("findingsDock", tr("Findings"), findings, Qt::RightDockWidgetArea);
  connect(bones, &BonesPanel::frameBone, viewport_, &Viewport::frameBone);
  connect(findings, &FindingsPanel::frameJoint, this,
          [this](JointIndex joint) { viewport_->frameBone(document_.specimen()[joint].distal); });
  connect(findings, &FindingsPanel::frameContact, this,
          [this](const range::ContactFinding& contact) { viewport_->framePlace(contact.p_W, kContactSurroundings); });
  connect(assumptions, &AssumptionsPanel::hint, this, [this](const QString& text) { hint_->setText(text); });
}

void MainWindow::createStrip() {
  strip_ = new RangeStrip(document_);
  strip_->setObjectName("rangeStrip");
  strip_->setProperty("helpPage", "range");
  QDockWidget* dock = createDock("stripDock", tr("Range strip"), strip_, Qt::BottomDockWidgetArea);
  dock->setFeatures(QDockWidget::NoDockWidgetFeatures);
  dock->setTitleBarWidget(new QWidget);
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
    if (!busy) viewport_->setSculptProgress(0, 0);
  });
  connect(&sculpt_, &SculptJob::failed, messages_, [this](const QString& text) { messages_->warn(text); });
  connect(&contact_, &ContactJob::failed, messages_, [this](const QString& text) { messages_->warn(text); });
  connect(&autosave_, &Autosave::failed, messages_, [this](const QString& text) { messages_->warn(text); });
  connect(&document_, &Document::changed, this, [this](Changes what) {
    if (what & Change::Meshes) updateActions();
    if (what & Change::Assumptions)
      title(*docks_[kAssumptions])->setSummary(assumptionsInShort(document_.assumptions()));
  });
  connect(&document_.undoStack(), &QUndoStack::cleanChanged, this, &MainWindow::updateTitle);
  connect(files_, &FileFlow::opened, this, [this] {
    updateTitle();
    viewport_->frameAll();
  });
  connect(files_, &FileFlow::saved, this, &MainWindow::updateTitle);
  connect(recent_, &RecentFiles::chosen, files_, &FileFlow::open);
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
         !claims_->busy() && !report_->busy() && viewport_->ready();
}

/// The assumptions start folded to one line unless the right side has room for everything.
void MainWindow::defaultLayout() {
  if (textIsLarge()) {
    for (QTabBar* bar : findChildren<QTabBar*>()) bar->setElideMode(Qt::ElideNone);
    return resizeDocks({docks_[kBones]}, {kWidestPanel}, Qt::Horizontal);
  }
  resizeDocks({docks_[kBones], docks_[kJoint]}, {scaledWithText(kLeftWidth), scaledWithText(kRightWidth)},
              Qt::Horizontal);
  resizeDocks({docks_[kBones], docks_[kPoses]}, {700, 140}, Qt::Vertical);
  for (const Dock dock : {kGround, kStand, kReach, kStudies, kClaims, kNotes})
    title(*docks_[dock])->setFolded(height() < kHighestWindow);
  title(*docks_[kPoses])->setFolded(height() < kLowWindow);
  const bool tall = height() >= kTallWindow;
  title(*docks_[kAssumptions])->setFolded(!tall);
  // A folded panel must not be counted in, or its share is lost to the joint.
  if (tall)
    resizeDocks({docks_[kJoint], docks_[kAssumptions], docks_[kFindings]}, {580, 420, 110}, Qt::Vertical);
  else
    resizeDocks({docks_[kJoint], docks_[kFindings]}, {580, 110}, Qt::Vertical);
}

/// All panels in one place, one before the others.
void MainWindow::stackPanels() {
  setTabPosition(Qt::RightDockWidgetArea, QTabWidget::North);
  for (QDockWidget* dock : docks_) {
    if (dockWidgetArea(dock) != Qt::RightDockWidgetArea) continue;
    if (PanelTitle* bar = title(*dock)) bar->setFolded(false);
    if (dock != docks_[kJoint]) tabifyDockWidget(docks_[kJoint], dock);
  }
  docks_[kBones]->raise();
}

void MainWindow::restoreSize() {
  const QSettings settings;
  // Unfolded panels would make the window higher than it is asked to be.
  for (const Dock dock : {kAssumptions, kGround, kStand, kReach, kStudies, kClaims, kNotes})
    title(*docks_[dock])->setFolded(true);
  if (textIsLarge()) stackPanels();  // below each other they would, too
  const QSize room = screen()->availableSize();
  resize(room.width() * 9 / 10, room.height() * 9 / 10);
  restoreGeometry(settings.value(kGeometryKey).toByteArray());
}

/// Sizes of docks hold only once the window has its own.
void MainWindow::showEvent(QShowEvent* event) {
  QMainWindow::showEvent(event);
  if (std::exchange(laidOut_, true)) return;
  const QSettings settings;
  defaultLayout();
  if (!restoreState(settings.value(kStateKey).toByteArray(), stateVersion())) return;
  const QStringList folded = settings.value(kFoldedKey).toStringList();
  for (QDockWidget* dock : docks_)
    if (PanelTitle* bar = title(*dock)) bar->setFolded(folded.contains(dock->objectName()));
}

void MainWindow::keepLayout() const {
  QStringList folded;
  for (const QDockWidget* dock : docks_)
    if (const PanelTitle* bar = title(*dock); bar && bar->folded()) folded += dock->objectName();
  QSettings settings;
  settings.setValue(kGeometryKey, saveGeometry());
  settings.setValue(kStateKey, saveState(stateVersion()));
  settings.setValue(kFoldedKey, folded);
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
  keepLayout();
  autosave_.discard();
  event->accept();
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
  const QMimeData& data = *event->mimeData();
  if (!droppedFile(data).isEmpty() || !ScanFlow::meshFiles(data).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
  event->acceptProposedAction();
  if (const QStringList bones = ScanFlow::meshFiles(*event->mimeData()); !bones.isEmpty())
    return scans_->bringIn(bones);
  const QString file = droppedFile(*event->mimeData());
  if (!takeTrackway(file)) open(file);
}

}  // namespace zyga::ui
