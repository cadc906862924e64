#pragma once

#include <QWidget>
#include <array>

#include "core/solid/flesh/guide_thickness.h"

class QComboBox;

namespace zyga::ui {

class UnitSpinBox;

/// The thicknesses of the body guide, region by region, and the tail's presets with their source.
class GuideFields : public QWidget {
  Q_OBJECT
 public:
  explicit GuideFields(QWidget* parent = nullptr);

  solid::GuideThickness value() const;
  void setValue(const solid::GuideThickness& value);

 private:
  void choosePreset(int index);
  void showPreset();

  std::array<UnitSpinBox*, 7> thickness_{};
  UnitSpinBox *tailWidth_, *tailHeight_, *muscle_;
  QComboBox* preset_;
};

}  // namespace zyga::ui
