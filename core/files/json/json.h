#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/files/disk/file_error.h"

/// JSON (RFC 8259) as project files need it: a number keeps its own digits, so that millimetres and degrees come back
/// exactly, and every value knows its line and column, so that a wrong one can be pointed at.
namespace zyga::files {

struct JsonValue {
  enum class Kind { Null, Boolean, Number, String, Array, Object };
  Kind kind = Kind::Null;
  std::size_t offset = 0;  ///< of its first byte in the document
  bool boolean = false;
  std::string text;               ///< characters of a string (UTF-8), digits of a number as written
  std::vector<JsonValue> items;   ///< of an array or object
  std::vector<std::string> keys;  ///< of an object, beside `items`
};

struct JsonDocument {
  std::string name;  ///< what messages call the file
  std::string text;
  JsonValue root;
};

/// What may be wrong with a JSON text. A place is the file's name, the line, the column and, where it is known, the way
/// to the value in the document; a cause follows.
namespace fault {

inline constexpr Id kAt{"json.at", 4};               ///< name, line, column, cause
inline constexpr Id kAtMember{"json.at-member", 5};  ///< name, line, column, way, cause
inline constexpr Id kDamagedAt{"json.damaged-at", 4};

// Of the text as such.
inline constexpr Id kFoundInstead{"json.found-instead", 2};  ///< what was expected, the character found
inline constexpr Id kEndsHere{"json.ends-here", 1};          ///< what was expected
inline constexpr Id kExpectedMemberEnd{"json.expected-member-end"};
inline constexpr Id kExpectedItemEnd{"json.expected-item-end"};
inline constexpr Id kExpectedColon{"json.expected-colon"};
inline constexpr Id kExpectedKey{"json.expected-key"};
inline constexpr Id kExpectedValue{"json.expected-value"};
inline constexpr Id kExpectedDigit{"json.expected-digit"};
inline constexpr Id kExpectedHex{"json.expected-hex"};
inline constexpr Id kMoreAfterEnd{"json.more-after-end"};
inline constexpr Id kTooDeep{"json.too-deep", 1};
inline constexpr Id kKeyTwice{"json.key-twice", 1};
inline constexpr Id kLeadingZero{"json.leading-zero"};
inline constexpr Id kOpenQuotes{"json.open-quotes"};
inline constexpr Id kControlInQuotes{"json.control-in-quotes"};
inline constexpr Id kNotUtf8{"json.not-utf8"};
inline constexpr Id kUnknownEscape{"json.unknown-escape"};
inline constexpr Id kHalfSurrogate{"json.half-surrogate"};

// Of a value in its place.
inline constexpr Id kExpectedKind{"json.expected-kind", 2};    ///< kinds expected and found
inline constexpr Id kExpectedListOf{"json.expected-list", 3};  ///< how many, of what, kind or count found
inline constexpr Id kExpectedWhole{"json.expected-whole", 1};  ///< what was found
inline constexpr Id kMemberMissing{"json.member-missing", 1};  ///< key
inline constexpr Id kUnknownMember{"json.unknown-member", 1};  ///< known keys
inline constexpr Id kNumberTooLarge{"json.number-too-large"};

}  // namespace fault

/// What a value is, in a fault.
struct KindTerms {
  reason::Term null{"json.kind.null"}, boolean{"json.kind.boolean"}, number{"json.kind.number"}, text{"json.kind.text"},
      list{"json.kind.list"}, object{"json.kind.object"};
};
inline constexpr KindTerms kKindTerms;
/// What a list holds, in a fault.
inline constexpr reason::Term kNumbers{"json.numbers"}, kRows{"json.rows"}, kAnglesInDegrees{"json.angles"};

/// Characters of a file as a fault may show them: what is no printable text is escaped as in JSON.
reason::Value shown(std::string_view text);
/// Several of them.
reason::Value shown(const std::vector<std::string_view>& texts);

/// Throws FileError with file, line, column and cause: bad syntax, bad UTF-8, a key given twice, nesting beyond 64.
JsonDocument parseJson(std::string_view text, std::string_view name);

/// Where in the text a byte is, both counted from 1; columns count characters.
struct TextPlace {
  int line = 1;
  int column = 1;
};
TextPlace placeOf(std::string_view text, std::size_t offset);

/// A value inside a document together with the way to it. Every question that the value cannot answer ends in a
/// FileError that names file, line, column and the way to it, "poses[2].angles_deg.C6-C7". The document must outlive
/// it.
class JsonPlace {
 public:
  explicit JsonPlace(const JsonDocument& document) : document_(&document), value_(&document.root) {}

  JsonPlace operator[](std::string_view key) const;
  std::optional<JsonPlace> find(std::string_view key) const;
  std::vector<std::pair<std::string, JsonPlace>> members() const;
  std::vector<JsonPlace> items() const;
  /// As items, for an array of exactly so many.
  std::vector<JsonPlace> items(std::size_t count, reason::Term ofWhat) const;
  /// Refuses members that are not among `keys`.
  void allowOnly(const std::vector<std::string_view>& keys) const;

  const std::string& string() const;
  const std::string& numeral() const;
  double number() const;
  int integer() const;
  bool boolean() const;

  [[noreturn]] void fail(reason::Reason cause) const;

 private:
  JsonPlace(const JsonDocument& document, const JsonValue& value, std::string path)
      : document_(&document), value_(&value), path_(std::move(path)) {}
  void expect(JsonValue::Kind kind) const;
  JsonPlace member(std::size_t index) const;

  const JsonDocument* document_;
  const JsonValue* value_;
  std::string path_;
};

}  // namespace zyga::files
