#include "core/files/project/project_locks.h"

#include <algorithm>

#include "core/files/project/project_faults.h"

namespace zyga::files {

void addLocks(const Project& project, json::Value& root) {
  if (project.lockedJoints.empty()) return;
  json::Value ids = json::array({});
  for (const anatomy::JointIndex joint : project.lockedJoints) ids.push(project.specimen()[joint].id);
  root.add(kLockedKey, std::move(ids));
}

void readLocks(const JsonPlace& root, Project& project) {
  const auto locked = root.find(kLockedKey);
  if (!locked) return;
  for (const JsonPlace& item : locked->items()) {
    const auto joint = project.specimen().findJoint(item.string());
    if (!joint) item.fail({fault::kNoJoint, {shown(item.string())}});
    auto& kept = project.lockedJoints;
    const auto at = std::lower_bound(kept.begin(), kept.end(), *joint);
    if (at != kept.end() && *at == *joint) item.fail(fault::kJointTwice);
    kept.insert(at, *joint);
  }
}

}  // namespace zyga::files
