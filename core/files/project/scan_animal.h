#pragma once

#include "core/files/project/project.h"
#include "core/files/project/scan_cartilage.h"
#include "core/files/scan/scan_set.h"

namespace zyga::files {

/// The measures of every scan go into the table as measured cells, so that what is blank around them follows; the
/// specimen is built anew with the scans. Throws reason::Failure as specimenOf does.
void measureByScans(Project& project);

/// An animal of the scans' own: measureByScans, the cartilage that the joints found show, and its standing pose.
std::vector<ShownCartilage> settleAnimal(Project& project, std::span<const solid::FoundJoint> joints);

/// An animal that scans make on their own, with what was found on the way.
struct ScanAnimal {
  Project project;
  ScanSet set;                    ///< its bones' meshes have gone into the project
  solid::ColumnSuggestion found;  ///< beside the vertebrae among the bones of the set
  std::vector<ShownCartilage> cartilage;
};

/// Reads the scans, finds landmarks and facets on them and makes an animal of the plan that has their measures and
/// their cartilage. Empty when cancelled. Throws FileError as readScanSet does, and where none of the files is a bone
/// of the plan; reason::Failure where no animal can be built.
std::optional<ScanAnimal> animalOfScans(const ScanSetWish& wish, anatomy::BodyPlan plan, const std::string& name,
                                        const ScanReader& reader);

}  // namespace zyga::files
