#include "core/anatomy/marks/suggested_marks.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/anatomy/marks/mark_plan.h"
#include "core/anatomy/tables/table_fields.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

// Program defaults, no source.
constexpr double kFarOff = 0.5;    ///< of the box's diagonal
constexpr double kOneSpot = 0.02;  ///< of the box's diagonal
constexpr double kNearly = 0.1;    ///< of the box's diagonal, by which fitting marks may lie beside it

struct NamedPlace {
  std::string name;
  Vector3d p;
};

std::vector<NamedPlace> placesOf(const BoneName& bone, const LandmarkTable& landmarks, const FacetTable& facets) {
  std::vector<NamedPlace> out;
  if (const auto found = landmarks.points.find(bone); found != landmarks.points.end())
    for (const auto& [name, p] : found->second) out.push_back({name, p});
  if (const auto found = facets.facets.find(bone); found != facets.facets.end())
    for (const auto& [role, tabled] : found->second) out.push_back({std::string(toText(role)), tabled.facet.centre});
  return out;
}

bool sameFacet(const Facet& a, const Facet& b) {
  return a.role == b.role && a.centre == b.centre && a.normal == b.normal;
}

}  // namespace

const SuggestedMarks::Landmark* SuggestedMarks::landmark(std::string_view name) const {
  const auto found = std::find_if(landmarks.begin(), landmarks.end(), [&](const auto& l) { return l.name == name; });
  return found == landmarks.end() ? nullptr : &*found;
}

const SuggestedMarks::MarkedFacet* SuggestedMarks::facet(FacetRole role) const {
  const auto found =
      std::find_if(facets.begin(), facets.end(), [&](const auto& f) { return f.marked.facet.role == role; });
  return found == facets.end() ? nullptr : &*found;
}

void takeOver(Scan& scan, const Bone& sculpted, const SuggestedMarks& suggested, double leastConfidence) {
  const auto before = scan.landmarks;
  for (const auto& [name, p, confidence] : suggested.landmarks) {
    if (confidence < leastConfidence || before.contains(name)) continue;
    setLandmark(scan, sculpted, name, p);
    scan.suggested[name] = confidence;
  }
  const auto marked = scan.facets;
  for (const auto& facet : suggested.facets) {
    const FacetRole role = facet.marked.facet.role;
    const bool there =
        std::any_of(marked.begin(), marked.end(), [role](const ScanFacet& f) { return f.facet.role == role; });
    if (facet.confidence < leastConfidence || there || !sculpted.facet(scan.mirror ? mirrored(role) : role)) continue;
    setFacetAsGiven(scan, sculpted, facet.marked);
    scan.suggested[std::string(toText(role))] = facet.confidence;
  }
}

void putMarks(Scan& scan, const Bone& sculpted, const LandmarkTable& landmarks, const FacetTable& facets) {
  if (const auto found = landmarks.points.find(scan.bone); found != landmarks.points.end())
    for (const auto& [name, p] : found->second) setLandmark(scan, sculpted, name, p);
  const auto found = facets.facets.find(scan.bone);
  if (found == facets.facets.end()) return;
  for (const auto& [role, tabled] : found->second) {
    const ScanFacet facet{tabled.facet, tabled.residual};
    if (tabled.slideGiven)
      setFacetAsGiven(scan, sculpted, facet);
    else
      setFacet(scan, sculpted, facet);
  }
}

LandmarkTable landmarkTableOf(std::span<const Scan> scans) {
  LandmarkTable out;
  for (const Scan& scan : scans)
    for (const auto& [name, p] : scan.landmarks) {
      const bool follows =
          name == "canal" && scan.landmarks.contains(kCanalCranial) && scan.landmarks.contains(kCanalCaudal);
      if (!follows) out.points[scan.bone][name] = p;
    }
  return out;
}

FacetTable facetTableOf(std::span<const Scan> scans, std::span<const SuggestedMarks> suggested,
                        const FacetTable& given) {
  FacetTable out;
  for (const Scan& scan : scans)
    for (const ScanFacet& marked : scan.facets) {
      TabledFacet tabled{marked.facet, true, marked.residual, {}};
      if (const auto bone = given.facets.find(scan.bone); bone != given.facets.end())
        if (const auto known = bone->second.find(marked.facet.role);
            known != bone->second.end() && sameFacet(known->second.facet, marked.facet))
          tabled.confidence = known->second.confidence;
      for (const SuggestedMarks& of : suggested) {
        const auto* known = of.bone == scan.bone ? of.facet(marked.facet.role) : nullptr;
        if (known && sameFacet(known->marked.facet, marked.facet)) tabled.confidence = known->confidence;
      }
      out.facets[scan.bone][marked.facet.role] = tabled;
    }
  return out;
}

std::optional<MisfitMarks> misfit(const Eigen::AlignedBox3d& box, const BoneName& bone, const LandmarkTable& landmarks,
                                  const FacetTable& facets) {
  const auto places = placesOf(bone, landmarks, facets);
  if (box.isEmpty() || places.empty()) return std::nullopt;
  const double diagonal = box.diagonal().norm();
  Eigen::AlignedBox3d around;
  MisfitMarks out;
  for (const auto& [name, p] : places) {
    around.extend(p);
    const double off = box.exteriorDistance(p);
    if (off <= kFarOff * diagonal || off <= out.off) continue;
    out = {name, off, 0};
  }
  const bool oneSpot = places.size() >= 3 && around.diagonal().norm() < kOneSpot * diagonal;
  if (out.off == 0 && !oneSpot) return std::nullopt;
  if (out.mark.empty()) out.mark = places.front().name;
  for (const double factor : {1e-3, 1e-2, 1e-1, 1e1, 1e2, 1e3}) {
    const auto fits = [&](const NamedPlace& place) {
      return box.exteriorDistance(Vector3d(factor * place.p)) <= kNearly * diagonal;
    };
    const bool spread = places.size() < 3 || factor * around.diagonal().norm() >= kOneSpot * diagonal;
    if (spread && std::all_of(places.begin(), places.end(), fits)) out.factor = factor;
  }
  return out;
}

reason::Reason reasonOf(const BoneName& bone, const MisfitMarks& misfit) {
  const reason::Value id = reason::text(toId(bone)), factor = reason::text(shareText(misfit.factor));
  if (misfit.off == 0)
    return misfit.factor > 0 ? reason::Reason{marks::kInOneSpotFits, {id, factor}}
                             : reason::Reason{marks::kInOneSpot, {id}};
  const reason::Value off = reason::Quantity{misfit.off, reason::Unit::Distance}, mark = reason::text(misfit.mark);
  return misfit.factor > 0 ? reason::Reason{marks::kBesideFits, {id, mark, off, factor}}
                           : reason::Reason{marks::kBeside, {id, mark, off}};
}

std::vector<MetAt> jointsAmong(const Specimen& specimen, std::span<const BoneName> bones) {
  const auto placeOf = [&](const Bone& bone) {
    return static_cast<std::size_t>(std::find(bones.begin(), bones.end(), bone.name) - bones.begin());
  };
  std::vector<MetAt> out;
  for (std::size_t j = 0; j < specimen.joints.size(); ++j) {
    const JointIndex joint{j};
    if (!specimen[joint].hasFacets()) continue;
    const std::size_t cranial = placeOf(specimen[specimen.cranialBone(joint)]),
                      caudal = placeOf(specimen[specimen.caudalBone(joint)]);
    if (cranial < bones.size() && caudal < bones.size()) out.push_back({joint, cranial, caudal});
  }
  return out;
}

}  // namespace zyga::anatomy
