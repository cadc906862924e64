#include "core/files/project/carried_scans.h"

#include <algorithm>

#include "core/anatomy/marks/mark_doubts.h"
#include "core/task/parallel.h"

namespace zyga::files {
namespace {

/// What is marked on a scan, each as sure as it was suggested; what a person marked is sure.
anatomy::SuggestedMarks marksOn(const anatomy::Scan& scan) {
  const auto sure = [&](std::string_view mark) {
    const auto found = scan.suggested.find(mark);
    return found == scan.suggested.end() ? 1.0 : found->second;
  };
  anatomy::SuggestedMarks marks;
  marks.bone = scan.bone;
  for (const auto& [name, place] : scan.landmarks) marks.landmarks.push_back({name, place, sure(name)});
  for (const anatomy::ScanFacet& facet : scan.facets)
    marks.facets.push_back({facet, 0, sure(anatomy::toText(facet.facet.role))});
  return marks;
}

bool asFound(const anatomy::Scan& scan) { return !scan.mirror && scan.straighten.isIdentity(); }

bool lacksMarks(const anatomy::Scan& scan, const anatomy::Bone& sculpted) {
  const auto wanted = anatomy::marksFor(sculpted);
  return std::any_of(wanted.begin(), wanted.end(),
                     [&](const anatomy::WantedMark& mark) { return mark.required && !anatomy::placeOf(scan, mark); });
}

}  // namespace

std::vector<CarriedTo> carryMissing(std::vector<ProjectScan>& scans, const anatomy::Specimen& sculpted,
                                    const task::Task& task) {
  std::vector<solid::MarkedMesh> marked;
  std::vector<std::size_t> open;
  for (std::size_t i = 0; i < scans.size(); ++i) {
    const anatomy::Scan& scan = scans[i].scan;
    const auto bone = sculpted.findBone(toId(scan.bone));
    if (!scans[i].mesh || !bone || !anatomy::isVertebra(scan.bone.kind) || !asFound(scan)) continue;
    if (!scan.facets.empty()) marked.push_back({scans[i].mesh.get(), marksOn(scan)});
    if (lacksMarks(scan, sculpted[*bone])) open.push_back(i);
  }
  std::vector<std::optional<CarriedTo>> done(open.size());
  std::vector<anatomy::SuggestedMarks> marks(open.size());
  task::forEach(open.size(), task, [&](std::size_t k) {
    const ProjectScan& scan = scans[open[k]];
    const auto from = solid::nearestMarked(scan.scan.bone, marked);
    if (!from) return;
    solid::CarriedMarks carried = solid::carryMarks(marked[*from], scan.scan.bone, *scan.mesh);
    done[k] = CarriedTo{scan.scan.bone, marked[*from].marks.bone, carried.misfit, 0, std::move(carried.marks.leftOut)};
    marks[k] = std::move(carried.marks);
  });
  std::vector<CarriedTo> out;
  for (std::size_t k = 0; k < open.size(); ++k) {
    if (!done[k]) continue;
    anatomy::Scan& scan = scans[open[k]].scan;
    const std::size_t before = scan.suggested.size();
    takeOver(scan, sculpted[*sculpted.findBone(toId(scan.bone))], marks[k]);
    done[k]->marks = scan.suggested.size() - before;
    out.push_back(std::move(*done[k]));
  }
  return out;
}

}  // namespace zyga::files
