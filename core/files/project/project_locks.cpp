#include "core/files/project/project_locks.h"

#include <algorithm>

#include "core/files/json/json_layout.h"

namespace zyga::files {

std::vector<std::string> lockMembers(const Project& project) {
  if (project.lockedJoints.empty()) return {};
  std::vector<std::string> ids;
  for (const anatomy::JointIndex joint : project.lockedJoints) ids.push_back(jsonString(project.specimen[joint].id));
  return {member(kLockedKey, list(ids))};
}

void readLocks(const JsonPlace& root, Project& project) {
  const auto locked = root.find(kLockedKey);
  if (!locked) return;
  for (const JsonPlace& item : locked->items()) {
    const auto joint = project.specimen.findJoint(item.string());
    if (!joint) item.fail("the specimen has no joint " + jsonString(item.string()));
    auto& kept = project.lockedJoints;
    const auto at = std::lower_bound(kept.begin(), kept.end(), *joint);
    if (at != kept.end() && *at == *joint) item.fail("this joint is named twice");
    kept.insert(at, *joint);
  }
}

}  // namespace zyga::files
