#pragma once

#include <QString>
#include <array>
#include <exception>
#include <span>
#include <string_view>

#include "core/reason/reason.h"

namespace zyga::ui {

/// What core gives as values, said in the language chosen. Window, verbs, report, sheets and numbers files all ask
/// here.
QString say(const reason::Reason& reason);
QString say(const reason::Value& value);
/// A word of the trade by its id; asserts that it is known.
QString say(reason::Term term);
/// What went wrong, for a person. A reason::Failure in the language chosen; other exceptions (the system's, Assimp's)
/// as they put it themselves.
QString sayFailure(const std::exception& error);

/// With a capital letter first.
inline QString capital(const QString& words) { return words.left(1).toUpper() + words.mid(1); }
/// "a, b, c"
QString inOneLine(const QStringList& parts);

/// One wording: "%1" to "%9" stand for the values of the reason in their order, "%n" for the first Count, by which the
/// language chooses the number of the noun. Written with QT_TRANSLATE_NOOP("words", ...), so that translators find it.
struct Wording {
  const char* id;
  const char* english;
  /// How a Count is told where figures are not enough, "%n bytes", in the order of the values; null: by its figures.
  std::array<const char*, 4> counts{};
};
/// The wordings and terms of one area, in a file of their own in this folder; listed in wordings.h.
using Wordings = std::span<const Wording>;
/// All of them, for tests: each id once.
std::span<const Wordings> allWordings();

/// Fills "%1" to "%9" with parts that are said already; what stands in a part is left alone, be it "%2".
QString filled(const QString& form, const QStringList& parts);
/// One sentence in the language chosen. A literal, marked with QT_TRANSLATE_NOOP("words", ...).
QString translated(const char* english, int n = -1);

}  // namespace zyga::ui
