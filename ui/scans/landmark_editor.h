#pragma once

#include <QDialog>
#include <QKeySequence>
#include <functional>

#include "core/solid/facets/missing_parts.h"
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
/// what its joints still lack. Marks that can hardly be right and parts of the bone that are missing are told at once.
/// Every mark is an undoable step of the project; everything has a key.
class LandmarkEditor : public QDialog {
  Q_OBJECT
 public:
  explicit LandmarkEditor(Document& document, QWidget* parent = nullptr);

  void showBone(const anatomy::BoneName& bone);
  LandmarkView& view() { return *view_; }
  LandmarkMarks& marks() { return marks_; }
  /// True once the bone can be marked.
  bool ready() const { return view_->ready() && !preparing_.busy(); }

  /// Everything that a key of the editor does, for its list of keys.
  struct Key {
    QKeySequence keys;
    QString does;
  };
  const std::vector<Key>& keys() const { return keys_; }

 signals:
  /// Somebody wants to read a page of the help.
  void helpAsked(const QString& page);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QWidget* createTop();
  void createSigned();
  static QString warned(const QString& words);
  void createKeys();
  void addKey(const QKeySequence& keys, const QString& does, const std::function<void()>& act);
  void showKeys();
  void stepBone(int places);
  void nextOpenBone();
  void turnUpright();
  void showDoubt();
  void scaleBrush(double factor);
  QString bonesEntry(const anatomy::Scan& scan) const;
  QWidget* createSide();
  QWidget* createTools();
  QWidget* createActions();
  QToolButton* createStraighten();
  QToolButton* createMeasures();
  void fillBones();
  void prepare();
  void refresh();
  void refreshList();
  void refreshDoubts();
  void refreshMissing();
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
  QLabel *doubt_ = nullptr, *missing_ = nullptr, *open_ = nullptr;
  QWidget* side_ = nullptr;
  QPushButton* showDoubt_ = nullptr;
  bool turnOver_ = false;   ///< the next turn upright by shape alone is the other way up
  std::string shownDoubt_;  ///< that was shown last
  std::vector<Key> keys_;
  std::shared_ptr<const ScanSurface> surface_;
  /// Of the bone as it lay when it was last looked at.
  std::optional<solid::OneSidedness> sides_;
  Eigen::Affine3d sidesOf_ = Eigen::Affine3d::Identity();
  QWidget* brushRow_ = nullptr;
  UnitSpinBox* brush_ = nullptr;
  QComboBox* outline_ = nullptr;
  QWidget* suggestedRow_ = nullptr;
  QPushButton* accept_ = nullptr;
  QPushButton *takeAway_ = nullptr, *mirrorOne_ = nullptr, *mirrorAll_ = nullptr;
};

}  // namespace zyga::ui
