#include "core/files/project/project_body_guide.h"

#include <cmath>

#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"
#include "core/files/project/project_schema.h"

namespace zyga::files {
namespace {

constexpr std::array<std::pair<std::string_view, double solid::GuideThickness::*>, 2> kTail{
    {{"tail_percent_of_bone_width", &solid::GuideThickness::tailWidth},
     {"tail_percent_of_bone_height", &solid::GuideThickness::tailHeight}}};

std::string finite(double value, int places) {
  if (!std::isfinite(value)) throw FileError("cannot save: a thickness of the body guide is not a finite number");
  return toNumeral(value, places);
}

void readWithin(const JsonPlace& place, std::string_view key, int places, double least, double most, double& value) {
  const auto found = place.find(key);
  if (!found) return;
  value = fromNumeral(found->numeral(), places);
  if (!(value >= least && value <= most))
    found->fail("must be from " + toNumeral(least, places) + " to " + toNumeral(most, places));
}

}  // namespace

std::optional<std::string> bodyGuideMember(const Project& project) {
  if (project.guide == solid::GuideThickness{}) return std::nullopt;
  std::vector<std::string> members;
  for (const auto& part : kGuideParts)
    members.push_back(member(part.key, finite(project.guide.*part.field, schema::kMillimetres)));
  for (const auto& [key, field] : kTail) members.push_back(member(key, finite(project.guide.*field, schema::kPercent)));
  return member(kBodyGuideKey, onOneLine(members));
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
  place->allowOnly(keys);
}

}  // namespace zyga::files
