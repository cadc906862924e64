#include <algorithm>

#include "core/report/sections.h"
#include "core/report/words.h"
#include "core/study/claims/claim_words.h"

namespace zyga::report {
namespace {

Table needsTable(const study::ClaimWords& words) {
  Table table{"", {"what stands in the way, and what it would take"}, {true}, {}};
  for (const auto& stop : words.stops) table.rows.push_back({stop});
  for (const auto& need : words.needs) table.rows.push_back({need});
  return table;
}

}  // namespace

Section claimsSection(const Matter& matter, Numbers& numbers, const Options& options) {
  Section section;
  section.heading = "Claims";
  if (matter.project.claims.empty())
    section.sentences = {"No claims were put to this animal. They are typed into the Claims panel."};
  std::size_t number = 0;
  for (const study::Claim& claim : matter.project.claims) {
    study::ClaimOptions asked;
    asked.cancel = options.cancel;
    const study::ClaimAnswer answer = study::answerClaim(matter.project.specimen, matter.articulation,
                                                         matter.project.assumptions, matter.pose, claim, asked);
    if (answer.cancelled) return {};
    ++number;
    const study::ClaimWords words = claimWords(matter.project.specimen, matter.project.assumptions, claim, answer);
    section.sentences.push_back(std::to_string(number) + ". " + words.claim +
                                (claim.source.empty() ? "" : " (" + claim.source + ")") + ". " + words.verdict);
    for (const auto& note : words.notes) section.sentences.push_back(note);
    if (Table table = needsTable(words); !table.rows.empty()) {
      table.caption = "Claim " + std::to_string(number);
      section.tables.push_back(std::move(table));
    }
    const std::string key = "claim." + std::to_string(number);
    numbers.push_back({key + ".supported", answer.supported ? 1.0 : 0.0, ""});
    if (answer.best) numbers.push_back({key + ".best", *answer.best, traitsOf(claim.kind).angle ? "rad" : "m"});
    if (answer.leastOverlap) numbers.push_back({key + ".least_overlap", 100 * *answer.leastOverlap, "%"});
    if (answer.leastCartilage) numbers.push_back({key + ".least_cartilage", *answer.leastCartilage, "%"});
  }
  if (number > 0) section.cautions = {study::claimBasis()};
  return section;
}

}  // namespace zyga::report
