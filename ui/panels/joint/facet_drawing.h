#pragma once

#include <QWidget>
#include <optional>

#include "core/range/findings.h"

class QGridLayout;
class QLabel;

namespace zyga::ui {

/// Both pairs of zygapophyseal facets of a joint, flat and to one scale, seen along the normal of the prezygapophyses
/// with the direction of sliding upwards: prezyg filled, postzyg dashed, what they share hatched.
class FacetDrawing : public QWidget {
 public:
  explicit FacetDrawing(QWidget* parent = nullptr);
  /// Shows the pairs of this verdict; one that is missing leaves its half empty.
  void show(const range::JointVerdict& verdict);
  QSize sizeHint() const override;
  QSize minimumSizeHint() const override;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  struct Half {
    std::optional<range::FacetMeeting> meeting;
    range::Level level = range::Level::Supported;
  };
  void paintHalf(QPainter& painter, const QRectF& room, const Half& half, const QString& name, double pixelsPerMetre);
  void paintScaleBar(QPainter& painter, double pixelsPerMetre);
  double fittingScale(const QSizeF& room) const;
  QSizeF halfRoom() const;
  /// Too narrow for words between the sides.
  bool narrow() const { return width() < 220; }

  Half left_, right_;
};

/// The largest of 1, 2, 5, 10, 20 ... mm that is no longer than `longest`; both in m.
double roundLength(double longest);

/// The numbers of both facet pairs in two columns, and the gap between the centra. The overlap that counts under the
/// present assumptions is written in the text colour, the other one muted; the head says its least share.
class MeetingNumbers : public QWidget {
 public:
  explicit MeetingNumbers(QWidget* parent = nullptr);
  void show(const range::JointVerdict& verdict, const range::Assumptions& assumptions);

 private:
  enum Row { Head, ByLength, ByArea, Gap, Centra, Rows };
  void write(Row row, int column, const QString& words, bool muted = false);

  QGridLayout* grid_;
  QLabel* cells_[Rows][3];
};

}  // namespace zyga::ui
