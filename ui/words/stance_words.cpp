#include "ui/words/stance_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <array>
#include <cmath>

#include "ui/words/numbers.h"
#include "ui/words/say.h"

namespace zyga::ui {
namespace {

using range::Direction;
using study::Chain;
using study::Extreme;
using study::Stance;

/// Where the tip is from the base: ahead or behind, to the left, to the right, or neither.
QString placeFromBase(const Extreme& extreme) {
  static constexpr std::array<const char*, 6> kForms{
      QT_TRANSLATE_NOOP("words", "%1 ahead of the base"),
      QT_TRANSLATE_NOOP("words", "%1 ahead of the base and %2 to the left"),
      QT_TRANSLATE_NOOP("words", "%1 ahead of the base and %2 to the right"),
      QT_TRANSLATE_NOOP("words", "%1 behind the base"),
      QT_TRANSLATE_NOOP("words", "%1 behind the base and %2 to the left"),
      QT_TRANSLATE_NOOP("words", "%1 behind the base and %2 to the right")};
  constexpr double kStraight = 0.005;  // m
  const double left = extreme.carriage.left;
  const std::size_t aside = std::abs(left) < kStraight ? 0u : left > 0 ? 1u : 2u;
  return filled(translated(kForms.at((extreme.carriage.ahead >= 0 ? 0u : 3u) + aside)),
                {metres(std::abs(extreme.carriage.ahead)), metres(std::abs(left))});
}

}  // namespace

QString stanceName(Stance stance) {
  static constexpr std::array<const char*, study::kStances.size()> kNames{
      QT_TRANSLATE_NOOP("words", "Standing alert"),
      QT_TRANSLATE_NOOP("words", "Browsing high"),
      QT_TRANSLATE_NOOP("words", "Drinking"),
      QT_TRANSLATE_NOOP("words", "Walking 1: left hind swings"),
      QT_TRANSLATE_NOOP("words", "Walking 2: left fore swings"),
      QT_TRANSLATE_NOOP("words", "Walking 3: right hind swings"),
      QT_TRANSLATE_NOOP("words", "Walking 4: right fore swings"),
      QT_TRANSLATE_NOOP("words", "Rearing")};
  return translated(kNames.at(static_cast<std::size_t>(stance)));
}

QString stanceMeaning(Stance stance) {
  static constexpr std::array<const char*, study::kStances.size()> kMeanings{
      QT_TRANSLATE_NOOP("words", "Four feet on the ground, the neck raised from its base."),
      QT_TRANSLATE_NOOP("words", "The head at the maximum height within range, over four planted feet."),
      QT_TRANSLATE_NOOP("words", "The snout at the ground; forelimbs give way only if the neck falls short."),
      QT_TRANSLATE_NOOP("words", "First of four moments of a lateral sequence."),
      QT_TRANSLATE_NOOP("words", "Second of four moments of a lateral sequence."),
      QT_TRANSLATE_NOOP("words", "Third of four moments of a lateral sequence."),
      QT_TRANSLATE_NOOP("words", "Fourth of four moments of a lateral sequence."),
      QT_TRANSLATE_NOOP("words", "On the hind feet, the tail as a prop on the ground, forelimbs hanging.")};
  return translated(kMeanings.at(static_cast<std::size_t>(stance)));
}

QString readingName(study::Reading reading) {
  static constexpr std::array<const char*, 7> kNames{QT_TRANSLATE_NOOP("words", "snout over the ground"),
                                                     QT_TRANSLATE_NOOP("words", "hip over the ground"),
                                                     QT_TRANSLATE_NOOP("words", "shoulder over the ground"),
                                                     QT_TRANSLATE_NOOP("words", "glenoacetabular distance"),
                                                     QT_TRANSLATE_NOOP("words", "trunk, rising forwards"),
                                                     QT_TRANSLATE_NOOP("words", "neck base, rising forwards"),
                                                     QT_TRANSLATE_NOOP("words", "tail base, rising backwards")};
  return translated(kNames.at(static_cast<std::size_t>(reading)));
}

QString extremeName(Chain chain, Direction direction) {
  static constexpr std::array<const char*, 12> kNames{
      QT_TRANSLATE_NOOP("words", "Neck, maximum dorsiflexion"),
      QT_TRANSLATE_NOOP("words", "Neck, maximum ventriflexion"),
      QT_TRANSLATE_NOOP("words", "Neck, maximum left lateral flexion"),
      QT_TRANSLATE_NOOP("words", "Neck, maximum right lateral flexion"),
      QT_TRANSLATE_NOOP("words", "Neck, maximum axial rotation (left side up)"),
      QT_TRANSLATE_NOOP("words", "Neck, maximum axial rotation (right side up)"),
      QT_TRANSLATE_NOOP("words", "Tail, maximum dorsiflexion"),
      QT_TRANSLATE_NOOP("words", "Tail, maximum ventriflexion"),
      QT_TRANSLATE_NOOP("words", "Tail, maximum left lateral flexion"),
      QT_TRANSLATE_NOOP("words", "Tail, maximum right lateral flexion"),
      QT_TRANSLATE_NOOP("words", "Tail, maximum axial rotation (left side up)"),
      QT_TRANSLATE_NOOP("words", "Tail, maximum axial rotation (right side up)")};
  return translated(kNames.at((chain == Chain::Neck ? 0u : 6u) + static_cast<std::size_t>(direction)));
}

QString extremeWords(const Extreme& extreme) {
  const bool neck = extreme.chain == Chain::Neck;
  QString words =
      filled(translated(neck ? QT_TRANSLATE_NOOP("words", "snout at %1, %2; sum of joint angles %3 (joints: %4)")
                             : QT_TRANSLATE_NOOP("words", "tip at %1, %2; sum of joint angles %3 (joints: %4)")),
             {metres(extreme.carriage.tipHeight), placeFromBase(extreme), degrees(std::abs(extreme.total)),
              QString::number(extreme.joints.size())});
  const auto blank =
      std::count_if(extreme.joints.begin(), extreme.joints.end(), [](const auto& j) { return !j.judged; });
  if (blank > 0)
    words = filled(translated(QT_TRANSLATE_NOOP("words", "%1; not assessed: %2")), {words, QString::number(blank)});
  if (extreme.carriage.lowest < 0)
    words = filled(translated(QT_TRANSLATE_NOOP("words", "%1; part of it would be %2 in the ground")),
                   {words, metres(-extreme.carriage.lowest)});
  return words;
}

}  // namespace zyga::ui
