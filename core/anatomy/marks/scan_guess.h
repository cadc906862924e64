#pragma once

#include <string_view>

namespace zyga::anatomy {

enum class ScanUnit { Millimetre, Centimetre, Metre };

/// Metres.
double metresOf(ScanUnit unit);
/// "mm", "cm", "m".
std::string_view toText(ScanUnit unit);

struct UnitGuess {
  ScanUnit unit = ScanUnit::Metre;
  bool sure = false;  ///< no other unit comes near
};

/// What is expected of a bone that nothing is known of: anything from a toe to a thigh bone, m (common practice, no
/// source).
inline constexpr double kUsualExtent = 0.3;

/// The unit that makes a bone of this greatest extent (in the file's unit) nearest to `expected` (m), on a logarithmic
/// scale.
UnitGuess guessUnit(double extent, double expected = kUsualExtent);

enum class ScanUp { Y, Z };

/// By the file's ending: formats of the screen (glTF, COLLADA, OBJ, FBX) have Y up, those of scanners and workshops Z.
/// Common practice, no source, but for glTF, whose standard fixes Y.
ScanUp guessUp(std::string_view ending);

}  // namespace zyga::anatomy
