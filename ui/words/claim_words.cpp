#include "ui/words/claim_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "core/study/reach/extremes.h"
#include "ui/words/numbers.h"
#include "ui/words/range_words.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using study::Bound;
using study::Claim;
using study::ClaimAnswer;
using study::ClaimKind;
using study::ClaimStop;

QString said(const char* english, const QStringList& parts = {}) { return filled(translated(english), parts); }

QString idOf(const range::Scenario& scenario, kinematics::JointIndex joint) {
  return QString::fromStdString(scenario.specimen()[joint].id);
}

/// Short of something by so much; never "0.0 mm", which would say that nothing is missing.
QString missingWords(double amount, bool angle) {
  constexpr double kTenthDegree = 0.1 * std::numbers::pi / 180, kTenthMillimetre = 1e-4;
  const double seen = angle ? kTenthDegree : kTenthMillimetre;
  if (amount < seen)
    return said(QT_TRANSLATE_NOOP("words", "less than %1"), {angle ? degrees(seen) : millimetres(seen)});
  if (angle) return degrees(amount);
  return amount < 0.01 ? millimetres(amount) : metres(amount);
}

QString heightVerdict(const ClaimAnswer& a) {
  const QString best = metres(*a.best);
  if (a.supported) return said(QT_TRANSLATE_NOOP("words", "Within range: the snout reaches up to %1."), {best});
  return said(QT_TRANSLATE_NOOP("words", "Out of range: the snout reaches %1 at most, %2 short."),
              {best, missingWords(a.shortBy, false)});
}

/// Of the neck and of its base, rising and coming down, within range and out of it.
QString slopeVerdict(const Claim& claim, const ClaimAnswer& a) {
  static constexpr std::array<const char*, 8> kForms{
      QT_TRANSLATE_NOOP("words", "Within range: the neck rises to %1."),
      QT_TRANSLATE_NOOP("words", "Out of range: the neck rises to %1 and no farther, %2 too flat."),
      QT_TRANSLATE_NOOP("words", "Within range: the neck comes down to %1."),
      QT_TRANSLATE_NOOP("words", "Out of range: the neck comes down to %1 and no farther, %2 too steep."),
      QT_TRANSLATE_NOOP("words", "Within range: the base of the neck rises to %1."),
      QT_TRANSLATE_NOOP("words", "Out of range: the base of the neck rises to %1 and no farther, %2 too flat."),
      QT_TRANSLATE_NOOP("words", "Within range: the base of the neck comes down to %1."),
      QT_TRANSLATE_NOOP("words", "Out of range: the base of the neck comes down to %1 and no farther, %2 too steep.")};
  const std::size_t form = (claim.kind == ClaimKind::NeckBaseSlope ? 4u : 0u) +
                           (claim.bound == Bound::AtMost ? 2u : 0u) + (a.supported ? 0u : 1u);
  return said(kForms.at(form), {degrees(*a.best), missingWords(a.shortBy, true)});
}

/// A point that bones alone would let the snout come to.
QString throughGround(const ClaimAnswer& a) {
  return said(QT_TRANSLATE_NOOP("words", "Out of range: the snout gets there only with neck or head %1 in the ground."),
              {missingWords(a.shortBy, false)});
}

QString groundVerdict(const Claim& claim, const ClaimAnswer& a) {
  if (a.supported)
    return said(QT_TRANSLATE_NOOP("words", "Within range: the snout reaches the ground up to %1 ahead."),
                {metres(*a.best)});
  const QString misses = a.throughGround
                             ? throughGround(a)
                             : said(QT_TRANSLATE_NOOP("words", "Out of range: the snout stays %1 short of that place."),
                                    {missingWords(a.shortBy, false)});
  QString nearest;
  if (!a.best)
    nearest =
        said(QT_TRANSLATE_NOOP("words", "It does not come to the ground anywhere ahead of or beside the forefeet."));
  else if (*a.best > claim.value)
    nearest = said(QT_TRANSLATE_NOOP("words",
                                     "The nearest place where it reaches the ground is %1 ahead; nearer to "
                                     "the feet the neck cannot bend enough."),
                   {metres(*a.best)});
  else
    nearest = said(QT_TRANSLATE_NOOP("words", "The nearest place where it reaches the ground is %1 ahead."),
                   {metres(*a.best)});
  return said(QT_TRANSLATE_NOOP("words", "%1 %2"), {misses, nearest});
}

QString aheadVerdict(const Claim& claim, const ClaimAnswer& a) {
  const QString ahead = metres(claim.ahead);
  if (a.supported)
    return said(QT_TRANSLATE_NOOP("words", "Within range: %1 ahead the snout reaches up to %2."),
                {ahead, metres(*a.best)});
  const QString misses = a.throughGround
                             ? throughGround(a)
                             : said(QT_TRANSLATE_NOOP("words", "Out of range: the snout stays %1 short of that point."),
                                    {missingWords(a.shortBy, false)});
  const QString nearest =
      a.best ? said(QT_TRANSLATE_NOOP("words", "The nearest height it has %1 ahead is %2."), {ahead, metres(*a.best)})
             : said(QT_TRANSLATE_NOOP("words", "It comes %1 ahead at no height."), {ahead});
  return said(QT_TRANSLATE_NOOP("words", "%1 %2"), {misses, nearest});
}

QString tailVerdict(const ClaimAnswer& a) {
  const QString best = degrees(*a.best);
  if (a.supported)
    return said(
        QT_TRANSLATE_NOOP("words", "Within range: the base of the tail can be carried at %1 to the horizontal."),
        {best});
  return said(QT_TRANSLATE_NOOP("words",
                                "Out of range: the base of the tail comes no nearer to horizontal than %1, %2 "
                                "too steep."),
              {best, missingWords(a.shortBy, true)});
}

QString idsOf(const range::Scenario& scenario, const std::vector<kinematics::JointIndex>& joints) {
  constexpr std::size_t kMostNamed = 4;
  QStringList ids;
  for (std::size_t i = 0; i < joints.size() && i < kMostNamed; ++i) ids << idOf(scenario, joints[i]);
  if (joints.size() <= kMostNamed) return inOneLine(ids);
  return said(QT_TRANSLATE_NOOP("words", "%1 and %2 more"),
              {inOneLine(ids), QString::number(joints.size() - kMostNamed)});
}

QString notAnsweredVerdict(const range::Scenario& scenario, const ClaimAnswer& a) {
  if (a.notAnswered.size() == 1) {
    const range::JointStop& stop = a.notAnswered.front().stop;
    return said(QT_TRANSLATE_NOOP("words", "Not answered: joint %1 has no range, because of %2 at every angle."),
                {idOf(scenario, stop.joint), stopWords(scenario.specimen(), stop.joint, stop.stop)});
  }
  std::vector<kinematics::JointIndex> joints;
  for (const ClaimStop& stop : a.notAnswered) joints.push_back(stop.joint);
  return said(QT_TRANSLATE_NOOP("words", "Not answered: joints %1 have no range."), {idsOf(scenario, joints)});
}

/// The bones that collide, the worst two.
QString collisionsOf(const range::Scenario& scenario, const ClaimAnswer& a) {
  constexpr std::size_t kMostNamed = 2;
  QStringList words;
  for (std::size_t i = 0; i < a.contact.findings.size() && i < kMostNamed; ++i)
    words << contactWords(scenario.specimen(), a.contact.findings[i]);
  if (a.contact.findings.size() <= kMostNamed) return inOneLine(words);
  return said(QT_TRANSLATE_NOOP("words", "%1 and %2 more"),
              {inOneLine(words), QString::number(a.contact.findings.size() - kMostNamed)});
}

QString ownVerdict(const Claim& claim, const ClaimAnswer& a) {
  if (!a.unanswerable.empty()) return said(QT_TRANSLATE_NOOP("words", "Not answered: %1."), {say(a.unanswerable)});
  // A point may have no best value; then at least it is known how far it is missed.
  if (!a.best && (!isPoint(claim.kind) || a.shortBy == 0))
    return said(QT_TRANSLATE_NOOP("words", "Out of range: a joint on the way is out of range at every angle."));
  switch (claim.kind) {
    case ClaimKind::HeadHeight:
      return heightVerdict(a);
    case ClaimKind::NeckSlope:
    case ClaimKind::NeckBaseSlope:
      return slopeVerdict(claim, a);
    case ClaimKind::SnoutToGround:
      return groundVerdict(claim, a);
    case ClaimKind::HeadAhead:
      return aheadVerdict(claim, a);
    case ClaimKind::TailBaseLevel:
      break;
  }
  return tailVerdict(a);
}

QString verdictOf(const range::Scenario& scenario, const Claim& claim, const ClaimAnswer& a) {
  if (!a.notAnswered.empty()) return notAnsweredVerdict(scenario, a);
  if (!a.contact.onlyColliding) return ownVerdict(claim, a);
  const QString bones = collisionsOf(scenario, a);
  if (a.shortBy > 0)
    return said(QT_TRANSLATE_NOOP("words", "%1 Farther only with bones that collide: %2."),
                {ownVerdict(claim, a), bones});
  return said(QT_TRANSLATE_NOOP("words", "Out of range: only with bones that collide: %1."), {bones});
}

QString overlapNeed(const range::Assumptions& assumptions, const ClaimAnswer& a) {
  if (!a.minOverlap)
    return said(QT_TRANSLATE_NOOP("words", "No minimum overlap alone brings it within range, however small."));
  // Rounded downwards, so that the rule as it is written still does.
  const QStringList parts{percent(std::floor(*a.minOverlap * 100 + 1e-9) / 100), percent(assumptions.minOverlap)};
  return a.supported
             ? said(QT_TRANSLATE_NOOP("words", "It stays within range up to a minimum overlap of %1 (now %2)."), parts)
             : said(QT_TRANSLATE_NOOP("words",
                                      "It would be within range with a minimum overlap of %1 or less (now "
                                      "%2)."),
                    parts);
}

/// "12.5 %", rounded upwards or downwards so that the amount as it is written still does.
QString cartilageAmount(double percents, bool upwards) {
  const double tenths = upwards ? std::ceil(std::max(0.0, percents * 10 - 1e-6)) : std::floor(percents * 10 + 1e-6);
  return percent(tenths / 1000, 1);
}

QString presentAmount(const range::Cartilage& cartilage) {
  if (cartilage.in == range::Cartilage::In::Millimetres) return millimetres(cartilage.amount * 1e-3);
  return cartilageAmount(cartilage.amount, true);
}

QString cartilageNeed(const range::Assumptions& assumptions, const Claim& claim, const ClaimAnswer& a) {
  const bool tail = claim.kind == ClaimKind::TailBaseLevel;
  const QString where = tail ? said(QT_TRANSLATE_NOOP("words", "tail")) : said(QT_TRANSLATE_NOOP("words", "neck"));
  const QString now = presentAmount(tail ? assumptions.tail : assumptions.neck);
  if (!a.minCartilage)
    return said(QT_TRANSLATE_NOOP("words",
                                  "No cartilage in the %1 up to %2 of the centrum's length alone brings it "
                                  "within range."),
                {where, cartilageAmount(study::kMaxCartilage, true)});
  const QString least = cartilageAmount(*a.minCartilage, true), most = cartilageAmount(*a.mostCartilage, false);
  const bool fromNone = *a.minCartilage == 0, toTheEnd = *a.mostCartilage >= study::kMaxCartilage;
  if (fromNone && toTheEnd)
    return said(QT_TRANSLATE_NOOP("words",
                                  "It stays within range without cartilage in the %1 and with any up to %2 of "
                                  "the centrum's length (now %3)."),
                {where, most, now});
  if (fromNone)
    return said(a.supported ? QT_TRANSLATE_NOOP("words",
                                                "It stays within range with cartilage in the %1 up to %2 of the "
                                                "centrum's length (now %3).")
                            : QT_TRANSLATE_NOOP("words",
                                                "It would be within range with cartilage in the %1 up to %2 of the "
                                                "centrum's length (now %3)."),
                {where, most, now});
  if (toTheEnd)
    return said(a.supported ? QT_TRANSLATE_NOOP("words",
                                                "It stays within range with cartilage in the %1 from %2 of the "
                                                "centrum's length on (now %3).")
                            : QT_TRANSLATE_NOOP("words",
                                                "It would be within range with cartilage in the %1 from %2 of the "
                                                "centrum's length on (now %3)."),
                {where, least, now});
  return said(a.supported ? QT_TRANSLATE_NOOP("words",
                                              "It stays within range with cartilage in the %1 from %2 to %3 "
                                              "of the centrum's length (now %4).")
                          : QT_TRANSLATE_NOOP("words",
                                              "It would be within range with cartilage in the %1 from %2 to "
                                              "%3 of the centrum's length (now %4)."),
              {where, least, most, now});
}

/// What all ranges may differ by, as soft tissue or bare bones make them; empty where nothing is known.
QString marginNeed(const ClaimAnswer& a) {
  if (!a.margin) return {};
  if (!a.supported) {
    if (!a.margin->widening)
      return said(QT_TRANSLATE_NOOP("words",
                                    "Not even every joint's range widened by %1 at either end brings it within range."),
                  {degrees(study::kMostMargin)});
    return said(
        QT_TRANSLATE_NOOP("words", "It would be within range with every joint's range widened by %1 at either end."),
        {degrees(*a.margin->widening)});
  }
  if (!a.margin->narrowing) return {};
  const double narrowing = *a.margin->narrowing;
  if (narrowing < study::kMarginStep / 2)
    return said(
        QT_TRANSLATE_NOOP("words", "It is out of range where every joint's range is narrowed by %1 at either end."),
        {degrees(study::kMarginStep)});
  if (narrowing >= study::kMostMargin)
    return said(
        QT_TRANSLATE_NOOP("words", "It stays within range even with every joint's range narrowed by %1 at either end."),
        {degrees(narrowing)});
  return said(
      QT_TRANSLATE_NOOP("words", "It stays within range with every joint's range narrowed by up to %1 at either end."),
      {degrees(narrowing)});
}

QString claimedAmount(const Claim& claim, double value) {
  return traitsOf(claim.kind).angle ? degrees(value) : metres(value);
}

QString dorsalsWords(const range::Scenario& scenario, const Claim& claim, const ClaimAnswer& a) {
  const study::ClaimDorsals& d = *a.dorsals;
  double turned = 0;
  for (const double turn : d.turned) turned += turn;
  const QString state =
      d.supported ? said(QT_TRANSLATE_NOOP("words", "within range")) : said(QT_TRANSLATE_NOOP("words", "out of range"));
  const QString ids = idsOf(scenario, d.joints);
  if (!d.best || !a.best)
    return said(QT_TRANSLATE_NOOP("words", "With %1 bending as well: %2; they turn by %3 in all."),
                {ids, state, signedDegrees(turned)});
  return said(QT_TRANSLATE_NOOP("words", "With %1 bending as well: %2 instead of %3, %4; they turn by %5 in all."),
              {ids, claimedAmount(claim, *d.best), claimedAmount(claim, *a.best), state, signedDegrees(turned)});
}

QStringList habitWords(const Claim& claim, const study::ClaimHabit& habit) {
  const auto as = [](bool shows) {
    return shows ? said(QT_TRANSLATE_NOOP("words", "as claimed")) : said(QT_TRANSLATE_NOOP("words", "not as claimed"));
  };
  QStringList words;
  words << said(QT_TRANSLATE_NOOP("words", "Neck undeflected, habitual by Stevens 2013: %1, %2."),
                {claimedAmount(claim, habit.undeflected), as(habit.undeflectedShows)});
  const QStringList extended{claimedAmount(claim, habit.extended), as(habit.extendedShows)};
  words << (habit.extendedCollides
                ? said(QT_TRANSLATE_NOOP("words",
                                         "Neck extended from its base, habitual by Taylor, Wedel & Naish 2009: %1, %2; "
                                         "there bones collide."),
                       extended)
                : said(QT_TRANSLATE_NOOP(
                           "words", "Neck extended from its base, habitual by Taylor, Wedel & Naish 2009: %1, %2."),
                       extended));
  if (habit.share && *habit.share >= 0 && *habit.share <= 1)
    words << said(QT_TRANSLATE_NOOP("words",
                                    "The claimed value lies at %1 of the way from the undeflected neck to the most "
                                    "within range."),
                  {percent(*habit.share)});
  return words;
}

QStringList notesOf(const range::Scenario& scenario, const ClaimAnswer& a) {
  QStringList notes;
  if (!a.nearEdge.empty())
    notes << said(QT_TRANSLATE_NOOP("words", "Joints near their limit in this pose: %1 of %2 that bend."),
                  {QString::number(a.nearEdge.size()), QString::number(a.joints)});
  if (!a.notJudged.empty())
    notes << said(QT_TRANSLATE_NOOP("words", "Not assessed, therefore left as posed: %1."),
                  {idsOf(scenario, a.notJudged)});
  if (!a.elsewhereBeyond.empty())
    notes << said(QT_TRANSLATE_NOOP("words", "Out of range in what stays as posed: %1."),
                  {idsOf(scenario, a.elsewhereBeyond)});
  if (!a.contact.judged)
    notes << said(QT_TRANSLATE_NOOP("words", "Collisions between bones were not assessed."));
  else if (!a.contact.findings.empty() && !a.contact.onlyColliding)
    notes << said(QT_TRANSLATE_NOOP("words", "In this pose bones collide: %1."), {collisionsOf(scenario, a)});
  if (a.inGround > 0)
    notes << said(QT_TRANSLATE_NOOP("words", "In this pose a part lies %1 in the ground."),
                  {millimetres(a.inGround, 0)});
  return notes;
}

}  // namespace

QString claimKindName(ClaimKind kind) {
  static constexpr std::array<const char*, study::kClaimKinds.size()> kNames{
      QT_TRANSLATE_NOOP("words", "Minimum head height"),
      QT_TRANSLATE_NOOP("words", "Neck inclination"),
      QT_TRANSLATE_NOOP("words", "Neck base inclination"),
      QT_TRANSLATE_NOOP("words", "Snout reaches the ground"),
      QT_TRANSLATE_NOOP("words", "Head reaches a point ahead"),
      QT_TRANSLATE_NOOP("words", "Tail base near horizontal")};
  return translated(kNames[static_cast<std::size_t>(kind)]);
}

QString claimKindMeaning(ClaimKind kind) {
  static constexpr std::array<const char*, study::kClaimKinds.size()> kMeanings{
      QT_TRANSLATE_NOOP("words", "Height of the snout over the ground."),
      QT_TRANSLATE_NOOP("words",
                        "Slope to the horizontal of the straight line from the neck's base to its far end, "
                        "positive upwards."),
      QT_TRANSLATE_NOOP("words",
                        "Slope of the hindmost cervical to the horizontal, positive upwards; what it is measured by "
                        "is chosen under Assumptions."),
      QT_TRANSLATE_NOOP("words", "Distance of the snout ahead of the foremost standing forefoot, along the ground."),
      QT_TRANSLATE_NOOP("words",
                        "Height of the snout over the ground at a distance ahead of the foremost standing "
                        "forefoot."),
      QT_TRANSLATE_NOOP("words", "Slope to the horizontal of the line through the first five caudals.")};
  return translated(kMeanings[static_cast<std::size_t>(kind)]);
}

QString boundWord(Bound bound) {
  return translated(bound == Bound::AtLeast ? QT_TRANSLATE_NOOP("words", "at least")
                                            : QT_TRANSLATE_NOOP("words", "at most"));
}

QString claimName(const Claim& claim) {
  const bool least = claim.bound == Bound::AtLeast;
  switch (claim.kind) {
    case ClaimKind::HeadHeight:
      return said(QT_TRANSLATE_NOOP("words", "Minimum head height %1"), {metres(claim.value)});
    case ClaimKind::NeckSlope:
      return said(least ? QT_TRANSLATE_NOOP("words", "Neck inclination at least %1")
                        : QT_TRANSLATE_NOOP("words", "Neck inclination at most %1"),
                  {degrees(claim.value)});
    case ClaimKind::NeckBaseSlope:
      return said(least ? QT_TRANSLATE_NOOP("words", "Neck base inclination at least %1")
                        : QT_TRANSLATE_NOOP("words", "Neck base inclination at most %1"),
                  {degrees(claim.value)});
    case ClaimKind::SnoutToGround:
      return said(QT_TRANSLATE_NOOP("words", "Snout reaches the ground %1 ahead of the forefeet"),
                  {metres(claim.value)});
    case ClaimKind::HeadAhead:
      return said(QT_TRANSLATE_NOOP("words", "Head reaches a height of %1, %2 ahead of the forefeet"),
                  {metres(claim.value), metres(claim.ahead)});
    case ClaimKind::TailBaseLevel:
      break;
  }
  return said(QT_TRANSLATE_NOOP("words", "Tail base within %1 of horizontal"), {degrees(claim.value)});
}

QString claimWithSource(const Claim& claim) {
  if (claim.source.empty()) return claimName(claim);
  return said(QT_TRANSLATE_NOOP("words", "%1 (%2)"), {claimName(claim), QString::fromStdString(claim.source)});
}

QString claimStopWords(const range::Scenario& scenario, const ClaimStop& stop) {
  if (!stop.atNoAngle) return stopWords(scenario.specimen(), stop.stop);
  return said(QT_TRANSLATE_NOOP("words", "%1 at every angle: %2"),
              {idOf(scenario, stop.joint), stopWords(scenario.specimen(), stop.joint, stop.stop.stop)});
}

QString claimState(const ClaimAnswer& answer) {
  if (!answer.answered()) return said(QT_TRANSLATE_NOOP("words", "not answered"));
  return answer.supported ? said(QT_TRANSLATE_NOOP("words", "within range"))
                          : said(QT_TRANSLATE_NOOP("words", "out of range"));
}

ClaimWords claimWords(const range::Scenario& scenario, const Claim& claim, const ClaimAnswer& answer) {
  ClaimWords words{claimName(claim), verdictOf(scenario, claim, answer), {}, {}, {}};
  if (!answer.unanswerable.empty()) return words;
  for (const ClaimStop& stop : answer.stopping) words.stops << claimStopWords(scenario, stop);
  for (const ClaimStop& stop : answer.notAnswered) words.stops << claimStopWords(scenario, stop);
  words.needs << overlapNeed(scenario.assumptions(), answer) << cartilageNeed(scenario.assumptions(), claim, answer);
  if (const QString margin = marginNeed(answer); !margin.isEmpty()) words.needs << margin;
  if (answer.dorsals) words.beside << dorsalsWords(scenario, claim, answer);
  if (answer.habit) words.beside << habitWords(claim, *answer.habit);
  words.notes = notesOf(scenario, answer);
  if (answer.tally.all() > 0)
    words.tally = said(QT_TRANSLATE_NOOP("words", "Facets of the joints that bend: %1."), {tallyWords(answer.tally)});
  return words;
}

QString claimBasis() {
  return said(QT_TRANSLATE_NOOP("words",
                                "Trunk, limbs and feet stay as posed; neck, head and tail bend up and down only, each "
                                "joint within its range. Soft tissue is ignored; it is likely to narrow ranges "
                                "(Cobley, Rayfield & Barrett 2013). Ranges of bare bones may be off by "
                                "several degrees a joint (Kuznetsov & Tereschenko 2010; Hutson & Hutson 2012)."));
}

QString habitBasis() {
  return said(QT_TRANSLATE_NOOP(
      "words",
      "Which posture was habitual is not settled: against the undeflected neck speaks that living amniotes at rest "
      "extend theirs and flex the head, against the extended one that the column of sauropods is straight from trunk "
      "to "
      "neck. Extended is here: base joints at their upper limits until the middle cervical is upright, the head at its "
      "lower limit."));
}

QString likelihoodName(study::Likelihood likelihood) {
  static constexpr std::array<const char*, 7> kLikelihoods{QT_TRANSLATE_NOOP("words", "virtually certain"),
                                                           QT_TRANSLATE_NOOP("words", "very likely"),
                                                           QT_TRANSLATE_NOOP("words", "likely"),
                                                           QT_TRANSLATE_NOOP("words", "about as likely as not"),
                                                           QT_TRANSLATE_NOOP("words", "unlikely"),
                                                           QT_TRANSLATE_NOOP("words", "very unlikely"),
                                                           QT_TRANSLATE_NOOP("words", "exceptionally unlikely")};
  return translated(kLikelihoods[static_cast<std::size_t>(likelihood)]);
}

namespace {

/// "78 %"; decimals as long as the last one stands for more than about the error; of almost none and almost all no more
/// than the error allows.
QString shareWords(double share, double standardError) {
  const int decimals = std::clamp(static_cast<int>(std::floor(0.5 - std::log10(100 * standardError))), 0, 2);
  const double unit = std::pow(10.0, -decimals - 2);
  if (share < 0.5 * unit || share < 3 * standardError)
    return said(QT_TRANSLATE_NOOP("words", "less than %1"),
                {percent(std::max(0.01, std::ceil(100 * (share + 3 * standardError)) / 100))});
  if (1 - share < 0.5 * unit || 1 - share < 3 * standardError)
    return said(QT_TRANSLATE_NOOP("words", "more than %1"),
                {percent(std::min(0.99, std::floor(100 * (share - 3 * standardError)) / 100))});
  return percent(share, decimals);
}

}  // namespace

QString probabilityWords(const study::ClaimProbability& probability) {
  if (probability.answered() <= 0)
    return said(QT_TRANSLATE_NOOP("words", "No probability: none of %1 samples gave an answer."),
                {QString::number(probability.options.samples)});
  return said(
      QT_TRANSLATE_NOOP("words", "%1: within range in %2 of %3 samples."),
      {capital(likelihoodName(study::likelihoodOf(probability.probability))),
       shareWords(probability.probability, probability.standardError), QString::number(probability.options.samples)});
}

QStringList probabilityNotes(const study::ClaimProbability& probability) {
  QStringList notes;
  if (probability.notAnswered > 0)
    notes << said(QT_TRANSLATE_NOOP("words", "Samples in which a joint had no range, left out: %1."),
                  {QString::number(probability.notAnswered)});
  if (probability.failed > 0)
    notes << translated(
        QT_TRANSLATE_N_NOOP("words", "%n samples gave no animal that could be built and were left out."),
        probability.failed);
  return notes;
}

QString probabilityBasis(const study::ClaimProbability& probability) {
  const study::ProbabilityOptions& o = probability.options;
  QStringList sentences;
  if (probability.measures)
    sentences << said(QT_TRANSLATE_NOOP("words",
                                        "Samples vary every measure within its error (measured %1, inferred %2 or as "
                                        "its rule says), and the shape of deformed bones by %3."),
                      {percent(o.errors.measured), percent(o.errors.inferred), percent(o.distortion.deformedStretch)});
  if (o.varyAssumptions)
    sentences << said(
        QT_TRANSLATE_NOOP("words",
                          "They vary the minimum overlap from %1 to %2, cartilage from %3 to %4 (rarely "
                          "up to %5) of the centrum's length, and what facets may interpenetrate and "
                          "separate by a factor of up to %6."),
        {percent(o.overlap.min), percent(o.overlap.max), percent(o.cartilage.grown.min / 100, 1),
         percent(o.cartilage.grown.max / 100, 1), percent(o.cartilage.most / 100), QString::number(o.toleranceFactor)});
  if (o.varyDefinitions) sentences << said(QT_TRANSLATE_NOOP("words", "Both definitions of neutral count alike."));
  sentences << (probability.contact
                    ? said(QT_TRANSLATE_NOOP("words", "Bones collide where those of the animal as it is do."))
                    : said(QT_TRANSLATE_NOOP("words", "Collisions between bones were not assessed.")));
  sentences << said(QT_TRANSLATE_NOOP("words", "Words of likelihood: Mastrandrea et al. 2010, IPCC."));
  return sentences.join(' ');
}

QString evidenceWords(range::EvidenceClass evidence) {
  static constexpr std::array<const char*, 4> kEvidences{
      QT_TRANSLATE_NOOP("words", "measured"), QT_TRANSLATE_NOOP("words", "partly measured"),
      QT_TRANSLATE_NOOP("words", "inferred"), QT_TRANSLATE_NOOP("words", "program default")};
  return translated(kEvidences[static_cast<std::size_t>(evidence)]);
}

QString tallyWords(const range::EvidenceTally& tally) {
  QStringList parts;
  const auto add = [&parts](int count, const char* form) {
    if (count > 0) parts << said(form, {QString::number(count)});
  };
  add(tally.measured, QT_TRANSLATE_NOOP("words", "%1 measured"));
  add(tally.partly, QT_TRANSLATE_NOOP("words", "%1 partly measured"));
  add(tally.inferred, QT_TRANSLATE_NOOP("words", "%1 inferred"));
  add(tally.byDefault, QT_TRANSLATE_NOOP("words", "%1 without facets (limits set by the program)"));
  return inOneLine(parts);
}

}  // namespace zyga::ui
