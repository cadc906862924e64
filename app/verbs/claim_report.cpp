#include "app/verbs/claim_report.h"

#include "app/verbs/summary_text.h"
#include "core/files/json/json.h"
#include "core/files/json/json_layout.h"
#include "core/study/claims/claim_words.h"

namespace zyga::app {
namespace {

using files::jsonString;
using files::list;
using files::member;
using files::onLines;

std::string idsJson(const files::Project& project, const std::vector<kinematics::JointIndex>& joints) {
  std::vector<std::string> ids;
  for (const auto joint : joints) ids.push_back(jsonString(project.specimen[joint].id));
  return list(ids);
}

std::string orNull(const std::optional<double>& number) { return number ? millionths(*number) : "null"; }

std::string stringsJson(const std::vector<std::string>& texts) {
  std::vector<std::string> items;
  for (const auto& text : texts) items.push_back(jsonString(text));
  return onLines(items, "  ", '[', ']');
}

}  // namespace

std::string claimText(const files::Project& project, const study::Claim& claim, const study::ClaimAnswer& answer) {
  constexpr std::size_t kMostStops = 5;
  const study::ClaimWords words = claimWords(project.specimen, project.assumptions, claim, answer);
  std::string out =
      words.claim + (claim.source.empty() ? "" : " (" + claim.source + ")") + "\n  " + words.verdict + "\n";
  for (std::size_t i = 0; i < words.stops.size() && i < kMostStops; ++i) out += "  stopped by " + words.stops[i] + "\n";
  if (words.stops.size() > kMostStops)
    out += "  and by " + std::to_string(words.stops.size() - kMostStops) + " joints more\n";
  for (const auto& need : words.needs) out += "  " + need + "\n";
  for (const auto& note : words.notes) out += "  " + note + "\n";
  return out;
}

std::string claimJson(const files::Project& project, const study::Claim& claim, const study::ClaimAnswer& answer) {
  const study::ClaimWords words = claimWords(project.specimen, project.assumptions, claim, answer);
  const bool angle = traitsOf(claim.kind).angle;
  std::vector<kinematics::JointIndex> stopping;
  for (const auto& stop : answer.stopping) stopping.push_back(stop.joint);
  const std::string best = !answer.best ? "null" : angle ? degreesJson(*answer.best) : millionths(*answer.best);
  const std::string shortBy = angle ? degreesJson(answer.shortBy) : millionths(answer.shortBy);
  return onLines(
      {member("claim", jsonString(sentence(claim))), member("source", jsonString(claim.source)),
       member("supported", answer.supported ? "true" : "false"), member(angle ? "best_deg" : "best_m", best),
       member(angle ? "short_by_deg" : "short_by_m", shortBy), member("stopping_joints", idsJson(project, stopping)),
       member("least_overlap", orNull(answer.leastOverlap)),
       member("least_cartilage_percent", orNull(answer.leastCartilage)),
       member("most_cartilage_percent", orNull(answer.mostCartilage)),
       member("joints_near_edge", std::to_string(answer.nearEdge.size())),
       member("near_edge", idsJson(project, answer.nearEdge)), member("not_judged", idsJson(project, answer.notJudged)),
       member("beyond_elsewhere", idsJson(project, answer.elsewhereBeyond)),
       member("in_ground_m", millionths(answer.inGround)), member("verdict", jsonString(words.verdict)),
       member("stopping_words", stringsJson(words.stops)), member("needs_words", stringsJson(words.needs))},
      "", '{', '}');
}

}  // namespace zyga::app
