#include "app/verbs/arguments.h"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace zyga::app {
namespace {

const OptionSpec* specOf(const VerbSpec& verb, std::string_view name) {
  const auto found =
      std::find_if(verb.options.begin(), verb.options.end(), [&](const auto& o) { return o.name == name; });
  return found == verb.options.end() ? nullptr : &*found;
}

std::string known(const VerbSpec& verb) {
  std::string out;
  for (const auto& option : verb.options) out += (out.empty() ? "" : ", ") + std::string(option.name);
  return out;
}

std::string toText(double number) {
  std::string text(32, '\0');
  text.resize(
      static_cast<std::size_t>(std::to_chars(text.data(), text.data() + text.size(), number).ptr - text.data()));
  return text;
}

/// Reads the words of one command line and remembers what is wrong with them.
class Reader {
 public:
  Reader(const VerbSpec& verb, const std::vector<std::string>& words) : verb_(verb), words_(words) {}

  Arguments read() {
    while (at_ < words_.size()) {
      const auto& word = words_[at_++];
      if (word.starts_with("--") && word.size() > 2) {
        option(word);
      } else if (arguments_.files.empty() || verb_.manyFiles) {
        arguments_.files.push_back(word);
        arguments_.file = arguments_.files.front();
      } else {
        fault("'" + word + "' is one file too many; " + std::string(verb_.name) + " takes one " +
              std::string(verb_.file));
      }
    }
    const bool needed = !verb_.file.starts_with('[');
    if (arguments_.file.empty() && needed) fault("the " + std::string(verb_.file) + " is missing");
    if (!faults_.empty()) throw BadInput(faults_);
    return std::move(arguments_);
  }

 private:
  void fault(const std::string& text) { faults_ += (faults_.empty() ? "" : "\n") + text; }

  void option(const std::string& word) {
    const auto equals = word.find('=');
    const std::string name = word.substr(0, equals);
    const auto* spec = specOf(verb_, name);
    if (!spec) return fault("unknown option " + name + "; " + std::string(verb_.name) + " knows " + known(verb_));
    if (spec->value.empty()) {
      if (equals != std::string::npos) return fault(name + " takes no value");
      arguments_.options.push_back({name, ""});
    } else if (equals != std::string::npos) {
      arguments_.options.push_back({name, word.substr(equals + 1)});
    } else if (at_ < words_.size() && !words_[at_].starts_with("--")) {
      arguments_.options.push_back({name, words_[at_++]});
    } else {
      fault(name + " needs a value: " + name + " " + std::string(spec->value));
    }
  }

  const VerbSpec& verb_;
  const std::vector<std::string>& words_;
  std::size_t at_ = 0;
  Arguments arguments_;
  std::string faults_;
};

}  // namespace

bool Arguments::has(std::string_view name) const { return find(name).has_value(); }

std::optional<std::string> Arguments::find(std::string_view name) const {
  const auto found = std::find_if(options.rbegin(), options.rend(), [&](const auto& o) { return o.name == name; });
  if (found == options.rend()) return std::nullopt;
  return found->value;
}

Arguments parseArguments(const VerbSpec& verb, const std::vector<std::string>& words) {
  return Reader(verb, words).read();
}

std::string required(const VerbSpec& verb, const Arguments& arguments, std::string_view name) {
  if (const auto value = arguments.find(name); value && !value->empty()) return *value;
  throw BadInput(std::string(name) + " is missing: " + std::string(name) + " " +
                 std::string(specOf(verb, name)->value));
}

double numberOf(const GivenOption& option, double least, double most, std::string_view unit) {
  const std::string allowed = "; write " + std::string(unit) + " from " + toText(least) + " to " + toText(most);
  double number = 0;
  const char* begin = option.value.data() + (option.value.starts_with('+') ? 1 : 0);
  const char* end = option.value.data() + option.value.size();
  const auto result = std::from_chars(begin, end, number);
  if (result.ec != std::errc() || result.ptr != end || !std::isfinite(number)) {
    throw BadInput(option.name + ": '" + option.value + "' is not a number" + allowed);
  }
  if (number < least || number > most) throw BadInput(option.name + ": " + option.value + " is too far" + allowed);
  return number;
}

}  // namespace zyga::app
