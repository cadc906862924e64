#include "core/solid/facets/suggest_column.h"

#include <Eigen/Geometry>
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <map>
#include <numbers>
#include <tuple>

#include "core/solid/facets/centrum_end.h"
#include "core/solid/facets/sureness.h"
#include "core/task/parallel.h"

namespace zyga::solid {

namespace {

using anatomy::FacetRole;
using anatomy::SuggestedMarks;
using Eigen::Vector3d;

// Program defaults, no source: shares of the bone's size (surfaceSize) where nothing else is said.
constexpr std::size_t kMostToSearch = 60000;  ///< triangles
constexpr double kApart = 0.4;                ///< between the middles of two neighbours, at least
constexpr double kFaceOver = 0.5;             ///< scale on which the faces of one centrum lie out of line
constexpr double kSmallestFace = 0.02;        ///< of its square
constexpr double kNearMidPlane = 0.08;        ///< within which the top of the spine is looked for
constexpr double kUnevenPlane = 0.15;         ///< scale of a mid-plane's residual
constexpr double kOneSideAlone = 0.5;         ///< what a joint with one side alone counts for

/// What is known of one bone while marks are put together.
struct BoneInColumn {
  const TriangleMesh* mesh = nullptr;
  TriangleMesh thinned;
  double size = 0;
  const NeighbourSuggestion *before = nullptr, *behind = nullptr;  ///< at its cranial and its caudal end
  const FoundJoint *jointBefore = nullptr, *jointBehind = nullptr;
  bool asked = false, askedBefore = false, askedBehind = false;
};

/// Vertices of a grid's cell as one, in their middle: triangles stay evenly small, which patches are picked by, where a
/// simplifier would make large ones of flat places.
TriangleMesh clustered(const TriangleMesh& mesh, double cell) {
  using Cell = std::array<std::int64_t, 3>;
  struct Group {
    Vector3d sum = Vector3d::Zero();
    double count = 0;
  };
  std::map<Cell, std::uint32_t> places;
  std::vector<Group> groups;
  std::vector<std::uint32_t> groupOf;
  groupOf.reserve(mesh.positions.size());
  for (const Eigen::Vector3f& position : mesh.positions) {
    const Vector3d p = position.cast<double>();
    const Cell at{std::llround(p.x() / cell), std::llround(p.y() / cell), std::llround(p.z() / cell)};
    const auto [known, fresh] = places.emplace(at, static_cast<std::uint32_t>(groups.size()));
    if (fresh) groups.emplace_back();
    groups[known->second].sum += p;
    ++groups[known->second].count;
    groupOf.push_back(known->second);
  }
  TriangleMesh out;
  for (const Group& group : groups) out.positions.push_back((group.sum / group.count).cast<float>());
  for (const auto& t : mesh.triangles) {
    const std::array<std::uint32_t, 3> u{groupOf[t[0]], groupOf[t[1]], groupOf[t[2]]};
    if (u[0] != u[1] && u[1] != u[2] && u[2] != u[0]) out.triangles.push_back(u);
  }
  return out;
}

TriangleMesh thinnedOf(const TriangleMesh& mesh) {
  double doubledArea = 0;
  for (const auto& t : mesh.triangles) {
    const Vector3d a = mesh.positions[t[0]].cast<double>();
    doubledArea += (mesh.positions[t[1]].cast<double>() - a).cross(mesh.positions[t[2]].cast<double>() - a).norm();
  }
  // Two triangles a cell of the surface, about.
  double cell = std::sqrt(doubledArea / static_cast<double>(kMostToSearch));
  TriangleMesh out = clustered(mesh, cell);
  for (int round = 0; round < 20 && out.triangles.size() > kMostToSearch; ++round) out = clustered(mesh, cell *= 1.15);
  return out;
}

MidPlane midPlaneOf(const BoneInColumn& bone, const Vector3d& about) {
  if (!bone.before || !bone.behind) return (bone.before ? bone.before : bone.behind)->midPlane;
  const MidPlane &a = bone.before->midPlane, &b = bone.behind->midPlane;
  MidPlane out;
  out.normal = (a.normal + b.normal).normalized();
  out.point = about - (a.side(about) * a.normal + b.side(about) * b.normal) / 2;
  out.residual = std::max(a.residual, b.residual);
  return out;
}

/// The other end of a centrum, by shape: what looks that way, about the mid-plane and in line with the end that is
/// known, the larger and the more alike the better.
std::optional<CentrumEnd> endByShape(const BoneInColumn& bone, const CentrumEnd& known, const Vector3d& way,
                                     const MidPlane& midPlane) {
  const FaceSurface surface(*bone.mesh, bone.size);
  std::vector<std::uint32_t> looking;
  for (std::uint32_t t = 0; t < surface.size(); ++t)
    if (surface.normal(t).dot(way) > kLooksAlong) looking.push_back(t);
  std::vector<std::uint32_t> best;
  double most = 0;
  for (auto& part : surface.connected(looking)) {
    const double area = surface.areaOf(part);
    if (area < kSmallestFace * bone.size * bone.size) continue;
    const Vector3d middle = surface.middleOf(part), between = middle - known.middle;
    const double along = between.dot(way);
    if (!(along > known.radius() / 2)) continue;  // the other end, or a step of this one
    const double score = std::min(area, 2 * known.area) * fallOff(midPlane.side(middle), kFaceCentred * bone.size) *
                         fallOff((between - along * way).norm(), kFaceOver * bone.size);
    if (score <= most) continue;
    most = score;
    best = std::move(part);
  }
  if (best.empty()) return std::nullopt;
  CentrumEnd end = endOf(*bone.mesh, std::move(best), midPlane, bone.size);
  const double alike = std::min(end.area, known.area) / std::max(end.area, known.area);
  const Vector3d between = end.middle - known.middle;
  const double inLine = fallOff((between - between.dot(way) * way).norm(), kFaceOver * bone.size);
  end.confidence = geometricMean({end.confidence, alike, inLine, fallOff(1 - end.normal.dot(way), 0.3)});
  return end;
}

void markFacets(const std::array<std::optional<SuggestedFacet>, 2>& facets, const std::array<FacetRole, 2>& roles,
                SuggestedMarks& out) {
  for (std::size_t s = 0; s < 2; ++s) {
    if (!facets[s]) {
      out.leftOut.push_back({fault::kNoFacetThere, {termOf(roles[s])}});
      continue;
    }
    out.facets.push_back(
        {{facets[s]->facet, facets[s]->shape.planeResidual}, facets[s]->shape.area, facets[s]->confidence});
  }
}

void markSpine(const TriangleMesh& mesh, const MidPlane& midPlane, const Vector3d& dorsal, double size,
               SuggestedMarks& out) {
  std::optional<Vector3d> top;
  for (const auto& triangle : mesh.triangles)
    for (const std::uint32_t v : triangle) {
      const Vector3d p = mesh.positions[v].cast<double>();
      if (std::abs(midPlane.side(p)) < kNearMidPlane * size && (!top || dorsal.dot(p) > dorsal.dot(*top))) top = p;
    }
  if (top) out.landmarks.push_back({"spineTop", *top, fallOff(midPlane.residual, kUnevenPlane * size)});
}

struct MarkedBone {
  SuggestedMarks marks;
  std::optional<MidPlane> midPlane;
  std::optional<NeuralCanal> canal;
};

/// The ends of both bones at one joint.
struct EndsMet {
  std::optional<CentrumEnd> ofCranial, ofCaudal;
};

MarkedBone markedBone(const BoneInColumn& bone, const EndsMet* before, const EndsMet* behind,
                      const anatomy::BoneName& name) {
  MarkedBone out;
  out.marks.bone = name;
  auto& marks = out.marks;
  const auto tellWhy = [&](const FoundJoint* joint, bool asked, const reason::Id& none) {
    if (!asked)
      marks.leftOut.push_back({none, {}});
    else if (joint && !joint->found)
      marks.leftOut.push_back({fault::kAtJoint, {reason::text(joint->id), reason::inner(joint->why)}});
  };
  tellWhy(bone.jointBefore, bone.askedBefore, fault::kNoNeighbourBefore);
  tellWhy(bone.jointBehind, bone.askedBehind, fault::kNoNeighbourBehind);
  if (!bone.before && !bone.behind) return out;
  const TriangleMesh& mesh = *bone.mesh;
  if (bone.before) markFacets(bone.before->prezygs, {FacetRole::PrezygLeft, FacetRole::PrezygRight}, marks);
  if (bone.behind) markFacets(bone.behind->postzygs, {FacetRole::PostzygLeft, FacetRole::PostzygRight}, marks);

  const Vector3d about = massProperties(mesh).centroid;
  const MidPlane midPlane = midPlaneOf(bone, about);
  out.midPlane = midPlane;
  std::optional<CentrumEnd> cranial = before ? before->ofCaudal : std::nullopt,
                            caudal = behind ? behind->ofCranial : std::nullopt;
  const Vector3d along = (bone.before ? bone.before : bone.behind)->axes.cranial;
  if (!cranial) cranial = endByShape(bone, *caudal, along, midPlane);
  if (!caudal) caudal = endByShape(bone, *cranial, -along, midPlane);
  // A ball without a socket has the base that its own bone's socket suggests.
  for (const auto& [end, other, met] : {std::tuple(&cranial, &caudal, before), std::tuple(&caudal, &cranial, behind)})
    if (!met && *end && *other && isJointOfBall(**end, **other) && !(*end)->ball->hollow)
      (*end)->rim = baseOfBall(**end, ((*other)->rim - (*other)->ball->centre).norm() / (*other)->ball->radius);
  if (!cranial) marks.leftOut.push_back({fault::kNoCranialEnd, {}});
  if (!caudal) marks.leftOut.push_back({fault::kNoCaudalEnd, {}});
  const auto mark = [&](const char* rim, const char* centre, const CentrumEnd& end, const CentrumEnd* mate) {
    const EndPlaces places = placesOf(end, mate);
    marks.landmarks.push_back({rim, places.rim, end.confidence});
    marks.landmarks.push_back({centre, places.centre, end.confidence});
  };
  const auto there = [](const std::optional<CentrumEnd>& end) { return end ? &*end : nullptr; };
  if (cranial) mark("cranialRim", "cranial", *cranial, before ? there(before->ofCranial) : nullptr);
  if (caudal) mark("caudalRim", "caudal", *caudal, behind ? there(behind->ofCaudal) : nullptr);
  if (!cranial || !caudal) return out;

  Vector3d way = cranial->middle - caudal->middle;
  way -= way.dot(midPlane.normal) * midPlane.normal;
  const ColumnAxes axes{way.normalized(), midPlane.normal};
  out.canal = findNeuralCanal(
      mesh, {axes, midPlane, cranial->middle, caudal->middle, (cranial->radius() + caudal->radius()) / 2});
  if (out.canal) {
    marks.landmarks.push_back({std::string(anatomy::kCanalCranial), out.canal->cranial, out.canal->confidence});
    marks.landmarks.push_back({std::string(anatomy::kCanalCaudal), out.canal->caudal, out.canal->confidence});
  } else {
    marks.leftOut.push_back({fault::kNoCanal, {}});
  }
  markSpine(mesh, midPlane, axes.dorsal(), bone.size, marks);
  return out;
}

FoundJoint foundJoint(const std::string& id, const NeighbourSuggestion& found, bool ball) {
  FoundJoint out;
  out.id = id;
  out.found = true;
  out.disc = found.disc;
  out.jointSpace = found.jointSpace;
  out.ballAndSocket = ball;
  out.sides = found.confidence;
  const double left = found.confidence[0].whole(), right = found.confidence[1].whole();
  out.confidence = found.complete() ? std::min(left, right) : kOneSideAlone * std::max(left, right);
  return out;
}

void checkApart(const BoneInColumn& cranial, const BoneInColumn& caudal) {
  const Vector3d between = massProperties(*cranial.mesh).centroid - massProperties(*caudal.mesh).centroid;
  if (between.norm() < kApart * std::min(cranial.size, caudal.size)) throw reason::Failure({fault::kInOneAnother, {}});
}

/// Nobody has looked at it yet.
void withholdCertainty(ColumnSuggestion& suggestion) {
  const auto most = [](double& confidence) { confidence = std::min(confidence, anatomy::kMostSure); };
  for (SuggestedMarks& marks : suggestion.marks) {
    for (auto& landmark : marks.landmarks) most(landmark.confidence);
    for (auto& facet : marks.facets) most(facet.confidence);
  }
  for (auto& canal : suggestion.canals)
    if (canal) most(canal->confidence);
  for (FoundJoint& joint : suggestion.joints) most(joint.confidence);
}

}  // namespace

ColumnSuggestion suggestColumn(std::span<const ColumnBone> bones, std::span<const ColumnJoint> joints,
                               const task::Task& task) {
  ColumnSuggestion out;
  std::vector<BoneInColumn> all(bones.size());
  for (const ColumnJoint& joint : joints) {
    all[joint.cranial].asked = all[joint.cranial].askedBehind = true;
    all[joint.caudal].asked = all[joint.caudal].askedBefore = true;
  }
  const bool ready = task::forEach(bones.size(), task.part(0, 0.1), [&](std::size_t i) {
    if (!all[i].asked) return;
    const bool large = bones[i].mesh->triangles.size() > kMostToSearch;
    if (large) all[i].thinned = thinnedOf(*bones[i].mesh);
    all[i].mesh = large ? &all[i].thinned : bones[i].mesh;
    all[i].size = surfaceSize(*all[i].mesh);
  });
  if (!ready) return out;

  std::vector<std::optional<NeighbourSuggestion>> found(joints.size());
  std::vector<EndsMet> ends(joints.size());
  std::vector<FoundJoint> told(joints.size());
  const bool looked = task::forEach(joints.size(), task.part(0.1, 0.8), [&](std::size_t j) {
    const BoneInColumn &cranial = all[joints[j].cranial], &caudal = all[joints[j].caudal];
    try {
      checkApart(cranial, caudal);
      found[j] = suggestNeighbours(*cranial.mesh, *caudal.mesh);
      const auto& both = *found[j];
      ends[j].ofCranial = endOf(*cranial.mesh, both.caudalFace.triangles, both.midPlane, cranial.size);
      ends[j].ofCaudal = endOf(*caudal.mesh, both.cranialFace.triangles, both.midPlane, caudal.size);
      seatBases(*ends[j].ofCranial, *ends[j].ofCaudal);
      told[j] = foundJoint(joints[j].id, both, isJointOfBall(*ends[j].ofCranial, *ends[j].ofCaudal));
    } catch (const reason::Failure& failure) {
      found[j].reset();
      told[j] = {};
      told[j].id = joints[j].id;
      told[j].why = failure.reason();
    }
  });
  if (!looked) return out;

  std::vector<const EndsMet*> before(bones.size()), behind(bones.size());
  for (std::size_t j = 0; j < joints.size(); ++j) {
    BoneInColumn &cranial = all[joints[j].cranial], &caudal = all[joints[j].caudal];
    cranial.jointBehind = caudal.jointBefore = &told[j];
    if (!found[j]) continue;
    cranial.behind = caudal.before = &*found[j];
    behind[joints[j].cranial] = before[joints[j].caudal] = &ends[j];
  }
  std::vector<MarkedBone> marked(bones.size());
  const bool done = task::forEach(bones.size(), task.part(0.8, 1), [&](std::size_t i) {
    marked[i].marks.bone = bones[i].name;
    if (all[i].asked)
      marked[i] = markedBone(all[i], before[i], behind[i], bones[i].name);
    else if (anatomy::isVertebra(bones[i].name.kind))
      marked[i].marks.leftOut = {{fault::kNoNeighbourBefore, {}}, {fault::kNoNeighbourBehind, {}}};
  });
  if (!done) return out;
  for (MarkedBone& bone : marked) {
    out.marks.push_back(std::move(bone.marks));
    out.midPlanes.push_back(bone.midPlane);
    out.canals.push_back(bone.canal);
  }
  out.joints = std::move(told);
  withholdCertainty(out);
  return out;
}

ColumnSuggestion suggestColumn(std::span<const ColumnBone> bones, const anatomy::Specimen& animal,
                               const task::Task& task) {
  std::vector<anatomy::BoneName> names;
  for (const ColumnBone& bone : bones) names.push_back(bone.name);
  std::vector<ColumnJoint> joints;
  for (const anatomy::MetAt& met : anatomy::jointsAmong(animal, names))
    joints.push_back({animal[met.joint].id, met.cranial, met.caudal});
  ColumnSuggestion out = suggestColumn(bones, joints, task);
  // Where the animal's bone has no facets nothing is missing.
  for (SuggestedMarks& marks : out.marks) {
    const auto index = animal.findBone(toId(marks.bone));
    if (!index) continue;
    const auto& facets = animal[*index].facets;
    const auto has = [&](bool front) {
      return std::any_of(facets.begin(), facets.end(), [front](const auto& f) { return isPrezyg(f.role) == front; });
    };
    std::erase_if(marks.leftOut, [&](const reason::Reason& why) {
      return (why.id == fault::kNoNeighbourBefore && !has(true)) ||
             (why.id == fault::kNoNeighbourBehind && !has(false));
    });
  }
  return out;
}

}  // namespace zyga::solid
