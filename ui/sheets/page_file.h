#pragma once

#include <QByteArray>

#include "ui/sheets/page.h"

namespace zyga::ui {

/// pdf, svg, png
const QStringList& pageEndings();

inline constexpr int kWidestPng = 16000;  ///< pixels

/// The page as the bytes of a PDF, SVG or PNG file, the same bytes every time from the same page: no clock is in
/// them. `pngWidth`: pixels of a PNG from side to side. Throws std::runtime_error when it cannot be made.
QByteArray pageBytes(const Page& page, const QString& ending, int pngWidth);

/// The page as SVG 1.1 whose user unit is a millimetre: shapes as paths, words as words, groups as <g> with their name
/// as id, pictures as embedded PNG.
QByteArray pageSvg(const Page& page);

/// A PDF as Qt writes it without what changes from one run to the next, in place, so that nothing else moves: its dates
/// are put to the first day of 2000, and its identifier is taken from its content.
QByteArray withoutClock(QByteArray pdf);

/// While it lives, Qt's hash tables made anew keep one order from run to run: a PDF's fonts are numbered in the order
/// of such a table.
class SteadyHashes {
 public:
  SteadyHashes();
  ~SteadyHashes();
  SteadyHashes(const SteadyHashes&) = delete;
  SteadyHashes& operator=(const SteadyHashes&) = delete;
};

}  // namespace zyga::ui
