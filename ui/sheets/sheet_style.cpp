#include "ui/sheets/sheet_style.h"

namespace zyga::ui {

SheetStyle::SheetStyle(files::SheetPaper paper) {
  // Sizes of type of drawing-office lettering, ISO 3098: 2.5, 3.5, 5, 7 mm; smaller paper is held nearer to the eye.
  double grow = 1;
  if (paper == files::SheetPaper::A4) grow = 0.85;
  if (paper == files::SheetPaper::A2) grow = 1.25;
  if (paper == files::SheetPaper::A1) grow = 1.6;
  text = 2.6 * grow;
  title = 5.2 * grow;
  margin = 12 * grow;
  hairline = 0.12 * grow;
  line = 0.2 * grow;
  edge = 0.16 * grow;
}

}  // namespace zyga::ui
