#pragma once

#include <QDialog>

#include "ui/document/worker.h"
#include "ui/scans/landmark_marks.h"

class QComboBox;
class QLabel;
class QPushButton;
class QToolButton;
class QTreeWidget;

namespace zyga::ui {

class UnitSpinBox;

/// The landmark editor: one real bone, turned by hand, its marks picked and brushed on its surface, and the list of
/// what its joints still lack. Every mark is an undoable step of the project.
class LandmarkEditor : public QDialog {
  Q_OBJECT
 public:
  explicit LandmarkEditor(Document& document, QWidget* parent = nullptr);

  void showBone(const anatomy::BoneName& bone);
  LandmarkView& view() { return *view_; }
  LandmarkMarks& marks() { return marks_; }
  /// True once the bone can be marked.
  bool ready() const { return view_->ready() && !preparing_.busy(); }

 private:
  QWidget* createTop();
  QWidget* createSide();
  QWidget* createTools();
  QWidget* createActions();
  QToolButton* createStraighten();
  QToolButton* createMeasures();
  void fillBones();
  void prepare();
  void refresh();
  void refreshList();
  void refreshLacking();
  void refreshTools();
  void chooseMark();
  void fillStraighten(QMenu& menu);
  void fillMeasures(QMenu& menu);
  void readMarks(const QString& file);
  void writeMarks(const QString& file);
  void ask(bool save);

  Document& document_;
  LandmarkMarks marks_;
  anatomy::BoneName bone_;
  Worker preparing_;
  LandmarkView* view_;
  QComboBox* bones_;
  QTreeWidget* list_;
  QLabel *purpose_, *told_, *lacking_;
  QWidget* brushRow_ = nullptr;
  UnitSpinBox* brush_ = nullptr;
  QComboBox* outline_ = nullptr;
  QWidget* suggestedRow_ = nullptr;
  QPushButton* accept_ = nullptr;
  QPushButton *takeAway_ = nullptr, *mirrorOne_ = nullptr, *mirrorAll_ = nullptr;
};

}  // namespace zyga::ui
