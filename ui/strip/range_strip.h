#pragma once

#include <QWidget>
#include <optional>

#include "ui/document/document.h"
#include "ui/strip/shown_bands.h"
#include "ui/strip/strip_layout.h"
#include "ui/strip/strip_scene.h"

namespace zyga::ui {

class MotionChoice;
class StripKey;

/// The whole column from snout to tail tip, one lane a joint: the interval the bones support, and the present angle in
/// it. Dragging up or down bends: the joint under the pointer, or every joint of the chosen span in proportion to its
/// range. Dragging sideways chooses a span. Arrow keys do the same; Escape takes a drag back.
class RangeStrip : public QWidget {
  Q_OBJECT
 public:
  explicit RangeStrip(Document& document, QWidget* parent = nullptr);

  int motion() const { return motion_; }
  void setMotion(int motion);
  const std::optional<ColumnSpan>& span() const { return span_; }
  void setSpan(std::optional<ColumnSpan> span);
  /// The region shown alone; none: the whole animal.
  std::optional<anatomy::Region> zoomedRegion() const;
  void zoomTo(std::optional<anatomy::Region> region);

  const StripColumns& columns() const { return columns_; }
  const StripLayout& stripLayout() const { return layout_; }
  /// Where the mark of a column is drawn, in the widget's pixels.
  QPointF markPlace(std::size_t column) const;
  /// False while bands are still being looked for.
  bool settled() const { return bands_.complete(); }

  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 signals:
  /// What the pointer or the keyboard is on, and what a drag will do.
  void hint(const QString& text);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;
  bool event(QEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  enum class Gesture { None, Undecided, Bend, Sweep };
  struct Press {
    Gesture gesture = Gesture::None;
    QPointF place;
    std::size_t column = 0;
    kinematics::Pose pose;
    ColumnSpan bent;             ///< the columns that a bend turns
    std::vector<double> widths;  ///< of their bands at the start of the drag
  };

  void documentChanged(Changes what);
  void rebuild();
  void layOut();
  int placeSide();
  void fitScale();
  StripScene scene() const;

  std::optional<std::size_t> selectedColumn() const;
  void select(std::size_t column);
  bool onMark(const QPointF& point, std::size_t column) const;
  ColumnSpan bentWith(std::size_t column) const;

  void decide(const QPointF& point);
  void startBend();
  kinematics::Pose turned(const kinematics::Pose& pose, const std::vector<JointIndex>& joints,
                          const SpanTurn& span) const;
  void bendTo(const QPointF& point, bool fine);
  void sweepTo(const QPointF& point);
  void endGesture();
  bool cancelGesture();

  void moveSelection(int step, bool extendSpan);
  void selectEdge(bool last);
  void nudge(double delta);
  void toNeutral(std::size_t column);
  void toggleZoom(std::size_t region);
  bool stepBack();

  void hover(const QPointF& point);
  QString wordsAt(std::size_t column);
  QString bendName(const ColumnSpan& bent) const;
  void tell(const QString& words);

  Document& document_;
  MotionChoice* choice_;
  StripKey* key_;
  StripColumns columns_;
  StripLayout layout_;
  ShownBands bands_;
  int motion_ = 0;
  double scale_ = 0.35;  ///< rad at the outermost tick
  std::optional<std::size_t> zoom_;
  std::optional<ColumnSpan> span_;
  std::optional<std::size_t> spanAnchor_;
  std::optional<std::size_t> hovered_, hoveredLabel_;
  Press press_;
};

}  // namespace zyga::ui
