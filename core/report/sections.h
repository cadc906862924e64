#pragma once

#include <vector>

#include "core/files/project/project.h"
#include "core/range/findings.h"
#include "core/report/gather.h"

/// The report's sections, each from the project alone. Private to the report.
namespace zyga::report {

/// What every section looks at.
struct Matter {
  const files::Project& project;
  const std::string& poseName;
  const kinematics::Pose& pose;
  kinematics::Articulation articulation;
  kinematics::Placement X_WB;
  range::Assessment assessment;

  study::Subject subject() const { return {project.specimen, articulation, project.assumptions, pose}; }
};

using Numbers = std::vector<Number>;

Section specimenSection(const Matter& matter, Numbers& numbers);
Section evidenceSection(const Matter& matter, Numbers& numbers);
Section assumptionsSection(const Matter& matter, Numbers& numbers);
Section poseSection(const Matter& matter, Numbers& numbers);
Section findingsSection(const Matter& matter, Numbers& numbers);
Section neckLimitsSection(const Matter& matter, Numbers& numbers);
/// One section for all claims; without claims it says how to add one. Empty heading when cancelled.
Section claimsSection(const Matter& matter, Numbers& numbers, const Options& options);
Section massSection(const Matter& matter, Numbers& numbers);
Section cautionsSection(const Matter& matter);
/// Every joint's angles and verdict.
Section anglesSection(const Matter& matter, Numbers& numbers);

Section elevationSection(const study::Elevation& elevation, Numbers& numbers);
Section envelopeSection(const study::Envelope& envelope, Numbers& numbers);
Section rangesSection(const study::RangeChart& ranges);
Section pressureSection(const study::Pressure& pressure, Numbers& numbers);

}  // namespace zyga::report
