#include "core/files/project/project_ground.h"

#include "core/files/project/project_schema.h"

namespace zyga::files {
namespace {

using study::Footprint;

constexpr std::array<std::pair<std::string_view, std::optional<double> Footprint::*>, 7> kDistances{
    {{"pace_mm", &Footprint::pace},
     {"next_pace_mm", &Footprint::nextPace},
     {"stride_mm", &Footprint::stride},
     {"length_mm", &Footprint::length},
     {"width_mm", &Footprint::width},
     {"gauge_mm", &Footprint::gauge},
     {"ahead_mm", &Footprint::ahead}}};

constexpr std::array<std::pair<std::string_view, study::BodyPart>, study::kBodyParts> kParts{
    {{"head", study::BodyPart::Head},
     {"neck", study::BodyPart::Neck},
     {"trunk", study::BodyPart::Trunk},
     {"tail", study::BodyPart::Tail},
     {"fore_limbs", study::BodyPart::ForeLimbs},
     {"hind_limbs", study::BodyPart::HindLimbs}}};

json::Value printJson(const Footprint& print) {
  constexpr reason::Term kPrint{"project.footprint"};
  json::Value members = json::object({{"foot", print.foot}});
  for (const auto& [key, distance] : kDistances)
    if (print.*distance) members.add(key, schema::numeral(*(print.*distance), schema::kMillimetres, kPrint));
  return members;
}

json::Value trackwayJson(const study::Trackway& trackway) {
  constexpr reason::Term kPlace{"project.trackway-place"}, kHeading{"project.trackway-heading"},
      kMultiplier{"project.hip-multiplier"};
  json::Value prints = json::Value::array(json::Layout::OnLines);
  for (const auto& print : trackway.prints) prints.push(printJson(print));
  return json::object({{"place_mm", json::array({schema::numeral(trackway.x, schema::kMillimetres, kPlace),
                                                 schema::numeral(trackway.y, schema::kMillimetres, kPlace)})},
                       {"heading_deg", schema::degrees(trackway.heading, kHeading)},
                       {"hip_multiplier", schema::numeral(trackway.hipMultiplier, 0, kMultiplier)},
                       {"prints", prints}},
                      json::Layout::OnLines);
}

Footprint readPrint(const JsonPlace& place) {
  Footprint print;
  std::vector<std::string_view> keys{"foot"};
  print.foot = place["foot"].string();
  for (const auto& [key, distance] : kDistances) {
    if (const auto value = place.find(key)) print.*distance = fromNumeral(value->numeral(), schema::kMillimetres);
    keys.push_back(key);
  }
  place.allowOnly(keys);
  return print;
}

study::Trackway readTrackway(const JsonPlace& place) {
  place.allowOnly({"place_mm", "heading_deg", "hip_multiplier", "prints"});
  study::Trackway trackway;
  const auto at = place["place_mm"].items(2, kNumbers);
  trackway.x = fromNumeral(at[0].numeral(), schema::kMillimetres);
  trackway.y = fromNumeral(at[1].numeral(), schema::kMillimetres);
  trackway.heading = radians(place["heading_deg"].numeral());
  trackway.hipMultiplier = place["hip_multiplier"].number();
  if (!(trackway.hipMultiplier > 0)) place["hip_multiplier"].fail(fault::kNotAboveZero);
  for (const auto& item : place["prints"].items()) trackway.prints.push_back(readPrint(item));
  return trackway;
}

study::Densities readDensities(const JsonPlace& place) {
  study::Densities densities;
  std::vector<std::string_view> keys;
  for (const auto& [key, part] : kParts) {
    keys.push_back(key);
    const auto value = place.find(key);
    if (!value) continue;
    densities[part] = value->number();
    if (densities[part] < study::kLeastDensity || densities[part] > study::kMostDensity) {
      value->fail({fault::kOutOfBounds,
                   {reason::text(toNumeral(study::kLeastDensity)), reason::text(toNumeral(study::kMostDensity))}});
    }
  }
  place.allowOnly(keys);
  return densities;
}

}  // namespace

void addGround(const Project& project, json::Value& root) {
  if (!(project.trackway == study::Trackway{})) root.add(kTrackwayKey, trackwayJson(project.trackway));
  if (project.densities == study::Densities{}) return;
  json::Value parts = json::object({});
  for (const auto& [key, part] : kParts)
    parts.add(key, schema::numeral(project.densities[part], 0, reason::Term{"project.density"}));
  root.add(kDensitiesKey, std::move(parts));
}

void readGround(const JsonPlace& root, Project& project) {
  if (const auto trackway = root.find(kTrackwayKey)) project.trackway = readTrackway(*trackway);
  if (const auto densities = root.find(kDensitiesKey)) project.densities = readDensities(*densities);
}

}  // namespace zyga::files
