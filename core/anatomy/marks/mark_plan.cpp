#include "core/anatomy/marks/mark_plan.h"

#include <algorithm>
#include <array>
#include <utility>

namespace zyga::anatomy {
namespace {

using Eigen::Vector3d;

constexpr double kFlat = 1e-9;  ///< m, between the tip of a condyle and its rim on a flat face

struct Words {
  std::string_view name, title, purpose;
};

/// Of names without their side.
constexpr std::array kWords{Words{"diapophysis", "tip of the transverse process", "carries the rib's upper head"},
                            Words{"parapophysis", "facet for the rib's lower head", "carries the rib's lower head"},
                            Words{"ribTip", "end of the grown-on rib", "shows how far the rib reaches"},
                            Words{"condyleTip", "foremost point of the condyle", "tells the length with condyle"},
                            Words{"tuberculum", "tuberculum", "the rib's upper head"},
                            Words{"middle", "middle", "the point half-way that lies farthest out"},
                            Words{"tip", "tip", "the far end"},
                            Words{"snout", "tip of the snout", "one end of the skull"},
                            Words{"jawHinge", "hinge of the jaw", "where the jaw turns"},
                            Words{"eye", "middle of the orbit", "says how the skull lies"},
                            Words{"nostril", "middle of the nostril opening", "says how the skull lies"},
                            Words{"foramenMagnum", "great opening of the braincase", "says how the skull lies"},
                            Words{"chin", "chin", "the front end of the jaw"},
                            Words{"proximal", "upper joint surface", "centre of rotation of the joint above"},
                            Words{"distal", "lower joint surface", "centre of rotation of the joint below"},
                            Words{"top", "upper end", "one end of the greatest length"},
                            Words{"bottom", "lower end", "the other end of the greatest length"},
                            Words{"shaftTop", "upper end of the shaft", "says how the shaft runs"},
                            Words{"shaftBottom", "lower end of the shaft", "says how the shaft runs"},
                            Words{"front", "front end of the blade", "says how the blade lies"},
                            Words{"back", "hind end of the blade", "says how the blade lies"},
                            Words{"crest", "top of the blade", "says how the blade lies"},
                            Words{"face", "resting place of the humerus", "says how the bone lies"},
                            Words{"sole", "lowest point of the foot", "stands on the ground"}};

std::string_view endOf(std::string_view name) {
  return name.ends_with(".L") || name.ends_with(".R") ? name.substr(name.size() - 2) : std::string_view();
}

std::string titled(std::string_view name) {
  const std::string_view end = endOf(name), stem = name.substr(0, name.size() - end.size());
  std::string words(stem);
  for (const Words& known : kWords)
    if (known.name == stem) words = known.title;
  if (end == ".L") return "left " + words;
  if (end == ".R") return "right " + words;
  return words;
}

std::string purposeOf(std::string_view name) {
  const std::string_view stem = name.substr(0, name.size() - endOf(name).size());
  for (const Words& known : kWords)
    if (known.name == stem) return std::string(known.purpose);
  return "says how the bone lies";
}

std::string facetTitle(FacetRole role) {
  return std::string(isLeft(role) ? "left " : "right ") + (isPrezyg(role) ? "front" : "hind") + " facet";
}

bool flatInFront(const Bone& sculpted) {
  const auto tip = sculpted.landmarks.find("condyleTip"), rim = sculpted.landmarks.find("cranialRim");
  return tip == sculpted.landmarks.end() || rim == sculpted.landmarks.end() ||
         (tip->second - rim->second).norm() < kFlat;
}

std::vector<WantedMark> vertebraMarks(const Bone& sculpted) {
  const bool flat = flatInFront(sculpted);
  std::vector<WantedMark> out{
      {"cranialRim",
       flat ? "rim of the front face" : "base of the condyle",
       "the front end of the centrum's axis: click round it",
       MarkBy::Ring,
       true,
       {}},
      {"caudalRim",
       flat ? "rim of the hind face" : "rim of the cotyle",
       "the hind end of the centrum's axis: click round it",
       MarkBy::Ring,
       true,
       {}},
      {std::string(kCanalCranial),
       "front opening of the neural canal",
       "the canal is what is level: click round it",
       MarkBy::Ring,
       true,
       {}},
      {std::string(kCanalCaudal),
       "hind opening of the neural canal",
       "the canal is what is level: click round it",
       MarkBy::Ring,
       true,
       {}},
      {"spineTop", "top of the neural spine", "lies in the mid-plane and says where up is", MarkBy::Point, true, {}}};
  const MarkBy centre = flat ? MarkBy::Ring : MarkBy::Ball;
  out.push_back({"cranial",
                 flat ? "middle of the front face" : "condyle",
                 "centre of rotation of the joint in front",
                 centre,
                 true,
                 {}});
  out.push_back({"caudal",
                 flat ? "middle of the hind face" : "cotyle",
                 "centre of rotation of the joint behind",
                 centre,
                 true,
                 {}});
  for (const Facet& facet : sculpted.facets)
    out.push_back({std::string(toText(facet.role)), facetTitle(facet.role),
                   isPrezyg(facet.role) ? "judges the joint in front: brush it" : "judges the joint behind: brush it",
                   MarkBy::Facet, true, facet.role});
  return out;
}

std::vector<WantedMark> otherMarks(const Bone& sculpted) {
  std::vector<WantedMark> out;
  for (const bool centres : {true, false})
    for (const auto& [name, p] : sculpted.landmarks) {
      const bool isCentre = name == "proximal" || name == "distal";
      if (isCentre != centres) continue;
      out.push_back({name, titled(name), purposeOf(name), isCentre ? MarkBy::Ball : MarkBy::Point, isCentre, {}});
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

}  // namespace

std::string_view toText(FacetRole role) {
  switch (role) {
    case FacetRole::PrezygLeft:
      return "prezyg.L";
    case FacetRole::PrezygRight:
      return "prezyg.R";
    case FacetRole::PostzygLeft:
      return "postzyg.L";
    case FacetRole::PostzygRight:
      break;
  }
  return "postzyg.R";
}

std::vector<WantedMark> marksFor(const Bone& sculpted) {
  if (!isVertebra(sculpted.name.kind)) return otherMarks(sculpted);
  std::vector<WantedMark> out = vertebraMarks(sculpted);
  for (const auto& [name, p] : sculpted.landmarks) {
    const bool there = name == "canal" ||
                       std::any_of(out.begin(), out.end(), [&name = name](const auto& w) { return w.name == name; });
    if (!there) out.push_back({name, titled(name), purposeOf(name), MarkBy::Point, false, {}});
  }
  return out;
}

void setLandmark(Scan& scan, const Bone& sculpted, const std::string& name, std::optional<Vector3d> p_S) {
  const auto set = [&scan](const std::string& which, const std::optional<Vector3d>& p) {
    if (p)
      scan.landmarks[which] = *p;
    else
      scan.landmarks.erase(which);
  };
  if (isVertebra(scan.bone.kind) && flatInFront(sculpted)) {
    for (const auto& [rim, centre] : {std::pair("cranialRim", "cranial"), std::pair("caudalRim", "caudal")}) {
      const auto old = scan.landmarks.find(rim), follower = scan.landmarks.find(centre);
      const bool follows =
          follower == scan.landmarks.end() || (old != scan.landmarks.end() && follower->second == old->second);
      if (name == rim && follows) set(centre, p_S);
    }
  }
  set(name, p_S);
  if (name == kCanalCranial || name == kCanalCaudal) {
    const auto front = scan.landmarks.find(kCanalCranial), back = scan.landmarks.find(kCanalCaudal);
    const bool both = front != scan.landmarks.end() && back != scan.landmarks.end();
    set("canal", both ? std::optional<Vector3d>((front->second + back->second) / 2) : std::nullopt);
  }
  layAnew(scan, sculpted);
}

const ScanFacet* facetOf(const Scan& scan, FacetRole role) {
  const auto found =
      std::find_if(scan.facets.begin(), scan.facets.end(), [role](const auto& f) { return f.facet.role == role; });
  return found == scan.facets.end() ? nullptr : &*found;
}

void setFacet(Scan& scan, const Bone& sculpted, const ScanFacet& facet) {
  removeFacet(scan, facet.facet.role);
  scan.facets.push_back(facet);
  std::sort(scan.facets.begin(), scan.facets.end(),
            [](const auto& a, const auto& b) { return a.facet.role < b.facet.role; });
  const FacetRole inBone = scan.mirror ? mirrored(facet.facet.role) : facet.facet.role;
  if (const Facet* known = sculpted.facet(inBone); known && scan.placed)
    for (ScanFacet& kept : scan.facets)
      if (kept.facet.role == facet.facet.role) slideAs(*known, scan, kept.facet);
  layAnew(scan, sculpted);
}

void removeFacet(Scan& scan, FacetRole role) {
  std::erase_if(scan.facets, [role](const auto& f) { return f.facet.role == role; });
}

}  // namespace zyga::anatomy
