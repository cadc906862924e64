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

/// Numbers by part of the body, each from `least` to `most`; what is not given stays.
void readParts(const JsonPlace& place, double least, double most, std::array<double, study::kBodyParts>& parts) {
  std::vector<std::string_view> keys;
  for (const auto& [key, part] : kParts) {
    keys.push_back(key);
    const auto value = place.find(key);
    if (!value) continue;
    double& number = parts[static_cast<std::size_t>(part)];
    number = value->number();
    if (number < least || number > most)
      value->fail({fault::kOutOfBounds, {reason::text(toNumeral(least)), reason::text(toNumeral(most))}});
  }
  place.allowOnly(keys);
}

void addParts(json::Value& root, std::string_view key, const std::array<double, study::kBodyParts>& values,
              const std::array<double, study::kBodyParts>& usual, reason::Term what) {
  if (values == usual) return;
  json::Value parts = json::object({});
  for (const auto& [name, part] : kParts)
    parts.add(name, schema::numeral(values[static_cast<std::size_t>(part)], 0, what));
  root.add(key, std::move(parts));
}

}  // namespace

void addGround(const Project& project, json::Value& root) {
  if (!(project.trackway == study::Trackway{})) root.add(kTrackwayKey, trackwayJson(project.trackway));
  const study::Densities usual;
  addParts(root, kDensitiesKey, project.densities.byPart, usual.byPart, reason::Term{"project.density"});
  addParts(root, kHullFactorsKey, project.densities.hullFactors, usual.hullFactors,
           reason::Term{"project.hull-factor"});
}

void readGround(const JsonPlace& root, Project& project) {
  if (const auto trackway = root.find(kTrackwayKey)) project.trackway = readTrackway(*trackway);
  if (const auto densities = root.find(kDensitiesKey))
    readParts(*densities, study::kLeastDensity, study::kMostDensity, project.densities.byPart);
  if (const auto factors = root.find(kHullFactorsKey))
    readParts(*factors, study::kLeastHullFactor, study::kMostHullFactor, project.densities.hullFactors);
}

}  // namespace zyga::files
