#include "ui/strip/strip_words.h"

#include <QObject>

#include "ui/theme/figures.h"
#include "ui/theme/words.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

QString verdictWords(const Document& document, JointIndex joint) {
  const range::JointVerdict* verdict = document.assessment().find(joint);
  if (!verdict || verdict->level == range::Level::NotJudged) return notJudgedWords(document.specimen(), joint);
  const QString level = text(range::toText(verdict->level));
  const bool plain = verdict->level == range::Level::Supported || verdict->findings.empty();
  return plain ? level : level + QStringLiteral(": ") + text(verdict->findings.front().text);
}

}  // namespace

MotionEnds motionEnds(int motion) {
  switch (motion) {
    case 0:
      return {QObject::tr("dorsal"), QObject::tr("ventral")};
    case 1:
      return {QObject::tr("left"), QObject::tr("right")};
    default:
      return {QObject::tr("left up"), QObject::tr("right up")};
  }
}

QString motionTitle(int motion) {
  switch (motion) {
    case 0:
      return QObject::tr("Dorsal / ventral");
    case 1:
      return QObject::tr("Left / right");
    default:
      return QObject::tr("Torsion");
  }
}

QString jointWords(const Document& document, JointIndex joint, int motion, const range::Band& band) {
  const anatomy::Joint& bones = document.specimen()[joint];
  const double angle = document.pose()[joint][motion];
  const double limit = angle < 0 ? band.least : band.most;
  QString words = text(bones.id) + QStringLiteral("  ") + text(range::motionName(bones, motion, angle < 0 ? -1 : 1)) +
                  QLatin1Char(' ') + degrees(std::abs(angle));
  if (band.judged && !band.empty) words += QStringLiteral(" of ") + degrees(std::abs(limit));
  return words + QStringLiteral(" \u00B7 ") + verdictWords(document, joint);
}

QString spanName(const Document& document, const StripColumns& columns, std::size_t first, std::size_t last) {
  const anatomy::Specimen& specimen = document.specimen();
  const auto from = specimen.cranialBone(columns.columns[first].joint);
  const auto to = specimen.caudalBone(columns.columns[last].joint);
  return text(specimen[from].id) + QStringLiteral("\u2013") + text(specimen[to].id);
}

QString notJudgedWords(const anatomy::Specimen& specimen, JointIndex joint) {
  const anatomy::Joint& bones = specimen[joint];
  if (bones.kind == anatomy::JointKind::Fixed) return QObject::tr("these bones do not move against each other");
  if (bones.hasFacets()) return QObject::tr("not judged: the facets of one bone are missing");
  return QObject::tr("not judged: no facets and no typed limits");
}

}  // namespace zyga::ui
