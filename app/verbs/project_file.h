#pragma once

#include "app/arguments/arguments.h"
#include "core/files/project/project.h"
#include "core/range/findings.h"

namespace zyga::app {

/// Reads a project of either form. What is amiss with its scans is told on stderr. Throws as files::readProject.
files::Project openProject(const std::string& file);
/// Saves a project, as one file or with its scans beside it, as the ending of its name says (files::formFor). Returns
/// what is to be told: "wrote rex.zyga", and in further lines where its scans are. For machines nothing is returned;
/// where the scans are goes to stderr.
std::string saveProject(const files::Project& project, const std::string& out, bool forMachines = false);

/// A pose of a project and what it is called there.
struct ChosenPose {
  std::string name;                  ///< "present pose" for the one that is not named
  std::optional<std::size_t> index;  ///< into Project::poses; none for the present pose
  kinematics::Pose pose;
};

/// The pose `--pose` names, or the present one. Throws BadInput listing the names there are.
ChosenPose choosePose(const files::Project& project, const Arguments& arguments);

/// What follows the last dot of a file's name; empty without one.
std::string endingOf(const std::string& file);

kinematics::Articulation articulationOf(const files::Project& project);
range::Assessment assessmentOf(const files::Project& project, const kinematics::Pose& pose);

}  // namespace zyga::app
