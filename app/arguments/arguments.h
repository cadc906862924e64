#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/reason/reason.h"

namespace zyga::app {

/// What may be wrong on a command line. Names and what was typed are Text.
namespace fault {

using reason::Id;

inline constexpr Id kSaid{"arguments.said", 1};                     ///< said already, in the language chosen
inline constexpr Id kBoth{"arguments.both", 2};                     ///< one fault, and on the next line others
inline constexpr Id kUnknownOption{"arguments.unknown-option", 3};  ///< option, verb, the options it knows
inline constexpr Id kTakesNoValue{"arguments.takes-no-value", 1};
inline constexpr Id kNeedsValue{"arguments.needs-value", 2};  ///< option, what its value is
inline constexpr Id kOptionMissing{"arguments.option-missing", 2};
inline constexpr Id kFileMissing{"arguments.file-missing", 1};          ///< what the file is
inline constexpr Id kOneFileTooMany{"arguments.one-file-too-many", 3};  ///< the file, verb, what it takes
inline constexpr Id kNotANumber{"arguments.not-a-number", 5};  ///< option, what was typed, unit, minimum, maximum
inline constexpr Id kTooFar{"arguments.too-far", 5};
inline constexpr Id kNotAmong{"arguments.not-among", 3};  ///< option, what was typed, what there is

}  // namespace fault

/// Input that a verb cannot work with.
class BadInput : public reason::Failure {
 public:
  using Failure::Failure;
  /// Said already, in the language chosen.
  explicit BadInput(const std::string& said) : Failure({fault::kSaid, {reason::text(said)}}) {}
};

/// Texts for people are literals marked with QT_TRANSLATE_NOOP("words", ...), said in the language chosen where they
/// are printed; names and values are the same in every language.
struct OptionSpec {
  std::string_view name;     ///< "--out"
  std::string_view value;    ///< "FILE.zyga"; empty for a switch
  std::string_view meaning;  ///< for people
};

struct VerbSpec {
  std::string_view name;
  std::string_view file;  ///< what the one argument without -- is: "TABLE.csv"; "[FILE.zyga]" when it may be left out
  std::string_view does;  ///< for people
  std::vector<OptionSpec> options;
  std::string_view notes;  ///< for people: further lines of its help
  bool manyFiles = false;
  std::string_view drawsWith = {};  ///< the option that asks for a figure, which needs fonts
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

/// Takes `--name value` and `--name=value`; a value may begin with one dash, as negative numbers do, but not with two.
/// Throws BadInput naming every unknown option, missing value, missing or superfluous file.
Arguments parseArguments(const VerbSpec& verb, const std::vector<std::string>& words);

/// Throws BadInput when the option was not given.
std::string required(const VerbSpec& verb, const Arguments& arguments, std::string_view name);

/// A finite number; throws BadInput naming the option and saying what to write. `unit`: "degrees", a literal that is
/// marked for translation where it is a word, or a symbol such as "mm".
double numberOf(const GivenOption& option, double least, double most, const char* unit);

/// Throws BadInput listing what there is.
[[noreturn]] void refuseChoice(std::string_view option, std::string_view typed,
                               const std::vector<std::string_view>& known);

/// One of `words`; the first when the option is absent. Throws BadInput listing them.
template <class Value>
Value choiceOf(const Arguments& arguments, std::string_view name,
               const std::vector<std::pair<std::string_view, Value>>& words) {
  const auto given = arguments.find(name);
  if (!given) return words.front().second;
  std::vector<std::string_view> known;
  for (const auto& [word, value] : words) {
    if (word == *given) return value;
    known.push_back(word);
  }
  refuseChoice(name, *given, known);
}

}  // namespace zyga::app
