#include "core/range/limits.h"

#include <iostream>
#include <numbers>

#include "app/verbs/assumption_options.h"
#include "app/verbs/contact_shapes.h"
#include "app/verbs/joint_names.h"
#include "app/verbs/limits_report.h"
#include "app/verbs/project_file.h"
#include "app/verbs/verbs.h"
#include "core/range/neutral.h"

namespace zyga::app {
namespace {

using anatomy::JointIndex;

/// Those that were named, else every joint of the column that moves.
std::vector<JointIndex> jointsAsked(const anatomy::Specimen& specimen, const Arguments& arguments) {
  std::vector<JointIndex> joints;
  for (const auto& option : arguments.options) {
    if (option.name == "--joint") joints.push_back(movableJoint(specimen, option.value));
  }
  for (std::size_t j = 0; !arguments.has("--joint") && j < specimen.joints.size(); ++j) {
    const anatomy::Joint& joint = specimen.joints[j];
    const bool column = joint.region <= anatomy::Region::Caudal && joint.id != "jaw";
    if (column && joint.kind != anatomy::JointKind::Fixed) joints.push_back({j});
  }
  return joints;
}

int limits(const VerbSpec&, const Arguments& arguments) {
  const auto project = files::readProject(arguments.file);
  const auto& specimen = project.specimen;
  const bool fromPose = arguments.has("--from-pose") || arguments.has("--pose");
  const auto chosen = choosePose(project, arguments);
  LimitsReport report{
      project, assumptionsFrom(arguments, project.assumptions), fromPose ? chosen.name : "neutral", false, {}, {}};
  std::optional<range::ContactModel> shapes;
  if (arguments.has("--contact")) shapes = contactShapes(project);
  const range::NeighbourContact* contact = shapes ? &*shapes : nullptr;
  report.contactJudged = contact != nullptr;
  const auto articulation = range::articulate(specimen, report.assumptions);
  for (const JointIndex joint : jointsAsked(specimen, arguments)) {
    const Eigen::Vector3d start = fromPose ? chosen.pose[joint] : Eigen::Vector3d::Zero();
    report.joints.push_back(range::limits(specimen, articulation, report.assumptions, joint, start, contact));
  }
  if (!arguments.has("--joint")) {
    report.extremes = study::extremes(specimen, articulation, report.assumptions, chosen.pose, contact);
  }
  std::cout << (arguments.has("--json") ? limitsJson(report) : limitsText(report));
  return kDone;
}

}  // namespace

double degreesTowards(const range::JointLimits& limits, range::Direction direction) {
  return range::signOf(direction) * limits[direction].angle * 180 / std::numbers::pi;
}

Verb limitsVerb() {
  return {
      {"limits", "FILE.zyga", "tells how far each joint goes and what stops it",
       withAssumptionOptions({{"--joint", "ID", "one joint instead of the whole column; may be given again"},
                              {"--from-pose", "", "other motions as in the present pose instead of neutral"},
                              {"--pose", "NAME", "the same with a named pose"},
                              {"--contact", "", "neighbouring bones stop each other too; sculpts them first"},
                              {"--json", "", "for machines"}}),
       "Each limit is measured from neutral in the direction it is named after, in degrees; one motion moves while\n"
       "the other two stay. Torsion left lifts the left side. Neck and tail at their extremes take every joint to\n"
       "its own limit from neutral, the rest of the animal as it stands.\n"},
      limits};
}

}  // namespace zyga::app
