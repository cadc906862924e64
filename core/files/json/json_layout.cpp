#include "core/files/json/json_layout.h"

#include "core/files/json/json.h"

namespace zyga::files {
namespace {

std::string joined(const std::vector<std::string>& parts, const std::string& between) {
  std::string out;
  for (const auto& part : parts) out += (out.empty() ? "" : between) + part;
  return out;
}

}  // namespace

std::string member(std::string_view key, const std::string& value) { return jsonString(key) + ": " + value; }

std::string list(const std::vector<std::string>& items) { return "[" + joined(items, ", ") + "]"; }

std::string onOneLine(const std::vector<std::string>& members) { return "{" + joined(members, ", ") + "}"; }

std::string onLines(const std::vector<std::string>& parts, const std::string& indent, char open, char close) {
  if (parts.empty()) return {open, close};
  return open + ("\n" + indent + "  ") + joined(parts, ",\n" + indent + "  ") + "\n" + indent + close;
}

}  // namespace zyga::files
