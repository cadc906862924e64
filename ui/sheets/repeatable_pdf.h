#pragma once

#include <QByteArray>

namespace zyga::ui {

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
