#include "app/verbs/bone_list.h"

#include <QCoreApplication>
#include <QStringList>

#include "app/verbs/verb_words.h"
#include "core/anatomy/bone_parts.h"
#include "ui/words/say.h"

namespace zyga::app {

std::vector<bool> bonesListed(const Arguments& arguments, std::string_view option, const anatomy::Specimen& specimen) {
  const auto given = arguments.find(option);
  if (!given) return {};
  anatomy::BoneList list = anatomy::bonesInList(specimen, *given);
  if (list.unknown.empty()) return std::move(list.listed);
  QStringList parts;
  for (const std::string_view part : anatomy::partNames())
    parts << QString::fromUtf8(part.data(), static_cast<qsizetype>(part.size()));
  refuse(
      QT_TRANSLATE_NOOP("words",
                        "%1: '%2' is no bone of this animal and no part of it; write ids such as C5 or humerus.L, or "
                        "parts (%3; .L or .R at their end takes one side), with commas between them"),
      {option, list.unknown.front(), ui::inOneLine(parts)});
}

}  // namespace zyga::app
