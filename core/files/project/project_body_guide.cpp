#include "core/files/project/project_body_guide.h"

#include "core/files/project/project_schema.h"

namespace zyga::files {
namespace {

constexpr std::array<std::pair<std::string_view, double solid::GuideThickness::*>, 2> kTail{
    {{"tail_percent_of_bone_width", &solid::GuideThickness::tailWidth},
     {"tail_percent_of_bone_height", &solid::GuideThickness::tailHeight}}};

constexpr std::string_view kMuscle = "limb_muscle_percent_of_usual";
constexpr reason::Term kThickness{"project.guide-thickness"};

void readWithin(const JsonPlace& place, std::string_view key, int places, double least, double most, double& value) {
  const auto found = place.find(key);
  if (!found) return;
  value = fromNumeral(found->numeral(), places);
  if (!(value >= least && value <= most))
    found->fail({fault::kOutOfBounds, {reason::text(toNumeral(least, places)), reason::text(toNumeral(most, places))}});
}

}  // namespace

void addBodyGuide(const Project& project, json::Value& root) {
  if (project.guide == solid::GuideThickness{}) return;
  json::Value guide = json::object({});
  for (const auto& part : kGuideParts)
    guide.add(part.key, schema::numeral(project.guide.*part.field, schema::kMillimetres, kThickness));
  for (const auto& [key, field] : kTail)
    guide.add(key, schema::numeral(project.guide.*field, schema::kPercent, kThickness));
  guide.add(kMuscle, schema::numeral(project.guide.muscle, schema::kPercent, kThickness));
  root.add(kBodyGuideKey, std::move(guide));
}

void readBodyGuide(const JsonPlace& root, Project& project) {
  const auto place = root.find(kBodyGuideKey);
  if (!place) return;
  std::vector<std::string_view> keys;
  for (const auto& part : kGuideParts) {
    readWithin(*place, part.key, schema::kMillimetres, 0, solid::kMostThickness, project.guide.*part.field);
    keys.push_back(part.key);
  }
  for (const auto& [key, field] : kTail) {
    readWithin(*place, key, schema::kPercent, solid::kLeastTail, solid::kMostTail, project.guide.*field);
    keys.push_back(key);
  }
  readWithin(*place, kMuscle, schema::kPercent, 0, solid::kMostMuscle, project.guide.muscle);
  keys.push_back(kMuscle);
  place->allowOnly(keys);
}

}  // namespace zyga::files
