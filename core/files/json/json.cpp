#include "core/files/json/json.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "core/files/json/numeral.h"
#include "core/files/json/utf8.h"
#include "core/files/project/project.h"

namespace zyga::files {
namespace {

std::string_view describe(JsonValue::Kind kind) {
  switch (kind) {
    case JsonValue::Kind::Boolean:
      return "true or false";
    case JsonValue::Kind::Number:
      return "a number";
    case JsonValue::Kind::String:
      return "a text in quotes";
    case JsonValue::Kind::Array:
      return "a list [...]";
    case JsonValue::Kind::Object:
      return "an object {...}";
    case JsonValue::Kind::Null:
      break;
  }
  return "null";
}

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

void JsonPlace::fail(const std::string& cause) const {
  const auto place = placeOf(document_->text, value_->offset);
  throw FileError(document_->name + ":" + std::to_string(place.line) + ", column " + std::to_string(place.column) +
                  (path_.empty() ? "" : ", " + path_) + ": " + cause);
}

void JsonPlace::expect(JsonValue::Kind kind) const {
  if (value_->kind == kind) return;
  fail("expected " + std::string(describe(kind)) + ", found " + std::string(describe(value_->kind)));
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
  fail("the member " + jsonString(key) + " is missing");
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

std::vector<JsonPlace> JsonPlace::items(std::size_t count, std::string_view ofWhat) const {
  const std::string wanted = "expected a list of " + std::to_string(count) + " " + std::string(ofWhat);
  if (value_->kind != JsonValue::Kind::Array) fail(wanted + ", found " + std::string(describe(value_->kind)));
  if (value_->items.size() != count) fail(wanted + ", found " + std::to_string(value_->items.size()));
  return items();
}

void JsonPlace::allowOnly(const std::vector<std::string_view>& keys) const {
  for (const auto& [key, place] : members()) {
    if (std::find(keys.begin(), keys.end(), key) != keys.end()) continue;
    std::string allowed;
    for (const auto& k : keys) allowed += (allowed.empty() ? "" : ", ") + std::string(k);
    place.fail("no such member here; known are " + allowed);
  }
}

const std::string& JsonPlace::string() const {
  expect(JsonValue::Kind::String);
  return value_->text;
}

const std::string& JsonPlace::numeral() const {
  expect(JsonValue::Kind::Number);
  if (!std::isfinite(fromNumeral(value_->text))) fail("the number is too large");
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
  if (error != std::errc() || end != text.data() + text.size()) fail("expected a whole number, found " + text);
  return value;
}

std::string jsonString(std::string_view text) {
  static constexpr std::string_view kHex = "0123456789abcdef";
  std::string out = "\"";
  for (std::size_t i = 0; i < text.size();) {
    const auto length = utf8Length(text, i);
    const auto c = static_cast<unsigned char>(text[i]);
    if (length == 0) {
      out += "\uFFFD";
    } else if (c == '"' || c == '\\') {
      out += {'\\', text[i]};
    } else if (c == '\n') {
      out += "\\n";
    } else if (c < 0x20) {
      out += std::string("\\u00") + kHex[c >> 4] + kHex[c & 15];
    } else {
      out += text.substr(i, length);
    }
    i += std::max<std::size_t>(length, 1);
  }
  return out + "\"";
}

}  // namespace zyga::files
