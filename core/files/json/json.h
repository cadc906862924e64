#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

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

/// Throws FileError with file, line, column and cause: bad syntax, bad UTF-8, a key given twice, nesting beyond 64.
JsonDocument parseJson(std::string_view text, std::string_view name);

/// Where in the text a byte is, both counted from 1; columns count characters.
struct TextPlace {
  int line = 1;
  int column = 1;
};
TextPlace placeOf(std::string_view text, std::size_t offset);

/// A value inside a document together with the way to it. Every question that the value cannot answer ends in a
/// FileError such as "neck.zyga:214, column 17, poses[2].angles_deg.C6-C7: expected three numbers". The document must
/// outlive it.
class JsonPlace {
 public:
  explicit JsonPlace(const JsonDocument& document) : document_(&document), value_(&document.root) {}

  JsonPlace operator[](std::string_view key) const;
  std::optional<JsonPlace> find(std::string_view key) const;
  std::vector<std::pair<std::string, JsonPlace>> members() const;
  std::vector<JsonPlace> items() const;
  /// As items, for an array of exactly so many.
  std::vector<JsonPlace> items(std::size_t count, std::string_view ofWhat) const;
  /// Refuses members that are not among `keys`.
  void allowOnly(const std::vector<std::string_view>& keys) const;

  const std::string& string() const;
  const std::string& numeral() const;
  double number() const;
  int integer() const;
  bool boolean() const;

  [[noreturn]] void fail(const std::string& cause) const;

 private:
  JsonPlace(const JsonDocument& document, const JsonValue& value, std::string path)
      : document_(&document), value_(&value), path_(std::move(path)) {}
  void expect(JsonValue::Kind kind) const;
  JsonPlace member(std::size_t index) const;

  const JsonDocument* document_;
  const JsonValue* value_;
  std::string path_;
};

/// The text as a JSON string, quotes included. Bytes that are no UTF-8 become U+FFFD.
std::string jsonString(std::string_view text);

}  // namespace zyga::files
