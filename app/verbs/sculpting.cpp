#include "app/verbs/sculpting.h"

#include <unistd.h>

#include <QCoreApplication>
#include <atomic>
#include <iostream>

#include "app/verbs/verb_words.h"
#include "ui/words/numbers.h"

namespace zyga::app {

task::Task taskAtTerminal(const char* what) {
  if (!isatty(STDERR_FILENO)) return {};
  const auto shown = std::make_shared<std::atomic<int>>(-1);
  return task::Task(nullptr, [words = said(what), shown](double share) {
    const int percent = static_cast<int>(share * 100);
    if (shown->exchange(percent) == percent) return;
    std::cerr << "\r" << words << " " << ui::percent(percent / 100.0).toStdString() << (percent == 100 ? "\n" : "")
              << std::flush;
  });
}

namespace {

solid::SculptOptions usualOptions() {
  solid::SculptOptions options;
  options.cacheFolder = files::boneCacheFolder();
  options.task = taskAtTerminal(QT_TRANSLATE_NOOP("words", "sculpting bones"));
  return options;
}

}  // namespace

files::BoneMeshes sculpt(const files::Project& project, std::size_t triangles) {
  solid::SculptOptions options = usualOptions();
  options.triangleBudget = triangles;
  return files::boneMeshes(project, options);
}

files::BoneMeshes sculpt(const files::Project& project, const std::vector<bool>& only) {
  solid::SculptOptions options = usualOptions();
  options.wanted = only;
  return files::boneMeshes(project, options);
}

std::shared_ptr<const range::ContactModel> contactShapes(const files::Project& project,
                                                         const files::BoneMeshes& meshes) {
  files::FieldsByMesh none;
  return files::contactModel(project.specimen(), meshes, files::boneCacheFolder(),
                             taskAtTerminal(QT_TRANSLATE_NOOP("words", "making shapes")), none);
}

}  // namespace zyga::app
