#include "app/verbs/project_file.h"

#include <algorithm>

#include "core/range/neutral.h"

namespace zyga::app {

ChosenPose choosePose(const files::Project& project, const Arguments& arguments) {
  const auto name = arguments.find("--pose");
  if (!name) return {"present pose", std::nullopt, project.pose};
  const auto& poses = project.poses;
  const auto found = std::find_if(poses.begin(), poses.end(), [&](const auto& named) { return named.name == *name; });
  if (found != poses.end()) return {*name, static_cast<std::size_t>(found - poses.begin()), found->pose};
  std::string names;
  for (const auto& named : poses) names += (names.empty() ? "" : ", ") + ("'" + named.name + "'");
  throw BadInput("--pose: there is no pose '" + *name + "'; " +
                 (names.empty() ? "the project has no named poses" : "there are " + names));
}

kinematics::Articulation articulationOf(const files::Project& project) {
  return range::articulate(project.specimen, project.assumptions);
}

range::Assessment assessmentOf(const files::Project& project, const kinematics::Pose& pose) {
  return range::assess(project.specimen, articulationOf(project), project.assumptions, pose);
}

}  // namespace zyga::app
