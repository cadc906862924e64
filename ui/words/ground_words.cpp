#include "ui/words/ground_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using kinematics::Foot;
using study::MinMeanMax;
using study::Way;

QString worded(const char* english, const QStringList& parts) { return filled(translated(english), parts); }

QString wholeMillimetres(double length) { return millimetres(std::abs(length), 0); }

/// Two numbers of the same unit, or one where they read the same. `form` has the unit; numbers alone stand in it.
QString span(const QString& least, const QString& most, const char* form) {
  const QString numbers = least == most ? least : least + QChar(0x2013) + most;
  return worded(form, {numbers});
}

QString unknown() { return translated(QT_TRANSLATE_NOOP("words", "unknown")); }

/// "4 planted feet and the tail".
QString supportWords(const study::Balance& balance) {
  const auto feet = static_cast<int>(balance.planted.size());
  if (feet == 0) return translated(QT_TRANSLATE_NOOP("words", "the tail"));
  if (feet == 1)
    return balance.onTail ? translated(QT_TRANSLATE_NOOP("words", "the one planted foot and the tail"))
                          : translated(QT_TRANSLATE_NOOP("words", "the one planted foot"));
  return worded(balance.onTail ? QT_TRANSLATE_NOOP("words", "the %1 planted feet and the tail")
                               : QT_TRANSLATE_NOOP("words", "the %1 planted feet"),
                {QString::number(feet)});
}

QString wayWord(Way way) {
  switch (way) {
    case Way::Ahead:
      return translated(QT_TRANSLATE_NOOP("words", "in front"));
    case Way::Behind:
      return translated(QT_TRANSLATE_NOOP("words", "behind"));
    case Way::Left:
      return translated(QT_TRANSLATE_NOOP("words", "on the left"));
    case Way::Right:
      break;
  }
  return translated(QT_TRANSLATE_NOOP("words", "on the right"));
}

/// Where a foot lies from a print: one of four ways along, across, or both.
const char* fitForm(bool along, bool across, bool ahead, bool left) {
  if (!across)
    return ahead ? QT_TRANSLATE_NOOP("words", "%1 %2 ahead of %4") : QT_TRANSLATE_NOOP("words", "%1 %2 behind %4");
  if (!along)
    return left ? QT_TRANSLATE_NOOP("words", "%1 %3 left of %4") : QT_TRANSLATE_NOOP("words", "%1 %3 right of %4");
  if (ahead)
    return left ? QT_TRANSLATE_NOOP("words", "%1 %2 ahead of and %3 left of %4")
                : QT_TRANSLATE_NOOP("words", "%1 %2 ahead of and %3 right of %4");
  return left ? QT_TRANSLATE_NOOP("words", "%1 %2 behind and %3 left of %4")
              : QT_TRANSLATE_NOOP("words", "%1 %2 behind and %3 right of %4");
}

}  // namespace

QString footName(Foot foot) { return say(study::termOf(foot)); }

QString printName(const study::PlacedPrint& print) {
  const QString label = QString::fromStdString(print.label);
  return print.ownRow ? label : worded(QT_TRANSLATE_NOOP("words", "after %1"), {label});
}

QString footFitWords(const study::FootFit& fit, const std::vector<study::PlacedPrint>& prints) {
  constexpr double kOn = 0.01;  // m
  const QString foot = capital(footName(fit.foot));
  if (!fit.print) return worded(QT_TRANSLATE_NOOP("words", "%1: no print"), {foot});
  const QString label = QString::fromStdString(prints[*fit.print].label);
  const QString print =
      prints[*fit.print].ownRow ? label : worded(QT_TRANSLATE_NOOP("words", "the print after %1"), {label});
  if (fit.distance() <= kOn)
    return worded(QT_TRANSLATE_NOOP("words", "%1 on %2 (%3)"), {foot, print, wholeMillimetres(fit.distance())});
  const bool along = std::abs(fit.miss.x()) >= kOn / 2, across = std::abs(fit.miss.y()) >= kOn / 2;
  return worded(fitForm(along, across, fit.miss.x() > 0, fit.miss.y() > 0),
                {foot, wholeMillimetres(fit.miss.x()), wholeMillimetres(fit.miss.y()), print});
}

QString speedCaution() {
  return translated(QT_TRANSLATE_NOOP("words",
                                      "Speeds from tracks on soft ground are too high (Prescott et al. 2025, Biol. "
                                      "Lett. 21:20250191); take the speed as an estimate."));
}

QString bodyPartName(study::BodyPart part) {
  static constexpr std::array<const char*, study::kBodyParts> kNames{
      QT_TRANSLATE_NOOP("words", "head"),       QT_TRANSLATE_NOOP("words", "neck"),
      QT_TRANSLATE_NOOP("words", "trunk"),      QT_TRANSLATE_NOOP("words", "tail"),
      QT_TRANSLATE_NOOP("words", "fore limbs"), QT_TRANSLATE_NOOP("words", "hind limbs")};
  return translated(kNames.at(static_cast<std::size_t>(part)));
}

QString massWords(const study::MassRange& mass) {
  if (mass.mass < 1000)
    return worded(QT_TRANSLATE_NOOP("words", "%1 to %2 kg"), {plainKilograms(mass.low), plainKilograms(mass.high)});
  return worded(QT_TRANSLATE_NOOP("words", "%1 to %2 t"), {plain(mass.low / 1000, 1), plain(mass.high / 1000, 1)});
}

QString circumferenceWords(const std::optional<study::CircumferenceMass>& mass) {
  if (!mass) return translated(QT_TRANSLATE_NOOP("words", "unknown: no circumferences"));
  return worded(mass->measured ? QT_TRANSLATE_NOOP("words", "%1, circumferences measured")
                               : QT_TRANSLATE_NOOP("words", "%1, circumferences inferred"),
                {massWords(mass->mass)});
}

QString angleRange(const std::optional<MinMeanMax>& values) {
  if (!values) return unknown();
  return span(degrees(values->min, 0).chopped(1), degrees(values->max, 0).chopped(1), "%1\u00B0");
}

QString metresRange(const std::optional<MinMeanMax>& values) {
  if (!values) return unknown();
  return span(plain(values->min, 2), plain(values->max, 2), "%1\u00A0m");
}

QString plainRange(const std::optional<MinMeanMax>& values, int decimals) {
  if (!values) return unknown();
  return span(plain(values->min, decimals), plain(values->max, decimals), "%1");
}

QString speedRange(const std::optional<MinMeanMax>& values) {
  if (!values) return unknown();
  constexpr double kKilometresAnHour = 3.6;
  const QString perSecond = span(plain(values->min, 2), plain(values->max, 2), "%1\u00A0m/s");
  const QString perHour =
      span(plain(kKilometresAnHour * values->min, 1), plain(kKilometresAnHour * values->max, 1), "%1\u00A0km/h");
  return worded(QT_TRANSLATE_NOOP("words", "%1 (%2)"), {perSecond, perHour});
}

QString balanceWords(const study::Balance& balance, const Eigen::Vector2d& forward_W) {
  if (!balance.hasFeet) return translated(QT_TRANSLATE_NOOP("words", "The animal has no feet: no balance to tell."));
  if (!balance.margin) return translated(QT_TRANSLATE_NOOP("words", "Nothing touches the ground: no balance to tell."));
  const QString where = wayWord(nearestEdge(balance, forward_W));
  const QString margin = wholeMillimetres(*balance.margin);
  if (balance.inside())
    return worded(
        QT_TRANSLATE_NOOP("words", "The centre of mass lies over %1, %2 inside the nearest edge, which is %3."),
        {supportWords(balance), margin, where});
  return worded(QT_TRANSLATE_NOOP("words", "The centre of mass lies %1 outside %2, %3: the animal would tip over."),
                {margin, supportWords(balance), where});
}

QString tailLoadWords(const study::Balance& balance) {
  if (!balance.tailLoad || !balance.feetMargin) return {};
  const study::TailLoad& load = *balance.tailLoad;
  const QStringList shares{percent(load.least), percent(load.most), load.middle ? percent(*load.middle) : QString()};
  const QString carries =
      load.middle ? worded(QT_TRANSLATE_NOOP("words",
                                             "The tail carries %1 to %2 of the weight, %3 with hind feet and tail "
                                             "loaded in their middles."),
                           shares)
                  : worded(QT_TRANSLATE_NOOP("words", "The tail carries %1 to %2 of the weight."), shares);
  const QStringList margin{wholeMillimetres(*balance.feetMargin)};
  const QString without =
      *balance.feetMargin >= 0
          ? worded(QT_TRANSLATE_NOOP("words", "The centre of mass lies over the feet alone too, %1 inside."), margin)
          : worded(QT_TRANSLATE_NOOP("words",
                                     "Without the tail it would tip: the centre of mass lies %1 outside the feet."),
                   margin);
  return worded(QT_TRANSLATE_NOOP("words", "%1 %2"), {carries, without});
}

QString tailFleshWords(const study::BodyMass& body, const Eigen::Vector2d& forward_W) {
  const auto& tail = body.ranges[static_cast<std::size_t>(study::BodyPart::Tail)];
  if (!(tail.high > tail.mass)) return {};
  const double ahead = study::shiftOfCentre(body, study::BodyPart::Tail).head<2>().dot(forward_W.normalized());
  return worded(ahead <= 0
                    ? QT_TRANSLATE_NOOP("words",
                                        "With the tail %1 heavier, as the errors of its flesh and density allow, "
                                        "the centre of mass lies %2 farther back.")
                    : QT_TRANSLATE_NOOP("words",
                                        "With the tail %1 heavier, as the errors of its flesh and density allow, "
                                        "the centre of mass lies %2 farther ahead."),
                {percent(tail.high / tail.mass - 1), wholeMillimetres(ahead)});
}

QString hullFactorWords(const study::Densities& densities) {
  const auto [least, most] = std::minmax_element(densities.hullFactors.begin(), densities.hullFactors.end());
  if (*least == *most) return plain(*least, 2);
  return worded(QT_TRANSLATE_NOOP("words", "%1 to %2"), {plain(*least, 2), plain(*most, 2)});
}

QString partErrorsWords() {
  return translated(
      QT_TRANSLATE_NOOP("words",
                        "Errors by part, of density and of the flesh outside the bones' hull, are program defaults, no "
                        "source; the error of the whole is that of the method."));
}

QString circumferenceErrorWords() {
  return worded(QT_TRANSLATE_NOOP("words", "mean error %1, not a bound: single animals lie farther off"),
                {percent(study::kCircumferenceError, 2)});
}

QString balanceInShort(const study::Balance& balance) {
  if (!balance.hasFeet) return translated(QT_TRANSLATE_NOOP("words", "no feet"));
  if (!balance.margin) return translated(QT_TRANSLATE_NOOP("words", "off the ground"));
  return worded(balance.inside() ? QT_TRANSLATE_NOOP("words", "balanced, %1 inside")
                                 : QT_TRANSLATE_NOOP("words", "tips, %1 outside"),
                {wholeMillimetres(*balance.margin)});
}

}  // namespace zyga::ui
