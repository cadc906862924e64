#include "core/files/project/project_sheet.h"

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

/// Zero, or between the bounds.
double readOptional(const JsonPlace& place, double least, double most) {
  const double value = place.number();
  if (value != 0 && !(value >= least && value <= most))
    place.fail({fault::kZeroOrBounds, {reason::text(toNumeral(least)), reason::text(toNumeral(most))}});
  return value;
}

}  // namespace

void addSheet(const Project& project, json::Value& root) {
  constexpr reason::Term kScale{"project.sheet-scale"}, kPerson{"project.sheet-person"};
  const Sheet& sheet = project.sheet;
  if (sheet == Sheet{}) return;
  json::Value members = json::object({{"layout", schema::wordOf(kSheetLayouts, sheet.layout)},
                                      {"paper", schema::wordOf(kSheetPapers, sheet.paper)},
                                      {"bones", schema::wordOf(kSheetBones, sheet.bones)},
                                      {"scale", schema::numeral(sheet.scale, 0, kScale)},
                                      {"person_m", schema::numeral(sheet.person, 0, kPerson)}});
  for (const auto& [key, flag] : kSwitches) members.add(key, sheet.*flag);
  members.add("title", sheet.title);
  if (!sheet.plate.empty()) members.add("plate", sheet.plate);
  root.add(kSheetKey, std::move(members));
}

void readSheet(const JsonPlace& root, Project& project) {
  const auto place = root.find(kSheetKey);
  if (!place) return;
  std::vector<std::string_view> keys{"layout", "paper", "bones", "scale", "person_m", "title", "plate"};
  for (const auto& [key, flag] : kSwitches) keys.push_back(key);
  place->allowOnly(keys);
  Sheet& sheet = project.sheet;
  sheet.layout = schema::readWord((*place)["layout"], kSheetLayouts);
  sheet.paper = schema::readWord((*place)["paper"], kSheetPapers);
  sheet.bones = schema::readWord((*place)["bones"], kSheetBones);
  sheet.scale = readOptional((*place)["scale"], kLeastScale, kMostScale);
  sheet.person = readOptional((*place)["person_m"], kLeastPerson, kMostPerson);
  for (const auto& [key, flag] : kSwitches) sheet.*flag = (*place)[key].boolean();
  sheet.title = (*place)["title"].string();
  if (const auto plate = place->find("plate")) sheet.plate = plate->string();
}

}  // namespace zyga::files
