#include "ui/panels/joint/joint_words.h"

#include <QObject>
#include <algorithm>

#include "ui/theme/typography.h"
#include "ui/words/anatomy_words.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

bool onlyTyped(const anatomy::Joint& joint) { return joint.typed.has_value() && !joint.hasFacets(); }

bool isColumn(const anatomy::Joint& joint) { return joint.region <= anatomy::Region::Caudal; }

}  // namespace

QString motionTitleOf(const anatomy::Joint& joint, int motion) {
  if (motion == 1 && isColumn(joint)) return QObject::tr("Lateral flexion");
  if (motion == 2) return isColumn(joint) ? QObject::tr("Axial rotation") : QObject::tr("Rotation");
  return capital(motionWords(range::motionName(joint, motion, 1)));
}

QString positiveWay(const anatomy::Joint& joint, int motion) {
  if (motion == 0) return {};
  if (!isColumn(joint)) return motion == 2 ? QObject::tr("inward +") : QString();
  return motion == 1 ? QObject::tr("left +") : QObject::tr("left side up +");
}

QString bonesOf(const anatomy::Specimen& specimen, JointIndex joint) {
  const anatomy::Joint& bones = specimen[joint];
  return QObject::tr("%1 on %2")
      .arg(capital(boneName(specimen[bones.distal].name)), boneName(specimen[bones.proximal].name));
}

QString intervalWords(const range::MotionRange& band) {
  if (!band.judged) return QObject::tr("no limits known");
  if (band.empty) return QObject::tr("no angle is within range");
  constexpr double kNothing = 1e-6;
  if (band.max - band.min < kNothing) return QObject::tr("held at %1").arg(signedDegrees(band.max));
  return QObject::tr("%1 to %2").arg(signedDegrees(band.min), signedDegrees(band.max));
}

QString bandStopWords(const anatomy::Specimen& specimen, JointIndex joint, const range::MotionRange& band) {
  if (!band.judged || onlyTyped(specimen[joint])) return {};
  if (band.empty) return QObject::tr("The other two angles leave no room here.");
  const range::Stop &most = band.maxStop, &least = band.minStop;
  if (most == least) return QObject::tr("\u00B1 %1").arg(stopWords(specimen, joint, most));
  // Mirror images in one line: "+ left, − right zygapophyseal overlap 50 %".
  range::Stop mirrored = least;
  mirrored.side = most.side;
  const bool sided = most.side != anatomy::Side::Midline && least.side != anatomy::Side::Midline;
  if (sided && most == mirrored) {
    const QString what = stopWords(specimen, joint, most, StopSide::Unsaid);
    return most.side == anatomy::Side::Left ? QObject::tr("+ left, \u2212 right: %1").arg(what)
                                            : QObject::tr("+ right, \u2212 left: %1").arg(what);
  }
  return QObject::tr("+ %1\n\u2212 %2").arg(stopWords(specimen, joint, most), stopWords(specimen, joint, least));
}

QString stopSentences(const anatomy::Specimen& specimen, JointIndex joint, int motion, const range::MotionRange& band) {
  if (!band.judged || band.empty) return intervalWords(band);
  const auto line = [&](double angle, double sign, const range::Stop& stop, double axial) {
    const QString along = motion == 1 ? alongWords(specimen[joint], axial) : QString();
    const QString to = along.isEmpty() ? signedDegrees(angle) : inOneLine({signedDegrees(angle), along});
    return QObject::tr("%1 to %2: %3")
        .arg(capital(motionWords(range::motionName(specimen[joint], motion, sign))), to,
             sourcedStopWords(specimen, joint, stop));
  };
  return line(band.max, 1, band.maxStop, band.axialAtMax) + QLatin1Char('\n') +
         line(band.min, -1, band.minStop, band.axialAtMin);
}

QString groundsWords(const anatomy::Joint& joint, const range::JointVerdict* verdict) {
  if (joint.kind == anatomy::JointKind::Fixed) return QObject::tr("These bones do not move against each other.");
  if (verdict && verdict->level == range::Level::NotJudged) {
    if (joint.hasFacets()) return QObject::tr("Not assessed: the facets of one side are not known.");
    return QObject::tr("Not assessed: no facets meet here and nobody has typed limits.");
  }
  if (onlyTyped(joint))
    return QObject::tr("No facets meet here. The limits are typed: %1.").arg(limitSourceWords(joint.typed->source));
  return {};
}

}  // namespace zyga::ui
