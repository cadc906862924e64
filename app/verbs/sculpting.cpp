#include "app/verbs/sculpting.h"

#include <unistd.h>

#include <atomic>
#include <iostream>

#include "ui/words/say.h"

namespace zyga::app {

task::Task taskAtTerminal(std::string what) {
  if (!isatty(STDERR_FILENO)) return {};
  const auto shown = std::make_shared<std::atomic<int>>(-1);
  return task::Task(nullptr, [what = std::move(what), shown](double share) {
    const int percent = static_cast<int>(share * 100);
    if (shown->exchange(percent) == percent) return;
    std::cerr << "\r" << what << " " << percent << " %" << (percent == 100 ? "\n" : "") << std::flush;
  });
}

files::BoneMeshes sculpt(const files::Project& project, std::size_t triangles) {
  for (const auto& scan : project.scans)
    if (!scan.trouble.empty()) std::cerr << "warning: " << ui::say(scan.trouble).toStdString() << "\n";
  solid::SculptOptions options;
  options.triangleBudget = triangles;
  options.cacheFolder = files::boneCacheFolder();
  options.task = taskAtTerminal("sculpting bones");
  return files::boneMeshes(project, options);
}

std::shared_ptr<const range::ContactModel> contactShapes(const files::Project& project) {
  files::FieldsByMesh none;
  return files::contactModel(project.specimen(), sculpt(project), files::boneCacheFolder(),
                             taskAtTerminal("making shapes"), none);
}

}  // namespace zyga::app
