#include "core/study/figures_text.h"

#include <array>
#include <cctype>
#include <cstdio>
#include <numbers>

namespace zyga::study {

std::string figure(double number, int decimals) {
  std::array<char, 64> buffer{};
  std::snprintf(buffer.data(), buffer.size(), "%.*f", decimals, number);
  std::string text = buffer.data();
  // Where the numbers of the machine's language have a comma.
  for (char& c : text) c = c == ',' ? '.' : c;
  const bool zero = text.find_first_not_of("-0.") == std::string::npos;
  return zero && text.starts_with('-') ? text.substr(1) : text;
}

std::string metresWord(double metres, int decimals) { return figure(metres, decimals) + " m"; }

std::string degreesWord(double angle) { return figure(angle * 180 / std::numbers::pi, 1) + "°"; }

std::string capitalised(std::string_view words) {
  std::string text(words);
  if (!text.empty()) text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
  return text;
}

}  // namespace zyga::study
