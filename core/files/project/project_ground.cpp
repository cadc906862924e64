#include "core/files/project/project_ground.h"

#include <cmath>

#include "core/files/json/json_layout.h"
#include "core/files/json/numeral.h"
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

double finite(double value, std::string_view what) {
  if (!std::isfinite(value)) throw FileError("cannot save: " + std::string(what) + " is not a finite number");
  return value;
}

std::string printText(const Footprint& print) {
  std::vector<std::string> members{member("foot", jsonString(print.foot))};
  for (const auto& [key, distance] : kDistances) {
    if (print.*distance)
      members.push_back(member(key, toNumeral(finite(*(print.*distance), "a footprint"), schema::kMillimetres)));
  }
  return onOneLine(members);
}

std::string trackwayText(const study::Trackway& trackway) {
  std::vector<std::string> prints;
  for (const auto& print : trackway.prints) prints.push_back(printText(print));
  return onLines(
      {member("place_mm", list({toNumeral(finite(trackway.x, "the trackway's place"), schema::kMillimetres),
                                toNumeral(finite(trackway.y, "the trackway's place"), schema::kMillimetres)})),
       member("heading_deg", toDegrees(finite(trackway.heading, "the trackway's heading"))),
       member("hip_multiplier", toNumeral(finite(trackway.hipMultiplier, "the hip multiplier"))),
       member("prints", onLines(prints, "    ", '[', ']'))},
      "  ", '{', '}');
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
  const auto at = place["place_mm"].items(2, "numbers");
  trackway.x = fromNumeral(at[0].numeral(), schema::kMillimetres);
  trackway.y = fromNumeral(at[1].numeral(), schema::kMillimetres);
  trackway.heading = radians(place["heading_deg"].numeral());
  trackway.hipMultiplier = place["hip_multiplier"].number();
  if (!(trackway.hipMultiplier > 0)) place["hip_multiplier"].fail("must be above zero");
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
      value->fail("must be from " + toNumeral(study::kLeastDensity) + " to " + toNumeral(study::kMostDensity));
    }
  }
  place.allowOnly(keys);
  return densities;
}

}  // namespace

std::vector<std::string> groundMembers(const Project& project) {
  std::vector<std::string> members;
  if (!(project.trackway == study::Trackway{})) members.push_back(member(kTrackwayKey, trackwayText(project.trackway)));
  if (project.densities == study::Densities{}) return members;
  std::vector<std::string> parts;
  for (const auto& [key, part] : kParts)
    parts.push_back(member(key, toNumeral(finite(project.densities[part], "a density"))));
  members.push_back(member(kDensitiesKey, onOneLine(parts)));
  return members;
}

void readGround(const JsonPlace& root, Project& project) {
  if (const auto trackway = root.find(kTrackwayKey)) project.trackway = readTrackway(*trackway);
  if (const auto densities = root.find(kDensitiesKey)) project.densities = readDensities(*densities);
}

}  // namespace zyga::files
