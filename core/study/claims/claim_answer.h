#pragma once

#include <atomic>
#include <functional>
#include <vector>

#include "core/kinematics/placement.h"
#include "core/range/assumptions.h"
#include "core/study/claims/claim.h"

namespace zyga::study {

struct ClaimOptions {
  /// Also ask what it would take: the overlap and the cartilage at which the answer changes.
  bool needs = true;
  /// Called from the asking thread.
  std::function<void(std::size_t done, std::size_t total)> progress = {};
  const std::atomic<bool>* cancel = nullptr;
};

/// Cartilage is looked at up to this, % of the centrum's length: well past the most that is known of living necks
/// (juvenile giraffe 24 %, Taylor & Wedel 2013, PLoS ONE 8(10):e78214).
inline constexpr double kMostCartilage = 40;

/// A joint that keeps a claim from being supported.
struct ClaimStop {
  kinematics::JointIndex joint;
  double share = 0;  ///< its part in it; all of them add up to 1
  std::string text;  ///< "C12-C13 dorsiflexion 7.1°: both facets share 50 %"
};

/// What the bones say of a claim.
struct ClaimAnswer {
  bool cancelled = false;    ///< nothing else in here is worth anything
  std::string unanswerable;  ///< "the specimen has no skull"; empty where there is an answer
  bool supported = false;
  /// Of heights and slopes the most (or least) that is supported; of the tail the slope nearest to level. Of points:
  /// where supported, how far ahead, or how high, the snout still gets; else the nearest value at which it would. m or
  /// rad; none where there is no such value.
  std::optional<double> best;
  double shortBy = 0;          ///< what the nearest pose lacks, m or rad; 0 when supported
  bool throughGround = false;  ///< a point is reached only with neck or head in the ground; shortBy is how deep
  kinematics::Pose pose;       ///< shows the claim with the least bend, every joint by the same share; or the nearest
  std::vector<ClaimStop> stopping;  ///< worst first; empty when supported

  /// The assumption "least overlap" at and below which the claim is supported, all else as it is, share; none where no
  /// value does.
  std::optional<double> leastOverlap;
  /// The least cartilage in the part that bends (neck or tail) at which it is supported, all else as it is, % of the
  /// centrum's length, and the most up to which it then stays so; none where no value up to kMostCartilage does.
  std::optional<double> leastCartilage, mostCartilage;

  std::size_t joints = 0;                               ///< how many may bend
  std::vector<kinematics::JointIndex> nearEdge;         ///< of those, near the edge of their range in `pose`
  std::vector<kinematics::JointIndex> notJudged;        ///< of the neck or tail: they stay as posed
  std::vector<kinematics::JointIndex> elsewhereBeyond;  ///< past their range in what stays as posed
  double inGround = 0;                                  ///< how deep neck, head or tail lie in the ground in `pose`, m
};

/// Asks the bones about a claim under these assumptions. Trunk, limbs and feet stay as `pose` has them; neck and head,
/// or the tail's base, bend up and down only, each joint inside its range. Points are reached over the ground; heights
/// and slopes do not ask for it, and other bones stop nothing. `articulation` is that of the assumptions. The same
/// input gives the same answer to the bit. Some milliseconds for heights and slopes, up to a second or two for points.
ClaimAnswer answerClaim(const anatomy::Specimen& specimen, const kinematics::Articulation& articulation,
                        const range::Assumptions& assumptions, const kinematics::Pose& pose, const Claim& claim,
                        const ClaimOptions& options = {});

}  // namespace zyga::study
