#include "core/anatomy/marks/mark_plan.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/anatomy/condyle.h"
#include "core/anatomy/specimen_reasons.h"

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

constexpr double kFlat = 1e-9;  ///< m, between the tip of a condyle and its rim on a flat face

struct MarkWords {
  std::string_view name;
  reason::Term what, purpose;
};

/// Of names without their side.
constexpr std::array kMarkWords{MarkWords{"diapophysis", {"mark.diapophysis"}, {"mark.for-diapophysis"}},
                                MarkWords{"parapophysis", {"mark.parapophysis"}, {"mark.for-parapophysis"}},
                                MarkWords{"ribTip", {"mark.fused-rib-tip"}, {"mark.for-fused-rib-tip"}},
                                MarkWords{"condyleTip", {"mark.condyle-tip"}, {"mark.for-condyle-tip"}},
                                MarkWords{"tuberculum", {"mark.tuberculum"}, {"mark.for-tuberculum"}},
                                MarkWords{"middle", {"mark.middle"}, {"mark.for-middle"}},
                                MarkWords{"tip", {"mark.tip"}, {"mark.for-tip"}},
                                MarkWords{"snout", {"mark.snout"}, {"mark.for-snout"}},
                                MarkWords{"jawHinge", {"mark.jaw-joint"}, {"mark.for-jaw-joint"}},
                                MarkWords{"eye", {"mark.orbit"}, {"mark.for-skull"}},
                                MarkWords{"nostril", {"mark.external-naris"}, {"mark.for-skull"}},
                                MarkWords{"foramenMagnum", {"mark.foramen-magnum"}, {"mark.for-skull"}},
                                MarkWords{"chin", {"mark.chin"}, {"mark.for-chin"}},
                                MarkWords{"proximal", {"mark.proximal-surface"}, {"mark.for-proximal-surface"}},
                                MarkWords{"distal", {"mark.distal-surface"}, {"mark.for-distal-surface"}},
                                MarkWords{"top", {"mark.proximal-end"}, {"mark.for-end"}},
                                MarkWords{"bottom", {"mark.distal-end"}, {"mark.for-other-end"}},
                                MarkWords{"shaftTop", {"mark.shaft-top"}, {"mark.for-shaft"}},
                                MarkWords{"shaftBottom", {"mark.shaft-bottom"}, {"mark.for-shaft"}},
                                MarkWords{"front", {"mark.blade-front"}, {"mark.for-blade"}},
                                MarkWords{"back", {"mark.blade-back"}, {"mark.for-blade"}},
                                MarkWords{"crest", {"mark.blade-crest"}, {"mark.for-blade"}},
                                MarkWords{"face", {"mark.humeral-face"}, {"mark.for-bone"}},
                                MarkWords{"sole", {"mark.sole"}, {"mark.for-sole"}},
                                MarkWords{"yoke", {"mark.sacral-rib-end"}, {"mark.for-bone"}},
                                MarkWords{"breast", {"mark.chest-mid-line"}, {"mark.for-bone"}}};

/// A landmark to be clicked, or a centre of rotation to be brushed.
WantedMark landmarkMark(std::string_view name, MarkBy by, bool required) {
  WantedMark mark;
  mark.name = name;
  mark.purpose = {"mark.for-bone"};
  mark.by = by;
  mark.required = required;
  if (name.ends_with(".L")) mark.side = Side::Left;
  if (name.ends_with(".R")) mark.side = Side::Right;
  const std::string_view stem = name.substr(0, name.size() - (mark.side == Side::Midline ? 0 : 2));
  for (const MarkWords& known : kMarkWords) {
    if (known.name != stem) continue;
    mark.what = known.what;
    mark.purpose = known.purpose;
  }
  return mark;
}

WantedMark facetMark(FacetRole role) {
  const bool front = isPrezyg(role);
  return {std::string(toText(role)),
          {front ? "mark.prezygapophyseal-facet" : "mark.postzygapophyseal-facet"},
          isLeft(role) ? Side::Left : Side::Right,
          {front ? "mark.for-prezygapophyseal-facet" : "mark.for-postzygapophyseal-facet"},
          MarkBy::Facet,
          true,
          role};
}

/// A mark of a vertebra in its mid-plane that everything else goes by.
WantedMark midMark(std::string_view name, reason::Term what, reason::Term purpose, MarkBy by) {
  return {std::string(name), what, Side::Midline, purpose, by, true, {}};
}

/// Where a vertebra has its condyle: nowhere, in front or behind.
enum class Condyle { None, InFront, Behind };
Condyle condyleOf(const Bone& sculpted) {
  const auto tip = sculpted.landmarks.find("condyleTip"), rim = sculpted.landmarks.find("cranialRim");
  if (tip == sculpted.landmarks.end() || rim == sculpted.landmarks.end()) return Condyle::None;
  if (hasCondyleBehind(sculpted)) return Condyle::Behind;
  return (tip->second - rim->second).norm() < kFlat ? Condyle::None : Condyle::InFront;
}

std::vector<WantedMark> vertebraMarks(const Bone& sculpted) {
  const Condyle condyle = condyleOf(sculpted);
  const MarkBy centre = condyle == Condyle::None ? MarkBy::Ring : MarkBy::Ball;
  const auto word = [&](Condyle own, reason::Term flat, reason::Term ball, reason::Term socket) {
    return condyle == Condyle::None ? flat : condyle == own ? ball : socket;
  };
  constexpr reason::Term base{"mark.condyle-base"}, rim{"mark.cotyle-rim"}, ball{"mark.condyle"}, cup{"mark.cotyle"};
  std::vector<WantedMark> out{midMark("cranialRim", word(Condyle::InFront, {"mark.cranial-face-rim"}, base, rim),
                                      {"mark.for-cranial-rim"}, MarkBy::Ring),
                              midMark("caudalRim", word(Condyle::Behind, {"mark.caudal-face-rim"}, base, rim),
                                      {"mark.for-caudal-rim"}, MarkBy::Ring),
                              midMark(kCanalCranial, {"mark.canal-cranial"}, {"mark.for-canal"}, MarkBy::Ring),
                              midMark(kCanalCaudal, {"mark.canal-caudal"}, {"mark.for-canal"}, MarkBy::Ring),
                              midMark("spineTop", {"mark.spine-top"}, {"mark.for-spine-top"}, MarkBy::Point),
                              midMark("cranial", word(Condyle::InFront, {"mark.cranial-face-middle"}, ball, cup),
                                      {"mark.for-cranial-centre"}, centre),
                              midMark("caudal", word(Condyle::Behind, {"mark.caudal-face-middle"}, ball, cup),
                                      {"mark.for-caudal-centre"}, centre)};
  for (const Facet& facet : sculpted.facets) out.push_back(facetMark(facet.role));
  return out;
}

std::vector<WantedMark> otherMarks(const Bone& sculpted) {
  std::vector<WantedMark> out;
  for (const bool centres : {true, false})
    for (const auto& [name, p] : sculpted.landmarks) {
      const bool isCentre = name == "proximal" || name == "distal";
      if (isCentre != centres) continue;
      out.push_back(landmarkMark(name, isCentre ? MarkBy::Ball : MarkBy::Point, isCentre));
    }
  return out;
}

/// Direction of sliding: the sculpted facet's, taken into the scan and its facet's plane.
void slideAs(const Facet& sculpted, const Scan& scan, Facet& facet) {
  const Vector3d wanted = boneFromScan(scan).linear().inverse() * sculpted.slide;
  const Vector3d flat = wanted - wanted.dot(facet.normal) * facet.normal;
  if (!(flat.norm() > 1e-3 * wanted.norm())) return;
  std::vector<Vector3d> corners;
  for (std::size_t i = 0; i < facet.outline.size(); ++i) corners.push_back(facet.corner(i) - facet.centre);
  facet.slide = flat.normalized();
  const Vector3d across = facet.across();
  for (std::size_t i = 0; i < corners.size(); ++i)
    facet.outline[i] = {corners[i].dot(facet.slide), corners[i].dot(across)};
}

void layAnew(Scan& scan, const Bone& sculpted) {
  const bool lay = scan.placed;
  scan.placed = placeByLandmarks(scan, sculpted);
  if (lay == scan.placed) return;
  for (ScanFacet& marked : scan.facets)
    if (const Facet* known = sculpted.facet(scan.mirror ? mirrored(marked.facet.role) : marked.facet.role))
      slideAs(*known, scan, marked.facet);
}

/// In the place of the one of its role, in the order of the roles.
void putFacet(Scan& scan, const ScanFacet& facet) {
  removeFacet(scan, facet.facet.role);
  scan.facets.push_back(facet);
  std::sort(scan.facets.begin(), scan.facets.end(),
            [](const auto& a, const auto& b) { return a.facet.role < b.facet.role; });
}

std::string partnerOf(const std::string& name) {
  if (name.ends_with(".L")) return name.substr(0, name.size() - 2) + ".R";
  if (name.ends_with(".R")) return name.substr(0, name.size() - 2) + ".L";
  return {};
}

}  // namespace

std::vector<WantedMark> marksFor(const Bone& sculpted) {
  if (!isVertebra(sculpted.name.kind)) return otherMarks(sculpted);
  std::vector<WantedMark> out = vertebraMarks(sculpted);
  for (const auto& [name, p] : sculpted.landmarks) {
    const bool there = name == "canal" ||
                       std::any_of(out.begin(), out.end(), [&name = name](const auto& w) { return w.name == name; });
    if (!there) out.push_back(landmarkMark(name, MarkBy::Point, false));
  }
  return out;
}

void setLandmark(Scan& scan, const Bone& sculpted, const std::string& name, std::optional<Vector3d> p_S) {
  const auto set = [&scan](const std::string& which, const std::optional<Vector3d>& p) {
    scan.fits.erase(which);
    if (p)
      scan.landmarks[which] = *p;
    else
      scan.landmarks.erase(which);
  };
  if (isVertebra(scan.bone.kind) && condyleOf(sculpted) == Condyle::None) {
    for (const auto& [rim, centre] : {std::pair("cranialRim", "cranial"), std::pair("caudalRim", "caudal")}) {
      const auto old = scan.landmarks.find(rim), follower = scan.landmarks.find(centre);
      const bool follows =
          follower == scan.landmarks.end() || (old != scan.landmarks.end() && follower->second == old->second);
      if (name == rim && follows) set(centre, p_S);
    }
  }
  set(name, p_S);
  scan.suggested.erase(name);
  if (name == kCanalCranial || name == kCanalCaudal) {
    const auto front = scan.landmarks.find(kCanalCranial), back = scan.landmarks.find(kCanalCaudal);
    const bool both = front != scan.landmarks.end() && back != scan.landmarks.end();
    set("canal", both ? std::optional<Vector3d>((front->second + back->second) / 2) : std::nullopt);
  }
  layAnew(scan, sculpted);
}

void setLandmark(Scan& scan, const Bone& sculpted, const std::string& name, const Vector3d& p_S, const MarkFit& fit) {
  setLandmark(scan, sculpted, name, p_S);
  scan.fits[name] = fit;
}

const ScanFacet* facetOf(const Scan& scan, FacetRole role) {
  const auto found =
      std::find_if(scan.facets.begin(), scan.facets.end(), [role](const auto& f) { return f.facet.role == role; });
  return found == scan.facets.end() ? nullptr : &*found;
}

void setFacet(Scan& scan, const Bone& sculpted, const ScanFacet& facet) {
  putFacet(scan, facet);
  const FacetRole inBone = scan.mirror ? mirrored(facet.facet.role) : facet.facet.role;
  if (const Facet* known = sculpted.facet(inBone); known && scan.placed)
    for (ScanFacet& kept : scan.facets)
      if (kept.facet.role == facet.facet.role) slideAs(*known, scan, kept.facet);
  layAnew(scan, sculpted);
}

void setFacetAsGiven(Scan& scan, const Bone& sculpted, const ScanFacet& facet) {
  putFacet(scan, facet);
  if (placeByLandmarks(scan, sculpted)) scan.placed = true;
}

void removeFacet(Scan& scan, FacetRole role) {
  std::erase_if(scan.facets, [role](const auto& f) { return f.facet.role == role; });
  scan.suggested.erase(std::string(toText(role)));
}

int mirrorMarks(Scan& scan, const Bone& sculpted, std::string_view only) {
  const reason::Value id = reason::text(toId(scan.bone));
  if (scan.bone.side != Side::Midline) throw reason::Failure({scan::kNoMidPlane, {id}});
  if (!scan.placed) throw reason::Failure({scan::kMidPlaneUnknown, {id}});
  const Eigen::Affine3d map = boneFromScan(scan);
  const Eigen::Affine3d across = map.inverse() * Eigen::Affine3d(Eigen::Vector3d(1, -1, 1).asDiagonal()) * map;
  int made = 0;
  const auto landmarks = scan.landmarks;
  for (const auto& [name, p] : landmarks) {
    const std::string partner = partnerOf(name);
    const bool wanted = only.empty() ? !partner.empty() && !landmarks.contains(partner) : only == name;
    if (partner.empty() || !wanted) continue;
    scan.landmarks[partner] = across * p;
    scan.suggested.erase(partner);
    scan.fits.erase(partner);
    ++made;
  }
  const auto facets = scan.facets;
  for (const ScanFacet& marked : facets) {
    const FacetRole partner = mirrored(marked.facet.role);
    const bool wanted = only.empty() ? !facetOf(scan, partner) : only == toText(marked.facet.role);
    if (!wanted) continue;
    ScanFacet other{mapped(marked.facet, across), 0, false};
    other.facet.role = partner;
    removeFacet(scan, partner);
    scan.facets.push_back(other);
    ++made;
  }
  // Pairs now tell the mid-plane; by construction they tell the same one.
  if (made > 0) placeByLandmarks(scan, sculpted);
  return made;
}

}  // namespace zyga::anatomy
