#include "ui/theme/words.h"

#include <QCoreApplication>
#include <QHash>
#include <QRegularExpression>
#include <optional>
#include <vector>

#include "core/anatomy/measurement_table.h"
#include "ui/theme/core_forms.h"
#include "ui/theme/table_forms.h"

namespace zyga::ui {
namespace {

constexpr int kDeepest = 6;          // forms within forms
constexpr int kRemembered = 20'000;  // sentences

/// A form as it is found in English, and how it is said.
struct Form {
  QRegularExpression english;
  struct Part {
    int number = 0;
    bool quoted = false;  ///< stays as it is
  };
  std::vector<Part> parts;  ///< what each group of the expression holds
  QString said;
};

Form formOf(const char* english, const QString& said) {
  Form form;
  form.said = said;
  QString pattern = QRegularExpression::escape(QString::fromUtf8(english));
  static const QRegularExpression part(QStringLiteral("(\\\\')?\\\\%(\\d)"));
  for (auto it = part.globalMatch(pattern); it.hasNext();) {
    const QRegularExpressionMatch match = it.next();
    form.parts.push_back({match.captured(2).toInt(), !match.captured(1).isEmpty()});
  }
  // What is so many millimetres is a number.
  static const QRegularExpression number(QStringLiteral("\\\\%\\d(?=\\\\ [mc]m)"));
  pattern.replace(number, QStringLiteral("(\\S+)"));
  pattern.replace(part, QStringLiteral("\\1(.+?)"));
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
  Speech() : sign_(sign()), ofTables_(spoken(tableForms())), forms_(spoken(coreForms())) {}
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
  static std::vector<Form> spoken(std::span<const char* const> forms) {
    std::vector<Form> spoken;
    for (const char* english : forms) {
      const QString said = QCoreApplication::translate("core", english);
      if (said != QString::fromUtf8(english)) spoken.push_back(formOf(english, said));
    }
    return spoken;
  }

  QString saying(const QString& words, int depth) {
    const QString whole = QCoreApplication::translate("core", words.toUtf8().constData());
    if (whole != words || depth > kDeepest || forms_.empty()) return whole;
    if (depth == 0) {  // they are no parts of other forms, and findings are written again at each step of a drag
      if (const auto said = sayingBy(ofTables_, words, depth)) return *said;
    }
    if (const auto end = endOfFirstClause(words))
      return QCoreApplication::translate("core", "%1, %2")
          .arg(say(words.left(*end), depth + 1), say(words.mid(*end + 2), depth + 1));
    return sayingBy(forms_, words, depth).value_or(words);
  }

  /// By the first form that fits.
  std::optional<QString> sayingBy(const std::vector<Form>& forms, const QString& words, int depth) {
    for (const Form& form : forms) {
      const QRegularExpressionMatch match = form.english.match(words);
      if (!match.hasMatch()) continue;
      QString said = form.said;
      for (std::size_t i = 0; i < form.parts.size(); ++i) {
        const QString part = match.captured(static_cast<int>(i) + 1);
        said.replace(QLatin1Char('%') + QString::number(form.parts[i].number),
                     form.parts[i].quoted ? part : say(part, depth + 1));
      }
      return said;
    }
    return std::nullopt;
  }

  QString sign_;
  std::vector<Form> ofTables_, forms_;
  QHash<QString, QString> said_;
};

}  // namespace

QString text(std::string_view words) {
  static std::optional<Speech> speech;
  if (!speech || speech->stale()) speech.emplace();
  return speech->say(QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size())));
}

QString text(const anatomy::TableMessage& message) {
  QString where = QString::fromStdString(message.file) + QLatin1Char(':') + QString::number(message.line);
  if (message.column > 0) where = QCoreApplication::translate("core", "%1, column %2").arg(where).arg(message.column);
  return QCoreApplication::translate("core", "%1: %2; %3").arg(where, text(message.cause), text(message.mend));
}

}  // namespace zyga::ui
