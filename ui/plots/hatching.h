#pragma once

#include <QLineF>
#include <QList>
#include <QPolygonF>

namespace zyga::ui {

/// Parallel lines inside closed polygons (what lies inside an even number of them is outside), `spacing` apart at
/// `angle` degrees from the horizontal, counter-clockwise. Real lines and no clipping, so that every kind of paper
/// takes them.
QList<QLineF> hatchingIn(const QList<QPolygonF>& polygons, qreal spacing, qreal angle = 45);

}  // namespace zyga::ui
