#pragma once

#include <string>
#include <vector>

namespace zyga::app {

using TextRow = std::vector<std::string>;

/// Rows as an indented table. Columns of `words` stand to the left, others to the right as numbers do; the last one
/// runs on. Widths count characters, not bytes.
std::string textTable(const std::vector<TextRow>& rows, const std::vector<bool>& words);

}  // namespace zyga::app
