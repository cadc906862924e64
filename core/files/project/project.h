#pragma once

#include <filesystem>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/anatomy/note.h"
#include "core/anatomy/tables/measurement_table.h"
#include "core/files/disk/file_error.h"
#include "core/files/project/project_scan.h"
#include "core/files/project/project_scan_files.h"
#include "core/files/project/sheet.h"
#include "core/kinematics/pose.h"
#include "core/range/assumptions.h"
#include "core/range/scenario.h"
#include "core/solid/flesh/guide_thickness.h"
#include "core/study/claims/claim.h"
#include "core/study/ground/trackway.h"
#include "core/study/mass/densities.h"

namespace zyga::files {

struct NamedPose {
  std::string name;
  kinematics::Pose pose;
  bool operator==(const NamedPose&) const = default;
};

/// Everything a project file holds. The specimen is built from the filled table and the scans, and is not stored on its
/// own.
struct Project {
  anatomy::MeasurementTable table;  ///< filled; each cell knows where it comes from
  std::vector<ProjectScan> scans;   ///< real bones in the place of sculpted ones
  /// specimenOf(table, scans); shared with every scenario of it.
  std::shared_ptr<const anatomy::Specimen> sharedSpecimen = std::make_shared<const anatomy::Specimen>();
  range::Assumptions assumptions;
  kinematics::Pose pose;  ///< the present pose
  std::vector<NamedPose> poses;
  study::Trackway trackway;                       ///< footprints on the ground; may have none
  study::Densities densities;                     ///< of the parts of the body, for its mass and balance
  std::vector<study::Claim> claims;               ///< statements put to the bones, in the order of the list
  std::vector<anatomy::Note> notes;               ///< pinned to bones
  Sheet sheet;                                    ///< as it was last set up
  solid::GuideThickness guide;                    ///< of the body guide that is exported to sculpt on
  std::vector<anatomy::JointIndex> lockedJoints;  ///< stay as they are in a drag; in joint order

  const anatomy::Specimen& specimen() const { return *sharedSpecimen; }
  void setSpecimen(anatomy::Specimen made) {
    sharedSpecimen = std::make_shared<const anatomy::Specimen>(std::move(made));
  }
};

/// The project's animal under its assumptions in its present pose, or another one.
range::Scenario scenarioOf(const Project& project, std::shared_ptr<const range::ContactModel> contact = nullptr);
range::Scenario scenarioOf(const Project& project, const kinematics::Pose& pose,
                           std::shared_ptr<const range::ContactModel> contact = nullptr);

/// buildSpecimen(table) with the scanned bones in it. Throws as buildSpecimen and withScans do.
anatomy::Specimen specimenOf(const anatomy::MeasurementTable& table, const std::vector<ProjectScan>& scans);

/// Newest schema this program writes.
inline constexpr int kProjectVersion = 1;

/// How a project is kept: as its text with the meshes of scans in a folder beside it, or all in one container, which
/// holds the text as `project.json` and the meshes as in the folder. A container is known by its bytes, whatever its
/// name is.
enum class ProjectForm { Beside, OneFile };
inline constexpr std::string_view kOneFileEnding = ".zygazip", kProjectEntry = "project.json";
/// How the project that lies at a path is kept; of one that is not there yet, what its ending says.
ProjectForm formFor(const std::filesystem::path& path);

/// Reads a project of either form and the meshes of its scans; a mesh that cannot be used is told in its ProjectScan,
/// and the bone that stands in for it is not said to be found. Throws FileError: not there, not JSON (with line and
/// column), a newer version, an unknown bone or joint, a wrong type (with the path inside the document), a container
/// that is damaged or not to be trusted.
Project readProject(const std::filesystem::path& path);
/// The project in a container, as readProject; `name` is what errors call it.
Project readProject(const Container& container, const std::filesystem::path& name);
/// As readProject from text, without the meshes of scans; `name` is what errors call the file.
Project parseProject(std::string_view text, std::string_view name);

/// The text of the file: keys in fixed order, one bone a line, mm and degrees.
std::string writeProjectText(const Project& project);
/// Saves atomically: the old file stays whole until the new one is complete; meshes of scans that are not yet beside it
/// are written first. No folder is made but the one of the scans. Throws FileError.
ScansSaved saveProject(const Project& project, const std::filesystem::path& path, ProjectForm form);
/// In the form of the file that lies there, or that its ending says.
ScansSaved saveProject(const Project& project, const std::filesystem::path& path);
/// Looks for meshes of scans that could not be read beside another project that had them, or in it. True when it found
/// any.
bool takeScansOf(Project& project, const std::filesystem::path& other);

/// A project with the table's bones in a standing pose and the cartilage of a grown sauropod (range::kGrownCartilage),
/// from a measured table. Used by `make` and by the window.
Project projectFromTable(const anatomy::MeasurementTable& measured);
/// The table of a project after an edit: what was filled in is forgotten and filled anew from the measured cells, to a
/// micrometre and a millionth of a degree as projectFromTable has it, so that bones that an edit does not touch stay as
/// they are to the last digit.
anatomy::MeasurementTable filledAnew(anatomy::MeasurementTable table);
/// The project's animal in its neutral standing pose under its assumptions, which is named "neutral standing"; for an
/// animal whose bones have changed since it was made.
void standAnew(Project& project);

}  // namespace zyga::files
