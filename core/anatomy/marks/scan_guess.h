#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/anatomy/bone_name.h"
#include "core/anatomy/specimen.h"

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

/// Greatest extents of a scan, in the file's unit, and of the bone that it is taken for, m.
struct ScanExtents {
  double scan = 0, expected = 0;
};

/// One unit for scans that belong together.
struct SetUnitGuess {
  ScanUnit unit = ScanUnit::Metre;
  bool sure = false;  ///< no other unit comes near
  /// The middle one of all bones is in this unit so many times as large as expected; 0 where nothing is known.
  double factor = 0;
  std::size_t bones = 0;  ///< on which it rests
};
/// The unit that brings the median of the extents over the expected ones nearest to 1, on a logarithmic scale.
SetUnitGuess guessUnitOfSet(const std::vector<ScanExtents>& extents);
/// The same factor in a unit that is known.
double sizeFactor(const std::vector<ScanExtents>& extents, ScanUnit unit);
/// Whether bones so many times as large as the animal's are rather off by ten than of its size: beyond the root of ten
/// either way.
bool isTenfold(double factor);
/// How many times as large each is as the middle one of them all, held against what is expected of each; of two, as the
/// other. Both lengths of an extent are in m. 0 where nothing is known.
std::vector<double> sizesAmong(const std::vector<ScanExtents>& extents);

enum class ScanUp { Y, Z };

/// By the file's ending: formats of the screen (glTF, COLLADA, OBJ, FBX) have Y up, those of scanners and workshops Z.
/// Common practice, no source, but for glTF, whose standard fixes Y.
ScanUp guessUp(std::string_view ending);

/// What a file is taken for, from its name alone. Always shown and open to change.
struct BoneGuess {
  BoneName name;
  double confidence = 0;               ///< 0 to 1; under 0.5 better asked than believed
  std::vector<reason::Reason> doubts;  ///< what is not certain
};

/// "C5.stl", "left_femur", "L_humerus", "cervical_07", "BONE_T3", "metacarpal III right". Empty when no word of it
/// names a bone. A missing number is 0, a missing side Left, both with their doubt. A lumbar vertebra is a dorsal one
/// whose number only the whole set can tell.
std::optional<BoneGuess> guessBone(std::string_view fileName);

/// The same for files that belong together: lumbar vertebrae are counted on behind the thoracic ones of the set, or,
/// when the set has none, so that the last is the last dorsal of `counts`.
std::vector<std::optional<BoneGuess>> guessBones(const std::vector<std::string>& fileNames, const RegionCounts& counts);

}  // namespace zyga::anatomy
