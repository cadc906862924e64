#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "ui/words/numbers.h"
#include "ui/words/say.h"
#include "ui/words/study_words.h"

// What the study of joint stress has found.
namespace zyga::ui {
namespace {

using study::JointStress;
using study::NeckCarriage;
using study::NeckLoads;

QString jointName(const JointStress& stress, std::size_t i) { return QString::fromStdString(stress.joints[i].id); }

/// Masses of hulls are known to a fifth at best: no digit that pretends to more.
QString roughMass(double mass) {
  if (mass >= 1000) return tonnes(mass);
  return kilograms(mass >= 100 ? 10 * std::round(mass / 10) : mass);
}

QString massSentence(const JointStress& stress) {
  return filled(translated(QT_TRANSLATE_NOOP("words",
                                             "Ahead of the neck’s base there are %1 (%2 to %3) of head and neck: hulls "
                                             "of the bones at %4 kg/m³ for the head and %5 for the neck.")),
                {roughMass(stress.mass.mass), roughMass(stress.mass.low), roughMass(stress.mass.high),
                 plain(stress.densities[study::BodyPart::Head], 0), plain(stress.densities[study::BodyPart::Neck], 0)});
}

QString postureSentence(const JointStress& stress, const NeckLoads& posture) {
  const study::Evenness& even = posture.evenness;
  const QString name = capital(carriageWord(posture.which));
  if (!even.variation)
    return filled(translated(QT_TRANSLATE_NOOP("words",
                                               "%1, neck at %2: on the whole the weight pulls the joints apart, and "
                                               "there is no evenness to tell.")),
                  {name, degrees(posture.slope)});
  return filled(translated(QT_TRANSLATE_NOOP("words",
                                             "%1, neck at %2: stress %3 on average, coefficient of variation %4 (%5 to "
                                             "%6); largest at %7, %8 times the average.")),
                {name, degrees(posture.slope), megapascals(even.mean), percent(*even.variation),
                 percent(posture.variationLow.value_or(*even.variation)),
                 percent(posture.variationHigh.value_or(*even.variation)), jointName(stress, even.peak),
                 plain(even.peakToMean.value_or(1), 1)});
}

/// "C13-D1 0.45 MPa, C12-C13 0.43 MPa"
QString jointsSentence(const JointStress& stress) {
  const NeckLoads& present = stress[NeckCarriage::Present];
  QStringList all;
  for (std::size_t i = 0; i < present.joints.size(); ++i)
    all << jointName(stress, i) + ' ' + megapascals(present.joints[i].stress);
  return filled(translated(QT_TRANSLATE_NOOP("words", "Present pose, joint by joint from the neck’s base: %1.")),
                {inOneLine(all)});
}

/// Which of the postures is the evenest, and which are not told apart from it.
QStringList comparison(const JointStress& stress) {
  const NeckLoads* evenest = stress.evenestPosture();
  if (!evenest) return {};
  QStringList alike;
  for (const NeckLoads& posture : stress.postures)
    if (&posture != evenest && posture.evenness.variation && *posture.variationLow <= *evenest->variationHigh)
      alike << carriageWord(posture.which);
  const QString name = carriageWord(evenest->which), variation = percent(*evenest->evenness.variation);
  if (alike.isEmpty())
    return {filled(translated(QT_TRANSLATE_NOOP("words",
                                                "Of these postures the stress is most even in this one: %1 "
                                                "(coefficient of variation %2).")),
                   {name, variation})};
  return {filled(translated(QT_TRANSLATE_NOOP("words",
                                              "Of these postures the stress is most even in this one: %1 (coefficient "
                                              "of variation %2); the error of the masses does not tell it apart from: "
                                              "%3.")),
                 {name, variation, inOneLine(alike)})};
}

QStringList evenBend(const JointStress& stress) {
  if (!stress.evenest) return {};
  const study::EvenBend& bend = stress.bends[*stress.evenest];
  const QString share = percent(std::abs(bend.share)), slope = degrees(bend.slope),
                variation = percent(*bend.variation);
  if (bend.share == 0)
    return {filled(translated(QT_TRANSLATE_NOOP("words",
                                                "With every joint bent by the same share of its range it is most even "
                                                "in neutral, the neck at %1 (coefficient of variation %2).")),
                   {slope, variation})};
  return {filled(
      translated(bend.share > 0 ? QT_TRANSLATE_NOOP("words",
                                                    "With every joint bent by the same share of its range it is most "
                                                    "even at %1 of maximum dorsiflexion, the neck at %2 (coefficient "
                                                    "of variation %3).")
                                : QT_TRANSLATE_NOOP("words",
                                                    "With every joint bent by the same share of its range it is most "
                                                    "even at %1 of maximum ventriflexion, the neck at %2 (coefficient "
                                                    "of variation %3).")),
      {share, slope, variation})};
}

/// How far the evenest bend is told apart from others.
QStringList alikeBends(const JointStress& stress) {
  if (!stress.alike || stress.alike->front() == stress.alike->back()) return {};
  return {filled(translated(QT_TRANSLATE_NOOP("words",
                                              "The error of the masses does not tell this apart from some postures "
                                              "with the neck anywhere from %1 to %2.")),
                 {degrees(stress.alike->front()), degrees(stress.alike->back())})};
}

/// Told when it is more than a twentieth of what is looked at.
QStringList leftOut(const JointStress& stress) {
  const auto& joints = stress[NeckCarriage::Present].joints;
  const auto by = [](double study::JointLoad::*what) {
    return
        [what](const study::JointLoad& a, const study::JointLoad& b) { return std::abs(a.*what) < std::abs(b.*what); };
  };
  const auto most = std::max_element(joints.begin(), joints.end(), by(&study::JointLoad::sideways));
  const auto bending = std::max_element(joints.begin(), joints.end(), by(&study::JointLoad::moment));
  if (most == joints.end() || most->sideways <= 0.05 * std::abs(bending->moment)) return {};
  return {
      filled(translated(QT_TRANSLATE_NOOP("words",
                                          "In the present pose up to %1 act sideways or twist the neck, at %2; "
                                          "they are left out.")),
             {kilonewtonMetres(most->sideways), jointName(stress, static_cast<std::size_t>(most - joints.begin()))})};
}

QString evidenceSentence(const JointStress& stress) {
  return filled(translated(QT_TRANSLATE_NOOP("words",
                                             "Centrum and neural spines are measured at %1 of %2 joints and inferred "
                                             "at the others.")),
                {QString::number(stress.measured()), QString::number(stress.joints.size())});
}

}  // namespace

QStringList sentences(const JointStress& stress) {
  QStringList all{massSentence(stress)};
  for (const NeckLoads& posture : stress.postures) all << postureSentence(stress, posture);
  all << comparison(stress) << evenBend(stress) << alikeBends(stress);
  if (!stress.joints.empty()) all << jointsSentence(stress) << leftOut(stress) << evidenceSentence(stress);
  return all;
}

QStringList stressViews() {
  return {
      translated(QT_TRANSLATE_NOOP(
          "words",
          "One view: a joint is as strong as its usual load asks, so that the posture in which the stress is about "
          "even along the neck is the habitual one (Christian & Heinrich 1998, Mitt. Mus. Naturkd. Berl. Geowiss. "
          "Reihe 1:73; Christian 2002, same series 5:271; Christian & Dzemski 2007, Fossil Record 10:38). The force is "
          "the moment of head and neck over its lever plus the weight along the neck’s axis, the stress that force "
          "over the area of the centrum (formula from memory).")),
      translated(QT_TRANSLATE_NOOP(
          "words",
          "The other view: nothing shows that animals prefer an even stress; one member stands for all muscles and "
          "ligaments, whose cross-sections are not known; what moving, feeding and every short posture ask of a joint "
          "is left out, and so is what zygapophyses and cartilage carry (common criticism, no source)."))};
}

QString stressCaution() {
  return translated(QT_TRANSLATE_NOOP(
      "words",
      "Stress is an estimate: masses are off by a fifth or more, and hulls of bones hold little of a neck’s flesh, so "
      "that forces are sooner too small than too large. How even it is does not depend on the total mass, "
      "only on how it is shared; the range given takes head and neck a fifth off against each other. The tension is "
      "taken to run along the neural spines, where a ligament is inferred (Tsuihiji 2004, J. Vert. Paleontol. "
      "24:165), and under the centra where the neck leans back (program default, no source)."));
}

}  // namespace zyga::ui
