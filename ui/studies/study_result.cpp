#include "ui/studies/study_result.h"

#include <QObject>

#include "core/files/export/study_json.h"
#include "ui/plots/study_plots.h"

namespace zyga::ui {
namespace {

constexpr const char* kBareBones =
    "Ranges are of bare bones: they may be off by 5 degrees a joint, and soft tissue may lessen them.";

/// One callable out of several.
template <class... Calls>
struct Each : Calls... {
  using Calls::operator()...;
};
template <class... Calls>
Each(Calls...) -> Each<Calls...>;

}  // namespace

QString title(StudyKind kind) {
  switch (kind) {
    case StudyKind::Elevation:
      return QObject::tr("Head height and neck slope");
    case StudyKind::Envelope:
      return QObject::tr("Reach envelope");
    case StudyKind::Range:
      return QObject::tr("Ranges of the column");
    case StudyKind::Spread:
      return QObject::tr("Spread of the answer");
    case StudyKind::Pressure:
      break;
  }
  return QObject::tr("Blood pressure");
}

QString tells(StudyKind kind) {
  switch (kind) {
    case StudyKind::Elevation:
      return QObject::tr("How high the head comes with the neck neutral, at the ends of its range and now.");
    case StudyKind::Envelope:
      return QObject::tr("Where the snout gets to with every joint inside its range, the animal as it stands.");
    case StudyKind::Range:
      return QObject::tr("How far each joint goes from neutral, one motion at a time.");
    case StudyKind::Spread:
      return QObject::tr("How far heights and slopes move with errors of measurement and with assumptions.");
    case StudyKind::Pressure:
      break;
  }
  return QObject::tr("The column of blood between heart and head.");
}

bool isQuick(StudyKind kind) { return kind == StudyKind::Elevation || kind == StudyKind::Pressure; }

std::vector<std::string> sentences(const StudyResult& result) {
  return std::visit([](const auto& found) { return study::sentences(found); }, result);
}

std::vector<std::string> cautions(const StudyResult& result) {
  std::vector<std::string> all;
  if (std::holds_alternative<study::Pressure>(result)) {
    all.assign(std::begin(study::kPressureViews), std::end(study::kPressureViews));
    all.emplace_back(study::kPressureCaution);
  }
  all.emplace_back(kBareBones);
  return all;
}

std::string json(const StudyResult& result) {
  return std::visit([](const auto& found) { return files::studyJson(found); }, result);
}

void paintStudy(QPainter& painter, const QRectF& area, const StudyResult& result, const PlotInk& ink) {
  std::visit(Each{[&](const study::Elevation& found) { paintElevation(painter, area, found, ink); },
                  [&](const study::Envelope& found) { paintEnvelope(painter, area, found, ink); },
                  [&](const study::RangeChart& found) { paintRangeChart(painter, area, found, ink); },
                  [&](const study::SpreadStudy& found) { paintSpread(painter, area, found, ink); },
                  [&](const study::Pressure& found) { paintPressure(painter, area, found, ink); }},
             result);
}

QSizeF paperSize(const StudyResult& result) {
  return std::visit([](const auto& found) { return figureSize(found); }, result);
}

}  // namespace zyga::ui
