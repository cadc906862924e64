#pragma once

#include <array>
#include <string_view>

#include "core/files/json/json.h"
#include "core/files/json/json_write.h"
#include "core/files/project/project.h"

/// Thicknesses of the body guide in a project. A file without them has those of a new project.
namespace zyga::files {

struct GuidePart {
  std::string_view key;
  reason::Term part;
  double solid::GuideThickness::*field;  ///< m
};
inline constexpr std::array<GuidePart, 7> kGuideParts{
    {{"head_and_feet_mm", {"guide.head-and-feet"}, &solid::GuideThickness::headAndFeet},
     {"neck_mm", {"guide.neck"}, &solid::GuideThickness::neck},
     {"neck_base_mm", {"guide.neck-base"}, &solid::GuideThickness::neckBase},
     {"trunk_mm", {"guide.trunk"}, &solid::GuideThickness::trunk},
     {"tail_base_mm", {"guide.tail-base"}, &solid::GuideThickness::tailBase},
     {"upper_limbs_mm", {"guide.upper-limbs"}, &solid::GuideThickness::upperLimbs},
     {"lower_limbs_mm", {"guide.lower-limbs"}, &solid::GuideThickness::lowerLimbs}}};

inline constexpr std::string_view kBodyGuideKey = "body_guide";

/// To the document's root; nothing where all is as in a new project. Throws FileError for what is not finite.
void addBodyGuide(const Project& project, json::Value& root);
void readBodyGuide(const JsonPlace& root, Project& project);

}  // namespace zyga::files
