#include "ui/theme/words.h"

#include <QCoreApplication>
#include <QHash>
#include <QRegularExpression>
#include <array>
#include <cstring>
#include <optional>
#include <vector>

#include "core/anatomy/tables/measurement_table.h"
#include "ui/theme/core_forms.h"
#include "ui/theme/fault_forms.h"
#include "ui/theme/table_forms.h"

namespace zyga::ui {
namespace {

constexpr int kDeepest = 6;          // forms within forms
constexpr int kRemembered = 20'000;  // sentences
constexpr int kFirstSaid = 7;        // of the parts of a fault; those before it are the file's own

/// A form as it is found in English, and how it is said.
struct Form {
  QRegularExpression english;
  struct Part {
    int number = 0;
    bool own = false;  ///< stays as it is
  };
  std::vector<Part> parts;  ///< what each group of the expression holds
  QString said;
};

Form formOf(const char* english, const QString& said, int firstSaid) {
  Form form;
  form.said = said;
  QString pattern = QRegularExpression::escape(QString::fromUtf8(english));
  static const QRegularExpression part(QStringLiteral("(\\\\['\"])?\\\\%(\\d)"));
  for (auto it = part.globalMatch(pattern); it.hasNext();) {
    const QRegularExpressionMatch match = it.next();
    const int number = match.captured(2).toInt();
    form.parts.push_back({number, number < firstSaid || !match.captured(1).isEmpty()});
  }
  // What is so many millimetres is a number, and so are line and column.
  static const QRegularExpression number(
      QStringLiteral("\\\\%\\d(?=\\\\ [mc]m|\\\\,\\\\ column)|(?<=column\\\\ )\\\\%\\d"));
  pattern.replace(number, QStringLiteral("(\\S+)"));
  static const QRegularExpression quoted(QStringLiteral("(\\\\['\"])\\\\%\\d"));
  pattern.replace(quoted, QStringLiteral("\\1(.*?)"));
  pattern.replace(part, QStringLiteral("(.+?)"));
  form.english.setPattern(QRegularExpression::anchoredPattern(pattern));
  form.english.optimize();
  return form;
}

/// A form with its parts by number; what stands in a part is left alone, be it "%2".
QString filled(const QString& form, const std::array<QString, 10>& parts) {
  QString words;
  for (qsizetype i = 0; i < form.size(); ++i) {
    const bool part = form[i] == QLatin1Char('%') && i + 1 < form.size() && form[i + 1].isDigit();
    if (part)
      words += parts[static_cast<std::size_t>(form[++i].digitValue())];
    else
      words += form[i];
  }
  return words;
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

  /// Faults are in no hurry, and what findings say is said without a look at their forms.
  QString sayFault(const QString& words) {
    const QString whole = QCoreApplication::translate("core", words.toUtf8().constData());
    if (whole != words) return whole;
    if (!ofFaults_) ofFaults_ = spoken(faultForms(), kFirstSaid);  // the window opens without them
    const auto said = sayingBy(*ofFaults_, words, [this](const QString& part) { return sayFault(part); });
    return said ? *said : say(words);
  }

 private:
  /// Of those that have parts; whole sentences are found by themselves.
  static std::vector<Form> spoken(std::span<const char* const> forms, int firstSaid = 0) {
    std::vector<Form> spoken;
    for (const char* english : forms) {
      if (!std::strchr(english, '%')) continue;
      const QString said = QCoreApplication::translate("core", english);
      if (said != QString::fromUtf8(english)) spoken.push_back(formOf(english, said, firstSaid));
    }
    return spoken;
  }

  QString saying(const QString& words, int depth) {
    const QString whole = QCoreApplication::translate("core", words.toUtf8().constData());
    if (whole != words || depth > kDeepest || forms_.empty()) return whole;
    const auto sayPart = [this, depth](const QString& part) { return say(part, depth + 1); };
    if (depth == 0) {  // they are no parts of other forms, and findings are written again at each step of a drag
      if (const auto said = sayingBy(ofTables_, words, sayPart)) return *said;
    }
    if (const auto end = endOfFirstClause(words))
      return QCoreApplication::translate("core", "%1, %2").arg(sayPart(words.left(*end)), sayPart(words.mid(*end + 2)));
    return sayingBy(forms_, words, sayPart).value_or(words);
  }

  /// By the first form that fits.
  template <typename SayPart>
  static std::optional<QString> sayingBy(const std::vector<Form>& forms, const QString& words, const SayPart& sayPart) {
    for (const Form& form : forms) {
      const QRegularExpressionMatch match = form.english.match(words);
      if (!match.hasMatch()) continue;
      std::array<QString, 10> said;
      for (std::size_t i = 0; i < form.parts.size(); ++i) {
        const QString part = match.captured(static_cast<int>(i) + 1);
        said[static_cast<std::size_t>(form.parts[i].number)] = form.parts[i].own ? part : sayPart(part);
      }
      return filled(form.said, said);
    }
    return std::nullopt;
  }

  QString sign_;
  std::optional<std::vector<Form>> ofFaults_;
  std::vector<Form> ofTables_, forms_;
  QHash<QString, QString> said_;
};

Speech& speech() {
  static std::optional<Speech> speech;
  if (!speech || speech->stale()) speech.emplace();
  return *speech;
}

}  // namespace

QString text(std::string_view words) {
  return speech().say(QString::fromUtf8(words.data(), static_cast<qsizetype>(words.size())));
}

QString faultText(const QString& words) { return speech().sayFault(words); }

QString faultText(const std::exception& error) { return faultText(QString::fromUtf8(error.what())); }

QString text(const anatomy::TableMessage& message) {
  QString where = QString::fromStdString(message.file) + QLatin1Char(':') + QString::number(message.line);
  if (message.column > 0) where = QCoreApplication::translate("core", "%1, column %2").arg(where).arg(message.column);
  return QCoreApplication::translate("core", "%1: %2; %3").arg(where, text(message.cause), text(message.mend));
}

}  // namespace zyga::ui
