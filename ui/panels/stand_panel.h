#pragma once

#include <QWidget>
#include <array>

#include "ui/commands/stand_edits.h"

class QCheckBox;
class QLabel;
class QPushButton;

namespace zyga::ui {

class UnitSpinBox;

/// How the animal stands, live: readings of the trunk, the four feet with a button each to lift or plant it, and the
/// shoulder blades with the published range of their slope.
class StandPanel : public QWidget {
  Q_OBJECT
 public:
  explicit StandPanel(Document& document, QWidget* parent = nullptr);
  QSize sizeHint() const override { return {312, 430}; }

  /// "trunk +12°, hip 2.63 m": for the title of the folded panel.
  QString inShort() const { return short_; }

 signals:
  void shortChanged(const QString& words);

 private:
  struct FootRow {
    QLabel* state = nullptr;
    QPushButton* button = nullptr;
  };
  QLayout* createReadings();
  QLayout* createFeet();
  QLayout* createBlades();
  void placeBlades(bool left);
  void tell(const kinematics::FeetAnswer& answer);
  void refresh(Changes what);
  void showReadings();
  void showFeet();
  void showBlades();

  Document& document_;
  std::array<QLabel*, 6> readings_{};
  std::array<FootRow, 4> feet_{};
  std::array<UnitSpinBox*, 2> slopes_{}, slides_{};  ///< left, right
  QCheckBox* together_ = nullptr;
  QLabel *bladeNote_ = nullptr, *miss_ = nullptr;
  QString short_;
  bool telling_ = false;  ///< the words under the feet belong to the step under way
};

}  // namespace zyga::ui
