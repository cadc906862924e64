#include "ui/panels/joint/joint_words.h"

#include "ui/theme/figures.h"

namespace zyga::ui {
namespace {

QString text(std::string_view words) { return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size())); }

QString capital(QString words) {
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

QString stop(const anatomy::Joint& joint, int motion, double sign, const std::string& reason) {
  return capital(text(range::motionName(joint, motion, sign))) + QStringLiteral(": ") + text(reason);
}

}  // namespace

QString motionTitleOf(const anatomy::Joint& joint, int motion) {
  const bool column = joint.region <= anatomy::Region::Caudal;
  if (motion == 1 && column) return QStringLiteral("Lateral flexion");
  if (motion == 2) return column ? QStringLiteral("Torsion") : QStringLiteral("Rotation");
  return capital(text(range::motionName(joint, motion, 1)));
}

QString bonesOf(const anatomy::Specimen& specimen, JointIndex joint) {
  const anatomy::Joint& bones = specimen[joint];
  return capital(text(title(specimen[bones.distal].name))) + QStringLiteral(" on ") +
         text(title(specimen[bones.proximal].name));
}

QString intervalWords(const range::Band& band) {
  if (!band.judged) return QStringLiteral("no limits known");
  if (band.empty) return QStringLiteral("no angle is supported");
  return signedDegrees(band.least) + QStringLiteral(" to ") + signedDegrees(band.most);
}

QString stopWords(const anatomy::Joint& joint, int motion, const range::Band& band) {
  if (!band.judged) return {};
  if (band.empty) return QStringLiteral("The other two angles leave no room here");
  if (band.leastStop == band.mostStop) return QStringLiteral("Either way: ") + text(band.mostStop);
  return stop(joint, motion, 1, band.mostStop) + QLatin1Char('\n') + stop(joint, motion, -1, band.leastStop);
}

QString groundsWords(const anatomy::Joint& joint, const range::JointVerdict* verdict) {
  if (joint.kind == anatomy::JointKind::Fixed) return QStringLiteral("These bones do not move against each other.");
  if (verdict && verdict->level == range::Level::NotJudged) {
    if (joint.hasFacets()) return QStringLiteral("Not judged: the facets of one side are not known.");
    return QStringLiteral("Not judged: no facets meet here and nobody has typed limits.");
  }
  if (joint.typed && !joint.hasFacets())
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
