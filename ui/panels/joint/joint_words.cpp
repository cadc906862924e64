#include "ui/panels/joint/joint_words.h"

#include "ui/theme/figures.h"
#include "ui/theme/words.h"

namespace zyga::ui {
namespace {

bool onlyTyped(const anatomy::Joint& joint) { return joint.typed.has_value() && !joint.hasFacets(); }

bool isColumn(const anatomy::Joint& joint) { return joint.region <= anatomy::Region::Caudal; }

}  // namespace

QString motionTitleOf(const anatomy::Joint& joint, int motion) {
  if (motion == 1 && isColumn(joint)) return QStringLiteral("Lateral flexion");
  if (motion == 2) return isColumn(joint) ? QStringLiteral("Torsion") : QStringLiteral("Rotation");
  return capital(text(range::motionName(joint, motion, 1)));
}

QString positiveWay(const anatomy::Joint& joint, int motion) {
  if (motion == 0) return {};
  if (!isColumn(joint)) return motion == 2 ? QStringLiteral("inward +") : QString();
  return motion == 1 ? QStringLiteral("left +") : QStringLiteral("left side up +");
}

QString bonesOf(const anatomy::Specimen& specimen, JointIndex joint) {
  const anatomy::Joint& bones = specimen[joint];
  return capital(text(title(specimen[bones.distal].name))) + QStringLiteral(" on ") +
         text(title(specimen[bones.proximal].name));
}

QString intervalWords(const range::Band& band) {
  if (!band.judged) return QStringLiteral("no limits known");
  if (band.empty) return QStringLiteral("no angle is supported");
  constexpr double kNothing = 1e-6;
  if (band.most - band.least < kNothing) return QStringLiteral("held at ") + signedDegrees(band.most);
  return signedDegrees(band.least) + QStringLiteral(" to ") + signedDegrees(band.most);
}

QString stopWords(const anatomy::Joint& joint, const range::Band& band) {
  if (!band.judged || onlyTyped(joint)) return {};
  if (band.empty) return QStringLiteral("The other two angles leave no room here.");
  if (band.leastStop == band.mostStop) return QStringLiteral("\u00B1 ") + text(band.mostStop);
  // Mirror images in one line: "+ left, − right facets share 50 %".
  for (const auto& [most, least] : {std::pair("left", "right"), std::pair("right", "left")}) {
    const QString rest = text(band.mostStop).mid(QString(most).size());
    if (text(band.mostStop) == most + rest && text(band.leastStop) == least + rest)
      return QStringLiteral("+ %1, \u2212 %2%3").arg(most, least, rest);
  }
  return QStringLiteral("+ ") + text(band.mostStop) + QStringLiteral("\n\u2212 ") + text(band.leastStop);
}

QString stopSentences(const anatomy::Joint& joint, int motion, const range::Band& band) {
  if (!band.judged || band.empty) return intervalWords(band);
  const auto line = [&](double angle, double sign, const std::string& stop) {
    return capital(text(range::motionName(joint, motion, sign))) + QStringLiteral(" to ") + signedDegrees(angle) +
           (stop.empty() ? QString() : QStringLiteral(": ") + text(stop));
  };
  return line(band.most, 1, band.mostStop) + QLatin1Char('\n') + line(band.least, -1, band.leastStop);
}

QString groundsWords(const anatomy::Joint& joint, const range::JointVerdict* verdict) {
  if (joint.kind == anatomy::JointKind::Fixed) return QStringLiteral("These bones do not move against each other.");
  if (verdict && verdict->level == range::Level::NotJudged) {
    if (joint.hasFacets()) return QStringLiteral("Not judged: the facets of one side are not known.");
    return QStringLiteral("Not judged: no facets meet here and nobody has typed limits.");
  }
  if (onlyTyped(joint))
    return QStringLiteral("No facets meet here. The limits are typed: ") + text(joint.typed->source) + QLatin1Char('.');
  return {};
}

QString complaintWords(const range::JointVerdict& verdict) {
  if (verdict.findings.empty()) return {};
  // The sentence without "C6-C7 beyond: ", which title and badge say already.
  const QString sentence = text(verdict.sentence);
  const qsizetype colon = sentence.indexOf(QStringLiteral(": "));
  return capital(colon < 0 ? sentence : sentence.mid(colon + 2));
}

}  // namespace zyga::ui
