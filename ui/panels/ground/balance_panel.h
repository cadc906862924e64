#pragma once

#include <QWidget>

#include "ui/ground/ground_state.h"

class QCheckBox;
class QLabel;

namespace zyga::ui {

class VerdictMark;

/// Mass as a range, centre of mass and whether it lies over the feet: all of it an estimate.
class BalancePanel : public QWidget {
  Q_OBJECT
 public:
  explicit BalancePanel(GroundState& ground, QWidget* parent = nullptr);

  bool drawn() const;

 signals:
  /// Whether the balance shall be drawn on the ground.
  void drawnChanged(bool drawn);

 private:
  QLayout* createNumbers();
  void refresh(Changes what);

  GroundState& ground_;
  VerdictMark* mark_;
  QLabel *sentence_, *volume_, *circumference_, *centre_, *fore_;
  QCheckBox* drawn_;
};

}  // namespace zyga::ui
