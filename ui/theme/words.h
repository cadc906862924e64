#pragma once

#include <QString>
#include <exception>
#include <string_view>

namespace zyga::anatomy {
struct TableMessage;
}

namespace zyga::ui {

/// Core's words, UTF-8, for the window: in the language that is spoken there. Core writes plain English; sentences are
/// known by their forms ("%1 beyond: %2"), and the parts of a form are translated each by itself. What fits no form
/// stays as it is.
QString text(std::string_view words);

/// "neck.csv:4, column 3: 'abc' is not a number; write a number in mm, ...", in the language of the window.
QString text(const anatomy::TableMessage& message);

/// What core says of a file or of work that cannot be done, "cannot open /a/b.zyga: there is no such file", in the
/// language of the window. Names of files and what a file holds stay as they are.
QString faultText(const QString& words);
QString faultText(const std::exception& error);

/// With a capital letter first.
inline QString capital(const QString& words) { return words.left(1).toUpper() + words.mid(1); }

}  // namespace zyga::ui
