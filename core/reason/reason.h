#pragma once

#include <memory>
#include <stdexcept>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace zyga::reason {

/// How a quantity is told; its value is in SI all the same.
enum class Unit {
  Plain,     ///< a bare number
  Length,    ///< m, told in mm
  Distance,  ///< m, told in m
  Angle,     ///< rad, told in degrees
  Share,     ///< 0 to 1, told in %
  Mass,      ///< kg
  Speed,     ///< m/s
  Pressure,  ///< Pa, told in mmHg
  Bytes,
};

struct Reason;

/// What a person typed or a file holds; said as it stands in every language.
struct Text {
  std::string text;
  bool operator==(const Text&) const = default;
};
/// A word of the trade by its id, "bone.femur"; ui/words knows it in every language. Ids are literals.
struct Term {
  std::string_view id;
  bool operator==(const Term&) const = default;
};
struct Count {
  long long value = 0;
  bool operator==(const Count&) const = default;
};
struct Quantity {
  double value = 0;
  Unit unit = Unit::Plain;
  bool operator==(const Quantity&) const = default;
};
struct List;
using Inner = std::shared_ptr<const Reason>;
using Value = std::variant<Text, Term, Count, Quantity, Inner, std::shared_ptr<const List>>;
/// Told one after the other with commas.
struct List {
  std::vector<Value> values;
};

/// Names what is said of some values: "table.unknown-unit". Ids are stable, told to machines as they are, and have one
/// wording each in ui/words. Declared as constants beside the code that gives them.
struct Id {
  std::string_view text;
  int values = 0;  ///< how many values go with it
  bool operator==(const Id&) const = default;
};

/// Something that a person has to know, as values: what core says instead of a sentence.
struct Reason {
  Id id;
  std::vector<Value> values;

  Reason() = default;
  /// Asserts that as many values are given as the id asks for.
  Reason(Id id, std::vector<Value> values = {});
  bool empty() const { return id.text.empty(); }
  bool operator==(const Reason& other) const;
};

Value text(std::string_view words);
Value inner(Reason reason);
Value list(std::vector<Value> values);

/// For logs and failing tests, not for people: "table.unknown-unit(femur, 3)".
std::string debugText(const Reason& reason);

/// Bad input or work that cannot be done; caught where a person can be told. what() is debugText.
class Failure : public std::runtime_error {
 public:
  explicit Failure(Reason reason) : std::runtime_error(debugText(reason)), reason_(std::move(reason)) {}
  const Reason& reason() const { return reason_; }

 private:
  Reason reason_;
};

}  // namespace zyga::reason
