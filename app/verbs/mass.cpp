#include <algorithm>
#include <iostream>

#include "app/verbs/mass_report.h"
#include "app/verbs/verbs.h"
#include "core/range/neutral.h"

namespace zyga::app {
namespace {

using study::BodyPart;

/// Metres from an option in mm; nothing when it was not given.
std::optional<double> millimetresOf(const Arguments& arguments, std::string_view name) {
  std::optional<double> value;
  for (const auto& option : arguments.options) {
    if (option.name == name) value = numberOf(option, 1, 5000, "mm") / 1000;
  }
  return value;
}

/// "neck=600"
void setDensity(const GivenOption& option, study::Densities& densities) {
  const auto equals = option.value.find('=');
  std::string word = option.value.substr(0, equals);
  std::replace(word.begin(), word.end(), '_', ' ');
  std::string parts;
  for (const BodyPart part : study::kAllBodyParts) {
    parts += (parts.empty() ? "" : ", ") + std::string(title(part));
    if (word != title(part) || equals == std::string::npos) continue;
    densities[part] = numberOf({option.name + " " + word, option.value.substr(equals + 1)}, study::kLeastDensity,
                               study::kMostDensity, "kg/m3");
    return;
  }
  throw BadInput("--density: '" + option.value + "' is not a part and its density; write neck=600, one of " + parts);
}

int equationAlone(const VerbSpec& spec, const Arguments& arguments) {
  for (const std::string_view name : {"--pose", "--density"}) {
    if (arguments.has(name)) throw BadInput(std::string(name) + " needs a " + std::string(spec.file));
  }
  const auto humerus = millimetresOf(arguments, "--humerus-mm"), femur = millimetresOf(arguments, "--femur-mm");
  if (!humerus || !femur) {
    throw BadInput("give both --humerus-mm and --femur-mm, the least circumferences of the shafts, or a project");
  }
  const auto mass = study::massFromCircumferences(*humerus, *femur);
  std::cout << (arguments.has("--json") ? equationJson(mass) : equationText(mass));
  return kDone;
}

int ofProject(const Arguments& arguments) {
  for (const std::string_view name : {"--humerus-mm", "--femur-mm"}) {
    if (arguments.has(name)) {
      throw BadInput(std::string(name) + " and a project do not go together: the project has its own circumferences");
    }
  }
  const auto project = files::readProject(arguments.file);
  const auto chosen = choosePose(project, arguments);
  auto densities = project.densities;
  for (const auto& option : arguments.options) {
    if (option.name == "--density") setDensity(option, densities);
  }
  const auto articulation = articulationOf(project);
  const auto X_WB = kinematics::place(project.specimen, articulation, chosen.pose);
  const MassReport report{
      project, chosen, densities, equationOf(project),
      study::balanceOf(project.specimen, study::bodySegments(project.specimen, articulation), densities, X_WB)};
  std::cout << (arguments.has("--json") ? massJson(report) : massText(report));
  return kDone;
}

int mass(const VerbSpec& spec, const Arguments& arguments) {
  return arguments.file.empty() ? equationAlone(spec, arguments) : ofProject(arguments);
}

}  // namespace

Verb massVerb() {
  return {
      {"mass",
       "[FILE.zyga]",
       "mass as a range, from two circumferences or from the body's volume, and balance",
       {{"--humerus-mm", "C", "least circumference of the humerus; without a file"},
        {"--femur-mm", "C", "least circumference of the femur; without a file"},
        {"--pose", "NAME", "balance of a named pose"},
        {"--density", "PART=D", "kg/m3 of head, neck, trunk, tail, fore_limbs or hind_limbs; may be repeated"},
        {"--json", "", "prints the figures for machines"}},
       "Every mass is an estimate and given with its low and high. Circumferences: Campione & Evans 2012, mean error\n"
       "25.63 %. Volume: hulls around the bones x 1.21 x density (Sellers et al. 2012), error 20 % (Brassey & Sellers\n"
       "2014). Balance is told of the pose as it stands; this is not an engineering document.\n"},
      mass};
}

}  // namespace zyga::app
