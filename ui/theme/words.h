#pragma once

#include <QString>
#include <string_view>

namespace zyga::ui {

/// Core's words, UTF-8, for the window.
inline QString text(std::string_view words) {
  return QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size()));
}

/// With a capital letter first.
inline QString capital(const QString& words) { return words.left(1).toUpper() + words.mid(1); }

}  // namespace zyga::ui
