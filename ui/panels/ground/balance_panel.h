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

/// What mass and balance rest on: for each part of the body its density, and how much volume lies outside its bones.
class DensityFields : public QWidget {
  Q_OBJECT
 public:
  explicit DensityFields(Document& document, QWidget* parent = nullptr);

 private:
  QWidget* createDensity(study::BodyPart part);
  QWidget* createFactor(study::BodyPart part);
  void change(study::BodyPart part, double density);
  void changeFactor(study::BodyPart part, double factor);
  void refresh();

  Document& document_;
  std::array<UnitSpinBox*, study::kBodyParts> fields_{}, factors_{};
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
  QLabel *sentence_, *volume_, *circumference_, *apart_, *centre_, *fore_, *tail_, *flesh_;
  QCheckBox* drawn_;
};

}  // namespace zyga::ui
