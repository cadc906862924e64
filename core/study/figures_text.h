#pragma once

#include <string>
#include <string_view>

/// Numbers with their units as studies say them.
namespace zyga::study {

/// "4.12 m", "-0.30 m".
std::string metresWord(double metres, int decimals = 2);
/// An angle (rad): "18.3°".
std::string degreesWord(double angle);
/// With so many decimals, never "-0".
std::string figure(double number, int decimals);
std::string capitalised(std::string_view words);

}  // namespace zyga::study
