#pragma once

#include "core/anatomy/marks/mark_plan.h"
#include "core/files/project/project_scan.h"
#include "core/files/scan/scan_set.h"
#include "core/solid/facets/suggest_column.h"

namespace zyga::app {

/// What became of a set of scans.
struct ScansBroughtIn {
  files::ScanSet set;
  std::vector<files::ProjectScan> scans;                 ///< beside the bones of the set, with the marks that they got
  anatomy::FacetTable facetsGiven;                       ///< the table of facets
  std::vector<anatomy::Scan> given;                      ///< the same with the marks of tables alone
  std::vector<std::vector<anatomy::WantedMark>> wanted;  ///< what can be marked on each
  std::optional<solid::ColumnSuggestion> found;          ///< where suggestions were asked for
  std::vector<std::string> warnings;                     ///< said already
  std::vector<std::string> lacking;                      ///< what joints still lack, said already
};

/// For people: what each file is, what was put right on it, what was suggested and what not.
void printScans(const ScansBroughtIn& scans);

/// For machines, see the help of the verb.
std::string scansJson(const ScansBroughtIn& scans, const std::string& out);

}  // namespace zyga::app
