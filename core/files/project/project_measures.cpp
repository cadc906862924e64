#include "core/files/project/project_measures.h"

#include "core/anatomy/plan/build_specimen.h"

namespace zyga::files {

study::Measures measuresOf(const Project& project) {
  return {std::make_shared<const anatomy::MeasurementTable>(project.table),
          [scans = recordsOf(project.scans)](const anatomy::MeasurementTable& table) {
            return anatomy::withScans(anatomy::buildSpecimen(table), scans);
          }};
}

}  // namespace zyga::files
