#pragma once

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/marks/straighten.h"
#include "core/files/project/carried_scans.h"
#include "core/files/project/project_scan.h"
#include "core/files/scan/scan_set.h"
#include "core/solid/facets/mark_fit.h"
#include "core/solid/facets/missing_parts.h"
#include "core/solid/facets/suggest_column.h"

namespace zyga::app {

/// What is to be remarked on a scan and its marks.
struct ScanRemarks {
  std::vector<anatomy::MarkDoubt> doubts;
  std::optional<solid::OneSidedness> sides;
  std::optional<anatomy::AdvisedStraightening> advised;  ///< none where pairs do not tell
};

/// What became of a set of scans.
struct ScansBroughtIn {
  files::ScanSet set;
  std::vector<files::ProjectScan> scans;                 ///< beside the bones of the set, with the marks that they got
  anatomy::FacetTable facetsGiven;                       ///< the table of facets
  std::vector<anatomy::Scan> given;                      ///< the same with the marks of tables alone
  std::vector<std::vector<anatomy::WantedMark>> wanted;  ///< what can be marked on each
  std::optional<solid::ColumnSuggestion> found;          ///< where suggestions were asked for
  std::vector<files::CarriedTo> carried;                 ///< marks carried over from other bones
  std::vector<std::string> warnings;                     ///< said already
  std::vector<std::string> lacking;                      ///< what joints still lack, said already
  std::vector<ScanRemarks> remarks;                      ///< beside the bones
};

/// For people: what each file is, what was put right on it, what was suggested and what not.
void printScans(const ScansBroughtIn& scans);

/// For machines, see the help of the verb.
std::string scansJson(const ScansBroughtIn& scans, const std::string& out);

}  // namespace zyga::app
