#pragma once

#include "core/anatomy/marks/suggested_marks.h"
#include "core/solid/facets/neural_canal.h"
#include "core/solid/facets/suggest.h"
#include "core/task/task.h"

namespace zyga::solid {

/// Why a mark of a bone is left to be made by hand, or a joint gives none. Ids of bones and joints are Text.
namespace fault {

inline constexpr reason::Id kAtJoint{"suggest.at-joint", 2};  ///< joint, the cause
/// Facets at an end where no neighbour was given: by shape alone nothing tells them from other flat parts of an arch.
inline constexpr reason::Id kNoNeighbourBefore{"suggest.no-neighbour-before"},
    kNoNeighbourBehind{"suggest.no-neighbour-behind"};
inline constexpr reason::Id kNoFacetThere{"suggest.no-facet-there", 1};  ///< term of the facet
inline constexpr reason::Id kNoCanal{"suggest.no-canal"};
inline constexpr reason::Id kNoCranialEnd{"suggest.no-cranial-end"}, kNoCaudalEnd{"suggest.no-caudal-end"};
/// Both bones lie about the same place: each in a frame of its own.
inline constexpr reason::Id kInOneAnother{"suggest.in-one-another"};

}  // namespace fault

struct ColumnBone {
  anatomy::BoneName name;
  const TriangleMesh* mesh = nullptr;  ///< repaired; in the common frame, m
};

struct ColumnJoint {
  std::string id;
  std::size_t cranial = 0, caudal = 0;  ///< places in the list of bones
};

/// A joint as it was found, m, in the common frame.
struct FoundJoint {
  std::string id;
  bool found = false;
  reason::Reason why;  ///< where it was not
  /// The faces' centres from each other along the column, and the facets' surfaces from each other.
  double disc = 0, jointSpace = 0;
  bool ballAndSocket = false;         ///< one face bulges as a ball into the other, which is hollow
  std::array<Confidence, 2> sides{};  ///< left and right; zero where none was found
  double confidence = 0;              ///< of the less sure side; of a joint with one side alone, a share of it
};

struct ColumnSuggestion {
  std::vector<anatomy::SuggestedMarks> marks;  ///< beside the bones
  std::vector<std::optional<MidPlane>> midPlanes;
  std::vector<std::optional<NeuralCanal>> canals;
  std::vector<FoundJoint> joints;  ///< beside the joints asked for
};

/// Marks for vertebrae that lie in articulation in one frame: each joint is looked at by suggestNeighbours, all at
/// once, and each bone gets what its joints and its own shape tell:
/// - prezyg.L/R, postzyg.L/R from the joints; none at an end without a neighbour;
/// - cranialRim, caudalRim: middles of the faces of the centrum. Where a face bulges as a ball into the neighbour's
///   hollow, the rim is the ball's base, which lies where the hollow's rim does. At an end without neighbour the face
///   is found by shape: what looks along the column, farthest out, like the face of the other end; less sure;
/// - cranial, caudal: centres of rotation; middles of flat faces, of a ball its centre, in its socket the place where
///   that is when the two are seated;
/// - canalCranial, canalCaudal: findNeuralCanal;
/// - spineTop: the farthest dorsal point near the mid-plane. What is broken off is not known to be so.
///
/// Confidence of faces: geometric mean of size, of how well a plane or ball fits, of how near the mid-plane they lie.
/// Meshes of more than 60,000 triangles are thinned first on a grid of about a fortieth of the bone's size; facets move
/// by less than that. Bones that no joint names get no marks. Deterministic. Throws nothing for bad pairs: each joint
/// says why. Empty marks when cancelled.
ColumnSuggestion suggestColumn(std::span<const ColumnBone> bones, std::span<const ColumnJoint> joints,
                               const task::Task& task = {});
/// The same at all joints with facets of an animal between two of these bones. Ends at which the animal's bones have no
/// facets are not told to lack neighbours.
ColumnSuggestion suggestColumn(std::span<const ColumnBone> bones, const anatomy::Specimen& animal,
                               const task::Task& task = {});

}  // namespace zyga::solid
