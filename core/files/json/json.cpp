#include "core/files/json/json.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <unordered_set>

#include "core/files/json/json_write.h"
#include "core/files/json/numeral.h"
#include "core/files/json/utf8.h"

namespace zyga::files {
namespace {

reason::Term termOf(JsonValue::Kind kind) {
  switch (kind) {
    case JsonValue::Kind::Boolean:
      return kKindTerms.boolean;
    case JsonValue::Kind::Number:
      return kKindTerms.number;
    case JsonValue::Kind::String:
      return kKindTerms.text;
    case JsonValue::Kind::Array:
      return kKindTerms.list;
    case JsonValue::Kind::Object:
      return kKindTerms.object;
    case JsonValue::Kind::Null:
      break;
  }
  return kKindTerms.null;
}

constexpr int kDeepest = 64;

bool isDigit(char c) { return c >= '0' && c <= '9'; }

class Parser {
 public:
  explicit Parser(const JsonDocument& document) : document_(document), text_(document.text) {}

  JsonValue document() {
    skipBlank();
    JsonValue root = value(0);
    skipBlank();
    if (at_ < text_.size()) fail(fault::kMoreAfterEnd);
    return root;
  }

 private:
  [[noreturn]] void fail(reason::Reason cause) const { failAt(at_, std::move(cause)); }
  [[noreturn]] void failAt(std::size_t offset, reason::Reason cause) const {
    const auto place = placeOf(text_, offset);
    throw FileError({fault::kDamagedAt,
                     {reason::text(document_.name), reason::Count{place.line}, reason::Count{place.column},
                      reason::inner(std::move(cause))}});
  }
  /// Expected here, and something else was found.
  [[noreturn]] void failFor(reason::Id expected) const {
    if (at_ >= text_.size()) fail({fault::kEndsHere, {reason::inner(expected)}});
    fail({fault::kFoundInstead, {reason::inner(expected), shown(text_.substr(at_, utf8Length(text_, at_)))}});
  }

  char peek() const { return at_ < text_.size() ? text_[at_] : '\0'; }
  void skipBlank() { at_ = std::min(text_.find_first_not_of(" \t\r\n", at_), text_.size()); }

  void expect(char c, reason::Id expected) {
    if (peek() != c) failFor(expected);
    ++at_;
  }

  JsonValue value(int depth) {
    if (depth > kDeepest) fail({fault::kTooDeep, {reason::Count{kDeepest}}});
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
      expect(',', fault::kExpectedMemberEnd);
      skipBlank();
    }
    ++at_;
  }

  void member(JsonValue& out, std::unordered_set<std::string>& known, int depth) {
    const auto start = at_;
    if (peek() != '"') failFor(fault::kExpectedKey);
    auto key = string();
    if (!known.insert(key).second) failAt(start, {fault::kKeyTwice, {shown(key)}});
    skipBlank();
    expect(':', fault::kExpectedColon);
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
      expect(',', fault::kExpectedItemEnd);
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
      failFor(fault::kExpectedValue);
    }
  }

  void digits() {
    if (!isDigit(peek())) failFor(fault::kExpectedDigit);
    while (isDigit(peek())) ++at_;
  }

  std::string number() {
    const auto start = at_;
    if (peek() == '-') ++at_;
    if (peek() == '0') {
      ++at_;
      if (isDigit(peek())) failAt(start, fault::kLeadingZero);
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
      if (at_ >= text_.size()) failAt(start, fault::kOpenQuotes);
      if (peek() == '\\') {
        out += escape();
        continue;
      }
      if (static_cast<unsigned char>(peek()) < 0x20) fail(fault::kControlInQuotes);
      const auto length = utf8Length(text_, at_);
      if (length == 0) fail(fault::kNotUtf8);
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
    if (c != 'u') failAt(at_ - 1, fault::kUnknownEscape);
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
    failAt(start, fault::kHalfSurrogate);
  }

  /// Reads "uXXXX".
  char32_t hex4() {
    ++at_;
    char32_t value = 0;
    for (int i = 0; i < 4; ++i, ++at_) {
      const char c = peek();
      const char lower = static_cast<char>(c | 0x20);
      if (!isDigit(c) && (lower < 'a' || lower > 'f')) failFor(fault::kExpectedHex);
      value = value * 16 + static_cast<char32_t>(isDigit(c) ? c - '0' : lower - 'a' + 10);
    }
    return value;
  }

  const JsonDocument& document_;
  std::string_view text_;
  std::size_t at_ = 0;
};

reason::Count counted(std::size_t number) { return {static_cast<long long>(number)}; }

}  // namespace

TextPlace placeOf(std::string_view text, std::size_t offset) {
  TextPlace place;
  for (const char c : text.substr(0, offset)) {
    if (c == '\n') {
      ++place.line;
      place.column = 1;
    } else if ((static_cast<unsigned char>(c) & 0xC0) != 0x80) {
      ++place.column;
    }
  }
  return place;
}

JsonDocument parseJson(std::string_view text, std::string_view name) {
  JsonDocument document{std::string(name), std::string(text), {}};
  if (text.starts_with("\xEF\xBB\xBF")) document.text.erase(0, 3);
  document.root = Parser(document).document();
  return document;
}

reason::Value shown(std::string_view text) {
  std::string quoted = json::inQuotes(text);
  return reason::text(std::string_view(quoted).substr(1, quoted.size() - 2));
}

reason::Value shown(const std::vector<std::string_view>& texts) {
  std::vector<reason::Value> all;
  for (const std::string_view text : texts) all.push_back(shown(text));
  return reason::list(std::move(all));
}

void JsonPlace::fail(reason::Reason cause) const {
  const auto place = placeOf(document_->text, value_->offset);
  std::vector<reason::Value> values{reason::text(document_->name), reason::Count{place.line},
                                    reason::Count{place.column}};
  if (!path_.empty()) values.push_back(shown(path_));
  values.push_back(reason::inner(std::move(cause)));
  throw FileError({path_.empty() ? fault::kAt : fault::kAtMember, std::move(values)});
}

void JsonPlace::expect(JsonValue::Kind kind) const {
  if (value_->kind != kind) fail({fault::kExpectedKind, {termOf(kind), termOf(value_->kind)}});
}

JsonPlace JsonPlace::member(std::size_t index) const {
  return {*document_, value_->items[index], (path_.empty() ? "" : path_ + ".") + value_->keys[index]};
}

std::optional<JsonPlace> JsonPlace::find(std::string_view key) const {
  expect(JsonValue::Kind::Object);
  const auto found = std::find(value_->keys.begin(), value_->keys.end(), key);
  if (found == value_->keys.end()) return std::nullopt;
  return member(static_cast<std::size_t>(found - value_->keys.begin()));
}

JsonPlace JsonPlace::operator[](std::string_view key) const {
  if (auto found = find(key)) return *found;
  fail({fault::kMemberMissing, {shown(key)}});
}

std::vector<std::pair<std::string, JsonPlace>> JsonPlace::members() const {
  expect(JsonValue::Kind::Object);
  std::vector<std::pair<std::string, JsonPlace>> out;
  for (std::size_t i = 0; i < value_->keys.size(); ++i) out.emplace_back(value_->keys[i], member(i));
  return out;
}

std::vector<JsonPlace> JsonPlace::items() const {
  expect(JsonValue::Kind::Array);
  std::vector<JsonPlace> out;
  for (std::size_t i = 0; i < value_->items.size(); ++i) {
    out.push_back(JsonPlace(*document_, value_->items[i], path_ + "[" + std::to_string(i) + "]"));
  }
  return out;
}

std::vector<JsonPlace> JsonPlace::items(std::size_t count, reason::Term ofWhat) const {
  if (value_->kind != JsonValue::Kind::Array)
    fail({fault::kExpectedListOf, {counted(count), ofWhat, termOf(value_->kind)}});
  if (value_->items.size() != count)
    fail({fault::kExpectedListOf, {counted(count), ofWhat, counted(value_->items.size())}});
  return items();
}

void JsonPlace::allowOnly(const std::vector<std::string_view>& keys) const {
  for (const auto& [key, place] : members()) {
    if (std::find(keys.begin(), keys.end(), key) != keys.end()) continue;
    place.fail({fault::kUnknownMember, {shown(keys)}});
  }
}

const std::string& JsonPlace::string() const {
  expect(JsonValue::Kind::String);
  return value_->text;
}

const std::string& JsonPlace::numeral() const {
  expect(JsonValue::Kind::Number);
  if (!std::isfinite(fromNumeral(value_->text))) fail(fault::kNumberTooLarge);
  return value_->text;
}

double JsonPlace::number() const { return fromNumeral(numeral()); }

bool JsonPlace::boolean() const {
  expect(JsonValue::Kind::Boolean);
  return value_->boolean;
}

int JsonPlace::integer() const {
  const auto& text = numeral();
  int value = 0;
  const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
  if (error != std::errc() || end != text.data() + text.size()) fail({fault::kExpectedWhole, {shown(text)}});
  return value;
}

}  // namespace zyga::files
