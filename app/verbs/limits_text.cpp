#include <algorithm>

#include "app/verbs/assess_report.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/limits_report.h"
#include "app/verbs/summary_text.h"
#include "app/verbs/text_table.h"

namespace zyga::app {
namespace {

using range::Direction;

std::string metres(double length) { return fixed(length, 2); }

/// What stops a motion, without the angle that the row shows anyway.
std::string stopOf(const anatomy::Joint& joint, const range::Limit& limit) {
  return limit.stop.kind == range::FindingKind::TypedLimit ? "limit (" + joint.typed->source + ")" : limit.stop.text;
}

/// The same in words that fit left and right alike: "facets on that side share 50 %".
std::string bySide(const range::Limit& limit, bool leftwards) {
  using anatomy::Side;
  const std::string& text = limit.stop.text;
  const auto facets = text.find(" facets ");
  if (limit.stop.side == Side::Midline || facets == std::string::npos) return text;
  const bool same = (limit.stop.side == Side::Left) == leftwards;
  return std::string("facets on ") + (same ? "that" : "the other") + " side" + text.substr(facets + 7);
}

/// Directions that the same thing stops, told once: "dorsal, ventral: both facets share 50 %; left, right: ...".
std::string stops(const anatomy::Joint& joint, const range::JointLimits& limits) {
  std::vector<std::pair<std::string, std::string>> groups;  // what stops, which ways
  for (const Direction direction : range::kDirections) {
    const auto k = static_cast<std::size_t>(direction);
    std::string stop = stopOf(joint, limits.ends[k]);
    const std::string eitherWay = bySide(limits.ends[k & ~std::size_t{1}], true);
    const bool sided = k >= 2 && limits.ends[k].stop.side != anatomy::Side::Midline;
    if (sided && eitherWay == bySide(limits.ends[k | 1], false)) stop = eitherWay;
    const auto same = std::find_if(groups.begin(), groups.end(), [&](const auto& g) { return g.first == stop; });
    if (same == groups.end()) {
      groups.emplace_back(stop, toText(direction));
    } else {
      same->second.append(", ").append(toText(direction));
    }
  }
  if (groups.size() == 1) return groups.front().first;
  std::string text;
  for (const auto& [stop, ways] : groups) text += (text.empty() ? "" : "; ") + ways + ": " + stop;
  return text;
}

std::string end(const anatomy::Joint& joint, const range::JointLimits& limits, Direction direction) {
  const bool known = limits[direction].supported && (joint.hasFacets() || joint.typed);
  return known ? fixed(degreesTowards(limits, direction), 1) : "-";
}

std::string jointsTable(const LimitsReport& report) {
  std::vector<TextRow> rows{
      {"joint", "dorsal", "ventral", "left", "right", "torsion left", "torsion right", "stopped by"}};
  for (const auto& limits : report.joints) {
    const anatomy::Joint& joint = report.project.specimen[limits.joint];
    TextRow row{joint.id};
    for (const Direction direction : range::kDirections) row.push_back(end(joint, limits, direction));
    row.push_back((limits.judged ? "" : "not judged: ") + stops(joint, limits));
    rows.push_back(row);
  }
  return textTable(rows, {true, false, false, false, false, false, false, true});
}

std::string extremesTable(const std::vector<study::Extreme>& extremes, study::Chain chain) {
  const bool neck = chain == study::Chain::Neck;
  std::vector<TextRow> rows;
  rows.push_back(neck ? TextRow{"neck", "turn", "snout", "eyes", "ahead", "left", "slope", "swing", ""}
                      : TextRow{"tail", "turn", "tip", "behind", "left", "slope", "swing", ""});
  for (const auto& extreme : extremes) {
    if (extreme.chain != chain) continue;
    const study::Carriage& c = extreme.carriage;
    TextRow row{std::string(toText(extreme.direction)), degreesText(range::signOf(extreme.direction) * extreme.total)};
    if (neck) {
      row.insert(row.end(), {metres(c.snoutHeight), metres(c.eyeHeight), metres(c.ahead)});
    } else {
      row.insert(row.end(), {metres(c.tipHeight), metres(-c.ahead)});
    }
    row.insert(row.end(), {metres(c.left), degreesText(c.slope), degreesText(c.swing)});
    const auto open = std::count_if(extreme.joints.begin(), extreme.joints.end(), [](auto& j) { return !j.judged; });
    std::string remark = c.lowest < 0 ? metres(-c.lowest) + " m into the ground" : "";
    if (open > 0) remark += (remark.empty() ? "" : ", ") + std::to_string(open) + " joints not judged";
    row.push_back(remark);
    rows.push_back(row);
  }
  std::vector<bool> words(rows.front().size(), false);
  words.front() = words.back() = true;
  return textTable(rows, words);
}

std::string extremesText(const LimitsReport& report) {
  if (report.extremes.empty()) return "";
  return "\n  every joint at its own limit from neutral; heights over the ground and ways from the base in m, angles "
         "in "
         "degrees\n" +
         extremesTable(report.extremes, study::Chain::Neck) + "\n" + extremesTable(report.extremes, study::Chain::Tail);
}

}  // namespace

std::string limitsText(const LimitsReport& report) {
  return report.project.table.name + ": limits from " + report.from + "\n" + assumptionsText(report.assumptions) +
         (report.contactJudged ? "  neighbouring bones stop each other\n"
                               : "  contact of neighbouring bones is not looked at; --contact does\n") +
         "\n" + jointsTable(report) + extremesText(report) + "\n  " + kCaution +
         "\n  (Kuznetsov & Tereschenko 2010; Cobley et al. 2013; Hutson & Hutson 2012)\n  degrees from neutral in the "
         "direction named, one motion at a time; torsion left lifts the left side\n";
}

}  // namespace zyga::app
