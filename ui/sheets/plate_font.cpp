#include "ui/sheets/plate_font.h"

#include <QFontDatabase>

namespace zyga::ui {

QString plateFamily() {
  static const QString family = QFontDatabase::systemFont(QFontDatabase::GeneralFont).family();
  return family;
}

QFont plateFont(double size, bool bold) {
  QFont font(plateFamily());
  font.setPixelSize(static_cast<int>(size * kPlateUnits + 0.5));
  font.setBold(bold);
  font.setHintingPreference(QFont::PreferNoHinting);
  return font;
}

}  // namespace zyga::ui
