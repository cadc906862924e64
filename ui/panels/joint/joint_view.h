#pragma once

#include <QWidget>
#include <array>

#include "ui/document/document.h"

class QLabel;
class QStackedWidget;
class QToolButton;

namespace zyga::ui {

class AngleField;
class FacetDrawing;
class MeetingNumbers;
class VerdictBadge;

/// The selected joint: how its facets meet, its three angles with what the bones allow, and what stops it.
class JointView : public QWidget {
  Q_OBJECT
 public:
  explicit JointView(Document& document, QWidget* parent = nullptr);
  /// Wide enough for the numbers; what is too high is scrolled.
  QSize minimumSizeHint() const override;
  QSize sizeHint() const override;

 private:
  QWidget* makeEmptyPage();
  QWidget* makeJointPage();
  void documentChanged(Changes what);
  void refresh();
  void showJoint(JointIndex joint);
  void turn(int motion, double angle);
  void toNeutral();

  Document& document_;
  QStackedWidget* pages_;
  QLabel* title_ = nullptr;
  QLabel* bones_ = nullptr;
  VerdictBadge* badge_ = nullptr;
  QToolButton* neutral_ = nullptr;
  QLabel* complaint_ = nullptr;
  FacetDrawing* drawing_ = nullptr;
  MeetingNumbers* numbers_ = nullptr;
  QLabel* grounds_ = nullptr;
  std::array<AngleField*, 3> angles_{};
};

}  // namespace zyga::ui
