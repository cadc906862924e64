#include "app/arguments/arguments.h"

#include <QCommandLineParser>
#include <QCoreApplication>
#include <algorithm>
#include <charconv>
#include <cmath>
#include <map>

namespace zyga::app {
namespace {

using reason::Reason;
using reason::text;

/// Byte by byte there and back: names of files need not be UTF-8, and options are ASCII.
QString toQt(std::string_view bytes) { return QString::fromLatin1(bytes.data(), static_cast<qsizetype>(bytes.size())); }
std::string fromQt(const QString& bytes) { return bytes.toLatin1().toStdString(); }

const OptionSpec* specOf(const VerbSpec& verb, std::string_view name) {
  const auto found =
      std::find_if(verb.options.begin(), verb.options.end(), [&](const auto& o) { return o.name == name; });
  return found == verb.options.end() ? nullptr : &*found;
}

reason::Value listed(const std::vector<std::string_view>& words) {
  std::vector<reason::Value> all;
  for (const std::string_view word : words) all.push_back(text(word));
  return reason::list(std::move(all));
}

reason::Value known(const VerbSpec& verb) {
  std::vector<std::string_view> names;
  for (const auto& option : verb.options) names.push_back(option.name);
  return listed(names);
}

reason::Value digits(double number) {
  std::string digits(32, '\0');
  digits.resize(static_cast<std::size_t>(
      std::to_chars(digits.data(), digits.data() + digits.size(), number, std::chars_format::fixed).ptr -
      digits.data()));
  return text(digits);
}

/// Reads the words of one command line and remembers all that is wrong with them. The toolkit's parser stops at the
/// first fault it can say and takes the next option for a missing value; what it cannot tell is looked at before.
class Reader {
 public:
  explicit Reader(const VerbSpec& verb) : verb_(verb) {
    parser_.setSingleDashWordOptionMode(QCommandLineParser::ParseAsLongOptions);
    for (const auto& option : verb.options)
      parser_.addOption(QCommandLineOption(toQt(option.name.substr(2)), {}, toQt(option.value)));
  }

  Arguments read(const std::vector<std::string>& words) {
    parser_.parse(joined(words));
    for (const QString& name : parser_.unknownOptionNames())
      fault({fault::kUnknownOption, {text("--" + fromQt(name)), text(verb_.name), known(verb_)}});
    takeOptions();
    takeFiles();
    if (!faults_.empty()) throw BadInput(allFaults());
    return std::move(arguments_);
  }

 private:
  void fault(Reason reason) { faults_.push_back(std::move(reason)); }

  Reason allFaults() {
    Reason all = faults_.back();
    for (std::size_t i = faults_.size() - 1; i-- > 0;)
      all = Reason(fault::kBoth, {reason::inner(faults_[i]), reason::inner(std::move(all))});
    return all;
  }

  /// The words with each option and its value in one, "--name=value"; an option that lacks its value, or a switch that
  /// has one, is told and left out.
  QStringList joined(const std::vector<std::string>& words) {
    QStringList all{toQt(verb_.name)};
    for (std::size_t i = 0; i < words.size(); ++i) {
      const std::string& word = words[i];
      if (word == "--") {
        for (; i < words.size(); ++i) all << toQt(words[i]);
        break;
      }
      const auto equals = word.find('=');
      const OptionSpec* spec = word.starts_with("--") ? specOf(verb_, word.substr(0, equals)) : nullptr;
      if (!spec || (spec->value.empty() && equals == std::string::npos)) {
        all << toQt(word);
      } else if (spec->value.empty()) {
        fault({fault::kTakesNoValue, {text(spec->name)}});
      } else if (equals != std::string::npos) {
        all << toQt(word);
      } else if (i + 1 < words.size() && !words[i + 1].starts_with("--")) {
        all << toQt(word + "=" + words[i + 1]);
        ++i;
      } else {
        fault({fault::kNeedsValue, {text(spec->name), text(spec->value)}});
      }
    }
    return all;
  }

  /// In the order in which they were given.
  void takeOptions() {
    std::map<QString, qsizetype> taken;
    for (const QString& name : parser_.optionNames()) {
      const QStringList values = parser_.values(name);
      const qsizetype at = taken[name]++;
      arguments_.options.push_back({"--" + fromQt(name), at < values.size() ? fromQt(values[at]) : std::string()});
    }
  }

  void takeFiles() {
    for (const QString& file : parser_.positionalArguments()) {
      if (!arguments_.files.empty() && !verb_.manyFiles)
        fault({fault::kOneFileTooMany, {text(fromQt(file)), text(verb_.name), text(verb_.file)}});
      else
        arguments_.files.push_back(fromQt(file));
    }
    if (!arguments_.files.empty()) arguments_.file = arguments_.files.front();
    const bool needed = !verb_.file.starts_with('[');
    if (arguments_.file.empty() && needed) fault({fault::kFileMissing, {text(verb_.file)}});
  }

  const VerbSpec& verb_;
  QCommandLineParser parser_;
  Arguments arguments_;
  std::vector<Reason> faults_;
};

}  // namespace

bool Arguments::has(std::string_view name) const { return find(name).has_value(); }

std::optional<std::string> Arguments::find(std::string_view name) const {
  const auto found = std::find_if(options.rbegin(), options.rend(), [&](const auto& o) { return o.name == name; });
  if (found == options.rend()) return std::nullopt;
  return found->value;
}

Arguments parseArguments(const VerbSpec& verb, const std::vector<std::string>& words) {
  return Reader(verb).read(words);
}

std::string required(const VerbSpec& verb, const Arguments& arguments, std::string_view name) {
  if (const auto value = arguments.find(name); value && !value->empty()) return *value;
  throw BadInput(Reason(fault::kOptionMissing, {text(name), text(specOf(verb, name)->value)}));
}

double numberOf(const GivenOption& option, double least, double most, const char* unit) {
  const auto refuse = [&](reason::Id id) {
    const std::string unitSaid = QCoreApplication::translate("words", unit).toStdString();
    throw BadInput(Reason(id, {text(option.name), text(option.value), text(unitSaid), digits(least), digits(most)}));
  };
  double number = 0;
  const char* begin = option.value.data() + (option.value.starts_with('+') ? 1 : 0);
  const char* end = option.value.data() + option.value.size();
  const auto result = std::from_chars(begin, end, number);
  if (result.ec != std::errc() || result.ptr != end || !std::isfinite(number)) refuse(fault::kNotANumber);
  if (number < least || number > most) refuse(fault::kTooFar);
  return number;
}

void refuseChoice(std::string_view option, std::string_view typed, const std::vector<std::string_view>& known) {
  throw BadInput(Reason(fault::kNotAmong, {text(option), text(typed), listed(known)}));
}

}  // namespace zyga::app
