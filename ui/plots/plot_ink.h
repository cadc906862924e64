#pragma once

#include <QColor>
#include <QFont>
#include <QLineF>
#include <QList>
#include <QPen>
#include <QPolygonF>

namespace zyga::ui {

/// What a plot is drawn with. Lines and hatching carry the meaning; colours only soften it, so that a plot reads as
/// well in black and white. Sizes are in the painter's units: on screen pixels, on paper points.
struct PlotInk {
  QColor paper;   ///< behind everything; invalid: nothing is filled
  QColor ink;     ///< what the plot is about
  QColor muted;   ///< axes, words on them, the animal behind
  QColor line;    ///< grid
  QColor accent;  ///< the outline or bar that is told
  QFont font;     ///< its pixel size is the size of words

  qreal size() const { return font.pixelSize(); }
  /// A pen of so many hairlines; a hairline is a twelfth of the words' size.
  QPen pen(const QColor& colour, qreal hairlines = 1, Qt::PenStyle style = Qt::SolidLine) const;
  QFont small() const;
  QFont bold() const;
};

/// Black, greys and white, as paper takes them; words 9 units high in the program's usual face.
PlotInk printInk(int size = 9);

/// Parallel lines inside closed polygons (what lies inside an even number of them is outside), `spacing` apart at
/// `angle` degrees from the horizontal, counter-clockwise. Real lines and no clipping, so that every kind of paper
/// takes them.
QList<QLineF> hatchingIn(const QList<QPolygonF>& polygons, qreal spacing, qreal angle = 45);

}  // namespace zyga::ui
