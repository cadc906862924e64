#pragma once

#include <string>
#include <string_view>

namespace zyga::files {

/// Bytes of the well-formed UTF-8 character that starts at `offset` (RFC 3629); 0 when there is none.
std::size_t utf8Length(std::string_view text, std::size_t offset);

std::string utf8(char32_t codePoint);

}  // namespace zyga::files
