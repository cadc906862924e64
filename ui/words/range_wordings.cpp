#include <QCoreApplication>

#include "ui/words/wordings.h"

namespace zyga::ui {

Wordings rangeWordings() {
  static constexpr Wording kWordings[] = {
      // Sources.
      {"source.taylor-wedel-2013", QT_TRANSLATE_NOOP("words", "Taylor & Wedel 2013, PLoS ONE 8(10):e78214")},
      {"source.taylor-wedel-2013-second-hand",
       QT_TRANSLATE_NOOP("words", "Taylor & Wedel 2013, PLoS ONE 8(10):e78214, quoted second hand")},
      {"source.stevens-parrish-1999",
       QT_TRANSLATE_NOOP("words",
                         "Stevens & Parrish 1999, Science 284:798. Tested on ostriches by Cobley, Rayfield & Barrett "
                         "2013, PLoS ONE 8(8):e72187: it does not convey their flexibility")},
      {"source.program-default", QT_TRANSLATE_NOOP("words", "program default, no source")},
      {"source.kambic-2017", QT_TRANSLATE_NOOP("words", "Kambic, Biewener & Pierce 2017, Front. Zool. 14:37")},
      {"cartilage.rhea", QT_TRANSLATE_NOOP("words", "Rhea")},
      {"cartilage.sauroposeidon", QT_TRANSLATE_NOOP("words", "Sauroposeidon")},
      {"cartilage.turkey", QT_TRANSLATE_NOOP("words", "Turkey")},
      {"cartilage.ostrich", QT_TRANSLATE_NOOP("words", "Ostrich")},
      {"cartilage.horse", QT_TRANSLATE_NOOP("words", "Horse")},
      {"cartilage.alligator", QT_TRANSLATE_NOOP("words", "Alligator")},
      {"cartilage.juvenile-apatosaurus-low", QT_TRANSLATE_NOOP("words", "Juvenile Apatosaurus, low")},
      {"cartilage.juvenile-apatosaurus-high", QT_TRANSLATE_NOOP("words", "Juvenile Apatosaurus, high")},
      {"cartilage.juvenile-giraffe", QT_TRANSLATE_NOOP("words", "Juvenile giraffe")},
      {"overlap.published-rule", QT_TRANSLATE_NOOP("words", "published rule")},
      {"overlap.half-the-rule", QT_TRANSLATE_NOOP("words", "half of the published rule")},
      {"overlap.facets-all-but-part", QT_TRANSLATE_NOOP("words", "facets may all but part, seen in living turkeys")},
  };
  return kWordings;
}

}  // namespace zyga::ui
