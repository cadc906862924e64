#include "ui/words/anatomy_words.h"

#include <QCoreApplication>
#include <QStringList>

#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using anatomy::BoneKind;
using anatomy::FillBy;
using anatomy::Region;
using anatomy::Side;

/// A bone by its kind, "%1" for its number.
const char* formOf(BoneKind kind) {
  switch (kind) {
    case BoneKind::Skull:
      return QT_TRANSLATE_NOOP("words", "skull");
    case BoneKind::Jaw:
      return QT_TRANSLATE_NOOP("words", "lower jaw");
    case BoneKind::Cervical:
      return QT_TRANSLATE_NOOP("words", "cervical vertebra %1");
    case BoneKind::Dorsal:
      return QT_TRANSLATE_NOOP("words", "dorsal vertebra %1");
    case BoneKind::Lumbar:
      return QT_TRANSLATE_NOOP("words", "lumbar vertebra %1");
    case BoneKind::Sacral:
      return QT_TRANSLATE_NOOP("words", "sacral vertebra %1");
    case BoneKind::Caudal:
      return QT_TRANSLATE_NOOP("words", "caudal vertebra %1");
    case BoneKind::CervicalRib:
      return QT_TRANSLATE_NOOP("words", "cervical rib %1");
    case BoneKind::DorsalRib:
      return QT_TRANSLATE_NOOP("words", "dorsal rib %1");
    case BoneKind::Chevron:
      return QT_TRANSLATE_NOOP("words", "chevron %1");
    case BoneKind::Scapula:
      return QT_TRANSLATE_NOOP("words", "scapula");
    case BoneKind::Coracoid:
      return QT_TRANSLATE_NOOP("words", "coracoid");
    case BoneKind::SternalPlate:
      return QT_TRANSLATE_NOOP("words", "sternal plate");
    case BoneKind::Humerus:
      return QT_TRANSLATE_NOOP("words", "humerus");
    case BoneKind::Radius:
      return QT_TRANSLATE_NOOP("words", "radius");
    case BoneKind::Ulna:
      return QT_TRANSLATE_NOOP("words", "ulna");
    case BoneKind::Carpal:
      return QT_TRANSLATE_NOOP("words", "carpal %1");
    case BoneKind::Metacarpal:
      return QT_TRANSLATE_NOOP("words", "metacarpal %1");
    case BoneKind::ManusPhalanx:
      return QT_TRANSLATE_NOOP("words", "finger %1");
    case BoneKind::Ilium:
      return QT_TRANSLATE_NOOP("words", "ilium");
    case BoneKind::Pubis:
      return QT_TRANSLATE_NOOP("words", "pubis");
    case BoneKind::Ischium:
      return QT_TRANSLATE_NOOP("words", "ischium");
    case BoneKind::Femur:
      return QT_TRANSLATE_NOOP("words", "femur");
    case BoneKind::Tibia:
      return QT_TRANSLATE_NOOP("words", "tibia");
    case BoneKind::Fibula:
      return QT_TRANSLATE_NOOP("words", "fibula");
    case BoneKind::Astragalus:
      return QT_TRANSLATE_NOOP("words", "astragalus");
    case BoneKind::Metatarsal:
      return QT_TRANSLATE_NOOP("words", "metatarsal %1");
    case BoneKind::PesPhalanx:
      break;
  }
  return QT_TRANSLATE_NOOP("words", "toe %1");
}

QString sided(Side side, const QString& what) {
  if (side == Side::Left) return filled(translated(QT_TRANSLATE_NOOP("words", "left %1")), {what});
  if (side == Side::Right) return filled(translated(QT_TRANSLATE_NOOP("words", "right %1")), {what});
  return what;
}

QString id(const anatomy::BoneName& bone) { return QString::fromStdString(toId(bone)); }

QString ruleAlone(const anatomy::FillRule& rule) {
  switch (rule.by) {
    case FillBy::Mirrored:
      return filled(translated(QT_TRANSLATE_NOOP("words", "mirrored from %1")), {id(rule.from)});
    case FillBy::Between:
      return filled(translated(QT_TRANSLATE_NOOP("words", "between %1 and %2 along the column")),
                    {id(rule.from), id(rule.to)});
    case FillBy::Nearest:
      return filled(translated(QT_TRANSLATE_NOOP("words", "by proportion to %1")), {id(rule.from)});
    case FillBy::MeasuredBones:
      return translated(QT_TRANSLATE_N_NOOP("words", "by proportion to the measured bones (median of %n)"), rule.count);
    case FillBy::PlanSize:
      return translated(QT_TRANSLATE_NOOP("words", "by the body plan's own size"));
    case FillBy::LessCondyle:
      return translated(QT_TRANSLATE_NOOP("words", "length with condyle less a condyle by proportion"));
    case FillBy::OwnLength:
      return translated(QT_TRANSLATE_NOOP("words", "by proportion to the length"));
    case FillBy::PlanAngle:
      return translated(QT_TRANSLATE_NOOP("words", "by the body plan's angle"));
    case FillBy::SameLimb:
      return translated(QT_TRANSLATE_NOOP("words", "by proportion to the measured bones of the limb"));
    case FillBy::OtherLimb:
      return translated(QT_TRANSLATE_NOOP("words", "by proportion to the other limb"));
    case FillBy::NoFacet:
      return translated(QT_TRANSLATE_NOOP("words", "the table says that the bone has no facet"));
    case FillBy::MatesWith:
      return filled(translated(QT_TRANSLATE_NOOP("words", "meets %1")), {id(rule.from)});
    case FillBy::FacetTurn:
      return translated(QT_TRANSLATE_NOOP("words", "half of the joint's facet turn"));
    case FillBy::OnArc:
      return translated(QT_TRANSLATE_NOOP("words", "tangent to the arc on which the facet slides"));
    case FillBy::Other:
    case FillBy::Nothing:
      break;
  }
  return QString::fromStdString(rule.words);
}

QString ruleInWords(const anatomy::FillRule& rule) {
  const QString alone = ruleAlone(rule);
  if (!rule.fittedTo) return alone;
  const char* form = QT_TRANSLATE_NOOP("words", "%1, fitted to the measured length of the tail");
  if (rule.fittedTo == Region::Cervical)
    form = QT_TRANSLATE_NOOP("words", "%1, fitted to the measured length of the neck");
  if (rule.fittedTo == Region::Dorsal)
    form = QT_TRANSLATE_NOOP("words", "%1, fitted to the measured length of the trunk");
  if (rule.fittedTo == Region::Sacral)
    form = QT_TRANSLATE_NOOP("words", "%1, fitted to the measured length of the sacrum");
  return filled(translated(form), {alone});
}

}  // namespace

QString boneName(const anatomy::BoneName& name) {
  if (name.kind == BoneKind::Cervical && name.number == 1) return translated(QT_TRANSLATE_NOOP("words", "atlas"));
  if (name.kind == BoneKind::Cervical && name.number == 2) return translated(QT_TRANSLATE_NOOP("words", "axis"));
  QString words = filled(translated(formOf(name.kind)), {QString::number(name.number)});
  if (name.phalanx > 0)
    words = filled(translated(QT_TRANSLATE_NOOP("words", "%1, phalanx %2")), {words, QString::number(name.phalanx)});
  return sided(name.side, words);
}

QString boneNameAndId(const anatomy::BoneName& name) {
  const QString words = boneName(name);
  if (words.compare(id(name), Qt::CaseInsensitive) == 0) return capital(words);
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1 (%2)")), {capital(words), id(name)});
}

QString regionName(Region region) { return say(termOf(region)); }
QString measureName(anatomy::Measure measure) { return say(termOf(measure)); }

QString measureValue(anatomy::Measure measure, double value) {
  return isAngle(measure) ? degrees(value) : millimetres(value);
}

QString evidenceName(anatomy::Evidence evidence) { return say(termOf(evidence)); }
QString noteBasisName(anatomy::NoteBasis basis) { return say(termOf(basis)); }

QString planName(anatomy::BodyPlan plan) {
  switch (plan) {
    case anatomy::BodyPlan::LowBrowser:
      return translated(QT_TRANSLATE_NOOP("words", "low browser"));
    case anatomy::BodyPlan::WideGauge:
      return translated(QT_TRANSLATE_NOOP("words", "wide gauge"));
    case anatomy::BodyPlan::Mammal:
      return translated(QT_TRANSLATE_NOOP("words", "mammal"));
    case anatomy::BodyPlan::Bird:
      return translated(QT_TRANSLATE_NOOP("words", "bird"));
    case anatomy::BodyPlan::HighBrowser:
      break;
  }
  return translated(QT_TRANSLATE_NOOP("words", "high browser"));
}

QString markName(const anatomy::WantedMark& mark) {
  if (mark.what.id.empty()) return QString::fromStdString(mark.name);
  return sided(mark.side, say(mark.what));
}

QString originOf(const anatomy::Cell& cell) {
  if (cell.measured()) return translated(QT_TRANSLATE_NOOP("words", "measured"));
  return filled(translated(QT_TRANSLATE_NOOP("words", "inferred: %1")), {ruleInWords(cell.rule)});
}

QString originOf(anatomy::Measure measure, const anatomy::Cell& cell) {
  const QString origin = originOf(cell);
  if (!(cell.standardError > 0)) return origin;
  return filled(translated(QT_TRANSLATE_NOOP("words", "%1; ± %2")),
                {origin, measureValue(measure, cell.standardError)});
}

}  // namespace zyga::ui
