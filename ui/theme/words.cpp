#include "ui/theme/words.h"

#include <QCoreApplication>
#include <QHash>
#include <QRegularExpression>
#include <optional>
#include <vector>

#include "ui/theme/core_forms.h"

namespace zyga::ui {
namespace {

constexpr int kDeepest = 6;          // forms within forms
constexpr int kRemembered = 20'000;  // sentences

/// A form as it is found in English, and how it is said.
struct Form {
  QRegularExpression english;
  std::vector<int> parts;  ///< number of the part that each group of the expression holds
  QString said;
};

Form formOf(const char* english, const QString& said) {
  Form form;
  form.said = said;
  QString pattern = QRegularExpression::escape(QString::fromUtf8(english));
  static const QRegularExpression part(QStringLiteral("\\\\%(\\d)"));
  for (auto it = part.globalMatch(pattern); it.hasNext();) form.parts.push_back(it.next().captured(1).toInt());
  pattern.replace(part, QStringLiteral("(.+?)"));
  form.english.setPattern(QRegularExpression::anchoredPattern(pattern));
  form.english.optimize();
  return form;
}

/// Of several clauses, "facets share 38 % (least 50 %), dorsiflexion 7.1° of 5°", where the first one ends; what stands
/// before a colon belongs to all of them.
std::optional<qsizetype> endOfFirstClause(const QString& words) {
  const qsizetype bracket = words.indexOf(QLatin1String("), "));
  if (bracket < 0 || words.lastIndexOf(QLatin1String(": "), bracket) >= 0) return std::nullopt;
  return bracket + 1;
}

/// Everything that is known of one language; made anew when another is spoken.
class Speech {
 public:
  Speech() : sign_(sign()) {
    for (const char* english : coreForms()) {
      const QString said = QCoreApplication::translate("core", english);
      if (said != QString::fromUtf8(english)) forms_.push_back(formOf(english, said));
    }
  }
  static QString sign() { return QCoreApplication::translate("core", "supported"); }
  bool stale() const { return sign_ != sign(); }

  QString say(const QString& words, int depth = 0) {
    if (const auto known = said_.constFind(words); known != said_.cend()) return *known;
    const QString said = saying(words, depth);
    if (said_.size() > kRemembered) said_.clear();
    said_.insert(words, said);
    return said;
  }

 private:
  QString saying(const QString& words, int depth) {
    const QString whole = QCoreApplication::translate("core", words.toUtf8().constData());
    if (whole != words || depth > kDeepest || forms_.empty()) return whole;
    if (const auto end = endOfFirstClause(words))
      return QCoreApplication::translate("core", "%1, %2")
          .arg(say(words.left(*end), depth + 1), say(words.mid(*end + 2), depth + 1));
    for (const Form& form : forms_) {
      const QRegularExpressionMatch match = form.english.match(words);
      if (!match.hasMatch()) continue;
      QString said = form.said;
      for (std::size_t i = 0; i < form.parts.size(); ++i)
        said.replace(QLatin1Char('%') + QString::number(form.parts[i]),
                     say(match.captured(static_cast<int>(i) + 1), depth + 1));
      return said;
    }
    return words;
  }

  QString sign_;
  std::vector<Form> forms_;
  QHash<QString, QString> said_;
};

}  // namespace

QString text(std::string_view words) {
  static std::optional<Speech> speech;
  if (!speech || speech->stale()) speech.emplace();
  return speech->say(QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size())));
}

}  // namespace zyga::ui
