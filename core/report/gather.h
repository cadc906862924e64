#pragma once

#include <atomic>
#include <functional>
#include <optional>
#include <string>

#include "core/files/project/project.h"
#include "core/report/report.h"
#include "core/study/reach/envelope.h"
#include "core/study/reach/range_chart.h"
#include "core/study/stress/pressure.h"

namespace zyga::report {

struct Options {
  bool studies = true;      ///< heights, reach, ranges and pressure; some seconds
  bool claimsOnly = false;  ///< nothing but the claims with their assumptions: one page
  std::function<void(double share)> progress = {};
  const std::atomic<bool>* cancel = nullptr;
};

/// A report and the studies behind its figures.
struct Gathered {
  Report report;
  std::optional<study::Elevation> elevation;
  std::optional<study::Envelope> envelope;
  std::optional<study::RangeChart> ranges;
  std::optional<study::Pressure> pressure;
};

/// Everything the project tells about a pose under its assumptions. The same project gives the same report to the byte:
/// there is no clock in it. Nothing when cancelled.
std::optional<Gathered> gather(const files::Project& project, const std::string& poseName, const kinematics::Pose& pose,
                               const Options& options = {});

}  // namespace zyga::report
