#pragma once

#include "core/anatomy/plan/build_specimen.h"
#include "core/kinematics/standing.h"

namespace zyga::kinematics {

/// An animal from blanks on its four feet, centra parallel and without cartilage.
struct StandingAnimal {
  anatomy::Specimen s;
  Articulation rest;
  Pose pose;

  explicit StandingAnimal(anatomy::BodyPlan plan = anatomy::BodyPlan::HighBrowser) {
    anatomy::MeasurementTable table;
    table.plan = plan;
    if (plan == anatomy::BodyPlan::LowBrowser) table.counts = {15, 10, 5, 80};
    s = anatomy::buildSpecimen(anatomy::fillBlanks(table));
    rest = restArticulation(s);
    pose = Pose::neutral(s);
    for (const auto& [id, angles] : anatomy::standingAngles(s)) pose[*s.findJoint(id)] = angles;
    pose = stand(s, rest, pose);
  }

  JointIndex joint(const std::string& id) const { return *s.findJoint(id); }
};

}  // namespace zyga::kinematics
