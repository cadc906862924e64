#include "ui/words/study_words.h"

#include <QCoreApplication>

#include "ui/words/assumption_words.h"
#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using study::NeckCarriage;
using study::SpreadOf;
using study::StudyKind;

QString carriageSentence(const study::ElevationCase& one) {
  const bool rising = one.slope >= 0;
  const QString name = capital(carriageWord(one.which)), slope = degrees(std::abs(one.slope));
  if (std::isnan(one.carriage.snoutHeight))
    return filled(translated(rising ? QT_TRANSLATE_NOOP("words", "%1: neck rising by %2, its base at %3.")
                                    : QT_TRANSLATE_NOOP("words", "%1: neck falling by %2, its base at %3.")),
                  {name, slope, degrees(one.baseSlope)});
  return filled(
      translated(rising
                     ? QT_TRANSLATE_NOOP("words", "%1: snout %2 over the ground, neck rising by %3, its base at %4.")
                     : QT_TRANSLATE_NOOP("words", "%1: snout %2 over the ground, neck falling by %3, its base at %4.")),
      {name, metres(one.carriage.snoutHeight), slope, degrees(one.baseSlope)});
}

QString sentenceOf(const study::ElevationCase& one) {
  QString words = carriageSentence(one);
  if (one.carriage.lowest < 0)
    words += QLatin1Char(' ') + filled(translated(QT_TRANSLATE_NOOP("words", "It would be %1 in the ground.")),
                                       {metres(-one.carriage.lowest)});
  return words;
}

QString sentenceOf(const study::GroundStretch& stretch, const std::optional<double>& foreFeet) {
  const double origin = foreFeet.value_or(0);
  return filled(
      translated(
          foreFeet ? QT_TRANSLATE_NOOP("words", "It reaches the ground from %1 to %2 ahead of the foremost fore foot.")
                   : QT_TRANSLATE_NOOP("words", "It reaches the ground from %1 to %2 ahead of the neck's base.")),
      {metres(stretch.from - origin), metres(stretch.to - origin)});
}

QString sentenceOf(const study::ReachSpace& space) {
  if (space.strip.empty())
    return filled(translated(QT_TRANSLATE_NOOP("words",
                                               "With lateral flexion and axial rotation it reaches at least %1 of "
                                               "space over the ground.")),
                  {cubicMetres(space.volume)});
  return filled(translated(QT_TRANSLATE_NOOP("words",
                                             "With lateral flexion and axial rotation it reaches at least %1 of space "
                                             "over the ground and %2 of ground.")),
                {cubicMetres(space.volume), squareMetres(space.stripArea)});
}

QString sentenceOf(const char* region, const std::array<double, 6>& sums) {
  return filled(translated(QT_TRANSLATE_NOOP("words",
                                             "%1: dorsiflexion %2, ventriflexion %3, left lateral flexion %4, right "
                                             "lateral flexion %5 in all, one motion at a time.")),
                {translated(region), degrees(sums[0]), degrees(-sums[1]), degrees(sums[2]), degrees(-sums[3])});
}

QString sentenceOf(const study::SpreadStudy& spread, SpreadOf what) {
  const auto i = static_cast<std::size_t>(what);
  const study::Quantiles& q = spread.quantiles[i];
  const auto value = [what](double v) { return study::isAngle(what) ? degrees(v) : metres(v); };
  return filled(translated(QT_TRANSLATE_NOOP("words",
                                             "%1: %2, between %3 and %4 in nine samples of ten; the table as it is "
                                             "gives %5.")),
                {capital(quantityWord(what)), value(q.q50), value(q.q05), value(q.q95), value(spread.asIs[i])});
}

QString heldNeutral(const std::vector<std::string>& unjudged) {
  return translated(QT_TRANSLATE_N_NOOP("words", "%n joints are not assessed and were held in neutral."),
                    static_cast<int>(unjudged.size()));
}

}  // namespace

QString title(StudyKind kind) {
  switch (kind) {
    case StudyKind::Elevation:
      return translated(QT_TRANSLATE_NOOP("words", "Head height and neck slope"));
    case StudyKind::Envelope:
      return translated(QT_TRANSLATE_NOOP("words", "Feeding envelope (snout reach)"));
    case StudyKind::Range:
      return translated(QT_TRANSLATE_NOOP("words", "Ranges of the column"));
    case StudyKind::Spread:
      return translated(QT_TRANSLATE_NOOP("words", "Uncertainty (Monte Carlo)"));
    case StudyKind::Pressure:
      return translated(QT_TRANSLATE_NOOP("words", "Blood pressure"));
    case StudyKind::Stress:
      break;
  }
  return translated(QT_TRANSLATE_NOOP("words", "Joint stress along the neck"));
}

QString tells(StudyKind kind) {
  switch (kind) {
    case StudyKind::Elevation:
      return translated(QT_TRANSLATE_NOOP(
          "words", "How high the head comes with the neck neutral, at the ends of its range and now."));
    case StudyKind::Envelope:
      return translated(QT_TRANSLATE_NOOP(
          "words", "Where the snout gets to with every joint inside its range, the animal as it stands."));
    case StudyKind::Range:
      return translated(QT_TRANSLATE_NOOP("words", "How far each joint goes from neutral, one motion at a time."));
    case StudyKind::Spread:
      return translated(QT_TRANSLATE_NOOP(
          "words", "How far heights and slopes move with errors of measurement and with assumptions."));
    case StudyKind::Pressure:
      return translated(
          QT_TRANSLATE_NOOP("words", "The column of blood between heart and head, and what the heart has to give."));
    case StudyKind::Stress:
      break;
  }
  return translated(QT_TRANSLATE_NOOP(
      "words", "How hard each joint of the neck is pressed, and how even that is, in one posture and another."));
}

QString carriageWord(NeckCarriage which) {
  switch (which) {
    case NeckCarriage::Neutral:
      return translated(QT_TRANSLATE_NOOP("words", "neutral"));
    case NeckCarriage::Dorsal:
      return translated(QT_TRANSLATE_NOOP("words", "maximum dorsiflexion"));
    case NeckCarriage::Ventral:
      return translated(QT_TRANSLATE_NOOP("words", "maximum ventriflexion"));
    case NeckCarriage::Highest:
      return translated(QT_TRANSLATE_NOOP("words", "highest"));
    case NeckCarriage::Lowest:
      return translated(QT_TRANSLATE_NOOP("words", "lowest"));
    case NeckCarriage::Present:
      break;
  }
  return translated(QT_TRANSLATE_NOOP("words", "present pose"));
}

QString quantityWord(SpreadOf what) {
  switch (what) {
    case SpreadOf::NeckLength:
      break;
    case SpreadOf::NeutralSnout:
      return translated(QT_TRANSLATE_NOOP("words", "neutral snout height"));
    case SpreadOf::HighestSnout:
      return translated(QT_TRANSLATE_NOOP("words", "highest snout height"));
    case SpreadOf::LowestSnout:
      return translated(QT_TRANSLATE_NOOP("words", "lowest snout height"));
    case SpreadOf::PresentSnout:
      return translated(QT_TRANSLATE_NOOP("words", "present snout height"));
    case SpreadOf::NeutralSlope:
      return translated(QT_TRANSLATE_NOOP("words", "neutral neck slope"));
    case SpreadOf::HighestSlope:
      return translated(QT_TRANSLATE_NOOP("words", "neck slope with the snout highest"));
    case SpreadOf::PresentSlope:
      return translated(QT_TRANSLATE_NOOP("words", "present neck slope"));
  }
  return translated(QT_TRANSLATE_NOOP("words", "neck length"));
}

QStringList sentences(const study::Elevation& elevation) {
  QStringList all;
  for (const study::ElevationCase& one : elevation.cases) all << sentenceOf(one);
  if (!elevation.unjudged.empty()) all << heldNeutral(elevation.unjudged);
  return all;
}

QStringList sentences(const study::Envelope& e) {
  QStringList all;
  if (e.outlines.empty()) return all;
  all << filled(translated(QT_TRANSLATE_NOOP("words",
                                             "Bending up and down only, the snout reaches %1 high and %2 ahead of the "
                                             "neck's base.")),
                {metres(e.highest.y()), metres(e.farthest.x())});
  if (e.ground.empty())
    all << filled(
        translated(QT_TRANSLATE_NOOP("words", "It does not reach the ground; its lowest place is %1 over it.")),
        {metres(e.lowest.y())});
  for (const study::GroundStretch& stretch : e.ground) all << sentenceOf(stretch, e.foreFeet);
  if (e.space) all << sentenceOf(*e.space);
  if (!e.unjudged.empty()) all << heldNeutral(e.unjudged);
  return all;
}

QStringList sentences(const study::RangeChart& chart) {
  return {sentenceOf(QT_TRANSLATE_NOOP("words", "Neck and head"), chart.neck),
          sentenceOf(QT_TRANSLATE_NOOP("words", "Trunk"), chart.trunk),
          sentenceOf(QT_TRANSLATE_NOOP("words", "Tail"), chart.tail)};
}

QStringList sentences(const study::SpreadStudy& spread) {
  if (spread.draws.empty())
    return {translated(QT_TRANSLATE_NOOP("words", "No animal could be built from any of the samples."))};
  QStringList all;
  for (const SpreadOf what : study::kSpreads) all << sentenceOf(spread, what);
  all << filled(
      translated(QT_TRANSLATE_NOOP("words",
                                   "The neck's present angles are within range in %1 of %2 samples "
                                   "(seed %3).")),
      {percent(spread.supportedShare), QString::number(spread.draws.size()), QString::number(spread.options.seed)});
  if (spread.failed > 0)
    all << translated(QT_TRANSLATE_N_NOOP("words", "%n samples gave no animal that could be built and were left out."),
                      spread.failed);
  return all;
}

QStringList sentences(const study::Pressure& pressure) {
  QStringList all{filled(translated(QT_TRANSLATE_NOOP("words",
                                                      "The heart is taken to lie %1 over the ground, in the lower part "
                                                      "of the chest.")),
                         {metres(pressure.heartHeight)})};
  for (const study::Pressure::Row& row : pressure.rows)
    all << filled(
        translated(QT_TRANSLATE_NOOP("words", "%1: head %2 over the heart, column %3 (%4 to %5), at the heart %6.")),
        {capital(carriageWord(row.which)), metres(row.column), millimetresOfMercury(row.pressure), plain(row.low, 0),
         plain(row.high, 0), millimetresOfMercury(row.atHeart)});
  all << filled(translated(QT_TRANSLATE_NOOP("words",
                                             "At the heart %1 are added to the column for the perfusion of the head, "
                                             "as in giraffes (Aalkjær & Wang 2021, Annu. Rev. Physiol. 83:1); what a "
                                             "sauropod needed is not known.")),
                {millimetresOfMercury(study::kPerfusionPressure)});
  return all;
}

QStringList sentences(const study::StudyResult& result) {
  return std::visit([](const auto& found) { return sentences(found); }, result);
}

QStringList cautions(const study::StudyResult& result) {
  QStringList all;
  if (std::holds_alternative<study::Pressure>(result)) all << pressureViews() << pressureCaution();
  if (std::holds_alternative<study::JointStress>(result)) all << stressViews() << stressCaution();
  return all << contactCaution(study::contactJudged(result)) << bareBoneCaution();
}

QString contactCaution(bool judged) {
  return judged ? translated(QT_TRANSLATE_NOOP(
                      "words", "Bones that collide end ranges too, but for the shafts of cervical ribs, which bend."))
                : translated(QT_TRANSLATE_NOOP("words", "Collisions between bones are left out of account."));
}

files::StudyTold toldOf(const study::StudyResult& result) {
  const auto plainly = [](const QStringList& words) {
    std::vector<std::string> all;
    for (const QString& one : words) all.push_back(one.toStdString());
    return all;
  };
  files::StudyTold told{plainly(sentences(result)), {}, {}};
  const bool stress = std::holds_alternative<study::JointStress>(result);
  if (!stress && !std::holds_alternative<study::Pressure>(result)) return told;
  told.views = plainly(stress ? stressViews() : pressureViews());
  told.caution = (stress ? stressCaution() : pressureCaution()).toStdString();
  return told;
}

QStringList pressureViews() {
  return {translated(QT_TRANSLATE_NOOP(
              "words",
              "One view: the heart has to lift the whole column, on top of what the head itself needs; about 700 mmHg "
              "at the heart of an upright sauropod, a siphon not being feasible (Seymour & Lillywhite 2000, Proc. R. "
              "Soc. B 267:1883; for giraffes Mitchell et al. 2006, J. Exp. Biol. 209:2515).")),
          translated(QT_TRANSLATE_NOOP(
              "words",
              "The other view: gravity acts on the blood going down as on the blood going up, as in a siphon, so that "
              "the heart has to overcome friction alone (Hicks & Badeer 1989, Am. J. Physiol. 256:R567, and 1992, "
              "262:R725; for sauropods Hughes et al. 2016, J. Exp. Biol. 219:1154)."))};
}

QString pressureCaution() {
  return translated(QT_TRANSLATE_NOOP(
      "words",
      "Bones tell heights, not pressures: the heart's place is assumed, and which view holds is not settled."));
}

}  // namespace zyga::ui
