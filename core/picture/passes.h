#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "core/picture/picture.h"

/// One view as several pictures that lie exactly over each other, to be stacked as layers and painted over.
namespace zyga::picture {

enum class Pass {
  Shaded,     ///< the bones in light, without lines and without ground
  Shadow,     ///< what the bones take from the light on the ground
  Outline,    ///< lines alone
  Depth,      ///< near bright, far dark, 16 bits
  Direction,  ///< which way the surface faces: red right, green up, blue towards the viewer
  Bones,      ///< one flat colour a bone
  Evidence    ///< one flat colour a kind of evidence
};

inline constexpr std::array<Pass, 7> kAllPasses{Pass::Shaded,    Pass::Shadow, Pass::Outline, Pass::Depth,
                                                Pass::Direction, Pass::Bones,  Pass::Evidence};

/// "shaded": the word in the names of files and options.
std::string_view wordOf(Pass pass);
/// The reverse of wordOf.
std::optional<Pass> passOf(std::string_view word);

/// Which passes, and the flat colours by instance (sRGB) that two of them need.
struct PassPlan {
  std::vector<Pass> wanted;
  std::vector<std::array<std::uint8_t, 3>> boneColours;
  std::vector<std::array<std::uint8_t, 3>> evidenceColours;
};

/// Grey and alpha of 16 bits, row by row from the top; straight alpha.
struct DepthImage {
  int width = 0;
  int height = 0;
  std::vector<std::uint16_t> grey, alpha;
  double nearest = 0;   ///< m along the camera's axis: white
  double farthest = 1;  ///< m along the camera's axis: black
};

struct PassPictures {
  bool whole = false;  ///< false when cancelled
  std::vector<std::pair<Pass, Image>> images;
  DepthImage depth;  ///< of width 0 when it was not wanted
};

/// Traces all wanted passes in one go. The alpha of Shaded, Depth, Direction, Bones and Evidence is one and the same
/// cover of the pixel by bones. Where several bones share a pixel, the flat passes and the depth tell of the one that
/// takes most of it, so that no colour lies between two bones. Background, ground lines and the outline option of
/// `options` are ignored. Throws std::invalid_argument when a list of colours is wanted and too short, or the size is
/// not positive.
PassPictures tracePasses(const std::vector<Instance>& instances, const Camera& camera, const PictureOptions& options,
                         const PassPlan& plan);

/// The passes in groups whose pictures of so many pixels fit in `memory` bytes together, or of one pass each; the order
/// is kept.
std::vector<std::vector<Pass>> groupsOf(const std::vector<Pass>& wanted, std::size_t pixels, std::size_t memory);

/// So many colours, no two alike, neighbours far apart in hue; the same list every time.
std::vector<std::array<std::uint8_t, 3>> distinctColours(std::size_t count);

}  // namespace zyga::picture
