#pragma once

#include <QWidget>

#include "core/study/claims/claim_answer.h"
#include "ui/document/document.h"

class QLabel;
class QPushButton;

namespace zyga::ui {

class VerdictMark;

/// One answer in words: verdict, what stops it, what it would take, and a button that shows the pose.
class AnswerView : public QWidget {
  Q_OBJECT
 public:
  explicit AnswerView(QWidget* parent = nullptr);

  /// `answer` may be none: not asked yet. `current` is false while a newer one is being asked.
  void setAnswer(const Document& document, const study::Claim& claim, const study::ClaimAnswer* answer, bool current);

 signals:
  void poseAsked();

 private:
  VerdictMark* mark_;
  QLabel *verdict_, *stops_, *needs_, *notes_, *basis_;
  QPushButton* pose_;
};

}  // namespace zyga::ui
