#pragma once

#include <QWidget>

#include "core/study/uncertainty/spread.h"

class QCheckBox;
class QGridLayout;

namespace zyga::ui {

class UnitSpinBox;

/// What a spread takes for granted: draws, errors of the table, assumptions that vary.
class SpreadFields : public QWidget {
  Q_OBJECT
 public:
  explicit SpreadFields(QWidget* parent = nullptr);
  study::SpreadOptions options() const;
  void setOptions(const study::SpreadOptions& options);

 signals:
  void edited();

 private:
  UnitSpinBox* field(QGridLayout& grid, int row, const char* name, const QString& title, const QString& tip,
                     const QString& unit, double most, int decimals);

  UnitSpinBox *draws_, *seed_, *measured_, *inferred_, *leastOverlap_, *mostOverlap_, *leastCartilage_, *mostCartilage_;
  QCheckBox* vary_;
};

}  // namespace zyga::ui
