#pragma once

#include <QWidget>

#include "ui/ground/ground_state.h"

class QCheckBox;
class QComboBox;
class QLabel;
class QTableView;
class QToolButton;

namespace zyga::ui {

class PrintsModel;

/// Footprints typed or read from a table, what they tell of the animal that made them, and how this animal's feet meet
/// them.
class TrackwayPanel : public QWidget {
  Q_OBJECT
 public:
  explicit TrackwayPanel(GroundState& ground, QWidget* parent = nullptr);

  bool drawn() const;
  /// Takes the footprints of a table; what is wrong with it is told in the panel, and nothing changes then.
  void readTable(const QString& file);

 signals:
  void drawnChanged(bool drawn);

 protected:
  void dragEnterEvent(QDragEnterEvent* event) override;
  void dropEvent(QDropEvent* event) override;

 private:
  QLayout* createButtons();
  QLayout* createFigures();
  QLayout* createFitting();
  void chooseTable();
  void chooseRule();
  void moveUnder();
  void stepOn();
  void remove();
  void tell(const QString& words);
  void refresh(Changes what);
  void refreshFigures();
  void refreshFit();

  Document& document() const { return ground_.document(); }

  GroundState& ground_;
  PrintsModel* model_;
  QTableView* table_;
  QLabel *empty_, *told_, *hip_, *angulation_, *gauge_, *stride_, *speed_, *caution_, *fit_, *gaps_;
  QWidget* filled_;
  QComboBox* rule_;
  QCheckBox* drawn_;
  QToolButton *open_, *add_, *delete_, *clear_, *under_, *step_;
};

}  // namespace zyga::ui
