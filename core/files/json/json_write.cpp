#include "core/files/json/json_write.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

#include "core/files/json/numeral.h"
#include "core/files/json/utf8.h"

namespace zyga::files::json {

/// Writes one tree behind the other into a text.
class Writer {
 public:
  std::string text;

  void write(const Value& value) {
    switch (value.kind_) {
      case Value::Kind::Null:
        text += "null";
        break;
      case Value::Kind::Truth:
        text += value.truth_ ? "true" : "false";
        break;
      case Value::Kind::Number:
        text += value.text_;
        break;
      case Value::Kind::Text:
        text += inQuotes(value.text_);
        break;
      case Value::Kind::Array:
        held(value, '[', ']');
        break;
      case Value::Kind::Object:
        held(value, '{', '}');
        break;
    }
  }

 private:
  void held(const Value& value, char open, char close) {
    const bool lines = value.layout_ == Layout::OnLines && !value.items_.empty();
    text += open;
    depth_ += lines;
    for (std::size_t i = 0; i < value.items_.size(); ++i) {
      if (i > 0) text += lines ? "," : ", ";
      if (lines) breakLine();
      if (value.kind_ == Value::Kind::Object) text += inQuotes(value.keys_[i]) + ": ";
      write(value.items_[i]);
    }
    depth_ -= lines;
    if (lines) breakLine();
    text += close;
  }

  void breakLine() { text.append("\n").append(2 * depth_, ' '); }

  std::size_t depth_ = 0;
};

Value Value::numeral(std::string digits) {
  Value value;
  value.kind_ = Kind::Number;
  value.text_ = std::move(digits);
  return value;
}

Value Value::object(Layout layout) {
  Value value;
  value.kind_ = Kind::Object;
  value.layout_ = layout;
  return value;
}

Value Value::array(Layout layout) {
  Value value;
  value.kind_ = Kind::Array;
  value.layout_ = layout;
  return value;
}

Value& Value::add(std::string_view key, Value value) {
  assert(kind_ == Kind::Object);
  keys_.emplace_back(key);
  items_.push_back(std::move(value));
  return *this;
}

Value& Value::push(Value value) {
  assert(kind_ == Kind::Array);
  items_.push_back(std::move(value));
  return *this;
}

Value object(std::initializer_list<Member> members, Layout layout) {
  Value value = Value::object(layout);
  for (const Member& member : members) value.add(member.key, member.value);
  return value;
}

Value array(std::initializer_list<Value> items, Layout layout) { return arrayOf(items, layout); }

Value number(double value) { return std::isfinite(value) ? Value::numeral(toNumeral(value)) : Value(); }
Value millionths(double value) { return number(std::round(value * 1e6) / 1e6); }
Value millionths(const std::optional<double>& value) { return value ? millionths(*value) : Value(); }
Value degrees(double angle) { return millionths(angle * 180 / std::numbers::pi); }

std::string text(const Value& value) {
  Writer writer;
  writer.write(value);
  return std::move(writer.text);
}

std::string document(const Value& value) { return text(value) + "\n"; }

std::string inQuotes(std::string_view text) {
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

}  // namespace zyga::files::json
