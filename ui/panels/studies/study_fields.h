#pragma once

#include <QStackedWidget>

#include "ui/studies/study_job.h"

class QCheckBox;

namespace zyga::ui {

class SpreadFields;
class UnitSpinBox;

/// The settings of the study that is shown, remembered from one session to the next.
class StudyFields : public QStackedWidget {
  Q_OBJECT
 public:
  explicit StudyFields(QWidget* parent = nullptr);
  void showFor(StudyKind kind);
  StudySettings settings() const;
  /// Whether the reach envelope is to be drawn in the view.
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
  void remember() const;
  void recall();

  QCheckBox *space_ = nullptr, *drawn_ = nullptr;
  SpreadFields* spread_ = nullptr;
  UnitSpinBox* heart_ = nullptr;
};

}  // namespace zyga::ui
