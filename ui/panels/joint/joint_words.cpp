#include "ui/panels/joint/joint_words.h"

#include <QObject>
#include <algorithm>
#include <string>
#include <string_view>

#include "ui/theme/figures.h"
#include "ui/theme/words.h"
#include "ui/words/numbers.h"

namespace zyga::ui {
namespace {

bool onlyTyped(const anatomy::Joint& joint) { return joint.typed.has_value() && !joint.hasFacets(); }

bool isColumn(const anatomy::Joint& joint) { return joint.region <= anatomy::Region::Caudal; }

}  // namespace

QString motionTitleOf(const anatomy::Joint& joint, int motion) {
  if (motion == 1 && isColumn(joint)) return QObject::tr("Lateral flexion");
  if (motion == 2) return isColumn(joint) ? QObject::tr("Torsion") : QObject::tr("Rotation");
  return capital(text(range::motionName(joint, motion, 1)));
}

QString positiveWay(const anatomy::Joint& joint, int motion) {
  if (motion == 0) return {};
  if (!isColumn(joint)) return motion == 2 ? QObject::tr("inward +") : QString();
  return motion == 1 ? QObject::tr("left +") : QObject::tr("left side up +");
}

QString bonesOf(const anatomy::Specimen& specimen, JointIndex joint) {
  const anatomy::Joint& bones = specimen[joint];
  return QObject::tr("%1 on %2")
      .arg(capital(text(title(specimen[bones.distal].name))), text(title(specimen[bones.proximal].name)));
}

QString intervalWords(const range::Band& band) {
  if (!band.judged) return QObject::tr("no limits known");
  if (band.empty) return QObject::tr("no angle is supported");
  constexpr double kNothing = 1e-6;
  if (band.most - band.least < kNothing) return QObject::tr("held at %1").arg(signedDegrees(band.most));
  return QObject::tr("%1 to %2").arg(signedDegrees(band.least), signedDegrees(band.most));
}

QString stopWords(const anatomy::Joint& joint, const range::Band& band) {
  if (!band.judged || onlyTyped(joint)) return {};
  if (band.empty) return QObject::tr("The other two angles leave no room here.");
  if (band.leastStop == band.mostStop) return QStringLiteral("\u00B1 ") + text(band.mostStop);
  // Mirror images in one line: "+ left, − right facets share 50 %".
  for (const auto& [most, least] : {std::pair("left", "right"), std::pair("right", "left")}) {
    const std::string rest = band.mostStop.substr(std::min(band.mostStop.size(), std::string_view(most).size()));
    if (band.mostStop == most + rest && band.leastStop == least + rest)
      return QStringLiteral("+ %1, \u2212 %2%3").arg(text(most), text(least), text(rest));
  }
  return QStringLiteral("+ ") + text(band.mostStop) + QStringLiteral("\n\u2212 ") + text(band.leastStop);
}

QString stopSentences(const anatomy::Joint& joint, int motion, const range::Band& band) {
  if (!band.judged || band.empty) return intervalWords(band);
  const auto line = [&](double angle, double sign, const std::string& stop) {
    return QObject::tr("%1 to %2").arg(capital(text(range::motionName(joint, motion, sign))), signedDegrees(angle)) +
           (stop.empty() ? QString() : QStringLiteral(": ") + text(stop));
  };
  return line(band.most, 1, band.mostStop) + QLatin1Char('\n') + line(band.least, -1, band.leastStop);
}

QString groundsWords(const anatomy::Joint& joint, const range::JointVerdict* verdict) {
  if (joint.kind == anatomy::JointKind::Fixed) return QObject::tr("These bones do not move against each other.");
  if (verdict && verdict->level == range::Level::NotJudged) {
    if (joint.hasFacets()) return QObject::tr("Not judged: the facets of one side are not known.");
    return QObject::tr("Not judged: no facets meet here and nobody has typed limits.");
  }
  if (onlyTyped(joint))
    return QObject::tr("No facets meet here. The limits are typed: %1.").arg(text(joint.typed->source));
  return {};
}

QString complaintWords(const range::JointVerdict& verdict) {
  if (verdict.findings.empty()) return {};
  // The sentence without "C6-C7 beyond: ", which title and badge say already.
  const std::size_t colon = verdict.sentence.find(": ");
  return capital(text(colon == std::string::npos ? verdict.sentence : verdict.sentence.substr(colon + 2)));
}

}  // namespace zyga::ui
