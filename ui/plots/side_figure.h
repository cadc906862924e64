#pragma once

#include <QPainterPath>
#include <QPolygonF>

#include "core/study/reach/sagittal_plane.h"
#include "ui/plots/plot_axes.h"

/// Parts that figures of the animal from its left side share.
namespace zyga::ui {

/// A frame true to scale, head to the left, that holds all of these points and the ground with `room` (m) around them.
/// The axes are titled for ways ahead and heights.
PlotFrame sideFrame(const QRectF& area, const std::vector<study::Line>& lines, const PlotInk& ink, double room);
QPolygonF polygonOf(const study::Line& line, const PlotFrame& frame);
void paintLine(QPainter& painter, const study::Line& line, const PlotFrame& frame, const QPen& pen);
/// Ground line with hatching under it, axes, the animal's lines in muted ink.
void paintStage(QPainter& painter, const PlotFrame& frame, const std::vector<study::Line>& body, const PlotInk& ink);
/// A bar of one metre (or of ten centimetres where a metre would be too long) over the lower right corner.
void paintScaleBar(QPainter& painter, const PlotFrame& frame, const PlotInk& ink);

}  // namespace zyga::ui
