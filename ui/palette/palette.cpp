#include "ui/palette/palette.h"

#include "core/files/export/bone_tone.h"

namespace zyga::ui {

QColor verdictColour(range::Level level) {
  switch (level) {
    case range::Level::Supported:
      return {0x00, 0x9E, 0x73};  // bluish green
    case range::Level::Near:
      return {0xE6, 0x9F, 0x00};  // orange
    case range::Level::Beyond:
      return {0xD5, 0x5E, 0x00};  // vermillion
    case range::Level::NotJudged:
      break;
  }
  return {0x9A, 0x95, 0x8B};
}

QColor contactColour() { return {0xCC, 0x79, 0xA7}; }  // reddish purple

QColor boneColour(anatomy::Evidence evidence) {
  const auto tone = files::boneTone(evidence);
  return QColor::fromRgbF(tone[0], tone[1], tone[2]);
}

}  // namespace zyga::ui
