#include "app/verbs/contact_for.h"

#include <QCoreApplication>

#include "app/verbs/sculpting.h"
#include "app/verbs/verb_words.h"
#include "ui/words/assumption_words.h"

namespace zyga::app {
namespace {

bool wantsContact(const Arguments& arguments) {
  if (!arguments.has("--no-contact")) return true;
  if (arguments.has("--contact"))
    refuse(QT_TRANSLATE_NOOP("words", "--no-contact: it contradicts --contact, which holds by itself; leave one out"));
  return false;
}

}  // namespace

std::vector<OptionSpec> withContactOptions(std::vector<OptionSpec> options) {
  options.push_back(
      {"--no-contact", "",
       QT_TRANSLATE_NOOP("words", "bones that collide do not count; nothing has to be sculpted for them")});
  options.push_back({"--contact", "", QT_TRANSLATE_NOOP("words", "as it is without --no-contact; for older scripts")});
  return options;
}

std::shared_ptr<const range::ContactModel> contactFor(const files::Project& project, const Arguments& arguments) {
  return wantsContact(arguments) ? contactShapes(project, sculpt(project)) : nullptr;
}

std::shared_ptr<const range::ContactModel> contactFor(const files::Project& project, const Arguments& arguments,
                                                      const files::BoneMeshes& meshes) {
  return wantsContact(arguments) ? contactShapes(project, meshes) : nullptr;
}

std::string contactText(bool judged) {
  return "  " +
         (judged ? said(QT_TRANSLATE_NOOP("words", "bones that collide count too; %1"), {ui::bendingRibsWords()})
                 : said(QT_TRANSLATE_NOOP("words", "collisions between bones were not assessed (--no-contact)"))) +
         "\n";
}

}  // namespace zyga::app
