#pragma once

#include <optional>
#include <string>

#include "app/verbs/project_file.h"
#include "core/study/mass/balance.h"

namespace zyga::app {

/// Mass from a project's own circumferences, and whether they were measured.
struct Equation {
  study::MassRange mass;
  bool measured = false;
};

/// Nothing when the specimen has no circumferences.
std::optional<Equation> equationOf(const files::Project& project);

/// What the verb mass has found about a project.
struct MassReport {
  const files::Project& project;
  const ChosenPose& pose;
  study::Densities densities;
  std::optional<Equation> equation;
  study::Balance balance;
};

std::string equationText(const study::MassRange& mass);
std::string equationJson(const study::MassRange& mass);
std::string massText(const MassReport& report);
std::string massJson(const MassReport& report);

}  // namespace zyga::app
