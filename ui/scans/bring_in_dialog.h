#pragma once

#include <QDialog>
#include <QStringList>

#include "core/anatomy/marks/scan_guess.h"
#include "core/anatomy/tables/landmark_table.h"
#include "core/files/scan/scan_set.h"
#include "ui/document/document.h"
#include "ui/scans/scan_queue.h"

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QRadioButton;
class QTableWidget;

namespace zyga::ui {

/// Mesh files on their way into the animal, one a row: which bone each is, its unit, which axis points up, and what
/// came of reading it. Names, units and axes are guessed, shown, and open to change; a file that cannot be read says
/// why in its row and keeps none of the others back. All files without a unit of their own are taken to be in one, as
/// the verb `scan` does; where the bones are then ten times off the animal's, which size is right is asked. Nothing
/// reaches the document before the dialog is accepted.
class BringInDialog : public QDialog {
  Q_OBJECT
 public:
  explicit BringInDialog(Document& document, QWidget* parent = nullptr);

  void addFiles(const QStringList& files);
  /// Landmarks for the bones of the list. Returns what is wrong with the table; empty when it was taken.
  QString takeLandmarks(const QString& file);
  /// The bones that can be put in place, with their meshes.
  std::vector<files::ProjectScan> scans() const;
  /// How many times as large the animal shall become, where it was chosen to be fitted to these bones.
  std::optional<double> fitFactor() const;
  bool busy() const { return queue_.busy(); }

 signals:
  void filesAsked();
  void landmarksAsked();

 protected:
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  enum Column { kFile, kBone, kUnit, kUp, kOutcome, kColumnCount };
  enum class State { Waiting, Reading, Read, Failed };
  struct Row {
    int ticket = 0;
    QString path;
    std::optional<anatomy::BoneName> bone;
    std::vector<reason::Reason> doubts;
    State state = State::Waiting;
    int percent = 0;
    QString trouble;
    std::shared_ptr<const files::CleanScan> scan;
    anatomy::ScanUnit unit = anatomy::ScanUnit::Metre;
    anatomy::ScanUp up = anatomy::ScanUp::Z;
    bool unitChosen = false, upChosen = false, doubtsUnit = false;
    QComboBox *boneBox = nullptr, *unitBox = nullptr, *upBox = nullptr;
    QStringList missing;  ///< of its surface
    double size = 0;      ///< beside the others of the list, as anatomy::sizesAmong
  };

  void createTable();
  QWidget* createFoot();
  void addRow(const QString& path);
  void guess();
  void fillBoxes(Row& row);
  void removeChosen();
  Row* find(int ticket);
  double expectedExtent(const std::optional<anatomy::BoneName>& bone) const;
  void takeRead(int ticket, const std::shared_ptr<const files::CleanScan>& scan);
  QWidget* createSizeQuestion();
  /// One unit for all that were read, what it rests on, and who is not of the others' size.
  void settleUnits();
  void takeUnitForAll(anatomy::ScanUnit unit);
  /// Shows the question of size where there is one, `all` files having been read.
  void askSize(bool all);
  bool sizeAnswered() const;
  /// Why a row that was read cannot be put in place as it stands; empty when it can.
  QString obstacle(const Row& row) const;
  QString outcome(const Row& row) const;
  bool ready(const Row& row) const { return row.state == State::Read && obstacle(row).isEmpty(); }
  void refresh();

  Document& document_;
  anatomy::Specimen sculpted_;  ///< what the table gives, without scans
  ScanQueue queue_;
  std::vector<Row> rows_;
  anatomy::LandmarkTable landmarks_;
  int nextTicket_ = 1;
  anatomy::SetUnitGuess set_;       ///< with the factor of the units that are taken
  anatomy::SetUnitGuess toldUnit_;  ///< what is said of the unit: of those that are guessed, where some were chosen
  files::UnitBy setBy_ = files::UnitBy::Size;
  double askedFactor_ = 0;  ///< that was answered
  QTableWidget* table_;
  QLabel *summary_ = nullptr, *unitTold_ = nullptr, *sizeTold_ = nullptr;
  QWidget* sizeQuestion_ = nullptr;
  QRadioButton *keepSize_ = nullptr, *fitAnimal_ = nullptr, *otherUnit_ = nullptr;
  QComboBox* unitOfAll_ = nullptr;
  QProgressBar* progress_ = nullptr;
  QPushButton *put_ = nullptr, *leaveOut_ = nullptr;
};

}  // namespace zyga::ui
