#pragma once

#include <QList>
#include <memory>
#include <optional>

#include "app/window/docks/panel_dock.h"
#include "ui/document/document.h"

class QAction;
class QMenu;

namespace zyga::study {
class StudyAnswers;
}

namespace zyga::ui {

class ClaimsPanel;
class GroundPanel;
class MessageBar;
class NotesPanel;
class StudiesPanel;
class Viewport;

// One class a panel: how it hangs together with the view, and the same from the keyboard. `addActions` fills a menu and
// returns the actions that need an open project; they belong to `owner`, the window.

/// Mass, balance and trackway; folded it still tells the balance in its title.
class GroundDock : public PanelDock {
  Q_OBJECT
 public:
  GroundDock(Document& document, Viewport& view);
  /// True when the file was a table of footprints and has been taken in.
  bool takeTrackway(const QString& file);

 private:
  GroundPanel* panel_;
};

/// How the animal stands; folded it still tells slope and hip height in its title.
class StandDock : public PanelDock {
  Q_OBJECT
 public:
  explicit StandDock(Document& document);
};

/// How drags reach; folded it tells in its title what differs from the usual.
class ReachDock : public PanelDock {
  Q_OBJECT
 public:
  ReachDock(Document& document, Viewport& view);
  QList<QAction*> addActions(QMenu& menu, QWidget& owner);

 private:
  Document& document_;
  Viewport& view_;
};

/// What follows from the pose; folded it tells in its title which study is there.
class StudiesDock : public PanelDock {
  Q_OBJECT
 public:
  StudiesDock(Document& document, Viewport& view, MessageBar& messages);
  /// What its studies have found already.
  const std::shared_ptr<study::StudyAnswers>& answers() const;
  /// Every study by name, and the envelope in the view.
  QList<QAction*> addActions(QMenu& menu, QWidget& owner);

 private:
  StudiesPanel* panel_;
};

/// Claims and their answers; folded it tells in its title how many hold.
class ClaimsDock : public PanelDock {
  Q_OBJECT
 public:
  ClaimsDock(Document& document, MessageBar& messages);
  bool answering() const;
  QList<QAction*> addActions(QMenu& menu, QWidget& owner);

 private:
  ClaimsPanel* panel_;
};

/// What is pinned to bones; folded it tells in its title how many.
class NotesDock : public PanelDock {
  Q_OBJECT
 public:
  NotesDock(Document& document, Viewport& view);
  /// Pins a note to the chosen bone.
  QList<QAction*> addActions(QMenu& menu, QWidget& owner);
  /// To the menu of a bone, opened at `global`: with the mouse a note goes where the pointer is.
  void addFor(QMenu& menu, BoneIndex bone, const QPoint& global);

 private:
  void pin(BoneIndex bone, const Eigen::Vector3d& p_B);

  Document& document_;
  Viewport& view_;
  NotesPanel* panel_;
};

}  // namespace zyga::ui
