#pragma once

#include <QWidget>
#include <array>

#include "ui/ground/ground_state.h"

class QCheckBox;
class QLabel;
class QToolButton;

namespace zyga::ui {

class UnitSpinBox;
class VerdictMark;

/// The densities that mass and balance rest on, a field for each part of the body.
class DensityFields : public QWidget {
  Q_OBJECT
 public:
  explicit DensityFields(Document& document, QWidget* parent = nullptr);

 private:
  void change(study::BodyPart part, double density);
  void refresh();

  Document& document_;
  std::array<UnitSpinBox*, study::kBodyParts> fields_{};
  QToolButton* usual_;
};

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
