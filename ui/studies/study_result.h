#pragma once

#include <QPainter>
#include <QSizeF>
#include <QString>
#include <array>
#include <string>
#include <variant>
#include <vector>

#include "core/study/reach/envelope.h"
#include "core/study/reach/range_chart.h"
#include "core/study/stress/pressure.h"
#include "core/study/uncertainty/spread.h"
#include "ui/plots/plot_ink.h"

namespace zyga::ui {

enum class StudyKind { Elevation, Envelope, Range, Spread, Pressure };
inline constexpr std::array<StudyKind, 5> kStudyKinds{StudyKind::Elevation, StudyKind::Envelope, StudyKind::Range,
                                                      StudyKind::Spread, StudyKind::Pressure};

/// "Head height and slope", "Reach envelope"...
QString title(StudyKind kind);
/// One sentence on what it tells.
QString tells(StudyKind kind);
/// Done while one blinks: worked out anew by itself as the animal changes.
bool isQuick(StudyKind kind);

/// What a study has found; alternatives in the order of StudyKind.
using StudyResult =
    std::variant<study::Elevation, study::Envelope, study::RangeChart, study::SpreadStudy, study::Pressure>;

std::vector<std::string> sentences(const StudyResult& result);
/// What always goes with it: cautions and views, in full sentences.
std::vector<std::string> cautions(const StudyResult& result);
std::string json(const StudyResult& result);
void paintStudy(QPainter& painter, const QRectF& area, const StudyResult& result, const PlotInk& ink);
/// Of its figure on paper, points.
QSizeF paperSize(const StudyResult& result);

}  // namespace zyga::ui
