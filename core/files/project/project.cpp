#include "core/files/project/project.h"

#include <cmath>
#include <numbers>
#include <utility>

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/standing.h"
#include "core/range/neutral.h"
#include "core/range/presets.h"

namespace zyga::files {
namespace {

double toStep(double value) { return std::round(value * 1e6) / 1e6; }

/// A filled blank is a guess: a micrometre and a millionth of a degree are more than it knows, and keep the file short.
double rounded(double value, anatomy::Measure measure) {
  using std::numbers::pi;
  return anatomy::isAngle(measure) ? toStep(value * 180 / pi) * pi / 180 : toStep(value);
}

anatomy::MeasurementTable withRoundedBlanks(anatomy::MeasurementTable table) {
  for (auto& row : table.rows) {
    for (int i = 0; i < anatomy::kMeasureCount; ++i) {
      const auto measure = static_cast<anatomy::Measure>(i);
      auto& cell = row.measures[measure];
      if (cell.known() && !cell.measured()) cell.value = rounded(cell.value, measure);
    }
  }
  return table;
}

kinematics::Pose standingPose(const anatomy::Specimen& specimen, const range::Assumptions& assumptions) {
  auto pose = kinematics::Pose::neutral(specimen);
  for (const auto& [id, angles] : anatomy::standingAngles(specimen)) {
    if (const auto joint = specimen.findJoint(id)) pose[*joint] = angles;
  }
  return kinematics::stand(specimen, range::articulate(specimen, assumptions), pose);
}

}  // namespace

Project projectFromTable(const anatomy::MeasurementTable& measured) {
  Project project;
  project.assumptions = range::grownAnimal();
  project.table = withRoundedBlanks(anatomy::fillBlanks(measured));
  project.setSpecimen(anatomy::buildSpecimen(project.table));
  standAnew(project);
  return project;
}

void standAnew(Project& project) {
  constexpr const char* kStanding = "neutral standing";
  project.pose = standingPose(project.specimen(), project.assumptions);
  std::erase_if(project.poses, [](const NamedPose& pose) { return pose.name == kStanding; });
  project.poses.push_back({kStanding, project.pose});
}

anatomy::MeasurementTable filledAnew(anatomy::MeasurementTable table) {
  return withRoundedBlanks(anatomy::fillAnew(std::move(table)));
}

range::Scenario scenarioOf(const Project& project, std::shared_ptr<const range::ContactModel> contact) {
  return scenarioOf(project, project.pose, std::move(contact));
}

range::Scenario scenarioOf(const Project& project, const kinematics::Pose& pose,
                           std::shared_ptr<const range::ContactModel> contact) {
  return {project.sharedSpecimen, project.assumptions, pose, std::move(contact)};
}

}  // namespace zyga::files
