#pragma once

#include <string>

#include "core/files/project/project.h"
#include "core/range/findings.h"

namespace zyga::app {

/// One judged pose of a project.
struct Report {
  const files::Project& project;
  std::string poseName;
  const kinematics::Pose& pose;
  const range::Assessment& assessment;
};

/// The worst of the joints that are judged and of the contacts: supported, near or beyond.
range::Level overallLevel(const range::Assessment& assessment);

std::string reportText(const Report& report);
std::string reportJson(const Report& report);

/// What a range from bare bones cannot know (Kuznetsov & Tereschenko 2010; Cobley et al. 2013; Hutson & Hutson 2012).
inline constexpr const char* kCaution =
    "ranges are of bare bones: they may be off by 5 degrees a joint, and soft tissue may lessen them";

}  // namespace zyga::app
