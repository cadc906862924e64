#pragma once

#include <string>
#include <string_view>

/// Numbers as files show them: millimetres and degrees in as few digits as bring the very same metres and radians back.
namespace zyga::files {

/// `value` x 10^places in decimal, with the fewest digits from which `fromNumeral` returns `value` to the bit. Moving
/// the decimal point loses nothing, where multiplying by 1000 and dividing again would.
std::string toNumeral(double value, int places = 0);

/// `numeral` x 10^-places, correctly rounded. The text must be a JSON number; infinite when it is too large.
double fromNumeral(std::string_view numeral, int places = 0);

/// Degrees with the fewest digits from which `radians` returns `angle` (rad) to the bit.
std::string toDegrees(double angle);

/// Degrees in a JSON number to rad. Up to 15 digits are turned as the rest of the program turns typed degrees; longer
/// ones in extended precision, because half of all doubles are no double's multiple of pi / 180.
double radians(std::string_view numeral);

}  // namespace zyga::files
