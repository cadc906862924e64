#pragma once

#include <QMainWindow>
#include <filesystem>
#include <memory>

#include "ui/document/autosave.h"
#include "ui/document/contact_job.h"
#include "ui/document/document.h"
#include "ui/document/sculpt_job.h"

namespace zyga::ui {

class ClaimsDock;
class ElidedLabel;
class FileController;
class GroundDock;
class MessageBar;
class NotesDock;
class OutputController;
class PosesPanel;
class RangeStrip;
class ReachDock;
class RecentFiles;
class AnimalFromScans;
class ScanController;
class ReportController;
class StanceActions;
class StudiesDock;
class TableController;
class Viewport;
class WindowLayout;

/// Where the window keeps what is nobody's project.
struct WindowFolders {
  std::filesystem::path bones = files::boneCacheFolder();
  std::filesystem::path recovery = Autosave::standardFolder();
};

/// The animal in the middle, the range strip under it, bones and poses to the left, joint, assumptions and findings to
/// the right. The document must outlive the window.
class MainWindow : public QMainWindow {
  Q_OBJECT
 public:
  explicit MainWindow(Document& document, const WindowFolders& folders = {}, QWidget* parent = nullptr);
  ~MainWindow() override;

  /// Opens a project or a table.
  void open(const QString& file);
  /// Opens what was open last, or the first sample.
  void openUsual();
  /// Shows a bone close up and chooses it; by id. False when there is none.
  bool frame(const QString& boneId);
  /// The whole window as a picture, the animal in full detail.
  QPixmap picture();
  /// True once the bones are on screen and nothing is under way.
  bool settled() const;
  /// Keeps the arrangement and leaves the document open for the window that comes next.
  void putAway();

 signals:
  /// Language or size of the text is another: this window shall be put away and another one take its place.
  void anotherWindowAsked();

 protected:
  void showEvent(QShowEvent* event) override;
  void closeEvent(QCloseEvent* event) override;
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  void createCentre();
  void createDocks();
  void designSheet();
  /// Opens a menu of what can be done with a bone, if there is anything.
  void offerFor(BoneIndex bone, const QPoint& global);
  void createStatusBar();
  void createMenus();
  void createFileMenu();
  void createEditMenu();
  void createPoseMenu();
  void createBonesMenu();
  void createViewMenu();
  void createHelpMenu();
  void createToolBar();
  void connectParts();

  QAction* add(QMenu& menu, const QString& text, const QKeySequence& key, const std::function<void()>& act,
               const char* iconName = nullptr);
  void setPose(const QString& text, const kinematics::Pose& pose);
  void frameSelection();
  void setDark(bool dark);
  void nextPane();
  QWidget* createFirstSteps();
  void askPreferences();
  /// The page for what has the focus, or this one.
  void openHelp(const QString& page = {});
  void takeOpenDocument();
  void offerLeftovers();
  void updateTitle();
  void updateActions();

  Document& document_;
  SculptJob sculpt_;
  ContactJob contact_;
  Autosave autosave_;
  RecentFiles* recent_;
  MessageBar* messages_ = nullptr;
  Viewport* viewport_ = nullptr;
  RangeStrip* strip_ = nullptr;
  PosesPanel* poses_ = nullptr;
  ClaimsDock* claims_ = nullptr;
  GroundDock* ground_ = nullptr;
  NotesDock* notes_ = nullptr;
  ReachDock* reach_ = nullptr;
  StudiesDock* studies_ = nullptr;
  std::unique_ptr<WindowLayout> layout_;
  FileController* files_ = nullptr;
  OutputController* output_ = nullptr;
  ScanController* scans_ = nullptr;
  AnimalFromScans* animals_ = nullptr;
  TableController* tables_ = nullptr;
  ReportController* report_ = nullptr;
  StanceActions* stances_ = nullptr;
  ElidedLabel *pointer_ = nullptr, *hint_ = nullptr;
  QList<QWidget*> panes_;
  QList<QAction*> needProject_;
  QAction *undo_ = nullptr, *redo_ = nullptr, *open_ = nullptr, *save_ = nullptr, *neutral_ = nullptr,
          *stand_ = nullptr, *perspective_ = nullptr, *frameAll_ = nullptr, *dark_ = nullptr, *export_ = nullptr,
          *picture_ = nullptr;
  QList<QAction*> views_;
  bool laidOut_ = false;
};

}  // namespace zyga::ui
