#include "core/files/project/scan_animal.h"

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/marks/scan_measures.h"
#include "core/anatomy/plan/build_specimen.h"
#include "core/files/scan/scan_faults.h"

namespace zyga::files {
namespace {

/// Marks found on the vertebrae, which lie in articulation in one frame.
solid::ColumnSuggestion markScans(std::vector<ProjectScan>& scans, const anatomy::Specimen& sculpted,
                                  const task::Task& task) {
  std::vector<solid::ColumnBone> column;
  std::vector<std::size_t> places;
  for (std::size_t i = 0; i < scans.size(); ++i) {
    if (!anatomy::isVertebra(scans[i].scan.bone.kind)) continue;
    column.push_back({scans[i].scan.bone, scans[i].mesh.get()});
    places.push_back(i);
  }
  auto found = solid::suggestColumn(column, sculpted, task);
  if (task.cancelled()) return found;
  for (std::size_t k = 0; k < places.size(); ++k) {
    anatomy::Scan& scan = scans[places[k]].scan;
    takeOver(scan, sculpted[*sculpted.findBone(toId(scan.bone))], found.marks[k]);
  }
  return found;
}

}  // namespace

void measureByScans(Project& project) {
  for (const ProjectScan& scan : project.scans)
    project.table = withMeasures(std::move(project.table), scan.scan, anatomy::measuresOf(scan.scan));
  project.table = fillAnew(std::move(project.table));
  project.setSpecimen(specimenOf(project.table, project.scans));
}

std::vector<ShownCartilage> settleAnimal(Project& project, std::span<const solid::FoundJoint> joints) {
  measureByScans(project);
  auto shown = shownCartilage(project.specimen(), joints);
  assume(project.assumptions, shown);
  standAnew(project);
  return shown;
}

std::optional<ScanAnimal> animalOfScans(const ScanSetWish& wish, anatomy::BodyPlan plan, const std::string& name,
                                        const ScanReader& reader) {
  constexpr double kRead = 0.4, kMarked = 0.95;  // shares of the work
  ScanReader reading = reader;
  reading.task = reader.task.part(0, kRead);
  auto set = readScanSet(wish, plan, reading);
  if (!set) return std::nullopt;
  if (set->bones.empty()) throw FileError(fault::kNoBoneAmongScans);
  ScanAnimal made;
  made.set = std::move(*set);
  made.set.table->name = name;
  made.project = projectFromTable(*made.set.table);
  const anatomy::Specimen sculpted = anatomy::buildSpecimen(made.project.table);
  for (const ScanOfSet& of : made.set.bones)
    made.project.scans.push_back(
        projectScan(of.clean, sculpted[*sculpted.findBone(toId(of.bone.name))], of.unit, of.file));
  made.found = markScans(made.project.scans, sculpted, reader.task.part(kRead, kMarked));
  if (reader.task.cancelled()) return std::nullopt;
  made.cartilage = settleAnimal(made.project, made.found.joints);
  return made;
}

}  // namespace zyga::files
