#include "ui/words/say.h"

#include <QCoreApplication>
#include <QHash>
#include <QStringList>
#include <array>
#include <cassert>

#include "ui/words/numbers.h"
#include "ui/words/wordings.h"

namespace zyga::ui {
namespace {

using reason::Count;
using reason::Inner;
using reason::List;
using reason::Quantity;
using reason::Reason;
using reason::Term;
using reason::Text;
using reason::Value;

const QHash<QByteArrayView, const Wording*>& wordingsById() {
  static const QHash<QByteArrayView, const Wording*> byId = [] {
    QHash<QByteArrayView, const Wording*> found;
    for (const Wordings& area : allWordings())
      for (const Wording& wording : area) {
        assert(!found.contains(wording.id));
        found.insert(wording.id, &wording);
      }
    return found;
  }();
  return byId;
}

/// Null for an unknown id.
const Wording* wordingOf(std::string_view id) {
  return wordingsById().value(QByteArrayView(id.data(), static_cast<qsizetype>(id.size())), nullptr);
}

QString utf8(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

struct Say {
  QString operator()(const Text& v) const { return utf8(v.text); }
  QString operator()(const Term& v) const { return say(v); }
  QString operator()(const Count& v) const { return QString::number(v.value); }
  QString operator()(const Quantity& v) const { return quantity(v.value, v.unit); }
  QString operator()(const Inner& v) const { return say(*v); }
  QString operator()(const std::shared_ptr<const List>& v) const {
    QStringList parts;
    for (const Value& value : v->values) parts << say(value);
    return inOneLine(parts);
  }
};

int firstCount(const std::vector<Value>& values) {
  for (const Value& value : values)
    if (const auto* count = std::get_if<Count>(&value)) return static_cast<int>(count->value);
  return -1;
}

}  // namespace

QString translated(const char* english, int n) { return QCoreApplication::translate("words", english, nullptr, n); }

QString filled(const QString& form, const QStringList& parts) {
  QString words;
  for (qsizetype i = 0; i < form.size(); ++i) {
    const bool part = form[i] == QLatin1Char('%') && i + 1 < form.size() && form[i + 1].isDigit();
    const int number = part ? form[i + 1].digitValue() : 0;
    if (number < 1 || number > parts.size()) {
      words += form[i];
      continue;
    }
    words += parts[number - 1];
    ++i;
  }
  return words;
}

QString inOneLine(const QStringList& parts) {
  if (parts.isEmpty()) return {};
  QString words = parts.first();
  for (qsizetype i = 1; i < parts.size(); ++i)
    words = filled(translated(QT_TRANSLATE_NOOP("words", "%1, %2")), {words, parts[i]});
  return words;
}

QString say(reason::Term term) {
  const Wording* wording = wordingOf(term.id);
  assert(wording);
  return wording ? translated(wording->english) : utf8(term.id);
}

QString say(const reason::Value& value) { return std::visit(Say(), value); }

QString say(const Reason& reason) {
  if (reason.empty()) return {};
  const Wording* wording = wordingOf(reason.id.text);
  assert(wording);
  if (!wording) return utf8(reason.id.text);
  QStringList parts;
  for (std::size_t i = 0; i < reason.values.size(); ++i) {
    const char* form = i < wording->counts.size() ? wording->counts[i] : nullptr;
    const auto* count = form ? std::get_if<Count>(&reason.values[i]) : nullptr;
    parts << (count ? translated(form, static_cast<int>(count->value)) : say(reason.values[i]));
  }
  return filled(translated(wording->english, firstCount(reason.values)), parts);
}

QString sayFailure(const std::exception& error) {
  if (const auto* failure = dynamic_cast<const reason::Failure*>(&error)) return say(failure->reason());
  return QString::fromUtf8(error.what());
}

std::span<const Wordings> allWordings() {
  static const std::array<Wordings, 8> all{anatomyWordings(), tableWordings(), fileWordings(), pictureWordings(),
                                           rangeWordings(),   studyWordings(), scanWordings(), verbWordings()};
  return all;
}

}  // namespace zyga::ui
