#include "ui/panels/ground/ground_words.h"

#include <QObject>
#include <numbers>

#include "ui/theme/figures.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

using anatomy::BoneKind;

/// Circumference of a bone of either side, the measured one first.
const anatomy::Cell* circumferenceOf(const anatomy::MeasurementTable& table, BoneKind kind) {
  const anatomy::Cell* best = nullptr;
  for (const auto side : {anatomy::Side::Left, anatomy::Side::Right}) {
    const auto* row = table.find({kind, 0, 0, side});
    if (!row) continue;
    const auto& cell = row->measures[anatomy::Measure::Circumference];
    if (cell.known() && (!best || (cell.measured() && !best->measured()))) best = &cell;
  }
  return best;
}

QString spanWords(const study::Spread& spread, double unit, int decimals, const QString& after) {
  const QString least = QString::number(spread.least * unit, 'f', decimals);
  const QString most = QString::number(spread.most * unit, 'f', decimals);
  return (least == most ? least : least + QChar(0x2013) + most) + after;
}

}  // namespace

QString massWords(const study::MassRange& mass) {
  const bool tonnes = mass.mass >= 1000;
  const double unit = tonnes ? 1e-3 : 1;
  const int decimals = tonnes ? 1 : 0;
  return QObject::tr("%1 to %2 %3")
      .arg(QString::number(mass.low * unit, 'f', decimals), QString::number(mass.high * unit, 'f', decimals),
           tonnes ? "t" : "kg");
}

QString angleWords(const std::optional<study::Spread>& spread) {
  return spread ? spanWords(*spread, 180 / std::numbers::pi, 0, QChar(0xb0)) : QObject::tr("unknown");
}

QString amountWords(const std::optional<study::Spread>& spread, int decimals, const QString& unit) {
  return spread ? spanWords(*spread, 1, decimals, unit.isEmpty() ? QString() : " " + unit) : QObject::tr("unknown");
}

QString circumferenceWords(const files::Project& project) {
  const auto *humerus = circumferenceOf(project.table, BoneKind::Humerus),
             *femur = circumferenceOf(project.table, BoneKind::Femur);
  if (!humerus || !femur) return QObject::tr("unknown: no circumferences");
  const auto mass = study::massFromCircumferences(humerus->value, femur->value);
  const bool measured = humerus->measured() && femur->measured();
  return (measured ? QObject::tr("%1, circumferences measured") : QObject::tr("%1, circumferences inferred"))
      .arg(massWords(mass));
}

QString balanceInShort(const study::Balance& balance) {
  if (!balance.margin) return QObject::tr("off the ground");
  const QString margin = millimetres(std::abs(*balance.margin), 0);
  return balance.inside() ? QObject::tr("balanced, %1 inside").arg(margin)
                          : QObject::tr("tips, %1 outside").arg(margin);
}

}  // namespace zyga::ui
