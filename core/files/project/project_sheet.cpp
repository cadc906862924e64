#include "core/files/project/project_sheet.h"

#include <cmath>

#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"
#include "core/files/project/project_schema.h"

namespace zyga::files {
namespace {

constexpr std::array<std::pair<std::string_view, bool Sheet::*>, 6> kSwitches{
    {{"joint_marks", &Sheet::jointMarks},
     {"evidence_tones", &Sheet::evidenceTones},
     {"spans", &Sheet::spans},
     {"ground", &Sheet::ground},
     {"notes", &Sheet::notes},
     {"transparent", &Sheet::transparent}}};

template <class Value, std::size_t n>
Value readWord(const JsonPlace& place, const std::array<std::pair<std::string_view, Value>, n>& words) {
  if (const auto value = schema::valueOf(words, place.string())) return *value;
  std::string allowed;
  for (const auto& [word, ignored] : words) allowed += (allowed.empty() ? "" : ", ") + jsonString(word);
  place.fail(jsonString(place.string()) + " is not among " + allowed);
}

/// Zero, or between the bounds.
double readOptional(const JsonPlace& place, double least, double most) {
  const double value = place.number();
  if (value != 0 && !(value >= least && value <= most))
    place.fail("must be 0 or from " + toNumeral(least) + " to " + toNumeral(most));
  return value;
}

std::string finite(double value, std::string_view what) {
  if (!std::isfinite(value)) throw FileError("cannot save: " + std::string(what) + " is not a finite number");
  return toNumeral(value);
}

}  // namespace

std::vector<std::string> sheetMembers(const Project& project) {
  const Sheet& sheet = project.sheet;
  if (sheet == Sheet{}) return {};
  std::vector<std::string> members{member("layout", jsonString(schema::wordOf(kSheetLayouts, sheet.layout))),
                                   member("paper", jsonString(schema::wordOf(kSheetPapers, sheet.paper))),
                                   member("bones", jsonString(schema::wordOf(kSheetBones, sheet.bones))),
                                   member("scale", finite(sheet.scale, "a sheet's scale")),
                                   member("person_m", finite(sheet.person, "the height of a sheet's person"))};
  for (const auto& [key, flag] : kSwitches) members.push_back(member(key, sheet.*flag ? "true" : "false"));
  members.push_back(member("title", jsonString(sheet.title)));
  return {member(kSheetKey, onOneLine(members))};
}

void readSheet(const JsonPlace& root, Project& project) {
  const auto place = root.find(kSheetKey);
  if (!place) return;
  std::vector<std::string_view> keys{"layout", "paper", "bones", "scale", "person_m", "title"};
  for (const auto& [key, flag] : kSwitches) keys.push_back(key);
  place->allowOnly(keys);
  Sheet& sheet = project.sheet;
  sheet.layout = readWord((*place)["layout"], kSheetLayouts);
  sheet.paper = readWord((*place)["paper"], kSheetPapers);
  sheet.bones = readWord((*place)["bones"], kSheetBones);
  sheet.scale = readOptional((*place)["scale"], kLeastScale, kMostScale);
  sheet.person = readOptional((*place)["person_m"], kLeastPerson, kMostPerson);
  for (const auto& [key, flag] : kSwitches) sheet.*flag = (*place)[key].boolean();
  sheet.title = (*place)["title"].string();
}

}  // namespace zyga::files
