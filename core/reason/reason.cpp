#include "core/reason/reason.h"

#include <cassert>

namespace zyga::reason {
namespace {

bool same(const Value& a, const Value& b) {
  if (a.index() != b.index()) return false;
  if (const auto* inner = std::get_if<Inner>(&a)) return **inner == **std::get_if<Inner>(&b);
  if (const auto* list = std::get_if<std::shared_ptr<const List>>(&a)) {
    const auto& left = (*list)->values;
    const auto& right = std::get<std::shared_ptr<const List>>(b)->values;
    if (left.size() != right.size()) return false;
    for (std::size_t i = 0; i < left.size(); ++i)
      if (!same(left[i], right[i])) return false;
    return true;
  }
  return a == b;
}

struct Debug {
  std::string operator()(const Text& v) const { return v.text; }
  std::string operator()(const Term& v) const { return std::string(v.id); }
  std::string operator()(const Count& v) const { return std::to_string(v.value); }
  std::string operator()(const Quantity& v) const { return std::to_string(v.value); }
  std::string operator()(const Inner& v) const { return debugText(*v); }
  std::string operator()(const std::shared_ptr<const List>& v) const { return "[" + joined(v->values) + "]"; }

  static std::string joined(const std::vector<Value>& values) {
    std::string all;
    for (const Value& value : values) {
      if (!all.empty()) all += ", ";
      all += std::visit(Debug(), value);
    }
    return all;
  }
};

}  // namespace

Reason::Reason(Id id, std::vector<Value> values) : id(id), values(std::move(values)) {
  assert(static_cast<int>(this->values.size()) == id.values);
}

bool Reason::operator==(const Reason& other) const {
  if (!(id == other.id) || values.size() != other.values.size()) return false;
  for (std::size_t i = 0; i < values.size(); ++i)
    if (!same(values[i], other.values[i])) return false;
  return true;
}

Value text(std::string_view words) { return Text{std::string(words)}; }
Value inner(Reason reason) { return std::make_shared<const Reason>(std::move(reason)); }
Value list(std::vector<Value> values) { return std::make_shared<const List>(List{std::move(values)}); }

std::string debugText(const Reason& reason) {
  std::string text(reason.id.text);
  if (!reason.values.empty()) text += "(" + Debug::joined(reason.values) + ")";
  return text;
}

}  // namespace zyga::reason
