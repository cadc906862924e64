#include "ui/sheets/person.h"

#include <QPolygonF>

namespace zyga::ui {
namespace {

// Right half, outwards and up, by the drawing rule of seven and a half heads (common practice, no source).
const QPolygonF kBody{{0.000, 0.868}, {0.024, 0.868}, {0.027, 0.845}, {0.050, 0.832}, {0.092, 0.818}, {0.118, 0.800},
                      {0.122, 0.770}, {0.104, 0.725}, {0.094, 0.670}, {0.083, 0.615}, {0.087, 0.560}, {0.094, 0.510},
                      {0.094, 0.450}, {0.084, 0.360}, {0.070, 0.285}, {0.072, 0.225}, {0.062, 0.140}, {0.046, 0.055},
                      {0.052, 0.022}, {0.064, 0.006}, {0.060, 0.000}, {0.026, 0.000}, {0.018, 0.030}, {0.020, 0.140},
                      {0.018, 0.230}, {0.020, 0.290}, {0.010, 0.400}, {0.003, 0.468}, {0.000, 0.470}};
const QPolygonF kArm{{0.085, 0.820}, {0.118, 0.806}, {0.134, 0.778}, {0.140, 0.720}, {0.148, 0.640}, {0.158, 0.560},
                     {0.166, 0.490}, {0.176, 0.450}, {0.172, 0.405}, {0.160, 0.396}, {0.148, 0.420}, {0.144, 0.490},
                     {0.128, 0.570}, {0.118, 0.640}, {0.106, 0.720}, {0.096, 0.760}};

/// Through the middles of the sides, bending at the corners.
QPainterPath rounded(const QPolygonF& corners) {
  QPainterPath path((corners.last() + corners.first()) / 2);
  for (qsizetype i = 0; i < corners.size(); ++i)
    path.quadTo(corners[i], (corners[i] + corners[(i + 1) % corners.size()]) / 2);
  path.closeSubpath();
  return path;
}

/// The half and its mirror in one closed line, corners on the mid-line sharp.
QPainterPath whole(const QPolygonF& half) {
  QPolygonF all = half;
  for (qsizetype i = half.size() - 2; i > 0; --i) all += QPointF(-half[i].x(), half[i].y());
  return rounded(all);
}

}  // namespace

QPainterPath personPath() {
  QPainterPath path = whole(kBody);
  const QPainterPath arm = rounded(kArm);
  path = path.united(arm).united(QTransform::fromScale(-1, 1).map(arm));
  QPainterPath head;
  head.addEllipse(QPointF(0, 0.934), 0.046, 0.066);
  path = path.united(head);
  return QTransform::fromScale(1, -1).map(path);
}

}  // namespace zyga::ui
