#pragma once

#include <string>
#include <vector>

#include "core/files/json/json_write.h"
#include "core/study/run.h"

/// Studies as JSON, for the batch verb and for reports: m, m2, m3, degrees, mmHg, kg, N, N m, Pa, rounded to a
/// millionth, keys in fixed order. Each is one object; what it was asked of (specimen, assumptions) the caller puts
/// around it.
namespace zyga::files {

/// What is said of a study for people (ui/words), UTF-8.
struct StudyTold {
  std::vector<std::string> sentences;
  std::vector<std::string> views;  ///< of pressure and joint stress alone
  std::string caution;             ///< likewise
};

json::Value studyJson(const study::StudyResult& result, const StudyTold& told);

}  // namespace zyga::files
