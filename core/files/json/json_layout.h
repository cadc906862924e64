#pragma once

#include <string>
#include <string_view>
#include <vector>

/// Pieces of JSON text put together in a given order and layout. Parts are JSON already.
namespace zyga::files {

/// "key": value
std::string member(std::string_view key, const std::string& value);
/// [a, b]
std::string list(const std::vector<std::string>& items);
/// {"a": 1, "b": 2}
std::string onOneLine(const std::vector<std::string>& members);
/// Members or items one a line between `open` and `close`; `indent` is the indent of the closing line.
std::string onLines(const std::vector<std::string>& parts, const std::string& indent, char open, char close);

}  // namespace zyga::files
