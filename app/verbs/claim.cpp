#include <algorithm>
#include <iostream>

#include "app/verbs/assumption_options.h"
#include "app/verbs/assumptions_words.h"
#include "app/verbs/claim_options.h"
#include "app/verbs/claim_report.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verbs.h"
#include "core/files/json/json_layout.h"
#include "core/study/claims/claim_words.h"

namespace zyga::app {
namespace {

study::ClaimAnswer answerOf(const files::Project& project, const kinematics::Pose& pose, const study::Claim& claim) {
  study::ClaimAnswer answer =
      study::answerClaim(project.specimen, articulationOf(project), project.assumptions, pose, claim);
  if (!answer.unanswerable.empty()) throw BadInput(sentence(claim) + ": " + answer.unanswerable);
  return answer;
}

/// The project with the pose that shows the claim, and the claim in its list.
void save(files::Project project, const ChosenPose& chosen, const study::Claim& claim, const study::ClaimAnswer& answer,
          const std::string& out) {
  project.pose = answer.pose;
  if (chosen.index) project.poses[*chosen.index].pose = answer.pose;
  if (std::find(project.claims.begin(), project.claims.end(), claim) == project.claims.end())
    project.claims.push_back(claim);
  files::saveProject(project, out);
}

int answerOne(const files::Project& project, const ChosenPose& chosen, const study::Claim& claim,
              const Arguments& arguments) {
  const auto answer = answerOf(project, chosen.pose, claim);
  const auto out = arguments.find("--out");
  if (out) save(project, chosen, claim, answer, *out);
  if (arguments.has("--json")) {
    std::cout << claimJson(project, claim, answer) << "\n";
  } else {
    std::cout << claimText(project, claim, answer) << assumptionsText(project.assumptions) << "  "
              << study::claimBasis() << "\n"
              << (out ? "wrote " + *out + "\n" : "");
  }
  return answer.supported ? kDone : kBeyond;
}

int answerAll(const files::Project& project, const ChosenPose& chosen, const Arguments& arguments) {
  if (project.claims.empty())
    throw BadInput("the project holds no claims; name one, such as --head-height-m 8.5 (zygapose help claim)");
  if (arguments.has("--out")) throw BadInput("--out goes with one claim, whose pose is written");
  bool all = true;
  std::vector<std::string> jsons;
  std::string text;
  for (const study::Claim& claim : project.claims) {
    const auto answer = answerOf(project, chosen.pose, claim);
    all = all && answer.supported;
    jsons.push_back(claimJson(project, claim, answer));
    text += claimText(project, claim, answer);
  }
  if (arguments.has("--json"))
    std::cout << files::onLines({files::member("claims", files::list(jsons))}, "", '{', '}') << "\n";
  else
    std::cout << text << assumptionsText(project.assumptions) << "  " << study::claimBasis() << "\n";
  return all ? kDone : kBeyond;
}

int claim(const VerbSpec&, const Arguments& arguments) {
  const auto given = claimFrom(arguments);
  auto project = files::readProject(arguments.file);
  project.assumptions = assumptionsFrom(arguments, project.assumptions);
  const auto chosen = choosePose(project, arguments);
  return given ? answerOne(project, chosen, *given, arguments) : answerAll(project, chosen, arguments);
}

std::vector<OptionSpec> options() {
  std::vector<OptionSpec> all = claimOptions();
  all.push_back({"--pose", "NAME", "takes trunk and limbs from a named pose"});
  all.push_back({"--out", "FILE2.zyga", "writes the project with the pose that shows it, and the claim in its list"});
  all.push_back({"--json", "", "the answer for machines"});
  return withAssumptionOptions(std::move(all));
}

}  // namespace

Verb claimVerb() {
  return {
      {"claim", "FILE.zyga", "tells whether the bones support a claim, what stops it and what it would take", options(),
       "Without a claim those of the project are answered. Trunk, limbs and feet stay as posed; neck, head and tail "
       "bend\n"
       "up and down only, each joint inside its range. Heights are the snout's. The answer has the most that is\n"
       "supported, the joints that stop it, worst first, the least overlap and the cartilage in the neck (or tail) at\n"
       "which the answer changes with everything else as it is, and how many joints are near their edge in the pose "
       "that\n"
       "shows it. With --out an unsupported claim writes the nearest pose; with --pose it also replaces the named "
       "one.\n"
       "Exit 1: not supported, with several claims any of them.\n"},
      claim};
}

}  // namespace zyga::app
