#pragma once

#include <QWidget>

#include "ui/panels/claims/claims_model.h"

class QLabel;
class QPushButton;

namespace zyga::ui {

class VerdictMark;

/// One answer in words: how probable it is, the verdict on the bones as they are, what both rest on, what stops it,
/// what it would take, what stands beside it, and a button that shows the pose.
class AnswerView : public QWidget {
  Q_OBJECT
 public:
  explicit AnswerView(QWidget* parent = nullptr);

  /// `known` may be none: not asked yet. `present`: the pose on screen.
  void setAnswer(const study::Claim& claim, const ClaimAnswers::Known* known, const kinematics::Pose& present);

 signals:
  void poseAsked();

 private:
  VerdictMark* mark_;
  QLabel *probability_, *verdict_, *tally_, *stops_, *needs_, *beside_, *notes_, *basis_;
  QPushButton* pose_;
};

}  // namespace zyga::ui
