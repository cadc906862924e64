#pragma once

#include <QString>
#include <initializer_list>
#include <string>
#include <string_view>

#include "core/reason/reason.h"

namespace zyga::app {

// What verbs say to people, in the language chosen. Sentences are literals marked with
// QT_TRANSLATE_NOOP("words", "..."), with %1 to %9 for their parts.

/// What stands in a place of a sentence: words said already, or bytes as they were typed, which need not be UTF-8.
struct Part {
  std::string bytes;

  Part(const QString& words) : bytes(words.toStdString()) {}
  Part(std::string typed) : bytes(std::move(typed)) {}
  Part(std::string_view typed) : bytes(typed) {}
  Part(const char* typed) : bytes(typed) {}
};

std::string said(const char* english, std::initializer_list<Part> parts = {});
std::string said(reason::Term term);

/// Throws BadInput.
[[noreturn]] void refuse(const char* english, std::initializer_list<Part> parts = {});
/// "warning: ..." in a line of stderr.
void warn(const QString& sentence);

/// "wrote rex.zyga"
std::string wroteText(const std::string& file);
/// The same in a line of its own.
std::string wroteLine(const std::string& file);

}  // namespace zyga::app
