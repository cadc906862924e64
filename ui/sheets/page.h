#pragma once

#include <QColor>
#include <QFont>
#include <QImage>
#include <QPainterPath>
#include <QString>
#include <variant>
#include <vector>

class QPainter;

namespace zyga::ui {

/// A page as a list of marks, in millimetres from its upper left corner. It can be painted on screen, on paper and into
/// a picture, and written as SVG, and is the same everywhere.

/// How a shape is drawn; an invalid colour leaves its part out.
struct PageInk {
  QColor fill;
  QColor line;
  double width = 0.18;       ///< mm
  std::vector<double> dash;  ///< mm, lengths of strokes and gaps
};

struct PageShape {
  QPainterPath path;
  PageInk ink;
};

/// One line of words.
struct PageWords {
  QPointF at;  ///< of the base line; which point of it is said by `anchor`
  QString words;
  double size = 2.6;  ///< of the type, mm
  QColor colour;
  Qt::AlignmentFlag anchor = Qt::AlignLeft;  ///< left, centre or right
  bool bold = false;
};

struct PagePicture {
  QRectF area;
  QImage image;
};

/// Begins a named group of marks, which ends with the next PageGroupEnd; groups may lie in groups.
struct PageGroup {
  QString name;
};
struct PageGroupEnd {};

using PageMark = std::variant<PageShape, PageWords, PagePicture, PageGroup, PageGroupEnd>;

struct Page {
  QSizeF size;
  QColor paper;  ///< invalid: transparent
  QString title;
  std::vector<PageMark> marks;

  void shape(const QPainterPath& path, const PageInk& ink) { marks.emplace_back(PageShape{path, ink}); }
  void line(const QPointF& from, const QPointF& to, const PageInk& ink);
  void words(PageWords words) { marks.emplace_back(std::move(words)); }
  void picture(const QRectF& area, const QImage& image) { marks.emplace_back(PagePicture{area, image}); }
  void begin(const QString& name) { marks.emplace_back(PageGroup{name}); }
  void end() { marks.emplace_back(PageGroupEnd{}); }
};

/// Width of one line of words, mm.
double widthOf(const QString& words, double size, bool bold = false);
/// Words broken into lines no wider than `width` (mm); a longer word stands alone and runs over.
QStringList brokenWords(const QString& words, double size, double width);

/// Pages are painted in hundredths of a millimetre, so that sizes of type are whole numbers of units and are laid out
/// the same way whatever the device.
inline constexpr double kPageUnits = 100;  ///< a millimetre

/// The type of pages for a painter that counts in page units.
QFont pageFont(double size, bool bold);
QString pageFamily();

/// Paints a page with a painter whose units are `unitsPerMm` to a millimetre, from the painter's origin.
void paintPage(QPainter& painter, const Page& page, double unitsPerMm);

}  // namespace zyga::ui
