#pragma once

#include <array>
#include <optional>
#include <string>

#include "core/files/json/json.h"
#include "core/files/project/project.h"

/// Thicknesses of the body guide in a project. A file without them has those of a new project.
namespace zyga::files {

struct GuidePart {
  std::string_view key, words;
  double solid::GuideThickness::*field;  ///< m
};
inline constexpr std::array<GuidePart, 7> kGuideParts{
    {{"head_and_feet_mm", "head and feet", &solid::GuideThickness::headAndFeet},
     {"neck_mm", "neck", &solid::GuideThickness::neck},
     {"neck_base_mm", "neck base", &solid::GuideThickness::neckBase},
     {"trunk_mm", "trunk", &solid::GuideThickness::trunk},
     {"tail_base_mm", "tail base", &solid::GuideThickness::tailBase},
     {"upper_limbs_mm", "upper limbs", &solid::GuideThickness::upperLimbs},
     {"lower_limbs_mm", "lower limbs", &solid::GuideThickness::lowerLimbs}}};

inline constexpr std::string_view kBodyGuideKey = "body_guide";

/// Member of the document's root; none for what is as in a new project. Throws FileError for what is not finite.
std::optional<std::string> bodyGuideMember(const Project& project);
void readBodyGuide(const JsonPlace& root, Project& project);

}  // namespace zyga::files
