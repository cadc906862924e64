#include <algorithm>
#include <unordered_set>

#include "core/files/json/json.h"
#include "core/files/json/utf8.h"
#include "core/files/project/project.h"

namespace zyga::files {
namespace {

constexpr int kDeepest = 64;

bool isDigit(char c) { return c >= '0' && c <= '9'; }

class Parser {
 public:
  explicit Parser(const JsonDocument& document) : document_(document), text_(document.text) {}

  JsonValue document() {
    skipBlank();
    JsonValue root = value(0);
    skipBlank();
    if (at_ < text_.size()) fail("there is more after the end of the document");
    return root;
  }

 private:
  [[noreturn]] void fail(const std::string& cause) const { failAt(at_, cause); }
  [[noreturn]] void failAt(std::size_t offset, const std::string& cause) const {
    const auto place = placeOf(text_, offset);
    throw FileError(document_.name + ":" + std::to_string(place.line) + ", column " + std::to_string(place.column) +
                    ": " + cause + "; the file is damaged or was edited by hand");
  }

  char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
  void skipBlank() { at_ = std::min(text_.find_first_not_of(" \t\r\n", at_), text_.size()); }

  void expect(char c, const char* where) {
    if (peek() != c) fail(std::string("expected '").append(1, c).append("' ").append(where).append(found()));
    ++at_;
  }

  std::string found() const {
    if (at_ >= text_.size()) return ", but the file ends here";
    return ", found " + jsonString(text_.substr(at_, utf8Length(text_, at_)));
  }

  JsonValue value(int depth) {
    if (depth > kDeepest) fail("nested deeper than " + std::to_string(kDeepest));
    JsonValue out;
    out.offset = at_;
    const char c = peek();
    if (c == '{') {
      object(out, depth);
    } else if (c == '[') {
      array(out, depth);
    } else if (c == '"') {
      out.kind = JsonValue::Kind::String;
      out.text = string();
    } else if (c == '-' || isDigit(c)) {
      out.kind = JsonValue::Kind::Number;
      out.text = number();
    } else {
      word(out);
    }
    return out;
  }

  void object(JsonValue& out, int depth) {
    out.kind = JsonValue::Kind::Object;
    ++at_;
    skipBlank();
    if (peek() == '}') {
      ++at_;
      return;
    }
    std::unordered_set<std::string> known;
    while (true) {
      member(out, known, depth);
      skipBlank();
      if (peek() == '}') break;
      expect(',', "or '}' after a member");
      skipBlank();
    }
    ++at_;
  }

  void member(JsonValue& out, std::unordered_set<std::string>& known, int depth) {
    const auto start = at_;
    if (peek() != '"') fail("expected a key in quotes" + found());
    auto key = string();
    if (!known.insert(key).second) failAt(start, "the key " + jsonString(key) + " is given twice");
    skipBlank();
    expect(':', "after the key");
    skipBlank();
    out.keys.push_back(std::move(key));
    out.items.push_back(value(depth + 1));
  }

  void array(JsonValue& out, int depth) {
    out.kind = JsonValue::Kind::Array;
    ++at_;
    skipBlank();
    if (peek() == ']') {
      ++at_;
      return;
    }
    while (true) {
      out.items.push_back(value(depth + 1));
      skipBlank();
      if (peek() == ']') break;
      expect(',', "or ']' after an item");
      skipBlank();
    }
    ++at_;
  }

  void word(JsonValue& out) {
    const auto take = [&](std::string_view word, JsonValue::Kind kind) {
      if (text_.substr(at_, word.size()) != word) return false;
      at_ += word.size();
      out.kind = kind;
      out.boolean = word == "true";
      return true;
    };
    if (!take("true", JsonValue::Kind::Boolean) && !take("false", JsonValue::Kind::Boolean) &&
        !take("null", JsonValue::Kind::Null)) {
      fail("expected a value" + found());
    }
  }

  void digits() {
    if (!isDigit(peek())) fail("expected a digit" + found());
    while (isDigit(peek())) ++at_;
  }

  std::string number() {
    const auto start = at_;
    if (peek() == '-') ++at_;
    if (peek() == '0') {
      ++at_;
      if (isDigit(peek())) failAt(start, "a number must not begin with 0");
    } else {
      digits();
    }
    if (peek() == '.') {
      ++at_;
      digits();
    }
    if (peek() == 'e' || peek() == 'E') {
      ++at_;
      if (peek() == '+' || peek() == '-') ++at_;
      digits();
    }
    return std::string(text_.substr(start, at_ - start));
  }

  std::string string() {
    const auto start = at_;
    std::string out;
    ++at_;
    while (peek() != '"') {
      if (at_ >= text_.size()) failAt(start, "the text in quotes has no end");
      if (peek() == '\\') {
        out += escape();
        continue;
      }
      if (static_cast<unsigned char>(peek()) < 0x20) fail("a line break or control character inside quotes");
      const auto length = utf8Length(text_, at_);
      if (length == 0) fail("bytes that are no UTF-8");
      out += text_.substr(at_, length);
      at_ += length;
    }
    ++at_;
    return out;
  }

  std::string escape() {
    static constexpr std::string_view kNames = "\"\\/bfnrt";
    static constexpr std::string_view kMeanings = "\"\\/\b\f\n\r\t";
    ++at_;
    const char c = peek();
    if (const auto which = kNames.find(c); which != std::string_view::npos && c != '\0') {
      ++at_;
      return {kMeanings[which]};
    }
    if (c != 'u') failAt(at_ - 1, "unknown escape in quotes");
    return utf8(codePoint());
  }

  char32_t codePoint() {
    const auto start = at_ - 1;
    const auto high = hex4();
    if (high < 0xD800 || high > 0xDFFF) return high;
    if (high < 0xDC00 && text_.substr(at_, 2) == "\\u") {
      ++at_;
      const auto low = hex4();
      if (low >= 0xDC00 && low <= 0xDFFF) return 0x10000 + ((high - 0xD800) << 10) + (low - 0xDC00);
    }
    failAt(start, "half of a surrogate pair");
  }

  /// Reads "uXXXX".
  char32_t hex4() {
    ++at_;
    char32_t value = 0;
    for (int i = 0; i < 4; ++i, ++at_) {
      const char c = peek();
      const char lower = static_cast<char>(c | 0x20);
      if (!isDigit(c) && (lower < 'a' || lower > 'f')) fail("expected four hexadecimal digits after \\u" + found());
      value = value * 16 + static_cast<char32_t>(isDigit(c) ? c - '0' : lower - 'a' + 10);
    }
    return value;
  }

  const JsonDocument& document_;
  std::string_view text_;
  std::size_t at_ = 0;
};

}  // namespace

JsonDocument parseJson(std::string_view text, std::string_view name) {
  JsonDocument document{std::string(name), std::string(text), {}};
  if (text.starts_with("\xEF\xBB\xBF")) document.text.erase(0, 3);
  document.root = Parser(document).document();
  return document;
}

}  // namespace zyga::files
