#pragma once

#include <QStackedWidget>
#include <QWidget>

#include "ui/studies/study_job.h"

class QCheckBox;
class QGridLayout;

namespace zyga::ui {

class UnitSpinBox;

/// What the uncertainty takes for granted: samples, errors of the table, assumptions that vary.
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

/// The settings of the study that is shown, remembered from one session to the next.
class StudyFields : public QStackedWidget {
  Q_OBJECT
 public:
  explicit StudyFields(QWidget* parent = nullptr);
  void showFor(StudyKind kind);
  StudySettings settings() const;
  /// Whether the feeding envelope is to be drawn in the view.
  bool drawsEnvelope() const;
  void setDrawsEnvelope(bool draws);

 signals:
  void edited();
  void drawsEnvelopeChanged(bool draws);

 protected:
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 private:
  QWidget* envelopePage();
  QWidget* pressurePage();
  QWidget* stressPage();
  void remember() const;
  void recall();

  QCheckBox *space_ = nullptr, *drawn_ = nullptr;
  SpreadFields* spread_ = nullptr;
  UnitSpinBox *heart_ = nullptr, *tension_ = nullptr;
};

}  // namespace zyga::ui
