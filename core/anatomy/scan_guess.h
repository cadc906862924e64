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

/// The unit that makes a bone of this greatest extent (in the file's unit) nearest to `expected` (m), on a logarithmic
/// scale. Without knowledge of the bone, 0.3 m stands for anything from a toe to a thigh bone (common practice, no
/// source).
UnitGuess guessUnit(double extent, double expected = 0.3);

enum class ScanUp { Y, Z };

/// By the file's ending: formats of the screen (glTF, COLLADA, OBJ, FBX) have Y up, those of scanners and workshops Z.
/// Common practice, no source, but for glTF, whose standard fixes Y.
ScanUp guessUp(std::string_view ending);

}  // namespace zyga::anatomy
