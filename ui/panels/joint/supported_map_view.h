#pragma once

#include <QWidget>

#include "core/range/supported_map.h"

namespace zyga::ui {

/// What a joint's bones support over dorsiflexion (up) and lateral flexion (left is left), near the edge softer, with
/// the present angles as a mark. The mark is dragged, or moved with the arrow keys (Shift: large steps); Escape takes a
/// drag back.
class SupportedMapView : public QWidget {
  Q_OBJECT
 public:
  explicit SupportedMapView(QWidget* parent = nullptr);
  /// Angles in rad.
  void show(const range::SupportedMap& map, double dorsiflexion, double lateral, range::Level level);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

  /// Where a combination of angles is drawn, px.
  QPointF placeOf(double dorsiflexion, double lateral) const;
  QPointF markPlace() const;

 signals:
  /// The pointer has taken the mark to these angles, rad.
  void dragged(double dorsiflexion, double lateral);
  void released();
  void cancelled();
  /// The keyboard asks for a turn by this much, rad.
  void stepped(double dorsiflexion, double lateral);

 protected:
  bool event(QEvent* event) override;
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QRectF plot() const;
  void dragTo(const QPointF& place);
  void paintRegion(QPainter& painter);
  void paintAxes(QPainter& painter);
  void paintMark(QPainter& painter);

  range::SupportedMap map_;
  double dorsiflexion_ = 0, lateral_ = 0;
  range::Level level_ = range::Level::NotJudged;
  bool held_ = false;
  QPointF grip_;  ///< from the mark to the pointer
};

}  // namespace zyga::ui
