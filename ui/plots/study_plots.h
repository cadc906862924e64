#pragma once

#include <QPainter>
#include <QRectF>
#include <QSizeF>

#include "core/study/run.h"
#include "ui/plots/plot_ink.h"

/// Studies as figures, on anything a QPainter draws on: screen, SVG, PDF, picture. Each fills `area` and stays inside
/// it. They need a QGuiApplication for their fonts, nothing else.
namespace zyga::ui {

/// Side view true to scale, head to the left: the outline of what the snout reaches, the animal as it stands, highest
/// and farthest place, the stretch of ground, a metre for scale.
void paintEnvelope(QPainter& painter, const QRectF& area, const study::Envelope& envelope, const PlotInk& ink);
/// Side view true to scale: the ways of carrying the neck, each with its own kind of line and its numbers beside
/// the snout.
void paintElevation(QPainter& painter, const QRectF& area, const study::Elevation& elevation, const PlotInk& ink);
/// The whole column, snout to the left: the range of each joint in dorsiflexion and ventriflexion, lateral flexion and
/// axial rotation; the present angle as a mark, a triangle where it is out of range.
void paintRangeChart(QPainter& painter, const QRectF& area, const study::RangeChart& chart, const PlotInk& ink);
/// How heights and slopes spread: a curve for the samples, a bar from 5 to 95 %, a line at the middle, a diamond for
/// the table as it is.
void paintSpread(QPainter& painter, const QRectF& area, const study::SpreadStudy& spread, const PlotInk& ink);
/// The column of blood in each way of carrying the neck, with what thin and thick blood make of it, and the perfusion
/// of the head that the heart adds.
void paintPressure(QPainter& painter, const QRectF& area, const study::Pressure& pressure, const PlotInk& ink);
/// Stress of each joint of the neck, snout to the left: a kind of line for each way of carrying it, and how even it is.
void paintStress(QPainter& painter, const QRectF& area, const study::JointStress& stress, const PlotInk& ink);

void paintStudy(QPainter& painter, const QRectF& area, const study::StudyResult& result, const PlotInk& ink);
/// Of a figure on paper, points.
QSizeF figureSize(study::StudyKind kind);

}  // namespace zyga::ui
