#pragma once

#include <concepts>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

/// JSON (RFC 8259) that is written: one tree of values, whose objects keep the order in which they were filled, and
/// one writer for project files, the numbers of studies and reports, and the answers of the verbs.
namespace zyga::files::json {

enum class Layout {
  OnOneLine,  ///< [a, b]
  OnLines,    ///< a member or item a line, two blanks further in
};

struct Member;

/// A value of a document. Numbers are held as the digits that stand in the file, so that lengths and angles come back
/// exactly; what the program holds as double is turned to digits by the functions below.
class Value {
 public:
  Value() = default;  ///< null
  Value(std::nullptr_t) {}
  template <std::same_as<bool> Truth>
  Value(Truth truth) : kind_(Kind::Truth), truth_(truth) {}
  template <std::integral Whole>
  requires(!std::same_as<Whole, bool> && !std::same_as<Whole, char>) Value(Whole number)
      : kind_(Kind::Number), text_(std::to_string(number)) {}
  Value(double) = delete;  // number(), millionths(), degrees() say how it is to be written
  Value(const char* text) : kind_(Kind::Text), text_(text) {}
  Value(std::string_view text) : kind_(Kind::Text), text_(text) {}
  Value(const std::string& text) : kind_(Kind::Text), text_(text) {}
  /// null where there is none.
  template <class Held>
  Value(const std::optional<Held>& held) : Value(held ? Value(*held) : Value()) {}

  /// Digits that are a JSON number already.
  static Value numeral(std::string digits);
  static Value object(Layout layout);
  static Value array(Layout layout);

  /// To an object.
  Value& add(std::string_view key, Value value);
  /// To an array.
  Value& push(Value value);
  /// Of an object or array: whether it holds nothing.
  bool empty() const { return items_.empty(); }

 private:
  friend class Writer;
  enum class Kind : std::uint8_t { Null, Truth, Number, Text, Array, Object };
  Kind kind_ = Kind::Null;
  bool truth_ = false;
  Layout layout_ = Layout::OnOneLine;
  std::string text_;  ///< of a text (UTF-8); digits of a number
  std::vector<std::string> keys_;
  std::vector<Value> items_;
};

struct Member {
  std::string_view key;
  Value value;
};

Value object(std::initializer_list<Member> members, Layout layout = Layout::OnOneLine);
Value array(std::initializer_list<Value> items, Layout layout = Layout::OnOneLine);
/// The texts of a list, or whatever else a Value can be made of.
template <class List>
Value arrayOf(const List& list, Layout layout = Layout::OnOneLine) {
  Value items = Value::array(layout);
  for (const auto& item : list) items.push(Value(item));
  return items;
}

/// The fewest digits from which the very same double is read; null when it is not finite.
Value number(double value);
/// As above, rounded to a millionth: as much as a result for machines tells.
Value millionths(double value);
Value millionths(const std::optional<double>& value);
/// An angle (rad) in degrees, rounded to a millionth.
Value degrees(double angle);
/// [x, y, ...] of a vector, each to a millionth.
template <class Vector>
Value point(const Vector& p) {
  Value items = Value::array(Layout::OnOneLine);
  for (decltype(p.size()) i = 0; i < p.size(); ++i) items.push(millionths(p[i]));
  return items;
}

/// The text of a value, without a line break at its end.
std::string text(const Value& value);
/// The text of a document: a value and a line break.
std::string document(const Value& value);
/// A text as a JSON string, quotes included. Bytes that are no UTF-8 become U+FFFD.
std::string inQuotes(std::string_view text);

}  // namespace zyga::files::json
