#include <QCoreApplication>

#include "ui/words/wordings.h"

namespace zyga::ui {

Wordings studyWordings() {
  static constexpr Wording kWordings[] = {
      {"claim.kind.head-height", QT_TRANSLATE_NOOP("words", "head height")},
      {"claim.kind.neck-slope", QT_TRANSLATE_NOOP("words", "neck inclination")},
      {"claim.kind.neck-base-slope", QT_TRANSLATE_NOOP("words", "neck base inclination")},
      {"claim.kind.snout-to-ground", QT_TRANSLATE_NOOP("words", "snout to ground")},
      {"claim.kind.head-ahead", QT_TRANSLATE_NOOP("words", "head ahead")},
      {"claim.kind.tail-base-level", QT_TRANSLATE_NOOP("words", "tail base level")},
      {"claim.value-out-of-bounds", QT_TRANSLATE_NOOP("words", "the value of a claim on %1 must be from %2 to %3")},
      {"claim.ahead-out-of-bounds", QT_TRANSLATE_NOOP("words", "the distance ahead must be from %1 to %2")},
      {"claim.no-upper-bound", QT_TRANSLATE_NOOP("words", "a claim on %1 cannot be an \"at most\"")},
      {"claim.no-skull", QT_TRANSLATE_NOOP("words", "the specimen has no skull")},
      {"claim.no-neck", QT_TRANSLATE_NOOP("words", "the specimen has no neck")},
      {"claim.no-five-caudals", QT_TRANSLATE_NOOP("words", "the specimen has no five caudals")},
      {"claim.no-forefeet", QT_TRANSLATE_NOOP("words", "the specimen has no forefeet")},
      {"claim.no-horizontal", QT_TRANSLATE_NOOP("words", "%1 lacks what the chosen definition of horizontal asks for")},

      {"foot.left-hind", QT_TRANSLATE_NOOP("words", "left hind foot")},
      {"foot.left-fore", QT_TRANSLATE_NOOP("words", "left fore foot")},
      {"foot.right-hind", QT_TRANSLATE_NOOP("words", "right hind foot")},
      {"foot.right-fore", QT_TRANSLATE_NOOP("words", "right fore foot")},
      {"stance.forelimbs-apart",
       QT_TRANSLATE_NOOP("words",
                         "The forelimbs stand apart and bend, because the neck alone is too short or too stiff.")},
      {"stance.snout-over-ground",
       QT_TRANSLATE_NOOP("words",
                         "The snout stays %1 over the ground with every neck joint as far down as its range goes.")},
      {"stance.foot-misses", QT_TRANSLATE_NOOP("words", "The %1 misses its place by %2.")},
      {"stance.foot-held-up", QT_TRANSLATE_NOOP("words", "The %1 is held up and does not carry.")},
      {"stance.tail-over-ground", QT_TRANSLATE_NOOP("words", "The tail's range leaves it %1 over the ground.")},
      {"stance.tail-in-ground", QT_TRANSLATE_NOOP("words", "The tail's range leaves it %1 under the ground.")},
      {"stance.would-fall",
       QT_TRANSLATE_NOOP(
           "words", "The estimated centre of mass lies %1 outside what hind feet and tail stand on: it would fall.")},
      {"stance.no-hind-feet", QT_TRANSLATE_NOOP("words", "There are no two hind feet to rear on.")},
      {"compare.different-joints",
       QT_TRANSLATE_NOOP("words", "the two have different joints: %1 in the first, %2 in the second")},
      {"compare.more-joints", QT_TRANSLATE_NOOP("words", "the two have different joints: only one of them has %1")},

      {"track.pace-unknown", QT_TRANSLATE_NOOP("words", "The prints after %1 can't be laid: its pace is unknown.")},
      {"track.next-pace-unknown",
       QT_TRANSLATE_NOOP("words",
                         "The prints after %1 can't be laid: its next pace and stride, or its gauge, are unknown.")},
      {"track.stride-unknown",
       QT_TRANSLATE_NOOP("words",
                         "The prints after %1 can't be laid: the stride before it, or its gauge, is unknown.")},
      {"track.print-without-name",
       QT_TRANSLATE_NOOP("words", "A print without a name can't be laid: its side is unknown.")},
      {"track.print-without-side", QT_TRANSLATE_NOOP("words", "'%1' can't be laid: its side is unknown.")},
      {"track.fore-prints-adrift",
       QT_TRANSLATE_NOOP("words",
                         "The fore prints can't be laid: no row says how far they lie ahead of the hind prints.")},

      {"mass.volume-below-circumference",
       QT_TRANSLATE_NOOP("words",
                         "By volume at most %1, by circumference at least %2: the two do not overlap. Hulls that lack "
                         "flesh, densities that are too low, or circumferences that are inferred or of stout legs may "
                         "be why.")},
      {"mass.volume-above-circumference",
       QT_TRANSLATE_NOOP("words",
                         "By volume at least %1, by circumference at most %2: the two do not overlap. Hulls that hold "
                         "too much, densities that are too high, or circumferences that are inferred or of slender "
                         "legs may be why.")},
      {"mass.circumference-not-positive",
       QT_TRANSLATE_NOOP("words", "circumferences must be above zero: humerus %1, femur %2")},

      {"source.alexander-1976", QT_TRANSLATE_NOOP("words", "Alexander 1976, Nature 261:129")},
      {"source.gonzalez-riga-2011",
       QT_TRANSLATE_NOOP("words", "derived titanosaurs, González Riga 2011, An. Acad. Bras. Ciênc. 83:279")},
      {"source.own-choice", QT_TRANSLATE_NOOP("words", "own choice")},
      {"source.campione-evans-2012", QT_TRANSLATE_NOOP("words", "Campione & Evans 2012, BMC Biol. 10:60")},
      {"source.stevens-2013", QT_TRANSLATE_NOOP("words", "Stevens 2013, PLoS ONE 8(10):e78572")},
      {"source.taylor-wedel-naish-2009",
       QT_TRANSLATE_NOOP("words", "Taylor, Wedel & Naish 2009, Acta Palaeontol. Pol. 54:213")},
      {"source.hull-mass",
       QT_TRANSLATE_NOOP("words",
                         "factor 1.21: Sellers et al. 2012, Biol. Lett. 8:842; error 20 %: Brassey & Sellers 2014, "
                         "PLoS ONE 9(3):e91691")},
      {"study.no-neck", QT_TRANSLATE_NOOP("words", "The specimen has no neck that moves.")},
      {"study.no-snout", QT_TRANSLATE_NOOP("words", "The specimen has no skull whose snout could reach anything.")},
      {"study.no-skull", QT_TRANSLATE_NOOP("words", "The specimen has no skull to carry blood to.")},
      {"study.no-dorsals", QT_TRANSLATE_NOOP("words", "The specimen has no dorsal vertebrae to place a heart under.")},
      {"study.no-spine-or-centrum",
       QT_TRANSLATE_NOOP("words", "Nothing is known of the size of the centrum or the neural spines at %1.")},
      {"study.no-measures", QT_TRANSLATE_NOOP("words", "There are no measurements that could vary.")},
      {"study.unforeseen", QT_TRANSLATE_NOOP("words", "Something unforeseen went wrong: %1")},
  };
  return kWordings;
}

}  // namespace zyga::ui
