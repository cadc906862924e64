#pragma once

#include <QWidget>
#include <array>

#include "core/range/findings.h"
#include "core/range/supported_map.h"
#include "ui/document/document.h"

class QCheckBox;
class QHBoxLayout;
class QLabel;
class QStackedWidget;
class QToolButton;

namespace zyga::ui {

class AngleField;
class FacetDrawing;
class MeetingNumbers;
class SupportedMapView;
class VerdictBadge;

/// The selected joint: how its facets meet, what its bones support over two motions, its three angles with what the
/// bones allow and what stops it, and what neutral means here.
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
  void letAxialFollow(bool follow);
  kinematics::Pose bent(kinematics::Pose pose, JointIndex joint, double dorsiflexion, double lateral) const;
  void showMap(JointIndex joint, range::Level level);
  void showNeutral(JointIndex joint);
  QHBoxLayout* makeHead(QWidget* page);
  QHBoxLayout* makeFoot(QWidget* page);
  QHBoxLayout* makeDrawings(QWidget* page);
  void turnTo(double dorsiflexion, double lateral);
  void turnBy(double dorsiflexion, double lateral);
  QString turnText() const;

  /// The map of one joint, and what it hangs on.
  struct MapOf {
    JointIndex joint;
    double torsion = 0;
    kinematics::Articulation::Rest rest;
    range::Assumptions assumptions;
    const range::ContactModel* contact = nullptr;
    bool operator==(const MapOf&) const = default;
  };

  Document& document_;
  std::optional<MapOf> mapOf_;
  range::SupportedMap map_;
  QStackedWidget* pages_;
  QLabel* title_ = nullptr;
  VerdictBadge* badge_ = nullptr;
  QToolButton* neutral_ = nullptr;
  QLabel* complaint_ = nullptr;
  FacetDrawing* drawing_ = nullptr;
  MeetingNumbers* numbers_ = nullptr;
  SupportedMapView* mapView_ = nullptr;
  QLabel* grounds_ = nullptr;
  QLabel* articulation_ = nullptr;
  QLabel* neutralBy_ = nullptr;
  QLabel* caution_ = nullptr;
  std::array<AngleField*, 3> angles_{};
  QCheckBox* axial_ = nullptr;
};

/// A verdict as its shape and its state in words.
class VerdictBadge : public QWidget {
 public:
  explicit VerdictBadge(QWidget* parent = nullptr);
  void show(const range::JointVerdict& verdict);
  QSize sizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  range::Level level_ = range::Level::NotJudged;
  QString words_;
};

}  // namespace zyga::ui
