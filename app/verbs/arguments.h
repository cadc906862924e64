#pragma once

#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace zyga::app {

/// Input that a verb cannot work with; the message is for people, one fault a line.
class BadInput : public std::runtime_error {
 public:
  using std::runtime_error::runtime_error;
};

struct OptionSpec {
  std::string_view name;   ///< "--out"
  std::string_view value;  ///< "FILE.zyga"; empty for a switch
  std::string_view meaning;
};

struct VerbSpec {
  std::string_view name;
  std::string_view file;  ///< what the one argument without -- is: "TABLE.csv"; "[FILE.zyga]" when it may be left out
  std::string_view does;
  std::vector<OptionSpec> options;
  std::string_view notes;  ///< further lines of its help
  bool manyFiles = false;
};

struct GivenOption {
  std::string name;
  std::string value;
};

/// What was given to a verb, options in order.
struct Arguments {
  std::string file;                ///< the first of them
  std::vector<std::string> files;  ///< all
  std::vector<GivenOption> options;

  bool has(std::string_view name) const;
  /// Value of the last option of this name.
  std::optional<std::string> find(std::string_view name) const;
};

/// Takes `--name value` and `--name=value`. Throws BadInput naming every unknown option, missing value, missing or
/// superfluous file.
Arguments parseArguments(const VerbSpec& verb, const std::vector<std::string>& words);

/// Throws BadInput when the option was not given.
std::string required(const VerbSpec& verb, const Arguments& arguments, std::string_view name);

/// A finite number; throws BadInput naming the option and saying what to write.
double numberOf(const GivenOption& option, double least, double most, std::string_view unit);

/// One of `words`; the first when the option is absent. Throws BadInput listing them.
template <class Value>
Value choiceOf(const Arguments& arguments, std::string_view name,
               const std::vector<std::pair<std::string_view, Value>>& words) {
  const auto given = arguments.find(name);
  if (!given) return words.front().second;
  std::string allowed;
  for (const auto& [word, value] : words) {
    if (word == *given) return value;
    allowed += (allowed.empty() ? "" : ", ") + std::string(word);
  }
  throw BadInput(std::string(name) + ": '" + *given + "' is not among " + allowed);
}

}  // namespace zyga::app
