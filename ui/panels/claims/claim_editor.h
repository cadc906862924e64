#pragma once

#include <QWidget>

#include "core/study/claims/claim.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace zyga::ui {

class UnitSpinBox;

/// The fields of one claim: kind, bound, value, distance ahead, source.
class ClaimEditor : public QWidget {
  Q_OBJECT
 public:
  explicit ClaimEditor(QWidget* parent = nullptr);

  void setClaim(const study::Claim& claim);
  /// The keyboard goes to the value, all of it chosen.
  void editValue();

 signals:
  /// `field` tells steps of the same field from others: a value that is turned is one step.
  void edited(const zyga::study::Claim& claim, int field);

 private:
  enum Field { kKind = 1, kBound, kValue, kAhead, kSource };
  void createFields();
  void layOut();
  void read(Field field);
  void fill();

  study::Claim claim_;
  QComboBox *kind_ = nullptr, *bound_ = nullptr;
  UnitSpinBox *metres_ = nullptr, *degrees_ = nullptr, *ahead_ = nullptr;
  QLineEdit* source_ = nullptr;
  QLabel *boundName_ = nullptr, *aheadName_ = nullptr, *tells_ = nullptr;
};

}  // namespace zyga::ui
