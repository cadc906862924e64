#include "app/verbs/verb_words.h"

#include <QCoreApplication>
#include <QStringList>
#include <iostream>

#include "app/arguments/arguments.h"
#include "ui/words/say.h"

namespace zyga::app {

std::string said(const char* english, std::initializer_list<Part> parts) {
  // Byte by byte there and back, as parts need not be UTF-8.
  QStringList bytes;
  for (const Part& part : parts) bytes << QString::fromLatin1(QByteArray::fromStdString(part.bytes));
  return ui::filled(QString::fromLatin1(ui::translated(english).toUtf8()), bytes).toLatin1().toStdString();
}

std::string said(reason::Term term) { return ui::say(term).toStdString(); }

void refuse(const char* english, std::initializer_list<Part> parts) { throw BadInput(said(english, parts)); }

void warn(const QString& sentence) { std::cerr << said(QT_TRANSLATE_NOOP("words", "warning: %1"), {sentence}) << "\n"; }

std::string wroteText(const std::string& file) { return said(QT_TRANSLATE_NOOP("words", "wrote %1"), {file}); }

std::string wroteLine(const std::string& file) { return wroteText(file) + "\n"; }

}  // namespace zyga::app
